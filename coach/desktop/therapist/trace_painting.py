"""Painting the trace of a repetition: all of it once, and what changes with the moment."""

from __future__ import annotations

import numpy as np
from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QBrush, QColor, QPolygonF

from coach.desktop.shared.canvas import LINE_EM, Align, Canvas, broken
from coach.review.doubt_wording import doubt_words
from coach.review.form_series import FormSeries
from coach.review.recording import Floats
from coach.review.replay import Replay, Span
from coach.review.replay_axes import close_axis, time_axis
from coach.review.replay_wording import (
    compensations,
    form_moment,
    form_name,
    heading,
    pain,
    result,
    unit_sign,
)
from coach.texts import translate

_HOLD_EM, _AXIS_EM, _LANE_EM = 1.5, 1.7, 1.75
_GAP_EM, _MOMENT_EM = 0.8, 5.6
"""Beside the names of the lanes stand the values of the moment, as "-100° ± 10°"."""


class TracePainting:
    """One painting of a trace."""

    def __init__(
        self,
        canvas: Canvas,
        rect: QRectF,
        shown: Replay,
        span: tuple[float, float],
        values: tuple[float, float],
    ) -> None:
        """Paint ``shown`` into ``rect`` over ``span``, seconds since its hold began."""
        em = canvas.em
        self._canvas, self._rect, self._shown = canvas, rect, shown
        names = [canvas.width(_lane_name(each), 0.95, bold=True) for each in shown.form]
        self._names = max(names, default=0.0) + _GAP_EM * em
        left = rect.left() + self._names + (_MOMENT_EM + 0.5) * em
        width = rect.right() - 1.2 * em - left
        bottom = rect.bottom() - len(shown.form) * _LANE_EM * em
        rows = self._heading()
        lines = sum(self._lines(text, size, bold=bold) * size for text, size, bold, _ in rows)
        top = rect.top() + (LINE_EM * lines + _HOLD_EM) * em
        self._box = QRectF(left, top, width, bottom - _AXIS_EM * em - top)
        self._times = time_axis(*span, max(2, int(width / (4.5 * em))))
        most = min(9, max(5, int(self._box.height() / (2.2 * em))))
        self._axis = close_axis(*values, shown.repetition.unit, most)

    def paint_still(self) -> None:
        """Paint all but the moment."""
        self._paint_heading()
        self._ground()
        for span in self._shown.doubts:
            self._doubt(span)
        self._value()
        for lane, series in enumerate(self._shown.form):
            self._lane(lane, series)

    def paint_moment(self, time_s: float) -> None:
        """Paint the cursor and the values of the moment, in seconds since the session's start."""
        canvas, em = self._canvas, self._canvas.em
        row = self._shown.trace_row(time_s)
        right = Align.AlignRight | Align.AlignVCenter
        for lane, series in enumerate(self._shown.form):
            place = self._lane_box(lane)
            left = self._rect.left() + self._names
            now = QRectF(left, place.top(), _MOMENT_EM * em, place.height())
            canvas.text(now, form_moment(series, row), size=0.95, align=right)
        x = self._x(time_s)
        if self._box.left() <= x <= self._box.right():
            top, bottom = QPointF(x, self._box.top()), QPointF(x, self._rect.bottom())
            canvas.line(top, bottom, canvas.palette.focus, 0.16)

    def _lane_box(self, lane: int) -> QRectF:
        step = _LANE_EM * self._canvas.em
        top = self._rect.bottom() - (len(self._shown.form) - lane) * step
        height = step - 0.3 * self._canvas.em
        return QRectF(self._box.left(), top, self._box.width(), height)

    def _x(self, time_s: float) -> float:
        share = self._times.share(time_s - self._shown.repetition.start_s)
        return self._box.left() + share * self._box.width()

    def _y(self, value: float) -> float:
        return self._box.bottom() - self._axis.share(value) * self._box.height()

    def _heading(self) -> tuple[tuple[str, float, bool, str], ...]:
        """Give what is said of the repetition: each text with its size, weight and colour."""
        shown, colours = self._shown, self._canvas.palette
        faults = bool(shown.repetition.faults)
        return (
            (f"{heading(shown)}: {result(shown)}", 1.15, True, colours.ink),
            (
                f"{compensations(shown)}; {pain(shown)}",
                1.0,
                faults,
                colours.caution if faults else colours.ink_soft,
            ),
        )

    def _lines(self, text: str, size: float, *, bold: bool) -> int:
        return len(broken(text, self._canvas.metrics(size, bold=bold), self._rect.width()))

    def _paint_heading(self) -> None:
        box = QRectF(self._rect)
        for text, size, bold, colour in self._heading():
            high = self._canvas.paragraph(box, text, size=size, bold=bold, colour=colour)
            box.translate(0, high)

    def _ground(self) -> None:
        canvas, em, colours, box = self._canvas, self._canvas.em, self._canvas.palette, self._box
        begin, end = (self._x(t) for t in self._shown.hold_s)
        canvas.fill(QRectF(begin, box.top(), end - begin, box.height()), colours.hold, 0.3)
        label = QRectF(begin, box.top() - 1.35 * em, max(end - begin, 5 * em), 1.3 * em)
        canvas.text(
            label, translate("replay", "hold"), size=0.9, bold=True, colour=colours.ink_soft
        )
        for tick in self._axis.ticks:
            y = self._y(tick.at)
            canvas.line(QPointF(box.left(), y), QPointF(box.right(), y), colours.hairline, 0.06)
            place = QRectF(box.left() - 6.5 * em, y - 0.7 * em, 6 * em, 1.4 * em)
            right = Align.AlignRight | Align.AlignVCenter
            text = tick.label + unit_sign(self._shown.repetition.unit)
            canvas.text(place, text, size=0.9, colour=colours.ink_soft, align=right)
        for tick in self._times.ticks:
            x = self._x(tick.at + self._shown.repetition.start_s)
            place = QRectF(x - 3 * em, box.bottom() + 0.2 * em, 6 * em, 1.3 * em)
            text = tick.label.replace("-", "\N{MINUS SIGN}")
            canvas.text(place, text, size=0.9, colour=colours.ink_soft, align=Align.AlignCenter)
            top, bottom = QPointF(x, box.top()), QPointF(x, box.bottom())
            canvas.line(top, bottom, colours.hairline, 0.04)

    def _doubt(self, span: Span) -> None:
        canvas, em, colours = self._canvas, self._canvas.em, self._canvas.palette
        begin = self._x(span.start_s)
        place = QRectF(begin, self._box.top(), self._x(span.end_s) - begin, self._box.height())
        hatch = QBrush(QColor(colours.line), Qt.BrushStyle.BDiagPattern)
        canvas.painter.fillRect(place, hatch)
        text = doubt_words(span.doubt) if span.doubt else translate("review", "no frame")
        width = canvas.width(text, 0.9) + 0.4 * em
        if width < place.width():
            words = QRectF(place.center().x() - width / 2, place.top() + em, width, 1.4 * em)
            canvas.fill(words, colours.card)
            canvas.text(words, text, size=0.9, colour=colours.ink_soft, align=Align.AlignCenter)

    def _value(self) -> None:
        canvas, colours, shown = self._canvas, self._canvas.palette, self._shown
        low, high = shown.value - shown.error, shown.value + shown.error
        for run in shown.runs(shown.value):
            edge = self._line(run, low) + self._line(run, high)[::-1]
            canvas.fill(edge, colours.series[0], 0.16)
            canvas.painter.setPen(canvas.pen(colours.series[0], 0.16))
            canvas.painter.drawPolyline(QPolygonF(self._line(run, shown.value)))
        y = self._y(shown.repetition.value)
        begin, end = (self._x(t) for t in shown.hold_s)
        dashed = Qt.PenStyle.DashLine
        canvas.line(QPointF(begin, y), QPointF(end, y), colours.series[1], 0.16, dashed)

    def _line(self, run: slice, values: Floats) -> list[QPointF]:
        times = self._shown.time_s[run].tolist()
        points = zip(times, values[run].tolist(), strict=True)
        return [QPointF(self._x(t), self._y(v)) for t, v in points]

    def _lane(self, lane: int, series: FormSeries) -> None:
        canvas, colours, shown = self._canvas, self._canvas.palette, self._shown
        place = self._lane_box(lane)
        top, height = place.top(), place.height()
        colour = colours.caution if series.faults else colours.ink_soft
        box = QRectF(self._rect.left(), top, self._names, height)
        canvas.text(box, _lane_name(series), size=0.95, bold=bool(series.faults), colour=colour)
        canvas.fill(place, colours.accent_wash, 0.35)
        begin, end = (self._x(t) for t in shown.hold_s)
        hold = QRectF(begin, top, end - begin, height)
        canvas.fill(hold, colours.caution if series.faults else colours.hold, 0.25)
        known = np.isfinite(series.value) & np.isfinite(series.error)
        if not known.any():
            return
        low, high = series.value - series.error, series.value + series.error
        edges = np.concatenate((low[known], high[known], [0.0]))
        lo, hi = float(edges.min()), float(edges.max())
        scale = height / max(hi - lo, 1e-9)
        for run in shown.runs(np.where(known, series.value, np.nan)):
            times = [self._x(t) for t in shown.time_s[run].tolist()]

            def line(values: Floats, run: slice = run, times: list[float] = times) -> list[QPointF]:
                heights = ((hi - values[run]) * scale + top).tolist()
                return [QPointF(x, y) for x, y in zip(times, heights, strict=True)]

            band = line(low) + line(high)[::-1]
            canvas.fill(band, colours.series[2], 0.16)
            canvas.painter.setPen(canvas.pen(colour, 0.12))
            canvas.painter.drawPolyline(QPolygonF(line(series.value)))


def _lane_name(series: FormSeries) -> str:
    return ("! " if series.faults else "") + form_name(series)

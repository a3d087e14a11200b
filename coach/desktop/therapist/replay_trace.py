"""The trace of a repetition over time: angle with its error, hold, doubts, form, a cursor."""

from __future__ import annotations

import numpy as np
from PyQt6.QtCore import QPointF, QRectF, QSize, Qt
from PyQt6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPixmap, QPolygonF
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.looks import colours
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
    in_words,
    pain,
    result,
    unit_sign,
)
from coach.texts import translate

_LEFT_EM, _HEAD_EM, _AXIS_EM, _LANE_EM = 17.0, 4.6, 1.7, 1.75
_NAME_EM = 10.0


class TraceView(QWidget):
    """Shows the trace of a ``Replay`` with a cursor at one moment."""

    def __init__(self, em_px: float) -> None:
        """Begin empty; ``em_px`` is the height of the text."""
        super().__init__()
        self._em_px, self._worn = em_px, colours()
        self._replay: Replay | None = None
        self._span, self._values = (-1.0, 1.0), (0.0, 1.0)
        self._time_s = 0.0
        self._still = QPixmap()
        """All but the cursor, which would take too long to paint for each picture of a second."""
        self.setMinimumSize(QSize(scaled(420), scaled(240)))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(translate("replay", "Trace of the repetition"))

    def show_replay(
        self, shown: Replay, span: tuple[float, float], values: tuple[float, float]
    ) -> None:
        """Show another repetition over ``span``, seconds since its hold began, and ``values``."""
        self._replay, self._span, self._values = shown, span, values
        self._still = QPixmap()
        self.update()

    def show_time(self, time_s: float) -> None:
        """Move the cursor, in seconds since the session's start."""
        self._time_s = time_s
        if self._replay:
            words = (in_words(self._replay, time_s), compensations(self._replay))
            self.setAccessibleDescription("; ".join((*words, pain(self._replay))))
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: N802
        """Paint."""
        if self._replay is None:
            return
        ratio = self.devicePixelRatioF()
        if self._still.size() != self.size() * ratio or self._worn is not colours():
            self._worn, self._still = colours(), QPixmap(self.size() * ratio)
            self._still.setDevicePixelRatio(ratio)
            self._still.fill(Qt.GlobalColor.transparent)
            painter = QPainter(self._still)
            self._trace(painter, self._replay).paint_still()
            painter.end()
        painter = QPainter(self)
        painter.drawPixmap(0, 0, self._still)
        self._trace(painter, self._replay).paint_moment(self._time_s)
        painter.end()

    def _trace(self, painter: QPainter, shown: Replay) -> _Trace:
        canvas = Canvas(painter, self._em_px, colours())
        return _Trace(canvas, QRectF(self.rect()), shown, self._span, self._values)


class _Trace:
    """One painting of a trace."""

    def __init__(
        self,
        canvas: Canvas,
        rect: QRectF,
        shown: Replay,
        span: tuple[float, float],
        values: tuple[float, float],
    ) -> None:
        em = canvas.em
        self._canvas, self._rect, self._shown = canvas, rect, shown
        left = rect.left() + _LEFT_EM * em
        width = rect.right() - 1.2 * em - left
        bottom = rect.bottom() - len(shown.form) * _LANE_EM * em
        top = rect.top() + _HEAD_EM * em
        self._box = QRectF(left, top, width, bottom - _AXIS_EM * em - top)
        self._times = time_axis(*span, max(2, int(width / (4.5 * em))))
        most = min(9, max(5, int(self._box.height() / (2.2 * em))))
        self._axis = close_axis(*values, shown.repetition.unit, most)

    def paint_still(self) -> None:
        self._heading()
        self._ground()
        for span in self._shown.doubts:
            self._doubt(span)
        self._value()
        for lane, series in enumerate(self._shown.form):
            self._lane(lane, series)

    def paint_moment(self, time_s: float) -> None:
        canvas, em = self._canvas, self._canvas.em
        row = self._shown.trace_row(time_s)
        right = Align.AlignRight | Align.AlignVCenter
        for lane, series in enumerate(self._shown.form):
            place = self._lane_box(lane)
            now = QRectF(self._rect.left() + _NAME_EM * em, place.top(), 6.5 * em, place.height())
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

    def _heading(self) -> None:
        canvas, em, shown = self._canvas, self._canvas.em, self._shown
        rows = (
            (f"{heading(shown)}: {result(shown)}", 1.15, True, canvas.palette.ink),
            (
                f"{compensations(shown)}; {pain(shown)}",
                1.0,
                bool(shown.repetition.faults),
                canvas.palette.caution if shown.repetition.faults else canvas.palette.ink_soft,
            ),
        )
        for i, (text, size, bold, colour) in enumerate(rows):
            box = QRectF(
                self._rect.left(), self._rect.top() + 1.7 * i * em, self._rect.width(), 1.6 * em
            )
            canvas.text(box, text, size=size, bold=bold, colour=colour)

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
        canvas, em, colours, shown = (
            self._canvas,
            self._canvas.em,
            self._canvas.palette,
            self._shown,
        )
        place = self._lane_box(lane)
        top, height = place.top(), place.height()
        colour = colours.caution if series.faults else colours.ink_soft
        name = ("! " if series.faults else "") + form_name(series)
        box = QRectF(self._rect.left(), top, _NAME_EM * em, height)
        canvas.text(box, name, size=0.95, bold=bool(series.faults), colour=colour)
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

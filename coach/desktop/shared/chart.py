"""Painting a movement's chart on any device: value over date with its error, pain below."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import QBuffer, QIODevice, QPointF, QRectF, QSize
from PyQt6.QtGui import QColor, QImage, QPainter, QPolygonF

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.chart_heading import paint_heading
from coach.desktop.shared.chart_marks import (
    flags,
    height_of,
    paint_course,
    paint_flags,
    paint_levels,
)
from coach.desktop.shared.chart_plot import Plot
from coach.desktop.shared.chart_strips import (
    PAIN,
    WEEKS_EM,
    last_day,
    paint_done,
    paint_pain,
    weeks_plot,
)
from coach.desktop.shared.palettes import LIGHT, Palette
from coach.domain.movement import Unit
from coach.review.adherence import Week
from coach.review.chart import Chart, Dot
from coach.review.wording import DEGREE, amount

_BARS_UP_TO = 2
_SIGNS = {Unit.DEGREES: DEGREE, Unit.RATIO: " %"}


def paint_chart(
    painter: QPainter,
    rect: QRectF,
    chart: Chart,
    em: float,
    palette: Palette = LIGHT,
    weeks: Sequence[Week] = (),
) -> None:
    """Paint into ``rect``; ``em`` is the height of its text in device units.

    ``weeks`` are what was done and asked, to stand on the same dates.
    """
    canvas = Canvas(painter, em, palette)
    painter.save()
    top = rect.top() + paint_heading(canvas, rect, chart)
    if not chart.dots and not chart.pains:
        canvas.text(
            QRectF(rect.left(), top, rect.width(), 2 * em), chart.statement, colour=palette.ink_soft
        )
        painter.restore()
        return
    left = rect.left() + canvas.width(amount(-180, Unit.DEGREES)) + 0.7 * em
    bottom = rect.bottom() - 2.5 * em
    width = rect.right() - 0.4 * em - left
    until = last_day(chart, weeks)
    days, _ = chart.axes(max(2, int(width / (4.6 * em))), until_day=until)
    placed = flags(canvas, chart.events, left, width, days, bottom - top)
    top += height_of(canvas, placed)
    strips = [height for height in (
        max(3.4 * em, 0.2 * (bottom - top)) if chart.pains else 0.0,
        WEEKS_EM * em if weeks else 0.0,
    ) if height]  # fmt: skip
    under = bottom - sum(strips) - len(strips) * em
    upper = QRectF(left, top, width, under - top)
    most_values = min(9, max(3, int(upper.height() / (1.9 * em))))
    plot = Plot(upper, days, chart.axes(most_values=most_values)[1])
    _ground(canvas, plot, _SIGNS[chart.unit])
    paint_flags(canvas, placed, upper.top(), bottom)
    _range(canvas, plot, chart)
    lowest = plot
    if chart.pains:
        lowest = Plot(QRectF(left, under + em, width, strips[0]), days, PAIN)
        _ground(canvas, lowest)
        paint_pain(canvas, lowest, chart)
    if weeks:
        lowest = weeks_plot(QRectF(left, bottom - strips[-1], width, strips[-1]), days, weeks)
        _ground(canvas, lowest)
        paint_done(canvas, lowest, weeks)
    _dates(canvas, lowest)
    painter.restore()


def chart_picture(chart: Chart, size_px: tuple[int, int] = (1280, 720)) -> QImage:
    """Give a picture of a chart; needs a running QGuiApplication with the fonts loaded."""
    width, height = size_px
    image = QImage(QSize(width, height), QImage.Format.Format_RGB32)
    image.fill(QColor(LIGHT.card))
    painter = QPainter(image)
    em = height / 36
    paint_chart(painter, QRectF(em, em, width - 2 * em, height - 2 * em), chart, em)
    painter.end()
    return image


def chart_png(chart: Chart, size_px: tuple[int, int] = (1280, 720)) -> bytes:
    """Give the same picture as the bytes of a PNG file."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    chart_picture(chart, size_px).save(buffer, "PNG")
    return bytes(buffer.data().data())


def _ground(canvas: Canvas, plot: Plot, sign: str = "") -> None:
    em, colours = canvas.em, canvas.palette
    for tick in plot.values.ticks:
        y = plot.y(tick.at)
        canvas.line(
            QPointF(plot.box.left(), y), QPointF(plot.box.right(), y), colours.hairline, 0.06
        )
        box = QRectF(plot.box.left() - 6.5 * em, y - 0.7 * em, 6 * em, 1.4 * em)
        canvas.text(
            box,
            tick.label + sign,
            size=0.9,
            colour=colours.ink_soft,
            align=Align.AlignRight | Align.AlignVCenter,
        )
    for tick in plot.days.ticks:
        x = plot.x(tick.at)
        canvas.line(
            QPointF(x, plot.box.top()), QPointF(x, plot.box.bottom()), colours.hairline, 0.04
        )


def _range(canvas: Canvas, plot: Plot, chart: Chart) -> None:
    em, colours = canvas.em, canvas.palette
    canvas.painter.save()
    canvas.painter.setClipRect(plot.box.adjusted(-0.5 * em, -0.5 * em, 0.5 * em, 0.5 * em))
    if chart.undecided:
        top, bottom = sorted(plot.y(plot.values.within(v)) for v in chart.undecided)
        canvas.hatch(
            QRectF(plot.box.left(), top, plot.box.width(), bottom - top),
            colours.line,
        )
    paint_levels(canvas, plot, chart)
    bars = len(chart.dots) <= _BARS_UP_TO
    for run in chart.runs:
        if len(run) == 1 or bars:
            for dot in run:
                _bar(canvas, plot, dot)
        else:
            upper = [plot.at(d.day, d.value + d.error) for d in run]
            lower = [plot.at(d.day, d.value - d.error) for d in run]
            canvas.fill([*upper, *reversed(lower)], colours.series[0], 0.2)
    for run in chart.runs:
        canvas.painter.setPen(canvas.pen(colours.series[0], 0.14 if chart.weekly else 0.09))
        if not bars:
            canvas.painter.drawPolyline(QPolygonF([plot.at(d.day, d.value) for d in run]))
    for level in (chart.first, chart.last):
        if level:
            widen = max(0.0, 1.6 * em - (plot.x(level.end_day) - plot.x(level.begin_day))) / 2
            begin, end = (
                plot.at(level.begin_day, level.value),
                plot.at(level.end_day, level.value),
            )
            begin.setX(begin.x() - widen)
            end.setX(end.x() + widen)
            canvas.line(begin, end, colours.ink, 0.22)
    if chart.weekly:
        for dot in chart.dots:
            canvas.fill(_square(plot.at(dot.day, dot.value), 0.09 * em), colours.series[0], 0.5)
    else:
        crowded = len(chart.dots) * 0.7 * em > plot.box.width()
        for dot in chart.dots:
            at = plot.at(dot.day, dot.value)
            canvas.disc(at, 0.16 if crowded else 0.26, colours.series[0], hollow=not dot.complete)
    paint_course(canvas, plot, chart)
    canvas.painter.restore()


def _bar(canvas: Canvas, plot: Plot, dot: Dot) -> None:
    colour, half = canvas.palette.series[0], QPointF(0.35 * canvas.em, 0)
    top, bottom = (plot.at(dot.day, dot.value + s * dot.error) for s in (1, -1))
    canvas.line(top, bottom, colour, 0.1)
    canvas.line(top - half, top + half, colour, 0.1)
    canvas.line(bottom - half, bottom + half, colour, 0.1)


def _square(at: QPointF, half: float) -> QRectF:
    return QRectF(at.x() - half, at.y() - half, 2 * half, 2 * half)


def _dates(canvas: Canvas, plot: Plot) -> None:
    em, colours = canvas.em, canvas.palette
    for tick in plot.days.ticks:
        x = plot.x(tick.at)
        # A date under the last line would run out of the picture: it ends there instead.
        last = x > plot.box.right() - 2 * em
        left = plot.box.right() - 7.9 * em if last else x - 4 * em
        side = Align.AlignRight if last else Align.AlignHCenter
        for row, label in enumerate((tick.label, tick.under)):
            box = QRectF(left, plot.box.bottom() + (0.2 + 1.1 * row) * em, 8 * em, 1.2 * em)
            canvas.text(
                box,
                label,
                size=0.9,
                colour=colours.ink_soft,
                align=side | Align.AlignVCenter,
            )

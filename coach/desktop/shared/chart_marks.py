"""What stands on a chart beside the sessions: levels, the course by week, treatments."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QPolygonF

from coach.desktop.shared.canvas import Canvas
from coach.desktop.shared.chart_plot import Plot
from coach.desktop.shared.palettes import Palette
from coach.review.axis import Axis
from coach.review.chart import Chart, Event
from coach.review.wording import amount
from coach.texts import translate

_WORDS = 0.85
_LANE_EM = 1.25
_MOST_LANES = 4
_PEN = Qt.PenStyle


@dataclass(frozen=True, slots=True)
class LevelLine:
    """A level across the chart: value, words for the key, colour and dashes."""

    value: float
    words: str
    colour: str
    style: Qt.PenStyle


def level_lines(chart: Chart, palette: Palette) -> tuple[LevelLine, ...]:
    """Give the levels that a chart has: the other side's, and the plan's two."""
    kinds = (
        (
            chart.other_side_deg,
            translate("chart", "other side {angle}"),
            palette.series[2],
            _PEN.DashLine,
        ),
        (
            chart.next_step_deg,
            translate("chart", "next step from {angle}"),
            palette.accent,
            _PEN.DotLine,
        ),
        (
            chart.not_beyond_deg,
            translate("chart", "not beyond {angle}"),
            palette.caution,
            _PEN.DashDotLine,
        ),
    )
    return tuple(
        LevelLine(value, told.format(angle=amount(value, chart.unit)), colour, style)
        for value, told, colour, style in kinds
        if value is not None
    )


def paint_levels(canvas: Canvas, plot: Plot, chart: Chart) -> None:
    """Draw each level from edge to edge."""
    for level in level_lines(chart, canvas.palette):
        y = plot.y(level.value)
        begin, end = QPointF(plot.box.left(), y), QPointF(plot.box.right(), y)
        canvas.line(begin, end, level.colour, 0.14, level.style)


def paint_course(canvas: Canvas, plot: Plot, chart: Chart) -> None:
    """Draw the weeks' medians and the robust line through them."""
    slope = chart.slope
    if slope:
        begin, end = plot.at(slope.begin_day, slope.begin), plot.at(slope.end_day, slope.end)
        canvas.line(begin, end, canvas.palette.ink, 0.1)
    for week in chart.weeks:
        paint_week(canvas, plot.at(week.day, week.value))


def paint_week(canvas: Canvas, at: QPointF) -> None:
    """Draw the mark of a week's median."""
    half = 0.36 * canvas.em
    edge = [(0, -half), (half, 0), (0, half), (-half, 0)]
    diamond = [QPointF(at.x() + dx, at.y() + dy) for dx, dy in edge]
    canvas.fill(diamond, canvas.palette.card)
    canvas.painter.setPen(canvas.pen(canvas.palette.ink, 0.1))
    canvas.painter.drawPolygon(QPolygonF(diamond))


@dataclass(frozen=True, slots=True)
class Flag:
    """An event's place: where its line is, and its words, ``lane`` 0 nearest to the range."""

    x: float
    lane: int
    left: float
    width: float
    words: str


def flags(
    canvas: Canvas, events: Sequence[Event], left: float, width: float, days: Axis, height: float
) -> tuple[Flag, ...]:
    """Place the words of events so that none covers another: from the right, stacked upward.

    Where they would take more than a sixth of ``height``, or four lines, words are left out.
    """
    gap, right = 0.5 * canvas.em, left + width
    lanes = min(_MOST_LANES, max(1, int(height / 6 / (_LANE_EM * canvas.em))))
    begins = [right + gap] * lanes
    placed: list[Flag] = []
    for event in sorted(events, key=lambda e: e.day, reverse=True):
        x = left + days.share(event.day) * width
        needed = canvas.width(event.words, _WORDS) + 0.1 * canvas.em
        begin = x + gap if x + gap + needed <= right else max(left, x - gap - needed)
        free = (i for i, taken in enumerate(begins) if begin + needed + gap <= taken)
        lane = next(free, None)
        if lane is None:
            placed.append(Flag(x, 0, x, 0.0, ""))
        else:
            begins[lane] = min(begin, x)
            placed.append(Flag(x, lane, begin, needed, event.words))
    return tuple(placed)


def height_of(canvas: Canvas, placed: Sequence[Flag]) -> float:
    """Give the height that the words take above the range."""
    lanes = max((flag.lane + 1 for flag in placed), default=0)
    return lanes * _LANE_EM * canvas.em


def paint_flags(canvas: Canvas, placed: Sequence[Flag], top: float, bottom: float) -> None:
    """Draw a line for each event from its words down to ``bottom``; ``top`` is the range's."""
    em, colours = canvas.em, canvas.palette
    for flag in placed:
        middle = top - (flag.lane + 0.5) * _LANE_EM * em if flag.words else top
        canvas.line(QPointF(flag.x, middle), QPointF(flag.x, bottom), colours.ink_soft, 0.1)
    for flag in placed:
        middle = top - (flag.lane + 0.5) * _LANE_EM * em
        box = QRectF(flag.left, middle - 0.6 * em, flag.width, 1.2 * em)
        canvas.fill(box, colours.card)
        canvas.text(box, flag.words, size=_WORDS)
        point = [(-0.3, -0.45), (0.3, -0.45), (0.0, 0.1)]
        canvas.fill(
            [QPointF(flag.x + dx * em, top + dy * em) for dx, dy in point], colours.ink_soft
        )

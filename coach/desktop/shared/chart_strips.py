"""What stands under the range on the same dates: pain, and what was done of what was asked."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import QRectF

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.chart_plot import Plot
from coach.review.adherence import Week
from coach.review.axis import Axis, Tick
from coach.review.chart import Chart
from coach.texts import translate

PAIN = Axis(-0.8, 10.8, (Tick(0, "0"), Tick(5, "5"), Tick(10, "10")))
WEEKS_EM = 3.6
_STEMS_FROM = 60
_WORDS = 0.85
_NAMED_FROM_EM = 2.1
_HEADROOM = 1.5
_EMPTY_DAYS = 28.0
"""Weeks without a session are shown this long, or as long again as there were sessions."""


def last_day(chart: Chart, weeks: Sequence[Week]) -> float | None:
    """Give how far the dates go, so that weeks left out after the last session are seen."""
    days = [d.day for d in chart.dots] + [p.day for p in chart.pains]
    if not weeks or not days:
        return None
    first, last = min(days), max(days)
    end = weeks[-1].monday.toordinal() + (7.0 if weeks[-1].asked else 0.0)
    return max(last, min(end - 1, last + max(_EMPTY_DAYS, last - first)))


def weeks_plot(box: QRectF, days: Axis, weeks: Sequence[Week]) -> Plot:
    """Scale the counts of sessions to a box, with room for the numbers on top."""
    most = max(max(week.done, week.asked) for week in weeks) or 1
    return Plot(box, days, Axis(0.0, _HEADROOM * most, ()))


def paint_done(canvas: Canvas, plot: Plot, weeks: Sequence[Week]) -> None:
    """Draw one column a week: filled for what was done, an open frame for what was asked."""
    em, colours = canvas.em, canvas.palette
    _heading(canvas, plot, translate("chart", "Sessions by week: done / asked for"))
    canvas.painter.save()
    canvas.painter.setClipRect(plot.box.adjusted(-0.1 * em, 0, 0.1 * em, 0.1 * em))
    for week in weeks:
        begin, end = (plot.x(week.monday.toordinal() + d) for d in (0.0, 7.0))
        gap = 0.1 * (end - begin)
        left, width = begin + gap, end - begin - 2 * gap
        done, asked = plot.y(week.done), plot.y(week.asked)
        floor = plot.box.bottom()
        canvas.fill(QRectF(left, done, width, floor - done), colours.series[0], 0.55)
        canvas.painter.setPen(canvas.pen(colours.line, 0.08))
        canvas.painter.drawRect(QRectF(left, asked, width, floor - asked))
        shown = QRectF(begin, min(done, asked) - 1.05 * em, end - begin, 1.05 * em)
        whole = begin > plot.box.left() - gap and end < plot.box.right() + gap
        if whole and end - begin > _NAMED_FROM_EM * em:
            words = f"{week.done}/{week.asked}"
            canvas.text(shown, words, size=0.75, align=Align.AlignCenter)
    canvas.painter.restore()
    canvas.line(plot.box.bottomLeft(), plot.box.bottomRight(), colours.line, 0.06)


def _heading(canvas: Canvas, plot: Plot, words: str) -> None:
    em, box = canvas.em, plot.box
    place = QRectF(box.left() + 0.3 * em, box.top() - 0.95 * em, box.width(), 1.1 * em)
    width = canvas.width(words, _WORDS)
    canvas.fill(QRectF(place.left(), place.top(), width, place.height()), canvas.palette.card)
    canvas.text(place, words, size=_WORDS, colour=canvas.palette.ink_soft)


def paint_pain(canvas: Canvas, plot: Plot, chart: Chart) -> None:
    """Draw the pain before and after each session, the highest only where there are many."""
    colour = canvas.palette.series[1]
    stems = len(chart.pains) > _STEMS_FROM
    words = (
        translate("chart", "Pain 0\N{EN DASH}10: highest of a session")
        if stems
        else translate(
            "chart", "Pain 0\N{EN DASH}10: \N{WHITE CIRCLE} before, \N{BLACK CIRCLE} after"
        )
    )
    _heading(canvas, plot, words)
    for mark in chart.pains:
        scores = [s for s in (mark.before, mark.after) if s is not None]
        if stems:
            canvas.line(plot.at(mark.day, 0), plot.at(mark.day, max(scores)), colour, 0.1)
            continue
        canvas.line(plot.at(mark.day, min(scores)), plot.at(mark.day, max(scores)), colour, 0.1)
        if mark.before is not None:
            canvas.disc(plot.at(mark.day, mark.before), 0.22, colour, hollow=True)
        if mark.after is not None:
            canvas.disc(plot.at(mark.day, mark.after), 0.22, colour)

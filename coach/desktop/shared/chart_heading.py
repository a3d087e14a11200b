"""A chart's title, what may be concluded from it, and the key to its marks."""

from __future__ import annotations

from PyQt6.QtCore import QPointF, QRectF

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.chart_marks import LevelLine, level_lines, paint_week
from coach.review.chart import Chart
from coach.texts import translate

_LEGEND = 0.85


def paint_heading(canvas: Canvas, rect: QRectF, chart: Chart) -> float:
    """Paint at the top of ``rect`` and give the height that it took."""
    em = canvas.em
    title_width = canvas.width(chart.title, 1.1, bold=True)
    row = QRectF(rect.left(), rect.top(), rect.width(), 1.6 * em)
    canvas.text(row, chart.title, size=1.1, bold=True)
    height = row.height()
    if chart.dots:
        if title_width + 1.2 * em + canvas.width(chart.statement) <= rect.width():
            canvas.text(row, chart.statement, align=Align.AlignRight | Align.AlignVCenter)
        else:
            canvas.text(row.translated(0, 1.4 * em), chart.statement)
            height += 1.4 * em
        height += _legend(canvas, QRectF(rect.left(), rect.top() + height, rect.width(), 0), chart)
    return height + 0.5 * em


def _entries(chart: Chart) -> list[tuple[str, str]]:
    entries = [("dot", translate("chart", "session"))]
    if chart.weekly:
        entries = [
            ("small", translate("chart", "session")),
            ("weeks", translate("chart", "weeks' medians")),
        ]
    elif not all(d.complete for d in chart.dots):
        entries.append(("hollow", translate("chart", "let go early")))
    entries.append(("band", translate("chart", "95 % error")))
    if chart.first or chart.last:
        entries.append(("level", translate("chart", "first, last mean")))
    if chart.undecided:
        entries.append(("undecided", translate("chart", "no real change")))
    if chart.weeks:
        entries.append(("week", translate("chart", "week's median")))
    if chart.slope:
        entries.append(("slope", translate("chart", "slope")))
    return entries


def _legend(canvas: Canvas, row: QRectF, chart: Chart) -> float:
    em = canvas.em
    x, top, height = row.left(), row.top(), 1.3 * em
    levels = {level.words: level for level in level_lines(chart, canvas.palette)}
    for kind, words in [*_entries(chart), *((words, words) for words in levels)]:
        needed = 1.6 * em + canvas.width(words, _LEGEND)
        if x > row.left() and x + needed > row.right():
            x, top = row.left(), top + height
        _key(canvas, QRectF(x, top + 0.25 * em, 1.3 * em, 0.8 * em), kind, levels.get(kind))
        box = QRectF(x + 1.6 * em, top, needed, height)
        canvas.text(box, words, size=_LEGEND, colour=canvas.palette.ink_soft)
        x += needed + 1.1 * em
    return top + height - row.top()


def _key(canvas: Canvas, box: QRectF, kind: str, level: LevelLine | None) -> None:
    colours, centre = canvas.palette, box.center()
    begin, end = QPointF(box.left(), centre.y()), QPointF(box.right(), centre.y())
    if level:
        canvas.line(begin, end, level.colour, 0.14, level.style)
    elif kind in ("dot", "hollow"):
        canvas.disc(centre, 0.26, colours.series[0], hollow=kind == "hollow")
    elif kind == "small":
        canvas.disc(centre, 0.05, colours.series[0])
    elif kind == "weeks":
        canvas.line(begin, end, colours.series[0], 0.14)
    elif kind == "band":
        canvas.fill(box, colours.series[0], 0.2)
    elif kind == "level":
        canvas.line(begin, end, colours.ink, 0.2)
    elif kind == "undecided":
        canvas.hatch(box, colours.line)
    elif kind == "week":
        paint_week(canvas, centre)
    elif kind == "slope":
        canvas.line(begin, end, colours.ink, 0.1)
    else:
        raise ValueError(kind)

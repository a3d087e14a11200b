"""Painting sessions done against sessions asked for, week by week."""

from __future__ import annotations

from PyQt6.QtCore import QPointF, QRectF
from PyQt6.QtGui import QPainter

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.palettes import LIGHT, Palette
from coach.review.adherence import Week
from coach.review.axis import date_axis

_NAMED_UP_TO = 14
_WIDEST = 3.0


def paint_weeks(
    painter: QPainter, rect: QRectF, weeks: tuple[Week, ...], em: float, palette: Palette = LIGHT
) -> None:
    """Paint one column a week: filled for what was done, an open frame for what was asked."""
    canvas = Canvas(painter, em, palette)
    if not weeks:
        return
    painter.save()
    foot = 1.2 * em
    most = max(max(w.done, w.asked) for w in weeks) or 1
    floor = rect.bottom() - foot - 0.2 * em
    height = floor - rect.top() - 1.1 * em
    step = min(_WIDEST * em, rect.width() / len(weeks))
    gap = 0.25 * step if step > 0.5 * em else 0.0
    for index, week in enumerate(weeks):
        left, width = rect.left() + index * step + gap / 2, step - gap
        done = height * week.done / most
        asked = height * week.asked / most
        canvas.fill(QRectF(left, floor - done, width, done), palette.series[0], 0.85)
        if gap:
            painter.setPen(canvas.pen(palette.line, 0.09))
            painter.drawRect(QRectF(left, floor - asked, width, asked))
        else:
            top = QPointF(left, floor - asked)
            canvas.line(top, top + QPointF(width, 0), palette.line, 0.1)
        if len(weeks) <= _NAMED_UP_TO:
            box = QRectF(left - gap / 2, floor - max(done, asked) - 1.1 * em, step, 1.1 * em)
            canvas.text(box, f"{week.done}/{week.asked}", size=0.75, align=Align.AlignCenter)
    end = rect.left() + len(weeks) * step
    canvas.line(QPointF(rect.left(), floor), QPointF(end, floor), palette.line, 0.09)
    _dates(canvas, QRectF(rect.left(), floor + 0.1 * em, end - rect.left(), foot), weeks, step)
    painter.restore()


def _dates(canvas: Canvas, box: QRectF, weeks: tuple[Week, ...], step: float) -> None:
    first = weeks[0].monday.toordinal()
    room = max(1, int(box.width() / (4.2 * canvas.em)))
    days = date_axis(float(first), float(first + 7 * len(weeks)), room).ticks
    last_right = box.left() - canvas.em
    for tick in days:
        left = box.left() + (tick.at - first) / 7 * step
        if left < box.left() - 0.1 * canvas.em or left < last_right + 0.6 * canvas.em:
            continue
        label = f"{tick.label} {tick.under}".strip()
        width = canvas.width(label, 0.8)
        if left + width > box.right() + 3 * canvas.em:
            continue
        canvas.text(
            QRectF(left, box.top(), width + 1, box.height()),
            label,
            size=0.8,
            colour=canvas.palette.ink_soft,
        )
        last_right = left + width

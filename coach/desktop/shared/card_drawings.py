"""Two small drawings: the folded card from above, its angles true, and where it is worn."""

from __future__ import annotations

import math

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPainterPath

from coach.desktop.shared.canvas import Align, Canvas
from coach.domain.card_sheet import TENT_DEG
from coach.texts import translate

_MIDDLE = Align.AlignCenter
_SLOPE = math.tan(math.radians(TENT_DEG))


def paint_from_above(canvas: Canvas, box: QRectF) -> None:
    """Draw chest, strip and tent as seen from above."""
    em, colours = canvas.em, canvas.palette
    _title(canvas, box, translate("card", "Seen from above"))
    half = box.width() / 2 - em
    base = box.top() + 5.4 * em
    left, right = (QPointF(box.center().x() + side * half, base) for side in (-1, 1))
    ridge = QPointF(box.center().x(), base + half * _SLOPE)
    chest = QRectF(box.left(), base - 2.4 * em, box.width(), 2.2 * em)
    canvas.fill(chest, colours.accent_wash)
    canvas.text(chest, translate("card", "chest"), size=1.2, align=_MIDDLE)
    canvas.line(left, right, colours.ink, 0.25)
    canvas.line(left, ridge, colours.ink, 0.45)
    canvas.line(ridge, right, colours.ink, 0.45)
    for side, corner in ((1, left), (-1, right)):
        inside = corner + QPointF(side * 1.1 * em, 0.35 * em)
        tab = QPointF(side * 2.6 * em, 2.6 * em * _SLOPE)
        canvas.line(inside, inside + tab, colours.series[1], 0.3)
    row = QRectF(left.x(), base + 0.3 * em, 2 * half, 1.6 * em)
    canvas.text(row, translate("card", "strip"), size=1.2, align=_MIDDLE)
    canvas.text(
        row.translated(0, 1.8 * em),
        translate("card", "tabs inside"),
        size=1.2,
        colour=colours.series[1],
        align=_MIDDLE,
    )
    canvas.text(
        QRectF(box.left(), ridge.y() + 0.4 * em, box.width(), 1.6 * em),
        translate("card", "ridge, to the front"),
        size=1.2,
        align=_MIDDLE,
    )


def paint_worn(canvas: Canvas, box: QRectF) -> None:
    """Draw where on the chest the card sits."""
    em, colours = canvas.em, canvas.palette
    _title(canvas, box, translate("card", "Worn"))
    x, top = box.center().x(), box.top() + 2.6 * em
    unit = min(box.width() / 10, (box.bottom() - top) / 12)

    def at(across: float, down: float) -> QPointF:
        return QPointF(x + across * unit, top + down * unit)

    body = QPainterPath(at(-0.9, 3.0))
    body.cubicTo(at(-1.0, 4.0), at(-4.4, 3.6), at(-4.6, 5.6))
    body.lineTo(at(-4.4, 12.0))
    body.lineTo(at(4.4, 12.0))
    body.lineTo(at(4.6, 5.6))
    body.cubicTo(at(4.4, 3.6), at(1.0, 4.0), at(0.9, 3.0))
    painter = canvas.painter
    painter.setPen(canvas.pen(colours.line, 0.14))
    painter.setBrush(QColor(colours.accent_wash))
    painter.drawPath(body)
    painter.drawEllipse(at(0, 1.5), 1.35 * unit, 1.7 * unit)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    # The far ends stand back, so they look a little higher up to a camera at chest height or above.
    for side in (-1, 1):
        canvas.fill([at(0, 4.6), at(side * 2.1, 4.4), at(side * 2.1, 7.0), at(0, 7.3)], "#FFFFFF")
        canvas.fill(
            [
                at(side * 0.2, 4.8),
                at(side * 1.9, 4.65),
                at(side * 1.9, 6.8),
                at(side * 0.2, 7.05),
            ],
            colours.ink,
        )


def _title(canvas: Canvas, box: QRectF, words: str) -> None:
    row = QRectF(box.left(), box.top(), box.width(), 1.9 * canvas.em)
    canvas.text(row, words, size=1.3, bold=True)

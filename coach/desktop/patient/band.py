"""The band of time around the picture: how full a hold is, how much rest is left, from afar."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPainter, QPainterPath, QPen, QTransform

from coach.desktop.patient.calm import seconds_shown
from coach.desktop.shared.looks import colours

NOTCH_S = 10.0
"""The band is notched at every so many seconds, so that its length can be read."""
WAITING_NOTCHES = 40
"""While the clock stands the band looks like a comb."""


@dataclass(frozen=True, slots=True)
class Band:
    """Time left: ``remaining_s`` of ``whole_s``; ``waiting`` while the clock stands."""

    remaining_s: float
    whole_s: float
    resting: bool = False
    waiting: bool = False

    @property
    def fraction(self) -> float:
        """The share that is filled, 0 to 1: a hold fills, a rest empties."""
        if self.whole_s <= 0:
            return 0.0
        left = min(1.0, max(0.0, seconds_shown(self.remaining_s) / self.whole_s))
        return left if self.resting else 1.0 - left


def paint_band(painter: QPainter, room: QRectF, band: Band | None, edge: float) -> None:
    """Paint the band, ``edge`` pixels broad, along the inside of ``room``; None leaves it empty.

    It fills on both sides at once, from the middle below to the middle above, and empties back.
    """
    half = _half_outline(room.adjusted(edge, edge, -edge, -edge), edge)
    length = half.length()
    turns = QTransform(), QTransform(-1, 0, 0, 1, room.left() + room.right(), 0)
    paths = [turn.map(half) for turn in turns]
    for path in paths:
        painter.strokePath(path, _flat_pen(colours().trough, edge))
    if band is None:
        return
    filled_px = band.fraction * length
    for path in paths:
        pen = _flat_pen(colours().rest if band.resting else colours().hold, edge)
        if band.fraction < 1.0:
            pen.setDashPattern([max(filled_px, 0.01) / edge, 2.0 * length / edge])
        if filled_px > 0.0:
            painter.strokePath(path, pen)
        _paint_notches(painter, path, band, edge)


def _paint_notches(painter: QPainter, path: QPainterPath, band: Band, edge: float) -> None:
    notch_s = band.whole_s / WAITING_NOTCHES if band.waiting else NOTCH_S
    if notch_s <= 0:
        return
    painter.setPen(_flat_pen(colours().stage, max(3.0, edge * 0.16)))
    for number in range(1, math.ceil(band.whole_s / notch_s)):
        share = number * notch_s / band.whole_s
        at = path.pointAtPercent(share)
        angle_rad = math.radians(path.angleAtPercent(share))
        across = QPointF(math.sin(angle_rad), math.cos(angle_rad)) * (edge * 0.6)
        painter.drawLine(at - across, at + across)


def _half_outline(room: QRectF, radius: float) -> QPainterPath:
    """Right half of a rounded outline, from the middle below to the middle above."""
    path = QPainterPath(QPointF(room.center().x() - 1, room.bottom()))
    path.lineTo(room.right() - radius, room.bottom())
    path.arcTo(
        room.right() - 2 * radius, room.bottom() - 2 * radius, 2 * radius, 2 * radius, -90, 90
    )
    path.lineTo(room.right(), room.top() + radius)
    path.arcTo(room.right() - 2 * radius, room.top(), 2 * radius, 2 * radius, 0, 90)
    path.lineTo(room.center().x() - 1, room.top())
    return path


def _flat_pen(colour: str, width_px: float) -> QPen:
    pen = QPen(QColor(colour), width_px)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    return pen

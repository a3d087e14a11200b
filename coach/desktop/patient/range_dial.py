"""A small drawing of an arm at its measured angle, with the error as a wedge."""

from __future__ import annotations

import math

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QWidget

from coach.desktop.shared.looks import colours
from coach.domain.movement import Movement, Side

_AROUND_DEG = 360.0
_SIXTEENTHS = 16
_TURNS = {
    Movement.EXTERNAL_ROTATION_0: (90.0, -1.0),
    Movement.EXTERNAL_ROTATION_90: (180.0, -1.0),
    Movement.HORIZONTAL_ADDUCTION: (0.0, 1.0),
}
"""Qt's direction, counter-clockwise from the right, of zero for a right arm, and which way its
angle grows; elevations begin below and grow to the right."""


class RangeDial(QWidget):
    """Shows one value; as in a mirror, the patient's left is at the left.

    For elevations zero hangs down and a quarter turn points outwards. For rotation at the side
    and horizontal adduction the person is seen from above, ahead pointing up; for rotation at 90
    degrees from the side.
    """

    def __init__(
        self,
        movement: Movement,
        side: Side,
        angle_deg: float | None,
        error_deg: float,
        parent: QWidget | None = None,
    ) -> None:
        """Draw this value; None draws an empty dial."""
        super().__init__(parent)
        self._zero_deg, self._way = _TURNS.get(movement, (-90.0, 1.0))
        self._mirrored = side is Side.LEFT
        self._angle_deg, self._error_deg = angle_deg, error_deg
        self.setMinimumSize(124, 124)

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        across = min(self.width(), self.height()) - 10.0
        place = QRectF(0, 0, across, across)
        place.moveCenter(QRectF(self.rect()).center())
        middle, reach = place.center(), across / 2
        painter.setPen(QPen(QColor(colours().line), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(place)
        painter.setPen(QPen(QColor(colours().line), 2, Qt.PenStyle.DashLine))
        painter.drawLine(middle, self._at(middle, reach, 0.0))
        if self._angle_deg is not None:
            wedge = QColor(colours().accent)
            wedge.setAlphaF(0.22)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(wedge)
            self._pie(painter, place, 0.0, self._angle_deg)
            painter.setBrush(QColor(colours().series[1]))
            low = self._angle_deg - self._error_deg
            self._pie(painter, place, low, 2 * self._error_deg)
            pen = QPen(QColor(colours().accent), max(4.0, across * 0.055))
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            painter.setPen(pen)
            painter.drawLine(middle, self._at(middle, reach * 0.96, self._angle_deg))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours().ink))
        painter.drawEllipse(middle, across * 0.06, across * 0.06)
        painter.end()

    def _turn_deg(self, angle_deg: float) -> float:
        """Give Qt's direction, counter-clockwise from the right, of an angle of the dial."""
        turned_deg = self._zero_deg + self._way * angle_deg
        return 180.0 - turned_deg if self._mirrored else turned_deg

    def _at(self, middle: QPointF, reach: float, angle_deg: float) -> QPointF:
        turn_rad = math.radians(self._turn_deg(angle_deg))
        return middle + QPointF(math.cos(turn_rad), -math.sin(turn_rad)) * reach

    def _pie(self, painter: QPainter, place: QRectF, from_deg: float, span_deg: float) -> None:
        start = self._turn_deg(from_deg)
        span = self._turn_deg(from_deg + span_deg) - start
        painter.drawPie(place, round(start % _AROUND_DEG * _SIXTEENTHS), round(span * _SIXTEENTHS))

"""A small drawing of the spine with the stretch of it that the thumb reaches."""

from __future__ import annotations

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QWidget

from coach.desktop.shared.looks import colours
from coach.desktop.shared.typeface import font
from coach.review.levels import BUTTOCK, MEASURED_LEVELS, reach_band

_LABEL_PX = 11.0


class BackScale(QWidget):
    """Shows the levels from C7 down to the buttock, and a band of them."""

    def __init__(self, ratio: float | None, error: float, parent: QWidget | None = None) -> None:
        """Draw the band of this height of the wrist; None draws the empty scale."""
        super().__init__(parent)
        self._band = None if ratio is None else reach_band(ratio, error)
        self.setMinimumSize(124, 124)

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = QRectF(self.rect()).adjusted(0, 8, 0, -4)
        spine_x = room.center().x()
        wide = QPen(QColor(colours().line), 2)
        painter.setPen(wide)
        painter.drawLine(self._at(room, 0.0), self._at(room, BUTTOCK))
        if self._band is not None:
            pen = QPen(QColor(colours().series[1]), max(10.0, room.width() * 0.09))
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
            painter.setPen(pen)
            top, bottom = self._band.top, min(self._band.bottom, BUTTOCK)
            painter.drawLine(self._at(room, min(top, BUTTOCK - 0.05)), self._at(room, bottom))
        painter.setFont(font(_LABEL_PX))
        for name, share in MEASURED_LEVELS:
            at = self._at(room, share)
            painter.setPen(wide)
            painter.drawLine(at - QPointF(7, 0), at + QPointF(7, 0))
            painter.setPen(QColor(colours().ink_soft))
            box = QRectF(spine_x + 14, at.y() - _LABEL_PX, room.right() - spine_x - 14, 22)
            painter.drawText(
                box, (Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter).value, name
            )
        painter.end()

    def _at(self, room: QRectF, share: float) -> QPointF:
        return QPointF(room.center().x(), room.top() + share / BUTTOCK * room.height())

"""The scores of pain on a slope, and the time in which one chosen by hand can be taken back."""

from __future__ import annotations

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen, QPolygonF
from PyQt6.QtWidgets import QAbstractButton, QSizePolicy, QWidget

from coach.desktop.patient.calm import share_shown
from coach.desktop.shared.looks import colours
from coach.desktop.shared.typeface import font

HIGHEST = 10
TEN_KEY = "X"
_LOWERED = 0.16
"""How much lower than the offered number the others stand."""
_OF_WIDTH = 0.62
_OFFERED_ONE, _OFFERED_TWO = 1.45, 0.75
"""Type of the offered number, of one digit or two, as a share of its button's width."""
TEN_WIDER = 19
"""The width of the last button against 10 of the others, for two large digits."""


class SureBar(QWidget):
    """A thin bar that runs out while a number chosen by hand can be taken back."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.share: float | None = None
        self.setMinimumHeight(14)

    def show_share(self, share: float | None) -> None:
        """Show how much of the time is left, 0 to 1; None for nothing."""
        share = None if share is None else 1.0 - share_shown(1.0 - share)
        if share != self.share:
            self.share = share
            self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        if self.share is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(colours().accent), 2))
        room = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        painter.drawRoundedRect(room, 6, 6)
        room.setWidth(room.width() * self.share)
        painter.setBrush(QColor(colours().accent))
        painter.drawRoundedRect(room, 6, 6)
        painter.end()


class ScoreButton(QAbstractButton):
    """One score on a slope that rises from 0 to 10; the chosen one is filled."""

    def __init__(self, score: int, parent: QWidget | None = None) -> None:
        """Make the button of ``score``."""
        super().__init__(parent)
        self.score = score
        self.setCheckable(True)
        self.setText(str(score))
        self.setAccessibleName(self.tr("Pain {score} of 10").format(score=score))
        key = TEN_KEY if score == HIGHEST else str(score)
        self.setAccessibleDescription(self.tr("Key: {key}").format(key=key))
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumWidth(56)
        self._offered = False

    @property
    def offered(self) -> bool:
        """Whether the score is marked so."""
        return self._offered

    def offer(self, offered: bool) -> None:
        """Mark the score as the one that a raised hand would choose now."""
        if offered != self._offered:
            self._offered = offered
            self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        whole = QRectF(self.rect())
        chosen, offered = self.isChecked(), self._offered
        low = 0.0 if offered else _LOWERED * whole.height()
        room = whole.adjusted(4, 4 + low, -4, -4)
        shape = QPainterPath()
        shape.addRoundedRect(room, 12, 12)
        ground = colours().stage if offered else colours().card
        painter.fillPath(shape, QColor(colours().accent if chosen else ground))
        if not chosen and not offered:
            painter.setClipPath(shape)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours().accent_wash))
            painter.drawPolygon(self._slope(room))
            painter.setClipping(False)
        if offered and not chosen:
            self._point_down(painter, room)
        focused = self.hasFocus()
        painter.setPen(
            QPen(QColor(colours().focus if focused else colours().accent), 5 if focused else 2)
        )
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(shape)
        ink = colours().hold if offered else colours().ink
        painter.setPen(QColor(colours().on_accent if chosen else ink))
        share = _OF_WIDTH if self.score < HIGHEST else _OF_WIDTH * 10 / TEN_WIDER
        if offered:
            share = _OFFERED_ONE if self.score < HIGHEST else _OFFERED_TWO
        painter.setFont(font(min(room.width() * share, room.height() * 0.6), bold=True))
        painter.drawText(room, Qt.AlignmentFlag.AlignCenter, self.text())
        painter.end()

    def _point_down(self, painter: QPainter, room: QRectF) -> None:
        """Draw an arrow head at the upper edge, so that the mark is not a colour alone."""
        middle, wide = room.center().x(), room.width() * 0.3
        top = room.top() + 8
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours().hold))
        painter.drawPolygon(
            QPolygonF(
                [
                    QPointF(middle - wide, top),
                    QPointF(middle + wide, top),
                    QPointF(middle, top + wide),
                ]
            )
        )

    def _slope(self, room: QRectF) -> QPolygonF:
        steps = HIGHEST + 1
        left = room.bottom() - room.height() * self.score / steps
        right = room.bottom() - room.height() * (self.score + 1) / steps
        return QPolygonF(
            [
                QPointF(room.left(), room.bottom()),
                QPointF(room.left(), left),
                QPointF(room.right(), right),
                QPointF(room.right(), room.bottom()),
            ]
        )

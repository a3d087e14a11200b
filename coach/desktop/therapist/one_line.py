"""A line of words that may be longer than there is room for."""

from __future__ import annotations

from PyQt6.QtCore import QSize, Qt
from PyQt6.QtGui import QPainter, QPaintEvent
from PyQt6.QtWidgets import QLabel


class OneLine(QLabel):
    """Ends in dots where the words do not fit."""

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        """Ask for a few letters only, unless the words may be broken."""
        hint = super().minimumSizeHint()
        return (
            hint if self.wordWrap() else QSize(min(hint.width(), 4 * hint.height()), hint.height())
        )

    def paintEvent(self, a0: QPaintEvent | None) -> None:  # noqa: N802
        """Paint."""
        if self.wordWrap():
            super().paintEvent(a0)
            return
        room = self.contentsRect().marginsRemoved(self.contentsMargins())
        room.adjust(self.margin(), self.margin(), -self.margin(), -self.margin())
        words = self.fontMetrics().elidedText(
            self.text(), Qt.TextElideMode.ElideRight, room.width()
        )
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, words)
        painter.end()

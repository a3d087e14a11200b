"""What a window with enlarged text needs: lengths that grow with it, and a way to scroll."""

from __future__ import annotations

from typing import Protocol

from PyQt6.QtCore import QEvent, QObject, QSize, Qt
from PyQt6.QtGui import QKeyEvent, QResizeEvent
from PyQt6.QtWidgets import QBoxLayout, QFrame, QScrollArea, QVBoxLayout, QWidget

from coach.desktop.shared.looks import looks


def scaled(px: int) -> int:
    """Give a length that goes with the size of type."""
    return round(px * looks().text)


_HINT_PX = 200


class Reflowing(Protocol):
    """What can be laid out for less width."""

    def reflow(self, width_px: int) -> None:
        """Take no more width than this."""


class Downward(QScrollArea):
    """Scrolls up and down only: what is inside is told how wide it may be, and gets no wider."""

    def __init__(self, inside: QWidget, reflowing: Reflowing | None = None) -> None:
        """Show ``inside``; ``reflowing`` hears of every width."""
        super().__init__()
        self._inside, self._reflowing, self._whole = inside, reflowing, False
        self.setWidget(inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # what is inside takes it
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def set_whole(self, whole: bool) -> None:
        """Be as high as what is inside, where an area around this one scrolls."""
        if whole is self._whole:
            return
        self._whole = whole
        policy = Qt.ScrollBarPolicy
        self.setVerticalScrollBarPolicy(
            policy.ScrollBarAlwaysOff if whole else policy.ScrollBarAsNeeded
        )
        high = self.sizePolicy()
        high.setHeightForWidth(whole)
        self.setSizePolicy(high)
        self.updateGeometry()

    def heightForWidth(self, a0: int) -> int:  # noqa: N802
        """Give the height of what is inside, where all of it is to be seen."""
        frame = 2 * self.frameWidth()
        if not self._whole:
            return super().heightForWidth(a0)
        least = self._inside.minimumSizeHint().height()
        return max(least, self._inside.heightForWidth(a0 - frame)) + frame

    def sizeHint(self) -> QSize:  # noqa: N802
        """Ask for no more than a few lines by itself; the rest is shared out around it."""
        hint = super().sizeHint()
        if self._whole:
            return QSize(hint.width(), self.heightForWidth(self.width()))
        return QSize(hint.width(), min(hint.height(), scaled(_HINT_PX)))

    def minimumSizeHint(self) -> QSize:  # noqa: N802
        """Ask for a few lines, or for all of what is inside."""
        hint = super().minimumSizeHint()
        return QSize(hint.width(), self.heightForWidth(self.width())) if self._whole else hint

    def resizeEvent(self, a0: QResizeEvent | None) -> None:  # noqa: N802
        """Tell the width, less a scroll bar's, which would come and go otherwise."""
        if self._reflowing is not None and (bar := self.verticalScrollBar()) is not None:
            self._reflowing.reflow(self.width() - bar.sizeHint().width())
        super().resizeEvent(a0)

    def eventFilter(self, a0: QObject | None, a1: QEvent | None) -> bool:  # noqa: N802
        """Ask for another height where what is inside has another."""
        if self._whole and a1 is not None and a1.type() is QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().eventFilter(a0, a1)

    def keyPressEvent(self, a0: QKeyEvent | None) -> None:  # noqa: N802
        """Leave the keys to the area around where nothing scrolls in here."""
        if self._whole and a0 is not None:
            a0.ignore()
        else:
            super().keyPressEvent(a0)


def beside_or_below(row: QBoxLayout, *, beside: bool) -> None:
    """Let the parts of a layout stand beside each other or below each other."""
    way = QBoxLayout.Direction
    row.setDirection(way.LeftToRight if beside else way.TopToBottom)


def let_scroll(window: QWidget, reflowing: Reflowing) -> None:
    """Let all that is laid out in a window scroll downward where it has too little room."""
    inside = QWidget()
    inside.setObjectName("page")
    inside.setLayout(window.layout())  # takes what is in it along
    column = QVBoxLayout(window)
    column.setContentsMargins(0, 0, 0, 0)
    column.addWidget(Downward(inside, reflowing))

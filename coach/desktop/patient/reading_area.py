"""Words that scroll where they are too many for their place, as with enlarged text."""

from __future__ import annotations

from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QFrame, QLayout, QScrollArea, QWidget

_SCROLL_KEYS = {
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_PageDown: 1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_PageUp: -1,
}
_OF_PAGE = 0.8
"""How much of what is seen a key moves on, so that the last line read stays in sight."""


class ReadingArea(QScrollArea):
    """Holds a layout; nothing scrolls, and Tab does not come by, where all of it fits."""

    def __init__(self, inside: QLayout, name: str, parent: QWidget | None = None) -> None:
        """Hold ``inside``; ``name`` is for a screen reader."""
        super().__init__(parent)
        sheet = QWidget()
        sheet.setObjectName("page")
        sheet.setLayout(inside)
        self.setWidget(sheet)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setProperty("role", "reading")
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(name)
        if (bar := self.verticalScrollBar()) is not None:
            bar.rangeChanged.connect(self._measured)

    @property
    def at_end(self) -> bool:
        """Whether the last of it is in sight."""
        bar = self.verticalScrollBar()
        return bar is None or bar.value() >= bar.maximum()

    def scroll(self, way: int) -> bool:  # type: ignore[override]
        """Move on (1) or back (-1); False where there is nothing more."""
        bar = self.verticalScrollBar()
        if bar is None:
            return False
        before = bar.value()
        bar.setValue(before + round(way * _OF_PAGE * bar.pageStep()))
        return bar.value() != before

    def to_top(self) -> None:
        """Begin anew, where other words stand now."""
        if (bar := self.verticalScrollBar()) is not None:
            bar.setValue(0)

    def _measured(self, _least: int, most: int) -> None:
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus if most else Qt.FocusPolicy.NoFocus)


def scroll_by_key(page: QWidget | None, key: Qt.Key) -> bool:
    """Scroll what is to be read on a page, the first that goes further; False where none does."""
    way = _SCROLL_KEYS.get(key)
    if page is None or way is None:
        return False
    areas = [area for area in page.findChildren(ReadingArea) if area.isVisible()]
    return any(area.scroll(way) for area in areas)

"""Parts of one width, as many beside each other as there is room for."""

from __future__ import annotations

from PyQt6.QtCore import QRect, QSize
from PyQt6.QtWidgets import QLayout, QLayoutItem


class Cells(QLayout):
    """Lays out in rows of equal cells; what is hidden takes none."""

    def __init__(self, spacing_px: int) -> None:
        """Begin empty."""
        super().__init__()
        self._items: list[QLayoutItem] = []
        self.setSpacing(spacing_px)
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, a0: QLayoutItem | None) -> None:  # noqa: N802
        """Take one more."""
        if a0 is not None:
            self._items.append(a0)

    def count(self) -> int:
        """Count the parts."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """Give a part."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """Give a part away."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def minimumSize(self) -> QSize:  # noqa: N802
        """Ask for the room of the largest part."""
        return self._cell()

    def sizeHint(self) -> QSize:  # noqa: N802
        """Ask for one cell; the rest follows from the width."""
        return self._cell()

    def hasHeightForWidth(self) -> bool:  # noqa: N802
        """Say that fewer columns need more rows."""
        return True

    def heightForWidth(self, a0: int) -> int:  # noqa: N802
        """Give the height of all rows."""
        rows = -(-len(self._shown()) // self._columns(a0))
        return rows * self._cell().height() + max(0, rows - 1) * self.spacing()

    def setGeometry(self, a0: QRect) -> None:  # noqa: N802
        """Place the parts."""
        super().setGeometry(a0)
        columns, gap, high = self._columns(a0.width()), self.spacing(), self._cell().height()
        wide = (a0.width() - (columns - 1) * gap) // columns
        for at, item in enumerate(self._shown()):
            down, across = divmod(at, columns)
            left, top = a0.left() + across * (wide + gap), a0.top() + down * (high + gap)
            item.setGeometry(QRect(left, top, wide, high))

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _cell(self) -> QSize:
        cell = QSize(0, 0)
        for item in self._shown():
            cell = cell.expandedTo(item.sizeHint())
        return cell

    def _columns(self, width_px: int) -> int:
        wide, gap = self._cell().width(), self.spacing()
        return max(1, min(len(self._shown()), (width_px + gap) // max(1, wide + gap)))

"""How rows of lists, tables and trees look: room around the words, the chosen one marked twice."""

from __future__ import annotations

from string import Template

from PyQt6.QtCore import QModelIndex, QRect, QSize, Qt
from PyQt6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTreeView,
)

_BAR_PX, _LIST_ABOVE_PX, _TALL_PX = 4, 4, 10_000
# The chosen row differs by more than its tint: a bar at its side, or lines above and below.
_LIST = """
QListView { padding: 2px; outline: 0; }
QListView::item {
    padding: ${above}px ${across}px; border: 0; border-left: ${bar}px solid transparent;
}
QListView::item:selected { border-left: ${bar}px solid palette(highlight); }
"""
_TABLE = """
QAbstractItemView { padding: 2px; outline: 0; }
QAbstractItemView::item {
    padding: ${above}px ${across}px; border: 0; border-top: 2px solid transparent;
    border-bottom: 2px solid transparent;
}
QAbstractItemView::item:selected {
    border-top: 2px solid palette(highlight); border-bottom: 2px solid palette(highlight);
}
"""


def set_rows(
    view: QAbstractItemView,
    *,
    above_px: int = _LIST_ABOVE_PX,
    across_px: int = 6,
    wrapped: bool = False,
    more: str = "",
) -> None:
    """Give a view its look, with room above and below and at both sides of the words.

    ``wrapped`` makes each row as high as its last column needs in the width that it has.
    """
    sheet = _LIST if isinstance(view, QListView) else _TABLE
    sizes = {"above": above_px, "across": across_px, "bar": _BAR_PX}
    view.setStyleSheet(Template(sheet).substitute(sizes) + more)
    if wrapped:
        view.setItemDelegate(_Wrapped(view, 2 * across_px + _BAR_PX, 2 * above_px))


class _Wrapped(QStyledItemDelegate):
    """Counts the room beside the words when it breaks them, which Qt's own does not."""

    def __init__(self, view: QAbstractItemView, beside_px: int, above_and_below_px: int) -> None:
        super().__init__(view)
        self._view, self._beside_px, self._high_px = view, beside_px, above_and_below_px

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:  # noqa: N802
        """Give the size of a cell."""
        view, port = self._view, self._view.viewport()
        text = str(index.data() or "")
        if not isinstance(view, QTreeView):
            across_px = port.width() if port is not None else option.rect.width()
            return QSize(across_px, self._high_px + self._lines_px(text, across_px))
        hint = super().sizeHint(option, index)
        if index.column() != (header.count() if (header := view.header()) else 0) - 1:
            return hint
        needed_px = self._lines_px(text, view.columnWidth(index.column()))
        return QSize(hint.width(), max(hint.height(), needed_px + self._high_px + _BAR_PX))

    def _lines_px(self, text: str, across_px: int) -> int:
        # A hair less than there is: the style measures fractions of a pixel.
        room = QRect(0, 0, across_px - self._beside_px - 4, _TALL_PX)
        metrics = self._view.fontMetrics()
        return metrics.boundingRect(room, Qt.TextFlag.TextWordWrap, text).height()

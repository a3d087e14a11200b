"""The rows of a report as a table."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PyQt6.QtCore import QAbstractTableModel, QModelIndex, QObject, Qt

from coach.desktop.shared.typeface import font
from coach.review.change import Verdict
from coach.review.report import Row
from coach.review.report_columns import COLUMNS, column_title
from coach.review.verdict_wording import verdict_words

_TEXT_COLUMNS = (COLUMNS.index("Movement"), COLUMNS.index("Verdict"))


class MovementTable(QAbstractTableModel):
    """One movement of one side a row, with the cells that the report prints."""

    def __init__(self, text_px: int, parent: QObject | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._rows: tuple[Row, ...] = ()
        self._bold = font(text_px, bold=True)

    def show(self, rows: Sequence[Row]) -> None:
        """Show other rows."""
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

    def row(self, index: int) -> Row:
        """Give what a row is made of."""
        return self._rows[index]

    def rowCount(self, parent: QModelIndex = QModelIndex()) -> int:  # noqa: B008, N802
        """Count the movements."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: QModelIndex = QModelIndex()) -> int:  # noqa: B008, N802
        """Count the columns of the report."""
        return 0 if parent.isValid() else len(COLUMNS)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Give a cell's text and looks."""
        if not index.isValid() or index.row() >= len(self._rows):
            return None
        cell = self._rows[index.row()].cells[index.column()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return cell
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _alignment(index.column())
        if role == Qt.ItemDataRole.FontRole and cell == verdict_words(Verdict.REAL):
            return self._bold
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{column_title(COLUMNS[index.column()])}: {cell}"
        return None

    def headerData(  # noqa: N802
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Give a column's name."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return column_title(COLUMNS[section])
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _alignment(section)
        return None


def _alignment(column: int) -> int:
    side = Qt.AlignmentFlag.AlignLeft if column in _TEXT_COLUMNS else Qt.AlignmentFlag.AlignRight
    return int((side | Qt.AlignmentFlag.AlignVCenter).value)

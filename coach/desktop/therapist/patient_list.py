"""The patients of a store as a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PyQt6.QtCore import QAbstractListModel, QModelIndex, QObject, Qt

from coach.review.wording import counted, day
from coach.storage.store import PatientEntry


class PatientList(QAbstractListModel):
    """One patient a row: the code, and below it how many sessions and when the last was."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._entries: tuple[PatientEntry, ...] = ()

    def show(self, entries: Sequence[PatientEntry]) -> None:
        """Show other entries."""
        self.beginResetModel()
        self._entries = tuple(entries)
        self.endResetModel()

    def code(self, row: int) -> str:
        """Give the code of a row."""
        return self._entries[row].code

    def row_of(self, code: str | None) -> int:
        """Find a patient's row, -1 where there is none."""
        return next((i for i, e in enumerate(self._entries) if e.code == code), -1)

    def rowCount(self, parent: QModelIndex = QModelIndex()) -> int:  # noqa: B008, N802
        """Count the patients."""
        return 0 if parent.isValid() else len(self._entries)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Give the text of a row."""
        if not index.isValid() or index.row() >= len(self._entries):
            return None
        entry = self._entries[index.row()]
        sessions = f"{counted(entry.sessions, 'session')}, last {day(entry.last_at.date())}"
        if role == Qt.ItemDataRole.DisplayRole:
            return f"{entry.code}\n{sessions}"
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"Patient {entry.code}, {sessions}"
        return None

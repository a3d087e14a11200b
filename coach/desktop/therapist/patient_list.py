"""The patients of a store as a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PyQt6.QtCore import QAbstractListModel, QModelIndex, QObject, Qt

from coach.review.cohort import Standing
from coach.review.wording import counted, day
from coach.storage.store import PatientEntry

NOTHING = "nothing stands out"
_MOST = 2
"""Reasons named in a row; the tool tip says all in full."""


class PatientList(QAbstractListModel):
    """One patient a row: the code, how many sessions and when the last was, why to look there."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._entries: tuple[PatientEntry, ...] = ()
        self._standings: dict[str, Standing] = {}

    def show(self, entries: Sequence[PatientEntry], standings: Sequence[Standing] = ()) -> None:
        """Show other entries, in the order of their standings where there are any."""
        self.beginResetModel()
        self._standings = {standing.patient_code: standing for standing in standings}
        place = {code: row for row, code in enumerate(self._standings)}
        self._entries = tuple(sorted(entries, key=lambda e: place.get(e.code, len(place))))
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
        standing = self._standings.get(entry.code)
        reasons = () if standing is None else standing.reasons
        if role == Qt.ItemDataRole.DisplayRole:
            why = ", ".join(reason.concern.value for reason in reasons[:_MOST]) or NOTHING
            return f"{entry.code}\n{sessions}\n{why}"
        sentences = " ".join(reason.sentence for reason in reasons)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"Patient {entry.code}, {sessions}. {sentences}".rstrip()
        if role == Qt.ItemDataRole.ToolTipRole:
            return sentences
        return None

"""The patients of a store as a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PyQt6.QtCore import QAbstractListModel, QModelIndex, QObject, Qt

from coach.domain.practice import Person
from coach.review.cohort import Standing
from coach.review.cohort_reasons import concern_words
from coach.review.counts import sessions_counted
from coach.review.wording import day
from coach.storage.store import PatientEntry
from coach.texts import translate

_MOST = 2
"""Concerns named in a row; the tool tip says all in full."""


class PatientList(QAbstractListModel):
    """One person a row: code and name, how many sessions and when the last was, why to look."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._codes: tuple[str, ...] = ()
        self._names: dict[str, str] = {}
        self._entries: dict[str, PatientEntry] = {}
        self._standings: dict[str, Standing] = {}

    def show(
        self,
        entries: Sequence[PatientEntry],
        standings: Sequence[Standing] = (),
        people: Sequence[Person] = (),
    ) -> None:
        """Show other entries, in the order of their standings where there are any.

        ``people`` without sessions come behind.
        """
        self.beginResetModel()
        self._standings = {standing.patient_code: standing for standing in standings}
        place = {code: at for at, code in enumerate(self._standings)}
        self._entries = {entry.code: entry for entry in entries}
        self._names = {person.code: person.name for person in people}
        heard_of = sorted(self._entries, key=lambda code: place.get(code, len(place)))
        self._codes = (*heard_of, *(c for c in self._names if c not in self._entries))
        self.endResetModel()

    def code(self, row: int) -> str:
        """Give the code of a row."""
        return self._codes[row]

    def row_of(self, code: str | None) -> int:
        """Find a patient's row, -1 where there is none."""
        return self._codes.index(code) if code in self._codes else -1

    def rowCount(self, parent: QModelIndex = QModelIndex()) -> int:  # noqa: B008, N802
        """Count the patients."""
        return 0 if parent.isValid() else len(self._codes)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Give the text of a row."""
        if not index.isValid() or index.row() >= len(self._codes):
            return None
        code = self._codes[index.row()]
        sessions = _sessions(self._entries.get(code))
        name = ", ".join(filter(None, (code, self._names.get(code, ""))))
        standing = self._standings.get(code)
        reasons = () if standing is None else standing.reasons
        sentences = " ".join(reason.sentence for reason in reasons)
        match role:
            case Qt.ItemDataRole.DisplayRole:
                concerns = dict.fromkeys(concern_words(reason.concern) for reason in reasons)
                why = ", ".join([*concerns][:_MOST])
                if not why and code in self._entries:
                    why = translate("therapist", "nothing stands out")
                return f"{name}\n{sessions}\n{why}"
            case Qt.ItemDataRole.AccessibleTextRole:
                told = translate("therapist", "Patient {name}, {sessions}. {reasons}")
                return told.format(name=name, sessions=sessions, reasons=sentences).rstrip()
            case Qt.ItemDataRole.ToolTipRole:
                return sentences
        return None


def _sessions(entry: PatientEntry | None) -> str:
    if entry is None:
        return translate("therapist", "no session yet")
    told = translate("therapist", "{sessions}, last {day}")
    return told.format(sessions=sessions_counted(entry.sessions), day=day(entry.last_at.date()))

"""Whom to look at first, without reading again who has nothing new."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from coach.review.cohort import Standing, in_need, standing
from coach.storage.store import PatientEntry, Store


class Standings:
    """Remembers what was found of each patient until a session comes or goes, or the day ends."""

    def __init__(self, store: Store) -> None:
        """Begin with nobody."""
        self._store = store
        self._known: dict[tuple[PatientEntry, date], Standing] = {}

    def of(self, entries: Sequence[PatientEntry], today: date) -> tuple[Standing, ...]:
        """Give everyone's standing, the most pressing first. Raises ``Fault``."""
        self._known = {
            (entry, today): self._known.get((entry, today))
            or standing(entry.code, self._store.sessions_of(entry.code), today)
            for entry in entries
        }
        return in_need(self._known.values())

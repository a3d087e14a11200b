"""Changes of the practice's records from this desk, each with its way back."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

import msgspec

from coach.domain.practice import Episode, OfEpisode, Record
from coach.storage.store import Store

R = TypeVar("R", bound=Record)
_Undo = tuple[str, Callable[[], Record]]


class RecordChanges:
    """Adds, changes and removes in the store; the last change is taken back first.

    What another desk changed meanwhile stays as that desk left it: the store's Fault says so, and
    the change is not offered to be taken back again.
    """

    def __init__(self, store: Store) -> None:
        """Begin with nothing to take back."""
        self._store = store
        self._undos: list[_Undo] = []
        self._now: dict[tuple[type[Record], int], Record] = {}

    @property
    def last(self) -> str:
        """What would be taken back, in words; empty where there is nothing."""
        return self._undos[-1][0] if self._undos else ""

    def add(self, record: R, what: str) -> R:
        """Add a record; ``what`` says what was done."""
        added = self._store.add(record)
        self._undos.append((what, lambda: self._remove(added)))
        return added

    def change(self, old: R, new: R, what: str) -> R:
        """Put ``new`` in the place of ``old``, which was read from the store."""
        changed = self._store.change(new)
        self._note(old, changed)
        self._undos.append((what, lambda: self._put_back(old)))
        return changed

    def remove(self, record: Record, what: str) -> None:
        """Remove a record as it was read."""
        held = self._belonging_to(record)
        self._store.remove(record)
        self._undos.append((what, lambda: self._add_again(record, held)))

    def undo(self) -> Record:
        """Take the last change back; gives the record it was about. Raises Fault, see above."""
        _, act = self._undos.pop()
        return act()

    def forget(self) -> None:
        """Offer nothing any more: a person was erased."""
        self._undos.clear()

    def _note(self, old: Record, new: Record) -> None:
        assert old.id is not None
        self._now[type(old), old.id] = new

    def _latest(self, record: R) -> R:
        """Give a record with the number and edition by which the store knows it by now."""
        found: Record = record
        while (now := self._now.get((type(found), found.id or 0))) not in (None, found):
            found = now or found
        return msgspec.structs.replace(record, id=found.id, edition=found.edition)

    def _remove(self, record: Record) -> Record:
        self._store.remove(self._latest(record))
        return record

    def _put_back(self, old: R) -> R:
        changed = self._store.change(self._latest(old))
        self._note(old, changed)
        return changed

    def _add_again(self, record: R, held: tuple[OfEpisode, ...]) -> R:
        added = self._store.add(msgspec.structs.replace(record, id=None, edition=0))
        self._note(record, added)
        for one in held:
            mine = self._latest(one)
            changed = self._store.change(msgspec.structs.replace(mine, episode_id=added.id))
            self._note(one, changed)
        return added

    def _belonging_to(self, record: Record) -> tuple[OfEpisode, ...]:
        """Give what belongs to an episode, which is let go of when it is removed."""
        if not isinstance(record, Episode):
            return ()
        found = self._store.records_of(record.code)
        kinds = (found.treatments, found.other_side, found.by_hand, found.scores, found.plans)
        return tuple(r for kind in kinds for r in kind if r.episode_id == record.id)

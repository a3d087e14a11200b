"""The store's list of files, and of those that could not be taken."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from enum import StrEnum

from sqlalchemy import Connection, and_, delete, insert, select

from coach.domain.text import shown_text
from coach.storage.store_database import Database
from coach.storage.store_rows import utc_text
from coach.storage.store_tables import imports
from coach.texts import kept, read_again


class ImportOutcome(StrEnum):
    """What became of a file."""

    ACCEPTED = "accepted"
    DOUBTFUL = "doubtful"
    """Taken in, but it contradicts what the practice knows."""
    KNOWN = "already known"
    REFUSED = "refused"


@dataclass(frozen=True, slots=True)
class Refusal:
    """A file that was not taken, and why."""

    at: datetime
    file_name: str
    reason: str


# Files that were taken have a session: by its index those are passed over, however many there are.
_REFUSED = and_(imports.c.session_id.is_(None), imports.c.outcome == ImportOutcome.REFUSED)


class Refusals(Database):
    """Remembers what could not be imported until it can, or is forgotten."""

    def note_refusal(self, file_name: str, reason: str) -> None:
        """Remember a file that could not be taken; a later word on the same name replaces it."""
        self._write(lambda c: note(c, file_name, ImportOutcome.REFUSED, reason, None))

    def refusals(self) -> tuple[Refusal, ...]:
        """List the files that could not be taken, newest first."""
        c = imports.c
        query = select(c.at_utc, c.file_name, c.reason).where(_REFUSED)
        with self._read() as connection:
            rows = connection.execute(query.order_by(c.id.desc()))
            return tuple(
                Refusal(datetime.fromisoformat(r[0]), r[1], read_again(r[2])) for r in rows
            )

    def forget_refusals(self) -> None:
        """Empty the list of refused files."""
        self._write(lambda connection: connection.execute(delete(imports).where(_REFUSED)))


def note(
    connection: Connection,
    file_name: str,
    outcome: ImportOutcome,
    reason: str,
    session_id: str | None,
) -> None:
    """Write down what became of a file; a refusal of the same name is taken back."""
    name = shown_text(file_name)[:255]
    connection.execute(delete(imports).where(_REFUSED, imports.c.file_name == name))
    row = {
        "at_utc": utc_text(datetime.now(UTC)),
        "file_name": name,
        "outcome": outcome,
        "reason": kept(reason),
        "session_id": session_id,
    }
    connection.execute(insert(imports), [row])

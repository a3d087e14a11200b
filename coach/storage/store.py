"""The therapist's store of received sessions."""

from __future__ import annotations

import hashlib
import secrets
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

import msgspec
from sqlalchemy import Connection, ScalarSelect, Text, delete, func, insert, select
from sqlalchemy.sql.elements import SQLCoreOperations

from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.review.history import started
from coach.review.wording import day
from coach.storage.store_cohort import Cohort
from coach.storage.store_doubt import doubt_about
from coach.storage.store_doubts import COUNTED, Decision, Doubt, Doubts
from coach.storage.store_kinds import has_more
from coach.storage.store_looks import Looks
from coach.storage.store_practice import PracticeRecords
from coach.storage.store_refusals import ImportOutcome, Refusal, Refusals, note
from coach.storage.store_rows import add_session, utc_text
from coach.storage.store_sessions import stored_document
from coach.storage.store_tables import files, imports, patients, sessions
from coach.texts import in_both, kept, translate

__all__ = [
    "LARGEST_FILE_BYTES",
    "Batch",
    "Decision",
    "Doubt",
    "ImportOutcome",
    "Imported",
    "PatientEntry",
    "Refusal",
    "Store",
    "new_batch",
]  # fmt: skip

LARGEST_FILE_BYTES = 64_000_000
"""A session file of two hours stays far below this."""
_CLOCKS_DIFFER = timedelta(days=2)
_FIRST_YEAR = 2000
"""A computer that lost its clock says 1970 or 1980."""


@dataclass(frozen=True, slots=True)
class PatientEntry:
    """A patient in the list; the times keep the zone offsets of the patient's place."""

    code: str
    sessions: int
    first_at: datetime
    last_at: datetime


@dataclass(frozen=True, slots=True)
class Batch:
    """An import that can be taken back: when it ended, and how many sessions are here of it."""

    id: str
    at: datetime
    sessions: int


@dataclass(frozen=True, slots=True)
class Imported:
    """What became of a session; ``doubt`` is a sentence where it is doubtful."""

    outcome: ImportOutcome
    doubt: str = ""


def new_batch() -> str:
    """Give a number under which the files of one import are taken in."""
    return secrets.token_hex(16)


class Store(PracticeRecords, Refusals, Doubts, Looks, Cohort):
    """Received sessions and the practice's records; every import is kept whole or not at all.

    An older store is brought up to date when it is opened, after a copy was made beside it.
    """

    def import_session(
        self, document: SessionDocument, original: bytes, file_name: str, batch: str | None = None
    ) -> Imported:
        """Take in one session with the bytes of its file, all or nothing.

        Gives ACCEPTED or DOUBTFUL, or KNOWN where the same session is here already. Raises Fault
        where another session has the same number or the session lies in the future. ``batch``
        is the import it belongs to, by default one of its own.
        """
        if len(original) > LARGEST_FILE_BYTES:
            raise Fault(
                translate(
                    "faults",
                    "{file_name} has {original} MB, more than a session file can have: "
                    "ask the patient to send it again.",
                ).format(file_name=file_name, original=len(original) // 1024**2)
            )
        at = started(document)
        if at.year < _FIRST_YEAR or at > datetime.now(UTC) + _CLOCKS_DIFFER:
            raise Fault(
                translate(
                    "faults",
                    "{file_name} says it began on {date}, which cannot be: check the "
                    "clock of the patient's computer.",
                ).format(file_name=file_name, date=day(at.date()))
            )
        text = msgspec.json.encode(document).decode()
        under = batch or new_batch()

        def work(connection: Connection) -> Imported:
            query = select(sessions.c.document).where(sessions.c.id == document.session_id)
            present = connection.scalar(query)
            if present is not None:
                if present != text and stored_document(present, file_name) != document:
                    raise Fault(
                        translate(
                            "faults",
                            "{file_name} has the number of a session that is here "
                            "already, but other contents: ask the patient which of the "
                            "two files is right.",
                        ).format(file_name=file_name)
                    )
                return Imported(ImportOutcome.KNOWN)
            with in_both():
                doubt = doubt_about(connection, document) or ""
            add_session(
                connection,
                document,
                text,
                started_utc=utc_text(at),
                imported_utc=utc_text(datetime.now(UTC)),
                batch=under,
                doubt=kept(doubt),
            )
            digest = hashlib.sha256(original).hexdigest()
            row = {"session_id": document.session_id, "sha256": digest, "content": original}
            connection.execute(insert(files), [row])
            outcome = ImportOutcome.DOUBTFUL if doubt else ImportOutcome.ACCEPTED
            note(connection, file_name, outcome, doubt, document.session_id)
            return Imported(outcome, doubt)

        return self._write(work)

    def last_import(self) -> Batch | None:
        """Give the import that came last, at whichever desk; None where there is none to undo."""
        # The list of files is short and in order; the table of sessions holds all documents.
        query = select(sessions.c.batch, imports.c.at_utc)
        query = query.join(imports, imports.c.session_id == sessions.c.id)
        query = query.where(sessions.c.batch.is_not(None)).order_by(imports.c.id.desc()).limit(1)
        with self._read() as connection:
            row = connection.execute(query).first()
            if row is None:
                return None
            count = select(func.count()).where(sessions.c.batch == row.batch)
            number = connection.scalar(count) or 0
            return Batch(row.batch, datetime.fromisoformat(row.at_utc), number)

    def undo_import(self, batch: str) -> int:
        """Take an import back; gives how many sessions went.

        People who came with it go as well, where nothing else is kept of them by now.
        """

        def work(connection: Connection) -> int:
            gone = connection.execute(delete(sessions).where(sessions.c.batch == batch)).rowcount
            came = select(patients.c.id).where(patients.c.batch == batch, patients.c.name == "")
            for patient in connection.scalars(came).all():
                if not has_more(connection, patient):
                    connection.execute(delete(patients).where(patients.c.id == patient))
            return gone

        return self._write(work)

    def patients(self) -> tuple[PatientEntry, ...]:
        """List the patients with sessions, the one heard of last first."""
        totals = (
            select(
                sessions.c.patient_id,
                func.count().label("sessions"),
                func.min(sessions.c.started_utc).label("first"),
                func.max(sessions.c.started_utc).label("last"),
            )
            .where(COUNTED)
            .group_by(sessions.c.patient_id)
            .subquery()
        )

        def as_shown(instant: SQLCoreOperations[str]) -> ScalarSelect[str]:
            query = select(func.min(sessions.c.started_at, type_=Text))
            mine = sessions.c.patient_id == totals.c.patient_id
            this = sessions.c.started_utc == instant
            return query.where(mine, this, COUNTED).scalar_subquery()

        query = (
            select(
                patients.c.code,
                totals.c.sessions,
                as_shown(totals.c.first),
                as_shown(totals.c.last),
            )
            .join(patients, patients.c.id == totals.c.patient_id)
            .order_by(totals.c.last.desc(), patients.c.code)
        )
        with self._read() as connection:
            return tuple(
                PatientEntry(code, n, datetime.fromisoformat(first), datetime.fromisoformat(last))
                for code, n, first, last in connection.execute(query)
            )

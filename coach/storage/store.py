"""The therapist's store of received sessions."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from enum import StrEnum
from pathlib import Path

import msgspec
from sqlalchemy import Connection, delete, insert, inspect, select

from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.review.history import started
from coach.storage.store_engine import open_engine, reading, writing
from coach.storage.store_rows import add_session, utc_text
from coach.storage.store_tables import (
    STORE_VERSION,
    files,
    imports,
    metadata,
    patients,
    sessions,
    store_version,
)
from coach.storage.store_upgrade import known_version, upgrade

LARGEST_FILE_BYTES = 64_000_000
"""A session file of two hours stays far below this."""
_CLOCKS_DIFFER = timedelta(days=2)
_FIRST_YEAR = 2000
"""A computer that lost its clock says 1970 or 1980."""


class ImportOutcome(StrEnum):
    """What became of a file."""

    ACCEPTED = "accepted"
    KNOWN = "already known"
    REFUSED = "refused"


@dataclass(frozen=True, slots=True)
class PatientEntry:
    """A patient in the list; the times keep the zone offsets of the patient's place."""

    code: str
    sessions: int
    first_at: datetime
    last_at: datetime


@dataclass(frozen=True, slots=True)
class Refusal:
    """A file that was not taken, and why."""

    at: datetime
    file_name: str
    reason: str


class Store:
    """Received sessions, by patient; every import is kept whole or not at all.

    An older store is brought up to date when it is opened. Raises Fault where the store is newer
    than the program, damaged, or something else.
    """

    def __init__(self, target: Path | str, passphrase: str | None = None) -> None:
        """Open the SQLite file at a path, made if missing, or the database behind a URL.

        With a ``passphrase`` the file is a locked one, see ``store_lock``.
        """
        self._engine, self.name = open_engine(target, passphrase)
        try:
            self._check_version()
        except Fault:
            self._engine.dispose()
            raise

    def close(self) -> None:
        """Let go of the database; may be called twice."""
        self._engine.dispose()

    def _check_version(self) -> None:
        with reading(self._engine, self.name) as connection:
            tables = set(inspect(connection).get_table_names())
        if not tables:
            with writing(self._engine, self.name) as connection:
                metadata.create_all(connection)
                if connection.scalar(select(store_version.c.version)) is None:
                    row = {"version": STORE_VERSION, "created_utc": utc_text(datetime.now(UTC))}
                    connection.execute(insert(store_version), [row])
            return
        version = None
        if "store_version" in tables:
            with reading(self._engine, self.name) as connection:
                version = known_version(connection)
        if version is None:
            raise Fault(
                f"The file at {self.name} is a database, but no store of this program: choose "
                "another file."
            )
        if version > STORE_VERSION:
            raise Fault(
                f"The store at {self.name} has version {version} and this program knows up to "
                f"{STORE_VERSION}: install the newer program."
            )
        if version < STORE_VERSION:
            with writing(self._engine, self.name) as connection:
                upgrade(connection)

    def import_session(
        self, document: SessionDocument, original: bytes, file_name: str
    ) -> ImportOutcome:
        """Take in one session with the bytes of its file, all or nothing.

        Gives ACCEPTED, or KNOWN where the same session is here already. Raises Fault where
        another session has the same number or the session lies in the future.
        """
        if len(original) > LARGEST_FILE_BYTES:
            raise Fault(
                f"{file_name} has {len(original) // 1024**2} MB, more than a session file can "
                "have: ask the patient to send it again."
            )
        at = started(document)
        if at.year < _FIRST_YEAR or at > datetime.now(UTC) + _CLOCKS_DIFFER:
            raise Fault(
                f"{file_name} says it began on {at.date()}, which cannot be: check the clock of "
                "the patient's computer."
            )
        text = msgspec.json.encode(document).decode()
        with writing(self._engine, self.name) as connection:
            query = select(sessions.c.document).where(sessions.c.id == document.session_id)
            present = connection.scalar(query)
            if present is not None:
                if present != text:
                    raise Fault(
                        f"{file_name} has the number of a session that is here already, but other "
                        "contents: ask the patient which of the two files is right."
                    )
                return ImportOutcome.KNOWN
            add_session(connection, document, utc_text(at), text)
            digest = hashlib.sha256(original).hexdigest()
            row = {"session_id": document.session_id, "sha256": digest, "content": original}
            connection.execute(insert(files), [row])
            _note(connection, file_name, ImportOutcome.ACCEPTED, "", document.session_id)
        return ImportOutcome.ACCEPTED

    def note_refusal(self, file_name: str, reason: str) -> None:
        """Remember a file that could not be taken; a later word on the same name replaces it."""
        with writing(self._engine, self.name) as connection:
            _note(connection, file_name, ImportOutcome.REFUSED, reason, None)

    def refusals(self) -> tuple[Refusal, ...]:
        """List the files that could not be taken, newest first."""
        c = imports.c
        query = select(c.at_utc, c.file_name, c.reason).where(c.outcome == ImportOutcome.REFUSED)
        with reading(self._engine, self.name) as connection:
            rows = connection.execute(query.order_by(c.id.desc())).all()
        return tuple(Refusal(datetime.fromisoformat(r[0]), r[1], r[2]) for r in rows)

    def forget_refusals(self) -> None:
        """Empty the list of refused files."""
        with writing(self._engine, self.name) as connection:
            connection.execute(delete(imports).where(imports.c.outcome == ImportOutcome.REFUSED))

    def patients(self) -> tuple[PatientEntry, ...]:
        """List the patients, the one heard of last first."""
        query = select(patients.c.code, sessions.c.started_at).join(
            patients, patients.c.id == sessions.c.patient_id
        )
        with reading(self._engine, self.name) as connection:
            rows = connection.execute(query.order_by(sessions.c.started_utc)).all()
        found: dict[str, list[str]] = {}
        for code, started_at in rows:
            found.setdefault(code, []).append(started_at)
        entries = [
            PatientEntry(c, len(a), datetime.fromisoformat(a[0]), datetime.fromisoformat(a[-1]))
            for c, a in found.items()
        ]
        return tuple(sorted(entries, key=lambda e: e.last_at, reverse=True))

    def sessions_of(self, code: str) -> tuple[SessionDocument, ...]:
        """Give one patient's sessions, oldest first."""
        query = (
            select(sessions.c.document)
            .join(patients, patients.c.id == sessions.c.patient_id)
            .where(patients.c.code == code)
            .order_by(sessions.c.started_utc, sessions.c.id)
        )
        with reading(self._engine, self.name) as connection:
            texts = connection.scalars(query).all()
        try:
            decoder = msgspec.json.Decoder(SessionDocument)
            return tuple(decoder.decode(text) for text in texts)
        except msgspec.MsgspecError as error:
            raise Fault(
                f"A session of {code} in the store at {self.name} is damaged ({error}): put a "
                "backup copy in its place."
            ) from error

    def original(self, session_id: str) -> bytes:
        """Give a session's file as it came."""
        query = select(files.c.content).where(files.c.session_id == session_id)
        with reading(self._engine, self.name) as connection:
            content = connection.scalar(query)
        if content is None:
            raise Fault(
                f"There is no session {session_id[:8]} in the store at {self.name}: "
                "import its file."
            )
        return bytes(content)


def _note(
    connection: Connection,
    file_name: str,
    outcome: ImportOutcome,
    reason: str,
    session_id: str | None,
) -> None:
    name = file_name[:255]
    refused = imports.c.outcome == ImportOutcome.REFUSED
    connection.execute(delete(imports).where(refused, imports.c.file_name == name))
    row = {
        "at_utc": utc_text(datetime.now(UTC)),
        "file_name": name,
        "outcome": outcome,
        "reason": reason,
        "session_id": session_id,
    }
    connection.execute(insert(imports), [row])

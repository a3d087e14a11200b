"""From a store of version 1 to this version, within one transaction."""

from __future__ import annotations

from datetime import UTC, datetime

import msgspec
from sqlalchemy import Connection, func, insert, select, update

from coach.documents.session import read_session_document
from coach.domain.fault import Fault
from coach.storage.store_rows import add_exercises, utc_text
from coach.storage.store_tables import (
    STORE_VERSION,
    exercises,
    metadata,
    repetitions,
    sessions,
    store_version,
)


def known_version(connection: Connection) -> int | None:
    """Give the version the store says it has, None where it says none."""
    version = connection.scalar(select(func.max(store_version.c.version)))
    return version if isinstance(version, int) else None


def upgrade(connection: Connection) -> None:
    """Bring documents to their present version and build what repeats them in columns anew.

    Patients, files as they came and the list of imports stay untouched. A document that cannot be
    read stays as it is, so that asking for it says so; it has no rows of its own.
    """
    version = known_version(connection)
    if version is None or version >= STORE_VERSION:  # another program was quicker
        return
    repeated = [exercises, repetitions]
    metadata.drop_all(connection, tables=repeated)
    metadata.create_all(connection, tables=repeated)
    for session_id in connection.scalars(select(sessions.c.id)).all():
        mine = sessions.c.id == session_id
        text = connection.scalar(select(sessions.c.document).where(mine)) or ""
        try:
            document = read_session_document(text.encode(), f"session {session_id[:8]}")
        except Fault:
            continue
        now = msgspec.json.encode(document).decode()
        connection.execute(update(sessions).where(mine).values(document=now))
        add_exercises(connection, document)
    row = {"version": STORE_VERSION, "created_utc": utc_text(datetime.now(UTC))}
    connection.execute(insert(store_version), [row])

"""Making the tables, and bringing an older store to this version, within one transaction."""

from __future__ import annotations

from datetime import UTC, datetime

import msgspec
from sqlalchemy import Connection, delete, func, insert, select, update

from coach.documents.session import read_session_document
from coach.domain.fault import Fault
from coach.storage.store_rows import add_exercises, utc_text
from coach.storage.store_tables import (
    STORE_VERSION,
    exercises,
    repetitions,
    sessions,
    store_version,
)

_BEFORE_ALEMBIC = (1, 2)
"""Versions whose stores do not hold Alembic's own word on them."""


def known_version(connection: Connection) -> int | None:
    """Give the version the store says it has, None where it says none."""
    version = connection.scalar(select(func.max(store_version.c.version)))
    return version if isinstance(version, int) else None


def upgrade(connection: Connection, version: int | None) -> None:
    """Bring a store of ``version``, None for an empty database, to this version.

    Patients, files as they came and the list of imports keep what they hold; documents become
    those of the present version and what repeats them in columns is built anew. A document that
    cannot be read stays as it is, so that asking for it says so; it has no rows of its own.
    """
    # Alembic takes a quarter of the program's start, and is needed where a store is made or old.
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", "coach.storage:migrations")
    config.attributes["connection"] = connection
    if version in _BEFORE_ALEMBIC:
        command.stamp(config, f"v{version}")
    command.upgrade(config, f"v{STORE_VERSION}")
    connection.execute(delete(repetitions))
    connection.execute(delete(exercises))
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

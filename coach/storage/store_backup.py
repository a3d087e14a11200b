"""A copy of an SQLite store before it is upgraded, and the way back; a locked one stays locked."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Engine

from coach.domain.fault import Fault
from coach.storage.atomic import PART_SUFFIX, sync_folder
from coach.storage.disk_fault import disk_fault
from coach.storage.store_lock import BACKUP_SUFFIX
from coach.texts import translate


def make_backup(engine: Engine, path: Path, version: int) -> Path:
    """Copy the store of ``version`` at ``path`` beside it; give the copy, the owner's alone.

    The caller holds the right to write, so that the copy is what the upgrade begins with. Raises
    Fault where there is no room for it.
    """
    copy = path.with_name(f"{path.name}.version-{version}{BACKUP_SUFFIX}")
    part = copy.with_name(copy.name + PART_SUFFIX)
    try:
        part.unlink(missing_ok=True)
        os.close(os.open(part, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
        with _driver(engine) as connection:
            connection.execute("VACUUM INTO ?", (str(part),))
        with part.open("r+b") as file:
            os.fsync(file.fileno())
        part.replace(copy)
        sync_folder(copy.parent)
    except OSError as error:
        raise disk_fault(error, copy, "made") from error
    except engine.dialect.loaded_dbapi.Error as error:
        part.unlink(missing_ok=True)
        raise Fault(
            translate(
                "faults",
                "The store at {path} could not be copied before its upgrade ({error}): "
                "free some space there and try again.",
            ).format(path=path, error=error)
        ) from error
    return copy


def put_back_if_harmed(engine: Engine, path: Path, copy: Engine) -> None:
    """Put the copy in the store's place where a failed upgrade left anything but the old store.

    An unharmed one is left alone: another desk may have written to it since.
    """
    errors = engine.dialect.loaded_dbapi.Error
    with _driver(copy) as source:
        try:
            with _driver(engine) as target:
                if _make(target) == _make(source):
                    return
        except errors:
            pass  # harmed: the copy must come back
        try:
            with _driver(engine) as target:
                source.backup(target)
        except errors as error:
            raise Fault(
                translate(
                    "faults",
                    "The store at {path} was harmed by its upgrade ({error}): put its "
                    "backup copy of the folder {folder} in its place.",
                ).format(path=path, error=error, folder=path.parent)
            ) from error


@contextmanager
def _driver(engine: Engine) -> Iterator[Any]:
    """Give a connection of the driver, which runs each statement by itself."""
    connection = engine.raw_connection()
    try:
        yield connection.driver_connection
    finally:
        connection.close()


def _make(connection: Any) -> list[Any]:
    """Give a store's version and how its tables are made; None as version where it is damaged."""
    sound = connection.execute("PRAGMA quick_check").fetchone()[0] == "ok"
    version = connection.execute("SELECT max(version) FROM store_version").fetchone()
    made = connection.execute("SELECT name, sql FROM sqlite_master ORDER BY name").fetchall()
    return [version if sound else None, *made]

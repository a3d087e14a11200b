"""Opening the database behind the store, and turning its errors into sentences."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import DatabaseError, SQLAlchemyError

from coach.domain.fault import Fault
from coach.storage.store_lock import locked_engine

_BUSY_MS = 10_000
_WRITES = "store_writes"


def open_engine(target: Path | str, passphrase: str | None = None) -> tuple[Engine, str]:
    """Give an engine and the name by which people know the store.

    ``target`` is the path of an SQLite file, made with the owner's rights only where it does not
    exist, or a database URL. ``passphrase`` opens a locked file.
    """
    if isinstance(target, str) and "://" in target:
        engine = create_engine(target)
        return engine, engine.url.render_as_string(hide_password=True)
    path = Path(target).expanduser().absolute()
    _make_private(path)
    timeout_s = _BUSY_MS / 1000
    if passphrase is None:
        engine = create_engine(f"sqlite:///{path}", connect_args={"timeout": timeout_s})
    else:
        engine = locked_engine(path, passphrase, timeout_s)
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", _begin)
    return engine, str(path)


@contextmanager
def reading(engine: Engine, name: str) -> Iterator[Connection]:
    """Give one consistent view of the store."""
    with _sentences(name), engine.begin() as connection:
        yield connection


@contextmanager
def writing(engine: Engine, name: str) -> Iterator[Connection]:
    """Give a transaction that is kept whole or not at all."""
    with _sentences(name), engine.execution_options(**{_WRITES: True}).begin() as connection:
        yield connection


def _make_private(path: Path) -> None:
    try:
        path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        os.close(os.open(path, os.O_CREAT | os.O_RDWR, 0o600))
    except OSError as error:
        raise Fault(
            f"The store cannot be opened at {path} ({error.strerror}): choose a folder in which "
            "you may write."
        ) from error


def _prepare(connection: Any, _record: object) -> None:
    # The driver must not begin transactions of its own: _begin does, before the first read.
    connection.isolation_level = None
    cursor = connection.cursor()
    for pragma in ("journal_mode = WAL", "foreign_keys = ON", "synchronous = FULL"):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _begin(connection: Connection) -> None:
    writes = connection.get_execution_options().get(_WRITES)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


@contextmanager
def _sentences(name: str) -> Iterator[None]:
    try:
        yield
    except SQLAlchemyError as error:
        raise Fault(_sentence(error, name)) from error


def _sentence(error: SQLAlchemyError, name: str) -> str:
    said = str(error.orig) if isinstance(error, DatabaseError) else str(error)
    lowered = said.lower()
    if "locked" in lowered or "busy" in lowered:
        return f"The store at {name} is in use by another program: close that one and try again."
    if "full" in lowered:
        return f"There is no room left for the store at {name}: free some space and try again."
    if "readonly" in lowered or "unable to open" in lowered:
        return f"The store at {name} cannot be written: ask for the right to write there."
    if "not a database" in lowered or "malformed" in lowered or "no such" in lowered:
        return (
            f"The store at {name} is locked, damaged or no store of this program: unlock it with "
            "its passphrase, put a backup copy in its place, or move the file away to begin anew."
        )
    return f"The store at {name} refused ({said.splitlines()[0]}): try again, and keep a copy."

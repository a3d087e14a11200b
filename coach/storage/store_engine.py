"""Opening the database behind the store, and its transactions."""

from __future__ import annotations

import os
import random
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url, text
from sqlalchemy.exc import ArgumentError, DBAPIError

from coach.domain.fault import Fault
from coach.storage.store_lock import locked_engine
from coach.storage.store_words import sentences
from coach.texts import translate

T = TypeVar("T")

_BUSY_MS = 10_000
_WRITES = "store_writes"
_COLLISIONS = ("40001", "40P01", "23505")
"""SQLSTATE of PostgreSQL, appendix A: serialization failure, deadlock, unique violation."""
_ATTEMPTS = 30
_FIRST_PAUSE_S, _LONGEST_PAUSE_S = 0.01, 0.5
_UPGRADE_LOCK = 0x53686F756C646572
"""Any number that other programs on the same server would hardly choose."""
_SAME_MACHINE = ("localhost", "127.0.0.1", "::1")


def open_engine(target: Path | str, passphrase: str | None = None) -> tuple[Engine, str]:
    """Give an engine and the name by which people know the store.

    ``target`` is the path of an SQLite file, made with the owner's rights only where it does not
    exist, or the URL of a PostgreSQL database; ``passphrase`` opens a locked file. Raises Fault
    where it cannot be one.
    """
    if isinstance(target, str) and "://" in target:
        url = _server(target)
        name = url.set(drivername="postgresql").render_as_string(hide_password=True)
        if passphrase is not None:
            raise Fault(
                translate(
                    "faults",
                    "The store at {name} is on a server, which no passphrase of this "
                    "program locks: open it without one.",
                ).format(name=name)
            )
        try:
            return create_engine(url, pool_pre_ping=True), name
        except ImportError as error:
            raise Fault(
                translate(
                    "faults",
                    "The store at {name} needs the driver of PostgreSQL: install it "
                    "with pip install 'stiff-shoulder-coach[postgres]'.",
                ).format(name=name)
            ) from error
    path = Path(target).expanduser().absolute()
    _make_private(path)
    url = URL.create("sqlite", database=str(path))
    timeout_s = _BUSY_MS / 1000
    if passphrase is None:
        engine = create_engine(url, connect_args={"timeout": timeout_s})
    else:
        engine = locked_engine(path, passphrase, timeout_s)
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", _begin)
    return engine, str(path)


def on_server(engine: Engine) -> bool:
    """Whether PostgreSQL is behind the engine, and not an SQLite file."""
    return engine.dialect.name == "postgresql"


@contextmanager
def reading(engine: Engine, name: str) -> Iterator[Connection]:
    """Give one consistent view of the store."""
    options: dict[str, Any] = {}
    if on_server(engine):
        options = {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True}
    with sentences(name), engine.execution_options(**options).begin() as connection:
        yield connection


def write(engine: Engine, name: str, work: Callable[[Connection], T]) -> T:
    """Do ``work`` in a transaction that is kept whole or not at all, as if nobody else wrote.

    Where another desk was quicker, ``work`` is done again on what that one left; so it must not
    change anything but the store.
    """
    options: dict[str, Any] = {_WRITES: True}
    if on_server(engine):
        options["isolation_level"] = "SERIALIZABLE"
    with sentences(name):
        for attempt in range(_ATTEMPTS):
            try:
                with engine.execution_options(**options).begin() as connection:
                    return work(connection)
            except DBAPIError as error:
                collided = getattr(error.orig, "sqlstate", None) in _COLLISIONS
                if not collided or attempt == _ATTEMPTS - 1:
                    raise
            # A random pause, no secret, so that two desks do not meet again.
            longest = min(_FIRST_PAUSE_S * 2**attempt, _LONGEST_PAUSE_S)
            time.sleep(random.uniform(0, longest))  # nosec B311
    raise AssertionError("the last attempt returns or raises")


@contextmanager
def rebuilding(engine: Engine, name: str) -> Iterator[Connection]:
    """Give a transaction for a change of the tables, one desk at a time."""
    options: dict[str, Any] = {_WRITES: True}
    if on_server(engine):
        options["isolation_level"] = "READ COMMITTED"  # who waited must see what was done
    with sentences(name), engine.execution_options(**options).begin() as connection:
        if on_server(engine):
            connection.execute(text(f"SELECT pg_advisory_xact_lock({_UPGRADE_LOCK})"))
        yield connection


def _server(target: str) -> URL:
    try:
        url = make_url(target)
    except (ArgumentError, ValueError) as error:
        raise Fault(
            translate(
                "faults",
                "The store's URL cannot be read: write it as postgresql://user@host/database.",
            )
        ) from error
    if url.drivername not in ("postgresql", "postgres", "postgresql+psycopg"):
        raise Fault(
            translate(
                "faults",
                "A store cannot be kept behind a URL of {drivername}: name a file, or a"
                " database as postgresql://user@host/database.",
            ).format(drivername=url.drivername)
        )
    url = url.set(drivername="postgresql+psycopg")
    named = url.normalized_query.get("host", ()) or ([url.host] if url.host else [])
    elsewhere = any(h not in _SAME_MACHINE and not h.startswith("/") for h in named)
    if elsewhere and "sslmode" not in url.query:
        # What is known of patients crosses a network encrypted or not at all.
        url = url.update_query_dict({"sslmode": "require"})
    return url


def _make_private(path: Path) -> None:
    try:
        path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        os.close(os.open(path, os.O_CREAT | os.O_RDWR, 0o600))
    except OSError as error:
        raise Fault(
            translate(
                "faults",
                "The store cannot be opened at {path} ({strerror}): choose a folder in "
                "which you may write.",
            ).format(path=path, strerror=error.strerror)
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

"""A store that is open: its database at this program's version, to read from and write to."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager
from pathlib import Path
from typing import TypeVar

from sqlalchemy import Connection, inspect

from coach.domain.fault import Fault
from coach.storage.store_backup import make_backup, put_back_if_harmed
from coach.storage.store_engine import on_server, open_engine, reading, rebuilding, write
from coach.storage.store_tables import STORE_VERSION
from coach.storage.store_upgrade import known_version, upgrade
from coach.texts import translate

T = TypeVar("T")


class Database:
    """The database behind the store: an SQLite file, or PostgreSQL for several desks."""

    def __init__(self, target: Path | str, passphrase: str | None = None) -> None:
        """Open the SQLite file at a path, made if missing, or the database behind a URL.

        With a ``passphrase`` the file is a locked one, see ``store_lock``. Raises Fault where the
        store is newer than the program, damaged, or something else.
        """
        self._engine, self.name = open_engine(target, passphrase)
        try:
            self._bring_up(passphrase)
        except BaseException:
            self._engine.dispose()
            raise

    def close(self) -> None:
        """Let go of the database; may be called twice."""
        self._engine.dispose()

    def _read(self) -> AbstractContextManager[Connection]:
        return reading(self._engine, self.name)

    def _write(self, work: Callable[[Connection], T]) -> T:
        return write(self._engine, self.name, work)

    def _bring_up(self, passphrase: str | None) -> None:
        with self._read() as connection:
            if self._version(connection) == STORE_VERSION:
                return
        copy = None
        try:
            with rebuilding(self._engine, self.name) as connection:
                version = self._version(connection)
                if version == STORE_VERSION:  # another program was quicker
                    return
                if version is not None and not on_server(self._engine):
                    copy = make_backup(self._engine, Path(self.name), version)
                upgrade(connection, version)
        except BaseException:
            if copy is not None:
                kept, _ = open_engine(copy, passphrase)
                put_back_if_harmed(self._engine, Path(self.name), kept)
                kept.dispose()
            raise

    def _version(self, connection: Connection) -> int | None:
        """Give the store's version, None for an empty database; any other raises Fault."""
        tables = set(inspect(connection).get_table_names())
        if not tables:
            return None
        version = known_version(connection) if "store_version" in tables else None
        if version is None:
            raise Fault(
                translate(
                    "faults",
                    "At {store} is a database, but no store of this program: choose another.",
                ).format(store=self.name)
            )
        if version > STORE_VERSION:
            raise Fault(
                translate(
                    "faults",
                    "The store at {store} has version {version} and this program knows "
                    "up to {store_version}: install the newer program.",
                ).format(store=self.name, version=version, store_version=STORE_VERSION)
            )
        return version

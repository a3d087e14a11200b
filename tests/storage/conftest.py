"""Stores on both databases: an SQLite file, and a PostgreSQL server for the time of the tests."""

from __future__ import annotations

import importlib.util
import os
import shutil
import sqlite3
import subprocess
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path
from types import ModuleType
from typing import Any

import psycopg
import pytest

from coach.storage.store import Store
from coach.storage.store_tables import metadata

INVENTED = Path(__file__).parents[1] / "review" / "conftest.py"


@dataclass
class Place:
    """Where a store may be, and a look at it with another library than the store's."""

    target: Path | str
    opened: list[Store] = field(default_factory=list)

    @property
    def kind(self) -> str:
        return "sqlite" if isinstance(self.target, Path) else "postgresql"

    def open(self) -> Store:
        self.opened.append(Store(self.target))
        return self.opened[-1]

    def ask(self, query: str) -> list[tuple[Any, ...]]:
        connection: Any = (
            psycopg.connect(self.target)
            if isinstance(self.target, str)
            else sqlite3.connect(self.target)
        )
        with closing(connection):
            cursor = connection.execute(query)
            found = cursor.fetchall() if cursor.description else []
            connection.commit()
        return list(found)

    def rows(self) -> dict[str, int]:
        """Count the rows of every table."""
        return {t: self.ask(f"select count(*) from {t}")[0][0] for t in metadata.tables}


def _binaries() -> Path | None:
    """Where Debian keeps the server's programs, which are not on the path of every shell."""
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"))
    if found:
        return found[-1].parent
    on_path = shutil.which("initdb")
    return Path(on_path).resolve().parent if on_path else None


def _unprivileged() -> dict[str, Any]:
    """The server does not run as root; give what makes a process another user's."""
    if not hasattr(os, "geteuid") or os.geteuid() != 0:
        return {}
    import pwd

    names = {entry.pw_name: entry for entry in pwd.getpwall()}
    entry = names.get("postgres") or names["nobody"]
    return {"user": entry.pw_uid, "group": entry.pw_gid, "extra_groups": []}


@pytest.fixture(scope="session")
def new_database() -> Iterator[Callable[[], str]]:
    """Makes an empty database on a server of its own, and gives its URL."""
    with database_server() as make:
        yield make


@contextmanager
def database_server() -> Iterator[Callable[[], str]]:
    """Run a server of its own; gives what makes an empty database on it and gives its URL."""
    binaries = _binaries()
    if binaries is None:
        pytest.skip("no PostgreSQL server on this machine: apt-get install postgresql")
    # pytest's own folders are closed to other users, and a socket's path must be short.
    folder = Path(tempfile.mkdtemp(prefix="pg"))
    other = _unprivileged()
    if other:
        os.chown(folder, other["user"], other["group"])

    def run(program: str, *arguments: str) -> None:
        command = [str(binaries / program), *arguments]
        subprocess.run(
            command, cwd=folder, check=True, stdout=subprocess.DEVNULL, timeout=120, **other
        )

    data, user = str(folder / "data"), "desk"
    try:
        run("initdb", "-D", data, "-U", user, "--auth=trust", "-E", "UTF8", "--locale=C", "-N")
        options = f"-k {folder} -c listen_addresses='' -c fsync=off"
        run("pg_ctl", "-D", data, "-w", "-l", str(folder / "log"), "-o", options, "start")
        try:
            numbers = count()

            def make() -> str:
                name = f"store{next(numbers)}"
                url = f"postgresql://{user}@/{{}}?host={folder}"
                with psycopg.connect(url.format("postgres"), autocommit=True) as connection:
                    connection.execute(f"create database {name}")
                return url.format(name)

            yield make
        finally:
            run("pg_ctl", "-D", data, "-m", "fast", "stop")
    finally:
        shutil.rmtree(folder, ignore_errors=True)


@pytest.fixture(params=["sqlite", "postgresql"])
def place(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Place]:
    """An empty place for a store, on each database."""
    if request.param == "sqlite":
        made = Place(tmp_path / "practice" / "store.sqlite")
    else:
        made = Place(request.getfixturevalue("new_database")())
    yield made
    for store in made.opened:
        store.close()


@pytest.fixture
def store(place: Place) -> Store:
    """An open store on each database."""
    return place.open()


@pytest.fixture(scope="session")
def invented() -> ModuleType:
    """make_session and session_file, shared with the tests of the review."""
    spec = importlib.util.spec_from_file_location("invented_sessions", INVENTED)
    assert spec
    assert spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module

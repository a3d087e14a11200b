"""A store whose disk is full: a real one of a few pages, and SQLite's own bound on pages."""

from __future__ import annotations

import sqlite3
import subprocess
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from types import ModuleType

import pytest
from sqlalchemy import event

from coach.domain.fault import Fault
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_file
from tests.fuzz.judge import wrong_with

Room = tuple[Store, Callable[[], None]]
"""A store with room for some sessions, and what gives it more."""


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Room]:
    folder = tmp_path / "small"
    folder.mkdir()
    command = ["mount", "-t", "tmpfs", "-o", "size=16m", "tmpfs", str(folder)]
    try:
        subprocess.run(command, check=True, capture_output=True)
    except (OSError, subprocess.CalledProcessError):
        pytest.skip("no disk can be mounted here")
    store = Store(folder / "store.sqlite")
    filler = folder / "filler"
    filler.write_bytes(bytes(14_000_000))
    yield store, filler.unlink
    store.close()
    subprocess.run(["umount", str(folder)], check=True)


@pytest.fixture
def few_pages(tmp_path: Path) -> Iterator[Room]:
    Store(tmp_path / "store.sqlite").close()
    with closing(sqlite3.connect(tmp_path / "store.sqlite")) as connection:
        pages = connection.execute("PRAGMA page_count").fetchone()[0]
    most = pages + 40
    store = Store(tmp_path / "store.sqlite")

    def bound(connection: sqlite3.Connection, record: object) -> None:
        connection.execute(f"PRAGMA max_page_count = {most}")

    def more() -> None:
        nonlocal most
        most = 1_000_000
        store._engine.dispose()

    event.listen(store._engine, "connect", bound)
    store._engine.dispose()
    yield store, more
    store.close()


@pytest.mark.parametrize("kind", ["small_disk", "few_pages"])
def test_an_import_on_a_full_disk_leaves_nothing_in_part_and_goes_on_when_there_is_room(
    kind: str, invented: ModuleType, tmp_path: Path, request: pytest.FixtureRequest
) -> None:
    store, make_room = request.getfixturevalue(kind)
    path = tmp_path / "a.shoulder.zip"
    taken = 0

    def taken_in() -> str:
        """Take the next one in; give what keeps it out."""
        path.write_bytes(invented.session_file(invented.make_session(taken + 1)))
        try:
            done = import_file(store, path)
        except Fault as fault:  # not even the refusal finds room
            return str(fault)
        return done.reason if done.outcome is ImportOutcome.REFUSED else ""

    while not (told := taken_in()) and taken < 300:
        taken += 1
    assert taken > 1
    assert "no room left for the store" in told
    assert wrong_with(told) is None
    (entry,) = store.patients()
    documents = store.sessions_of(entry.code)
    assert entry.sessions == len(documents) == taken
    assert rows(store) == taken

    make_room()
    for _ in range(30):
        assert taken_in() == ""
        taken += 1
    assert rows(store) == taken
    store.close()
    again = Store(Path(store.name))
    assert again.sessions_of(entry.code)[: len(documents)] == documents
    assert len(again.sessions_of(entry.code)) == taken
    again.close()


def rows(store: Store) -> int:
    """Give how many sessions lie in the file, each whole, by another library than the store's."""
    with closing(sqlite3.connect(store.name)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
        holds = "SELECT session_id FROM repetitions GROUP BY 1 HAVING count(*) = 3"
        whole = [
            holds,
            "SELECT id FROM sessions",
            "SELECT session_id FROM files",
            "SELECT session_id FROM exercises",
            "SELECT session_id FROM imports WHERE outcome = 'accepted'",
        ]
        found = [sorted(connection.execute(query).fetchall()) for query in whole]
    assert all(each == found[0] for each in found)
    return len(found[0])

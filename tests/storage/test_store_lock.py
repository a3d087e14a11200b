"""The store's lock, tried with SQLCipher itself and with a library that knows no lock."""

from __future__ import annotations

import contextlib
import importlib.util
import os
import sqlite3
import stat
import subprocess
import sys
from pathlib import Path

import pytest
import sqlcipher3.dbapi2 as sqlcipher

from coach.domain.fault import Fault
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_file
from coach.storage.store_lock import is_locked, lock_store
from coach.storage.store_tables import metadata

_spec = importlib.util.spec_from_file_location(
    "invented_sessions", Path(__file__).parents[1] / "review" / "conftest.py"
)
assert _spec is not None
assert _spec.loader is not None
_invented = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(_invented)

PASSPHRASE, OTHER = "it's raining on the mill", "thirty lamps under snow"
LEAKS = [
    b"SH-017",
    b"SQLite format 3",
    b"Gentle end range",
    b"2026-",
    b"CREATE TABLE",
    b"PK\x03\x04",
]


def send(store: Store, folder: Path, number: int) -> ImportOutcome:
    document = _invented.make_session(number)
    path = folder / f"{number}.shoulder.zip"
    path.write_bytes(_invented.session_file(document))
    return import_file(store, path).outcome


def readable(folder: Path, name: str) -> list[bytes]:
    """What can be read in the store's files, the write-ahead log among them."""
    data = b"".join(p.read_bytes() for p in folder.iterdir() if name in p.name)
    assert data
    return [leak for leak in LEAKS if leak in data]


def rows(connection: sqlite3.Connection) -> dict[str, list[tuple[object, ...]]]:
    return {
        name: connection.execute(f"select * from {name}").fetchall() for name in metadata.tables
    }


@pytest.fixture
def plain(tmp_path: Path) -> Path:
    path = tmp_path / "practice" / "store.sqlite"
    with contextlib.closing(Store(path)) as store:
        assert send(store, tmp_path, 1) is ImportOutcome.ACCEPTED
    return path


def test_nothing_in_a_locked_store_s_files_is_readable(tmp_path: Path) -> None:
    path = tmp_path / "practice" / "store.sqlite"
    store = Store(path, PASSPHRASE)
    assert send(store, tmp_path, 1) is ImportOutcome.ACCEPTED
    assert path.with_name("store.sqlite-wal").stat().st_size > 0
    assert readable(path.parent, "store") == []
    store.close()
    assert readable(path.parent, "store") == []
    assert is_locked(path)
    if sys.platform != "win32":
        assert stat.S_IMODE(path.stat().st_mode) == 0o600
    with contextlib.closing(Store(path, PASSPHRASE)) as again:
        assert again.sessions_of("SH-017") == (_invented.make_session(1),)


def test_locking_a_store_changes_nothing_in_it(plain: Path) -> None:
    assert set(readable(plain.parent, "store")) == set(LEAKS)
    with contextlib.closing(sqlite3.connect(plain)) as connection:
        before = rows(connection)
        schema = connection.execute("select sql from sqlite_master order by name").fetchall()
    lock_store(plain, PASSPHRASE)
    assert readable(plain.parent, "store") == []
    assert [p.name for p in plain.parent.iterdir()] == ["store.sqlite"]
    with contextlib.closing(sqlcipher.connect(str(plain))) as connection:
        quoted = PASSPHRASE.replace("'", "''")
        connection.execute(f"PRAGMA key = '{quoted}'")
        assert rows(connection) == before
        sql = "select sql from sqlite_master order by name"
        assert connection.execute(sql).fetchall() == schema
    if sys.platform != "win32":
        assert stat.S_IMODE(plain.stat().st_mode) == 0o600


def test_a_copy_from_an_upgrade_does_not_stay_readable(plain: Path) -> None:
    copy = plain.with_name("store.sqlite.version-1.backup")
    copy.write_bytes(plain.read_bytes())
    with contextlib.closing(sqlite3.connect(copy)) as connection:
        connection.execute("PRAGMA journal_mode = DELETE")
    lock_store(plain, PASSPHRASE)
    assert readable(plain.parent, "store") == []
    with contextlib.closing(Store(copy, PASSPHRASE)) as store:
        assert store.sessions_of("SH-017") == (_invented.make_session(1),)
    lock_store(plain, OTHER, PASSPHRASE)
    Store(copy, PASSPHRASE).close()
    Store(plain, OTHER).close()


def test_no_other_passphrase_opens_it(plain: Path) -> None:
    lock_store(plain, PASSPHRASE)
    for wrong in (OTHER, "", PASSPHRASE + " ", "' or 1 = '1"):
        with pytest.raises(Fault, match="does not open: type the passphrase again"):
            Store(plain, wrong)
    with pytest.raises(Fault, match="is locked, damaged or no store"):
        Store(plain)
    connection = sqlite3.connect(plain)
    with pytest.raises(sqlite3.DatabaseError, match="not a database"):
        connection.execute("select * from sqlite_master")
    connection.close()


def test_a_changed_page_is_told(plain: Path) -> None:
    lock_store(plain, PASSPHRASE)
    data = bytearray(plain.read_bytes())
    with contextlib.closing(Store(plain, PASSPHRASE)) as store:
        assert store.sessions_of("SH-017")
    for page in range(len(data) // 4096):
        data[page * 4096 + 2000] ^= 1
    plain.write_bytes(data)
    with pytest.raises(Fault, match="put a backup copy in its place"):
        Store(plain, PASSPHRASE)


def test_the_passphrase_can_be_changed(plain: Path) -> None:
    lock_store(plain, PASSPHRASE)
    with pytest.raises(Fault, match="does not open"):
        lock_store(plain, OTHER, OTHER)
    lock_store(plain, OTHER, PASSPHRASE)
    with pytest.raises(Fault, match="does not open"):
        Store(plain, PASSPHRASE)
    with contextlib.closing(Store(plain, OTHER)) as store:
        assert store.sessions_of("SH-017") == (_invented.make_session(1),)


HOLDER = """
import sys
from coach.storage.store import Store
store = Store(sys.argv[1])
print(len(store.sessions_of("SH-017")), flush=True)
sys.stdin.read()
store.close()
"""


def test_a_store_that_another_program_has_open_is_not_locked(plain: Path, tmp_path: Path) -> None:
    holder = subprocess.Popen(
        [sys.executable, "-c", HOLDER, str(plain)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        env={**os.environ, "PYTHONPATH": str(Path(__file__).parents[2])},
    )
    assert holder.stdout is not None
    assert holder.stdout.readline() == b"1\n"
    with pytest.raises(Fault, match="close every other program"):
        lock_store(plain, PASSPHRASE)
    holder.communicate(b"", timeout=30)
    assert not is_locked(plain)
    assert [p.name for p in plain.parent.iterdir()] == ["store.sqlite"]
    with contextlib.closing(Store(plain)) as store:
        assert send(store, tmp_path, 2) is ImportOutcome.ACCEPTED
        assert len(store.sessions_of("SH-017")) == 2
    lock_store(plain, PASSPHRASE)
    assert is_locked(plain)


def test_lock_and_passphrase_must_fit(plain: Path, tmp_path: Path) -> None:
    assert not is_locked(plain)
    assert not is_locked(tmp_path / "none.sqlite")
    with pytest.raises(Fault, match="is not locked: open it without"):
        Store(plain, PASSPHRASE)
    with pytest.raises(Fault, match="There is no store"):
        lock_store(tmp_path / "none.sqlite", PASSPHRASE)
    with pytest.raises(Fault, match="needs 15"):
        lock_store(plain, "short")
    with pytest.raises(Fault, match="needs 15"):
        Store(tmp_path / "new.sqlite", "short")
    lock_store(plain, PASSPHRASE)
    with pytest.raises(Fault, match="is locked already"):
        lock_store(plain, OTHER)

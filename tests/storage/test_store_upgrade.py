"""Stores of older versions, as their programs left them, become one of this without loss."""

from __future__ import annotations

import errno
import json
import sqlite3
import stat
from contextlib import closing
from pathlib import Path
from types import ModuleType

import msgspec
import pytest
import sqlcipher3.dbapi2 as sqlcipher
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import Connection, Engine, event, text

from coach.documents.archive import unpack_document
from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.storage.store import Decision, ImportOutcome, Store
from coach.storage.store_import import import_file
from coach.storage.store_lock import lock_store
from coach.storage.store_tables import STORE_VERSION, metadata
from tests.storage.conftest import Place

GOLDEN = Path(__file__).parents[1] / "documents" / "golden"
OF_VERSION_1 = ("patients", "sessions", "exercises", "repetitions", "files", "imports")
SESSION_ID = "0a1b2c3d4e5f60718293a4b5c6d7e8f9"


def old_store(place: Path, version: int) -> Path:
    connection = sqlite3.connect(place)
    connection.executescript((GOLDEN / f"store_v{version}.sql").read_text("utf-8"))
    connection.close()
    return place


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return old_store(tmp_path / "store.sqlite", 1)


def asked(path: Path, query: str) -> list[tuple[object, ...]]:
    connection = sqlite3.connect(path)
    found = connection.execute(query).fetchall()
    connection.close()
    return found


def dump(path: Path) -> list[str]:
    connection = sqlite3.connect(path)
    lines = list(connection.iterdump())
    connection.close()
    return lines


def test_nothing_is_lost_and_the_same_file_is_known_again(path: Path) -> None:
    store = Store(path)
    original = (GOLDEN / "session_v1.shoulder.zip").read_bytes()
    assert store.original(SESSION_ID) == original
    assert store.sessions_of("INVENTED-7") == (unpack_document(original, "golden"),)
    (refusal,) = store.refusals()
    assert refusal.file_name == "broken.shoulder.zip"
    assert import_file(store, GOLDEN / "session_v1.shoulder.zip").outcome is ImportOutcome.KNOWN
    assert import_file(store, GOLDEN / "session_v2.shoulder.zip").outcome is ImportOutcome.ACCEPTED
    store.close()
    again = Store(path)
    assert [entry.sessions for entry in again.patients()] == [2]
    again.close()
    assert asked(path, "select version from store_version order by version") == [
        (1,),
        (STORE_VERSION,),
    ]


def test_the_columns_are_those_of_this_version(path: Path) -> None:
    Store(path).close()
    query = "select value, error, spread, unit, completed from repetitions order by position"
    assert asked(path, query) == [
        (121.4, 3.5, 1.25, "deg", 1),
        (124.0, 3.5, 1.25, "deg", 0),
        (125.75, 3.5, 1.25, "deg", 1),
    ]
    query = "select movement, view, posture, hold_asked_s from exercises order by position"
    assert asked(path, query) == [
        ("flexion", "side", "standing", 30.0),
        ("external-rotation-0", "front", "standing", 20.0),
    ]


def test_a_fault_at_any_statement_leaves_the_old_store(path: Path) -> None:
    before = dump(path)
    seen: list[str] = []

    def failing_at(fatal: int) -> int:
        def fail(_c: object, _cursor: object, statement: str, *_: object) -> None:
            seen.append(statement)
            if len(seen) > fatal:
                raise OSError("the stick was pulled out")

        seen.clear()
        event.listen(Engine, "before_cursor_execute", fail)
        try:
            Store(path).close()
        except OSError:
            assert dump(path) == before
        finally:
            event.remove(Engine, "before_cursor_execute", fail)
        return len(seen)

    fatal = 0
    while failing_at(fatal) > fatal:
        fatal += 1
    assert fatal > 12
    assert asked(path, "select max(version) from store_version") == [(STORE_VERSION,)]


def test_a_damaged_document_stays_and_says_so_when_it_is_asked_for(path: Path) -> None:
    (text,) = asked(path, "select document from sessions")[0]
    assert isinstance(text, str)
    damaged = json.loads(text)
    damaged["exercises"][0]["repetitions"][0]["value_deg"] = "far"
    connection = sqlite3.connect(path)
    connection.execute("update sessions set document = ?", (json.dumps(damaged),))
    connection.commit()
    connection.close()
    store = Store(path)
    with pytest.raises(Fault, match=r"A session of INVENTED-7 .* is damaged"):
        store.sessions_of("INVENTED-7")
    assert store.original(SESSION_ID).startswith(b"PK")
    store.close()
    (kept,) = asked(path, "select document from sessions")[0]
    assert kept == json.dumps(damaged)


def test_a_store_of_version_3_keeps_its_records_and_its_doubt(tmp_path: Path) -> None:
    path = old_store(tmp_path / "store.sqlite", 3)
    store = Store(path)
    records = store.records_of("INVENTED-7")
    assert records.person.name == "Ada Invented"
    assert records.episode
    assert records.episode.goals == "Reach the upper shelf."
    kept = (*records.treatments, *records.by_hand)
    assert [r.episode_id for r in kept] == [records.episode.id] * 2
    assert records.last_plan
    assert records.last_plan.revision == 9
    (doubt,) = store.doubts()
    assert (doubt.named, doubt.code, doubt.decision) == ("INVENTED-7", "INVENTED-7", Decision.OPEN)
    assert "names revision 1 of a plan" in doubt.sentence
    (session,) = store.sessions_of("INVENTED-7")
    original = (GOLDEN / "session_v2.shoulder.zip").read_bytes()
    assert repr(session) == repr(unpack_document(original, "golden"))
    store.close()


@pytest.mark.parametrize("version", range(1, STORE_VERSION))
def test_kept_documents_become_those_of_the_present(tmp_path: Path, version: int) -> None:
    path = old_store(tmp_path / "store.sqlite", version)
    Store(path).close()
    for (document,) in asked(path, "select document from sessions"):
        msgspec.json.decode(str(document), type=SessionDocument)  # which takes no other version


def test_a_newer_session_document_comes_with_a_newer_store(invented: ModuleType) -> None:
    """Else each reading of each kept document takes the way of old ones, fifty times as long."""
    version = json.loads(msgspec.json.encode(invented.make_session()))["version"]
    assert (version, STORE_VERSION) == (4, 6), "raise STORE_VERSION, with an empty migration"


def test_a_store_of_version_2_keeps_what_it_had(tmp_path: Path) -> None:
    path = old_store(tmp_path / "store.sqlite", 2)
    names = ("session_v1.shoulder.zip", "session_v2.shoulder.zip")
    originals = [(GOLDEN / name).read_bytes() for name in names]
    documents = [unpack_document(original, "golden") for original in originals]
    store = Store(path)
    assert set(map(repr, store.sessions_of("INVENTED-7"))) == set(map(repr, documents))
    assert [store.original(d.session_id) for d in documents] == originals
    assert [import_file(store, GOLDEN / name).outcome for name in names] == [
        ImportOutcome.KNOWN,
        ImportOutcome.KNOWN,
    ]
    (refusal,) = store.refusals()
    assert refusal.file_name == "broken.shoulder.zip"
    (person,) = store.people()
    assert (person.code, person.name, person.created_on) == ("INVENTED-7", "", None)
    changed = store.change(msgspec.structs.replace(person, name="Ada Invented"))
    assert store.people() == (changed,)
    assert store.last_import() is None  # older versions did not keep what came together
    store.close()


@pytest.mark.parametrize("version", range(1, STORE_VERSION))
def test_a_copy_is_kept_of_what_was_upgraded(tmp_path: Path, version: int) -> None:
    path = old_store(tmp_path / "store.sqlite", version)
    before = dump(path)
    Store(path).close()
    copy = tmp_path / f"store.sqlite.version-{version}.backup"
    assert dump(copy) == before
    assert stat.S_IMODE(copy.stat().st_mode) == 0o600
    assert sorted(p.name for p in tmp_path.iterdir()) == [path.name, copy.name]


@pytest.mark.parametrize("passphrase", [None, "thirty lamps under snow"])
def test_the_copy_comes_back_where_an_upgrade_does_harm(
    path: Path, monkeypatch: pytest.MonkeyPatch, passphrase: str | None
) -> None:
    if passphrase:
        lock_store(path, passphrase)

    def content() -> list[object]:
        with closing(sqlcipher.connect(str(path))) as connection:
            if passphrase:
                connection.execute(f"PRAGMA key = '{passphrase}'")
            made = connection.execute("select name, sql from sqlite_master order by name")
            held = [connection.execute(f"select * from {t}").fetchall() for t in OF_VERSION_1]
            return [*made.fetchall(), *held]

    before = content()

    def harm(connection: Connection, _version: int | None) -> None:
        connection.execute(text("DROP TABLE repetitions"))
        connection.execute(text("DELETE FROM files"))
        connection.exec_driver_sql("COMMIT")  # as no upgrade may
        raise OSError("the stick was pulled out")

    monkeypatch.setattr("coach.storage.store_database.upgrade", harm)
    with pytest.raises(OSError, match="pulled out"):
        Store(path, passphrase)
    assert content() == before
    monkeypatch.undo()
    store = Store(path, passphrase)
    assert [entry.sessions for entry in store.patients()] == [1]
    store.close()


def test_without_room_for_the_copy_the_old_store_stays(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = dump(path)

    def full(_descriptor: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr("coach.storage.store_backup.os.fsync", full)
    with pytest.raises(Fault, match="is full; free some space"):
        Store(path)
    assert dump(path) == before


def test_the_steps_make_the_tables_that_the_program_knows(place: Place, tmp_path: Path) -> None:
    stores = [place.open()]
    stores += [Store(old_store(tmp_path / f"v{v}.sqlite", v)) for v in (1, 2)]
    for store in stores:
        with store._engine.connect() as connection:
            context = MigrationContext.configure(connection, opts={"compare_type": True})
            assert compare_metadata(context, metadata) == []
        store.close()


def test_a_newer_store_is_refused_on_each_database(place: Place) -> None:
    place.open().close()
    place.ask(f"update store_version set version = {STORE_VERSION + 1}")
    before = place.rows()
    with pytest.raises(Fault, match=rf"has version {STORE_VERSION + 1} .* install the newer"):
        place.open()
    assert place.rows() == before

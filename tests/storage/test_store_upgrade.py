"""A store of version 1, as its program left it, becomes one of this version without loss."""

from __future__ import annotations

import json
import sqlite3
from pathlib import Path

import pytest
from sqlalchemy import Engine, event

from coach.documents.archive import unpack_document
from coach.domain.fault import Fault
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_file
from coach.storage.store_tables import STORE_VERSION

GOLDEN = Path(__file__).parents[1] / "documents" / "golden"
SESSION_ID = "0a1b2c3d4e5f60718293a4b5c6d7e8f9"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    place = tmp_path / "store.sqlite"
    connection = sqlite3.connect(place)
    connection.executescript((GOLDEN / "store_v1.sql").read_text("utf-8"))
    connection.close()
    return place


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

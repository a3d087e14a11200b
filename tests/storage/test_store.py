from __future__ import annotations

import importlib.util
import os
import sqlite3
import stat
import subprocess
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path

import msgspec
import pytest
from sqlalchemy import event

from coach.domain.fault import Fault
from coach.storage.store import Imported, ImportOutcome, Store
from coach.storage.store_import import import_paths, session_files
from coach.storage.store_tables import STORE_VERSION, metadata

INVENTED = Path(__file__).parents[1] / "review" / "conftest.py"
_spec = importlib.util.spec_from_file_location("invented_sessions", INVENTED)
assert _spec
assert _spec.loader
_invented = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(_invented)
make_session = _invented.make_session


@pytest.fixture
def path(tmp_path):
    return tmp_path / "practice" / "store.sqlite"


@pytest.fixture
def file_store(path):
    opened = Store(path)
    yield opened
    opened.close()


def rows(path):
    """Count the rows of every table with another library than the store's."""
    with sqlite3.connect(path) as connection:
        return {
            name: connection.execute(f"select count(*) from {name}").fetchone()[0]
            for name in metadata.tables
        }


def test_what_goes_in_comes_out(store):
    sent = [make_session(n, (80.0 + n, 82.0, 84.0)) for n in (3, 1, 2)]
    for document in sent:
        outcome = store.import_session(document, b"zip of " + document.session_id.encode(), "a.zip")
        assert outcome == Imported(ImportOutcome.ACCEPTED)
    assert store.sessions_of("SH-017") == (sent[1], sent[2], sent[0])
    assert store.original(sent[1].session_id) == b"zip of " + sent[1].session_id.encode()
    (entry,) = store.patients()
    assert (entry.code, entry.sessions) == ("SH-017", 3)
    assert entry.first_at.isoformat() == sent[1].started_at


def test_the_columns_hold_what_the_document_holds(store, place):
    store.import_session(make_session(0, (80.0, 82.5, 84.0), hold_s=20, held_s=19), b"", "a.zip")
    query = """
            select p.code, e.movement, e.side, e.hold_asked_s, r.value, r.held_s, r.completed
            from patients p join sessions s on s.patient_id = p.id
            join exercises e on e.session_id = s.id
            join repetitions r on r.session_id = s.id and r.exercise_position = e.position
            order by r.position"""
    assert place.ask(query) == [
        ("SH-017", "flexion", "left", 20.0, value, 19.0, 1) for value in (80.0, 82.5, 84.0)
    ]


def test_the_same_session_twice_changes_nothing(store, place):
    document = make_session()
    store.import_session(document, b"x", "a.zip")
    before = place.rows()
    assert store.import_session(document, b"x", "copy of a.zip") == Imported(ImportOutcome.KNOWN)
    assert place.rows() == before


def test_other_contents_under_a_known_number_are_refused(store, place):
    document = make_session()
    store.import_session(document, b"x", "a.zip")
    before = place.rows()
    other = msgspec.structs.replace(document, duration_s=1.0)
    with pytest.raises(Fault, match="other contents"):
        store.import_session(other, b"y", "b.zip")
    assert place.rows() == before
    assert store.sessions_of("SH-017") == (document,)


def test_patients_are_kept_apart(store):
    for code in ("A", "B", "a"):
        store.import_session(make_session(code=code), b"", f"{code}.zip")
    assert {e.code for e in store.patients()} == {"A", "B", "a"}
    assert [d.plan.patient_code for d in store.sessions_of("A")] == ["A"]


@pytest.mark.parametrize("days", [3, 4000])
def test_sessions_yet_to_come_are_refused(store, place, days):
    later = make_session(at=datetime.now(UTC) + timedelta(days=days))
    with pytest.raises(Fault, match="check the clock"):
        store.import_session(later, b"", "a.zip")
    assert place.rows()["sessions"] == 0


def test_a_file_for_the_owner_alone(file_store, path):
    file_store.import_session(make_session(), b"x", "a.zip")
    for file in path.parent.iterdir():
        assert stat.S_IMODE(file.stat().st_mode) == 0o600, file.name
    assert stat.S_IMODE(path.parent.stat().st_mode) == 0o700


def insertions(store, document):
    """Count the statements of an undisturbed import."""
    seen = []

    def count(_c, _cursor, statement, *_):
        seen.append(statement)

    event.listen(store._engine, "before_cursor_execute", count)
    store.import_session(document, b"x", "a.zip")
    event.remove(store._engine, "before_cursor_execute", count)
    return len(seen)


def test_a_fault_at_any_statement_leaves_nothing_behind(store, place):
    total = insertions(store, make_session(code="first"))
    assert total > 6
    before = place.rows()
    for fatal in range(total):
        left = [fatal]

        def fail(*_, left=left):
            left[0] -= 1
            if left[0] < 0:
                raise OSError("the stick was pulled out")

        event.listen(store._engine, "before_cursor_execute", fail)
        with pytest.raises(OSError, match="pulled out"):
            store.import_session(make_session(code="second"), b"x", "b.zip")
        event.remove(store._engine, "before_cursor_execute", fail)
        assert place.rows() == before, fatal
    again = store.import_session(make_session(code="second"), b"x", "b.zip")
    assert again.outcome is ImportOutcome.ACCEPTED
    assert [e.code for e in store.patients()] == ["first", "second"]


KILLED = """
import importlib.util, os, sys
from sqlalchemy import event
from coach.storage.store import Store
spec = importlib.util.spec_from_file_location("invented_sessions", sys.argv[1])
module = importlib.util.module_from_spec(spec)
spec.loader.exec_module(module)
store = Store(sys.argv[2])
left = [int(sys.argv[3])]
def die(*_):
    left[0] -= 1
    if left[0] < 0:
        os.kill(os.getpid(), 9)
event.listen(store._engine, "before_cursor_execute", die)
store.import_session(module.make_session(code="killed"), b"x" * 300_000, "k.zip")
"""


@pytest.mark.skipif(sys.platform == "win32", reason="no SIGKILL")
@pytest.mark.parametrize("statements", [2, 5, 7])
def test_a_killed_import_never_happened(place, statements):
    store = place.open()
    store.import_session(make_session(code="first"), b"x", "a.zip")
    store.close()
    before = place.rows()
    command = [sys.executable, "-c", KILLED, str(INVENTED), str(place.target), str(statements)]
    environment = os.environ | {"PYTHONPATH": str(Path(__file__).parents[2])}
    assert subprocess.run(command, env=environment, check=False).returncode == -9
    assert place.rows() == before
    store = place.open()
    again = store.import_session(make_session(code="killed"), b"x", "k.zip")
    assert again.outcome is ImportOutcome.ACCEPTED
    store.close()


def test_a_full_disk_is_said_and_changes_nothing(file_store, path):
    file_store.import_session(make_session(code="first"), b"x", "a.zip")
    before = rows(path)

    def small(connection, _record, _proxy):
        connection.execute("PRAGMA max_page_count = 40")

    event.listen(file_store._engine, "checkout", small)
    with pytest.raises(Fault, match="no room left"):
        file_store.import_session(make_session(code="second"), b"x" * 1_000_000, "b.zip")
    assert rows(path) == before


def test_a_newer_store_is_refused_and_left_alone(path):
    Store(path).close()
    with sqlite3.connect(path) as connection:
        connection.execute("update store_version set version = ?", (STORE_VERSION + 1,))
    content = path.read_bytes()
    with pytest.raises(Fault, match="newer program"):
        Store(path)
    assert path.read_bytes() == content


def test_a_text_file_is_no_store(tmp_path):
    path = tmp_path / "letter.txt"
    path.write_text("Dear colleague, " * 100)
    with pytest.raises(Fault, match="damaged or no store"):
        Store(path)
    assert path.read_text() == "Dear colleague, " * 100


def test_a_strange_database_is_no_store(place):
    if isinstance(place.target, Path):
        place.target.parent.mkdir()
    place.ask("create table recipes (name text)")
    with pytest.raises(Fault, match="no store of this program"):
        place.open()
    names = {
        "sqlite": "select name from sqlite_master",
        "postgresql": "select tablename from pg_tables where schemaname = 'public'",
    }
    assert place.ask(names[place.kind]) == [("recipes",)]


def test_a_store_with_a_hole_is_said_to_be_damaged(file_store, path):
    file_store.import_session(make_session(), os.urandom(50_000), "a.zip")
    file_store.close()
    size = path.stat().st_size
    with path.open("r+b") as file:
        file.seek(4096)
        file.write(os.urandom(size - 4096))
    with pytest.raises(Fault, match="damaged"):
        read_again(path)


def read_again(path):
    return Store(path).sessions_of("SH-017")


def test_a_folder_cannot_be_a_store(tmp_path):
    with pytest.raises(Fault, match="choose a folder"):
        Store(tmp_path)


def test_two_programs_see_each_others_sessions(store, place):
    other = place.open()
    store.import_session(make_session(1), b"", "a.zip")
    assert len(other.sessions_of("SH-017")) == 1
    other.import_session(make_session(2), b"", "b.zip")
    assert len(store.sessions_of("SH-017")) == 2


def test_files_and_folders_give_one_outcome_each(store, tmp_path):
    folder = tmp_path / "mail"
    (folder / "march").mkdir(parents=True)
    whole = {n: _invented.session_file(make_session(n)) for n in (1, 2, 9)}
    for name, content in {
        "a.shoulder.zip": whole[1],
        "bad.shoulder.zip": whole[9][:-200],
        "march/b.shoulder.zip": whole[2],
        "march/b.shoulder (1).zip": whole[2],
        "holiday.zip": b"PK not asked for",
        "letter.txt": b"not asked for",
    }.items():
        (folder / name).write_bytes(content)
    outcomes = list(import_paths(store, [folder, folder / "letter.txt", folder / "gone.zip"]))
    assert [(o.path.name, o.outcome.value, o.code) for o in outcomes] == [
        ("a.shoulder.zip", "accepted", "SH-017"),
        ("bad.shoulder.zip", "refused", ""),
        ("b.shoulder (1).zip", "accepted", "SH-017"),
        ("b.shoulder.zip", "already known", "SH-017"),
        ("letter.txt", "refused", ""),
        ("gone.zip", "refused", ""),
    ]
    assert store.original(make_session(2).session_id) == whole[2]
    assert [r.file_name for r in store.refusals()] == ["gone.zip", "letter.txt", "bad.shoulder.zip"]
    assert all(r.reason.endswith(".") and r.file_name in r.reason for r in store.refusals())
    # The same file sent again, whole this time, takes its name off the list.
    (folder / "bad.shoulder.zip").write_bytes(whole[9])
    list(import_paths(store, [folder / "bad.shoulder.zip"]))
    assert [r.file_name for r in store.refusals()] == ["gone.zip", "letter.txt"]
    store.forget_refusals()
    assert store.refusals() == ()


def test_a_folder_is_listed_in_order_and_once(tmp_path):
    for name in ("b.shoulder.zip", "a.shoulder.zip"):
        (tmp_path / name).touch()
    listed = session_files([tmp_path / "b.shoulder.zip", tmp_path])
    assert [p.name for p in listed] == ["b.shoulder.zip", "a.shoulder.zip"]

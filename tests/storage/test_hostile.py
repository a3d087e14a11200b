"""What was once let in, or broke the program, in journals, stores, keys and names of files."""

from __future__ import annotations

import os
import sqlite3
import sys
import zlib
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from coach.domain.fault import Fault
from coach.domain.movement import Movement, Side
from coach.domain.practice import Episode, Person
from coach.storage.journal_lines import read_lines
from coach.storage.keys import unlock
from coach.storage.recovery import recover
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_file

GOLDEN = Path(__file__).parents[1] / "documents" / "golden"


def line(text: bytes) -> bytes:
    return b"%08x %d %s\n" % (zlib.crc32(text), len(text), text)


@pytest.mark.parametrize(
    "text", [b'{"type":"camera","time_s":1,"x":"\xff"}', b"[" * 20_000, b'{"type":"\xed\xa0\x80"}']
)
def test_a_line_that_is_whole_and_no_text_stops_no_start(tmp_path: Path, text: bytes) -> None:
    journal = (GOLDEN / "journal_v3.journal").read_bytes()
    first, rest = journal.split(b"\n", 1)
    changed = first + b"\n" + line(text) + rest
    assert read_lines(changed, "x").skipped_lines == 1
    (tmp_path / "a.journal").write_bytes(changed)
    (tmp_path / "b.journal").write_bytes(line(text) + rest)
    found = {r.journal.name: r for r in recover(tmp_path, tmp_path / "out", tmp_path / "own")}
    assert found["a.journal"].path is not None
    assert "could not be read from its first line on" in found["b.journal"].message


@pytest.fixture
def store_file(tmp_path: Path) -> Path:
    path = tmp_path / "review.sqlite"
    store = Store(path)
    assert import_file(store, GOLDEN / "session_v3.shoulder.zip").outcome is ImportOutcome.ACCEPTED
    import_file(store, GOLDEN / "plan_v1.json")
    store.add(Person(code="SH-1"))
    store.add(Episode(code="SH-1", side=Side.LEFT, began_on=date(2026, 1, 1)))
    store.close()
    return path


@pytest.mark.parametrize(
    ("change", "ask"),
    [
        ("UPDATE sessions SET started_at = 'soon'", Store.patients),
        ("UPDATE imports SET at_utc = x'ff00'", Store.last_import),
        ("UPDATE imports SET at_utc = 'x'", Store.last_import),
        ("UPDATE imports SET at_utc = 7 WHERE outcome = 'refused'", Store.refusals),
        ("UPDATE episodes SET began_on = 'x'", lambda s: s.episodes("SH-1")),
        ("UPDATE episodes SET side = 'both'", lambda s: s.episodes("SH-1")),
        ("UPDATE patients SET created_on = 'x'", Store.people),
        ("UPDATE exercises SET side = 'x'", lambda s: s.cohort(Movement.HAND_BEHIND_BACK)),
        ("UPDATE sessions SET document = '[1]'", lambda s: s.sessions_of(s.patients()[0].code)),
    ],
)
def test_a_cell_that_nobody_wrote_is_one_sentence(store_file: Path, change: str, ask) -> None:
    with closing(sqlite3.connect(store_file)) as connection:
        assert connection.execute(change).rowcount
        connection.commit()
    store = Store(store_file)
    with pytest.raises(Fault, match=r"backup copy in its place\.$") as refused:
        ask(store)
    assert str(refused.value).isprintable()
    assert str(refused.value).count(". ") == 0
    store.close()


@pytest.mark.skipif(sys.platform != "linux", reason="other systems have no such names")
def test_a_name_that_is_no_text_is_refused_and_listed(tmp_path: Path) -> None:
    store = Store(tmp_path / "review.sqlite")
    path = Path(os.fsdecode(os.fsencode(tmp_path) + b"/a\xff\x1b[2J.shoulder.zip"))
    path.write_bytes(b"PK")
    done = import_file(store, path)
    assert done.outcome is ImportOutcome.REFUSED
    assert done.line.startswith("a\\udcff\\x1b[2J.shoulder.zip: refused. ")
    assert done.line.isprintable()
    assert [refusal.file_name for refusal in store.refusals()] == ["a\\udcff\\x1b[2J.shoulder.zip"]
    import_file(store, path)
    assert len(store.refusals()) == 1
    store.close()


@pytest.mark.parametrize("work", [b"21", b"31", b"64", b"999999999"])
def test_a_key_that_asks_for_all_memory_is_refused(tmp_path: Path, work: bytes) -> None:
    seed = Path(__file__).parents[1] / "fuzz" / "seeds" / "practice.key.age"
    path = tmp_path / "practice.key.age"
    path.write_bytes(seed.read_bytes())
    assert unlock(path, "five invented words put together").public_key.startswith("age1")
    first, rest = seed.read_bytes().split(b" 1\n", 1)
    path.write_bytes(first + b" " + work + b"\n" + rest)
    with pytest.raises(Fault, match="more memory and time"):
        unlock(path, "five invented words put together")


@pytest.mark.parametrize(
    ("record", "field"),
    [
        (Person(code="A\u202eB"), "code"),
        (Person(code="A", name="x\ny"), "name"),
        (Episode(code="SH-1", side=Side.LEFT, began_on=date(2026, 1, 1), note="\x1b[2J"), "note"),
    ],
)
def test_a_record_hides_nothing(store_file: Path, record: Person | Episode, field: str) -> None:
    store = Store(store_file)
    with pytest.raises(Fault, match=f"{field} holds a control or unseen character"):
        store.add(record)
    store.close()


def test_a_note_may_have_lines(store_file: Path) -> None:
    store = Store(store_file)
    store.add(Episode(code="SH-1", side=Side.LEFT, began_on=date(2026, 1, 2), note="one\n\ttwo"))
    assert store.episodes("SH-1")[-1].note == "one\n\ttwo"
    store.close()

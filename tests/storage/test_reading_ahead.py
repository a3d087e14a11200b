"""Many files at once: processes look through the next ones, and nothing else is different."""

from __future__ import annotations

import io
import multiprocessing
import os
import signal
import sqlite3
import zipfile
from contextlib import closing
from pathlib import Path
from types import ModuleType

import msgspec
import pyrage
import pytest

from coach import texts
from coach.documents.archive import LANDMARKS, READINGS, pack_session, unpack_session
from coach.storage import reading_ahead, reading_worker, store_import
from coach.storage.reading_ahead import Proved, ReadingAhead
from coach.storage.sealed import PracticeIdentity, seal
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_file, import_paths, session_files

KEY = pyrage.x25519.Identity.generate()
PRACTICE = PracticeIdentity(str(KEY.to_public()), KEY)


@pytest.fixture(autouse=True)
def at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Two processes for however few files, up before the first is read."""
    start = reading_ahead._Worker.start

    def started() -> reading_ahead._Worker:
        worker = start()
        assert worker.told.poll(60)
        return worker

    monkeypatch.setattr(reading_ahead, "_WORTH_BYTES", 1)
    monkeypatch.setattr(reading_ahead, "cores", lambda: 2)
    monkeypatch.setattr(reading_ahead._Worker, "start", staticmethod(started))


def tables(packed: bytes) -> tuple[bytes, bytes]:
    with zipfile.ZipFile(io.BytesIO(packed)) as archive:
        return archive.read(READINGS), archive.read(LANDMARKS)


@pytest.fixture
def mail(invented: ModuleType, tmp_path: Path) -> Path:
    """Good files, plain and sealed, among every kind of bad one."""
    folder = tmp_path / "mail"
    folder.mkdir()
    make = invented.make_session
    good = [invented.session_file(make(n)) for n in range(8)]
    readings, landmarks = tables(good[0])
    stranger = str(pyrage.x25519.Identity.generate().to_public())
    files = {
        "01.shoulder.zip": good[0][:-50],
        "03.shoulder.zip": b"",
        "05.shoulder.zip": pack_session(make(20), readings[:-9], landmarks),
        "07.shoulder.zip": pack_session(make(21), readings, landmarks + b"1:0\n"),
        "09.shoulder.age": seal(good[1], stranger),
        "11.shoulder.age": seal(good[2], PRACTICE.public_key)[:-1],
        "13.shoulder.zip": good[3].replace(b"PK\x05\x06", b"PK\x05\x07"),
        "14a.shoulder.zip": good[4],
        "15.shoulder.zip": invented.session_file(
            msgspec.structs.replace(make(0), duration_s=140.0)
        ),
    }
    for n, content in enumerate(good):
        sealed = n % 3 == 2
        whole = seal(content, PRACTICE.public_key) if sealed else content
        files[f"{2 * n:02d}.shoulder.{'age' if sealed else 'zip'}"] = whole
    for name, content in files.items():
        (folder / name).write_bytes(content)
    return folder


def kept(path: Path) -> list[tuple[object, ...]]:
    """What a store holds, but for when it came and in which import."""
    queries = (
        "SELECT id, document, doubt, decision FROM sessions ORDER BY id",
        "SELECT session_id, sha256, content FROM files ORDER BY session_id",
        "SELECT id, file_name, outcome, reason, session_id FROM imports ORDER BY id",
        "SELECT id, code FROM patients ORDER BY id",
    )
    with closing(sqlite3.connect(path)) as connection:
        return [row for query in queries for row in connection.execute(query)]


@pytest.mark.parametrize("language", ["en", "de"])
def test_it_is_the_same_store_and_the_same_words_in_the_same_order(
    mail: Path, tmp_path: Path, language: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    if language == "de":
        monkeypatch.setattr(texts._Chosen, "language", "de")
        monkeypatch.setattr(texts._Chosen, "table", lambda _, sentence: f"<{sentence}>")
    one = Store(tmp_path / "one.sqlite")
    alone = [import_file(one, path, PRACTICE) for path in session_files([mail])]
    one.close()
    proved: list[str] = []

    def counted(*given: object) -> store_import.FileOutcome:
        proved.extend(["proved"] if isinstance(given[-1], Proved) else [])
        return import_file(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(store_import, "import_file", counted)
    many = Store(tmp_path / "many.sqlite")
    ahead = list(import_paths(many, [mail], PRACTICE))
    many.close()
    assert ahead == alone
    counts = [sum(o.outcome is kind for o in alone) for kind in ImportOutcome]
    assert counts == [8, 0, 1, 8], alone  # accepted, doubtful, known, refused
    assert len(proved) >= 8
    assert kept(tmp_path / "many.sqlite") == kept(tmp_path / "one.sqlite")
    assert multiprocessing.active_children() == []


def test_sealed_files_are_as_those_that_are_not(
    store: Store, invented: ModuleType, tmp_path: Path
) -> None:
    whole = [invented.session_file(invented.make_session(n)) for n in range(6)]
    for n, content in enumerate(whole):
        path = tmp_path / f"{n}.shoulder.age"
        path.write_bytes(seal(content, PRACTICE.public_key))
    locked = list(import_paths(store, [tmp_path]))
    assert {o.outcome for o in locked} == {ImportOutcome.REFUSED}
    assert all("unlock the practice's key" in o.reason for o in locked)
    assert {o.outcome for o in import_paths(store, [tmp_path], PRACTICE)} == {
        ImportOutcome.ACCEPTED
    }
    for content in whole:
        session = unpack_session(content, "x").document
        assert store.original(session.session_id) == content


def test_no_more_than_a_file_for_each_process_is_read_before_its_turn(
    invented: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for n in range(9):
        content = invented.session_file(invented.make_session(n))
        (tmp_path / f"{n}.shoulder.zip").write_bytes(content)
    read: list[Path] = []
    open_bytes = reading_ahead.open_session_bytes

    def noted(path: Path, identity: PracticeIdentity | None) -> bytes:
        read.append(path)
        return open_bytes(path, identity)

    monkeypatch.setattr(reading_ahead, "open_session_bytes", noted)
    ahead = ReadingAhead()
    paths = session_files([tmp_path])
    ahead.add(paths)
    for taken in range(9):
        path, proved = ahead.take()
        assert path == paths[taken]
        assert (proved is None) == (taken == 0)  # nobody had it yet
        assert len(read) <= taken + 2
    assert len(ahead) == 0
    ahead.clear()


@pytest.mark.parametrize("after", [0, 3])
def test_processes_that_die_leave_their_files_to_the_import(
    store: Store, invented: ModuleType, tmp_path: Path, after: int
) -> None:
    for n in range(8):
        content = invented.session_file(invented.make_session(n))
        (tmp_path / f"{n}.shoulder.zip").write_bytes(content)
    outcomes = []
    for n, outcome in enumerate(import_paths(store, [tmp_path])):
        outcomes.append(outcome.outcome)
        if n == after:
            children = multiprocessing.active_children()
            assert len(children) == 2
            for child in children:
                assert child.pid is not None
                os.kill(child.pid, signal.SIGKILL)
                child.join()
    assert outcomes == [ImportOutcome.ACCEPTED] * 8
    assert multiprocessing.active_children() == []


def test_an_import_that_is_given_up_leaves_no_process(
    store: Store, invented: ModuleType, tmp_path: Path
) -> None:
    for n in range(5):
        content = invented.session_file(invented.make_session(n))
        (tmp_path / f"{n}.shoulder.zip").write_bytes(content)
    importing = import_paths(store, [tmp_path])
    next(importing)
    assert len(multiprocessing.active_children()) == 2
    importing.close()  # type: ignore[attr-defined]
    assert multiprocessing.active_children() == []
    assert [entry.sessions for entry in store.patients()] == [1]


def test_few_small_files_start_no_process(
    store: Store, invented: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(reading_ahead, "_WORTH_BYTES", 4_000_000)
    monkeypatch.delattr(reading_ahead._Worker, "start")
    for n in range(3):
        content = invented.session_file(invented.make_session(n))
        (tmp_path / f"{n}.shoulder.zip").write_bytes(content)
    assert len(list(import_paths(store, [tmp_path]))) == 3


def test_the_key_is_no_part_of_what_a_process_is_given(
    invented: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    secret = str(KEY).encode()
    given: list[bytes] = []
    for n in range(6):
        content = seal(invented.session_file(invented.make_session(n)), PRACTICE.public_key)
        (tmp_path / f"{n}.shoulder.age").write_bytes(content)
    ahead = ReadingAhead(PRACTICE)
    ahead.add(session_files([tmp_path]))
    for worker in ahead._workers:
        monkeypatch.setattr(type(worker.ask), "send_bytes", _noting(given, type(worker.ask)))
        break
    while len(ahead):
        ahead.take()
    ahead.clear()
    assert len(given) == 5
    assert all(each.startswith(b"PK\x03\x04") and secret not in each for each in given)


def _noting(given: list[bytes], kind: type) -> object:
    send = kind.send_bytes

    def noted(self: object, data: bytes) -> None:
        given.append(data)
        send(self, data)

    return noted


def test_a_process_answers_what_is_refused_without_a_word(invented: ModuleType) -> None:
    whole = invented.session_file(invented.make_session())
    document = unpack_session(whole, "x").document
    assert reading_worker._answer(whole) == msgspec.json.encode(document)
    assert reading_worker._answer(whole[:-9]) == reading_worker.REFUSED

"""Readers that need a file: the store, imports into it, the practice's key, films."""

from __future__ import annotations

import functools
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any
from unittest.mock import patch

from sqlalchemy import Engine

import coach.capture.opencv  # noqa: F401 - before cv2: it sets what that prints
from coach.capture.sources import open_source
from coach.domain.fault import Fault
from coach.domain.movement import Movement
from coach.domain.practice import Episode, IssuedPlan, Person
from coach.storage import store_database
from coach.storage.keys import unlock
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_engine import open_engine
from coach.storage.store_import import import_file
from coach.storage.store_tables import metadata
from tests.fuzz.archives import changed_store, changed_video, changed_zip
from tests.fuzz.mutations import changed_bytes

if TYPE_CHECKING:
    from tests.fuzz.readers import Reader

PASSPHRASE = "five invented words put together"
KEY = Path(__file__).parent / "seeds" / "practice.key.age"
"""An age file of an invented key whose scrypt takes no time (work factor 1)."""


@functools.cache
def _folder() -> tempfile.TemporaryDirectory[str]:
    memory = Path("/dev/shm")
    return tempfile.TemporaryDirectory(prefix="input", dir=memory if memory.is_dir() else None)


@contextmanager
def _file(name: str, data: bytes) -> Iterator[Path]:
    path = Path(_folder().name) / name
    path.write_bytes(data)
    try:
        yield path
    finally:
        for left in path.parent.glob(f"{name}*"):
            left.unlink()


def use_store(data: bytes) -> None:
    """Open a store, ask it everything, take a file in and back; refused, it stays as it was."""
    from tests.fuzz.readers import GOLDEN, WHERE

    with _file(WHERE, data) as path, patch.object(store_database, "open_engine", _opened_once):
        try:
            store = Store(path)
        except Fault:
            assert path.read_bytes() == data, "a store that was refused was changed"
            raise
        refused: Fault | None = None
        for ask in _questions(store, GOLDEN / "session_v2.shoulder.zip"):
            try:
                ask()
            except Fault as fault:
                refused = refused or fault
        store.close()
        if refused is not None:
            raise refused


@functools.cache
def _opened_once(path: Path, passphrase: str | None) -> tuple[Engine, str]:
    """Give the engine of earlier stores at ``path``, which has its statements ready."""
    return open_engine(path, passphrase)


def _questions(store: Store, file: Path) -> Iterator[Callable[[], object]]:
    codes: list[str] = ["SH-017"]
    yield lambda: codes.extend(entry.code for entry in store.patients())
    yield store.people
    yield store.refusals
    yield store.doubts
    yield store.last_import
    yield lambda: store.cohort(Movement.FLEXION)
    for code in dict.fromkeys(codes):
        for about in (store.sessions_of, store.episodes, store.issued_plans):
            yield lambda about=about, code=code: about(code)
    yield lambda: import_file(store, file)
    yield lambda: (last := store.last_import()) and store.undo_import(last.id)


@functools.cache
def store_seeds() -> tuple[bytes, ...]:
    """A store with three sessions, a person's records and a refusal, closed and whole."""
    from datetime import date

    from coach.documents.plan import write_plan
    from tests.fuzz.readers import GOLDEN, _plan

    with _file("seed", b"") as path:
        store = Store(path)
        for n in (1, 3):
            import_file(store, GOLDEN / f"session_v{n}.shoulder.zip")
        import_file(store, GOLDEN / "plan_v1.json")
        store.add(Person(code="SH-017", name="Somebody", created_on=date(2026, 1, 5)))
        store.add(Episode(code="SH-017", side="left", began_on=date(2026, 1, 1), note="stiff"))
        plan = _plan()
        text = write_plan(plan).decode()
        if plan.patient_code not in {p.code for p in store.people()}:
            store.add(Person(code=plan.patient_code))
        store.add(IssuedPlan(code=plan.patient_code, revision=plan.revision,
                             issued_on=date(2026, 1, 5), side=plan.side, plan=text))  # fmt: skip
        store.close()
        return (path.read_bytes(),)


def read_import(data: bytes) -> Any:
    """Import a file: it is in the store whole, or not at all and said so."""
    from tests.fuzz.readers import WHERE

    store, look = _import_store()
    with _file(f"{WHERE}.shoulder.zip", data) as path:
        done = import_file(store, path)
    found = dict(look.execute(_ROWS).fetchall())
    if done.outcome is ImportOutcome.REFUSED:
        assert found == {"imports": 1}, "a refused file left something in the store"
        assert look.execute("SELECT reason FROM imports").fetchone() == (done.reason,)
        raise Fault(done.reason)
    assert look.execute("SELECT content FROM files").fetchall() == [(data,)]
    (document,) = store.sessions_of(done.code)
    repetitions = sum(len(each.repetitions) for each in document.exercises)
    whole = {"exercises": len(document.exercises), "repetitions": repetitions}
    whole |= dict.fromkeys(("files", "imports", "patients", "sessions"), 1)
    assert found == {name: count for name, count in whole.items() if count}
    last = store.last_import()
    assert last is not None
    assert store.undo_import(last.id) == 1
    assert look.execute(_ROWS).fetchall() == [], "an import that was taken back left something"
    return document


_ROWS = " UNION ALL ".join(
    f"SELECT '{name}', count(*) FROM {name} HAVING count(*) > 0"
    for name in metadata.tables
    if name != "store_version"
)


@functools.cache
def _import_store() -> tuple[Store, sqlite3.Connection]:
    """Give a store for all imports, and a connection beside it that knows nothing of ours."""
    path = Path(_folder().name) / "imports.sqlite"
    return Store(path), sqlite3.connect(path)


def read_key(data: bytes) -> Any:
    from tests.fuzz.readers import WHERE

    with _file(WHERE, data) as path:
        return unlock(path, PASSPHRASE)


def read_video(data: bytes) -> int:
    from tests.fuzz.readers import WHERE

    with _file(f"{WHERE}.mp4", data) as path:
        source = open_source(path)
        try:
            return sum(
                1 for _, frame in zip(range(40), source, strict=False) if frame.image_rgb.size
            )
        finally:
            source.close()


@functools.cache
def video_seeds() -> tuple[bytes, ...]:
    """A second of grey squares that move."""
    import cv2
    import numpy as np

    path = Path(_folder().name) / "seed.mp4"
    writer = cv2.VideoWriter(str(path), cv2.VideoWriter.fourcc(*"mp4v"), 10.0, (96, 64))
    for n in range(10):
        picture = np.full((64, 96, 3), 40, np.uint8)
        picture[20:40, 5 * n : 5 * n + 20] = 200
        writer.write(picture)
    writer.release()
    return (path.read_bytes(),)


def disk_readers() -> tuple[Reader, ...]:
    """Give them."""
    from tests.fuzz.readers import Reader, session_seeds, use_document

    return (
        Reader("store", store_seeds, changed_store, use_store, parts=5),
        Reader("import", session_seeds, changed_zip, read_import, use_document, every=3, parts=5),
        Reader("key", lambda: (KEY.read_bytes(),), changed_bytes, read_key, parts=2),
        Reader("video", video_seeds, changed_video, read_video, parts=2),
    )

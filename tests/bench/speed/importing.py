"""The practice's import: many files, and files as long as sittings are."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from types import ModuleType

import numpy as np
import pyrage

from coach.documents.archive import pack_session
from coach.documents.landmarks import write_landmarks
from coach.documents.readings import write_readings
from coach.documents.tables import FORM_COLUMNS, STORED_LANDMARKS, LandmarkTable, ReadingTable
from coach.storage.cores import cores
from coach.storage.sealed import PracticeIdentity, seal
from coach.storage.store import ImportOutcome, Store, new_batch
from coach.storage.store_import import import_file, session_files
from tests.bench.speed.practice import ROOT, invented, took_s
from tests.bench.speed.table import Row

RATE_HZ, LANDMARKS_HZ = 25, 10
LENGTHS = {1_000: (1_000, 200), 22_500: (24, 24)}
"""Frames of a sitting: so many files, and so many sealed ones."""
_IMPORT = """
import resource, sys, time
from pathlib import Path
import pyrage
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import Store
from coach.storage.store_import import import_paths
secret = sys.stdin.read()
key = pyrage.x25519.Identity.from_str(secret) if secret else None
identity = PracticeIdentity(str(key.to_public()), key) if key else None
def spent_s():
    both = [resource.getrusage(whose) for whose in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)]
    return sum(each.ru_utime + each.ru_stime for each in both)
store, before_s, before_spent_s = Store(Path(sys.argv[1])), time.monotonic(), spent_s()
done = list(import_paths(store, [Path(sys.argv[2])], identity))
print(time.monotonic() - before_s, spent_s() - before_spent_s)
store.close()
refused = [each.line for each in done if each.outcome.value != "accepted"]
assert not refused, refused[0]
"""
"""As people import: of this process, processes that read for it would load all of the benchmark."""


def importing() -> list[Row]:
    """A thousand files, then the last thousand of many; files as long as sittings are.

    ``SPEED_FILES`` says how many, by default 2,000. The many hold few frames each, so that what
    counts is the store; the others hold what sittings of 40 seconds and of a quarter of an hour do.
    """
    made, many = invented(), int(os.environ.get("SPEED_FILES", "2000"))
    rows = _many(made, many)
    for frames, (plain, sealed) in LENGTHS.items():
        tables = _tables(frames)
        rows += _long(made, tables, frames, plain, None)
        rows += _long(made, tables, frames, sealed, pyrage.x25519.Identity.generate())
    return rows


def _many(made: ModuleType, many: int) -> list[Row]:
    thousands, resident = [], []
    with _place() as (folder, store):
        for number in range(many):
            day, code = number // 40, f"SH-{number % 40:03d}"
            session = made.make_session(day, code=code, at=made.BEGIN - timedelta(days=day))
            (folder / f"{number:05d}.shoulder.zip").write_bytes(made.session_file(session))
        batch, paths = new_batch(), session_files([folder])

        def take(some: tuple[Path, ...]) -> None:
            for path in some:
                done = import_file(store, path, batch=batch)
                assert done.outcome is ImportOutcome.ACCEPTED, done.line

        for first in range(0, many, 1000):
            part = paths[first : first + 1000]
            thousands.append(took_s(lambda part=part: take(part)))
            resident.append(_resident_mb())
    return [
        Row("import of 1,000 files of a few frames", "s of processor", thousands[0], 10.0),
        Row(f"the last 1,000 of {many:,} over the first", "", thousands[-1] / thousands[0], 1.2),
        Row("memory gained after the first 1,000", "MB", resident[-1] - resident[0], 20.0),
    ]


def _long(
    made: ModuleType,
    tables: tuple[bytes, bytes],
    frames: int,
    files: int,
    key: pyrage.x25519.Identity | None,
) -> list[Row]:
    """One after the other in this process, then all as people import them."""
    kind = f"{frames:,} frames" + (", sealed" if key else "")
    identity = PracticeIdentity(str(key.to_public()), key) if key else None
    with _place() as (folder, store):
        for number in range(files):
            day, code = number // 40, f"SH-{number % 40:03d}"
            session = made.make_session(day, code=code, at=made.BEGIN - timedelta(days=day))
            whole = pack_session(session, *tables)
            if identity:
                whole = seal(whole, identity.public_key)
            suffix = "age" if identity else "zip"
            (folder / f"{number:05d}.shoulder.{suffix}").write_bytes(whole)
        paths, batch = session_files([folder])[:24], new_batch()
        alone = [
            took_s(lambda path=path: import_file(store, path, identity, batch)) for path in paths
        ]
        store.undo_import(batch)
        command = [sys.executable, "-c", _IMPORT, store.name, str(folder)]
        secret = str(key) if key else ""
        ran = subprocess.run(
            command, cwd=ROOT, input=secret, capture_output=True, text=True, check=True
        )
    took, spent = map(float, ran.stdout.split())
    most_s = 10.0 if files == 1_000 else None
    many = f"import of {files:,} files of {kind}"
    return [
        Row(f"import of one file of {kind}, alone", "s of processor", float(np.median(alone))),
        Row(
            f"{many}, all processes over {cores()} cores", "s of processor", spent / cores(), most_s
        ),
        Row("the same, with the disk", "s", took),
    ]


@contextmanager
def _place() -> Iterator[tuple[Path, Store]]:
    with TemporaryDirectory() as place:
        folder = Path(place) / "files"
        folder.mkdir()
        store = Store(Path(place) / "s.sqlite")
        try:
            yield folder, store
        finally:
            store.close()


def _resident_mb() -> float:
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * os.sysconf("SC_PAGESIZE") / 1e6


def _tables(frames: int) -> tuple[bytes, bytes]:
    """Both tables of a sitting, every reading known and every point seen: as full as they get."""
    lots = np.random.default_rng(11)

    def drift(*shape: int, about: float, step: float) -> np.ndarray:
        return about + np.cumsum(lots.normal(0, step, shape), axis=0) * 0.1

    readings = ReadingTable(
        time_s=np.arange(frames) / RATE_HZ,
        planned_index=np.zeros(frames, np.int16),
        phase=np.repeat(np.arange(5, dtype=np.int16), frames // 5 + 1)[:frames],
        value=np.clip(drift(frames, about=100, step=2), -180, 360),
        error=np.full(frames, 6.2),
        doubt=np.full(frames, -1, np.int16),
        form=np.clip(drift(frames, len(FORM_COLUMNS), about=4, step=0.1), 0, 9),
    )
    rows, points = frames * LANDMARKS_HZ // RATE_HZ, len(STORED_LANDMARKS)
    landmarks = LandmarkTable(
        landmarks=STORED_LANDMARKS,
        time_s=np.arange(rows) / LANDMARKS_HZ,
        size_px=np.tile([640, 480], (rows, 1)),
        people=np.ones(rows, np.int64),
        brightness=np.full(rows, 0.5),
        image_px=drift(rows, points, 2, about=300, step=5),
        world_m=drift(rows, points, 3, about=0.2, step=0.02),
        visibility=np.clip(drift(rows, points, about=0.9, step=0.05), 0, 1),
    )
    return write_readings(readings), write_landmarks(landmarks)

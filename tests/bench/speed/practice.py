"""The practice: importing, opening, writing."""

from __future__ import annotations

import importlib.util
import os
import subprocess
import sys
import time
import zipfile
from collections.abc import Callable
from dataclasses import fields
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from types import ModuleType
from typing import Any

import numpy as np

from coach.desktop.shared.report_page import report_pdf
from coach.documents.archive import READINGS, pack_session, unpack_session
from coach.documents.landmarks import write_landmarks
from coach.documents.tables import LandmarkTable
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from coach.review.cohort import looked_at
from coach.review.report import report
from coach.storage.folders import OVERRIDE
from coach.storage.store import ImportOutcome, Store, new_batch
from coach.storage.store_import import import_file, session_files
from tests.bench.speed.table import Row

ROOT = Path(__file__).parents[3]
GOLDEN = ROOT / "tests" / "documents" / "golden" / "session_v2.shoulder.zip"
FRAMES = 22_500
"""Of a quarter of an hour at 25 a second."""
_OPEN = """
import sys, time
from coach import __main__ as command
from coach.app.importing import importing
with importing():
    from coach.app import review
def drawn(application):
    application.processEvents()
    for window in application.topLevelWidgets():
        if window.isVisible():
            window.grab()
    print(time.time(), time.process_time())
    return 0
review.run_windows = drawn
command.main(["review", "--store", sys.argv[1]])
"""
"""``coach review`` up to where it would wait for its user."""


def invented() -> ModuleType:
    """The invented sessions of the review's tests."""
    path = ROOT / "tests" / "review" / "conftest.py"
    spec = importlib.util.spec_from_file_location("invented_sessions", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def took_s(do: Callable[[], Any]) -> float:
    """Processor seconds: other work on the machine does not count."""
    begin_s = time.process_time()
    do()
    return time.process_time() - begin_s


def _resident_mb() -> float:
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * os.sysconf("SC_PAGESIZE") / 1e6


def importing() -> list[Row]:
    """A thousand files, then the last thousand of many; one file of a quarter of an hour.

    ``SPEED_FILES`` says how many, by default 2,000. The many hold few frames each, so that what
    counts is the store; the one holds what a patient's sitting holds.
    """
    made, many = invented(), int(os.environ.get("SPEED_FILES", "2000"))
    with TemporaryDirectory() as place:
        folder = Path(place) / "files"
        folder.mkdir()
        for number in range(many):
            day, code = number // 40, f"SH-{number % 40:03d}"
            session = made.make_session(day, code=code, at=made.BEGIN - timedelta(days=day))
            (folder / f"{number:05d}.shoulder.zip").write_bytes(made.session_file(session))
        long = Path(place) / "long.shoulder.zip"
        long.write_bytes(_of_a_quarter_of_an_hour(made))
        store, batch, thousands, resident = Store(Path(place) / "s.sqlite"), new_batch(), [], []
        paths = session_files([folder])

        def take(some: tuple[Path, ...]) -> None:
            for path in some:
                done = import_file(store, path, batch=batch)
                assert done.outcome is ImportOutcome.ACCEPTED, done.line

        for first in range(0, many, 1000):
            part = paths[first : first + 1000]
            thousands.append(took_s(lambda part=part: take(part)))
            resident.append(_resident_mb())
        long_s = took_s(lambda: take((long,)))
        store.close()
    return [
        Row("import of 1,000 session files", "s of processor", thousands[0], 10.0),
        Row(f"the last 1,000 of {many:,} over the first", "", thousands[-1] / thousands[0], 1.2),
        Row("memory gained after the first 1,000", "MB", resident[-1] - resident[0], 20.0),
        Row(f"import of one file of {FRAMES:,} frames", "s of processor", long_s),
    ]


def _of_a_quarter_of_an_hour(made: ModuleType) -> bytes:
    """Give a session file whose tables repeat the rows of the golden one, each with its time."""
    golden = unpack_session(made.session_file(made.make_session(0)), "the golden tables")
    rows = np.arange(FRAMES) % len(golden.landmarks.time_s)
    parts = {
        each.name: getattr(golden.landmarks, each.name)
        for each in fields(golden.landmarks)
        if each.name not in ("landmarks", "time_s")
    }
    table = LandmarkTable(
        landmarks=golden.landmarks.landmarks,
        time_s=np.arange(FRAMES) / 25,
        **{name: values[rows] for name, values in parts.items()},
    )
    with zipfile.ZipFile(GOLDEN) as archive:
        readings = archive.read(READINGS)
    return pack_session(made.make_session(0, code="LONG"), readings, write_landmarks(table))


def _started(path: Path, environment: dict[str, str]) -> tuple[float, float]:
    """Start the window on a store: seconds to the first chart, processor seconds in all."""
    before_s = time.time()
    command = [sys.executable, "-c", _OPEN, str(path)]
    done = subprocess.run(
        command, cwd=ROOT, env=environment, capture_output=True, text=True, check=True
    )
    drawn_s, spent_s = map(float, done.stdout.split())
    return drawn_s - before_s, spent_s


def opening() -> list[Row]:
    """Seven hundred sessions of one patient: a cold start to the first chart; what is written."""
    made = invented()
    with TemporaryDirectory() as place:
        path = Path(place) / "s.sqlite"
        store, batch = Store(path), new_batch()
        for number in range(700):
            at = made.BEGIN - timedelta(hours=12 * number)
            values = (120 - number / 10, 121 - number / 10, 119 - number / 10)
            store.import_session(made.make_session(number, values, at=at), b"", "f", batch)
        documents = store.sessions_of("SH-017")
        store.close()
        # As installed: modules are compiled, which the first start here does, and that counts not.
        clean = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
        clean |= {"PYTHONPYCACHEPREFIX": f"{place}/compiled", OVERRIDE: f"{place}/own"}
        _started(path, clean)
        taken = [_started(path, clean) for _ in range(5)]
        starts, spent = (sorted(each) for each in zip(*taken, strict=True))
        year = documents[-365:]
        now = datetime.now(UTC)
        looking_s = took_s(lambda: looked_at("SH-017", documents))
        printing_s = took_s(lambda: report_pdf(report(documents)))
        bundling_s = took_s(lambda: exported(year, Kind.FHIR, now))
    return [
        Row("therapist's window cold, 700 sessions, to the first chart", "s", starts[2], 1.0),
        Row("the same", "s of processor", spent[2], 1.0),
        Row("one look at 700 sessions", "s of processor", looking_s),
        Row("report of 700 sessions as PDF", "s of processor", printing_s, 1.0),
        Row("FHIR bundle of a year", "s of processor", bundling_s, 1.0),
    ]

"""The practice: opening, writing."""

from __future__ import annotations

import importlib.util
import os
import subprocess
import sys
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from types import ModuleType
from typing import Any

from coach.desktop.shared.report_page import report_pdf
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from coach.review.cohort import looked_at
from coach.review.report import report
from coach.storage.folders import OVERRIDE
from coach.storage.store import Store, new_batch
from tests.bench.speed.table import Row

ROOT = Path(__file__).parents[3]
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

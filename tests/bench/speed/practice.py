"""The practice: importing, opening, writing, and the list across a network's patients."""

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

from sqlalchemy import Connection, text

from coach.app.export import exported
from coach.desktop.shared.report_page import report_pdf
from coach.exchange.kind import Kind
from coach.review.cohort import looked_at
from coach.review.report import report
from coach.storage.folders import OVERRIDE
from coach.storage.store import Store, new_batch
from coach.storage.store_import import import_file, session_files
from coach.storage.store_rows import utc_text
from tests.bench.speed.table import Row

ROOT = Path(__file__).parents[3]
PATIENTS, SITTINGS, HOLDS = 250, 200, 20
"""A practice network's million repetitions."""
_OPEN = """
import sys, time
from coach import __main__ as command
with command.importing():
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


def importing(many: int = 2000) -> list[Row]:
    """A thousand files, then the last thousand of many."""
    made = invented()
    with TemporaryDirectory() as place:
        folder = Path(place) / "files"
        folder.mkdir()
        for number in range(many):
            code = f"SH-{number % 40:03d}"
            session = made.make_session(number // 40, code=code)
            (folder / f"{number:05d}.shoulder.zip").write_bytes(made.session_file(session))
        store, batch, thousands, resident = Store(Path(place) / "s.sqlite"), new_batch(), [], []
        paths = session_files([folder])

        def take(some: tuple[Path, ...]) -> None:
            for path in some:
                import_file(store, path, batch=batch)

        for first in range(0, many, 1000):
            thousands.append(took_s(lambda first=first: take(paths[first : first + 1000])))
            resident.append(_resident_mb())
        store.close()
    return [
        Row("import of 1,000 session files", "s of processor", thousands[0], 10.0),
        Row(f"the last 1,000 of {many:,} over the first", "", thousands[-1] / thousands[0], 1.2),
        Row("memory gained after the first 1,000", "MB", resident[-1] - resident[0], 20.0),
    ]


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


_COPIES = """
create temporary table days (n integer, at_local varchar(40), at_utc varchar(32));
"""
_MANY = (
    """
    insert into sessions (id, patient_id, started_at, started_utc, duration_s, ended_because,
        software_version, definitions, pain_at_end, document, batch, imported_utc, doubt, decision)
    select substr(s.id, 1, 24) || (10000000 + d.n), s.patient_id, d.at_local, d.at_utc,
        s.duration_s, s.ended_because, s.software_version, s.definitions, s.pain_at_end,
        replace(s.document, s.id, substr(s.id, 1, 24) || (10000000 + d.n)), s.batch, s.imported_utc,
        s.doubt, s.decision
    from sessions s cross join days d
    """,
    """
    insert into exercises (session_id, position, planned_index, exercise, movement, side, view,
        posture, ended_because, pain_before, pain_after, hold_asked_s, repetitions_asked)
    select substr(e.session_id, 1, 24) || (10000000 + d.n), e.position, e.planned_index, e.exercise,
        e.movement, e.side, e.view, e.posture, e.ended_because, e.pain_before, e.pain_after,
        e.hold_asked_s, e.repetitions_asked
    from exercises e cross join days d
    """,
    """
    insert into repetitions (session_id, exercise_position, position, number, start_s, end_s,
        held_s, value, error, spread, unit, seen_fraction, completed, ended_because, faults)
    select substr(r.session_id, 1, 24) || (10000000 + d.n), r.exercise_position, r.position,
        r.number, r.start_s, r.end_s, r.held_s, r.value, r.error, r.spread, r.unit, r.seen_fraction,
        r.completed, r.ended_because, r.faults
    from repetitions r cross join days d
    """,
    """
    insert into imports (at_utc, file_name, outcome, reason, session_id)
    select i.at_utc, i.file_name, i.outcome, i.reason,
        substr(i.session_id, 1, 24) || (10000000 + d.n)
    from imports i cross join days d
    """,
)
"""Copies of each patient's first sitting on later days, made by the database itself."""


def fill(store: Store) -> None:
    """Put a network's sessions into an empty store."""
    made, batch = invented(), new_batch()
    for number in range(PATIENTS):
        values = tuple(90.0 + i for i in range(HOLDS))
        first = made.make_session(0, values, code=f"N-{number:04d}")
        store.import_session(first, b"", "first.zip", batch)
    days = []
    for n in range(1, SITTINGS):
        at = made.BEGIN + timedelta(days=n)
        days.append({"n": n, "at_local": at.isoformat(), "at_utc": utc_text(at)})

    def work(connection: Connection) -> None:
        connection.execute(text(_COPIES))
        connection.execute(text("insert into days values (:n, :at_local, :at_utc)"), days)
        for statement in _MANY:
            connection.execute(text(statement))

    store._write(work)


def network(target: Path | str | None = None) -> list[Row]:
    """The list across all patients, on a million repetitions; ``SPEED_STORE`` names a server."""
    with TemporaryDirectory() as place:
        target = target or os.environ.get("SPEED_STORE") or Path(place) / "network.sqlite"
        store = Store(target)
        if not store.patients():
            fill(store)
            with store._engine.connect().execution_options(isolation_level="AUTOCOMMIT") as c:
                c.execute(text("VACUUM ANALYZE" if "://" in str(target) else "ANALYZE"))
        with store._engine.connect() as connection:
            count = connection.execute(text("select count(*) from repetitions")).scalar_one()
        looking_s = took_s(store.looks)
        listing = sorted(_wall_s(lambda: (store.patients(), store.looks())) for _ in range(5))
        asked = (store.people, store.refusals, store.open_doubts, store.last_import)
        besides = sorted(_wall_s(lambda: [ask() for ask in asked]) for _ in range(5))
        plan = _explained(store)
        store.close()
    print(plan, file=sys.stderr)
    name = "PostgreSQL" if "://" in str(target) else "SQLite"
    return [
        Row(f"repetitions in the network's store, {name}", "", float(count)),
        Row("first look at everyone, once", "s of processor", looking_s),
        Row("list across patients after that", "s", listing[2], 1.0),
        Row("what the window asks besides", "s", besides[2]),
    ]


def _wall_s(do: Callable[[], Any]) -> float:
    begin_s = time.perf_counter()
    do()
    return time.perf_counter() - begin_s


def _explained(store: Store) -> str:
    word = "EXPLAIN (ANALYZE, COSTS OFF)" if "://" in store.name else "EXPLAIN QUERY PLAN"
    query = (
        f"{word} select patient_id, count(*), min(started_utc), max(started_utc),"
        " max(imported_utc) from sessions where decision <> 'left out' group by patient_id"
    )
    with store._engine.connect() as connection:
        return "\n".join(str(row[-1]) for row in connection.execute(text(query)))


def rows() -> list[Row]:
    """Every row of the practice."""
    return [*importing(), *opening(), *network()]

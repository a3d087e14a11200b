"""The list across a practice network's patients."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from sqlalchemy import Connection, text

from coach.storage.store import Store, new_batch
from coach.storage.store_rows import utc_text
from tests.bench.speed.practice import invented, took_s
from tests.bench.speed.table import Row

PATIENTS, SITTINGS, HOLDS = 250, 200, 20
"""A practice network's million repetitions."""
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

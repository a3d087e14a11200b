"""Make the worked case of the therapist's guide, and print what the program says of it.

python -m docs.make_case DIR

An invented person of an invented practice: six weeks of session files in ``DIR``, drawn at random
around a known course with a fixed seed, and the practice's records of that person in a store.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

import msgspec
import numpy as np

from coach.catalogue import catalogue
from coach.documents.archive import pack_session
from coach.documents.landmarks import landmark_text
from coach.documents.plan import write_plan
from coach.documents.readings import HEADER
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Movement, Side
from coach.domain.plan import NextStep, Plan, PlannedExercise
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    Person,
    TotalScore,
    Treatment,
    TreatmentKind,
)
from coach.domain.progress import Repetition
from coach.domain.session import SessionDocument
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from coach.review.overview import Overview, overview
from coach.review.plans import proposed
from coach.review.report_columns import COLUMNS
from coach.storage.store import Store
from coach.storage.store_import import import_paths
from tests.review.six_patients import BEGIN, hold, sitting

CODE, MISTYPED = "MILL-24", "Mill 24"
FIRST, LAST = BEGIN.date(), BEGIN.date() + timedelta(days=41)
INJECTED = FIRST + timedelta(days=14)
START_DEG, GAIN_DEG_PER_DAY = 98.0, 0.8
"""The true course: level until the injection, then this much a day."""
DAY_SD_DEG, HOLD_SD_DEG = 3.0, 1.5
RESTS = (6, 13, 19, 20, 27, 34)
"""Days without a sitting, counted from the first."""
FLEXION = PlannedExercise(
    movement=Movement.FLEXION,
    side=Side.RIGHT,
    hold_s=20,
    repetitions=3,
    pain_limit=3,
    next_step=NextStep(sessions=3, at_least_deg=115.0, pain_at_most=3),
)
PLAN = Plan(
    patient_code=CODE,
    title="Forwards and up, held",
    issued_on=FIRST,
    side=Side.RIGHT,
    phase=StiffnessPhase.STIFF,
    irritability=Irritability.MODERATE,
    exercises=(
        FLEXION,
        msgspec.structs.replace(
            proposed(catalogue().get("pendulum"), Irritability.MODERATE, Side.RIGHT),
            hold_s=30,
            per_day=1,
        ),
    ),
    sessions_per_week=7,
)


@dataclass(frozen=True, slots=True)
class Case:
    """What the program makes of the case on its last day; ``note`` is the exported one."""

    store: Store
    outcomes: tuple[str, ...]
    overview: Overview
    note: str


def sessions() -> tuple[SessionDocument, ...]:
    """Give the sittings, oldest first; one was begun with a code mistyped into its plan."""
    rng = np.random.default_rng(24)
    found = []
    for day in range((LAST - FIRST).days + 1):
        if day in RESTS:
            continue
        gained = GAIN_DEG_PER_DAY * max(0, day - (INJECTED - FIRST).days)
        level = START_DEG + gained + rng.normal(0, DAY_SD_DEG)
        pain = (3, 3) if FIRST + timedelta(days=day) < INJECTED else (2, 2)
        found.append(_sitting(rng, day, level, pain, CODE if day != 30 else MISTYPED))
    return tuple(found)


def _sitting(
    rng: np.random.Generator, day: int, level_deg: float, pain: tuple[int, int], code: str
) -> SessionDocument:
    holds: list[Repetition] = [hold(n, level_deg + rng.normal(0, HOLD_SD_DEG)) for n in (1, 2, 3)]
    plan = msgspec.structs.replace(PLAN, patient_code=code)
    return sitting(code, day, holds, pain=pain, plan=plan)


def records() -> Iterator[object]:
    """Give what the practice wrote down of the person."""
    yield Person(code=CODE, name="Quilla Marsh (invented)", created_on=FIRST)
    yield Episode(
        code=CODE,
        side=Side.RIGHT,
        began_on=date(2025, 9, 1),
        phase=StiffnessPhase.STIFF,
        irritability=Irritability.MODERATE,
        goals="Reach the top shelf; sleep on the right side again",
    )
    yield OtherSideMeasure(code=CODE, on=FIRST, movement=Movement.FLEXION, value_deg=168)
    for on, value_deg in ((FIRST, 104.0), (LAST, 125.0)):
        yield HandMeasure(
            code=CODE,
            on=on,
            movement=Movement.FLEXION,
            side=Side.RIGHT,
            value_deg=value_deg,
            passive=True,
        )
    for on, total in ((FIRST, 62.0), (LAST, 38.0)):
        yield TotalScore(code=CODE, on=on, name="The practice's own ten", total=total, maximum=100)
    yield IssuedPlan(
        code=CODE,
        revision=PLAN.revision,
        issued_on=FIRST,
        side=PLAN.side,
        plan=write_plan(PLAN).decode(),
    )
    yield Treatment(code=CODE, on=INJECTED, kind=TreatmentKind.INJECTION)


def make_case(folder: Path) -> Case:
    """Write the session files into ``folder``, import them, and read what comes of it."""
    folder.mkdir(parents=True, exist_ok=True)
    for document in sessions():
        packed = pack_session(document, HEADER.encode(), landmark_text("").encode())
        (folder / f"{document.started_at[:10]}.shoulder.zip").write_bytes(packed)
    store = Store(folder / "review.sqlite")
    for record in records():
        store.add(record)  # type: ignore[type-var]
    outcomes = tuple(outcome.line for outcome in import_paths(store, [folder]))
    documents, known = store.sessions_of(CODE), store.records_of(CODE)
    now = datetime.combine(LAST, time(18), UTC)
    note = exported(documents, Kind.NOTE, now, known).decode()
    return Case(store, outcomes, overview(documents, LAST, known), note)


def told(case: Case) -> str:
    """Put what the window and the note say into lines."""
    lines = [*case.overview.reasons]
    for row in case.overview.report.rows:
        lines += [f"{name}: {cell}" for name, cell in zip(COLUMNS, row.cells, strict=True)]
        lines += [f"{name}: {text}" for name, text in row.findings]
    lines += [hint.sentence for hint in case.overview.hints]
    lines += [f"{name}: {text}" for name, text in case.overview.lines]
    lines += [doubt.sentence for doubt in case.store.doubts()]
    return "\n".join(lines) + "\n\n" + case.note


if __name__ == "__main__":
    made = make_case(Path(sys.argv[1]))
    print(told(made))
    made.store.close()

"""Six invented patients of an invented clinic, as session documents with known truth.

``six_patients(seed)`` gives them by what is the matter; ``LAST_DAY`` is when all are looked at.
``sitting`` makes a single session. Flexion is held standing, then the arm swings for a time, as
the plan asks. Degrees.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta

import numpy as np

from coach.domain.form import FormFault
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import NextStep, OtherSide, Plan, PlannedExercise
from coach.domain.progress import EndedBecause, Repetition, TimedHold
from coach.domain.session import Camera, ExerciseRecord, SessionDocument, SessionEnd, Software

BEGIN = datetime(2026, 1, 5, 9, 0, tzinfo=UTC)  # a Monday
SITTINGS = 42
LAST_DAY = date(2026, 2, 15)
HOLD_S, HOLDS = 20.0, 3
DAY_SD_DEG = 3.0
"""How an unchanged shoulder scatters from day to day: our choice."""
PLACEMENT_SD_DEG = 2.5
"""As in ``norms.PLACEMENT_SEM``."""
HOLD_SD_DEG = 1.5
FLEXION = PlannedExercise(
    movement=Movement.FLEXION,
    side=Side.LEFT,
    hold_s=HOLD_S,
    repetitions=HOLDS,
    next_step=NextStep(sessions=3, at_least_deg=115.0, pain_at_most=3),
)
SWING = PlannedExercise(exercise="pendulum", side=Side.LEFT, hold_s=30, repetitions=2)


def plan_of(code: str, exercises: Sequence[PlannedExercise] = (FLEXION, SWING)) -> Plan:
    return Plan(
        patient_code=code,
        title="Gentle end range",
        issued_on=BEGIN.date(),
        exercises=tuple(exercises),
        sessions_per_week=7,
        other_side=(OtherSide(movement=Movement.FLEXION, value_deg=165.0),),
    )


def hold(
    number: int, value: float, faults: tuple[FormFault, ...] = (), seen: float = 0.95
) -> Repetition:
    start_s = 30.0 * number
    return Repetition(
        number=number,
        start_s=start_s,
        end_s=start_s + HOLD_S,
        held_s=HOLD_S,
        value=round(float(value), 1),
        error=6.2,
        spread=1.0,
        seen_fraction=seen,
        ended_because=EndedBecause.COMPLETED,
        faults=faults,
    )


def swung(number: int, held_s: float = 30.0) -> TimedHold:
    start_s = 120 + 40.0 * number
    return TimedHold(
        number=number,
        start_s=start_s,
        end_s=start_s + held_s,
        held_s=held_s,
        ended_because=EndedBecause.COMPLETED,
    )


def sitting(
    code: str,
    day: float,
    holds: Sequence[Repetition],
    *,
    pain: tuple[int | None, int | None] = (2, 2),
    width_px: int = 640,
    field_of_view_deg: float | None = None,
    frames_lost: int = 30,
    plan: Plan | None = None,
    timed: Sequence[TimedHold] = (swung(1), swung(2)),
    ended: SessionEnd = SessionEnd.COMPLETED,
) -> SessionDocument:
    """One session, ``day`` days after the first, in which the first planned exercise is held."""
    began = BEGIN + timedelta(days=day)
    plan = plan or plan_of(code)
    first, *others = plan.exercises
    records = [
        ExerciseRecord(
            planned_index=0,
            movement=first.measured,
            side=first.side,
            view=View.SIDE,
            position=Position.STANDING,
            started_s=0.0,
            ended_s=120.0,
            ended_because=ended,
            repetitions=tuple(holds),
            pain_before=pain[0],
            pain_after=pain[1],
        )
    ]
    if others and timed:
        records.append(
            ExerciseRecord(
                planned_index=1,
                exercise=others[0].exercise,
                movement=None,
                side=others[0].side,
                view=View.FRONT,
                started_s=120.0,
                ended_s=220.0,
                ended_because=ended,
                timed=tuple(timed),
            )
        )
    return SessionDocument(
        session_id=hashlib.md5(f"{code} {began.isoformat()}".encode()).hexdigest(),
        started_at=began.isoformat(),
        duration_s=240.0,
        ended_because=ended,
        software=Software(
            name="stiff-shoulder-coach", version="0.1.0", definitions=1, model_sha256="a" * 64
        ),
        camera=Camera(
            kind="camera",
            width_px=width_px,
            height_px=480,
            frames_per_s=30.0,
            frames_seen=6000,
            frames_lost=frames_lost,
            field_of_view_deg=field_of_view_deg,
        ),
        plan=plan,
        exercises=tuple(records),
    )


def six_patients(
    seed: int, sittings: int = SITTINGS, noisy: int = 14
) -> dict[str, tuple[SessionDocument, ...]]:
    """Everyone's sessions, oldest first, by what is the matter.

    One a day for ``sittings`` days; of the third patient ``noisy`` in about the same time.
    """
    rng = np.random.default_rng(seed)
    days = np.arange(sittings)
    level = rng.uniform(90, 100)
    half = sittings // 2
    shift = np.where(days < half, 0.0, 6.0)
    return {
        "steady gain": _held(rng, "SH-101", 95 + 30 * days / sittings + _scatter(rng, sittings)),
        "no change": _held(rng, "SH-102", level + _scatter(rng, sittings)),
        "noise that looks like gain": _held(
            rng, "SH-103", level + _like_gain(rng, noisy), days=float(sittings // noisy)
        ),
        "camera moved": _held(
            rng, "SH-104", level + shift + _scatter(rng, sittings), new_camera=half
        ),
        "stopped after a week": _held(rng, "SH-105", level + _scatter(rng, 6)),
        "pain rising": _held(
            rng, "SH-106", level + _scatter(rng, sittings), pain=2 + 4 * days / (sittings - 1)
        ),
    }


def _scatter(rng: np.random.Generator, count: int) -> np.ndarray:
    return rng.normal(0, np.hypot(DAY_SD_DEG, PLACEMENT_SD_DEG), count)


def _like_gain(rng: np.random.Generator, count: int) -> np.ndarray:
    """An unchanged shoulder whose worst day came first and whose best came last."""
    noise = _scatter(rng, count)
    lowest, highest = noise.min(), noise.max()
    middle = rng.permutation(np.sort(noise)[1:-1])
    return np.concatenate([[lowest], middle, [highest]])


def _held(
    rng: np.random.Generator,
    code: str,
    course: np.ndarray,
    *,
    days: float = 1.0,
    new_camera: int | None = None,
    pain: np.ndarray | None = None,
) -> tuple[SessionDocument, ...]:
    plan = plan_of(code)
    found = []
    for i, value in enumerate(course):
        moved = new_camera is not None and i >= new_camera
        after = 2 if pain is None else round(float(pain[i]))
        holds = [hold(k + 1, value + rng.normal(0, HOLD_SD_DEG)) for k in range(HOLDS)]
        width_px = 1280 if moved else 640
        found.append(sitting(code, days * i, holds, pain=(2, after), width_px=width_px, plan=plan))
    return tuple(found)

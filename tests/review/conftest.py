"""Invented patients as session documents."""

from __future__ import annotations

import hashlib
import zipfile
from collections.abc import Callable, Sequence
from datetime import datetime, timedelta, timezone
from pathlib import Path

import pytest

from coach.documents.archive import LANDMARKS, READINGS, pack_session
from coach.domain.movement import Movement, Position, Side, needed_view
from coach.domain.plan import OtherSide, Plan, PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import Camera, ExerciseRecord, SessionDocument, SessionEnd, Software

BERLIN_WINTER = timezone(timedelta(hours=1))
BEGIN = datetime(2026, 1, 5, 18, 30, tzinfo=BERLIN_WINTER)  # a Monday


def make_session(
    number: int = 0,
    values: Sequence[float] = (100.0, 100.0, 100.0),
    *,
    at: datetime | None = None,
    code: str = "SH-017",
    movement: Movement = Movement.FLEXION,
    side: Side = Side.LEFT,
    position: Position = Position.STANDING,
    error: float = 6.0,
    hold_s: float = 20.0,
    held_s: float | None = None,
    ended: EndedBecause = EndedBecause.COMPLETED,
    pain: tuple[int | None, int | None] = (2, 3),
    other_side: float | None = None,
    per_week: int = 7,
    definitions: int = 1,
    width_px: int = 640,
    extra: Sequence[ExerciseRecord] = (),
    planned: Sequence[PlannedExercise] = (),
) -> SessionDocument:
    """One session with one exercise of as many holds as there are values."""
    began = at or BEGIN + timedelta(days=number)
    held = hold_s if held_s is None else held_s
    holds = tuple(
        Repetition(
            number=i + 1,
            start_s=30.0 * i + 5,
            end_s=30.0 * i + 5 + held,
            held_s=held,
            value=value,
            error=error,
            spread=1.0,
            unit=movement.unit,
            seen_fraction=0.95,
            ended_because=ended,
        )
        for i, value in enumerate(values)
    )
    first = PlannedExercise(
        movement=movement, side=side, position=position, hold_s=hold_s, repetitions=3
    )
    key = f"{code} {number} {movement} {began.isoformat()}"
    return SessionDocument(
        session_id=hashlib.md5(key.encode()).hexdigest(),
        started_at=began.isoformat(),
        duration_s=120.0,
        ended_because=SessionEnd.COMPLETED,
        software=Software(
            name="stiff-shoulder-coach",
            version="0.1.0",
            definitions=definitions,
            model_sha256="a" * 64,
        ),
        camera=Camera(
            kind="camera",
            width_px=width_px,
            height_px=480,
            frames_per_s=30.0,
            frames_seen=3000,
            frames_lost=30,
        ),
        plan=Plan(
            patient_code=code,
            title="Gentle end range",
            exercises=(first, *planned),
            sessions_per_week=per_week,
            other_side=()
            if other_side is None
            else (OtherSide(movement=movement, value_deg=other_side),),
        ),
        exercises=(
            ExerciseRecord(
                planned_index=0,
                movement=movement,
                side=side,
                view=needed_view(movement, position),
                position=position,
                started_s=0.0,
                ended_s=100.0,
                ended_because=SessionEnd.COMPLETED,
                repetitions=holds,
                pain_before=pain[0],
                pain_after=pain[1],
            ),
            *extra,
        ),
    )


def session_file(document: SessionDocument) -> bytes:
    """A session file of a document, with the tables of the golden one."""
    golden = Path(__file__).parents[1] / "documents" / "golden" / "session_v2.shoulder.zip"
    with zipfile.ZipFile(golden) as archive:
        return pack_session(document, archive.read(READINGS), archive.read(LANDMARKS))


@pytest.fixture
def session() -> Callable[..., SessionDocument]:
    return make_session

"""The entries of a sitting that nobody did: many holds, a second of rows at a time."""

from __future__ import annotations

from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import Camera, SessionEnd, Software
from coach.session.entries import (
    CameraCounts,
    Entry,
    ExerciseEnded,
    ReadingRows,
    RepetitionDone,
    SessionEnded,
    SessionOpened,
)

REPETITIONS = 60
PLANNED = PlannedExercise(movement=Movement.FLEXION, side=Side.LEFT, hold_s=1, repetitions=30)


def opened(session_id: str) -> SessionOpened:
    return SessionOpened(
        session_id=session_id,
        started_at="2026-11-24T10:15:30+01:00",
        software=Software(name="test", version="0", definitions=1, model_sha256="0" * 64),
        camera=Camera(kind="file", width_px=640, height_px=480, frames_per_s=30),
        plan=Plan(patient_code="INVENTED", exercises=(PLANNED,)),
    )


def repetition_entries(number: int) -> list[Entry]:
    """Ten seconds: ten chunks of readings, then the repetition."""
    start_s = 10.0 * number
    entries: list[Entry] = []
    for second in range(10):
        time_s = start_s + second
        row = f"{time_s:.3f},0,holding,{number:.1f},3.0" + "," * 11 + "\n"
        entries.append(ReadingRows(time_s=time_s, rows=row * 20))
        entries.append(CameraCounts(time_s=time_s, frames_seen=number, frames_lost=0))
    repetition = Repetition(
        number=number,
        start_s=start_s,
        end_s=start_s + 9,
        held_s=9.0,
        value=100.0 + number,
        error=3.0,
        spread=1.0,
        seen_fraction=1.0,
        ended_because=EndedBecause.COMPLETED,
    )
    entries.append(RepetitionDone(time_s=start_s + 9, planned_index=0, repetition=repetition))
    return entries


def ending() -> list[Entry]:
    time_s = 10.0 * (REPETITIONS + 1)
    return [
        ExerciseEnded(time_s=time_s, planned_index=0, ended_because=SessionEnd.COMPLETED),
        SessionEnded(time_s=time_s, ended_because=SessionEnd.COMPLETED),
    ]

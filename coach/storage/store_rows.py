"""A session document as rows of the store's tables."""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Any

from sqlalchemy import Connection, insert, select

from coach.domain.progress import EndedBecause
from coach.domain.session import SessionDocument
from coach.review.history import asked
from coach.storage.store_tables import exercises, patients, repetitions, sessions

_EXERCISE = (
    "planned_index", "exercise", "movement", "side", "view", "ended_because", "pain_before",
    "pain_after",
)  # fmt: skip
_REPETITION = (
    "number", "start_s", "end_s", "held_s", "value", "error", "spread", "unit",
    "seen_fraction", "ended_because",
)  # fmt: skip


def utc_text(at: datetime) -> str:
    """Write an instant so that texts sort as instants do."""
    return at.astimezone(UTC).isoformat(timespec="microseconds")


def add_session(
    connection: Connection, document: SessionDocument, text: str, **columns: str
) -> None:
    """Insert a session that is not there yet, its patient where new, and what it holds.

    ``columns`` are ``started_utc``, ``imported_utc``, ``batch`` and ``doubt``.
    """
    row = {
        "id": document.session_id,
        "patient_id": patient_of(connection, document.plan.patient_code, columns["batch"]),
        "started_at": document.started_at,
        "duration_s": document.duration_s,
        "ended_because": document.ended_because,
        "software_version": document.software.version,
        "definitions": document.software.definitions,
        "pain_at_end": document.pain_at_end,
        "document": text,
    }
    connection.execute(insert(sessions), [row | columns])
    add_exercises(connection, document)


def patient_of(connection: Connection, code: str, batch: str | None) -> int:
    """Give the key of the person of a code, who is added as one of the import where new."""
    patient = connection.scalar(select(patients.c.id).where(patients.c.code == code))
    if patient is None:
        new = {"code": code, "created_on": date.today(), "edition": 1, "batch": batch}
        added = connection.execute(insert(patients).values(new))
        (patient,) = added.inserted_primary_key or (None,)
    assert patient is not None
    return int(patient)


def add_exercises(connection: Connection, document: SessionDocument) -> None:
    """Insert what a session's document holds of exercises and repetitions."""
    exercise_rows, repetition_rows = _rows(document)
    if exercise_rows:
        connection.execute(insert(exercises), exercise_rows)
    if repetition_rows:
        connection.execute(insert(repetitions), repetition_rows)


def _rows(document: SessionDocument) -> tuple[list[dict[str, Any]], list[dict[str, Any]]]:
    exercise_rows: list[dict[str, Any]] = []
    repetition_rows: list[dict[str, Any]] = []
    for position, record in enumerate(document.exercises):
        planned = asked(document, record)
        exercise_rows.append(
            {name: getattr(record, name) for name in _EXERCISE}
            | {
                "session_id": document.session_id,
                "position": position,
                "posture": record.position,
                "hold_asked_s": planned.hold_s if planned else None,
                "repetitions_asked": planned.repetitions if planned else None,
            }
        )
        repetition_rows.extend(
            {name: getattr(repetition, name) for name in _REPETITION}
            | {
                "session_id": document.session_id,
                "exercise_position": position,
                "position": index,
                "completed": repetition.ended_because is EndedBecause.COMPLETED,
                "faults": " ".join(repetition.faults),
            }
            for index, repetition in enumerate(record.repetitions)
        )
    return exercise_rows, repetition_rows

"""The tables of the therapist's store, version 2.

A session's whole document is kept as JSON and is what everything is read from; exercises and
repetitions repeat parts of it in columns for questions about many sessions at once. The file as
it came is kept too, for replay and for measuring again. Only portable SQL: other databases may
stand behind a URL.
"""

from __future__ import annotations

from sqlalchemy import (
    Boolean,
    Column,
    Float,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Table,
    Text,
)

STORE_VERSION = 2

metadata = MetaData()

store_version = Table(
    "store_version",
    metadata,
    Column("version", Integer, primary_key=True),
    Column("created_utc", String(32), nullable=False),
)

patients = Table(
    "patients",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("code", String(64), nullable=False, unique=True),
)

sessions = Table(
    "sessions",
    metadata,
    Column("id", String(32), primary_key=True),
    Column("patient_id", ForeignKey("patients.id"), nullable=False, index=True),
    Column("started_at", String(40), nullable=False),  # as the patient's clock showed it
    Column("started_utc", String(32), nullable=False),  # the same instant, sortable
    Column("duration_s", Float, nullable=False),
    Column("ended_because", String(20), nullable=False),
    Column("software_version", String(200), nullable=False),
    Column("definitions", Integer, nullable=False),
    Column("pain_at_end", Integer),
    Column("document", Text, nullable=False),
    Index("sessions_in_order", "patient_id", "started_utc"),
)


def _session_key() -> Column[str]:
    return Column("session_id", ForeignKey("sessions.id", ondelete="CASCADE"), primary_key=True)


exercises = Table(
    "exercises",
    metadata,
    _session_key(),
    Column("position", Integer, primary_key=True),
    Column("planned_index", Integer, nullable=False),
    Column("movement", String(40), nullable=False),
    Column("side", String(5), nullable=False),
    Column("view", String(5), nullable=False),
    Column("posture", String(10), nullable=False),  # the document's position
    Column("ended_because", String(20), nullable=False),
    Column("pain_before", Integer),
    Column("pain_after", Integer),
    Column("hold_asked_s", Float),
    Column("repetitions_asked", Integer),
)

repetitions = Table(
    "repetitions",
    metadata,
    _session_key(),
    Column("exercise_position", Integer, primary_key=True),
    Column("position", Integer, primary_key=True),
    Column("number", Integer, nullable=False),
    Column("start_s", Float, nullable=False),
    Column("end_s", Float, nullable=False),
    Column("held_s", Float, nullable=False),
    Column("value", Float, nullable=False),
    Column("error", Float, nullable=False),
    Column("spread", Float, nullable=False),
    Column("unit", String(3), nullable=False),
    Column("seen_fraction", Float, nullable=False),
    Column("completed", Boolean, nullable=False),
    Column("ended_because", String(20), nullable=False),
)

files = Table(
    "files",
    metadata,
    _session_key(),
    Column("sha256", String(64), nullable=False),
    Column("content", LargeBinary, nullable=False),
)

imports = Table(
    "imports",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("at_utc", String(32), nullable=False),
    Column("file_name", String(255), nullable=False),
    Column("outcome", String(10), nullable=False),
    Column("reason", Text, nullable=False, default=""),
    Column("session_id", ForeignKey("sessions.id", ondelete="CASCADE")),
)

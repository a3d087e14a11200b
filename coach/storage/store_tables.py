"""The tables of the therapist's store, version 6; ``migrations`` makes them.

A session's whole document is kept as JSON and is what everything is read from; exercises and
repetitions repeat parts of it in columns for questions about many sessions at once. The file as
it came is kept too, for replay and for measuring again. Only portable SQL: SQLite or PostgreSQL
stands behind it.
"""

from __future__ import annotations

from sqlalchemy import (
    Boolean,
    Column,
    Date,
    Float,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Table,
    Text,
    UniqueConstraint,
)

STORE_VERSION = 6

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
    Column("name", String(200), nullable=False, server_default=""),
    Column("created_on", Date),
    Column("edition", Integer, nullable=False, server_default="0"),
    Column("batch", String(32)),  # of the import that made the person
)

sessions = Table(
    "sessions",
    metadata,
    Column("id", String(32), primary_key=True),
    Column("patient_id", ForeignKey("patients.id"), nullable=False, index=True),
    Column("started_at", String(40), nullable=False),  # as the patient's clock showed it
    Column("started_utc", String(32), nullable=False, index=True),  # the same instant, sortable
    Column("duration_s", Float, nullable=False),
    Column("ended_because", String(20), nullable=False),
    Column("software_version", String(200), nullable=False),
    Column("definitions", Integer, nullable=False),
    Column("pain_at_end", Integer),
    Column("document", Text, nullable=False),
    Column("batch", String(32), index=True),
    Column("imported_utc", String(32)),
    Column("doubt", Text, nullable=False, server_default=""),
    Column("decision", String(10), nullable=False, server_default=""),  # about the doubt
    Index("sessions_in_order", "patient_id", "started_utc"),
    # All that a list of patients asks of a session, so that no document is touched for it.
    Index("sessions_counted", "patient_id", "decision", "started_utc", "imported_utc"),
)

looks = Table(
    "looks",
    metadata,
    Column("patient_id", ForeignKey("patients.id", ondelete="CASCADE"), primary_key=True),
    Column("state", String(200), nullable=False),  # of the sessions that were looked at
    Column("content", Text, nullable=False),
)


def _session_key() -> Column[str]:
    return Column("session_id", ForeignKey("sessions.id", ondelete="CASCADE"), primary_key=True)


exercises = Table(
    "exercises",
    metadata,
    _session_key(),
    Column("position", Integer, primary_key=True),
    Column("planned_index", Integer, nullable=False),
    Column("exercise", String(60)),
    Column("movement", String(40)),  # none: timed only
    Column("side", String(5), nullable=False),
    Column("view", String(5), nullable=False),
    Column("posture", String(10), nullable=False),  # the document's position
    Column("ended_because", String(20), nullable=False),
    Column("pain_before", Integer),
    Column("pain_after", Integer),
    Column("hold_asked_s", Float),
    Column("repetitions_asked", Integer),
    Index("exercises_by_movement", "movement", "side", "session_id"),
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
    Column("faults", String(200), nullable=False),  # of form, between blanks
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
    Column("session_id", ForeignKey("sessions.id", ondelete="CASCADE"), index=True),
)


def _person() -> tuple[Column[int], ...]:
    return (
        Column("id", Integer, primary_key=True),
        Column("edition", Integer, nullable=False),
        Column("patient_id", ForeignKey("patients.id", ondelete="CASCADE"), nullable=False),
    )


def _episode() -> Column[int]:
    return Column("episode_id", ForeignKey("episodes.id", ondelete="SET NULL"), index=True)


episodes = Table(
    "episodes",
    metadata,
    *_person(),
    Column("side", String(5), nullable=False),
    Column("began_on", Date, nullable=False),
    Column("phase", String(10)),
    Column("irritability", String(10)),
    Column("goals", Text, nullable=False),
    Column("note", Text, nullable=False),
    Index("episodes_in_order", "patient_id", "began_on"),
)

treatments = Table(
    "treatments",
    metadata,
    *_person(),
    _episode(),
    Column("on", Date, nullable=False),
    Column("kind", String(20), nullable=False),
    Column("text", Text, nullable=False),
    Index("treatments_in_order", "patient_id", "on"),
)

other_side_measures = Table(
    "other_side_measures",
    metadata,
    *_person(),
    _episode(),
    Column("on", Date, nullable=False),
    Column("movement", String(40), nullable=False),
    Column("value_deg", Float, nullable=False),
    Index("other_side_measures_in_order", "patient_id", "on"),
)

hand_measures = Table(
    "hand_measures",
    metadata,
    *_person(),
    _episode(),
    Column("on", Date, nullable=False),
    Column("movement", String(40), nullable=False),
    Column("side", String(5), nullable=False),
    Column("value_deg", Float, nullable=False),
    Column("passive", Boolean, nullable=False),
    Index("hand_measures_in_order", "patient_id", "on"),
)

total_scores = Table(
    "total_scores",
    metadata,
    *_person(),
    _episode(),
    Column("on", Date, nullable=False),
    Column("name", String(100), nullable=False),
    Column("total", Float, nullable=False),
    Column("maximum", Float, nullable=False),
    Index("total_scores_in_order", "patient_id", "on"),
)

issued_plans = Table(
    "issued_plans",
    metadata,
    *_person(),
    _episode(),
    Column("revision", Integer, nullable=False),
    Column("issued_on", Date, nullable=False),
    Column("side", String(5)),
    Column("plan", Text, nullable=False),
    UniqueConstraint("patient_id", "revision", name="issued_plans_once"),
)

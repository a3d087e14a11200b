"""Patients, their sessions with exercises and repetitions, files, and what was imported."""

import sqlalchemy as sa
from alembic import op

revision = "v1"
down_revision = None


def upgrade() -> None:
    """Make the tables of version 1."""
    op.create_table(
        "store_version",
        sa.Column("version", sa.Integer, primary_key=True),
        sa.Column("created_utc", sa.String(32), nullable=False),
    )
    op.create_table(
        "patients",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("code", sa.String(64), nullable=False, unique=True),
    )
    op.create_table(
        "sessions",
        sa.Column("id", sa.String(32), primary_key=True),
        sa.Column("patient_id", sa.Integer, sa.ForeignKey("patients.id"), nullable=False),
        sa.Column("started_at", sa.String(40), nullable=False),
        sa.Column("started_utc", sa.String(32), nullable=False),
        sa.Column("duration_s", sa.Float, nullable=False),
        sa.Column("ended_because", sa.String(20), nullable=False),
        sa.Column("software_version", sa.String(200), nullable=False),
        sa.Column("definitions", sa.Integer, nullable=False),
        sa.Column("pain_at_end", sa.Integer),
        sa.Column("document", sa.Text, nullable=False),
    )
    op.create_index("ix_sessions_patient_id", "sessions", ["patient_id"])
    op.create_index("sessions_in_order", "sessions", ["patient_id", "started_utc"])
    op.create_table(
        "exercises",
        _session_key(),
        sa.Column("position", sa.Integer, primary_key=True),
        sa.Column("planned_index", sa.Integer, nullable=False),
        sa.Column("movement", sa.String(40), nullable=False),
        sa.Column("side", sa.String(5), nullable=False),
        sa.Column("view", sa.String(5), nullable=False),
        sa.Column("ended_because", sa.String(20), nullable=False),
        sa.Column("pain_before", sa.Integer),
        sa.Column("pain_after", sa.Integer),
        sa.Column("hold_asked_s", sa.Float),
        sa.Column("repetitions_asked", sa.Integer),
    )
    op.create_table(
        "repetitions",
        _session_key(),
        sa.Column("exercise_position", sa.Integer, primary_key=True),
        sa.Column("position", sa.Integer, primary_key=True),
        sa.Column("number", sa.Integer, nullable=False),
        sa.Column("start_s", sa.Float, nullable=False),
        sa.Column("end_s", sa.Float, nullable=False),
        sa.Column("held_s", sa.Float, nullable=False),
        sa.Column("value_deg", sa.Float, nullable=False),
        sa.Column("error_deg", sa.Float, nullable=False),
        sa.Column("spread_deg", sa.Float, nullable=False),
        sa.Column("seen_fraction", sa.Float, nullable=False),
        sa.Column("completed", sa.Boolean, nullable=False),
        sa.Column("ended_because", sa.String(20), nullable=False),
    )
    op.create_table(
        "files",
        _session_key(),
        sa.Column("sha256", sa.String(64), nullable=False),
        sa.Column("content", sa.LargeBinary, nullable=False),
    )
    op.create_table(
        "imports",
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("at_utc", sa.String(32), nullable=False),
        sa.Column("file_name", sa.String(255), nullable=False),
        sa.Column("outcome", sa.String(10), nullable=False),
        sa.Column("reason", sa.Text, nullable=False),
        sa.Column("session_id", sa.String(32), sa.ForeignKey("sessions.id", ondelete="CASCADE")),
    )


def _session_key() -> sa.Column[str]:
    key = sa.ForeignKey("sessions.id", ondelete="CASCADE")
    return sa.Column("session_id", sa.String(32), key, primary_key=True)

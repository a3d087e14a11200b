"""Values with their unit, and the position an exercise was done in.

Both tables repeat what the documents hold: ``store_upgrade`` fills them anew.
"""

import sqlalchemy as sa
from alembic import op

revision = "v2"
down_revision = "v1"


def upgrade() -> None:
    """Make exercises and repetitions of version 2, empty."""
    op.drop_table("exercises")
    op.drop_table("repetitions")
    op.create_table(
        "exercises",
        _session_key(),
        sa.Column("position", sa.Integer, primary_key=True),
        sa.Column("planned_index", sa.Integer, nullable=False),
        sa.Column("movement", sa.String(40), nullable=False),
        sa.Column("side", sa.String(5), nullable=False),
        sa.Column("view", sa.String(5), nullable=False),
        sa.Column("posture", sa.String(10), nullable=False),
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
        sa.Column("value", sa.Float, nullable=False),
        sa.Column("error", sa.Float, nullable=False),
        sa.Column("spread", sa.Float, nullable=False),
        sa.Column("unit", sa.String(3), nullable=False),
        sa.Column("seen_fraction", sa.Float, nullable=False),
        sa.Column("completed", sa.Boolean, nullable=False),
        sa.Column("ended_because", sa.String(20), nullable=False),
    )


def _session_key() -> sa.Column[str]:
    key = sa.ForeignKey("sessions.id", ondelete="CASCADE")
    return sa.Column("session_id", sa.String(32), key, primary_key=True)

"""The practice's own records, imports that can be taken back, and exercises without a movement.

Exercises and repetitions repeat what the documents hold: ``store_upgrade`` fills them anew.
"""

import sqlalchemy as sa
from alembic import op

revision = "v3"
down_revision = "v2"


def upgrade() -> None:
    """Make the tables of version 3 out of those of version 2."""
    op.add_column("patients", sa.Column("name", sa.String(200), nullable=False, server_default=""))
    op.add_column("patients", sa.Column("created_on", sa.Date))
    op.add_column("patients", sa.Column("edition", sa.Integer, nullable=False, server_default="0"))
    op.add_column("patients", sa.Column("batch", sa.String(32)))
    op.add_column("sessions", sa.Column("batch", sa.String(32)))
    op.add_column("sessions", sa.Column("imported_utc", sa.String(32)))
    op.add_column("sessions", sa.Column("doubt", sa.Text, nullable=False, server_default=""))
    op.create_index("ix_sessions_batch", "sessions", ["batch"])
    op.create_index("ix_sessions_started_utc", "sessions", ["started_utc"])
    op.create_index("ix_imports_session_id", "imports", ["session_id"])
    _exercises()
    _of_person(
        "episodes",
        "began_on",
        sa.Column("side", sa.String(5), nullable=False),
        sa.Column("began_on", sa.Date, nullable=False),
        sa.Column("phase", sa.String(10)),
        sa.Column("irritability", sa.String(10)),
        sa.Column("goals", sa.Text, nullable=False),
        sa.Column("note", sa.Text, nullable=False),
    )
    _of_episode(
        "treatments",
        sa.Column("kind", sa.String(20), nullable=False),
        sa.Column("text", sa.Text, nullable=False),
    )
    _of_episode(
        "other_side_measures",
        sa.Column("movement", sa.String(40), nullable=False),
        sa.Column("value_deg", sa.Float, nullable=False),
    )
    _of_episode(
        "hand_measures",
        sa.Column("movement", sa.String(40), nullable=False),
        sa.Column("side", sa.String(5), nullable=False),
        sa.Column("value_deg", sa.Float, nullable=False),
        sa.Column("passive", sa.Boolean, nullable=False),
    )
    _of_episode(
        "total_scores",
        sa.Column("name", sa.String(100), nullable=False),
        sa.Column("total", sa.Float, nullable=False),
        sa.Column("maximum", sa.Float, nullable=False),
    )
    _of_person(
        "issued_plans",
        None,
        _episode(),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("issued_on", sa.Date, nullable=False),
        sa.Column("side", sa.String(5)),
        sa.Column("plan", sa.Text, nullable=False),
        sa.UniqueConstraint("patient_id", "revision", name="issued_plans_once"),
    )
    op.create_index("ix_issued_plans_episode_id", "issued_plans", ["episode_id"])


def _exercises() -> None:
    op.drop_table("repetitions")
    op.drop_table("exercises")
    op.create_table(
        "exercises",
        _session_key(),
        sa.Column("position", sa.Integer, primary_key=True),
        sa.Column("planned_index", sa.Integer, nullable=False),
        sa.Column("exercise", sa.String(60)),
        sa.Column("movement", sa.String(40)),
        sa.Column("side", sa.String(5), nullable=False),
        sa.Column("view", sa.String(5), nullable=False),
        sa.Column("posture", sa.String(10), nullable=False),
        sa.Column("ended_because", sa.String(20), nullable=False),
        sa.Column("pain_before", sa.Integer),
        sa.Column("pain_after", sa.Integer),
        sa.Column("hold_asked_s", sa.Float),
        sa.Column("repetitions_asked", sa.Integer),
    )
    op.create_index("exercises_by_movement", "exercises", ["movement", "side", "session_id"])
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
        sa.Column("faults", sa.String(200), nullable=False),
    )


def _session_key() -> sa.Column[str]:
    key = sa.ForeignKey("sessions.id", ondelete="CASCADE")
    return sa.Column("session_id", sa.String(32), key, primary_key=True)


def _of_person(name: str, ordered_by: str | None, *columns: sa.schema.SchemaItem) -> None:
    person = sa.ForeignKey("patients.id", ondelete="CASCADE")
    op.create_table(
        name,
        sa.Column("id", sa.Integer, primary_key=True),
        sa.Column("edition", sa.Integer, nullable=False),
        sa.Column("patient_id", sa.Integer, person, nullable=False),
        *columns,
    )
    if ordered_by:
        op.create_index(f"{name}_in_order", name, ["patient_id", ordered_by])


def _of_episode(name: str, *columns: sa.schema.SchemaItem) -> None:
    _of_person(name, "on", _episode(), sa.Column("on", sa.Date, nullable=False), *columns)
    op.create_index(f"ix_{name}_episode_id", name, ["episode_id"])


def _episode() -> sa.Column[int]:
    episode = sa.ForeignKey("episodes.id", ondelete="SET NULL")
    return sa.Column("episode_id", sa.Integer, episode)

"""What a look at each patient's sessions told, kept so that a list need not look again."""

import sqlalchemy as sa
from alembic import op

revision = "v5"
down_revision = "v4"


def upgrade() -> None:
    """Make the tables of version 5 out of those of version 4."""
    patient = sa.ForeignKey("patients.id", ondelete="CASCADE")
    op.create_table(
        "looks",
        sa.Column("patient_id", sa.Integer, patient, primary_key=True),
        sa.Column("state", sa.String(200), nullable=False),
        sa.Column("content", sa.Text, nullable=False),
    )
    columns = ["patient_id", "decision", "started_utc", "imported_utc"]
    op.create_index("sessions_counted", "sessions", columns)

"""What the therapist decided about a doubtful session."""

import sqlalchemy as sa
from alembic import op

revision = "v4"
down_revision = "v3"


def upgrade() -> None:
    """Make the tables of version 4 out of those of version 3."""
    decision = sa.Column("decision", sa.String(10), nullable=False, server_default="")
    op.add_column("sessions", decision)

"""No other tables: sessions of version 4, as which the documents are written anew."""

revision = "v6"
down_revision = "v5"


def upgrade() -> None:
    """Leave the tables as they are; ``store_upgrade`` brings the documents up."""

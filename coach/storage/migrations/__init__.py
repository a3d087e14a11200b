"""How the tables of the store came about, one step of Alembic for each version of the store."""

"""Runs the steps on the connection that ``store_upgrade`` holds, within its transaction."""

from alembic import context

context.configure(connection=context.config.attributes["connection"])
with context.begin_transaction():
    context.run_migrations()

"""What Alembic runs: the migrations, on the connection and in the transaction it is lent."""

from alembic import context

from welds.logbook.schema import metadata

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()

"""Filters a person keeps under a name."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the table."""
    op.create_table(
        "saved_filters",
        sa.Column("name", sa.String(80), primary_key=True),
        sa.Column("filter", sa.Text, nullable=False),
    )

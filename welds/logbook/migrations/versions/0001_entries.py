"""Entries, and the changes made to them."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the first tables."""
    op.create_table(
        "entries",
        sa.Column("number", sa.Integer, primary_key=True, autoincrement=True),
        sa.Column("uid", sa.String(36), nullable=False, unique=True),
        sa.Column("version", sa.Integer, nullable=False),
        sa.Column("process", sa.String(8), nullable=False),
        sa.Column("metal", sa.String(40), nullable=False),
        sa.Column("family", sa.String(20), nullable=False),
        sa.Column("thickness_mm", sa.Float, nullable=False),
        sa.Column("joint", sa.String(20), nullable=False),
        sa.Column("position", sa.String(12), nullable=False),
        sa.Column("other_metal", sa.String(40)),
        sa.Column("other_thickness_mm", sa.Float),
        sa.Column("gap_mm", sa.Float),
        sa.Column("hand", sa.String(12)),
        sa.Column("settings", sa.Text, nullable=False),
        sa.Column("outcome", sa.String(12), nullable=False),
        sa.Column("faults", sa.Text, nullable=False),
        sa.Column("notes", sa.Text, nullable=False),
        sa.Column("made_at", sa.String(40), nullable=False),
        sa.Column("machine", sa.String(200), nullable=False),
        sa.Column("welder", sa.String(200), nullable=False),
        sa.Column("made_on", sa.String(26), nullable=False),
        sa.Column("current_a", sa.Float),
        sa.Column("kind", sa.String(64), nullable=False),
        sa.Column("log_thickness", sa.Float, nullable=False),
        sa.Column("search", sa.Text, nullable=False),
        sa.Column("fingerprint", sa.String(40), nullable=False),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_entries_made_on", "entries", ["made_on", "number"])
    op.create_index("ix_entries_thicker", "entries", ["kind", "log_thickness", sa.text("made_on DESC")])
    op.create_index(
        "ix_entries_thinner", "entries", ["kind", sa.text("log_thickness DESC"), sa.text("made_on DESC")]
    )
    op.create_index("ix_entries_evidence", "entries", ["process", "family", "made_on"])
    op.create_index("ix_entries_fingerprint", "entries", ["fingerprint"])
    op.create_table(
        "changes",
        sa.Column("id", sa.Integer, primary_key=True, autoincrement=True),
        sa.Column("token", sa.String(36), nullable=False, unique=True),
        sa.Column("made_at", sa.String(40), nullable=False),
        sa.Column("what", sa.String(8), nullable=False),
        sa.Column("uid", sa.String(36), nullable=False),
        sa.Column("number", sa.Integer),
        sa.Column("version", sa.Integer, nullable=False),
        sa.Column("before", sa.Text),
    )

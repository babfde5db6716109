"""Pictures of the bead, and the lot the material came from."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add them; entries that are there have neither."""
    op.add_column("entries", sa.Column("material_lot", sa.String(200), nullable=False, server_default=""))
    if op.get_bind().dialect.name == "sqlite":
        op.drop_index("ix_entries_made_on", "entries")
        op.create_index(
            "ix_entries_browse",
            "entries",
            [
                *("made_on", "number", "process", "family", "metal", "joint", "position", "outcome"),
                *("thickness_mm", "current_a", "machine", "welder", "faults", "material_lot", "search"),
            ],
        )
    op.create_table(
        "photos",
        sa.Column("id", sa.Integer, primary_key=True, autoincrement=True),
        sa.Column("number", sa.Integer, sa.ForeignKey("entries.number", ondelete="CASCADE"), nullable=False),
        sa.Column("place", sa.Integer, nullable=False),
        sa.Column("name", sa.String(255), nullable=False),
        sa.Column("sha256", sa.String(64), nullable=False),
    )
    op.create_index("ix_photos_number", "photos", ["number"])
    op.create_index("ix_photos_sha256", "photos", ["sha256"])
    op.create_table(
        "photo_files",
        sa.Column("sha256", sa.String(64), primary_key=True),
        sa.Column("content", sa.LargeBinary, nullable=False),
    )

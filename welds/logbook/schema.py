"""The tables of the log, the same on SQLite and PostgreSQL. Changed only together with a migration."""

from sqlalchemy import (
    Column,
    Float,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Table,
    Text,
)

HEAD = "0004"
"""The migration this program knows as the newest."""

APPLICATION_ID = 0x57454C44
"""Marks an SQLite file as a log of ours ("WELD")."""

metadata = MetaData()

entries = Table(
    "entries",
    metadata,
    Column("number", Integer, primary_key=True, autoincrement=True),
    Column("uid", String(36), nullable=False, unique=True),
    Column("version", Integer, nullable=False),
    Column("process", String(8), nullable=False),
    Column("metal", String(40), nullable=False),
    Column("family", String(20), nullable=False),
    Column("thickness_mm", Float, nullable=False),
    Column("joint", String(20), nullable=False),
    Column("position", String(12), nullable=False),
    Column("other_metal", String(40)),
    Column("other_thickness_mm", Float),
    Column("gap_mm", Float),
    Column("hand", String(12)),
    Column("settings", Text, nullable=False),
    Column("outcome", String(12), nullable=False),
    Column("faults", Text, nullable=False),
    Column("notes", Text, nullable=False),
    Column("made_at", String(40), nullable=False),
    Column("machine", String(200), nullable=False),
    Column("welder", String(200), nullable=False),
    Column("made_on", String(26), nullable=False),
    Column("current_a", Float),
    Column("kind", String(64), nullable=False),
    Column("log_thickness", Float, nullable=False),
    Column("search", Text, nullable=False),
    Column("fingerprint", String(40), nullable=False),
    Column("material_lot", String(200), nullable=False, server_default=""),
    sqlite_autoincrement=True,
)
"""What follows from an entry is kept beside it for searching: made_on (UTC), kind (process, family, joint and
position in one word), log_thickness, search (all words in lower case), fingerprint (hash of the content)."""

Index("ix_entries_made_on", entries.c.made_on, entries.c.number).ddl_if(dialect="postgresql")
Index("ix_entries_thicker", entries.c.kind, entries.c.log_thickness, entries.c.made_on.desc())
Index("ix_entries_thinner", entries.c.kind, entries.c.log_thickness.desc(), entries.c.made_on.desc())
Index("ix_entries_evidence", entries.c.process, entries.c.family, entries.c.made_on)
Index("ix_entries_fingerprint", entries.c.fingerprint)
for _name in (
    *("process", "metal", "family", "thickness_mm", "joint", "position", "current_a", "outcome"),
    *("machine", "welder", "material_lot"),
):
    Index(f"ix_entries_{_name}", entries.c[_name], entries.c.number)
Index(
    "ix_entries_browse",
    *(entries.c[name] for name in ("made_on", "number", "process", "family", "metal", "joint")),
    *(entries.c[name] for name in ("position", "outcome", "thickness_mm", "current_a", "machine")),
    *(entries.c[name] for name in ("welder", "faults", "material_lot", "search")),
).ddl_if(dialect="sqlite")
"""All that the page sorts and filters by, side by side: a large file is looked through faster than by whole
rows. A server reads whole rows with several processes instead, and limits the length of an index entry."""

changes = Table(
    "changes",
    metadata,
    Column("id", Integer, primary_key=True, autoincrement=True),
    Column("token", String(36), nullable=False, unique=True),
    Column("made_at", String(40), nullable=False),
    Column("what", String(8), nullable=False),
    Column("uid", String(36), nullable=False),
    Column("number", Integer),
    Column("version", Integer, nullable=False),
    Column("before", Text),
)
"""Every change with the entry as it was before (JSON), so that it can be undone."""

photos = Table(
    "photos",
    metadata,
    Column("id", Integer, primary_key=True, autoincrement=True),
    Column("number", ForeignKey("entries.number", ondelete="CASCADE"), nullable=False, index=True),
    Column("place", Integer, nullable=False),
    Column("name", String(255), nullable=False),
    Column("sha256", String(64), nullable=False, index=True),
)

photo_files = Table(
    "photo_files",
    metadata,
    Column("sha256", String(64), primary_key=True),
    Column("content", LargeBinary, nullable=False),
)
"""The pictures themselves, where benches share a server; a log in a file keeps them in a folder beside it."""

saved_filters = Table(
    "saved_filters",
    metadata,
    Column("name", String(80), primary_key=True),
    Column("filter", Text, nullable=False),
)

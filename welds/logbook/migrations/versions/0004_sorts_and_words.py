"""An index for every column the page sorts by, and one of all words for the search."""

from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

SORTED = (
    *("process", "metal", "family", "thickness_mm", "joint", "position", "current_a", "outcome"),
    *("machine", "welder", "material_lot"),
)
WORDS = (
    "CREATE VIRTUAL TABLE entry_words USING fts5(search, content='entries', content_rowid='number',"
    " tokenize='trigram case_sensitive 1', detail=none)",
    "INSERT INTO entry_words(entry_words) VALUES ('rebuild')",
    "CREATE TRIGGER entry_words_added AFTER INSERT ON entries BEGIN"
    " INSERT INTO entry_words(rowid, search) VALUES (new.number, new.search); END",
    "CREATE TRIGGER entry_words_removed AFTER DELETE ON entries BEGIN"
    " INSERT INTO entry_words(entry_words, rowid, search) VALUES ('delete', old.number, old.search); END",
    "CREATE TRIGGER entry_words_changed AFTER UPDATE ON entries BEGIN"
    " INSERT INTO entry_words(entry_words, rowid, search) VALUES ('delete', old.number, old.search);"
    " INSERT INTO entry_words(rowid, search) VALUES (new.number, new.search); END",
)
"""Words as runs of three characters, kept true by the database itself. A server looks through its rows with
several processes instead."""


def upgrade() -> None:
    """Add them; the entries stay as they are."""
    for name in SORTED:
        op.create_index(f"ix_entries_{name}", "entries", [name, "number"])
    if op.get_bind().dialect.name == "sqlite":
        for statement in WORDS:
            op.get_bind().exec_driver_sql(statement)

"""From every earlier schema, with data in it, to the newest: nothing changes but the tables."""

import json
from collections.abc import Iterator

import pytest
from sqlalchemy import MetaData, inspect, text

from tests.logbook.conftest import BAIT_TANK, MUDGUARD
from welds.logbook import migrate
from welds.logbook.browse import page, saved
from welds.logbook.fields import entry_json, read_entry
from welds.logbook.filters import Filter
from welds.logbook.opening import open_logbook
from welds.logbook.places import place_of
from welds.logbook.rows import row_of
from welds.logbook.schema import HEAD, metadata
from welds.logbook.store import Store

LATER_COLUMNS = {"0001": ("material_lot",), "0002": (), "0003": ()}
EARLIER = [version for version in migrate.KNOWN if version != HEAD]


@pytest.fixture
def old(address: str) -> Iterator[Store]:
    """Return a store whose tables are still to be made."""
    store = Store(place_of(address))
    yield store
    store.close()


def put(store: Store, version: str, rows: list[dict]) -> None:
    """Write rows as the program of that version did."""
    for row in rows:
        kept = {name: value for name, value in row.items() if name not in LATER_COLUMNS[version]}
        names = ", ".join(kept)
        places = ", ".join(f":{name}" for name in kept)
        statement = text(f"INSERT INTO entries ({names}) VALUES ({places})")
        store.write(lambda connection, s=statement, k=kept: connection.execute(s, k))


def test_the_list_of_versions_is_that_of_the_files():
    from alembic.config import Config
    from alembic.script import ScriptDirectory

    config = Config()
    config.set_main_option("script_location", "welds:logbook/migrations")
    config.set_main_option("path_separator", "os")
    script = ScriptDirectory.from_config(config)
    assert tuple(sorted(each.revision for each in script.walk_revisions())) == migrate.KNOWN
    assert script.get_current_head() == HEAD


@pytest.mark.parametrize("version", EARLIER)
def test_data_comes_through(old, address, tables, version):
    given = [read_entry(each, tables).entry for each in (BAIT_TANK, MUDGUARD)]
    migrate.migrate(old, version)
    put(old, version, [row_of(entry) for entry in given])
    if version >= "0002":
        old.write(
            lambda connection: connection.execute(
                text("INSERT INTO photos (number, place, name, sha256) VALUES (1, 0, 'bead.jpg', :hash)"),
                {"hash": "ab" * 32},
            )
        )
    old.close()
    with open_logbook(address) as log:
        assert migrate.version_of(log.store) == HEAD
        found = [log.get(number) for number in (1, 2)]
        for before, after in zip(given, found, strict=True):
            kept = entry_json(after)
            pictures = kept.pop("photos", [])
            assert kept == entry_json(before)
            assert len(pictures) == (1 if version >= "0002" and after.number == 1 else 0)
        assert saved(log) == {}
        assert [entry.number for entry in page(log, Filter(text="mudguard (invented)")).entries] == [2]
        log.add(read_entry({**BAIT_TANK, "material_lot": "lot 7"}, tables))
        assert log.get(3).material_lot == "lot 7"


@pytest.mark.parametrize("version", EARLIER)
def test_a_file_is_backed_up_before_its_tables_change(path, tables, version):
    store = Store(place_of(str(path)))
    migrate.migrate(store, version)
    put(store, version, [row_of(read_entry(BAIT_TANK, tables).entry)])
    store.close()
    with open_logbook(str(path)) as log:
        (backup,) = log.place.backups.glob("*before-*.db")
    before = Store(place_of(str(backup)))
    assert migrate.version_of(before) == version
    assert (
        before.read(lambda connection: connection.execute(text("SELECT count(*) FROM entries")).scalar()) == 1
    )
    before.close()


def test_the_migrated_tables_are_those_the_program_describes(old):
    migrate.migrate(old)
    described = MetaData()
    for table in metadata.tables.values():
        table.to_metadata(described)
    found = old.read(
        lambda connection: {
            name: (
                {column["name"]: column["nullable"] for column in inspect(connection).get_columns(name)},
                {index["name"] for index in inspect(connection).get_indexes(name) if index["name"]},
            )
            for name in metadata.tables
        }
    )
    dialect = old.engine.dialect.name
    for name, table in metadata.tables.items():
        columns, indexes = found[name]
        assert columns == {column.name: bool(column.nullable) for column in table.columns}, name
        wanted = {str(index.name) for index in table.indexes if _is_for(index, dialect)}
        assert {each for each in indexes if each.startswith("ix_")} == wanted, name


def test_a_migration_that_fails_leaves_everything_as_it_was(path, tables, monkeypatch):
    store = Store(place_of(str(path)))
    migrate.migrate(store, "0001")
    put(store, "0001", [row_of(read_entry(BAIT_TANK, tables).entry)])

    def broken(connection, target):
        connection.execute(text("ALTER TABLE entries ADD COLUMN half TEXT"))
        raise OSError("power cut")

    monkeypatch.setattr(migrate, "_upgrade", broken)
    with pytest.raises(OSError, match="power cut"):
        migrate.migrate(store)
    monkeypatch.undo()
    assert migrate.version_of(store) == "0001"
    columns = store.read(
        lambda connection: [each["name"] for each in inspect(connection).get_columns("entries")]
    )
    assert "half" not in columns
    store.close()


def test_two_benches_that_open_a_new_log_at_once_make_it_once(address):
    import threading

    faults: list[Exception] = []

    def begin() -> None:
        try:
            open_logbook(address).close()
        except Exception as error:
            faults.append(error)

    threads = [threading.Thread(target=begin) for _ in range(3)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert not faults
    with open_logbook(address) as log:
        assert log.count() == 0


def _is_for(index, dialect: str) -> bool:
    only = getattr(index, "_ddl_if", None)
    return only is None or only.dialect == dialect


def test_rows_hold_plain_json(tables):
    row = row_of(read_entry(MUDGUARD, tables).entry)
    assert json.loads(row["settings"])["transfer"] == "short-circuit"

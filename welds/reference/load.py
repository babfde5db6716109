"""Loading the reference data, with the person's own rows on top."""

from pathlib import Path

from welds.errors import ReferenceDataError, nearest
from welds.language import tr
from welds.reference.csv_table import Keyed, read_rows
from welds.reference.paths import data_root
from welds.reference.sheet import Sheet, read_sheet
from welds.reference.sources import Source, read_sources
from welds.reference.tables import Table, Tables

SOURCES_FILE = "sources.yaml"
SHIPPED = "data"


def load_tables(user_folder: Path | None = None, root: Path | None = None) -> Tables:
    """Return all tables, the rows of `user_folder` over and beside the shipped ones.

    A user folder that is not there is no fault. Any fault anywhere raises ReferenceDataError; nothing is
    loaded in part.
    """
    faults: list[ReferenceDataError] = []
    tables = read_tables(root or data_root(), user_folder, faults)
    if faults:
        first = faults[0]
        more = (
            tr(" (and {number} more; `welds tables check` lists all)", number=len(faults) - 1)
            if len(faults) > 1
            else ""
        )
        raise ReferenceDataError(first.file, first.problem + more, first.row, first.column)
    return tables


def read_tables(root: Path, user_folder: Path | None, faults: list[ReferenceDataError]) -> Tables:
    """Return what is sound; every fault goes to `faults`."""
    sources = read_sources(root / SOURCES_FILE, f"{SHIPPED}/{SOURCES_FILE}", faults)
    folder = root / "tables"
    tables: dict[str, Table] = {}
    for name in sorted({path.stem for suffix in ("csv", "yaml") for path in folder.glob(f"*.{suffix}")}):
        shown = f"{SHIPPED}/tables/{name}"
        sheet = _sheet_beside(folder, name, shown, faults)
        if sheet:
            rows = read_rows(folder / f"{name}.csv", f"{shown}.csv", sheet, sources, faults)
            tables[name] = Table(name, sheet, tuple(rows.values()))
    if user_folder is not None and user_folder.is_dir():
        _lay_over(tables, sources, user_folder, faults)
    return Tables(tables, sources)


def _sheet_beside(folder: Path, name: str, shown: str, faults: list[ReferenceDataError]) -> Sheet | None:
    if not (folder / f"{name}.yaml").exists():
        faults.append(
            ReferenceDataError(f"{shown}.csv", tr("its column sheet {name}.yaml is missing", name=name))
        )
        return None
    try:
        return read_sheet(folder / f"{name}.yaml", f"{shown}.yaml")
    except ReferenceDataError as error:
        faults.append(error)
        return None


def _lay_over(
    tables: dict[str, Table], sources: dict[str, Source], folder: Path, faults: list[ReferenceDataError]
) -> None:
    """Put the person's rows over the shipped tables in place; shipped sheets rule them."""
    own_sources = folder / SOURCES_FILE
    if own_sources.exists():
        sources.update(read_sources(own_sources, str(own_sources), faults))
    for path in sorted(folder.glob("*.csv")):
        table = tables.get(path.stem)
        if table is None:
            hint = nearest(path.stem, tables)
            problem = tr("no table has this name") + (tr("; nearest: {hint}", hint=hint) if hint else "")
            faults.append(ReferenceDataError(str(path), problem))
            continue
        own = read_rows(path, str(path), table.sheet, sources, faults, complete=False)
        merged: Keyed = {table.key_of(row): row for row in table.rows} | own
        tables[path.stem] = Table(table.name, table.sheet, tuple(merged.values()), frozenset(own))
    faults.extend(
        ReferenceDataError(str(path), tr("column sheets are fixed; own tables are CSV only"))
        for path in sorted(folder.glob("*.yaml"))
        if path.name != SOURCES_FILE
    )

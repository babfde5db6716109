"""All faults of the shipped data or of a folder of own tables, as lines to print."""

from pathlib import Path

from welds.errors import ReferenceDataError
from welds.language import tr
from welds.reference.hazards import HAZARDS_FILE, read_hazards
from welds.reference.load import SHIPPED, SOURCES_FILE, read_tables
from welds.reference.paths import data_root


def check_shipped() -> list[str]:
    """Return the faults of the data that came with the program; empty when sound."""
    return _faults_of(data_root(), None)


def check_folder(folder: Path) -> list[str]:
    """Return the faults of a folder of own tables, or of a whole data folder (tables/ and sources.yaml).

    A folder without any table is a fault too.
    """
    if not folder.is_dir():
        return [str(ReferenceDataError(str(folder), tr("no such folder")))]
    if (folder / "tables").is_dir() and (folder / SOURCES_FILE).is_file():
        return _faults_of(folder, None)
    if folder.resolve() == (data_root() / "tables").resolve():
        return check_shipped()
    if not any(folder.glob("*.csv")):
        return [str(ReferenceDataError(str(folder), tr("no tables here (files named like metals.csv)")))]
    return _faults_of(data_root(), folder)


def _faults_of(root: Path, user_folder: Path | None) -> list[str]:
    faults: list[ReferenceDataError] = []
    tables = read_tables(root, user_folder, faults)
    hazards = root / HAZARDS_FILE
    if hazards.exists():
        read_hazards(hazards, f"{SHIPPED}/{HAZARDS_FILE}", tables.sources, faults)
    return [str(fault) for fault in faults]

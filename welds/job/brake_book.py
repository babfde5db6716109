"""The K of each brake and sheet, kept in a file of the person's own."""

from dataclasses import asdict, dataclass
from pathlib import Path

import yaml

from welds.bench.folders import config_folder
from welds.errors import FileUnavailableError, InputError, ReferenceDataError, nearest
from welds.language import figure, tr
from welds.reference.metals import Metal
from welds.reference.strict_yaml import YamlMap, read_yaml
from welds.reference.whole_file import write_whole

_SAME_MM = 0.06
"""Sheets closer than this in thickness count as the same."""


@dataclass(frozen=True, slots=True)
class BrakeK:
    """What one test bend showed."""

    brake: str
    metal: str
    thickness_mm: float
    radius_mm: float
    k: float


def book_file() -> Path:
    """Return the file; it need not exist yet."""
    return config_folder() / "brakes.yaml"


def read_book(path: Path) -> tuple[BrakeK, ...]:
    """Return what is kept; nothing where there is no file."""
    if not path.exists():
        return ()
    try:
        entries = read_yaml(path, str(path)).get("bends", [])
        if not isinstance(entries, list):
            raise TypeError("bends is not a list")
        return tuple(_entry(each) for each in entries)
    except ReferenceDataError as error:
        raise FileUnavailableError(str(path), error.problem) from error
    except (KeyError, TypeError, ValueError) as error:
        problem = tr("not as it was written ({error}); mend it or move it away", error=error)
        raise FileUnavailableError(str(path), problem) from error


def keep(path: Path, found: BrakeK) -> None:
    """Write one more K, in the place of an older one for the same brake and sheet."""
    kept = [each for each in read_book(path) if not _same_sheet(each, found)]
    text = yaml.safe_dump({"bends": [asdict(each) for each in (*kept, found)]}, sort_keys=False)
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise FileUnavailableError(str(path), error.strerror or str(error)) from error
    write_whole(path, text)


def in_temper(metal: Metal) -> str:
    """Return the metal's name with its temper, as the book and the cut list have it."""
    return metal.id + (f"-{metal.temper}" if metal.temper else "")


def k_of_brake(path: Path, brake: str, metal: str, thickness_mm: float) -> BrakeK:
    """Return what the brake showed for this sheet, or raise InputError with what it has been tried on."""
    book = read_book(path)
    for each in book:
        if (each.brake, each.metal) == (brake, metal) and abs(each.thickness_mm - thickness_mm) < _SAME_MM:
            return each
    brakes = sorted({each.brake for each in book})
    if brake not in brakes:
        allowed = ", ".join(brakes) or tr(
            "one that a test bend was kept for (--test-bend with --brake keeps it)"
        )
        raise InputError("brake", brake, allowed, nearest(brake, brakes))
    tried = ", ".join(
        f"{each.metal} {figure(f'{each.thickness_mm:g}')} mm" for each in book if each.brake == brake
    )
    raise InputError(
        tr("brake {brake}", brake=brake),
        f"{metal} {figure(f'{thickness_mm:g}')} mm",
        tr("{tried}; or bend a test strip", tried=tried),
    )


def _same_sheet(a: BrakeK, b: BrakeK) -> bool:
    is_near = abs(a.thickness_mm - b.thickness_mm) < _SAME_MM
    return (a.brake, a.metal) == (b.brake, b.metal) and is_near


def _entry(found: object) -> BrakeK:
    if not isinstance(found, YamlMap):
        raise TypeError("an entry is not a mapping")
    numbers = {name: float(str(found[name])) for name in ("thickness_mm", "radius_mm", "k")}
    return BrakeK(str(found["brake"]), str(found["metal"]), **numbers)

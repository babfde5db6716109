"""Which tables these are: a date that people can compare, and a digest that cannot be mistaken."""

import hashlib
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from welds.errors import ReferenceDataError
from welds.language import tr
from welds.reference.paths import data_root
from welds.reference.text_file import read_text

DATE_FILE = "DATE"


@dataclass(frozen=True, slots=True)
class Edition:
    """Day of the last change of the shipped data, and a digest of all its files."""

    day: date
    digest: str

    def __str__(self) -> str:
        return tr("{day}, digest {digest}", day=self.day.isoformat(), digest=self.digest)


def edition(root: Path | None = None) -> Edition:
    """Return the edition of the shipped data, or of the data folder given.

    The digest changes with any file's name or content and with nothing else, so not with time or place.
    """
    root = root or data_root()
    text = read_text(root / DATE_FILE, DATE_FILE).strip()
    try:
        day = date.fromisoformat(text)
    except ValueError:
        raise ReferenceDataError(DATE_FILE, tr("not a date like 2026-01-31: {text!r}", text=text)) from None
    return Edition(day, _digest(root))


def _digest(root: Path) -> str:
    names = {path.relative_to(root).as_posix(): path for path in root.rglob("*") if path.is_file()}
    whole = hashlib.sha256()
    for name, path in sorted(names.items()):
        whole.update(f"{name}\0{hashlib.sha256(path.read_bytes()).hexdigest()}\n".encode())
    return whole.hexdigest()[:12]

"""Which tables these are, told by a date and a digest."""

import re
import shutil
import subprocess
from datetime import date
from pathlib import Path

import pytest

from welds.errors import ReferenceDataError
from welds.reference.edition import DATE_FILE, edition
from welds.reference.paths import data_root

ROOT = Path(__file__).parents[2]


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    return Path(shutil.copytree(data_root(), tmp_path / "elsewhere", copy_function=shutil.copyfile))


def test_the_same_tables_elsewhere_are_the_same_edition(copy: Path):
    assert edition(copy) == edition()


def test_one_digit_makes_another_digest(copy: Path):
    table = copy / "tables" / "cups.csv"
    table.write_text(re.sub(r"\d", "9", table.read_text(encoding="utf-8"), count=1), encoding="utf-8")
    assert edition(copy).digest != edition().digest


def test_another_name_makes_another_digest(copy: Path):
    (copy / "tables" / "cups.csv").rename(copy / "tables" / "mugs.csv")
    assert edition(copy).digest != edition().digest


@pytest.mark.parametrize("text", ["yesterday", "2026-13-01", "25.11.2026"])
def test_what_is_no_date_is_refused(copy: Path, text: str):
    (copy / DATE_FILE).write_text(text, encoding="utf-8")
    with pytest.raises(ReferenceDataError, match="not a date"):
        edition(copy)


def test_the_date_is_not_older_than_the_data():
    """Raise the day in data/DATE with every change of the data."""
    if not (ROOT / ".git").exists() or shutil.which("git") is None:
        pytest.skip("no checkout or no git: there is no history to compare with")

    def git(*arguments: str) -> str:
        return subprocess.run(
            ["git", *arguments], cwd=ROOT, capture_output=True, text=True, check=True
        ).stdout.strip()

    if git("rev-parse", "--is-shallow-repository") == "true":
        pytest.skip("a shallow clone does not know when the data changed")
    assert edition().day >= date.fromisoformat(git("log", "-1", "--format=%cs", "--", "data"))

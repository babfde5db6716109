"""The wheel is whole: unpacked in a clean folder it finds its own tables and answers."""

import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from welds import language

ROOT = Path(__file__).parents[2]

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    built = tmp_path_factory.mktemp("wheel")
    subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(built)],
        cwd=ROOT,
        capture_output=True,
        check=True,
    )
    (wheel,) = built.glob("*.whl")
    folder = tmp_path_factory.mktemp("unpacked")
    zipfile.ZipFile(wheel).extractall(folder)
    return folder


def run_unpacked(unpacked: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    """Run Python with the unpacked wheel before everything else, from a folder that holds nothing."""
    return subprocess.run(
        [sys.executable, "-P", *arguments],
        cwd=unpacked.parent,
        env={**os.environ, "PYTHONPATH": str(unpacked)},
        capture_output=True,
        text=True,
        check=False,
    )


def test_every_data_file_is_inside(unpacked: Path):
    shipped = {path.relative_to(ROOT) for path in (ROOT / "data").rglob("*") if path.is_file()}
    inside = {path.relative_to(unpacked / "welds") for path in (unpacked / "welds" / "data").rglob("*")}
    assert shipped
    assert shipped <= inside


def test_every_language_is_inside(unpacked: Path):
    inside = {path.stem for path in (unpacked / "welds" / "languages").glob("*.ts")}
    assert inside == set(language.NAMES) - {language.ENGLISH}


def test_the_licence_and_the_command_are_inside(unpacked: Path):
    (facts,) = unpacked.glob("*.dist-info")
    assert "welds = welds.__main__:main" in (facts / "entry_points.txt").read_text()
    assert (facts / "licenses" / "LICENSE").is_file()


def test_it_loads_its_own_tables(unpacked: Path):
    code = "from welds.reference import load, paths; load.load_tables(); print(paths.data_root())"
    done = run_unpacked(unpacked, "-c", code)
    assert done.returncode == 0, done.stderr
    assert Path(done.stdout.strip()) == (unpacked / "welds" / "data").resolve()


def test_it_answers_a_request(unpacked: Path):
    request = ("--process", "tig", "--metal", "5052", "--thickness", "2 mm", "--joint", "outside-corner")
    done = run_unpacked(unpacked, "-m", "welds", "card", *request, "--json")
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout)["settings"]["polarity"]["value"] == "AC"

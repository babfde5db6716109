"""The README's commands do what it says."""

import re
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")
COMMANDS = re.findall(r"^sh packaging/run\.sh ([a-z].*)$", README, re.MULTILINE)


def test_there_are_commands():
    assert len(COMMANDS) > 5


@pytest.mark.slow
@pytest.mark.parametrize("command", COMMANDS)
def test_command_answers(command: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    (tmp_path / "my-tables").mkdir()
    shutil.copy(ROOT / "data" / "tables" / "cups.csv", tmp_path / "my-tables")
    arguments = shlex.split(command)
    if "demo" not in arguments:  # that one writes the job which the next ones read
        shutil.copy(ROOT / "data" / "demo" / "boat-and-trailer.yaml", tmp_path / "week.yaml")
    done = subprocess.run(
        [sys.executable, "-P", "-m", "welds", *arguments],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    written = [argument for argument in arguments if argument.endswith(".pdf")]
    assert done.stdout or written
    assert all((tmp_path / name).read_bytes().startswith(b"%PDF") for name in written)


def test_what_it_links_to_is_there():
    links = re.findall(r"\]\(([^)#:]+)", README)
    assert links
    missing = [link for link in links if not (ROOT / link).exists()]
    assert not missing

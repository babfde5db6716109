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


@pytest.mark.heavy
def test_commands_answer_one_after_the_other(tmp_path: Path, monkeypatch: pytest.MonkeyPatch):
    """In the README's order, since some read what an earlier one wrote."""
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    (tmp_path / "my-tables").mkdir()
    shutil.copy(ROOT / "data" / "tables" / "cups.csv", tmp_path / "my-tables")
    faults = []
    for command in COMMANDS:
        arguments = shlex.split(command)
        done = subprocess.run(
            [sys.executable, "-P", "-m", "welds", *arguments],
            cwd=tmp_path,
            capture_output=True,
            text=True,
            check=False,
        )
        pages = [tmp_path / argument for argument in arguments if argument.endswith(".pdf")]
        is_answered = (done.returncode, done.stderr) == (0, "") and (done.stdout or pages)
        if not is_answered or not all(page.read_bytes().startswith(b"%PDF") for page in pages):
            faults.append((command, done.returncode, done.stderr))
    assert faults == []


def test_what_it_links_to_is_there():
    links = re.findall(r"\]\(([^)#:]+)", README)
    assert links
    missing = [link for link in links if not (ROOT / link).exists()]
    assert not missing

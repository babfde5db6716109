"""What no tracked file may mention; the words carry marks here, so that this file may be tracked too."""

import re
import shutil
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]

FORBIDDEN = {
    what: pattern.replace("~", "")
    for what, pattern in {
        "a path of one machine": r"(?:^|[^.\w])/(?:work|root|farm|tmp|home)/",
        "the address of a package registry": r"py~pi\.org|python~hosted|deb\.debi~an|registry\.np~mjs",
        "a recording": r"\b(?:trans~cripts?|vid~eos?|you~tube|pod~casts?|the se~ed)\b",
    }.items()
}


def tracked_files() -> list[Path]:
    if not (ROOT / ".git").exists() or shutil.which("git") is None:
        pytest.skip("no checkout or no git: there is no list of tracked files")
    listed = subprocess.run(["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=True)
    return [ROOT / name for name in listed.stdout.split("\0") if name]


@pytest.mark.parametrize("what", FORBIDDEN)
def test_no_tracked_file_mentions(what: str):
    pattern = re.compile(FORBIDDEN[what], re.IGNORECASE)
    found = []
    for path in tracked_files():
        try:
            lines = path.read_text(encoding="utf-8").splitlines()
        except (UnicodeDecodeError, FileNotFoundError):  # a picture; or deleted and not yet committed
            continue
        found += [f"{path.relative_to(ROOT)}:{n}" for n, line in enumerate(lines, 1) if pattern.search(line)]
    assert not found


@pytest.mark.parametrize(
    ("what", "line"),
    [
        ("a path of one machine", "see /wo~rk/notes"),
        ("the address of a package registry", "https://py~pi.org/simple"),
        ("a recording", "as the vid~eo shows"),
    ],
)
def test_the_patterns_find_what_they_are_for(what: str, line: str):
    assert re.search(FORBIDDEN[what], line.replace("~", ""), re.IGNORECASE)

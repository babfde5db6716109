"""What no tracked file may mention, secrets too; the words carry marks, so that this file may be tracked."""

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
        "a key": r"-----BEG~IN [A-Z ]*PRIVATE|\bAK~IA[0-9A-Z]{16}\b|\bgh[oprsu]~_\w{30}|\bxox[abprs]~-\w",
        "a password": r"\b(?:passw(?:or)?d|secret|to~ken|api_?key)\b\W{1,4}[=:]\s*['\"][^\s'\"{}]{8}",
        "an address with a password": r":~//(?!\w+:secret@)[^/\s:@\"'{}]+:[^/\s@\"'{}]+@",
    }.items()
}
"""Tests of addresses use the password "secret"."""


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
        ("a key", "-----BEG~IN RSA PRIVATE KEY-----"),
        ("a key", "AK~IA0123456789ABCDEF"),
        ("a password", "passw~ord = 'hunter2hunter2'"),
        ("an address with a password", "postgresql:~//me:hunter2@server/log"),
    ],
)
def test_the_patterns_find_what_they_are_for(what: str, line: str):
    assert re.search(FORBIDDEN[what], line.replace("~", ""), re.IGNORECASE)

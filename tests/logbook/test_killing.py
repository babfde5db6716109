"""The program is killed while it writes: no acknowledged entry lost, no half entry, the file always opens."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

ROUNDS = int(os.environ.get("WELDS_KILLS", "20"))


@pytest.mark.slow
@pytest.mark.skipif(os.name != "posix", reason="kills with SIGKILL")
def test_kills_lose_nothing():
    done = subprocess.run(
        [sys.executable, "-m", "tests.logbook.killing", str(ROUNDS)],
        cwd=Path(__file__).parents[2],
        capture_output=True,
        text=True,
        check=False,
        timeout=60 + ROUNDS * 2,
    )
    assert done.returncode == 0, done.stderr
    assert f"'kills': {ROUNDS}" in done.stdout
    assert int(re.search(r"'acknowledged entries': (\d+)", done.stdout)[1]) > ROUNDS / 4

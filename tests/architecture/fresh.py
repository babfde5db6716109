"""A Python that has imported nothing yet."""

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]


def run_fresh(code: str, *, timeout: float = 60.0, **environment: str) -> str:
    """Return what `code` prints in a new interpreter; its complaint is the assertion's message."""
    done = subprocess.run(
        [sys.executable, "-P", "-c", code],
        capture_output=True,
        text=True,
        timeout=timeout,
        check=False,
        env={**os.environ, "PYTHONPATH": str(ROOT), **environment},
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def modules_after(statement: str) -> set[str]:
    """Return the top-level modules that are loaded after `statement`."""
    code = f"{statement}\nimport sys\nprint(*sorted({{name.partition('.')[0] for name in sys.modules}}))"
    return set(run_fresh(code).split())

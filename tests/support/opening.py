"""Starts the window in a process of its own and reads what it wrote down."""

import json
import os
import subprocess
import sys
import time
from dataclasses import dataclass
from pathlib import Path

OFFSCREEN_ALWAYS_SAYS = "This plugin does not support propagateSizeHints()"
ROOT = Path(__file__).parents[2]
WATCH = Path(__file__).with_name("window_watch.py")


@dataclass(frozen=True)
class Opening:
    """Seconds from process start, and the top-level modules loaded by then."""

    painted_s: float
    ready_s: float
    ready_cpu_s: float
    """Processor time by then, which a busy machine stretches less."""
    modules_when_painted: frozenset[str]
    complaints: str
    peak_mb: float


def open_window(*arguments: str, through: tuple[str, ...] = (), **environment: str) -> Opening:
    """Open a window, wait until it is ready, close it; `through` is a command to start it under."""
    started = time.clock_gettime(time.CLOCK_MONOTONIC)
    done = subprocess.run(
        [*through, sys.executable, "-P", str(WATCH), *arguments],
        env={**os.environ, "PYTHONPATH": str(ROOT), **environment},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    seen = json.loads(done.stdout)
    return Opening(
        seen["painted"] - started,
        seen["ready"] - started,
        seen["ready_cpu"],
        frozenset(seen["painted_modules"]),
        "\n".join(line for line in done.stderr.splitlines() if line != OFFSCREEN_ALWAYS_SAYS),
        seen["peak_mb"],
    )

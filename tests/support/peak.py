"""The most memory a program ever held."""

import re
from pathlib import Path

STATUS = Path("/proc/self/status")


def peak_mb() -> float:
    """Return the largest resident size of this process so far; 0 where the system does not say.

    Not `getrusage`: what that says of a child counts in the size of the program it was started from.
    """
    if not STATUS.exists():
        return 0.0
    said = re.search(r"VmHWM:\s*(\d+) kB", STATUS.read_text(encoding="ascii"))
    assert said is not None
    return int(said[1]) / 1024

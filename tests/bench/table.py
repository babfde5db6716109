"""Measures times and memory and prints both as tables in Markdown: python -m tests.bench.table [NAME...].

Takes minutes, most of them to make a log of a million welds: "not 1000k" leaves that out. What is named is
given to pytest's -k; the memory is left out then. Measure on a quiet machine; the load is printed with it.
"""

import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path

from tests.bench.memory import USES

HERE = Path(__file__).parent


def times(report: Path, chosen: str) -> list[tuple[str, float, str, float]]:
    """Run the benches and return name, seconds, floor and its seconds of each."""
    command = [sys.executable, "-m", "pytest", str(HERE), "-q", "--benchmark-enable", "--benchmark-only"]
    done = subprocess.run(
        [*command, "-k", chosen, f"--benchmark-json={report}"], stdout=sys.stderr, check=False
    )
    if done.returncode:
        raise SystemExit("a bench failed")
    benches = json.loads(report.read_text(encoding="utf-8"))["benchmarks"]
    return [tuple(row) for bench in benches for row in bench["extra_info"].get("rows", ())]


def in_words(seconds: float) -> str:
    """Return a time to three digits."""
    for unit, size in (("s", 1.0), ("ms", 1e-3)):
        if seconds >= size:
            return f"{seconds / size:.3g} {unit}"
    return f"{seconds * 1e6:.3g} µs"


def main(chosen: str) -> None:
    """Print both tables."""
    before = os.getloadavg()[0]
    with tempfile.TemporaryDirectory() as folder:
        rows = times(Path(folder) / "times.json", chosen)
        print("| what | median | floor | its median | times the floor |\n| --- | --- | --- | --- | --- |")
        for name, ours, floor, least in rows:
            print(f"| {name} | {in_words(ours)} | {floor} | {in_words(least)} | {ours / least:.3g} |")
        if not chosen:
            print("\n| memory held at most | MB | ceiling of the tests |\n| --- | --- | --- |")
            for name, use in USES.items():
                print(f"| {name} | {use.measure(Path(folder)):.0f} | {use.ceiling_mb:.0f} |")
    print(f"\nLoad before {before:.1f}, after {os.getloadavg()[0]:.1f}.")


if __name__ == "__main__":
    main(" or ".join(sys.argv[1:]))

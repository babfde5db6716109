"""How long a log of many welds takes to answer: python -m tests.logbook.timing COUNT [ADDRESS].

Each question is asked five times of an open log; printed are the medians in milliseconds by the clock, with
processor time in brackets. Without an address the log is made in a folder that is removed afterwards.
"""

import os
import resource
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from statistics import median

from tests.logbook.many import fill
from welds.advice.request import Joint, Process, Request
from welds.logbook.alike import similar
from welds.logbook.browse import SORTS, count, page, values_of
from welds.logbook.filters import Filter
from welds.logbook.logbook import Logbook
from welds.logbook.opening import open_logbook
from welds.logbook.past import evidence_for
from welds.reference.load import load_tables
from welds.reference.tables import Tables

ROUNDS = 5
BLOCK = 100
CORNER = Request(Process.TIG, "5052", 2.0, Joint.OUTSIDE_CORNER)
NOTHING_NEAR = Request(Process.MIG, "5052", 30.0, Joint.PLUG, "PE")
FILTERS = {
    "process": Filter(process="mig"),
    "family": Filter(family="stainless"),
    "metal": Filter(metal="6061"),
    "joint": Filter(joint="lap"),
    "position": Filter(position="PF"),
    "outcome": Filter(outcome="failed"),
    "fault (none has it)": Filter(fault="burn-through"),
    "machine (none has it)": Filter(machine="350 A"),
    "welder (none has it)": Filter(welder="second"),
    "material lot (none has it)": Filter(material_lot="lot 7"),
    "thickness 2 to 3": Filter(thickness_min_mm=2.0, thickness_max_mm=3.0),
    "current 100 to 105": Filter(current_min_a=100.0, current_max_a=105.0),
    "one day": Filter(since="2022-02-02", until="2022-02-02"),
    "with pictures (none has)": Filter(has_photos=True),
    "process, joint, outcome": Filter(process="mig", joint="butt", outcome="failed"),
    "two common words": Filter(text="bait tank"),
    "one rare word": Filter(text="77,7"),
    "one word of one weld": Filter(text="77777,"),
    "a word that is nowhere": Filter(text="zirconium"),
    "one letter": Filter(text="x"),
}


def questions(log: Logbook, tables: Tables, total: int) -> Iterator[tuple[str, Callable[[], object]]]:
    """Yield what is asked by name."""
    yield "first page", lambda: page(log, limit=BLOCK)
    yield "last page", lambda: page(log, offset=total - BLOCK, limit=BLOCK)
    yield "middle page", lambda: page(log, offset=total // 2, limit=BLOCK)
    yield "count all", lambda: count(log)
    for sort in SORTS:
        for is_descending in (True, False):
            words = f"sort by {sort}, {'down' if is_descending else 'up'}"
            yield (
                words,
                lambda s=sort, d=is_descending: page(log, sort=s, is_descending=d, limit=BLOCK),
            )
    yield (
        "sort by current_a, last page",
        lambda: page(log, sort="current_a", offset=total - BLOCK, limit=BLOCK),
    )
    for name, wanted in FILTERS.items():
        yield f"{name}: page", lambda w=wanted: page(log, w, limit=BLOCK)
        yield f"{name}: count", lambda w=wanted: count(log, w)
        yield f"{name}: page by current", lambda w=wanted: page(log, w, sort="current_a", limit=BLOCK)
    yield "similar, usual", lambda: similar(log, CORNER, tables)
    yield "similar, nothing near", lambda: similar(log, NOTHING_NEAR, tables)
    yield "evidence for a card", lambda: evidence_for(log, CORNER, tables)
    yield "machines to choose from", lambda: values_of(log, "machine")
    yield "one weld", lambda: log.get(total // 2)


def measure(address: str, total: int) -> None:
    """Print what each question takes."""
    tables = load_tables()
    begun = time.perf_counter()
    with open_logbook(address) as log:
        print(f"{'open':40} {1000 * (time.perf_counter() - begun):8.1f}")
        for name, ask in questions(log, tables, total):
            taken = [_taken(ask) for _ in range(ROUNDS)]
            wall, cpu = (1000 * median(each) for each in zip(*taken, strict=True))
            print(f"{name:40} {wall:8.1f} ({cpu:.1f})")
    peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"peak resident memory {peak_mb:.0f} MB; load {os.getloadavg()[0]:.1f}")


def _taken(ask: Callable[[], object]) -> tuple[float, float]:
    wall, cpu = time.perf_counter(), time.process_time()
    ask()
    return time.perf_counter() - wall, time.process_time() - cpu


def main(total: int, address: str = "") -> None:
    """Make the log where none was named, and measure it."""
    if address:
        measure(address, total)
        return
    with tempfile.TemporaryDirectory() as folder:
        address = str(Path(folder) / "yard.db")
        with open_logbook(address) as log:
            fill(log, load_tables(), total)
        measure(address, total)


if __name__ == "__main__":
    main(int(sys.argv[1]), *sys.argv[2:3])

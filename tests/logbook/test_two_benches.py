"""Two benches at one log, writing at once: nothing is lost."""

import multiprocessing
import os

import pytest

from tests.logbook.conftest import BAIT_TANK
from welds.logbook.browse import page
from welds.logbook.opening import open_logbook

WELDS = 25


def write(address: str, bench: str, home: str, start) -> None:
    """Log welds as one bench does, and change each of them once."""
    os.environ["XDG_DATA_HOME"] = home
    from welds.logbook.fields import changed_entry, read_entry
    from welds.reference.load import load_tables

    tables = load_tables()
    with open_logbook(address) as log:
        start.wait()
        for n in range(WELDS):
            entry = log.add(read_entry({**BAIT_TANK, "welder": bench, "notes": str(n)}, tables)).entry
            log.edit(changed_entry(entry, {"machine": f"set of {bench}"}, tables))


@pytest.mark.slow
def test_nothing_is_lost(address, tmp_path):
    open_logbook(address).close()
    spawn = multiprocessing.get_context("spawn")
    start = spawn.Barrier(2)
    benches = [
        spawn.Process(target=write, args=(address, name, str(tmp_path / name), start))
        for name in ("one", "two")
    ]
    for bench in benches:
        bench.start()
    for bench in benches:
        bench.join(60)
    assert [bench.exitcode for bench in benches] == [0, 0]
    with open_logbook(address) as log:
        found = page(log, limit=100).entries
        assert len({entry.uid for entry in found}) == 2 * WELDS
        for name in ("one", "two"):
            own = [entry for entry in found if entry.welder == name]
            assert sorted(int(entry.notes) for entry in own) == list(range(WELDS))
            assert all(entry.machine == f"set of {name}" and entry.version == 2 for entry in own)

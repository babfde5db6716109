"""Kills a writing program at random moments and looks at what is left.

By hand: ``python -m tests.logbook.killing 1000``. A kill takes the program, not the operating system: what
a power cut adds rests on SQLite's synchronous=FULL and is not tried here.
"""

import os
import random
import signal
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

from sqlalchemy import select

from welds.logbook.checking import check_log
from welds.logbook.fields import changed_entry, read_entry
from welds.logbook.opening import open_logbook
from welds.logbook.schema import entries
from welds.reference.load import load_tables
from welds.reference.tables import Tables

LONGEST_S = 0.12
AT_START = 0.15
"""Share of kills from the very start on, so that opening is hit as well; the others wait until it is open."""


def write_for_ever(path: str, tables: Tables, say: int, given: dict) -> None:
    """Add, change and remove; say each thing only after it was acknowledged."""
    chance = random.Random(os.getpid())
    with open_logbook(path) as log:
        os.write(say, b"open - 0\n")
        while True:
            fields = {**given, "notes": "n" * chance.randrange(4000), "welder": str(os.getpid())}
            entry = log.add(read_entry(fields, tables)).entry
            os.write(say, f"add {entry.uid} 1\n".encode())
            dice = chance.random()
            if dice < 0.3:
                log.edit(changed_entry(entry, {"machine": "changed"}, tables))
                os.write(say, f"add {entry.uid} 2\n".encode())
            elif dice < 0.4:
                os.write(say, f"try {entry.uid} 0\n".encode())
                log.remove(entry.number or 0)
                os.write(say, f"gone {entry.uid} 0\n".encode())


def kill_often(rounds: int, folder: Path, given: dict, seed: int = 1) -> Counter:
    """Return what was seen; raises AssertionError for the first loss."""
    tables, chance = load_tables(), random.Random(seed)
    path = str(folder / "yard.db")
    open_logbook(path).close()
    acknowledged: dict[str, tuple[str, int]] = {}
    seen: Counter = Counter()
    for _ in range(rounds):
        hear, say = os.pipe()
        child = os.fork()
        if child == 0:
            try:
                os.close(hear)
                write_for_ever(path, tables, say, given)
            finally:
                os._exit(1)
        os.close(say)
        begun = os.read(hear, 9) if chance.random() > AT_START else b""
        time.sleep(chance.uniform(0.0, LONGEST_S))
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        with os.fdopen(hear, "rb") as heard:
            for line in (begun + heard.read()).split(b"\n")[:-1]:
                what, uid, version = line.decode().split()
                if what != "open":
                    acknowledged[uid] = (what, int(version))
        with open_logbook(path) as log:
            state = check_log(log)
            assert not state.damage, state.damage
            there = log.store.read(
                lambda connection: {
                    row.uid: row.version
                    for row in connection.execute(select(entries.c.uid, entries.c.version))
                }
            )
        for uid, (what, version) in acknowledged.items():
            if what == "add":
                assert uid in there, f"an acknowledged entry is lost: {uid}"
                assert there[uid] >= version, f"an acknowledged change is lost: {uid}"
            elif what == "gone":
                assert uid not in there, f"an acknowledged removal is lost: {uid}"
        unheard = [uid for uid in there if uid not in acknowledged]
        assert len(unheard) <= 1 + seen["written, not yet acknowledged"], "entries from nowhere"
        seen["written, not yet acknowledged"] = len(unheard)
        seen["kills"] += 1
    seen["acknowledged entries"] = len(acknowledged)
    return seen


def main() -> None:
    """Kill as often as asked and print what was seen."""
    from tests.logbook.conftest import BAIT_TANK

    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 20
    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_DATA_HOME"] = folder
        begun = time.monotonic()
        print(dict(kill_often(rounds, Path(folder), BAIT_TANK)), f"{time.monotonic() - begun:.0f} s")


if __name__ == "__main__":
    main()

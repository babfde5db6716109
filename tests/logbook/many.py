"""Large invented logs of the boat yard, made quickly."""

import random
import uuid
from datetime import datetime, timedelta
from math import log

from sqlalchemy import Connection, insert

from welds.logbook.fields import read_entry
from welds.logbook.logbook import Logbook
from welds.logbook.rows import kind_of, row_of
from welds.logbook.schema import entries
from welds.reference.tables import Tables

PARTS = ("console box", "bait tank", "rod rack", "trailer mudguard", "winch post", "rail bracket")
METALS = (
    ("5052-H32", "aluminium"),
    ("6061-T6", "aluminium"),
    ("galvanised", "carbon-steel"),
    ("low-carbon", "carbon-steel"),
    ("304", "stainless"),
)
JOINTS = ("butt", "tee", "lap", "outside-corner", "inside-corner", "edge")
POSITIONS = ("PA", "PA", "PA", "PB", "PC", "PF")
OUTCOMES = ("worked-well", "worked-well", "worked", "failed")
SHEETS = (0.8, 1.0, 1.2, 1.5, 2.0, 2.03, 2.5, 3.0, 3.18, 4.0, 5.0, 6.35)
BATCH = 20_000


def fill(log_: Logbook, tables: Tables, count: int, seed: int = 1) -> None:
    """Put invented entries into the log, straight into the table."""
    chance = random.Random(seed)
    pattern = row_of(
        read_entry(
            {
                "process": "tig",
                "metal": "5052-H32",
                "thickness_mm": 2.0,
                "joint": "butt",
                "settings": {"current": 80, "polarity": "AC", "ac_frequency": 120, "cup": 7},
                "outcome": "worked-well",
            },
            tables,
        ).entry
    )
    first = datetime(2022, 1, 1)
    for start in range(0, count, BATCH):
        rows = [_row(pattern, chance, first, place) for place in range(start, min(start + BATCH, count))]

        def work(connection: Connection, rows: list = rows) -> None:
            connection.execute(insert(entries), rows)

        log_.store.write(work)


def _row(pattern: dict, chance: random.Random, first: datetime, place: int) -> dict:
    metal, family = chance.choice(METALS)
    joint, position, outcome = chance.choice(JOINTS), chance.choice(POSITIONS), chance.choice(OUTCOMES)
    process = "tig" if family != "carbon-steel" else chance.choice(("tig", "mig"))
    mm = chance.choice(SHEETS)
    current = round(40 * mm * chance.uniform(0.8, 1.2))
    made_on = (first + timedelta(minutes=place * 2)).isoformat(timespec="microseconds")
    notes = f"invented for a test: {chance.choice(PARTS)}, bead {place}, fit-up as cut"
    return {
        **pattern,
        "uid": str(uuid.UUID(int=chance.getrandbits(128))),
        "process": process,
        "metal": metal,
        "family": family,
        "thickness_mm": mm,
        "joint": joint,
        "position": position,
        "outcome": outcome,
        "settings": pattern["settings"].replace("80", str(current)),
        "current_a": current,
        "notes": notes,
        "made_on": made_on,
        "made_at": made_on[:19] + "+00:00",
        "kind": kind_of(process, family, joint, position),
        "log_thickness": log(mm),
        "search": f"{metal} {process} {family} {joint} {position} {outcome} {notes}".casefold(),
        "fingerprint": f"{place:040x}",
    }

"""What every command needs before it can answer: tables, units, bench."""

import argparse
import sys
from dataclasses import dataclass

from welds.advice.equipment import Equipment
from welds.errors import InputError, nearest
from welds.quantities.units import Units
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class Session:
    """Tables and equipment in use; `asked_units` is None where the person did not say."""

    tables: Tables
    equipment: Equipment
    asked_units: Units | None

    @property
    def units(self) -> Units:
        """The units to show."""
        return self.asked_units or Units.METRIC


def check_common(options: argparse.Namespace) -> Units | None:
    """Return the units that were asked for."""
    if options.units is None:
        return None
    names = [each.value for each in Units]
    if options.units not in names:
        raise InputError("--units", options.units, ", ".join(names), nearest(options.units, names))
    return Units(options.units)


def open_tables() -> Tables:
    """Load the shipped tables with the person's own rows over them."""
    from welds.bench.folders import tables_folder
    from welds.reference.load import load_tables

    return load_tables(tables_folder())


def open_session(options: argparse.Namespace) -> Session:
    """Load the tables, the person's own rows over them, and the bench: the named file, else the person's own.

    Where the person's own has mistakes, the last good one is used and said so on standard error.
    """
    from welds.bench.keep import equipment_for

    units = check_common(options)
    tables = open_tables()
    equipment = equipment_for(options.bench, tables)
    if equipment.trouble:
        print(f"welds: {' '.join(equipment.trouble.split())}", file=sys.stderr)
    return Session(tables, equipment, units)

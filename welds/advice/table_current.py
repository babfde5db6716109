"""What the tables alone say about a joint's current, whatever machine stands on the bench."""

from collections.abc import Callable
from dataclasses import dataclass, field

from welds.advice.case import Case, SoFar, make_case
from welds.advice.equipment import GENERIC
from welds.advice.mig_seams import EXTENSION_MM, Bench, MeltLaw, build_mig_seams
from welds.advice.request import Process, Request, Transfer
from welds.advice.rules import (
    filler_metal,
    mig_current,
    polarity,
    tig_current,
    transfer,
    wire_diameter,
)
from welds.advice.setting import Setting
from welds.errors import WeldsError
from welds.physics.wire import current_for_wire_feed
from welds.reference.tables import Tables

_RULES: dict[Process, tuple[Callable[[Case, SoFar], Setting | None], ...]] = {
    Process.TIG: (polarity.advise, tig_current.advise),
    Process.MIG: (
        transfer.advise,
        polarity.advise,
        filler_metal.advise,
        wire_diameter.advise,
        mig_current.advise,
    ),
}
MOST_KEPT = 4096
"""Answers kept; a log of one shop asks for far fewer different joints."""


@dataclass(frozen=True, slots=True)
class TableFigures:
    """Family and start current; with MIG also the way from a wire feed to its current."""

    family: str
    current_a: float
    melting: MeltLaw | None = None
    wire_mm: float = 0.0
    extension_mm: float = 0.0

    def current_at_feed(self, feed_m_min: float) -> float | None:
        """Return the current that melts the wire at this feed, or None where no law is held."""
        if self.melting is None:
            return None
        return current_for_wire_feed(
            feed_m_min * 1000.0 / 60.0,
            self.wire_mm,
            self.extension_mm,
            self.melting.arc_mm3_as,
            self.melting.resistance_mm4_a2s,
        )


@dataclass(slots=True)
class TableCurrents:
    """Answers by request, kept because a log asks for the same few joints again and again."""

    tables: Tables
    _known: dict[Request, TableFigures | None] = field(default_factory=dict)

    def of(self, request: Request) -> TableFigures | None:
        """Return what the tables say, or None where they do not answer."""
        if request not in self._known:
            if len(self._known) >= MOST_KEPT:
                self._known.clear()
            self._known[request] = _figures(request, self.tables)
        return self._known[request]


def build_table_currents(tables: Tables) -> TableCurrents:
    """Return the keeper for a set of tables."""
    return TableCurrents(tables)


def _figures(request: Request, tables: Tables) -> TableFigures | None:
    try:
        case = make_case(request, tables, GENERIC)
        settings: dict[str, Setting] = {}
        for rule in _RULES[request.process]:
            setting = rule(case, settings)
            if setting is not None:
                settings[setting.name] = setting
    except WeldsError:
        return None
    current_a = settings["current"].figure.start
    if request.process is Process.TIG:
        return TableFigures(case.family, current_a)
    way = Transfer(str(settings["transfer"].value))
    law = tables.derived(build_mig_seams).melt_laws.get(Bench(case.family, way))
    wire_mm = float(settings["wire_diameter"].start)
    return TableFigures(case.family, current_a, law, wire_mm, EXTENSION_MM[way])

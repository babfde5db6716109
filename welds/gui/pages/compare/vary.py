"""What can be varied from column to column, and the values that are offered for it."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from PySide6.QtCore import QObject

from welds.advice.equipment import GENERIC, Equipment
from welds.advice.request import Joint, Process
from welds.errors import WeldsError
from welds.gui.engine import Engine, Fields
from welds.gui.pages.compare.column_set import Change
from welds.gui.pages.setup.options import Options, OptionWords
from welds.quantities.units import Units
from welds.report.comparison import Grounds

NEIGHBOURS = 3
"""Thicknesses offered on either side of the present one."""

KINDS = ("joint", "thickness", "process", "metal", "position", "hand", "machine", "grounds")


class Vary(QObject):
    """Words and values for each kind of column."""

    def __init__(self, engine: Engine, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._engine = engine
        self._words = OptionWords(self)

    def kinds(self) -> Options:
        """Return (kind, words)."""
        words = {
            "joint": self.tr("Joints"),
            "thickness": self.tr("Thicknesses"),
            "process": self.tr("TIG and MIG"),
            "metal": self.tr("Metals"),
            "position": self.tr("Positions"),
            "hand": self.tr("Hands"),
            "machine": self.tr("Machines"),
            "grounds": self.tr("Tables and log"),
        }
        return tuple((kind, words[kind]) for kind in KINDS)

    def values(self, kind: str, base: Fields, units: Units) -> Options:
        """Return (value, words) that can be ticked; metals are added by name."""
        if kind == "joint":
            is_tig = base.get("process") == Process.TIG
            return tuple(each for each in self._words.joints() if not (is_tig and each[0] == Joint.PLUG))
        if kind == "thickness":
            return self._thicknesses(base, units)
        if kind == "process":
            return self._words.processes()
        if kind == "position":
            return tuple((value, value) for value, _words in self._words.positions())
        if kind == "hand":
            return self._words.hands()
        if kind == "grounds":
            return self._grounds(base)
        return tuple((name, name) for name in self.machines()) if kind == "machine" else ()

    def machines(self) -> Mapping[str, Equipment]:
        """Return the machines of the person's bench by name, each with the shelf beside it."""
        bench = self._engine.bench.kept.bench if self._engine.bench is not None else None
        if bench is None:
            return {}
        return {machine.name: replace(bench, in_use=machine.name).equipment() for machine in bench.machines}

    def change(self, kind: str, value: str) -> Change:
        """Return what a column of this value asks differently."""
        if kind == "machine":
            return Change({}, self.machines().get(value))
        if kind == "grounds":
            return Change({}, grounds=Grounds(value))
        return Change({kind: value})

    def value_of(self, kind: str, change: Change) -> str:
        """Return the value of this kind that a column varies, or nothing where it varies anything else."""
        if kind == "machine":
            return change.equipment.machine.name if change.equipment is not None and not change.fields else ""
        if kind == "grounds":
            return change.grounds.value if change.grounds is not None else ""
        return change.fields[kind] if set(change.fields) == {kind} else ""

    def first_values(self, kind: str, base: Fields, units: Units) -> Sequence[str]:
        """Return what stands side by side as soon as a kind is chosen; the present value among them."""
        present = self.present(kind, base)
        values = [value for value, _words in self.values(kind, base, units)]
        if kind == "machine":
            return values
        if kind == "metal":
            return (present,)
        if present not in values:
            values.insert(0, present)
        return values

    def present(self, kind: str, base: Fields) -> str:
        """Return the present card's value; the log is held against the tables whatever the card rests on."""
        if kind == "machine":
            return self.equipment().machine.name
        if kind == "grounds":
            return Grounds.TABLES
        value = base.get(kind, "")
        return value if isinstance(value, str) else ""

    def equipment(self) -> Equipment:
        """Return the machine and shelf that the present card is for."""
        return self._engine.bench.equipment if self._engine.bench is not None else GENERIC

    def _grounds(self, base: Fields) -> Options:
        """Return the tables alone against the tables and the log; say so where no weld speaks."""
        past = self._engine.past
        try:
            found = past.all_of(self._engine.request(base)) if past is not None else None
        except WeldsError:
            found = None
        words = self.tr("Tables and log") if found is not None else self.tr("Tables and log (no weld speaks)")
        return ((Grounds.TABLES.value, self.tr("Tables alone")), (Grounds.LOG.value, words))

    def _thicknesses(self, base: Fields, units: Units) -> Options:
        """Return the present thickness between the named ones on either side of it."""
        present = self.present("thickness", base)
        try:
            here = self._engine.request(base).thickness_mm
        except WeldsError:
            return ((present, present),)
        metal = self.present("metal", base)
        marks = sorted(self._engine.thickness_marks(metal, units))
        below = [mark for mark in marks if mark[0] < here * 0.995][-NEIGHBOURS:]
        above = [mark for mark in marks if mark[0] > here * 1.005][:NEIGHBOURS]
        named = [(self._engine.length_text(mm, units), name) for mm, name in (*below, *above)]
        return (*named[: len(below)], (present, present), *named[len(below) :])

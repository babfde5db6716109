"""What can be varied from column to column, and the values that are offered for it."""

from collections.abc import Sequence

from PySide6.QtCore import QObject

from welds.advice.request import Joint, Process
from welds.errors import WeldsError
from welds.gui.engine import Engine, Fields
from welds.gui.pages.setup.options import Options, OptionWords
from welds.quantities.units import Units

NEIGHBOURS = 3
"""Thicknesses offered on either side of the present one."""

KINDS = ("joint", "thickness", "process", "metal", "position", "hand", "machine")


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
        }
        return tuple((kind, words[kind]) for kind in KINDS)

    def values(self, kind: str, base: Fields, units: Units) -> Options:
        """Return (value, words) that can be ticked; metals and machines are added by name."""
        if kind == "joint":
            is_tig = base.get("process") == Process.TIG
            return tuple(each for each in self._words.joints() if not (is_tig and each[0] == Joint.PLUG))
        if kind == "thickness":
            return self._thicknesses(base, units)
        if kind == "process":
            return self._words.processes()
        if kind == "position":
            return tuple((value, value) for value, _words in self._words.positions())
        return self._words.hands() if kind == "hand" else ()

    def first_values(self, kind: str, base: Fields, units: Units) -> Sequence[str]:
        """Return what stands side by side as soon as a kind is chosen; the present value among them."""
        present = self.present(kind, base)
        values = [value for value, _words in self.values(kind, base, units)]
        if kind in ("metal", "machine"):
            return (present,)
        if present not in values:
            values.insert(0, present)
        return values

    def present(self, kind: str, base: Fields) -> str:
        """Return the present card's value."""
        value = base.get(kind, "")
        return value if isinstance(value, str) else ""

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

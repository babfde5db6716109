"""Eight ways to draw a line that can be told apart without colour, and a shape for each grade."""

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPen

from welds.advice.evidence import Outcome
from welds.gui.colours import Colours
from welds.reference.basis import Basis


@dataclass(frozen=True, slots=True)
class LineStyle:
    """Colours on light and dark paper, and a dash pattern in widths of the line (empty: unbroken)."""

    on_light: str
    on_dark: str
    dashes: tuple[float, ...]

    def colour(self, colours: Colours) -> QColor:
        """Return the colour for this paper."""
        return QColor(self.on_dark if colours.is_dark else self.on_light)

    def pen(self, colours: Colours, width: float = 2.0) -> QPen:
        """Return a pen whose width does not grow with the zoom."""
        pen = QPen(self.colour(colours), width)
        pen.setCosmetic(True)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        if self.dashes:
            pen.setDashPattern(list(self.dashes))
        return pen


STYLES = (
    LineStyle("#0b5a70", "#74cbe2", ()),
    LineStyle("#a3410a", "#ffae73", (6, 2)),
    LineStyle("#3d6b12", "#a9d977", (2, 2)),
    LineStyle("#7a2a86", "#e2a3ee", (8, 2, 2, 2)),
    LineStyle("#8a1f2b", "#ff9ba4", (12, 3)),
    LineStyle("#3a4a9a", "#a8b6ff", (4, 2, 1, 2, 1, 2)),
    LineStyle("#6b5a00", "#e6d36b", (1, 2)),
    LineStyle("#333b3f", "#d5dcdf", (10, 2, 4, 2)),
)

SHAPES: Mapping[Basis, tuple[str, bool]] = {
    Basis.PRINTED: ("o", True),
    Basis.QUOTED: ("s", True),
    Basis.DERIVED: ("t1", True),
    Basis.PRACTICE: ("d", False),
    Basis.RECALLED: ("o", False),
}
"""Grade -> (shape by pyqtgraph's name, filled): what was read is filled, what was not is hollow."""

OWN_SHAPES: Mapping[Outcome, tuple[str, bool]] = {
    Outcome.WORKED_WELL: ("star", True),
    Outcome.WORKED: ("star", False),
    Outcome.FAILED: ("x", False),
}
"""Outcome -> (shape, filled) of the person's own welds; no grade has a shape of theirs."""


def style_of(place: int) -> LineStyle:
    """Return the style of the column at a place."""
    return STYLES[place % len(STYLES)]

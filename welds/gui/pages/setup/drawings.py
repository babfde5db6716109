"""The drawings of the set-up page in the colours of the widget they stand on."""

from dataclasses import replace

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from welds.advice.request import Joint
from welds.gui.card_face import CardFace
from welds.gui.colours import Colours
from welds.gui.drawing.ink import DARK, LIGHT, Ink
from welds.gui.drawing.joint import paint_joint, paint_joint_tile
from welds.gui.drawing.scene import scene_from_card
from welds.gui.drawing.wave import paint_wave
from welds.quantities.units import Units


class SetupDrawings:
    """Keeps the thicknesses and units in hand, so that a widget only has to say where to draw."""

    def __init__(self, owner: QWidget) -> None:
        self._owner = owner
        self._thicknesses = (2.0, 2.0)
        self._units = Units.METRIC

    def set_thicknesses(self, first_mm: float, other_mm: float | None) -> None:
        """Draw the joint tiles to these thicknesses from now on."""
        self._thicknesses = (first_mm, other_mm or first_mm)

    def set_units(self, units: Units) -> None:
        """Write lengths in these units from now on."""
        self._units = units

    def paint_tile(self, painter: QPainter, area: QRectF, joint: str, paper: str) -> None:
        """Draw one joint small, on paper of this colour."""
        ink = replace(self._ink(), ground=paper)
        paint_joint_tile(painter, area, Joint(joint), *self._thicknesses, ink)

    def paint_joint(self, painter: QPainter, area: QRectF, face: CardFace) -> None:
        """Draw the card's joint with its torch."""
        paint_joint(painter, area, scene_from_card(face.card, self._units), self._ink())

    def paint_wave(self, painter: QPainter, area: QRectF, face: CardFace) -> None:
        """Draw the card's AC wave."""
        settings = face.card.settings
        frequency, negative, current = (
            settings[name].start for name in ("ac_frequency", "electrode_negative", "current")
        )
        paint_wave(painter, area, float(frequency), float(negative), float(current), self._ink())

    def _ink(self) -> Ink:
        colours = Colours.of(self._owner.palette())
        return replace(DARK if colours.is_dark else LIGHT, ground=colours.sheet)

"""Whether tables and heat picture meet, as one line for this page and for the set-up card."""

from welds.advice.card import Card
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.heat.bead import bead_of
from welds.advice.heat.disagreement import disagreement, settings_of
from welds.errors import WeldsError
from welds.gui.card_face import CheckLine
from welds.reference.tables import Tables

NAME = "heat picture"


def heat_check(card: Card, tables: Tables, equipment: Equipment = GENERIC) -> CheckLine | None:
    """Return the check line where physics and tables disagree beyond their bands; None where they meet.

    Works out one whole bead: a tenth of a second, so not for every step of a slider.
    """
    settings = settings_of(card)
    if settings is None:
        return None
    try:
        said = disagreement(card, bead_of(card.request, settings, tables, equipment))
    except WeldsError:
        return None
    return CheckLine(NAME, said, ok=False) if said else None

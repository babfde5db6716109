"""Whether tables and heat picture meet, as one more check on a card."""

from dataclasses import replace

from welds.advice.card import Card
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.heat.bead import bead_of
from welds.advice.heat.disagreement import disagreement, settings_of
from welds.advice.setting import Check
from welds.errors import WeldsError
from welds.language import mark
from welds.reference.tables import Tables

NAME = mark("heat picture")


def heat_check(card: Card, tables: Tables, equipment: Equipment = GENERIC) -> Check | None:
    """Return the check where physics and tables disagree beyond their bands; None where they meet.

    Works out one whole bead: a tenth of a second, so not for every step of a slider.
    """
    settings = settings_of(card)
    if settings is None:
        return None
    try:
        said = disagreement(card, bead_of(card.request, settings, tables, equipment))
    except WeldsError:
        return None
    return Check(NAME, False, said) if said else None


def with_heat_check(card: Card, tables: Tables, equipment: Equipment = GENERIC) -> Card:
    """Return the card with that check on it, or as it was where physics and tables meet."""
    check = heat_check(card, tables, equipment)
    return card if check is None else replace(card, checks=(*card.checks, check))

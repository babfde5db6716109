"""What the tests of cautions share."""

from welds.advice.card import Card
from welds.quantities.units import Units
from welds.reference.tables import Tables
from welds.report.layout import groups
from welds.report.text_card import text_card


def said_first(tables: Tables, card: Card, rule: str) -> None:
    """The caution stands in the text before the first figure of the card, wrapped or not."""
    text = " ".join(text_card(card, Units.METRIC, tables.sources).split())
    words = next(caution.text for caution in card.cautions if caution.rule == rule)
    figure = text.index(groups(card, Units.METRIC)[0].title.upper())
    assert text.index(" ".join(words.split())) < figure

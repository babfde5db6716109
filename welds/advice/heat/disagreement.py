"""Where the heat picture and the tables do not meet: said on the card, and settled by neither."""

from welds.advice.card import Card
from welds.advice.heat.bead import Bead, HeatSettings
from welds.advice.request import Joint
from welds.language import mark, tr

STAYS_COLD = mark(
    "The heat picture disagrees: at {travel:.1f} mm/s it has the tables' {low:.0f} to {high:.0f} A stay cold,"
    " and expects {least:.0f} to {most:.0f} A. Both are shown; try it on scrap."
)
FALLS_THROUGH = mark(
    "The heat picture disagrees: at {travel:.1f} mm/s it has the tables' {low:.0f} to {high:.0f} A fall"
    " through, and expects {least:.0f} to {most:.0f} A. Both are shown; try it on scrap."
)


def settings_of(card: Card) -> HeatSettings | None:
    """Return the card's start figures as heat settings, None where it has no travelling seam."""
    if card.request.joint is Joint.PLUG or "travel_speed" not in card.settings:
        return None
    current, travel, volts = (
        card.settings[name].figure.start for name in ("current", "travel_speed", "arc_voltage")
    )
    return HeatSettings(current, travel, volts)


def disagreement(card: Card, bead: Bead) -> str | None:
    """Return one sentence where the card's current and the model's do not meet, with both bands; else None.

    The model's currents run from the one that just melts (through, for a butt in one pass) to the one at
    which the pool falls out, each widened by the model's error.
    """
    band = card.settings["current"].figure
    one_pass = "passes" not in card.settings or card.settings["passes"].start == 1
    through = card.request.joint is Joint.BUTT and one_pass
    least = bead.through_current_a if through else bead.surface_current_a
    low, high = least * (1.0 - bead.error), bead.collapse_current_a * (1.0 + bead.error)
    if low <= band.high and band.low <= high:
        return None
    text = STAYS_COLD if band.high < low else FALLS_THROUGH
    return tr(text, travel=bead.settings.travel_mm_s, low=band.low, high=band.high, least=low, most=high)

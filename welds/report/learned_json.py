"""What the log added to a card, as JSON."""

from typing import Any

from welds.advice.learned import Learned
from welds.quantities.band import Band
from welds.report.plain_number import plain_number


def learned_json(learned: Learned) -> dict[str, Any]:
    """Return tables' band and learned band side by side, how many welds spoke and how sure it is."""
    return {
        "setting": learned.setting,
        "table": _band(learned.table),
        "learned": _band(learned.band),
        "factor": plain_number(learned.factor),
        "factor_low": plain_number(learned.factor_low),
        "factor_high": plain_number(learned.factor_high),
        "welds": learned.welds,
        "alike": learned.alike,
        "worked": learned.worked,
        "too_hot": learned.too_hot,
        "too_cold": learned.too_cold,
        "scatter": plain_number(learned.scatter),
        "sureness": plain_number(learned.sureness),
        "sureness_words": learned.sureness_words,
        "spoke": list(learned.spoke),
        "burnt_at_a": None if learned.burnt_at_a is None else plain_number(learned.burnt_at_a),
        "cold_at_a": None if learned.cold_at_a is None else plain_number(learned.cold_at_a),
    }


def _band(band: Band) -> dict[str, Any]:
    return {
        "low": plain_number(band.low),
        "start": plain_number(band.start),
        "high": plain_number(band.high),
        "unit": band.unit,
    }

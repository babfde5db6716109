"""An entry filled in from a card; the person corrects what was changed and says how it came out."""

from typing import Any

from welds.advice.card import Card


def fields_from_card(card: Card) -> dict[str, Any]:
    """Return the fields of an entry that the card answers, as `read_entry` takes them.

    What is still missing is the outcome. Settings that are worked out rather than set (heat input, filter
    shade, what to do before and between) are left out.
    """
    request = card.request
    fields: dict[str, Any] = {
        "process": request.process.value,
        "metal": request.metal,
        "thickness_mm": request.thickness_mm,
        "joint": request.joint.value,
        "position": request.position,
        "hand": request.hand.value,
        "machine": card.machine,
        "settings": {name: setting.start for name, setting in card.settings.items() if name not in _NOT_SET},
    }
    where_given = {
        "other_metal": request.other_metal,
        "other_thickness_mm": request.other_thickness_mm,
        "gap_mm": request.gap_mm or None,
    }
    return fields | {name: value for name, value in where_given.items() if value is not None}


_NOT_SET = frozenset({"heat_input", "filter_shade", "preheat", "interpass", "tacks", "passes"})

"""Every word that stands in a picture, in one table, so that a translation has one place to go."""

from collections.abc import Mapping

WORDS: Mapping[str, str] = {
    "stick_out": "stick-out",
    "arc": "arc length",
    "cup": "cup, {size}",
    "cup_number": "no. {number}",
    "lens": "gas lens",
    "tungsten": "tungsten, {angle}°",
    "from_to": "{low}\N{EN DASH}{high}",
    "tip_to_work": "tip to work",
    "wire": "wire",
    "nozzle": "nozzle",
    "contact": "contact tip",
    "thickness": "thickness",
    "gap": "gap",
    "hole": "hole",
    "bar": "backing bar",
    "purge": "argon",
    "behind": "behind the joint",
    "filler": "filler, at {angle}°",
    "travel": "travel",
    "torch": "torch",
    "gun": "gun",
    "leans_back": "{tool} leans back",
    "leans_ahead": "{tool} leans ahead",
    "push": "{angle}°, push",
    "drag": "{angle}°, drag",
    "upright": "upright",
    "angle": "{angle}°",
    "to_face": "to the face",
    "to_base": "to the base",
    "to_lower": "to lower sheet",
    "at_edge": "at the edge",
    "halfway": "halfway",
    "off_halfway": "{angle}° off halfway",
    "heat_thicker": "Leans so that the thicker side gets more of the heat.",
    "moved_back": "Drawn with {drawn} stick-out: at {given} the cup would touch the metal.",
    "nozzle_back": "Nozzle drawn back: it would touch the metal.",
    "bevelled": "Edges bevelled to {angle}°.",
    "from_above": "seen from above",
    "section": "across the weld",
    "side": "along the weld",
    "en_does": "EN: melts the work",
    "ep_does": "EP: lifts the oxide",
    "dc_en": "DC, electrode negative: steady",
    "dc_ep": "DC, electrode positive: steady",
    "milliseconds": "ms",
    "period": "{time} ms a cycle, {frequency} Hz",
    "share_en": "{percent} % EN",
    "share_ep": "{percent} % EP",
}

POSITIONS: Mapping[str, str] = {
    "PA": "PA, flat",
    "PB": "PB, horizontal",
    "PC": "PC, on a wall, level",
    "PD": "PD, overhead corner",
    "PE": "PE, overhead",
    "PF": "PF, vertical up",
    "PG": "PG, vertical down",
}


def word(key: str, **values: object) -> str:
    """Return one text of the table with its values filled in."""
    return WORDS[key].format(**values)

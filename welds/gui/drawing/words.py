"""Every word that stands in a picture, in one table, so that a translation has one place to go."""

from collections.abc import Mapping

from welds.language import mark, tr

WORDS: Mapping[str, str] = {
    "stick_out": mark("stick-out"),
    "arc": mark("arc length"),
    "cup": mark("cup, {size}"),
    "cup_number": mark("no. {number}"),
    "lens": mark("gas lens"),
    "tungsten": mark("tungsten, {angle}°"),
    "from_to": "{low}\N{EN DASH}{high}",
    "tip_to_work": mark("tip to work"),
    "wire": mark("wire"),
    "nozzle": mark("nozzle"),
    "contact": mark("contact tip"),
    "thickness": mark("thickness"),
    "gap": mark("gap"),
    "hole": mark("hole"),
    "bar": mark("backing bar"),
    "purge": mark("argon"),
    "behind": mark("behind the joint"),
    "filler": mark("filler, at {angle}°"),
    "travel": mark("travel"),
    "torch": mark("torch"),
    "gun": mark("gun"),
    "leans_back": mark("{tool} leans back"),
    "leans_ahead": mark("{tool} leans ahead"),
    "push": mark("{angle}°, push"),
    "drag": mark("{angle}°, drag"),
    "upright": mark("upright"),
    "angle": "{angle}°",
    "to_face": mark("to the face"),
    "to_base": mark("to the base"),
    "to_lower": mark("to lower sheet"),
    "at_edge": mark("at the edge"),
    "halfway": mark("halfway"),
    "off_halfway": mark("{angle}° off halfway"),
    "heat_thicker": mark("Leans so that the thicker side gets more of the heat."),
    "moved_back": mark("Drawn with {drawn} stick-out: at {given} the cup would touch the metal."),
    "nozzle_back": mark("Nozzle drawn back: it would touch the metal."),
    "bevelled": mark("Edges bevelled to {angle}°."),
    "from_above": mark("seen from above"),
    "section": mark("across the weld"),
    "side": mark("along the weld"),
    "en_does": mark("EN: melts the work"),
    "ep_does": mark("EP: lifts the oxide"),
    "dc_en": mark("DC, electrode negative: steady"),
    "dc_ep": mark("DC, electrode positive: steady"),
    "milliseconds": mark("ms"),
    "period": mark("{time:.3g} ms a cycle, {frequency:.0f} Hz"),
    "share_en": mark("{percent} % EN"),
    "share_ep": mark("{percent} % EP"),
}

POSITIONS: Mapping[str, str] = {
    "PA": mark("PA, flat"),
    "PB": mark("PB, horizontal"),
    "PC": mark("PC, on a wall, level"),
    "PD": mark("PD, overhead corner"),
    "PE": mark("PE, overhead"),
    "PF": mark("PF, vertical up"),
    "PG": mark("PG, vertical down"),
}


def word(key: str, **values: object) -> str:
    """Return one text of the table in the language in use, with its values filled in."""
    return tr(WORDS[key], **values)


def position_words(position: str) -> str:
    """Return a welding position by its letters and in words."""
    return tr(POSITIONS.get(position, position))

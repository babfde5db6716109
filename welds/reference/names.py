"""What ids and other closed words are called: families of metals, joints, coatings, faults and the like."""

from collections.abc import Sequence

from welds import language
from welds.language import mark, tr

NAMES = frozenset(
    {
        *(mark("aluminium"), mark("carbon steel"), mark("copper"), mark("magnesium"), mark("stainless")),
        *(mark("titanium"), mark("steel")),
        *(mark("butt"), mark("tee"), mark("lap"), mark("outside corner"), mark("inside corner")),
        *(mark("edge"), mark("plug"), mark("T-joint")),
        *(mark("unhurried"), mark("brisk"), mark("any")),
        *(mark("indoors"), mark("outdoors"), mark("enclosed")),
        *(mark("strength"), mark("ductility"), mark("least cracking"), mark("anodised colour")),
        *(mark("warm service"), mark("salt water"), mark("general")),
        *(mark("galvanised"), mark("zinc plated"), mark("zinc primer"), mark("cadmium"), mark("chrome")),
        *(
            mark("paint"),
            mark("old paint"),
            mark("powder coat"),
            mark("sealer"),
            mark("oil"),
            mark("anodised"),
        ),
        *(mark("mill scale"), mark("rust"), mark("unknown")),
        *(mark("acetone"), mark("alcohol"), mark("chlorinated"), mark("unknown spray")),
        *(mark("bracket"), mark("vehicle"), mark("closed section"), mark("tank"), mark("pressure")),
        *(
            mark("steering suspension"),
            mark("towing"),
            mark("lifting"),
            mark("rollover"),
            mark("sealed item"),
        ),
        *(mark("short circuit"), mark("globular"), mark("spray"), mark("pulsed")),
        *(mark("lanthana"), mark("ceria"), mark("thoria"), mark("zirconia"), mark("none"), mark("other")),
        *(mark("argon"), mark("helium"), mark("argon helium"), mark("active")),
        *(
            mark("percent"),
            mark("efficiency"),
            mark("power factor"),
            mark("inverter"),
            mark("corrected inverter"),
        ),
        *(
            mark("transformer"),
            mark("motor generator"),
            mark("air"),
            mark("water"),
            mark("square"),
            mark("sine"),
        ),
        *(mark("brush"), mark("wheel"), mark("torch"), mark("gun"), mark("sheet"), mark("structural")),
        *(mark("blackened tungsten"), mark("burn through"), mark("convex bead"), mark("crack")),
        *(mark("crater crack"), mark("distortion"), mark("excess penetration"), mark("heat tint")),
        *(mark("incomplete penetration"), mark("lack of fusion"), mark("oxide inclusion")),
        *(mark("poor restart"), mark("porosity"), mark("soot"), mark("spatter"), mark("stray arc")),
        *(mark("tungsten inclusion"), mark("undercut"), mark("underfill"), mark("uneven bead")),
        *(mark("wandering arc"), mark("wide etch band"), mark("wire feed trouble")),
    }
)
"""For the translators, as English says them; their ids have hyphens for the blanks."""


def name_of(word: str) -> str:
    """Return what an id is called in the language in use: "carbon steel" for carbon-steel."""
    return tr(word.replace("-", " "))


def id_or_name(word: str) -> str:
    """Return an id as it is where English is spoken, which reads it well enough, else what it is called."""
    return word if language.code() == language.ENGLISH else name_of(word)


def all_of(words: Sequence[str]) -> str:
    """Return words as a list in a sentence, all of them meant."""
    return _listed(words, mark("{words} and {last}"))


def any_of(words: Sequence[str]) -> str:
    """Return words as a list in a sentence, any of them meant."""
    return _listed(words, mark("{words} or {last}"))


def _listed(words: Sequence[str], template: str) -> str:
    if len(words) == 1:
        return words[0]
    return tr(template, words=", ".join(words[:-1]), last=words[-1])

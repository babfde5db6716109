"""Command lines as a careless, hurried or hostile person types them: nearly right, or anything at all."""

import re

from hypothesis import strategies as st

from tests.hostile.box import FILES

LENGTHS = (
    "2 mm",
    "0.080 in",
    "1/8 in",
    "14 ga",
    "2",
    "0",
    "-1 mm",
    "1e308 mm",
    "1e-320",
    "9" * 400,
    "nan mm",
)
REQUEST = {
    "process": ("tig", "mig", "TIG", "stick"),
    "metal": ("5052", "5052-H32", "6061-T6", "low-carbon", "galvanised", "304", "4130", "cadmium", "505"),
    "thickness": LENGTHS,
    "joint": ("butt", "tee", "lap", "outside-corner", "inside-corner", "edge", "plug", "corner"),
    "position": ("PA", "1G", "flat", "PF", "overhead", "9Z"),
    "goal": ("strength", "ductility", "beauty"),
    "coating": ("galvanised", "paint", "oil", "none", "galvanised+oil", "+"),
    "solvent": ("acetone", "chlorinated", "unknown-spray"),
    "part": ("bracket", "tank", "towing"),
    "place": ("indoors", "outdoors", "enclosed"),
    "hand": ("brisk", "unhurried"),
    "gas": ("argon", "M21", "C1", "helium", "nothing"),
    "wire": ("0.8 mm", "0.030 in", "9 mm"),
    "transfer": ("short-circuit", "spray"),
}
VALUES = {
    **REQUEST,
    "units": ("metric", "inch", "imperial"),
    "lang": ("en", "de", "es", "xx"),
    "bench": ("bench.yaml", "torn.yaml", "job.yaml", "yard.db", "empty", "nowhere.yaml"),
    "log": ("yard.db", "new.db", "shopping.txt", "folder", "mysql://x", "postgresql://127.0.0.1:1/none"),
    "current": ("90", "90 A", "0", "-5", "1e9", "1e400", "nan", "90 V"),
    "voltage": ("12.5 V", "0", "1e300"),
    "travel": ("5 mm/s", "12 ipm", "0", "1e-300 mm/s", "1e300 ipm"),
    "preheat": ("100 C", "-273.15", "2000 F", "1e308"),
    "backing": ("none", "bar"),
    "frequency": ("120 Hz", "0", "1e308"),
    "balance": ("70 %", "0", "100", "101"),
    "radius": ("3 mm", "3,3,5 mm", "0", "1e200", ","),
    "legs": ("30,300,30 mm", "30,300", "1e308,1e308,1", "0,0,0", ",".join(["1"] * 300)),
    "angles": ("90,90", "-90", "0,0", "180,179.9999", "1e308", ",".join(["90"] * 299)),
    "dims": ("outside", "inside", "overall"),
    "width": LENGTHS,
    "grain": ("across", "along"),
    "k": ("0.4", "0", "-1", "nan", "1e308"),
    "test-bend": ("flat=100 mm; legs=52 x 51.5 mm; angle=90; radius=2 mm", "flat=;legs=", ";;;=", "angle=0"),
    "brake": ("hand brake", "=cmd|' /C calc'!A0", "\u202ekarb"),
    "holes": ("6 mm x 14, 4 mm x 3", "6 mm x 99999999999", "0 x 0", "x", "1e308 mm x 2"),
    "region": ("120 x 80 mm", "1e308 x 1e308", "0 x 0", "120"),
    "panel": ("500 x 400 mm", "1 x 1"),
    "behind": ("sound", "thin", "none"),
    "measured": LENGTHS,
    "set": ("current=112", "cup=7", "polarity=ac", "=", "current=1e999", "current==", "tip=\0"),
    "fault": ("burn-through", "401", "porous", "\u0661"),
    "photo": ("bead.jpg", "shopping.txt", "empty", "folder", "/dev/null"),
    "outcome": ("worked-well", "worked", "failed"),
    "made-at": ("2026-03-03", "2026-03-03T14:05", "9999-12-31T23:59:59-23:59", "0001-01-01T00:00+23:59"),
    "limit": ("5", "0", "9" * 30, "\u0663"),
    "offset": ("0", "10000000", "-1"),
    "sort": ("made_at", "current_a", "number; DROP TABLE entries"),
    "since": ("2026-01-01", "0001-01-01", "soon"),
    "until": ("2026-12-31", "9999-12-31"),
    "text": ("tank", '"', "*", "a OR NOT b", "NEAR(", "%_\\"),
    "photos": ("yes", "no"),
    "template": ("200 A AC/DC TIG, 230 V", "x"),
}
BASES = {
    "card": ("card --process tig --metal 5052 --thickness 2mm --joint butt",),
    "card --batch": ("card --batch",),
    "compare": ("compare --process tig --metal 5052 --thickness 2mm --joint butt --joint tee",),
    "chart": ("chart --process tig --metal 5052 --thickness 2mm --joint butt",),
    "bead": ("bead --process tig --metal 5052 --thickness 2mm --joint butt --current 90 --travel 3mm/s",),
    "blank": ("blank --metal 5052-H32 --thickness 2mm --legs 30,300,30mm --angles 90,90 --radius 3mm",),
    "repair": ("repair --metal low-carbon --thickness 1.2mm --holes 6mmx9 --region 120x80mm",),
    "job": (
        *(
            "job check job.yaml",
            "job plan job.yaml",
            "job materials job.yaml",
            "job demo",
            "job demo new.out",
        ),
        *("job check torn.yaml", "job plan yard.db"),
    ),
    "bench": ("bench init", "bench show", "bench check", "bench check --bench bench.yaml"),
    "log": (
        *("log add --process tig --metal 5052 --thickness 2mm --joint butt --current 80 --outcome worked",),
        *("log list", "log show 1", "log edit 1 --outcome failed", "log remove 1", "log undo x"),
        *("log similar --process tig --metal 5052 --thickness 2mm --joint butt", "log sheet 1"),
        *("log export new.csv", "log import yard.csv", "log import yard.json --accept", "log backup new.zip"),
        *("log restore yard.zip", "log restore yard.db", "log check"),
    ),
    "faults": ("faults", "faults porosity", "faults burn-through --process tig"),
    "tables": ("tables list", "tables show metals", "tables check folder", "tables sources"),
    "anything": ("version", "help", "--log yard.db", "crad --process tig"),
}
"""Commands that are right; a case changes some of their words."""

ODD = (
    *("", " ", "-", "--", "---", "=", "\0", "\n", "\r\n", "\u202e\u05d0\u05d1", "e\u0301" * 40, "\udcff"),
    *("\ufeff", "1" * 5000, "a" * 5000, "=1+1", "@SUM(A1)", "../../etc", "%s%n", "${HOME}", "$(id)"),
    *("\U0001f525", "\u2028", "NaN", "-inf", "1e400", "0x10", "1_000", "\u0661\u0662", "true", "null"),
    *("[" * 2000, "{}", "\u00e9", "\ufb01"),
)
"""Words that break programs."""

anything = st.one_of(
    st.sampled_from(ODD),
    st.text(st.characters(exclude_characters="/", exclude_categories=["Cs"]), max_size=20),
    st.from_regex(re.compile(r"-?[0-9]{0,9}[.,/ xe-]?[0-9]{0,4} ?(mm|in|ga|\"|'|A|V|C)?"), fullmatch=True),
)
files = st.sampled_from(FILES)


def value_of(option: str, metavar: str) -> st.SearchStrategy[str]:
    """Return values for an option: mostly ones it knows, else a file's name or anything."""
    known = VALUES.get(option.removeprefix("--"), LENGTHS if metavar else ())
    likely = st.sampled_from(known) if known else anything
    return st.one_of(likely, likely, files if metavar == "FILE" else likely, anything, likely.map(_bent))


def _bent(word: str) -> str:
    """Return a word with its middle gone and its halves swapped, as a slip of the fingers leaves it."""
    half = len(word) // 2
    return word[half + 1 :] + word[:half]


@st.composite
def command_lines(draw, name: str, options: dict[str, dict[str, str]]) -> list[str]:
    """Draw a command line: one of the bases, with up to four changes."""
    words = draw(st.sampled_from(BASES[name])).split()
    known = options.get(" ".join(words[:2]), options.get(words[0] if words else "", {}))
    for _ in range(draw(st.integers(0, 4))):
        how = draw(st.sampled_from(("option", "option", "option", "value", "drop", "twice", "insert")))
        place = draw(st.integers(1, max(1, len(words))))
        if how == "option" and known:
            option = draw(st.sampled_from(sorted(known)))
            value = [draw(value_of(option, known[option]))] if known[option] else []
            words += [f"{option}={value[0]}"] if value and draw(st.booleans()) else [option, *value]
        elif how == "value" and place < len(words):
            before = words[place - 1]
            words[place] = draw(
                value_of(before, "") if before.startswith("--") else st.one_of(files, anything)
            )
        elif how == "drop" and place < len(words):
            del words[place]
        elif how == "twice" and place < len(words):
            words.insert(place, words[place])
        else:
            words.insert(place, draw(anything))
    return words

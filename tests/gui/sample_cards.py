"""Advice made by hand, so that the window is tested without the rules: figures are invented, shapes are real.

The work is the yard's: console box and bait tank in 5052, the trailer's galvanised mudguards, stainless rail
brackets on a thicker post.
"""

from welds.advice.adjustment import Adjustment
from welds.advice.card import Card
from welds.advice.request import Coating, Joint, Part, Process, Request
from welds.advice.setting import Caution, Check, Choice, Reason, Setting, Severity, Step
from welds.advice.validate import request_from_fields
from welds.errors import NotCoveredError
from welds.gui.engine import Engine
from welds.quantities.band import Band
from welds.reference.basis import Basis
from welds.reference.load import load_tables
from welds.reference.metals import find_metal

LONGEST_MM = 12.7
FILLERS = {"aluminium": "ER5356", "carbon-steel": "ER70S-6", "stainless": "ER308L"}


def sample_engine() -> Engine:
    """Real tables and real reading of fields, with sample cards instead of advice."""
    tables = load_tables()

    def card(request: Request, adjustments: tuple[Adjustment, ...] = ()) -> Card:
        assert not adjustments, "sample cards take no changes"
        return sample_card(request, find_metal(tables, request.metal).family)

    return Engine(tables, lambda fields: request_from_fields(fields, tables), card)


def sample_card(request: Request, family: str) -> Card:
    """Return a card of the usual shape for any request up to `LONGEST_MM`."""
    if request.thickness_mm > LONGEST_MM:
        asked = f"{request.process.upper()} on {request.metal}, {request.thickness_mm:g} mm"
        raise NotCoveredError(asked, "the tables end at 12.7 mm", "12.7 mm")
    maker = _mig if request.process is Process.MIG else _tig
    settings = {setting.name: setting for setting in (*maker(request, family), *_common(request))}
    return Card(request, settings, _CHECKS, _STEPS, _cautions(request, family), "any machine")


def _setting(name, figure, basis=Basis.PRINTED, *reasons, unit=None, alternatives=(), text=""):
    is_band = isinstance(figure, Band)
    chain = reasons or (Reason("sample figure, made up for this test"),)
    return Setting(
        name,
        basis,
        chain,
        sources=tuple(reason.source for reason in chain if reason.source),
        band=figure if is_band else None,
        value=None if is_band else figure,
        unit=unit,
        alternatives=alternatives,
        text=text,
    )


def _around(start, unit, share=0.12):
    return Band(start * (1 - share), start, start * (1 + share), unit)


def _tig(request, family):
    amps = 40.0 * min(request.thickness_mm, 7.0) + 10
    is_ac = family in ("aluminium", "magnesium")
    yield _setting(
        "current",
        _around(amps, "A"),
        Basis.PRINTED,
        Reason(
            f"{amps / 1.08:.0f} A for a butt in {request.thickness_mm:g} mm, between two rows of the table"
        ),
        Reason("the joint takes more of the arc than a butt", 1.08),
        Reason("flat, where the table's rows were welded", 1.0),
        Reason("an unhurried hand travels slower, so the start lies in the lower half of the band", 0.97),
    )
    yield _setting("machine_maximum", _around(amps * 1.25, "A", 0.06), Basis.PRACTICE)
    yield _setting("polarity", "AC" if is_ac else "DCEN")
    if is_ac:
        yield _setting("ac_frequency", Band(80, 100, 120, "Hz"), Basis.PRACTICE)
        yield _setting("electrode_negative", Band(65, 70, 75, "percent"), Basis.QUOTED)
    yield _setting(
        "tungsten_type",
        "WLa20",
        text="blue band",
        alternatives=(Choice("WCe20", "holds its point on small currents"),),
    )
    yield _setting("tungsten_diameter", 2.4, unit="mm", alternatives=(Choice(1.6, "below 90 A"),))
    yield _setting("tip", "30 degrees, flat 0.25 mm", Basis.RECALLED)
    yield _setting(
        "filler_metal",
        FILLERS.get(family, "ER70S-2"),
        alternatives=(Choice("ER4043", "flows better, greys when anodised"),),
    )
    yield _setting("filler_diameter", 2.4, unit="mm")
    yield _setting("cup", 7.0, unit="1")
    yield _setting("gas_lens", request.joint is Joint.OUTSIDE_CORNER, Basis.PRACTICE)
    yield _setting("stick_out", Band(5, 6, 9, "mm"), Basis.PRACTICE)
    yield _setting("pre_flow", Band(0.3, 0.5, 1.0, "s"), Basis.PRACTICE)
    yield _setting("post_flow", Band(6, 8, 12, "s"), Basis.PRACTICE)
    if not is_ac:
        yield _setting("backing", "argon purge behind the joint", Basis.PRACTICE)


def _mig(request, family):
    yield _setting("wire_feed", _around(2.5 + request.thickness_mm, "m/min", 0.15), Basis.RECALLED)
    yield _setting("voltage", _around(16 + request.thickness_mm / 2, "V", 0.05), Basis.RECALLED)
    yield _setting("current", _around(35 * request.thickness_mm + 20, "A", 0.15), Basis.DERIVED)
    yield _setting("polarity", "DCEP")
    yield _setting("transfer", "short-circuit")
    yield _setting("wire", FILLERS.get(family, "ER70S-6"))
    yield _setting("wire_diameter", request.wire_diameter_mm or 0.8, unit="mm")
    yield _setting("tip_to_work", Band(8, 10, 12, "mm"), Basis.PRACTICE)
    if request.joint is Joint.PLUG:
        yield _setting("plug_hole", Band(5, 6.4, 8, "mm"), Basis.PRACTICE)
        yield _setting("plug_time", Band(1, 1.5, 2, "s"), Basis.RECALLED)


def _common(request):
    yield _setting(
        "shielding_gas",
        "I1" if request.process is Process.TIG else "M21",
        text="argon" if request.process is Process.TIG else "argon with 18 % carbon dioxide",
    )
    yield _setting("gas_flow", Band(7, 8.5, 10, "L/min"))
    yield _setting("filter_shade", Band(10, 11, 12, "1"))
    yield _setting("preheat", "none", Basis.PRACTICE)
    yield _setting("tacks", "every 40 mm, 5 mm long, ends first, then halves", Basis.PRACTICE)
    yield _setting("travel_speed", Band(2.0, 2.8, 3.6, "mm/s"), Basis.DERIVED)
    yield _setting("passes", 1.0, unit="1")
    yield _setting("arc_voltage", Band(11, 13, 15, "V"), Basis.DERIVED)
    yield _setting("heat_input", Band(0.2, 0.3, 0.42, "kJ/mm"), Basis.DERIVED)


CADMIUM = Caution(
    "coat-cadmium",
    Severity.STOP,
    "Never heat cadmium. Its fume can kill a day later. Swap the part or have the plating stripped.",
    Basis.QUOTED,
)
TANK = Caution(
    "part-tank",
    Severity.STOP,
    "A tank that held fuel can explode when it looks empty. Leave it to someone qualified.",
    Basis.PRINTED,
)
ZINC = Caution(
    "coat-zinc", Severity.WARN, "Strip the zinc first, both faces. Extract at the arc.", Basis.QUOTED
)
OZONE = Caution("ozone", Severity.WARN, "Bright argon arcs make ozone above the plume too.", Basis.PRINTED)
FIRE = Caution(
    "fire", Severity.WARN, "Clear what can burn for 11 m around. Keep watch afterwards.", Basis.RECALLED
)
HOT = Caution("hot", Severity.NOTE, "Hot aluminium looks cold. Mark it HOT.", Basis.PRINTED)


def _cautions(request, family):
    applies = (
        (CADMIUM, Coating.CADMIUM in request.coatings),
        (TANK, request.part is Part.TANK),
        (ZINC, Coating.GALVANISED in request.coatings or request.metal == "galvanised"),
        (OZONE, family == "aluminium"),
        (FIRE, True),
        (HOT, family == "aluminium"),
    )
    return tuple(caution for caution, fits in applies if fits)


_CHECKS = (
    Check("tungsten", True, "2.4 mm tungsten carries the whole band on AC."),
    Check("cup", True, "Cup 7 covers the puddle at this current."),
    Check(
        "burn-through", False, "Close to burning through at the top of the band: keep a copper bar behind it."
    ),
)
_STEPS = (
    Step("Peel off the protective film; the oxide is under it too.", Basis.PRACTICE),
    Step("Degrease first, so that the brush stays clean.", Basis.PRINTED),
    Step("Brush with a stainless brush that has touched nothing else.", Basis.PRINTED),
    Step("Wipe the dust off with acetone and let it dry.", Basis.PRACTICE),
)

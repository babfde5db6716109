"""Cards made by hand, so that reports are tested without any advice."""

import pytest

from welds.advice.card import Card
from welds.advice.request import Coating, Joint, Process, Request
from welds.advice.setting import Caution, Check, Choice, Reason, Setting, Severity, Step
from welds.quantities.band import Band
from welds.reference.basis import Basis
from welds.reference.sources import Source


def _setting(
    name,
    figure,
    basis=Basis.PRINTED,
    *,
    unit=None,
    reasons=None,
    sources=("DOC-1",),
    alternatives=(),
    text="",
):
    is_band = isinstance(figure, Band)
    return Setting(
        name=name,
        basis=basis,
        reasons=reasons or (Reason("made up for the test", None, sources[0] if sources else None),),
        sources=tuple(sources),
        band=figure if is_band else None,
        value=None if is_band else figure,
        unit=unit,
        alternatives=tuple(alternatives),
        text=text,
    )


@pytest.fixture
def tig_card() -> Card:
    """The bait tank of the yard's boat: an invented set-up, figures chosen to exercise the reports."""
    settings = [
        _setting(
            "current",
            Band(72.4, 85.2, 98.7, "A"),
            reasons=(
                Reason("table row for a butt in 2 mm", None, "DOC-1"),
                Reason("an outside corner melts more easily", 0.93, "DOC-2"),
            ),
            sources=("DOC-1", "DOC-2"),
        ),
        _setting("machine_maximum", Band(110, 115, 125, "A"), Basis.PRACTICE, sources=()),
        _setting("polarity", "AC"),
        _setting("ac_frequency", Band(80, 100, 120, "Hz"), Basis.PRACTICE, sources=()),
        _setting("electrode_negative", Band(68, 72, 78, "percent"), Basis.QUOTED),
        _setting(
            "tungsten_type", "WLa20", text="blue band", alternatives=(Choice("WCe20", "also holds a point"),)
        ),
        _setting("tungsten_diameter", 2.4, unit="mm", alternatives=(Choice(1.6, "below 90 A"),)),
        _setting(
            "filler_metal", "ER5356", alternatives=(Choice("ER4043", "flows better, greys when anodised"),)
        ),
        _setting("filler_diameter", 1.6, unit="mm"),
        _setting("shielding_gas", "I1", text="argon"),
        _setting("gas_flow", Band(7, 8.5, 10, "L/min"), Basis.RECALLED),
        _setting("cup", 7.0, unit="1"),
        _setting("gas_lens", True, Basis.PRACTICE, sources=()),
        _setting("stick_out", Band(5, 6, 8, "mm"), Basis.PRACTICE, sources=()),
        _setting("pre_flow", Band(0.3, 0.5, 1, "s"), Basis.PRACTICE, sources=()),
        _setting("filter_shade", Band(10, 11, 12, "1")),
        _setting("travel_speed", Band(1.8, 2.5, 3.2, "mm/s"), Basis.DERIVED),
        _setting("heat_input", Band(0.3, 0.36, 0.5, "kJ/mm"), Basis.DERIVED),
    ]
    return Card(
        request=Request(Process.TIG, "5052-H32", 2.032, Joint.OUTSIDE_CORNER, coatings=(Coating.OIL,)),
        settings={setting.name: setting for setting in settings},
        checks=(
            Check("burn-through", True, "room to the burn-through speed: 40 %"),
            Check("supply", False, "the 16 A socket trips above 150 A & a long bead"),
        ),
        preparation=(
            Step("Wipe grease off first, with a rag & acetone.", Basis.PRINTED, "DOC-3"),
            Step("Brush with a clean stainless brush.", Basis.PRACTICE),
        ),
        cautions=(
            Caution(
                "chlorinated",
                Severity.STOP,
                "No chlorinated solvent near an arc: phosgene.",
                Basis.PRINTED,
                "DOC-3",
            ),
            Caution(
                "fire", Severity.WARN, "Clear <everything> that burns & keep watch.", Basis.QUOTED, "DOC-3"
            ),
            Caution("hot", Severity.NOTE, "Aluminium does not glow before it melts.", Basis.PRACTICE),
        ),
        machine="200 A AC/DC TIG, 230 V",
    )


@pytest.fixture
def mig_card() -> Card:
    """A trailer mudguard, invented as well."""
    settings = [
        _setting("wire", "ER70S-6"),
        _setting("wire_diameter", 0.8, unit="mm"),
        _setting("wire_feed", Band(4.2, 5.1, 6, "m/min"), Basis.RECALLED),
        _setting("voltage", Band(16, 17, 18, "V"), Basis.RECALLED),
        _setting("current", Band(70, 80, 92, "A"), Basis.DERIVED),
        _setting("polarity", "DCEP"),
        _setting("transfer", "short-circuit"),
        _setting("tip_to_work", Band(8, 10, 12, "mm"), Basis.QUOTED),
        _setting("gas_flow", Band(10, 12, 14, "L/min")),
        _setting("a_setting_of_next_year", 3.0, unit="mm"),
    ]
    return Card(
        request=Request(
            Process.MIG, "galvanised", 1.5, Joint.LAP, "PB", "low-carbon", 3.0, gap_mm=0.5, length_mm=250
        ),
        settings={setting.name: setting for setting in settings},
        checks=(),
        preparation=(),
        cautions=(),
        machine="160 A MIG, 230 V",
    )


@pytest.fixture
def sources() -> dict[str, Source]:
    return {
        "DOC-1": Source("DOC-1", "Handbook of joints, 2nd edition", "free", "table read"),
        "DOC-2": Source("DOC-2", "Paper on corners <draft>", "free", "abstract read"),
        "DOC-3": Source("DOC-3", "Rule on hot work & fumes", "law", "paragraph read"),
    }

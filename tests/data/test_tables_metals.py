"""The catalogue of metals, row by row."""

import pytest

from welds.reference.load import load_tables
from welds.reference.metals import Metal

METALS = load_tables().records(Metal)
EVERY_METAL = pytest.mark.parametrize("metal", METALS, ids=lambda metal: metal.id)
REQUIRED = (
    *("1100", "3003", "5005", "5052", "5083", "5086", "5454", "6061", "6063", "356", "2024", "7075"),
    *("low-carbon", "structural", "1020", "1026", "4130", "galvanised", "weathering"),
    *("304", "304L", "316", "316L", "409", "430"),
    *("copper", "silicon-bronze", "titanium-2", "magnesium-az31"),
)


def test_the_catalogue_is_complete():
    assert tuple(metal.id for metal in METALS) == REQUIRED


@EVERY_METAL
def test_the_usual_temper_is_one_of_the_accepted(metal):
    assert (metal.temper in metal.tempers) if metal.tempers else not metal.temper


@EVERY_METAL
def test_a_refusal_goes_with_class_x_and_says_what_to_do(metal):
    assert bool(metal.refusal) == (not metal.is_weldable)
    if metal.refusal:
        assert metal.alloy in metal.refusal
        assert "rivet or bolt" in metal.refusal


@EVERY_METAL
def test_density_alone_tells_the_family(metal):
    lowest, highest = {
        "magnesium": (1700, 1900),
        "aluminium": (2600, 2850),
        "titanium": (4400, 4600),
        "carbon-steel": (7750, 7900),
        "stainless": (7650, 8050),
        "copper": (8400, 9000),
    }[metal.family]
    assert lowest <= metal.density_kg_m3 <= highest


@EVERY_METAL
def test_diffusivity_is_of_the_order_textbooks_give(metal):
    """Heat spreads fast in aluminium and copper, slowly in stainless: Kou, Welding metallurgy, chapter 2."""
    diffusivity = metal.conductivity_w_mk / (metal.density_kg_m3 * metal.specific_heat_j_kgk) * 1e6  # mm2/s
    lowest, highest = {
        "aluminium": (45, 100),
        "magnesium": (40, 60),
        "copper": (10, 120),
        "carbon-steel": (9, 18),
        "stainless": (3, 8),
        "titanium": (5, 10),
    }[metal.family]
    assert lowest <= diffusivity <= highest


@EVERY_METAL
def test_carbon_is_stated_for_steels_and_for_nothing_else(metal):
    assert (metal.carbon_percent is not None) == (metal.family in ("carbon-steel", "stainless"))
    assert (metal.carbon_equivalent is not None) == (metal.family == "carbon-steel")


def test_carbon_equivalents_follow_the_iiw_formula():
    # CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15, nominal compositions of the grades
    by_id = {metal.id: metal for metal in METALS}
    for name, equivalent in (
        ("low-carbon", 0.10 + 0.45 / 6),
        ("galvanised", 0.08 + 0.35 / 6),
        ("structural", 0.20 + 0.90 / 6),
        ("1020", 0.20 + 0.45 / 6),
        ("1026", 0.25 + 0.75 / 6),
        ("4130", 0.30 + 0.50 / 6 + (0.95 + 0.20) / 5),
        ("weathering", 0.12 + 1.0 / 6 + (0.52 + 0.06) / 5 + (0.33 + 0.30) / 15),
    ):
        assert by_id[name].carbon_equivalent == pytest.approx(equivalent, abs=0.0055)


def test_alloys_of_one_family_differ():
    """A row copied for another alloy would give both the same answer."""
    seen = [
        (metal.conductivity_w_mk, metal.specific_heat_j_kgk, metal.solidus_c, metal.liquidus_c)
        for metal in METALS
        if metal.family == "aluminium"
    ]
    assert len(set(seen)) == len(seen)

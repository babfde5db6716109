"""Properties of near-pure metals and mixtures against two general libraries of the elements.

periodictable 2.1.0 (densities and masses) and mendeleev 1.3.0 (melting points, conductivities, specific
heats, heats of fusion). Both libraries collect their values from handbooks of chemistry and physics.

The catalogue takes no figure from periodictable. From mendeleev [PY-MEND] it takes one, the specific heat
of titanium, which is therefore only a check that it was copied right; its latent heats come from a third
library.
"""

from functools import cache

import periodictable
import pytest

from welds.reference.load import load_tables
from welds.reference.metals import Metal, find_metal

BASE = {
    "aluminium": "Al",
    "magnesium": "Mg",
    "carbon-steel": "Fe",
    "stainless": "Fe",
    "copper": "Cu",
    "titanium": "Ti",
}
TABLES = load_tables()
METALS = TABLES.records(Metal)
NEAR_PURE = {"1100": "Al", "copper": "Cu", "titanium-2": "Ti", "low-carbon": "Fe"}


@cache
def element(symbol: str):
    """Ask mendeleev; where a release of Python has to do without it, the densities are still compared."""
    return pytest.importorskip("mendeleev").element(symbol)


def density(symbol: str) -> float:
    return periodictable.elements.symbol(symbol).density * 1000.0


def melting_point_c(symbol: str) -> float:
    return element(symbol).melting_point - 273.15


@pytest.mark.parametrize(("metal", "symbol"), NEAR_PURE.items())
def test_density_of_near_pure_metals(metal, symbol):
    # up to 1 % of alloying, and 1 % between one handbook and the next
    assert find_metal(TABLES, metal).density_kg_m3 == pytest.approx(density(symbol), rel=0.01)


@pytest.mark.parametrize(
    ("metal", "parts"),
    # nominal compositions in percent; what is left is the base metal
    [
        ("3003", {"Mn": 1.2, "Cu": 0.12, "Fe": 0.5}),
        ("5005", {"Mg": 0.8, "Fe": 0.4}),
        ("5052", {"Mg": 2.5, "Cr": 0.25, "Fe": 0.2}),
        ("5083", {"Mg": 4.5, "Mn": 0.7, "Cr": 0.15, "Fe": 0.2}),
        ("5086", {"Mg": 4.0, "Mn": 0.45, "Cr": 0.15, "Fe": 0.2}),
        ("5454", {"Mg": 2.7, "Mn": 0.75, "Cr": 0.12, "Fe": 0.2}),
        ("6061", {"Mg": 1.0, "Si": 0.6, "Cu": 0.28, "Cr": 0.2, "Fe": 0.3}),
        ("6063", {"Mg": 0.7, "Si": 0.4, "Fe": 0.2}),
        ("356", {"Si": 7.0, "Mg": 0.35}),
        ("2024", {"Cu": 4.4, "Mg": 1.5, "Mn": 0.6}),
        ("7075", {"Zn": 5.6, "Mg": 2.5, "Cu": 1.6, "Cr": 0.23}),
        ("magnesium-az31", {"Al": 3.0, "Zn": 1.0}),
        ("304", {"Cr": 18.5, "Ni": 9.0, "Mn": 1.5}),
        ("430", {"Cr": 16.5}),
        ("409", {"Cr": 11.0}),
    ],
)
def test_density_of_alloys_is_that_of_their_mixture(metal, parts):
    """Volumes are added up; dissolving shifts the sum by up to about 1.5 %."""
    found = find_metal(TABLES, metal)
    parts = {BASE[found.family]: 100.0 - sum(parts.values()), **parts}
    mixture = 100.0 / sum(percent / density(symbol) for symbol, percent in parts.items())
    assert found.density_kg_m3 == pytest.approx(mixture, rel=0.015)


@pytest.mark.parametrize("metal", METALS, ids=lambda metal: metal.id)
def test_alloys_melt_below_their_base_metal(metal):
    ceiling = melting_point_c(BASE[metal.family])
    assert metal.solidus_c <= metal.liquidus_c <= ceiling + 1.0  # one degree for rounding


@pytest.mark.parametrize(("metal", "symbol"), NEAR_PURE.items())
def test_near_pure_metals_melt_close_to_the_element(metal, symbol):
    # 1 % of alloying takes a few degrees off; the casting formulas for steel about 13
    assert find_metal(TABLES, metal).liquidus_c == pytest.approx(melting_point_c(symbol), abs=15.0)


@pytest.mark.parametrize("metal", METALS, ids=lambda metal: metal.id)
def test_alloying_never_adds_conductivity(metal):
    assert metal.conductivity_w_mk < element(BASE[metal.family]).thermal_conductivity


def test_conductivity_of_commercially_pure_aluminium():
    # 99 % aluminium, cold rolled: about a tenth below the element
    pure = element("Al").thermal_conductivity
    assert find_metal(TABLES, "1100").conductivity_w_mk == pytest.approx(pure, rel=0.10)


@pytest.mark.parametrize(("metal", "symbol"), NEAR_PURE.items())
def test_specific_heat_of_near_pure_metals(metal, symbol):
    pure = element(symbol).specific_heat_capacity * 1000.0
    assert find_metal(TABLES, metal).specific_heat_j_kgk == pytest.approx(pure, rel=0.025)


@pytest.mark.parametrize(("metal", "symbol"), [("1100", "Al"), ("copper", "Cu"), ("low-carbon", "Fe")])
def test_heat_of_fusion_of_near_pure_metals(metal, symbol):
    # the two libraries differ by up to 2 % on copper
    found = element(symbol)
    pure = found.fusion_heat / found.atomic_weight * 1e6
    assert find_metal(TABLES, metal).latent_heat_j_kg == pytest.approx(pure, rel=0.025)


def test_the_quarrel_about_titanium_is_told():
    """Libraries differ by a third on its heat of fusion; the row gives one value and names the other."""
    found = element("Ti")
    other = found.fusion_heat / found.atomic_weight * 1e3
    metal = find_metal(TABLES, "titanium-2")
    assert metal.latent_heat_j_kg / 1e3 < 0.8 * other
    assert f"{other:.1f} kJ/kg" in metal.note

"""Alloys against their family, by the textbook's balance of a thin plate worked out apart [WELLS-1952]."""

from math import exp, log

import pytest

from welds.advice.alloy import build_alloy_factors
from welds.reference.metals import Metal


@pytest.fixture(scope="module")
def factors(tables):
    return build_alloy_factors(tables)


@pytest.fixture(scope="module")
def metals(tables):
    return {metal.id: metal for metal in tables.records(Metal)}


def power_w(metal: Metal) -> float:
    """8 k dT d (1/5 + v w rho c / 4 k) for 5 mm melted in 2 mm sheet at 3 mm/s, SI units throughout."""
    k, rise = metal.conductivity_w_mk, metal.liquidus_c - 20.0
    swept = 0.003 * 0.005 * metal.density_kg_m3 * metal.specific_heat_j_kgk / (4.0 * k)
    return 8.0 * k * rise * 0.002 * (0.2 + swept)


@pytest.mark.parametrize(
    ("one", "other"), [("1100", "5052"), ("6061", "5083"), ("304", "316"), ("low-carbon", "4130")]
)
def test_two_alloys_differ_by_a_third_of_what_the_balance_says(factors, metals, one, other):
    """A third in the sense of an exponent: the cube root of the ratio of powers."""
    by_hand = (power_w(metals[one]) / power_w(metals[other])) ** (1.0 / 3.0)
    assert factors[one] / factors[other] == pytest.approx(by_hand)


def test_a_family_is_its_own_measure(factors, metals):
    """All aluminium together is one; of stainless the austenitic alloys alone: theirs are the schedules."""
    for of_family in (
        [metal for metal in metals.values() if metal.family == "aluminium" and metal.id in factors],
        [metal for metal in metals.values() if (metal.family, metal.group) == ("stainless", "austenitic")],
    ):
        logs = [log(factors[metal.id]) for metal in of_family]
        assert exp(sum(logs) / len(logs)) == pytest.approx(1.0)


def test_pure_aluminium_takes_more_than_its_alloys(factors):
    """It conducts best and melts last of all."""
    assert factors["1100"] > 1.03 > factors["6061"]
    assert factors["5083"] < factors["5052"] < factors["1100"]
    assert all(0.8 < each < 1.25 for each in factors.values())

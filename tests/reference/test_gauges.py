"""From a gauge number to a thickness."""

import pytest

from welds.errors import InputError
from welds.reference.gauges import gauge_thickness_mm, gauges_of
from welds.reference.metals import find_metal


@pytest.mark.parametrize(
    ("metal", "thickness_in"),
    # the same number is a different sheet in each system; decimals as common sheet charts print them
    [("low-carbon", 0.0747), ("galvanised", 0.0785), ("304", 0.0781), ("5052", 0.0641), ("1026", 0.083)],
)
def test_fourteen_gauge_by_the_metals_own_system(tables, metal, thickness_in):
    system = find_metal(tables, metal).gauge_system
    assert gauge_thickness_mm(tables, system, 14) == pytest.approx(thickness_in * 25.4, abs=0.0013)


def test_a_gauge_outside_the_table_names_the_nearest(tables):
    with pytest.raises(InputError, match="gauge: 5 is not usable; allowed: GSG 8 to 30; nearest: 8"):
        gauge_thickness_mm(tables, "GSG", 5)


def test_an_unknown_system_names_the_known(tables):
    with pytest.raises(InputError, match="AWG, BWG, GSG, MSG, USG"):
        gauge_thickness_mm(tables, "SWG", 14)


def test_thickest_first(tables):
    thicknesses = [gauge.thickness_mm for gauge in gauges_of(tables, "MSG")]
    assert thicknesses == sorted(thicknesses, reverse=True)

"""The gauge table against itself and against the formulas that make the systems."""

from itertools import pairwise

import pytest

from welds.reference.gauges import gauges_of
from welds.reference.load import load_tables

TABLES = load_tables()
ROWS = TABLES.table("gauges").rows
# Ounces per square foot by gauge number, the weights of 15 USC 206, which the steel gauges kept.
WEIGHTS = "160 150 140 130 120 110 100 90 80 70 60 50 45 40 36 32 28 24 22 20 18 16 14 12 11 10 9 8"
OUNCES = {3 + step: float(weight) for step, weight in enumerate(WEIGHTS.split(" "))}
POUNDS_PER_SQUARE_FOOT_OF_ONE_INCH = 41.82  # steel with the allowance of the manufacturers' gauge
ZINC_OUNCES = 2.5  # allowance for the coating of galvanised sheet


def row_id(row):
    return f"{row['system']}-{row['gauge']}"


@pytest.mark.parametrize("row", ROWS, ids=row_id)
def test_millimetres_agree_with_inches(row):
    # AWG inches are rounded to four decimals, its millimetres come from the unrounded formula
    allowed = 0.00005 * 25.4 + 0.00005 if row["system"] == "AWG" else 0.00006
    assert row["thickness_mm"] == pytest.approx(row["thickness_in"] * 25.4, abs=allowed)


@pytest.mark.parametrize("row", [row for row in ROWS if row["system"] == "AWG"], ids=row_id)
def test_awg_is_a_geometric_scale(row):
    # ASTM B258: 0.0050 in at gauge 36 and 0.4600 in at 0000, thirty-nine equal ratios between
    inches = 0.005 * 92.0 ** ((36 - row["gauge"]) / 39.0)
    assert row["thickness_in"] == pytest.approx(inches, abs=0.00006)
    assert row["thickness_mm"] == pytest.approx(inches * 25.4, abs=0.00006)


@pytest.mark.parametrize("row", [row for row in ROWS if row["system"] in ("MSG", "GSG")], ids=row_id)
def test_steel_gauges_are_weights(row):
    ounces = OUNCES[row["gauge"]] + (ZINC_OUNCES if row["system"] == "GSG" else 0.0)
    inches = ounces / 16.0 / POUNDS_PER_SQUARE_FOOT_OF_ONE_INCH
    assert row["thickness_in"] == pytest.approx(inches, abs=0.0001)


@pytest.mark.parametrize("system", ["MSG", "GSG", "USG", "AWG", "BWG"])
def test_a_scale_has_no_gap_and_only_gets_thinner(system):
    gauges = gauges_of(TABLES, system)
    assert [gauge.gauge for gauge in gauges] == list(range(gauges[0].gauge, gauges[-1].gauge + 1))
    assert all(thick.thickness_mm > thin.thickness_mm for thick, thin in pairwise(gauges))


def test_every_metal_with_a_gauge_system_has_its_gauges():
    for row in TABLES.table("metals").rows:
        if row["gauge_system"]:
            assert gauges_of(TABLES, row["gauge_system"])

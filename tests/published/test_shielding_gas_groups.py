"""Groups of shielding gases.

ISO 14175:1997, Table 2, read in the national edition [DSTU_ISO_14175_T2]: group, shares in percent of
volume. A share is printed as "> 0 to 5", so it lies above the lower limit and up to the upper one. The
edition of 2008 [ISO_14175_2008_MEM] is recalled, not read; it parts M21 of 1997 into M20 (5 to 15 % CO2)
and M21 (15 to 25 %), and starts its lowest bands at 0.5 %.
"""

from itertools import combinations

import pytest

from welds.reference.basis import Basis
from welds.reference.shielding import Gas

# code: base gas, {added gas: (above, up to)}
PRINTED_1997 = {
    "R1": ("argon", {"hydrogen": (0, 15)}),
    "R2": ("argon", {"hydrogen": (15, 35)}),
    "I1": ("argon", {}),
    "I2": ("helium", {}),
    "I3": ("argon", {"helium": (0, 95)}),
    "M11": ("argon", {"co2": (0, 5), "hydrogen": (0, 5)}),
    "M12": ("argon", {"co2": (0, 5)}),
    "M13": ("argon", {"o2": (0, 3)}),
    "M14": ("argon", {"co2": (0, 5), "o2": (0, 3)}),
    "M21": ("argon", {"co2": (5, 25)}),
    "M22": ("argon", {"o2": (3, 10)}),
    "M23": ("argon", {"co2": (0, 5), "o2": (3, 10)}),
    "M24": ("argon", {"co2": (5, 25), "o2": (0, 8)}),
    "M31": ("argon", {"co2": (25, 50)}),
    "M32": ("argon", {"o2": (10, 15)}),
    "M33": ("argon", {"co2": (5, 50), "o2": (5, 15)}),
    "C1": ("carbon-dioxide", {}),
    "C2": ("carbon-dioxide", {"o2": (0, 30)}),
    "F1": ("nitrogen", {"hydrogen": (0, 50)}),
    "F2": ("nitrogen", {}),
}

ADDED = ("co2", "o2", "helium", "hydrogen", "nitrogen")


def shares(row):
    return {
        gas: (row[f"{gas}_from_percent"], row[f"{gas}_to_percent"])
        for gas in ADDED
        if row[f"{gas}_to_percent"] is not None
    }


def groups(tables, edition):
    return {row["code"]: row for row in tables.table("gas_groups").rows if row["edition"] == edition}


def test_the_edition_of_1997_in_full(tables):
    found = groups(tables, "1997")
    assert {code: (row["base"], shares(row)) for code, row in found.items()} == PRINTED_1997
    assert {row["basis"] for row in found.values()} == {Basis.PRINTED}


def test_the_edition_of_2008_says_that_it_is_recalled(tables):
    found = groups(tables, "2008")
    assert {row["basis"] for row in found.values()} == {Basis.RECALLED}
    assert {"I1", "I2", "I3", "M12", "M13", "M20", "M21", "M22", "C1", "N1", "R1", "O1"} <= set(found)


def group_of(gas: Gas, found) -> list[str]:
    """Groups whose limits hold every share of the mix; helium may stand in for the argon of an M group."""
    if gas.argon_percent == 100:
        return ["I1"]
    if gas.helium_percent == 100:
        return ["I2"]
    if gas.co2_percent == 100:
        return ["C1"]
    present = {"co2": gas.co2_percent, "o2": gas.o2_percent, "helium": gas.helium_percent}
    active = {name: share for name, share in present.items() if share and name != "helium"}
    wanted = active or {"helium": gas.helium_percent}
    codes = []
    for code, row in found.items():
        limits = shares(row)
        if row["base"] == "argon" and set(limits) == set(wanted):
            within = (
                low < share <= high or share == low == 0.5
                for share, (low, high) in ((share, limits[name]) for name, share in wanted.items())
            )
            if all(within):
                codes.append(code)
    return codes


@pytest.mark.parametrize(("edition", "column"), [("1997", "iso_code_1997"), ("2008", "iso_code")])
def test_every_gas_lies_in_the_group_it_is_given(tables, edition, column):
    found = groups(tables, edition)
    for gas, row in zip(tables.records(Gas), tables.table("gases").rows, strict=True):
        assert group_of(gas, found) == [row[column]], gas.id


def test_shares_close_and_inert_means_no_oxygen(tables):
    for gas in tables.records(Gas):
        assert gas.argon_percent + gas.helium_percent + gas.co2_percent + gas.o2_percent == 100, gas.id
        assert gas.is_inert is (gas.co2_percent == 0 and gas.o2_percent == 0), gas.id


@pytest.mark.parametrize(("edition", "overlapping"), [("1997", [("M24", "M33")]), ("2008", [])])
def test_groups_of_the_same_gases_do_not_overlap_but_where_the_copy_prints_it(tables, edition, overlapping):
    """M33 of 1997 is printed with oxygen from 5 %, where M24 reaches 8 %; the row's note says so."""
    rows = list(groups(tables, edition).values())
    found = []
    for one, other in combinations(rows, 2):
        a, b = shares(one), shares(other)
        same_gases = one["base"] == other["base"] and set(a) == set(b)
        if same_gases and not any(a[gas][1] <= b[gas][0] or b[gas][1] <= a[gas][0] for gas in a):
            found.append((one["code"], other["code"]))
    assert found == overlapping
    for _, code in overlapping:
        assert "overlaps" in groups(tables, edition)[code]["note"]

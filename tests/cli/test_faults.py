"""`welds faults`: the list, one fault with what it changes, and slips in one line."""

import json

import pytest

CORNER = ("--process", "tig", "--metal", "5052", "--thickness", "2mm", "--joint", "outside-corner")


def test_the_list_says_what_each_looks_like(welds):
    found = welds("faults", *CORNER)
    assert found.code == 0
    assert any(line.startswith("undercut ") and "groove" in line for line in found.out.splitlines())
    assert "wire-feed-trouble" not in found.out


def test_a_fault_tells_the_change_on_this_card(welds):
    found = welds("faults", "undercut", *CORNER)
    assert found.code == 0
    assert "[Current: " in found.out
    assert "ISO 6520-1: 5011" in found.out


def test_json_names_setting_and_direction(welds):
    found = welds("faults", "burn through", *CORNER, "--json")
    remedies = json.loads(found.out)["remedies"]
    assert ("current", "down") in {(each["setting"], each["direction"]) for each in remedies}
    assert all(each["basis"] and each["source"] for each in remedies)


def test_a_number_of_the_standard_is_a_fault_too(welds):
    assert welds("faults", "510", *CORNER).out.startswith("Burn through")


@pytest.mark.parametrize(
    ("given", "said"),
    [
        (("undercutt", *CORNER), "undercut"),
        (("wire-feed-trouble", *CORNER), "with tig"),
        (("undercut",), "process"),
        (("undercut", *CORNER[:-1], "corner"), "joint"),
    ],
)
def test_slips(welds, given, said):
    found = welds("faults", *given)
    assert found.code == 2
    assert found.out == ""
    assert said in found.err
    assert len(found.err.splitlines()) == 1

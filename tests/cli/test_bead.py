"""`welds bead`: the contract's JSON, words for people, and every slip in one line."""

import pytest

ASKED = (
    *("bead", "--process", "tig", "--metal", "low-carbon", "--thickness", "2 mm", "--joint", "butt"),
    *("--current", "110", "--travel", "4 mm/s"),
)


def without(name):
    place = ASKED.index(name)
    return ASKED[:place] + ASKED[place + 2 :]


def test_json_is_the_contracts(welds):
    found = welds(*ASKED, "--json").json
    assert found["schema"] == "welds.bead/1"
    for name in (
        "fused_width_mm",
        "fused_depth_mm",
        "burn_through_margin",
        "heat_input_kj_mm",
        "cooling_t85_s",
    ):
        assert isinstance(found[name], float)
    assert found["full_penetration"] is True
    roles = {line["role"] for line in found["picture"]["section"]}
    assert roles == {"melting", "affected"}
    low, middle, high = found["bands"]["fused_width_mm"]
    assert low <= middle == found["fused_width_mm"] <= high


def test_metals_other_than_steel_have_no_cooling_time(welds):
    found = welds(
        "bead",
        "--process=tig",
        "--metal=5052",
        "--thickness=2mm",
        "--joint=butt",
        "--current=90",
        "--travel=4 mm/s",
        "--json",
    ).json
    assert "cooling_t85_s" not in found


def test_inches_in_and_out_and_the_same_answer(welds):
    inch = (*without("--travel"), "--travel", "9.4488 ipm")
    assert welds(*inch, "--json").json["fused_width_mm"] == pytest.approx(
        welds(*ASKED, "--json").json["fused_width_mm"], abs=0.02
    )
    assert " in (" in welds(*inch, "--units", "inch").out


def test_text_says_how_sure_it_is(welds):
    out = welds(*ASKED).out
    assert "give or take" in out
    assert "falls out" in out


@pytest.mark.parametrize(
    ("arguments", "code", "words"),
    [
        (without("--current"), 2, "current"),
        (without("--travel"), 2, "travel"),
        ((*without("--current"), "--current", "many"), 2, "current"),
        ((*without("--current"), "--current", "-5"), 2, "current"),
        ((*without("--current"), "--current", "1e9"), 2, "current"),
        ((*without("--travel"), "--travel", "0"), 2, "travel"),
        ((*ASKED, "--backing", "barr"), 2, "nearest: bar"),
        ((*ASKED, "--frequency", "120 Hz"), 2, "AC"),
        ((*ASKED, "--preheat", "2000 F"), 2, "preheat"),
        ((*without("--metal"), "--metal", "2024"), 3, "2024"),
    ],
)
def test_slips_are_one_line(welds, arguments, code, words):
    result = welds(*arguments)
    assert result.code == code
    assert words in result.complaint

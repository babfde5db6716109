"""`welds blank`: flats, least radii, test bends, drawings."""

import io

import pytest

CHANNEL = (
    "blank",
    "--metal",
    "low-carbon",
    "--thickness",
    "1 mm",
    "--radius",
    "1 mm",
    "--legs",
    "50,40,30 mm",
)
ANGLE = ("blank", "--legs", "60,60", "--angles", "90")


def test_flat_length_of_a_channel(welds):
    """DIN 6935 with r 1 and s 1 takes 1.919 mm off for each right angle (table books print 1.9)."""
    answer = welds(*CHANNEL, "--angles", "90,90", "--json").json
    assert answer["flat_length_mm"] == pytest.approx(120 - 2 * 1.919, abs=1e-3)
    assert [bend["k"] for bend in answer["bends"]] == [pytest.approx(0.325)] * 2
    for bend in answer["bends"]:
        assert bend["allowance_mm"] + bend["deduction_mm"] == pytest.approx(4.0)


def test_printed_rule_of_thumb_stands_beside_it(welds):
    """The drawing textbook prints 116 mm for this very channel."""
    methods = welds(*CHANNEL, "--angles", "90,90", "--json").json["methods"]
    assert {each["method"]: each["flat_length_mm"] for each in methods}["drawing school's rule"] == 116.0


def test_units_of_the_thickness_count_for_bare_lengths(welds):
    inches = ("--thickness", "0.040 in", "--radius", "0.16", "--legs", "1,2,1", "--angles", "90,90")
    answer = welds("blank", "--metal", "2024-T3", *inches, "--json").json
    assert answer["legs_mm"] == pytest.approx([25.4, 50.8, 25.4])
    assert answer["minimum_radius_mm"] == pytest.approx(4 * 1.016)  # up to 1/16 in: four thicknesses
    assert answer["ok"] is True


def test_too_tight_a_radius_is_said_with_what_annealing_costs(welds):
    result = welds(
        "blank",
        "--metal",
        "6061-T6",
        "--thickness",
        "2 mm",
        "--radius",
        "1",
        "--legs",
        "40,40",
        "--angles",
        "90",
    )
    assert "NOT OK: 1.0 mm asked" in result.out
    assert "from about 276 to 55 MPa" in " ".join(result.out.split())


def test_a_sheet_no_table_has_is_neither_ok_nor_not(welds):
    answer = welds(*ANGLE, "--metal", "copper", "--thickness", "1 mm", "--radius", "1", "--json").json
    assert (answer["ok"], answer["minimum_radius_mm"]) == (None, None)


def test_stainless_the_table_advises_against(welds):
    answer = welds(*ANGLE, "--metal", "304", "--thickness", "3 mm", "--radius", "9", "--json").json
    assert answer["ok"] is False
    assert "advises against" in " ".join(answer["notes"])


def test_the_k_of_a_test_bend_is_kept_for_the_brake(welds):
    part = (
        "blank",
        "--metal",
        "5052",
        "--thickness",
        "2 mm",
        "--radius",
        "3",
        "--legs",
        "40,50",
        "--angles",
        "90",
    )
    strip = "flat=100 mm; legs=52 x 52; radius=3"
    first = welds(*part, "--test-bend", strip, "--brake", "green brake", "--json").json
    again = welds(*part, "--brake", "green brake", "--json").json
    assert first["bends"][0]["k"] == pytest.approx(again["bends"][0]["k"], abs=1e-4)
    # by hand: 100 = 104 - 2 x 5 + allowance, so allowance 6, K = (6 / (pi / 2) - 3) / 2
    assert first["bends"][0]["k"] == pytest.approx(0.40986, abs=1e-5)
    refused = welds(*part[:4], "1 mm", *part[5:], "--brake", "green brake")
    assert refused.code == 2
    assert "5052-H32 2 mm" in refused.complaint


def test_a_minus_bends_the_other_way(welds):
    answer = welds(*CHANNEL, "--angles", "-90,90", "--json").json
    assert [bend["angle_deg"] for bend in answer["bends"]] == [-90.0, 90.0]


def test_dxf_and_svg_are_at_full_size(welds, tmp_path):
    import ezdxf
    from ezdxf import bbox

    welds(*CHANNEL, "--angles", "90,90", "--width", "80 mm", "--dxf", str(tmp_path / "a.dxf"))
    text = (tmp_path / "a.dxf").read_text(encoding="utf-8")
    document = ezdxf.read(io.StringIO(text))
    assert document.units == ezdxf.units.MM
    outline = bbox.extents(document.modelspace().query('LWPOLYLINE[layer=="outline"]')).size
    assert (outline.x, outline.y) == (pytest.approx(116.1626, abs=1e-3), pytest.approx(80.0))
    assert len(document.modelspace().query('LWPOLYLINE[layer=="bend"]')) == 2
    svg = welds(*CHANNEL, "--angles", "90,90", "--svg").out
    assert 'width="' in svg
    assert svg.split('width="')[1].split('"')[0].endswith("mm")


@pytest.mark.parametrize(
    ("words", "complaint"),
    [
        (("--angles", "90"), "one leg more than there are angles"),
        (("--angles", "90,200"), "up to 170"),
        (("--angles", "90,90", "--dims", "outsid"), "nearest: outside"),
        (("--angles", "90,90", "--k", "0.9"), "0.2 to 0.6"),
        (("--angles", "90,90", "--k", "lots"), "a number such as 0.42"),
        (("--angles", "90,90", "--test-bend", "flat=100"), "missing: legs, radius"),
        (
            ("--angles", "90,90", "--test-bend", "flat=100; legs=60 x 60; radius=1"),
            "measure strip and legs again",
        ),
        (("--angles", "90,90", "--brake", "none"), "one that a test bend was kept for"),
        ((), "--angles"),
    ],
)
def test_what_cannot_be_used_is_refused_in_one_line(welds, words: tuple[str, ...], complaint: str):
    result = welds(*CHANNEL, *words)
    assert result.code == 2
    assert complaint in result.complaint

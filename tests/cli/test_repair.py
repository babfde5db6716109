"""`welds repair`: what is filled, what is patched, what is refused."""

from itertools import pairwise

import pytest

REGION = ("--holes", "3 mm x 2", "--region", "50x50")
SHEET = ("repair", "--metal", "low-carbon", "--thickness", "1.2 mm")


def test_a_few_small_holes_far_apart_are_filled(welds):
    answer = welds(*SHEET, "--holes", "3 mm x 4", "--region", "200x150", "--json").json
    assert answer["choice"] == "plug"
    assert answer["plug"]["hole_mm"] == 4.0  # drilled a millimetre over, to bright metal
    # four holes in 200 x 150: 86.6 mm between middles on average
    assert answer["plug"]["pitch_mm"] == pytest.approx((200 * 150 / 4) ** 0.5, abs=0.01)


def test_many_holes_close_together_are_patched(welds):
    answer = welds(*SHEET, "--holes", "3 mm x 60", "--region", "100 x 80 mm", "--json").json
    assert answer["choice"] == "patch"
    against = [reason["text"] for reason in answer["reasons"] if reason["against"] == "plug"]
    assert any("apart" in text for text in against)


def test_a_hole_over_a_quarter_inch_is_patched(welds):
    """TM 55-8115-203-23&P fills holes of the panels up to 1/4 in only."""
    fits = welds(*SHEET, "--holes", "5.3 mm x 1", "--region", "60x60", "--json").json
    large = welds(*SHEET, "--holes", "5.4 mm x 1", "--region", "60x60", "--json").json
    assert (fits["choice"], large["choice"]) == ("plug", "patch")


def test_seam_of_a_patch_with_round_corners(welds):
    """120 x 100 with corners of 12 mm: four straight sides and one whole circle."""
    patch = welds(*SHEET, "--holes", "9 mm x 2", "--region", "100x80", "--json").json["patch"]
    assert patch["cut_out_mm"] == [120.0, 100.0]
    assert patch["blank_mm"] == [121.0, 101.0]
    assert patch["seam_mm"] == pytest.approx(2 * (96 + 76) + 2 * 3.14159265 * 12, abs=0.01)
    gaps = sorted(patch["tacks"]["places_mm"])
    assert max(b - a for a, b in pairwise(gaps)) <= 38.0  # the table's widest for this sheet


def test_sheet_that_is_thin_all_round_is_not_plugged(welds):
    answer = welds(
        *SHEET,
        "--measured",
        "0.7 mm",
        "--holes",
        "3 mm x 2",
        "--region",
        "100x80",
        "--behind",
        "sound",
        "--json",
    ).json
    assert answer["choice"] == "patch"


def test_sheet_too_thin_to_weld_or_half_the_panel_is_replaced(welds):
    words = ("--holes", "3 mm x 2", "--region", "200x150", "--json")
    assert welds(*SHEET, "--measured", "0.4 mm", *words).json["choice"] == "replace"
    assert welds(*SHEET, *words, "--panel", "300 x 200 mm").json["choice"] == "replace"
    assert welds(*SHEET, *words, "--panel", "900 x 700 mm").json["choice"] == "plug"


@pytest.mark.parametrize(
    "word", [("--load-bearing",), ("--part", "towing"), ("--part", "steering-suspension")]
)
def test_what_can_hurt_someone_is_refused(welds, word: tuple[str, ...]):
    result = welds(*SHEET, "--holes", "3 mm x 2", "--region", "100x80", *word)
    assert result.code == 3
    assert "qualified welder" in result.complaint


def test_the_cut_out_as_dxf_is_as_large_as_it_is_cut(welds, tmp_path):
    """Read back by the library: the outline on its layer spans 120 by 100, the ruler 100."""
    import ezdxf

    file = tmp_path / "cut.dxf"
    welds(*SHEET, "--holes", "9 mm x 2", "--region", "100x80", "--dxf", str(file))
    space = ezdxf.readfile(file).modelspace()
    (edge,) = space.query('LWPOLYLINE[layer=="outline"]')
    (ruler,) = [each for each in space.query('LWPOLYLINE[layer=="ruler"]') if each[0][1] == each[1][1]]
    for axis, length in ((0, 120.0), (1, 100.0)):
        places = [point[axis] for point in edge]
        assert max(places) - min(places) == pytest.approx(length, abs=0.1)
    assert ruler[1][0] - ruler[0][0] == pytest.approx(100.0)


def test_words_for_the_bench(welds):
    out = welds(*SHEET, "--holes", "9 mm x 2", "--region", "100x80", "--water-trap").out
    assert "Cut the patch 121.0 mm x 101.0 mm" in out
    assert "light through the seam" in " ".join(out.split())
    assert "Water stands here" in out


@pytest.mark.parametrize(
    ("words", "complaint"),
    [
        (("--holes", "3 mm", "--region", "100x80"), "diameter and number"),
        (("--holes", "0 mm x 3", "--region", "100x80"), "diameter and number"),
        (("--holes", "3 mm x 2", "--region", "100"), "two lengths with an x"),
        (("--holes", "90 mm x 2", "--region", "100x80"), "a region that the holes fit into"),
        (("--holes", "3 mm x 2", "--region", "100x80", "--behind", "soud"), "nearest: sound"),
        (("--holes", "3 mm x 2", "--region", "100x80", "--measured", "2 mm"), "at most a quarter over"),
        (("--holes", "3 mm x 2"), "--region"),
    ],
)
def test_what_cannot_be_used_is_refused_in_one_line(welds, words: tuple[str, ...], complaint: str):
    result = welds(*SHEET, *words)
    assert result.code == 2
    assert complaint in result.complaint


def test_sheet_that_no_seam_is_tabled_for_is_not_patched(welds):
    result = welds("repair", "--metal", "low-carbon", "--thickness", "200 mm", *REGION)
    assert result.code == 3
    assert "patch in low-carbon" in result.complaint


def test_cautions_come_before_the_figures(welds):
    words = ("--coating", "old-paint", "--coating", "galvanised")
    out = welds(*SHEET, *REGION, *words).out
    assert out.index("TAKE CARE") < out.index("WHY")
    answer = welds(*SHEET, *REGION, *words, "--json").json
    plain = welds(*SHEET, *REGION, "--json").json
    assert len(answer["cautions"]) > len(plain["cautions"]) > 0
    assert "zinc" in " ".join(caution["text"] for caution in answer["cautions"])
    assert welds(*SHEET, *REGION, "--coating", "galvanized-ish").code == 2

"""Requests side by side: first with invented answers, then with the advice against what the trade says."""

import csv
import io
from dataclasses import replace

import pytest

from welds.advice.advise import advise
from welds.advice.equipment import Equipment, Machine
from welds.advice.request import Hand, Joint, Process, Request
from welds.errors import NotCoveredError
from welds.quantities.band import Band
from welds.quantities.registry import convert
from welds.quantities.units import Units
from welds.report.comparison import Asked, Grounds, cautions, compare, differences, heading, notes, titles
from welds.report.comparison_rows import NOT_USED, Mark, row_groups
from welds.report.comparison_texts import (
    comparison_csv,
    comparison_html,
    comparison_markdown,
    comparison_text,
)

TO_150_HZ = Equipment(
    Machine(
        "200 A AC/DC TIG, 230 V",
        frozenset({"tig"}),
        current_min_a=5,
        current_max_a=200,
        ac_frequency_min_hz=50,
        ac_frequency_max_hz=150,
    )
)
SHEET_MM = convert(0.080, "inch", "mm")


@pytest.fixture
def answer(tig_card):
    """Invented: the tee takes 10 A more and has no lens, a plug has no card."""

    def answer(asked):
        request = asked.request
        if request.joint is Joint.PLUG:
            raise NotCoveredError("a TIG plug", "not in the tables & never will be")
        settings = dict(tig_card.settings)
        if request.joint is Joint.TEE:
            band = settings["current"].band
            settings["current"] = replace(
                settings["current"], band=Band(band.low, band.start + 10, band.high + 10, "A")
            )
            settings["gas_lens"] = replace(settings["gas_lens"], value=False)
            del settings["pre_flow"]
        return replace(tig_card, request=request, settings=settings, cautions=tig_card.cautions[:2])

    return answer


@pytest.fixture
def comparison(tig_card, answer):
    joints = (Joint.OUTSIDE_CORNER, Joint.TEE, Joint.PLUG)
    return compare([Asked(replace(tig_card.request, joint=joint)) for joint in joints], answer)


def rows_by_name(comparison, units=Units.METRIC):
    return {row.name: row for group in row_groups(comparison, units) for row in group.rows}


def test_columns_are_named_by_what_sets_them_apart(comparison):
    assert titles(comparison, Units.METRIC) == ("Outside corner", "Tee", "Plug")
    shared = heading(comparison, Units.INCH)
    assert shared.startswith("TIG, 5052-H32, 0.080 in, position PA")
    assert "corner" not in shared


def test_what_differs_is_listed_in_reading_order(comparison):
    assert differences(comparison) == ("current", "gas_lens", "pre_flow")


def test_a_refusal_is_a_column_with_its_reason(comparison):
    assert comparison.columns[2].card is None
    assert "never will be" in comparison.columns[2].problem
    assert all(row.cells[2] is None for row in rows_by_name(comparison).values())


def test_more_and_less_are_told_by_sign_distance_and_percent(comparison):
    current = rows_by_name(comparison)["current"]
    assert current.cells[0].mark is Mark.BASE
    assert current.cells[1].mark is Mark.MORE
    assert current.cells[1].change == "+10 A, +12 %"  # 95.2 over 85.2


def test_another_base_turns_the_distances_round(comparison):
    current = rows_by_name(replace(comparison, base=1))["current"]
    assert current.cells[0].mark is Mark.LESS
    assert current.cells[0].change == "-10 A, -11 %"


def test_a_refused_base_gives_way_to_the_first_answer(comparison):
    assert replace(comparison, base=2).pinned is comparison.columns[0]


def test_a_setting_that_is_not_on_the_card_says_so(comparison):
    cell = rows_by_name(comparison)["pre_flow"].cells[1]
    assert (cell.text, cell.mark, cell.change) == (NOT_USED, Mark.ABSENT, "instead of 0.5 s")


def test_what_only_rounds_differently_is_the_same_for_eyes_but_not_for_json(tig_card):
    def answer(asked):
        request = asked.request
        speed = 2.5 if request.joint is Joint.TEE else 2.504
        setting = replace(tig_card.settings["travel_speed"], band=Band(1.8, speed, 3.2, "mm/s"))
        return replace(tig_card, request=request, settings={"travel_speed": setting})

    made = compare(
        [Asked(replace(tig_card.request, joint=joint)) for joint in (Joint.TEE, Joint.LAP)], answer
    )
    assert differences(made) == ("travel_speed",)
    assert not rows_by_name(made)["travel_speed"].is_different


def test_a_caution_for_one_column_names_it(tig_card, answer):
    def one_stop(asked):
        card = answer(asked)
        return replace(
            card, cautions=card.cautions if asked.request.joint is Joint.LAP else card.cautions[1:]
        )

    asked = [Asked(replace(tig_card.request, joint=joint)) for joint in (Joint.TEE, Joint.LAP)]
    found = cautions(compare(asked, one_stop), Units.METRIC)
    assert [caution.severity.value for caution in found] == ["stop", "warn"]
    assert found[0].text.endswith("(For Lap)")
    assert "(For" not in found[1].text


def test_every_form_puts_the_cautions_before_the_figures_and_tells_the_refusal(comparison):
    for text in (
        comparison_text(comparison, Units.METRIC),
        comparison_html(comparison, Units.METRIC),
        comparison_markdown(comparison, Units.METRIC),
    ):
        assert text.index("phosgene") < text.index("85 A")
        assert "never will be" in text
        assert comparison.notice[:40] in text
        assert "Sources: DOC-1" in text
    assert "&amp; never" in comparison_html(comparison, Units.METRIC)


def test_text_can_leave_out_what_is_the_same(comparison):
    short = comparison_text(comparison, Units.METRIC, only_differences=True)
    assert "Gas lens" in short
    assert "Polarity" not in short


def test_csv_has_a_line_for_each_setting_and_column(comparison):
    lines = list(csv.DictReader(io.StringIO(comparison_csv(comparison))))
    tee = {line["setting"]: line for line in lines if line["title"] == "Tee"}
    assert (tee["current"]["start"], tee["current"]["unit"], tee["current"]["differs"]) == (
        "95.2",
        "A",
        "yes",
    )
    assert tee["polarity"]["differs"] == "no"
    assert [line["note"] for line in lines if line["title"] == "Plug"] == [comparison.columns[2].problem]


def test_the_star_is_explained(comparison):
    assert any("*" in note for note in notes(comparison))
    assert "yes*" in comparison_text(comparison, Units.METRIC)


# ------------------------------------------------------------- with the advice, against common practice


@pytest.fixture(scope="module")
def corner_and_tee(tables):
    asked = [
        Asked(Request(Process.TIG, "5052", SHEET_MM, joint), TO_150_HZ)
        for joint in (Joint.OUTSIDE_CORNER, Joint.TEE)
    ]
    return compare(asked, lambda each: advise(each.request, tables, each.equipment))


def test_frequency_of_corner_and_tee_and_why(corner_and_tee):
    """Common practice: about 100 Hz on the corner so that the full edge melts, 120 to 130 on the tee."""
    corner, tee = rows_by_name(corner_and_tee)["ac_frequency"].cells
    assert corner.line.start == "100"
    assert 120 <= float(tee.line.start) <= 130
    assert tee.mark is Mark.MORE
    words = " ".join(tee.why)
    assert "narrower arc reaches the root" in words
    assert "wider arc melts the full edge without more current" in words
    assert float(tee.line.range.split()[-1]) <= 150


def test_the_machines_limit_is_told_where_it_bites(tables):
    """Common practice: some machines stop at 150 Hz."""
    asked = [
        Asked(Request(Process.TIG, "5052", SHEET_MM, joint), TO_150_HZ)
        for joint in (Joint.OUTSIDE_CORNER, Joint.INSIDE_CORNER)
    ]
    made = compare(asked, lambda each: advise(each.request, tables, each.equipment))
    inside = rows_by_name(made)["ac_frequency"].cells[1]
    assert any("stops at 150 Hz" in why for why in inside.why)


def test_current_of_corner_and_tee_and_why(corner_and_tee):
    """Common practice: a tee takes more, one more plate draws the heat; the corner no more than a butt."""
    _corner, tee = rows_by_name(corner_and_tee)["current"].cells
    before, after = (column.card.settings["current"].band.start for column in corner_and_tee.columns)
    assert tee.mark is Mark.MORE
    assert tee.change == f"+{after - before:.0f} A, +{100 * (after / before - 1):.0f} %"
    factor = corner_and_tee.columns[1].card.settings["current"].reasons[-1].factor
    assert tee.why[0].startswith(f"T-joint: one more plate takes the heat, +{100 * (factor - 1):.0f} %")
    assert "no more current, a wider arc" in tee.why[0]


def test_lens_of_corner_and_tee_and_why(corner_and_tee):
    """Common practice: a corner falls away from the arc, argon does not pool there: use a lens."""
    corner, tee = rows_by_name(corner_and_tee)["gas_lens"].cells
    assert (corner.line.start, tee.line.start) == ("yes", "no")
    assert "argon does not pool" in " ".join(tee.why)
    assert "plates hold the argon" in " ".join(tee.why)


def test_cup_of_corner_and_tee_and_why(corner_and_tee):
    """Common practice: a larger cup with the lens, a smaller one to get into the tee."""
    corner, tee = rows_by_name(corner_and_tee)["cup"].cells
    assert int(corner.line.start) > int(tee.line.start)
    assert tee.mark is Mark.LESS
    assert "reaches into the joint" in " ".join(tee.why)
    assert "with the lens" in " ".join(tee.why)


def test_what_follows_from_the_current_says_so(corner_and_tee):
    rows = rows_by_name(corner_and_tee)
    assert any("follows current" in why for why in rows["arc_voltage"].cells[1].why)
    assert any("follows current" in why for why in rows["heat_input"].cells[1].why)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"thickness_mm": 3.175}, "3.17 mm"),
        ({"metal": "304"}, "butt in stainless"),
        ({"process": Process.MIG}, "mm wire"),
        ({"position": "PF"}, "position PF"),
        ({"hand": Hand.BRISK}, "brisk hand"),
        ({"other_thickness_mm": 5.0}, "draws heat like two pieces"),
    ],
)
def test_every_difference_of_current_has_its_reason(tables, change, words):
    base = Request(Process.TIG, "5052", SHEET_MM, Joint.TEE)
    made = compare([Asked(base), Asked(replace(base, **change))], lambda each: advise(each.request, tables))
    assert words in " ".join(rows_by_name(made)["current"].cells[1].why)


def test_no_difference_goes_without_a_reason(tables):
    base = Request(Process.TIG, "5052", SHEET_MM, Joint.BUTT)
    changes = (
        {"joint": Joint.TEE}, {"metal": "304"}, {"metal": "6061"}, {"process": Process.MIG},
        {"thickness_mm": 6.0}, {"position": "PF"}, {"hand": Hand.BRISK},
    )  # fmt: skip
    asked = [Asked(base), *(Asked(replace(base, **change)) for change in changes)]
    made = compare(asked, lambda each: advise(each.request, tables))
    for units in Units:
        for row in rows_by_name(made, units).values():
            for cell in row.cells:
                assert cell is not None
                assert bool(cell.why) == cell.is_different, (row.name, cell)


def test_machines_side_by_side(tables):
    """The same weld on a set that stops at 150 Hz and on one that is tied to the mains."""
    mains = Equipment(
        Machine("mains set", frozenset({"tig"}), ac_frequency_min_hz=50, ac_frequency_max_hz=50)
    )
    request = Request(Process.TIG, "5052", SHEET_MM, Joint.TEE)
    made = compare(
        [Asked(request, TO_150_HZ), Asked(request, mains)],
        lambda each: advise(each.request, tables, each.equipment),
    )
    assert titles(made, Units.METRIC) == ("200 A AC/DC TIG, 230 V", "mains set")
    cell = rows_by_name(made)["ac_frequency"].cells[1]
    assert cell.mark is Mark.LESS
    assert any("has 50 Hz and no other" in why for why in cell.why)


def test_columns_on_other_grounds_are_named(tig_card, answer):
    asked = [Asked(tig_card.request, grounds=grounds) for grounds in Grounds]
    assert titles(compare(asked, answer), Units.METRIC) == ("Tables alone", "Tables and log")
    mains = replace(TO_150_HZ, machine=replace(TO_150_HZ.machine, name="mains set"))
    both = [Asked(tig_card.request), Asked(tig_card.request, mains, Grounds.TABLES)]
    assert titles(compare(both, answer), Units.METRIC) == ("any machine", "mains set, tables alone")

"""The wall chart, with an answer function in place of the advice."""

import csv
import io
import json
from dataclasses import replace

import pytest

from welds.advice.request import Joint
from welds.errors import NotCoveredError
from welds.quantities.band import Band
from welds.quantities.length import parse_length
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.report.chart import THICKNESSES, cell_texts, chart_title, make_chart, problems
from welds.report.chart_texts import chart_csv, chart_html, chart_json, chart_markdown, chart_text
from welds.report.json_card import card_json

JOINTS = (Joint.BUTT, Joint.TEE, Joint.PLUG)


@pytest.fixture
def answer(tig_card):
    """Invented: 40 A a millimetre, a tee 10 A more, no plugs, nothing over 5 mm, above 4 mm from memory."""

    def answer(request):
        if request.joint is Joint.PLUG:
            raise NotCoveredError("a TIG plug", "not in the tables")
        if request.thickness_mm > 5:
            raise NotCoveredError(f"{request.thickness_mm:g} mm", "the tables end at 5 mm", "5 mm")
        amps = 40 * request.thickness_mm + (10 if request.joint is Joint.TEE else 0)
        current = replace(
            tig_card.settings["current"],
            band=Band(0.8 * amps, amps, 1.2 * amps, "A"),
            basis=Basis.RECALLED if request.thickness_mm > 4 else Basis.PRINTED,
        )
        return replace(tig_card, request=request, settings=tig_card.settings | {"current": current})

    return answer


@pytest.fixture
def chart(tig_card, answer):
    return make_chart(tig_card.request, (1.0, 2.0, 5.0, 8.0), JOINTS, answer)


def test_cells_carry_the_cards_own_current(chart) -> None:
    assert chart.thicknesses_mm == (1.0, 2.0, 5.0, 8.0)
    assert chart.joints == JOINTS
    assert chart.rows[1][1].settings["current"].band == Band(72.0, 90.0, 108.0, "A")
    assert cell_texts(chart.rows[1][1], chart.request.process, Units.METRIC) == ("90 A", "70 to 110 A")
    assert chart_title(chart) == "TIG, 5052-H32, position PA, unhurried hand"


def test_empty_cells_say_why_once(chart) -> None:
    assert cell_texts(chart.rows[0][2], chart.request.process, Units.METRIC) == ("-",)
    assert len(problems(chart)) == 2
    text = chart_text(chart, Units.METRIC)
    assert text.count("not in the tables") == 1
    assert "the tables end at 5 mm" in text


def test_figures_without_a_published_source_are_starred(chart) -> None:
    assert cell_texts(chart.rows[2][0], chart.request.process, Units.METRIC)[0] == "200 A*"
    assert "* rests on practice or memory" in chart_text(chart, Units.METRIC)


def test_empty_rows_and_columns_can_be_left_out(tig_card, answer) -> None:
    chart = make_chart(tig_card.request, (1.0, 8.0), JOINTS, answer, keeps_rows=False, keeps_columns=False)
    assert chart.thicknesses_mm == (1.0,)
    assert chart.joints == (Joint.BUTT, Joint.TEE)
    assert [len(row) for row in chart.rows] == [2]


def test_a_chart_without_any_answer_is_refused(tig_card, answer) -> None:
    with pytest.raises(NotCoveredError, match="the tables end at 5 mm"):
        make_chart(tig_card.request, (8.0, 9.0), (Joint.BUTT, Joint.PLUG), answer)


def test_cautions_come_first_and_once_stops_on_top(chart) -> None:
    text = chart_text(chart, Units.METRIC)
    assert text.count("No chlorinated solvent") == 1
    assert text.index("[ ] STOP") < text.index("TAKE CARE") < text.index("butt")
    assert " ".join(text.split()).endswith(chart.notice)


def test_columns_line_up(chart) -> None:
    rows = chart_text(chart, Units.METRIC).splitlines()
    head = next(row for row in rows if "butt" in row and "tee" in row)
    second = next(row for row in rows if row.startswith("2 mm (0.079 in)"))
    assert second.index("80 A") == head.index("butt")
    assert second.index("90 A") == head.index("tee")


def test_csv_is_tidy_and_metric(chart) -> None:
    rows = list(csv.DictReader(io.StringIO(chart_csv(chart))))
    assert len(rows) == 12
    assert rows[4] == {
        "thickness_mm": "2",
        "joint": "tee",
        "current_low_a": "72",
        "current_start_a": "90",
        "current_high_a": "108",
        "basis": "printed",
        "note": "",
    }
    assert rows[2]["current_start_a"] == ""
    assert "not in the tables" in rows[2]["note"]


def test_json_holds_settings_as_on_a_card(chart, answer) -> None:
    data = json.loads(json.dumps(chart_json(chart), allow_nan=False))
    assert data["schema"] == "welds.chart/1"
    assert data["request"]["metal"] == "5052-H32"
    assert "joint" not in data["request"]
    cell = data["cells"][4]
    card = card_json(answer(replace(chart.request, thickness_mm=2.0, joint=Joint.TEE)))
    assert cell["settings"]["current"] == card["settings"]["current"]
    assert data["cells"][2] == {
        "thickness_mm": 1.0,
        "joint": "plug",
        "settings": {},
        "problem": "a TIG plug: not in the tables",
    }


def test_html_and_markdown_hold_every_cell(chart) -> None:
    page, text = chart_html(chart, Units.INCH), chart_markdown(chart, Units.INCH)
    for words in ("0.079 in (2 mm)", "90 A", "70 to 110 A", "200 A"):
        assert words in page
        assert words in text
    assert "200 A\\*" in text
    assert "Clear &lt;everything&gt; that burns" in page
    rows = [row for row in text.splitlines() if row.startswith("|")]
    assert {row.count("|") for row in rows} == {5}


def test_mig_cells_add_feed_and_voltage(mig_card) -> None:
    chart = make_chart(
        mig_card.request, (1.5,), (Joint.LAP,), lambda request: replace(mig_card, request=request)
    )
    assert cell_texts(chart.rows[0][0], chart.request.process, Units.METRIC) == (
        "80 A*",
        "70 to 90 A",
        "5.1 m/min, wire 0.8 mm, 17 V",
    )
    row = next(csv.DictReader(io.StringIO(chart_csv(chart))))
    assert (row["wire_feed_start_m_min"], row["voltage_start_v"], row["wire_diameter_mm"]) == (
        "5.1",
        "17",
        "0.8",
    )


def test_default_rows_are_lengths_that_can_be_read() -> None:
    for texts in THICKNESSES.values():
        lengths = [parse_length(text, field="thickness").mm for text in texts]
        assert lengths == sorted(lengths)


def test_sources_stand_at_the_foot_of_every_form(chart) -> None:
    for text in (
        chart_text(chart, Units.METRIC),
        chart_html(chart, Units.METRIC),
        chart_markdown(chart, Units.METRIC),
    ):
        assert "Sources: DOC-1, DOC-2" in text.replace("\\", "")


def test_a_cell_at_the_machines_limit_says_what_the_joint_wants(tig_card, answer) -> None:
    def weak(request):
        card = answer(request)
        current = card.settings["current"]
        limited = replace(current, wanted=current.band, band=current.band.clipped(None, 100.0))
        return replace(card, settings=card.settings | {"current": limited})

    chart = make_chart(tig_card.request, (2.0, 5.0), (Joint.BUTT,), weak)
    reached, beyond = chart.cells
    assert not any("wants" in text for text in cell_texts(reached, chart.request.process, Units.METRIC))
    assert "joint wants 200 A" in cell_texts(beyond, chart.request.process, Units.METRIC)
    for text in (chart_text(chart, Units.METRIC), chart_html(chart, Units.METRIC)):
        assert "joint wants 200 A" in text
        assert "its card says what can be done" in text
    assert list(csv.DictReader(io.StringIO(chart_csv(chart))))[1]["note"] == "joint wants 200 A"
    assert make_chart(tig_card.request, (2.0,), (Joint.BUTT,), weak).limit_note == ""

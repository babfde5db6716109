"""`welds chart`."""

import csv
import io

import pytest

from welds.report.chart import Chart

CHART = ("chart", "--process", "tig", "--metal", "5052")


def test_text_has_thickness_down_and_joint_across(welds) -> None:
    result = welds(*CHART)
    assert result.code == 0
    assert "butt" in result.out
    assert "outside corner" in result.out
    assert "2 mm (0.079 in)" in result.out
    assert "plug" not in result.out  # no TIG plug is answered, so no column of dashes
    assert result.out.index("TAKE CARE") < result.out.index("butt")


def test_cells_are_what_the_card_says(welds) -> None:
    words = ("--thickness", "2 mm", "--thickness", "3 mm", "--joint", "tee", "--joint", "butt")
    chart = welds(*CHART, *words, "--json").json
    assert (chart["thicknesses_mm"], chart["joints"]) == ([2.0, 3.0], ["tee", "butt"])
    for cell in chart["cells"]:
        thickness = f"{cell['thickness_mm']} mm"
        card = welds(*("card", *CHART[1:]), "--thickness", thickness, "--joint", cell["joint"], "--json").json
        assert cell["settings"]["current"] == card["settings"]["current"]


def test_rows_are_sorted_and_come_once(welds) -> None:
    words = ("--thickness", "3 mm", "--thickness", "1/8 in", "--thickness", "2 mm", "--thickness", "2.0 mm")
    assert welds(*CHART, *words, "--json").json["thicknesses_mm"] == [2.0, 3.0, 3.175]


def test_csv_on_standard_output_and_into_a_file(welds, tmp_path) -> None:
    out = welds(*CHART, "--csv", "--thickness", "2 mm", "--joint", "butt").out
    (row,) = csv.DictReader(io.StringIO(out))
    assert float(row["current_low_a"]) < float(row["current_start_a"]) < float(row["current_high_a"])
    file = tmp_path / "chart.csv"
    assert welds(*CHART, "--csv", str(file), "--thickness", "2 mm", "--joint", "butt").code == 0
    assert file.read_text(encoding="utf-8") == out


def test_other_forms(welds, lent, tmp_path) -> None:
    assert welds(*CHART, "--html").out.startswith("<!DOCTYPE html>")
    assert "| Thickness |" in welds(*CHART, "--markdown").out
    pdf = str(tmp_path / "chart.pdf")
    assert welds(*CHART, "--pdf", pdf).out == f"written: {pdf}\n"
    assert isinstance(lent.pdfs[0][1], Chart)


def test_inch_rows_for_inch_people(welds) -> None:
    out = welds(*CHART, "--units", "inch").out
    assert "1/8 in (" in out


@pytest.mark.parametrize(
    ("words", "code", "hint"),
    [
        (("chart", "--process", "tig"), 2, "metal"),
        (("chart", "--metal", "5052"), 2, "process"),
        ((*CHART, "--thickness", "thin"), 2, "thickness"),
        ((*CHART, "--joint", "corner"), 2, "joint"),
        ((*CHART, "--metal", "304"), 2, "given once"),
        ((*CHART, "--length", "2 m"), 2, "--length"),
        ((*CHART, "--json", "--csv"), 2, "one of them"),
        (("chart", "--process", "tig", "--metal", "7075"), 3, "7075"),
        ((*CHART, "--thickness", "60 mm"), 3, "nearest that can be answered"),
        ((*CHART, "--csv", "no-such-folder/x.csv"), 4, "no-such-folder/x.csv"),
    ],
)
def test_one_clear_line_and_the_exit_code(welds, words, code, hint) -> None:
    result = welds(*words)
    assert result.code == code
    assert hint in result.complaint
    assert result.out == ""

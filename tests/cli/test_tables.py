"""`welds tables`."""

import csv
import io

import pytest

from welds.reference.metals import Metal
from welds.reference.paths import data_root


def test_list_names_every_table(welds, tables) -> None:
    out = welds("tables", "list").out
    assert all(name in out for name in tables.names)
    listed = welds("tables", "list", "--json").json
    assert {each["name"]: each["rows"] for each in listed} == {
        name: len(tables.table(name).rows) for name in tables.names
    }


def test_show_metals_lists_every_metal(welds, tables) -> None:
    out = welds("tables", "show", "metals").out
    ids = [line.split()[0] for line in out.splitlines() if line]
    assert all(metal.id in ids for metal in tables.records(Metal))


def test_show_every_table_in_every_form(welds, tables) -> None:
    for name in tables.names:
        assert welds("tables", "show", name).code == 0
        rows = welds("tables", "show", name, "--json").json
        assert len(rows) == len(tables.table(name).rows)
        table = list(csv.reader(io.StringIO(welds("tables", "show", name, "--csv").out)))
        assert table[0] == list(tables.table(name).sheet.columns)
        assert len(table) == len(rows) + 1


def test_csv_comes_back_as_the_shipped_file(welds) -> None:
    shipped = (data_root() / "tables" / "cups.csv").read_text(encoding="utf-8")
    ours = list(csv.DictReader(io.StringIO(welds("tables", "show", "cups", "--csv").out)))
    for ours_row, row in zip(ours, csv.DictReader(io.StringIO(shipped)), strict=True):
        for name, cell in row.items():
            assert ours_row[name] == cell or float(ours_row[name]) == float(cell)


def test_sources(welds, tables) -> None:
    out = welds("tables", "sources").out
    assert all(source in out for source in tables.sources)
    assert len(welds("tables", "sources", "--json").json) == len(tables.sources)


def test_one_source_with_its_address_and_what_rests_on_it(welds) -> None:
    out = welds("tables", "sources", "NIMI_WELDER_TT_191").out
    assert "tig_schedules (14 printed)" in " ".join(out.split())
    assert "http://nimi.co.in" in out
    (found,) = welds("tables", "sources", "NIMI_WELDER_TT_191", "--json").json
    assert {"where": "tig_schedules", "basis": "printed", "count": 14} in found["rests_on_it"]
    assert found["url"] in out
    assert "cautions (1 printed)" in " ".join(welds("tables", "sources", "HSE-DRUM").out.split())


def test_a_source_that_is_not_listed(welds) -> None:
    result = welds("tables", "sources", "NIMI_WELDER_TT_19")
    assert result.code == 2
    assert result.complaint.endswith("nearest: NIMI_WELDER_TT_191")


def test_check_of_the_shipped_tables(welds) -> None:
    result = welds("tables", "check")
    assert (result.code, result.out) == (0, "no faults found\n")
    assert welds("tables", "check", "--json").json == {"faults": [], "ok": True}


def test_check_lists_every_fault_of_own_tables(welds, tmp_path) -> None:
    (tmp_path / "cups.csv").write_text(
        "number,bore_mm,bore_in,source_id,place,basis\n5,minus,0.3,COMMON_PRACTICE,mine,practice\n"
        "6,9.5,-1,COMMON_PRACTICE,mine,practice\n",
        encoding="utf-8",
    )
    result = welds("tables", "check", str(tmp_path))
    assert result.code == 2
    assert result.out == ""
    faults = result.err.splitlines()
    assert len(faults) == 2
    assert all("cups.csv, row" in fault for fault in faults)
    assert "column bore_mm" in faults[0]
    assert "column bore_in" in faults[1]
    again = welds("tables", "check", str(tmp_path), "--json")
    assert (again.code, again.json) == (2, {"faults": faults, "ok": False})


def test_check_of_an_empty_table_and_an_empty_folder(welds, tmp_path) -> None:
    assert welds("tables", "check", str(tmp_path)).code == 2
    (tmp_path / "cups.csv").write_text("", encoding="utf-8")
    result = welds("tables", "check", str(tmp_path))
    assert result.code == 2
    assert "empty" in result.err


def test_own_folder_is_checked_too(welds, own_folders) -> None:
    own = own_folders / "xdg_config_home" / "welds" / "tables"
    own.mkdir(parents=True)
    (own / "nothing_like_it.csv").write_text("a\n1\n", encoding="utf-8")
    assert welds("tables", "check").code == 2


@pytest.mark.parametrize(
    ("words", "code", "hint"),
    [
        ((), 2, "list, show, check, sources"),
        (("lst",), 2, "nearest: list"),
        (("show",), 2, "a table's name"),
        (("show", "metal"), 2, "nearest: metals"),
        (("list", "metals"), 2, "nothing more"),
        (("sources", "x"), 2, "an id that"),
        (("show", "metals", "more"), 2, "more"),
        (("check", "no-such-folder"), 4, "no-such-folder"),
        (("list", "--units", "feet"), 2, "--units"),
    ],
)
def test_one_clear_line_and_the_exit_code(welds, words, code, hint) -> None:
    result = welds("tables", *words)
    assert result.code == code
    assert hint in result.complaint

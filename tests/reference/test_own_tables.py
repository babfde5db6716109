"""A person's own tables over the shipped ones."""

import pytest

from welds.errors import ReferenceDataError
from welds.reference.check import check_folder, check_shipped
from welds.reference.load import load_tables
from welds.reference.tables import Tables

from .conftest import BOX, HEADER, SHEET, TANK


def loaded(folder) -> Tables:
    return load_tables(folder.user, root=folder.root)


def test_an_existing_key_is_overridden_in_place_and_others_are_added(folder):
    folder.own(HEADER + BOX.replace("2.5", "4.0") + TANK.replace("tank", "rack"))
    table = loaded(folder).table("plates")
    assert [(row["plate"], row["thickness_mm"]) for row in table.rows] == [
        ("box", 4.0),
        ("tank", 3.2),
        ("rack", 3.2),
    ]
    assert table.user_keys == {("box", "port"), ("rack", "starboard")}
    assert not load_tables(root=folder.root).table("plates").user_keys


def test_own_tables_may_leave_out_optional_columns(folder):
    folder.own("plate,side,thickness_mm,is_patched,source_id,place,basis\nmast,port,6,no,BOOK,p. 3,printed\n")
    assert loaded(folder).table("plates").rows[-1]["tempers"] == ()


def test_own_sources_stand_beside_the_shipped_ones(folder):
    folder.own(HEADER + BOX.replace("BOOK", "MINE"))
    folder.own("MINE: {citation: my notes, status: own, how_read: written by me}\n", "sources.yaml")
    tables = loaded(folder)
    assert tables.sources["MINE"].citation == "my notes"
    assert set(tables.sources) == {"BOOK", "MINE"}


def test_no_folder_is_no_fault(folder):
    folder.user.rmdir()
    assert len(loaded(folder).table("plates").rows) == 2


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("plates.csv", "", "plates.csv: the file is empty"),
        ("plates.csv", HEADER + BOX.replace("2.5", "0"), "row 2, column thickness_mm: 0 is not believable"),
        ("plate.csv", HEADER + BOX, "plate.csv: no table has this name; nearest: plates"),
        ("plates.yaml", SHEET, "plates.yaml: column sheets are fixed; own tables are CSV only"),
        (
            "sources.yaml",
            "MINE: yes\n",
            "sources.yaml, row 1: source MINE: expected citation, status, how_read",
        ),
    ],
)
def test_a_broken_own_table_stops_loading_and_says_where(folder, name, text, expected):
    before = load_tables(root=folder.root)
    folder.own(text, name)
    with pytest.raises(ReferenceDataError) as caught:
        loaded(folder)
    assert str(folder.user) in str(caught.value)
    assert expected in str(caught.value)
    after = load_tables(root=folder.root)
    assert after.table("plates").rows == before.table("plates").rows


def test_check_lists_every_fault_of_an_own_folder(tmp_path):
    assert check_folder(tmp_path) == [f"{tmp_path}: no tables here (files named like metals.csv)"]
    assert check_folder(tmp_path / "nowhere") == [f"{tmp_path / 'nowhere'}: no such folder"]
    (tmp_path / "gauges.csv").write_text(
        "system,gauge,thickness_in,thickness_mm,source_id,place,basis\n"
        "AWG,14,0.0641,1.63,OWN,mine,practice\n"
        "AWG,15.5,0.06,1.5,OWN,mine,practice\n"
        "AWX,16,0.05,1.3,OWN,mine,practice\n"
    )
    faults = check_folder(tmp_path)
    assert [fault.removeprefix(str(tmp_path)) for fault in faults] == [
        "/gauges.csv, row 3, column gauge: '15.5' is not a whole number",
        "/gauges.csv, row 4, column system: 'AWX' is not one of MSG, GSG, USG, AWG, BWG; nearest: AWG",
    ]


def test_a_sound_own_folder_passes(tmp_path):
    (tmp_path / "gauges.csv").write_text(
        "system,gauge,thickness_in,thickness_mm,source_id,place,basis\nAWG,14,0.064,1.63,OWN,mine,practice\n"
    )
    assert check_folder(tmp_path) == []


def test_the_shipped_data_has_no_fault():
    assert check_shipped() == []

"""The paged table of welds: right at every row, and only a few hundred in memory."""

import pytest
from PySide6.QtCore import Qt

from tests.gui.log_support import BAIT_TANK, MUDGUARD
from welds.gui.models.entry_model import BLOCK, MOST_BLOCKS, NOT_YET, EntryModel, Listing
from welds.gui.models.import_model import ImportModel
from welds.logbook.fields import read_entry
from welds.logbook.importing import Preview, Row, Standing
from welds.quantities.units import Units

MANY = 5_000


@pytest.fixture(scope="module")
def entry(tables):
    return read_entry(BAIT_TANK, tables).entry


@pytest.fixture
def paged(entry):
    """Return a model over many rows whose blocks come when they are asked for, and what was asked for."""
    model, asked = EntryModel(), []

    def bring(wanted):
        number, places = wanted
        asked.extend(places)
        model.put(number, [(place, [entry] * BLOCK) for place in places])

    model.blocks_wanted.connect(bring, Qt.ConnectionType.QueuedConnection)
    model.show_listing(Listing(1, MANY, [entry] * BLOCK))
    return model, asked


def test_the_model_keeps_qts_rules(qtmodeltester, entry, tables):
    model = EntryModel()
    mudguard = read_entry(MUDGUARD, tables).entry
    model.show_listing(Listing(1, 2, [entry, mudguard]))
    qtmodeltester.check(model)


def test_the_import_model_keeps_qts_rules(qtmodeltester, entry):
    model = ImportModel()
    rows = (
        Row(1, Standing.NEW, "", entry),
        Row(2, Standing.BAD, "why"),
        Row(3, Standing.DUPLICATE, "", entry),
    )
    model.show_preview(Preview(rows), Units.METRIC)
    qtmodeltester.check(model)
    assert [model.index(row, 1).data() for row in range(3)] == ["bad", "new", "known"]


def test_a_row_out_of_sight_is_asked_for_once_and_then_there(paged, qapp):
    model, asked = paged
    assert model.index(3_333, 2).data() == NOT_YET
    assert model.index(3_334, 2).data() == NOT_YET
    qapp.processEvents()
    assert model.index(3_333, 2).data() == "5052-H32"
    assert asked == [33]


def test_memory_stays_flat_however_far_the_table_is_scrolled(paged, qapp):
    model, _asked = paged
    for row in range(0, MANY, BLOCK // 2):
        model.index(row, 0).data()
        qapp.processEvents()
    assert model.held <= MOST_BLOCKS * BLOCK
    assert model.index(MANY - 1, 2).data() == "5052-H32"


def test_blocks_of_an_earlier_question_are_dropped(entry):
    model = EntryModel()
    model.show_listing(Listing(2, 300, [entry] * BLOCK))
    model.put(1, [(1, [entry] * BLOCK)])
    assert model.held == BLOCK


def test_lengths_follow_the_units_and_figures_keep_what_was_logged(entry):
    model = EntryModel()
    model.show_listing(Listing(1, 1, [entry]))
    titles = [column.title for column in model.columns]
    thickness, current = titles.index("Thickness"), titles.index("Current")
    assert model.index(0, thickness).data() == "2.03 mm"
    model.set_units(Units.INCH)
    assert model.index(0, thickness).data() == "0.080 in"
    assert model.index(0, current).data() == "112 A"

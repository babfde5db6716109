import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import QWidget

from welds.gui.card_face import CautionLine, Figure, ReasonLine
from welds.gui.metal_option import MetalOption
from welds.gui.widgets.caution_bar import CautionBar
from welds.gui.widgets.choices import CheckChips, ChoiceBox, ChoiceRow
from welds.gui.widgets.even_grid import EvenGrid
from welds.gui.widgets.figure_strip import FigureStrip
from welds.gui.widgets.gauge_slider import GaugeSlider
from welds.gui.widgets.joint_picker import JointPicker
from welds.gui.widgets.metal_picker import MetalPicker
from welds.gui.widgets.quantity_edit import QuantityEdit

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)

METALS = (
    MetalOption("5052", "5052   aluminium", "Aluminium", ("5052", "5052-H32"), "sheet"),
    MetalOption("6061", "6061   aluminium", "Aluminium", ("6061", "6061-T6"), "tube"),
    MetalOption("low-carbon", "low-carbon   sheet", "Carbon steel", ("low-carbon", "mild-steel"), "sheet"),
    MetalOption("304", "304   stainless", "Stainless", ("304",), "rail brackets"),
)
WIRE_FEED = Figure(
    "wire_feed", "Wire feed", "3.5", "m/min", "138 in/min", "3.0 to 4.0 m/min", "from memory",
    "not checked", False,
    (ReasonLine("first", "\N{MULTIPLICATION SIGN} 1.08", "a handbook"), ReasonLine("second")),
    ("slower: less heat",),
)  # fmt: skip
VOLTAGE = Figure("voltage", "Voltage", "17", "V", "", "16 to 18 V", "printed source", "read", True, ())


@pytest.fixture
def shown(qtbot):
    def show(widget: QWidget) -> QWidget:
        qtbot.addWidget(widget)
        widget.show()
        return widget

    return show


@pytest.fixture
def picker(shown):
    made = shown(MetalPicker("Metal"))
    made.set_options(METALS)
    return made


@pytest.fixture
def slider(shown):
    made = GaugeSlider("Thickness slider", 0.5, 13.0)
    made.resize(360, 60)
    made.set_marks([(1.02, "18 ga"), (1.29, "16 ga"), (2.05, "12 ga"), (40.0, "off the track")])
    return shown(made)


def heard(signal) -> list:
    found = []
    signal.connect(lambda *values: found.append(values[0] if len(values) == 1 else values))
    return found


def test_typing_a_number_finds_its_metal(picker, qtbot):
    chosen = heard(picker.chosen)
    picker.line.clear()
    qtbot.keyClicks(picker.line, "5052")
    assert picker.value() == "5052"
    assert chosen == ["5052"]


def test_any_part_of_any_name_narrows_the_list(picker, qtbot):
    picker.line.clear()
    qtbot.keyClicks(picker.line, "alum")
    assert picker.found() == []  # the family's own name is a heading, its metals are found by their words
    picker.line.clear()
    qtbot.keyClicks(picker.line, "sheet")
    assert picker.found() == ["5052", "low-carbon"]


def test_a_temper_is_reported_as_typed(picker, qtbot):
    chosen = heard(picker.chosen)
    picker.line.clear()
    qtbot.keyClicks(picker.line, "6061-T6")
    assert chosen[-1] == "6061-T6"


def test_a_name_in_no_list_is_passed_on_to_be_refused_in_words(picker, qtbot):
    typed = heard(picker.typed)
    picker.line.clear()
    qtbot.keyClicks(picker.line, "unobtainium")
    assert typed[-1] == "unobtainium"
    assert picker.line.text() == "unobtainium"


def test_leaving_half_a_name_takes_the_first_that_fits(picker, qtbot):
    chosen = heard(picker.chosen)
    picker.line.setFocus()
    picker.line.clear()
    qtbot.keyClicks(picker.line, "rail")
    picker.line.completer().popup().hide()
    picker.line.editingFinished.emit()
    assert chosen[-1] == "304"
    assert picker.line.text() == "304   stainless"


def test_down_opens_the_whole_list(picker, qtbot):
    picker.set_value("304")
    qtbot.keyClick(picker.line, Qt.Key.Key_Down)
    assert picker.line.completer().popup().isVisible()
    assert picker.found() == ["5052", "6061", "low-carbon", "304"]
    picker.line.completer().popup().hide()


def test_headings_cannot_be_chosen(picker):
    picker.show_list()
    model = picker.line.completer().completionModel()
    headings = [model.index(row, 0) for row in range(model.rowCount()) if not model.index(row, 0).data(0x100)]
    assert [heading.data() for heading in headings] == ["Aluminium", "Carbon steel", "Stainless"]
    assert all(heading.flags() == Qt.ItemFlag.NoItemFlags for heading in headings)
    picker.line.completer().popup().hide()


def test_a_length_reports_typing_and_shows_what_was_understood(shown, qtbot):
    edit = shown(QuantityEdit("Thickness"))
    texts = heard(edit.text_edited)
    qtbot.keyClicks(edit.line, "14 ga")
    assert texts[-1] == "14 ga"
    edit.show_understood("1.63 mm = 0.064 in")
    assert edit.note() == "1.63 mm = 0.064 in"
    assert edit.line.accessibleDescription() == edit.note()


def test_readings_are_buttons_and_go_away_again(shown, qtbot):
    edit = shown(QuantityEdit("Thickness"))
    chosen = heard(edit.reading_chosen)
    edit.offer_readings("Which one?", ["2 mm", "2 in"])
    buttons = edit.reading_buttons()
    assert [button.text() for button in buttons] == ["2 mm", "2 in"]
    qtbot.mouseClick(buttons[1], Qt.MouseButton.LeftButton)
    assert chosen == ["2 in"]
    edit.show_understood("50.8 mm")
    assert edit.reading_buttons() == []


def test_the_slider_snaps_to_a_near_mark_and_names_it(slider, qtbot):
    marks, dragged = heard(slider.mark_chosen), heard(slider.dragged)
    qtbot.mouseClick(slider, Qt.MouseButton.LeftButton, pos=QPoint(round(slider.mark_x(1.29)) + 3, 15))
    assert marks == ["16 ga"]
    qtbot.mouseClick(slider, Qt.MouseButton.LeftButton, pos=QPoint(round(slider.mark_x(6.0)), 15))
    assert dragged[-1] == pytest.approx(6.0, rel=0.02)
    assert marks == ["16 ga"]


def test_keys_walk_the_slider_and_its_marks(slider, qtbot):
    marks, dragged = heard(slider.mark_chosen), heard(slider.dragged)
    slider.show_mm(1.1)
    qtbot.keyClick(slider, Qt.Key.Key_Up)
    qtbot.keyClick(slider, Qt.Key.Key_PageUp)
    qtbot.keyClick(slider, Qt.Key.Key_PageUp)
    qtbot.keyClick(slider, Qt.Key.Key_Down)
    assert marks == ["16 ga", "12 ga", "16 ga"]
    qtbot.keyClick(slider, Qt.Key.Key_Right)
    assert dragged == [pytest.approx(1.34)]


def test_showing_a_thickness_reports_nothing(slider):
    marks, dragged = heard(slider.mark_chosen), heard(slider.dragged)
    slider.show_mm(2.5)
    slider.show_mm(None)
    assert not marks
    assert not dragged


def test_arrow_keys_move_the_joint_and_paint_it_in_hand(shown, qtbot):
    painted = []
    made = JointPicker("Joint", [("butt", "Butt"), ("tee", "Tee")], lambda *call: painted.append(call[2]))
    made.resize(300, 100)
    picker = shown(made)
    chosen = heard(picker.chosen)
    qtbot.waitUntil(lambda: {"butt", "tee"} <= set(painted))
    picker.tiles["butt"].setFocus()
    qtbot.keyClick(picker.tiles["butt"], Qt.Key.Key_Right)
    assert chosen == ["tee"]
    assert picker.value() == "tee"


def test_showing_a_choice_reports_nothing(shown):
    options = [("a", "A"), ("b", "B")]
    row, box, chips = shown(ChoiceRow("Row", options)), shown(ChoiceBox("Box", options)), shown(
        CheckChips("Chips", options)
    )  # fmt: skip
    said = heard(row.chosen) + heard(box.chosen) + heard(chips.changed)
    row.set_value("b")
    box.set_value("b")
    chips.set_values(("b",))
    assert (row.value(), box.value(), chips.values()) == ("b", "b", ("b",))
    assert not said
    row.set_value("nonsense")
    assert row.value() == "b"


def test_chips_report_all_that_is_ticked(shown, qtbot):
    chips = shown(CheckChips("Chips", [("a", "A"), ("b", "B"), ("c", "C")]))
    said = heard(chips.changed)
    for box in chips.findChildren(QWidget)[::2]:
        qtbot.mouseClick(box, Qt.MouseButton.LeftButton)
    assert said == [("a",), ("a", "c")]


def test_stops_stay_on_show_when_ticked(shown, qtbot):
    bar = CautionBar()
    shown(bar)
    ticked = heard(bar.ticked)
    bar.show_stops([CautionLine("one", "First."), CautionLine("two", "Second.")], ())
    qtbot.mouseClick(bar.boxes["two"], Qt.MouseButton.LeftButton)
    assert ticked == [("two", True)]
    bar.show_stops([CautionLine("one", "First."), CautionLine("two", "Second.")], {"two"})
    assert bar.isVisible()
    assert [box.isChecked() for box in bar.boxes.values()] == [False, True]


def test_opening_one_why_closes_the_other_and_shows_factor_and_source(shown):
    strip = FigureStrip()
    shown(strip)
    strip.show_figures([WIRE_FEED, VOLTAGE])
    first, second = strip.tiles
    first.why.click()
    words = texts_in(strip.reasons)
    assert {
        "first",
        "\N{MULTIPLICATION SIGN} 1.08",
        "a handbook",
        "second",
        "Instead: slower: less heat",
    } <= set(words)
    second.why.click()
    assert not first.why.isChecked()
    assert strip.reasons.isVisible()
    second.why.click()
    assert not strip.reasons.isVisible()


def test_an_open_why_stays_open_on_another_card(shown):
    strip = FigureStrip()
    shown(strip)
    strip.show_figures([WIRE_FEED, VOLTAGE])
    strip.tiles[1].why.click()
    strip.show_figures([VOLTAGE, WIRE_FEED])
    assert [tile.why.isChecked() for tile in strip.tiles] == [True, False]


@pytest.mark.parametrize(
    ("count", "width", "columns"), [(8, 868, 4), (8, 1300, 4), (7, 440, 4), (9, 868, 3), (3, 100, 1)]
)
def test_rows_of_the_grid_are_filled_evenly(qapp, count, width, columns):
    holder = QWidget()
    grid = EvenGrid(96 if width == 440 else 196, spacing=8, max_columns=6, parent=holder)
    for _ in range(count):
        grid.addWidget(QWidget(holder))
    grid.setGeometry(QRect(0, 0, width, 400))
    lefts = {grid.itemAt(index).geometry().left() for index in range(count)}
    assert len(lefts) == columns
    assert max(grid.itemAt(index).geometry().right() for index in range(count)) < width
    holder.deleteLater()


@pytest.mark.parametrize(
    ("text", "short"),
    [
        ("Strip the zinc first. Then weld.", "Strip the zinc first."),
        (
            "Keep marked brushes, discs and files for each metal.",
            "Keep marked brushes, discs and files for each metal.",
        ),
        (
            "Clear or cover everything that burns within 11 m, also behind the panel, with an extinguisher.",
            "Clear or cover everything that burns within 11 m…",
        ),
        (
            "If it smells, leave and rest and get emergency care even if you feel fine",
            "If it smells, leave and rest and get emergency care even if you feel fine",
        ),
        (
            "Jeden geschlossenen Hohlraum vor dem Erwärmen entlüften, mit einem Loch abseits des Stoßes.",
            "Jeden geschlossenen Hohlraum vor dem Erwärmen entlüften…",
        ),
        (
            "Wurde darüber geschweißt oder riecht es erstickend: weggehen, ruhen und in die Notaufnahme",
            "Wurde darüber geschweißt oder riecht es erstickend: weggehen…",
        ),
    ],
)
def test_a_caution_in_short_ends_at_a_pause(text, short):
    assert CautionLine("rule", text).first_words == short


def texts_in(widget: QWidget) -> list[str]:
    from PySide6.QtWidgets import QLabel

    return [label.text() for label in widget.findChildren(QLabel) if label.isVisibleTo(widget)]

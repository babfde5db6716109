"""The bench page: common kinds, mistakes beside their line, ticks, and cards that follow when saved."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QLineEdit, QWidget

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.bench.keep import LAST_GOOD
from welds.bench.templates import USUAL, starting_bench
from welds.gui.bench_in_use import BenchInUse
from welds.gui.pages.bench.form_fields import FIELDS, put_text, text_of
from welds.gui.pages.bench.presenter import BenchPresenter
from welds.gui.pages.bench.view import BenchView
from welds.gui.pages.bench.words import BenchWords
from welds.quantities.units import Units

TEE = Request(Process.TIG, "5052", 2.0, Joint.TEE)


@pytest.fixture
def file(tmp_path):
    return tmp_path / "own" / "bench.yaml"


@pytest.fixture
def make(tables, file):
    def make() -> BenchPresenter:
        def answer(request, equipment):
            return advise(request, tables, equipment)

        presenter = BenchPresenter(BenchInUse(tables, file), tables, answer)
        presenter.heard = {}
        for name in ("machines", "form", "faults", "shelf", "preview", "standing"):
            signal = getattr(presenter, f"{name}_changed")
            signal.connect(lambda *values, of=name: presenter.heard.__setitem__(of, values))
        presenter.start()
        presenter.take_request(TEE, Units.METRIC)
        return presenter

    return make


@pytest.fixture
def presenter(make):
    return make()


def standing(presenter):
    return presenter.heard["standing"][0]


def preview(presenter):
    return presenter.heard["preview"][0]


def test_an_empty_bench_invites_and_cannot_be_saved(presenter, file) -> None:
    assert presenter.heard["machines"][0] == ()
    assert not standing(presenter).is_sound
    presenter.save()
    assert not file.exists()


def test_add_edit_save(presenter, file, tables) -> None:
    presenter.add("140 A MIG, 120 V")
    presenter.add("200 A AC/DC TIG, 230 V")
    lines, place = presenter.heard["machines"]
    assert [line.name for line in lines] == ["140 A MIG, 120 V", "200 A AC/DC TIG, 230 V"]
    assert [line.is_in_use for line in lines] == [True, False]
    assert place == 1
    assert "does not do tig" in preview(presenter)
    presenter.use()
    presenter.set_field("current_max_a", "80")
    presenter.set_field("duty_cycle", "80 A at 60 %")
    assert "80 A" in preview(presenter)
    assert standing(presenter).is_unsaved
    presenter.save()
    assert not standing(presenter).is_unsaved
    kept = BenchInUse(tables, file)
    assert kept.equipment.machine.name == "200 A AC/DC TIG, 230 V"
    assert kept.equipment.machine.current_max_a == 80
    assert kept.equipment.machine.duty_cycle == ((80.0, 60.0),)
    assert [each.name for each in kept.equipment.others] == ["140 A MIG, 120 V"]


def test_the_same_kind_twice_gets_a_number(presenter) -> None:
    for _ in range(3):
        presenter.add(USUAL[0])
    names = [line.name for line in presenter.heard["machines"][0]]
    assert names == [USUAL[0], f"{USUAL[0]} (2)", f"{USUAL[0]} (3)"]
    assert standing(presenter).is_sound
    presenter.remove()
    assert len(presenter.machines) == 2


def test_removing_the_machine_in_use_passes_that_on(presenter) -> None:
    presenter.add(USUAL[0])
    presenter.add(USUAL[1])
    presenter.select(0)
    presenter.remove()
    assert [(line.name, line.is_in_use) for line in presenter.heard["machines"][0]] == [(USUAL[1], True)]
    presenter.remove()
    presenter.remove()
    assert presenter.machines == []


@pytest.mark.parametrize(
    ("field", "text", "words"),
    [
        ("current_max_a", "2oo", "a number from 1 to 1000"),
        ("current_min_a", "300", "is above"),
        ("processes", "tigg", "nearest: tig"),
        ("duty_cycle", "200 A", "current_a"),
        ("torch.rated_a", "hot", "a number"),
        ("supply.volts", "", "volts is missing"),
        ("scales.wire_feed", "dial", "expected"),
        ("scales.wire_feed", "{marks: {1: 2", "expected"),
        ("wire_diameters", "0.7 mm", "not sold"),
    ],
)
def test_a_mistake_stands_at_its_line_and_nothing_is_saved(presenter, file, field, text, words) -> None:
    presenter.add(USUAL[0])
    presenter.set_field(field, text)
    faults = presenter.heard["faults"][0]
    assert any(words in problem for problem in faults.values()), faults
    assert not standing(presenter).is_sound
    presenter.save()
    assert not file.exists()


def test_renaming_the_machine_in_use_keeps_it_in_use(presenter) -> None:
    presenter.add(USUAL[0])
    presenter.set_field("name", "the yard's TIG: #1")
    assert presenter.heard["machines"][0][0].is_in_use
    assert standing(presenter).is_sound


def test_ticks_reach_the_card(presenter, file, tables) -> None:
    presenter.add(USUAL[0])
    presenter.tick_sizes("tungstens", "WLa20", ("1.6 mm",))
    presenter.tick_sizes("fillers", "ER5356", ("1.6 mm", "2.4 mm"))
    presenter.tick("cups", ("5", "6"))
    presenter.set_gases({"argon": "300", "helium": ""})
    presenter.set_helmets("9-13, 10")
    presenter.set_lens("no")
    assert "Tungsten diameter 1.6" in preview(presenter)
    presenter.save()
    shelf = BenchInUse(tables, file).equipment.shelf
    assert shelf.tungstens == {("WLa20", 1.6)}
    assert shelf.fillers == {("ER5356", 1.6), ("ER5356", 2.4)}
    assert shelf.cups == {5, 6}
    assert (shelf.litres_left("argon"), shelf.litres_left("helium")) == (300, None)
    assert shelf.helmet_shades == ((9, 13), (10, 10))
    assert shelf.has_gas_lens is False
    presenter.tick_sizes("tungstens", "WLa20", ())
    presenter.tick("cups", ())
    assert "tungstens" not in presenter.shelf
    assert "cups" not in presenter.shelf


def test_a_file_with_a_mistake_is_said_and_the_last_good_one_shown(make, file, tables) -> None:
    BenchInUse(tables, file).save(starting_bench(USUAL))
    file.write_text(starting_bench(USUAL).replace("current_max_a: 200", "current_max_a: x"), encoding="utf-8")
    presenter = make()
    assert "the last good bench" in standing(presenter).words
    assert "line " in standing(presenter).words
    assert presenter.heard["form"][0]["current_max_a"] == "200"
    assert (file.parent / LAST_GOOD).exists()


def test_a_disk_that_refuses_is_told(tmp_path, tables) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    in_use = BenchInUse(tables, tmp_path / "file" / "bench.yaml")
    presenter = BenchPresenter(in_use, tables, lambda request, equipment: advise(request, tables, equipment))
    heard = []
    presenter.standing_changed.connect(heard.append)
    presenter.add(USUAL[0])
    presenter.save()
    assert "bench.yaml" in heard[-1].words
    assert heard[-1].is_unsaved


def test_every_line_is_written_and_read_back() -> None:
    texts = {"duty_cycle": "200 A at 25 %, 130 A at 60 %", "processes": "tig, mig", "supply.volts": "230"}
    texts |= {"scales.voltage": "{name: tap, marks: {A: 15, B: 16.5}}", "name": "a set"}
    machine = {}
    for name, text in texts.items():
        put_text(machine, FIELDS[name], text)
    assert {name: text_of(machine, FIELDS[name]) for name in texts} == texts
    for name in texts:
        put_text(machine, FIELDS[name], "")
    assert machine == {}


# -------------------------------------------------------------------------------------------- view


@pytest.fixture
def view(qtbot, presenter):
    view = BenchView(presenter)
    qtbot.addWidget(view)
    view.resize(1366, 700)
    view.show()
    return view


def test_the_view_drives_the_presenter(qtbot, view, presenter, file) -> None:
    view.templates.set_value("180 A MIG, 230 V")
    qtbot.mouseClick(view.add, Qt.MouseButton.LeftButton)
    assert view.list.item(0).text() == "180 A MIG, 230 V, in use"
    line = view.form.lines["current_max_a"]
    line.clear()
    qtbot.keyClicks(line, "17o")
    assert line.property("invalid") is True
    assert not view.save.isEnabled()
    qtbot.keyClick(line, Qt.Key.Key_Backspace)
    qtbot.keyClicks(line, "0")
    assert line.property("invalid") is False
    wires = view.shelf.pairs["wires"]
    wires.names.set_value("ER70S-6")
    wires.names.chosen.emit("ER70S-6")
    wires.sizes._boxes["0.8 mm"].click()
    view.shelf.gases.chips._boxes["argon"].click()
    qtbot.keyClicks(view.shelf.gases.lines["argon"], "1500")
    assert presenter.shelf == {"wires": {"ER70S-6": ["0.8 mm"]}, "gases": {"argon": "1500"}}
    assert view.save.isEnabled()
    with qtbot.waitSignal(presenter.saved):
        qtbot.mouseClick(view.save, Qt.MouseButton.LeftButton)
    assert "current_max_a: 170" in file.read_text(encoding="utf-8")
    assert not view.save.isEnabled()


def test_everything_can_be_reached_with_the_keyboard_and_has_a_name(view, presenter) -> None:
    presenter.add(USUAL[0])
    inputs = [
        each
        for kind in (QLineEdit, QComboBox, QAbstractButton)
        for each in view.findChildren(kind)
        if each.isEnabled() and each.isVisibleTo(view) and not isinstance(each.parent(), QComboBox)
    ]
    assert len(inputs) > 100
    reached = set()
    widget: QWidget = view.nextInFocusChain()
    for _ in range(2000):
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            reached.add(widget)
        widget = widget.nextInFocusChain()
    unreached = [each for each in inputs if each not in reached]
    assert not unreached
    assert not [each for each in inputs if not (each.accessibleName() or getattr(each, "text", str)())]


def test_every_change_can_be_taken_back_also_after_saving(presenter, file) -> None:
    empty = presenter.text
    presenter.add(USUAL[0])
    added = presenter.text
    for typed in ("1", "15", "150"):
        presenter.set_field("current_max_a", typed)
    presenter.tick("cups", ("5", "6"))
    presenter.save()
    presenter.set_gases({"argon": "300"})
    assert presenter.can_undo
    presenter.undo()
    assert "gases" not in presenter.shelf
    presenter.undo()
    assert presenter.heard["form"][0]["current_max_a"] == "150"
    assert standing(presenter).is_unsaved
    presenter.undo()
    assert presenter.text == added
    presenter.undo()
    assert presenter.text == empty
    assert not presenter.can_undo
    presenter.undo()
    assert presenter.text == empty


@pytest.mark.parametrize("typed", ["60", "236", "301", "550.5", "709"])
def test_a_feed_typed_in_inches_is_kept_in_metric_and_comes_back_as_typed(presenter, typed) -> None:
    presenter.add(USUAL[1])
    presenter.take_request(TEE, Units.INCH)
    presenter.set_field("wire_feed_max_m_min", typed)
    kept = float(presenter.machines[0]["wire_feed_max_m_min"])
    assert kept == pytest.approx(float(typed) * 0.0254, abs=0.0005)  # 1 in = 25.4 mm exactly (NIST SP 811)
    presenter.take_request(TEE, Units.METRIC)
    presenter.take_request(TEE, Units.INCH)
    assert presenter.heard["form"][0]["wire_feed_max_m_min"] == typed


def test_a_mistake_in_inches_names_the_limits_in_inches(presenter) -> None:
    presenter.add(USUAL[1])
    presenter.take_request(TEE, Units.INCH)
    presenter.set_field("wire_feed_max_m_min", "5000")
    assert presenter.heard["faults"][0]["wire_feed_max_m_min"] == (
        "5000 is not usable; allowed: a number from 3.937 to 2362 in/min"
    )
    assert standing(presenter).words == presenter.heard["faults"][0]["wire_feed_max_m_min"]
    presenter.set_field("wire_feed_max_m_min", "fast")
    assert "fast is not usable" in presenter.heard["faults"][0]["wire_feed_max_m_min"]
    presenter.set_field("wire_feed_max_m_min", "300")
    presenter.set_field("wire_feed_min_m_min", "400")
    assert presenter.heard["faults"][0]["wire_feed_min_m_min"] == "400 in/min is above the highest feed"


def test_the_page_speaks_inches(qtbot, presenter) -> None:
    view = BenchView(presenter)
    qtbot.addWidget(view)
    presenter.add(USUAL[1])
    presenter.set_field("wire_diameters", "0.8 mm, 0.9 mm")
    presenter.set_field("supply.volts", "120")
    presenter.set_field("supply.cord_length_m", "7.62")
    presenter.tick_sizes("tungstens", "WLa20", ("2.4 mm",))
    presenter.set_gases({"argon": "1000"})
    presenter.take_request(TEE, Units.INCH)
    lines, shelf = view.form.lines, view.shelf
    assert lines["supply.cord_length_m"].text() == "25"
    assert lines["supply.cord_length_m"].accessibleName() == "Cord length [ft]"
    assert lines["wire_diameters"].text() == "0.030 in, 0.035 in"
    assert "3/32 in" in shelf.pairs["tungstens"].sizes.findChildren(QAbstractButton)[4].text()
    assert shelf.gases.lines["argon"].text() == "35.31"  # 1 m3 is 35.31467 ft3 (NIST SP 811)
    shelf.gases.lines["argon"].selectAll()
    qtbot.keyClicks(shelf.gases.lines["argon"], "80")
    assert presenter.shelf["gases"] == {"argon": "2265.348"}
    assert not [text for text in _words_on(view) if " mm" in text or "m/min" in text or "litre" in text]


def _words_on(view: BenchView) -> list[str]:
    buttons = [each.text() for each in view.findChildren(QAbstractButton)]
    return [*buttons, *(each.text() for each in view.findChildren(QLabel))]


def test_every_line_has_words(qapp) -> None:
    words = BenchWords()
    for units in Units:
        assert set(words.fields(units)) == set(FIELDS)
        assert set(words.hints(units)) <= set(FIELDS)

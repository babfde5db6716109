"""The weld preview: sliders from the card, the picture that follows, and what leaves the window."""

import csv
import io
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMainWindow

from tests.gui.fakes import FakePrompts
from welds.advice.heat.bead import bead_of
from welds.advice.heat.check import heat_check
from welds.advice.request import Joint
from welds.errors import WeldsError
from welds.gui.drawing.fused_zone import paint_fused_zone
from welds.gui.drawing.geometry import joint_shape
from welds.gui.drawing.heat_gauge import GaugeScene, GaugeWords, gauge_x, paint_gauge
from welds.gui.drawing.heat_ink import LIGHT_HEAT
from welds.gui.drawing.ink import LIGHT
from welds.gui.drawing.zone_key import ZoneWords
from welds.gui.drawing.zone_scene import added_metal
from welds.gui.engine import load_engine
from welds.gui.pages.heat.figures import figure_lines, give_or_take
from welds.gui.pages.heat.knobs import BALANCE, CURRENT, FREQUENCY, THICKNESS, TRAVEL, VOLTAGE, knobs_of
from welds.gui.pages.heat.live import Readings, frame_of
from welds.gui.pages.heat.outlines import without_straights
from welds.gui.pages.heat.page import make_heat_page
from welds.gui.pages.heat.runner import NewestRunner
from welds.gui.pages.heat.scenes import zone_scene
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.quantities.band import Band
from welds.quantities.units import Units

TANK = {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt"}
POST = {"process": "mig", "metal": "low-carbon", "thickness": "6 mm", "joint": "tee"}
BRACKET = {
    "process": "tig",
    "metal": "304",
    "thickness": "2 mm",
    "other_thickness": "5 mm",
    "joint": "tee",
}
CORNER = {"process": "tig", "metal": "6061-T6", "thickness": "3 mm", "joint": "outside-corner"}
PLUG = {"process": "mig", "metal": "galvanised", "thickness": "1 mm", "joint": "plug"}
WORDS = ZoneWords("melted", "affected", "edge", "kept", "added")


@pytest.fixture(scope="module")
def engine():
    return load_engine(None)


def card_for(engine, fields):
    return engine.card(engine.request(fields))


@pytest.fixture
def make_page(qtbot, qapp, engine):
    """Return a maker of shown pages over a card, each waited for until its figures are in full."""
    made = []

    def make(fields, units=Units.METRIC):
        window, said = QMainWindow(), []
        setup = SetupPresenter(engine, window)
        setup.restore(fields, units)
        view = make_heat_page(engine, setup, FakePrompts(window), said.append, window)
        view.said = said
        view.setup = setup
        window.setCentralWidget(view)
        window.resize(1366, 700)
        window.show()
        made.append((window, view))
        if view.presenter.knobs:
            qtbot.waitUntil(lambda: view.presenter.is_settled, timeout=20000)
        return view

    yield make
    for window, view in made:
        view.presenter.stop()
        window.close()
        window.deleteLater()
    qapp.processEvents()


@pytest.fixture
def page(make_page):
    return make_page(TANK)


def settle(qtbot, page):
    qtbot.waitUntil(lambda: page.presenter.is_settled, timeout=20000)


# --- the picture is that of the physics -------------------------------------------------------------------


@pytest.mark.parametrize("fields", [TANK, POST, BRACKET, CORNER], ids=lambda f: f["joint"] + f["metal"])
@pytest.mark.parametrize("factor", [0.8, 1.0, 1.25])
def test_the_quick_picture_reads_like_the_full_bead(engine, fields, factor):
    """`bead_of`, behind `welds bead`, works the same figures out without any of the picture's short cuts."""
    knobs = knobs_of(card_for(engine, fields))
    request, settings = knobs.with_value(CURRENT, factor * knobs.knobs[CURRENT].card).asked
    first = frame_of(request, knobs.asked[1], engine.tables)
    quick = frame_of(request, replace(settings, travel_mm_s=1.1 * settings.travel_mm_s), engine.tables, first)
    full = bead_of(request, quick.settings, engine.tables)
    expected = Readings.of(full)
    for name in ("width_mm", "depth_mm"):
        for end in ("low", "middle", "high"):
            assert getattr(getattr(quick.readings, name), end) == pytest.approx(
                getattr(getattr(expected, name), end), rel=0.03, abs=0.05
            )
    assert quick.readings.root_width_mm == pytest.approx(expected.root_width_mm, rel=0.05, abs=0.2)
    assert quick.readings.pool_length_mm == pytest.approx(expected.pool_length_mm, rel=0.01)
    assert quick.readings.cooling_t85_s == expected.cooling_t85_s
    if expected.affected_width_mm is not None:
        assert quick.readings.affected_width_mm == pytest.approx(
            expected.affected_width_mm, rel=0.05, abs=0.1
        )
    limits = quick.thresholds
    assert limits.melts_a == pytest.approx(full.surface_current_a, rel=0.01)
    assert limits.through_a == pytest.approx(full.through_current_a, rel=0.01)
    assert limits.falls_a == pytest.approx(full.collapse_current_a, rel=0.01)


def test_the_outline_in_the_picture_is_as_wide_as_the_figure_says(engine):
    frame = frame_of(*knobs_of(card_for(engine, TANK)).asked, engine.tables)
    half = max(float(line[:, 0].max()) for line in frame.first.fusion_line)
    assert 2.0 * half == pytest.approx(frame.readings.width_mm.middle, rel=0.02)


def area_mm2(outline):
    """Shoelace formula."""
    x, y = np.array(outline).T
    return abs(float(x @ np.roll(y, 1) - y @ np.roll(x, 1))) / 2.0


def shape_of(scene):
    return joint_shape(scene.joint, scene.first_mm, scene.other_mm, scene.gap_mm, arm_mm=scene.arm_mm)


def test_a_mig_fillet_is_drawn_with_the_section_and_the_leg_that_are_told(engine):
    frame = frame_of(*knobs_of(card_for(engine, POST)).asked, engine.tables)
    scene = zone_scene(frame, Units.METRIC)
    (outline,) = added_metal(scene, shape_of(scene))
    assert area_mm2(outline) == pytest.approx(frame.readings.added_mm2, rel=0.08)  # the face bulges a little
    leg = max(x for x, _y in outline)
    told = next(
        line.value
        for line in figure_lines(frame.readings, frame.request, Units.METRIC)
        if "leg" in line.value
    )
    assert told.endswith(f"{leg:.1f} mm leg")
    assert frame.pool.track_mm == pytest.approx(2.0**0.5 * leg, rel=0.01)


def test_in_a_gap_the_wire_fills_first_and_the_rest_stands_above(engine):
    fields = {**POST, "thickness": "4 mm", "joint": "butt", "gap": "1.5 mm"}
    frame = frame_of(*knobs_of(card_for(engine, fields)).asked, engine.tables)
    scene = zone_scene(frame, Units.METRIC)
    filled, cap, *_under = added_metal(scene, shape_of(scene))
    assert area_mm2(filled) == pytest.approx(1.5 * 4.0)
    assert area_mm2(filled) + area_mm2(cap) == pytest.approx(frame.readings.added_mm2, rel=0.02)
    low = replace(scene, added_mm2=3.0)
    assert area_mm2(added_metal(low, shape_of(low))[0]) == pytest.approx(3.0)


def test_heat_input_by_hand(engine):
    """EN 1011-1: k U I / v, k = 0.6 for TIG."""
    knobs = knobs_of(card_for(engine, TANK))
    for name, value in ((VOLTAGE, 13.0), (CURRENT, 90.0), (TRAVEL, 5.0)):
        knobs = knobs.with_value(name, value)
    frame = frame_of(*knobs.asked, engine.tables)
    assert frame.readings.heat_input_kj_mm == pytest.approx(0.6 * 13.0 * 90.0 / 5.0 / 1000.0)


def test_thresholds_are_worked_out_again_only_where_they_move(engine):
    knobs = knobs_of(card_for(engine, TANK))
    first = frame_of(*knobs.asked, engine.tables)
    more = frame_of(*knobs.with_value(CURRENT, 100.0).asked, engine.tables, first, lambda: True)
    assert more.is_current  # the current runs along its load line: the limits stay
    assert more.thresholds == first.thresholds
    hurried = frame_of(*knobs.with_value(TRAVEL, 9.0).asked, engine.tables, more, lambda: True)
    assert not hurried.is_current
    assert hurried.thresholds == first.thresholds
    again = frame_of(*knobs.with_value(TRAVEL, 9.1).asked, engine.tables, hurried, lambda: True)
    assert again.is_current
    assert again.thresholds.through_a > first.thresholds.through_a  # faster needs more


@pytest.mark.parametrize("name", [TRAVEL, THICKNESS, VOLTAGE])
@pytest.mark.parametrize("fields", [TANK, POST], ids=("butt", "mig-tee"))
def test_limits_stay_true_along_a_drag(engine, fields, name):
    """One step along a known slope each time; `bead_of` looks for each limit anew."""
    knobs = knobs_of(card_for(engine, fields))
    frame = frame_of(*knobs.asked, engine.tables)
    for step in range(1, 21):
        moved = knobs.with_value(name, knobs.knobs[name].card * (1.0 + 0.015 * step))
        frame = frame_of(*moved.asked, engine.tables, frame)
    full, limits = bead_of(*moved.asked, engine.tables), frame.thresholds
    assert limits.melts_a == pytest.approx(full.surface_current_a, rel=0.01)
    assert limits.through_a == pytest.approx(full.through_current_a, rel=0.01)
    assert limits.falls_a == pytest.approx(full.collapse_current_a, rel=0.01)


def test_rings_keep_their_corners_and_lose_the_points_between():
    ring = np.array([[0, 0], [1, 0], [2, 0], [2, 1], [2, 2], [1, 2.5], [0, 2], [0, 1], [0, 0]], dtype=float)
    kept = without_straights(ring).tolist()
    assert kept == [[0, 0], [2, 0], [2, 2], [1, 2.5], [0, 2]]


# --- sliders ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("fields", [TANK, POST, BRACKET])
def test_every_slider_starts_at_the_card_and_finds_its_way_back(engine, fields):
    knobs = knobs_of(card_for(engine, fields))
    for knob in knobs.knobs.values():
        assert knob.value == knob.card
        assert knob.low <= knob.card <= knob.high
        if knob.band is not None:
            assert knob.place(knob.band[0]) <= knob.place(knob.card) <= knob.place(knob.band[1])
        for place in (0, 137, 500, 863, 1000):
            back = knob.place(knob.value_at(place))
            span = knob.high - knob.low
            assert abs(back - place) <= 2 + 1000.0 * knob.step / span * (20.0 if knob.is_log else 1.0)
    assert (FREQUENCY in knobs.knobs) == (fields is TANK)


@pytest.mark.parametrize(
    ("name", "text", "units", "value"),
    [
        (CURRENT, "90", Units.METRIC, 90.0),
        (CURRENT, "90 amps", Units.METRIC, 90.0),
        (TRAVEL, "12 ipm", Units.METRIC, 5.08),
        (TRAVEL, "300", Units.METRIC, 5.0),
        (TRAVEL, "12", Units.INCH, 5.08),
        (TRAVEL, "6 mm/s", Units.INCH, 6.0),
        (VOLTAGE, "12,5", Units.METRIC, 12.5),
        (THICKNESS, "1/8 in", Units.METRIC, 3.175),
        (BALANCE, "75 %", Units.METRIC, 75.0),
        (FREQUENCY, "150 Hz", Units.METRIC, 150.0),
        ("start", "212 F", Units.METRIC, 100.0),
        ("start", "212", Units.INCH, 100.0),
    ],
)
def test_figures_are_read_as_people_type_them(engine, name, text, units, value):
    assert knobs_of(card_for(engine, TANK)).knobs[name].read(text, units) == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize("text", ["", "much", "-5", "0", "1e9", "nan", "90 kg", "1,234"])
@pytest.mark.parametrize("name", [CURRENT, TRAVEL, VOLTAGE, THICKNESS, BALANCE, FREQUENCY])
def test_what_cannot_be_meant_is_refused_in_one_line(engine, name, text):
    with pytest.raises(WeldsError) as caught:
        knobs_of(card_for(engine, TANK)).knobs[name].read(text, Units.METRIC)
    assert "\n" not in str(caught.value)


def test_what_stands_in_a_box_can_be_typed_again(engine):
    for fields in (TANK, POST):
        for knob in knobs_of(card_for(engine, fields)).knobs.values():
            for units in Units:
                text = knob.text(units)
                assert replace(knob, value=knob.read(text, units)).text(units) == text


def test_the_voltage_follows_the_load_line_until_it_is_held(engine):
    """IEC 60974-1: 0.04 V for each ampere of TIG, 0.05 V of MIG."""
    for fields, slope in ((TANK, 0.04), (POST, 0.05)):
        knobs = knobs_of(card_for(engine, fields))
        volts, amps = knobs.knobs[VOLTAGE].card, knobs.knobs[CURRENT].card
        moved = knobs.with_value(CURRENT, amps + 50.0)
        assert moved.knobs[VOLTAGE].value == pytest.approx(volts + 50.0 * slope)
        held = knobs.with_value(VOLTAGE, volts + 1.0).with_value(CURRENT, amps + 50.0)
        assert held.knobs[VOLTAGE].value == volts + 1.0


def test_frequency_and_balance_are_trends_around_the_card(engine):
    knobs = knobs_of(card_for(engine, TANK))
    assert knobs.knobs[FREQUENCY].is_trend
    assert knobs.knobs[BALANCE].is_trend
    assert not knobs.knobs[CURRENT].is_trend
    at_card = frame_of(*knobs.asked, engine.tables).readings
    faster = frame_of(*knobs.with_value(FREQUENCY, 240.0).asked, engine.tables).readings
    near = frame_of(*knobs.with_value(FREQUENCY, 121.0).asked, engine.tables).readings
    assert faster.depth_mm.low > at_card.depth_mm.low  # a narrower arc digs deeper
    assert near.width_mm.middle == pytest.approx(at_card.width_mm.middle, rel=0.01)  # no jump off the card
    leaner = frame_of(*knobs.with_value(BALANCE, 80.0).asked, engine.tables).readings
    assert leaner.width_mm.middle != at_card.width_mm.middle
    trends = bead_of(*knobs.with_value(BALANCE, 80.0).asked, engine.tables).trends
    assert any("size is not published" in text for text in trends)


# --- the page -----------------------------------------------------------------------------------------------


def test_the_page_starts_at_the_card(page):
    current = page.presenter.card.settings["current"].figure
    assert page.rows[CURRENT].line.text() == f"{current.start:.0f} A"
    assert page.presenter.picture.gauge.band_a == (current.low, current.high)
    assert page.rows[FREQUENCY].isVisible()
    assert not page.refusal.isVisible()


def test_half_the_current_stays_cold_and_double_burns_through(page, qtbot):
    start = page.presenter.card.settings["current"].figure.start
    page.presenter.set_text(CURRENT, f"{start / 2:.0f}")
    settle(qtbot, page)
    assert page.presenter.picture.verdict.tone == "stop"
    assert "cold" in page.verdict.text()
    page.presenter.set_text(CURRENT, f"{start * 2:.0f}")
    settle(qtbot, page)
    assert "burns through" in page.verdict.text().lower()


def test_dragging_moves_figure_box_and_picture(page, qtbot):
    row = page.rows[CURRENT]
    before = page.presenter.picture
    with qtbot.waitSignal(page.presenter.picture_changed, timeout=5000):
        at = QPointF(row.slider.x_of(700), row.slider.height() / 2.0).toPoint()
        QTest.mouseClick(row.slider, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    assert page.presenter.picture.gauge.current_a > before.gauge.current_a
    assert row.line.text() == f"{page.presenter.picture.gauge.current_a:.0f} A"
    page.reset.click()
    settle(qtbot, page)
    assert page.presenter.picture.gauge.current_a == before.gauge.current_a


def test_arrow_keys_move_a_slider(page, qtbot):
    slider = page.rows[TRAVEL].slider
    before = page.presenter.knobs[1].value
    slider.setFocus()
    for _press in range(5):
        qtbot.keyClick(slider, Qt.Key.Key_Right)
    assert page.presenter.knobs[1].value > before


def test_a_bad_figure_is_told_under_its_slider_and_changes_nothing(page):
    row = page.rows[CURRENT]
    before = page.presenter.knobs[0].value
    row.line.setText("much")
    row.line.editingFinished.emit()
    assert "current" in row.trouble()
    assert page.presenter.knobs[0].value == before
    row.line.setText("95 A")
    row.line.editingFinished.emit()
    assert row.trouble() == ""
    assert page.presenter.knobs[0].value == 95.0


def test_a_kept_setting_is_drawn_beneath_the_next(page, qtbot):
    kept = page.presenter.picture
    page.keep.click()
    page.presenter.set_text(CURRENT, "110 A")
    settle(qtbot, page)
    picture = page.presenter.picture
    assert picture.gauge.kept_a == kept.gauge.current_a
    assert picture.zone.kept is not None
    assert [each.value for each in picture.kept_figures] == [each.value for each in kept.figures]
    assert picture.pool.kept
    page.keep.click()
    assert page.presenter.picture.zone.kept is None


def test_a_plug_has_no_picture_and_says_why(make_page):
    page = make_page(PLUG)
    assert "plug weld does not travel" in page.refusal.reason()
    assert not page.zone.isVisible()
    page.save.click()
    page.output.copy_text()


def test_another_card_takes_the_page_over(page, qtbot):
    page.setup.restore(POST, Units.METRIC)
    page.shown.emit()
    settle(qtbot, page)
    assert page.presenter.title == "MIG low-carbon, tee"
    assert not page.rows[FREQUENCY].isVisible()
    assert any(each.name == "Cooling t8/5" for each in page.presenter.picture.figures)


def test_the_same_card_again_leaves_the_sliders_alone(page, qtbot):
    page.presenter.set_text(CURRENT, "99 A")
    page.shown.emit()
    assert page.presenter.knobs[0].value == 99.0


def test_inch_words(make_page, qtbot):
    page = make_page(TANK, Units.INCH)
    assert "in/min" in page.rows[TRAVEL].line.text()
    assert " in" in page.presenter.picture.figures[1].value
    page.setup.set_units(Units.METRIC)
    assert "mm/min" in page.rows[TRAVEL].line.text()
    assert "mm" in page.presenter.picture.figures[1].value


def test_stop_cautions_stand_above_the_figures(make_page):
    page = make_page({**TANK, "coating": ("cadmium",)})
    assert page.cautions.isVisible()
    assert page.cautions.mapTo(page, page.cautions.rect().bottomLeft()).y() < page.figures.y() + page.zone.y()


def test_everything_has_a_name(page):
    for row in page.rows.values():
        assert row.slider.accessibleName()
        assert "&" not in row.slider.accessibleName()
        assert row.line.accessibleName()
    for view in (page.gauge, page.zone, page.pool):
        assert view.accessibleName()
        assert view.accessibleDescription()


def test_what_it_rests_on_is_one_click_away(page):
    page.grounds.click()
    _title, _introduction, text = page._prompts.shown[-1]
    assert "conduction only" in text
    assert "20%" in text
    assert "Fitted" in text
    assert "Grade:" in text
    assert "TRENDS ONLY" in text


def test_the_page_fits_the_small_screen(page):
    assert page.window().height() <= 700
    assert page.minimumSizeHint().width() <= 1366


# --- what leaves the window ---------------------------------------------------------------------------------


def test_picture_and_numbers_can_be_saved(page, tmp_path):
    for name in ("weld.png", "weld.svg", "weld.csv", "weld.pdf"):
        page._prompts.save_path = tmp_path / name
        page.save.click()
        assert (tmp_path / name).stat().st_size > 300, name
    assert not QImage(str(tmp_path / "weld.png")).isNull()
    assert "TIG 5052, butt" in (tmp_path / "weld.svg").read_text(encoding="utf-8")
    rows = {row[0]: row for row in csv.reader(io.StringIO((tmp_path / "weld.csv").read_text()))}
    assert rows["item"] == ["item", "unit", "set"]
    assert float(rows["fused width"][2]) == pytest.approx(page.presenter._readings.width_mm.middle, rel=1e-3)
    assert rows["error of the heat, give or take"][2] == "20"


def test_kept_numbers_have_a_column_of_their_own(page, tmp_path, qtbot):
    page.keep.click()
    page.presenter.set_text(CURRENT, "110 A")
    settle(qtbot, page)
    rows = {row[0]: row for row in csv.reader(io.StringIO(page.presenter.csv()))}
    assert rows["item"] == ["item", "unit", "set", "kept"]
    assert float(rows["set current"][2]) == 110.0
    assert float(rows["set current"][3]) < 110.0


def test_a_file_that_cannot_be_written_is_told(page, tmp_path):
    for name in ("no/such/weld.png", "no/such/weld.csv", "weld.doc"):
        page._prompts.save_path = tmp_path / name
        page.save.click()
    assert len(page._prompts.told) == 3
    assert all("not written" in title for title, _text in page._prompts.told)


# --- where physics and tables do not meet -------------------------------------------------------------------


def test_a_card_far_off_the_physics_gets_a_line(engine):
    card = card_for(engine, TANK)
    assert heat_check(card, engine.tables) is None
    current = replace(card.settings["current"], band=Band(300.0, 320.0, 340.0, "A"))
    line = heat_check(replace(card, settings={**card.settings, "current": current}), engine.tables)
    assert line is not None
    assert not line.ok
    assert "fall through" in line.text
    assert "300 to 340 A" in line.text
    assert heat_check(card_for(engine, PLUG), engine.tables) is None


def test_the_page_says_so_too(page):
    page.presenter.disagreed.emit("The heat picture disagrees")
    assert page.disagreement.isVisible()
    page.presenter.disagreed.emit("")
    assert not page.disagreement.isVisible()


# --- drawings -----------------------------------------------------------------------------------------------


def painted(scene, size=(700, 420)):
    image = QImage(*size, QImage.Format.Format_RGB32)
    image.fill("#ff00ff")
    painter = QPainter(image)
    paint_fused_zone(painter, QRectF(10, 10, size[0] - 20, size[1] - 20), scene, LIGHT, LIGHT_HEAT, WORDS)
    painter.end()
    return image


def count(image, colour):
    wanted = QColor(colour).rgb()
    return sum(
        image.pixel(x, y) == wanted for x in range(0, image.width(), 2) for y in range(0, image.height(), 2)
    )


@pytest.mark.parametrize("joint", [joint for joint in Joint if joint is not Joint.PLUG])
def test_every_joint_is_drawn_inside_its_rectangle_and_melts_more_with_more_current(engine, joint):
    knobs = knobs_of(card_for(engine, {**TANK, "joint": joint.value}))
    amps = knobs.knobs[CURRENT].card
    cold, hot = (
        painted(zone_scene(frame_of(*knobs.with_value(CURRENT, a).asked, engine.tables), Units.METRIC))
        for a in (0.4 * amps, 1.2 * amps)
    )
    magenta = QColor("#ff00ff").rgb()
    for image in (cold, hot):
        edge = [image.pixel(x, y) for x in range(image.width()) for y in (0, 5, 9, 411, 419)]
        assert set(edge) == {magenta}
    legend = count(cold, LIGHT_HEAT.fused)
    assert count(hot, LIGHT_HEAT.fused) > legend + 200


def test_the_gauge_has_the_hand_where_the_current_is(qapp):
    scene = GaugeScene(55.0, 75.0, 136.0, 86.0, (71.0, 100.0), (30.0, 180.0), 0.2)
    words = GaugeWords("cold", "face", "through", "out", "band")
    image = QImage(800, 110, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    paint_gauge(painter, QRectF(0, 0, 800, 110), scene, LIGHT, LIGHT_HEAT, words)
    painter.end()
    bar = QRectF(14.0, 0.0, 772.0, 30.0)
    x = round(gauge_x(scene, bar, 86.0))
    column = {image.pixel(x, y) for y in range(28, 50)}
    assert QColor(LIGHT.text).rgb() in column
    doubled = gauge_x(scene, bar, 120.0) - gauge_x(scene, bar, 60.0)
    assert doubled == pytest.approx(gauge_x(scene, bar, 160.0) - gauge_x(scene, bar, 80.0))


def test_an_uneven_error_is_told_by_its_ends(engine):
    readings = frame_of(*knobs_of(card_for(engine, TANK)).asked, engine.tables).readings
    wide = readings.width_mm
    assert give_or_take(replace(wide, low=2.0, middle=4.0, high=6.0), Units.METRIC) == "give or take 50%"
    assert give_or_take(replace(wide, low=0.0, middle=4.0, high=6.0), Units.METRIC) == "0.0 mm to 6.0 mm"


# --- only the newest is worked out --------------------------------------------------------------------------


def test_what_was_overtaken_before_it_began_is_never_begun(qtbot):
    runner = NewestRunner()
    done, answers = [], []
    runner.answered.connect(answers.append)

    def work(number):
        def run():
            QTest.qSleep(30)
            done.append(number)
            return number

        return run

    for number in range(8):
        runner.ask(work(number))
    assert runner.is_overtaken
    qtbot.waitUntil(lambda: not runner.is_busy and len(answers) == 2, timeout=5000)
    assert done == [0, 7]
    assert answers == [0, 7]
    assert runner.stop()


# --- in the window ------------------------------------------------------------------------------------------


def test_the_window_has_the_page_behind_a_button_and_a_key(make_window, engine, qtbot):
    window = make_window()
    titles = [button.text() for button in window.pages.buttons]
    place = titles.index("Weld preview")
    window.pages.show(place)
    view = window.pages.stack.currentWidget()
    assert f"Ctrl+{place + 1}" in window.pages.buttons[place].toolTip()
    assert window._page_commands._front_output() is view.output
    if view.presenter.knobs:
        settle(qtbot, view)
    assert view.presenter.stop()

"""How smoothly the weld preview follows a slider. Goal: 60 pictures a second, that is 16.7 ms each.

The picture is worked out in a thread; painting is the window's own. Nothing here fails by time.
"""

from itertools import cycle

import numpy as np
import pytest
from PySide6.QtWidgets import QMainWindow

from welds.advice.heat.picture import CELLS
from welds.gui.engine import load_engine
from welds.gui.pages.heat.knobs import CURRENT, TRAVEL, knobs_of
from welds.gui.pages.heat.live import frame_of
from welds.gui.pages.heat.page import make_heat_page
from welds.gui.pages.heat.presenter import HeatPresenter
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.prompts import Prompts
from welds.gui.theme import Theme
from welds.quantities.units import Units

TANK = {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt"}
BRACKET = {"process": "tig", "metal": "304", "thickness": "2 mm", "other_thickness": "5 mm", "joint": "tee"}
POST = {"process": "mig", "metal": "low-carbon", "thickness": "6 mm", "joint": "tee"}
STEPS = tuple(1.0 + 0.01 * step for step in (*range(20), *range(20, 0, -1)))


@pytest.fixture(scope="module")
def engine():
    return load_engine(None)


@pytest.mark.parametrize("fields", [TANK, BRACKET, POST], ids=("butt", "unequal-tee", "mig-tee"))
@pytest.mark.parametrize("name", [CURRENT, TRAVEL])
def test_one_picture_with_its_figures(beside, engine, request, fields, name):
    """Current leaves the limits of the gauge where they are, travel moves them."""
    knobs = knobs_of(engine.card(engine.request(fields)))
    factors = cycle(STEPS)
    last = [frame_of(*knobs.asked, engine.tables)]

    def step():
        value = knobs.knobs[name].card * next(factors)
        last[0] = frame_of(*knobs.with_value(name, value).asked, engine.tables, last[0])

    points = np.linspace(-8.0, 0.0, 2 * CELLS**2)
    row = f"bead picture, {request.node.callspec.id}"
    beside(row, step, "np.exp of as many points", lambda: np.exp(points), 100)
    assert last[0].is_current


def test_show_and_paint_one_picture(benchmark, qtbot, qapp, engine):
    """What the window's own thread does for each picture: boxes, figures, three drawings."""
    window = QMainWindow()
    setup = SetupPresenter(engine, window)
    setup.restore(TANK, Units.METRIC)
    Theme(qapp).apply()
    view = make_heat_page(engine, setup, Prompts(window), print, window)
    window.setCentralWidget(view)
    window.resize(1366, 700)
    window.show()
    presenter = view.presenter
    qtbot.waitUntil(lambda: presenter.is_settled, timeout=10000)
    pictures = [presenter.picture]
    presenter.set_text(CURRENT, "91 A")
    qtbot.waitUntil(lambda: presenter.is_settled, timeout=10000)
    pictures.append(presenter.picture)
    assert presenter.stop()
    turns = cycle(pictures)

    def show():
        presenter.picture_changed.emit(next(turns))
        qapp.processEvents()

    benchmark(show)
    window.close()
    window.deleteLater()


def test_pictures_while_a_slider_is_dragged(benchmark, qtbot, engine):
    """From the slider's move to the picture's arrival in the window, through the thread."""
    presenter = HeatPresenter(engine)
    presenter.take_card(engine.card(engine.request(TANK)), Units.METRIC)
    qtbot.waitUntil(lambda: presenter.is_settled, timeout=10000)
    places = cycle((*range(400, 700, 10), *range(700, 400, -10)))

    def move():
        with qtbot.waitSignal(presenter.picture_changed, timeout=5000):
            presenter.set_place(CURRENT, next(places))

    benchmark(move)
    assert presenter.stop()

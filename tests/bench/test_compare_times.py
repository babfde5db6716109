"""How smoothly eight columns follow the base thickness. Goal: under 50 ms from slider to painted table.

The eight-column page is painted off screen; each round moves the thickness, answers eight cards, puts them
into words and paints the whole page again.
"""

from itertools import cycle

import pytest
from PySide6.QtWidgets import QWidget

from welds.advice.request import Joint, Process, Request
from welds.gui.engine import load_engine
from welds.gui.pages.compare.outputs import CompareOutput
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.gui.pages.compare.view import CompareView
from welds.gui.prompts import Prompts
from welds.gui.theme import Theme
from welds.quantities.units import Units
from welds.report.current_curve import current_curve

CARD = {
    "process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt", "position": "PA",
    "hand": "unhurried", "place": "indoors",
}  # fmt: skip
EIGHT = ("butt", "tee", "lap", "outside-corner", "inside-corner", "edge")
SLIDER_MM = tuple(1.2 + 0.07 * step for step in range(60))


@pytest.fixture(scope="module")
def engine():
    return load_engine(None)


@pytest.fixture
def presenter(qtbot, engine):
    made = ComparePresenter(engine)
    made.take_card(CARD, Units.METRIC)
    made.keep_columns(True)
    made.choose_kind("metal")
    made.add_value("6061")
    made.add_value("304")
    assert len(made.columns.changes) == 8
    return made


@pytest.fixture
def view(qtbot, qapp, presenter):
    theme = Theme(qapp)
    theme.apply()
    window = QWidget()
    prompts = Prompts(window)
    made = CompareView(presenter, CompareOutput(presenter, prompts, print, window), prompts, window)
    window.resize(1366, 700)
    made.resize(1366, 700)
    presenter.set_thickness_mm(2.0)
    window.show()
    yield made
    window.close()


def test_answer_eight_columns_in_words(benchmark, presenter):
    thicknesses = cycle(SLIDER_MM)
    benchmark(lambda: presenter.set_thickness_mm(next(thicknesses)))
    assert presenter.shown is not None
    assert len(presenter.shown.titles) == 8


def test_a_frame_while_the_slider_moves(beside, qapp, presenter, view):
    thicknesses = cycle(SLIDER_MM)

    def paint() -> None:
        view.repaint()
        qapp.processEvents()

    def move() -> None:
        presenter.set_thickness_mm(next(thicknesses))
        qapp.processEvents()  # paints what has changed

    beside("eight columns, one step of the slider", move, "the same page painted again", paint, 60)
    assert view.table.comparison.columnCount() == 8


def test_one_curve_for_the_picture(benchmark, tables):
    """Worked out off the window's thread; a picture of eight takes eight times this."""
    curve = benchmark(current_curve, "butt", Request(Process.TIG, "5052", 2.0, Joint.BUTT), tables)
    assert not curve.is_empty

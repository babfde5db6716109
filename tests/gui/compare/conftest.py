"""The page with the real advice, made once."""

import pytest

from welds.gui.engine import load_engine
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.quantities.units import Units

CARD = {
    "process": "tig", "metal": "5052", "thickness": "0.080 in", "joint": "outside-corner", "position": "PA",
    "hand": "unhurried", "place": "indoors", "coating": (),
}  # fmt: skip


@pytest.fixture(scope="session")
def real_engine():
    """Return the shipped tables with the real advice."""
    return load_engine(None)


@pytest.fixture
def presenter(qapp, real_engine):
    """Return the page's state, started from a console box corner."""
    made = ComparePresenter(real_engine)
    made.take_card(CARD, Units.METRIC)
    return made

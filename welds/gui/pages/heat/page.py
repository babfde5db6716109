"""Puts the heat page together and ties it to the set-up page."""

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from welds.gui.engine import Engine
from welds.gui.pages.heat.drawings import HeatDrawings
from welds.gui.pages.heat.outputs import HeatOutput
from welds.gui.pages.heat.presenter import HeatPresenter
from welds.gui.pages.heat.view import HeatView
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.prompts import Prompts


def make_heat_page(
    engine: Engine, setup: SetupPresenter, prompts: Prompts, say: Callable[[str], None], window: QWidget
) -> HeatView:
    """Return the page; whenever it is shown it starts from the card on the set-up page."""
    presenter = HeatPresenter(engine, window)
    drawings = HeatDrawings(presenter, window)
    output = HeatOutput(presenter, drawings, prompts, say, window)
    view = HeatView(presenter, drawings, output, prompts, window)

    def take_card() -> None:
        presenter.take_card(None if setup.is_stale else setup.card, setup.units)

    view.shown.connect(take_card)
    setup.units_changed.connect(presenter.set_units)
    application = QCoreApplication.instance()
    if application is not None:
        application.aboutToQuit.connect(presenter.stop)
    return view

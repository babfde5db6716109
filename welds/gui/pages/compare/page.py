"""Puts the page of columns together and ties it to the set-up page."""

from collections.abc import Callable

from PySide6.QtWidgets import QWidget

from welds.gui.pages.compare.outputs import CompareOutput
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.gui.pages.compare.view import CompareView
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.prompts import Prompts


def make_compare_page(
    setup: SetupPresenter, prompts: Prompts, say: Callable[[str], None], window: QWidget
) -> CompareView:
    """Return the page; it follows the units of the set-up page."""
    presenter = ComparePresenter(setup.engine, window)
    output = CompareOutput(presenter, prompts, say, window)
    view = CompareView(presenter, output, prompts, window)
    setup.units_changed.connect(presenter.set_units)
    return view

"""Puts the parts of the heat page together for the window."""

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtWidgets import QWidget

from welds.gui.engine import Engine
from welds.gui.pages.heat.drawings import HeatDrawings
from welds.gui.pages.heat.outputs import HeatOutput
from welds.gui.pages.heat.presenter import HeatPresenter
from welds.gui.pages.heat.view import HeatView
from welds.gui.prompts import Prompts


@dataclass(frozen=True, slots=True)
class HeatPage:
    """The page as the window needs it: whom to hand the card, what to show, what prints and saves."""

    presenter: HeatPresenter
    view: HeatView
    output: HeatOutput


def make_heat_page(engine: Engine, prompts: Prompts, say: Callable[[str], None], window: QWidget) -> HeatPage:
    """Return the page over one engine."""
    presenter = HeatPresenter(engine, window)
    drawings = HeatDrawings(presenter, window)
    output = HeatOutput(presenter, drawings, prompts, say, window)
    return HeatPage(presenter, HeatView(presenter, drawings, output, prompts, window), output)

"""Opens the line that leads anywhere, with what the window has to go to."""

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMainWindow

from welds.gui.actions import Actions
from welds.gui.engine import Fields
from welds.gui.page_switch import PageSwitch
from welds.gui.pages.find.dialog import FindDialog
from welds.gui.pages.find.finder import Finder, Place
from welds.gui.pages.setup.presenter import SetupPresenter


def open_find(
    window: QMainWindow,
    setup: SetupPresenter,
    pages: PageSwitch,
    commands: Actions,
    recent: Sequence[Fields],
    find_fault: Callable[[str], object],
) -> None:
    """Ask where to go, and go there; a request or a fault leads to the set-up page, the first."""
    places = [Place(button.text(), partial(pages.show, place)) for place, button in enumerate(pages.buttons)]
    actions = [
        Place(action.text().replace("&", ""), action.trigger)
        for action in commands.commands()
        if action.isEnabled()
    ]

    def to_fault(name: str) -> None:
        pages.show(0)
        find_fault(name)

    finder = Finder(setup, recent, places, actions, to_fault, places[0].go, window)
    dialog = FindDialog(finder, window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.open()

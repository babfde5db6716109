"""Opens the first start's questions, and lets the window follow the answers."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from welds import language
from welds.bench.templates import starting_bench, templates
from welds.errors import WeldsError
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.pages.welcome.dialog import Start, WelcomeDialog


def open_welcome(
    window: QWidget,
    setup: SetupPresenter,
    open_demo: Callable[[], object],
    choose_language: Callable[[str], object],
    say: Callable[[str], object],
) -> None:
    """Ask, then set language, units and bench; a bench that is there already is left alone."""

    def begin(start: Start) -> None:
        if start.language != language.code():
            choose_language(start.language)
        setup.set_units(start.units)
        bench = setup.engine.bench
        if start.machines and bench is not None and not bench.kept.text:
            try:
                bench.save(starting_bench(start.machines))
            except WeldsError as error:
                say(str(error))
            setup.answer_again()
        if start.wants_demo:
            open_demo()

    dialog = WelcomeDialog(tuple(templates()), window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.begun.connect(begin)
    dialog.open()

"""The menus' commands, tied to the page in front and to the set-up page."""

from PySide6.QtCore import QObject

from welds.gui.actions import Actions
from welds.gui.card_output import CardOutput
from welds.gui.output import Output
from welds.gui.page_switch import PageSwitch
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.pages.setup.view import SetupView

SETUP = 0
"""The first page."""


class PageCommands(QObject):
    """Print, PDF and Copy act on the page in front; what asks for the set-up page brings it there first."""

    def __init__(
        self, commands: Actions, pages: PageSwitch, view: SetupView, output: CardOutput, parent: QObject
    ) -> None:
        super().__init__(parent)
        self._commands, self._pages, self._view, self._output = commands, pages, view, output
        commands.print_card.triggered.connect(lambda: self._front_output().print_card())
        commands.save_pdf.triggered.connect(lambda: self._front_output().save_pdf())
        commands.copy_text.triggered.connect(lambda: self._front_output().copy_text())
        for action in (
            commands.start_over, commands.go_to_metal, commands.go_to_thickness, commands.switch_side,
            commands.find_fault, commands.large_figures,
        ):  # fmt: skip
            action.triggered.connect(self._to_setup)

    def connect_setup(self, presenter: SetupPresenter) -> None:
        """Let the commands of the set-up page act on it."""
        commands, view = self._commands, self._view
        commands.set_page_actions(has_page=True)
        commands.find_fault.triggered.connect(lambda: view.find_fault())
        commands.large_figures.triggered.connect(view.show_large)
        commands.start_over.triggered.connect(presenter.start_over)
        commands.switch_units.triggered.connect(presenter.switch_units)
        commands.go_to_metal.triggered.connect(view.request.focus_metal)
        commands.go_to_thickness.triggered.connect(view.request.focus_thickness)
        commands.switch_side.triggered.connect(view.switch_side)

    def show_readiness(self) -> None:
        """Allow what the page in front can give and what needs a card, or grey it."""
        front = self._front_output()
        self._commands.set_card_actions(has_card=self._output.is_ready, has_output=front.is_ready)

    def _front_output(self) -> Output:
        """Return what prints and saves the page in front; the set-up's card where that page has nothing."""
        own: Output | None = getattr(self._pages.stack.currentWidget(), "output", None)
        return own or self._output

    def _to_setup(self) -> None:
        if self._pages.front != SETUP:
            self._pages.show(SETUP)

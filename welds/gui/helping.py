"""What the Help menu shows."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from welds.gui.actions import Actions
from welds.gui.prompts import Prompts

if TYPE_CHECKING:
    from collections.abc import Callable

    from welds.reference.tables import Tables


class Helping(QObject):
    """Shows guide, method, shortcuts and versions; `tables` gives them once they are loaded."""

    def __init__(
        self, commands: Actions, prompts: Prompts, tables: "Callable[[], Tables | None]", parent: QObject
    ) -> None:
        super().__init__(parent)
        self._commands, self._prompts, self._tables = commands, prompts, tables
        commands.show_guide.triggered.connect(self._show_guide)
        commands.show_method.triggered.connect(self._show_method)
        commands.show_shortcuts.triggered.connect(self._show_shortcuts)
        commands.show_about.triggered.connect(self._show_about)

    def _show_guide(self) -> None:
        from welds.gui.guide import guide_text

        self._prompts.show_text(self.tr("Guide"), self.tr("The everyday uses, step by step."), guide_text())

    def _show_method(self) -> None:
        from welds.gui.guide import method_text

        introduction = self.tr("Every figure is a range with a start, a reason, a source and a grade.")
        self._prompts.show_text(self.tr("How figures are made"), introduction, method_text())

    def _show_shortcuts(self) -> None:
        from welds.gui.about import shortcuts_text

        introduction = self.tr("Everything can be reached with the keyboard.")
        self._prompts.show_text(self.tr("Shortcuts"), introduction, shortcuts_text(self._commands.shortcuts))

    def _show_about(self) -> None:
        from welds.gui.about import about_text

        introduction = self.tr("Set-ups for TIG and MIG, with reasons and sources.")
        self._prompts.show_text(self.tr("About Welds"), introduction, about_text(self._tables()))

"""Starting the window. What is imported here delays the first paint, so it is little."""

import gc
import sys
from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from welds.gui.crash import CrashReporter
from welds.gui.main_window import MainWindow
from welds.gui.settings import WindowState
from welds.gui.translation import speak

if TYPE_CHECKING:
    from welds.gui.outfit import Outfit

NAME = "welds"


def run(argv: Sequence[str], log: str = "", lang: str = "") -> int:
    """Open the window and return the exit code once it is closed; log and language for this time only."""
    application = QApplication([*argv] or sys.argv[:1])
    application.setApplicationName(NAME)
    application.setOrganizationName(NAME)
    application.setDesktopFileName(NAME)
    state = WindowState(QSettings())
    speak(application, lang or state.word_of("language"))
    _paint_in(application, state.word_of("theme"))
    window = MainWindow(state, lambda: _outfit(application, log))
    crashes = CrashReporter(window.show_crash, window.save)
    crashes.install()
    gc.disable()  # a start makes much and throws nothing away: looking for waste would cost a twentieth of it
    window.furnished.connect(gc.enable)
    try:
        window.show()
        return application.exec()
    finally:
        crashes.remove()


def _paint_in(application: QApplication, theme: str) -> None:
    """Give even the first paint the colours that were chosen, so that nothing flashes."""
    if theme in ("light", "dark"):
        from welds.gui.colours import DARK, LIGHT
        from welds.gui.theme import palette_of

        application.setPalette(palette_of(DARK if theme == "dark" else LIGHT))


def _outfit(application: QApplication, log: str) -> "Outfit":
    from welds.gui.outfit import usual_outfit

    return usual_outfit(application, log)

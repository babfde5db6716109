"""What the window is given once it has painted itself."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from welds.bench.folders import config_folder, tables_folder
from welds.gui.memory import Memory
from welds.gui.prompts import Prompts
from welds.gui.theme import Theme

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QApplication, QWidget

    from welds.gui.engine import Engine


@dataclass(frozen=True, slots=True)
class Outfit:
    """Colours, memory, the work that loads the tables, who asks the questions, a log for this time only.

    `welcomes`: a window that remembers nothing asks the questions of a first start.
    """

    theme: Theme
    memory: Memory
    load: "Callable[[], Engine]"
    prompts: "Callable[[QWidget], Prompts]" = Prompts
    log: str = ""
    welcomes: bool = False


def usual_outfit(application: "QApplication", log: str = "") -> Outfit:
    """Return what the program uses when nobody is testing it."""

    def load() -> "Engine":
        from welds.gui.engine import load_engine

        return load_engine(tables_folder())

    return Outfit(Theme(application), Memory(config_folder()), load, log=log, welcomes=True)

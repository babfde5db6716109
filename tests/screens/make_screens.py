"""Pictures of the set-up page, for eyes: python tests/screens/make_screens.py --folder DIR [--quick]."""

import os
import sys
import tempfile
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from itertools import product
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QSettings  # noqa: E402
from PySide6.QtGui import QPixmap  # noqa: E402
from PySide6.QtWidgets import QApplication  # noqa: E402

from tests.screens.writing import read_options, write_pictures  # noqa: E402
from welds.gui.engine import Engine  # noqa: E402
from welds.gui.main_window import MainWindow  # noqa: E402
from welds.gui.memory import LastUse, Memory  # noqa: E402
from welds.gui.outfit import Outfit  # noqa: E402
from welds.gui.settings import WindowState  # noqa: E402
from welds.gui.theme import Theme  # noqa: E402

SIZES = ((1366, 768), (1920, 1080))
REQUESTS: Mapping[str, Mapping[str, str | tuple[str, ...]]] = {
    "console-box": {"metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"},
    "mudguard-plug": {
        "process": "mig", "metal": "galvanised", "thickness": "20 ga", "joint": "plug", "part": "vehicle",
        "coating": ("galvanised",),
    },
    "rail-bracket": {
        "metal": "304", "thickness": "2 mm", "other_thickness": "5 mm", "joint": "tee", "position": "PB",
        "part": "bracket",
    },
    "fuel-tank": {
        "metal": "5052", "thickness": "3 mm", "joint": "lap", "part": "tank",
        "coating": ("cadmium", "old-paint"), "place": "enclosed", "solvent": "chlorinated",
    },
    "too-thick": {"metal": "5052", "thickness": "60 mm", "joint": "tee"},
    "ambiguous": {"metal": "low-carbon", "thickness": "2", "joint": "lap"},
    "long-name": {"metal": "356", "other_metal": "6061", "thickness": "5 mm", "joint": "inside-corner"},
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Screen:
    """One picture: its name and what makes it."""

    request: str
    size: tuple[int, int]
    theme: str
    units: str

    @property
    def name(self) -> str:
        """File name without its ending."""
        return f"setup-{self.request}-{self.size[0]}x{self.size[1]}-{self.theme}-{self.units}"


def all_screens() -> Iterator[Screen]:
    """Every request in the four looks at the small size, the first also at the large one."""
    for request, size, theme, units in product(REQUESTS, SIZES, ("light", "dark"), ("metric", "inch")):
        yield Screen(request, size, theme, units)


def picture(application: QApplication, engine: Engine, screen: Screen, folder: Path) -> QPixmap:
    """Return the window as it is painted for one screen; `folder` is a throw-away configuration."""
    memory = Memory(folder)
    memory.save(LastUse(REQUESTS[screen.request], screen.units))
    state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
    state.write("theme", screen.theme)
    window = MainWindow(state, lambda: Outfit(Theme(application), memory, lambda: engine))
    window.resize(*screen.size)
    window.show()
    while window.view is None:
        application.processEvents()
    for _ in range(3):
        application.processEvents()
    grabbed = window.grab()
    window.close()
    window.deleteLater()
    application.processEvents()
    return grabbed


def main() -> int:
    """Write the pictures that the options ask for."""
    chosen = read_options(str(__doc__), quick="one picture a request: small, light, metric")
    with tempfile.TemporaryDirectory() as configuration:
        folder = Path(configuration)
        return write_pictures(
            chosen,
            (
                (screen.name, partial(picture, screen=screen, folder=folder))
                for screen in all_screens()
                if not chosen.quick
                or (screen.size, screen.theme, screen.units) == (SIZES[0], "light", "metric")
            ),
        )


if __name__ == "__main__":
    sys.exit(main())

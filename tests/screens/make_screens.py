"""Pictures of the set-up page, for eyes: python tests/screens/make_screens.py --folder DIR [--quick]."""

import argparse
import os
import sys
import tempfile
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import product
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QSettings  # noqa: E402
from PySide6.QtGui import QPixmap  # noqa: E402
from PySide6.QtWidgets import QApplication  # noqa: E402

from welds.gui.engine import Engine, load_engine  # noqa: E402
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
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--folder", type=Path, required=True, help="where the PNG files go")
    options.add_argument("--quick", action="store_true", help="one picture a request: small, light, metric")
    options.add_argument("--only", default="", help="only screens whose name holds this text")
    chosen = options.parse_args()
    application = QApplication.instance() or QApplication([])
    assert isinstance(application, QApplication)
    engine = load_engine(None)
    chosen.folder.mkdir(parents=True, exist_ok=True)
    screens = [screen for screen in all_screens() if chosen.only in screen.name]
    if chosen.quick:
        screens = [
            each
            for each in screens
            if each.size == SIZES[0] and (each.theme, each.units) == ("light", "metric")
        ]
    with tempfile.TemporaryDirectory() as configuration:
        for screen in screens:
            file = chosen.folder / f"{screen.name}.png"
            if not picture(application, engine, screen, Path(configuration)).save(str(file)):
                print(f"{file} cannot be written", file=sys.stderr)
                return 1
            print(file)
    return 0


if __name__ == "__main__":
    sys.exit(main())

"""Pictures of the bench page, for eyes: python tests/screens/make_bench_screens.py --folder DIR."""

import os
import sys
import tempfile
from dataclasses import replace
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
from welds.bench.templates import USUAL, starting_bench  # noqa: E402
from welds.gui.bench_in_use import BenchInUse  # noqa: E402
from welds.gui.engine import Engine  # noqa: E402
from welds.gui.main_window import MainWindow  # noqa: E402
from welds.gui.memory import LastUse, Memory  # noqa: E402
from welds.gui.outfit import Outfit  # noqa: E402
from welds.gui.settings import WindowState  # noqa: E402
from welds.gui.theme import Theme  # noqa: E402

SIZES = ((1366, 768), (1920, 1080))
BENCH = 2
SHELF = """shelf:
  tungstens: {WLa20: [1.6 mm]}
  fillers: {ER4043: [1.6 mm, 2.4 mm]}
  gases: {argon: 300}
  cups: [5, 6, 7]
  helmet_shades: [9-13]
  brushes: [steel]
"""
CORNER = LastUse({"metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}, "metric")
STATES = ("empty", "yard", "mistake", "inch")


def picture(
    application: QApplication, engine: Engine, state: str, size: tuple[int, int], theme: str, folder: Path
) -> QPixmap:
    """Return the window with the bench page in front; `folder` is a throw-away configuration."""
    file = folder / f"{state}-{theme}-{size[0]}.yaml"
    if state != "empty":
        file.write_text(starting_bench(USUAL).split("shelf:")[0] + SHELF, encoding="utf-8")
    memory = Memory(folder)
    memory.save(replace(CORNER, units="inch") if state == "inch" else CORNER)
    window_state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
    window_state.write("theme", theme)
    own = replace(engine, bench=BenchInUse(engine.tables, file))
    window = MainWindow(window_state, lambda: Outfit(Theme(application), memory, lambda: own))
    window.resize(*size)
    window.show()
    while window.view is None:
        application.processEvents()
    assert window.pages is not None
    window.pages.show(BENCH)
    page = window.pages.stack.currentWidget()
    if state == "mistake":
        line = page.form.lines["current_max_a"]
        line.setText("2oo")
        line.textEdited.emit("2oo")
    for _ in range(3):
        application.processEvents()
    grabbed = window.grab()
    window.close()
    window.deleteLater()
    application.processEvents()
    return grabbed


def main() -> int:
    """Write the pictures that the options ask for."""
    with tempfile.TemporaryDirectory() as configuration:
        folder = Path(configuration)
        return write_pictures(
            read_options(str(__doc__)),
            (
                (
                    f"bench-{state}-{size[0]}x{size[1]}-{theme}",
                    partial(picture, state=state, size=size, theme=theme, folder=folder),
                )
                for state, size, theme in product(STATES, SIZES, ("light", "dark"))
            ),
        )


if __name__ == "__main__":
    sys.exit(main())

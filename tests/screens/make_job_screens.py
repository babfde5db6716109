"""Pictures of the job page, for eyes: python tests/screens/make_job_screens.py --folder DIR."""

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

from PySide6.QtCore import QPointF, QSettings  # noqa: E402
from PySide6.QtGui import QColor, QImage, QPainter, QPixmap  # noqa: E402
from PySide6.QtWidgets import QApplication  # noqa: E402

from tests.screens.writing import read_options, write_pictures  # noqa: E402
from welds.bench.templates import USUAL, starting_bench  # noqa: E402
from welds.gui.bench_in_use import BenchInUse  # noqa: E402
from welds.gui.engine import Engine  # noqa: E402
from welds.gui.main_window import MainWindow  # noqa: E402
from welds.gui.memory import LastUse, Memory  # noqa: E402
from welds.gui.outfit import Outfit  # noqa: E402
from welds.gui.pages.job.view import JobView  # noqa: E402
from welds.gui.settings import WindowState  # noqa: E402
from welds.gui.theme import Theme  # noqa: E402
from welds.job.demo import demo_file  # noqa: E402
from welds.job.hole_drawing import DrawnHole, HoleDrawing, Scale, drawing_file, drawing_yaml, holes_text  # noqa: E402
from welds.job.job_edit import with_holes  # noqa: E402

SIZES = ((1366, 768), (1920, 1080))
USE = {"metric": {"metal": "5052", "thickness": "2 mm"}, "inch": {"metal": "5052", "thickness": "0.080 in"}}
HOLES = ((400, 350, 7.0), (560, 360, 4.0), (700, 430, 7.0), (760, 330, 4.0), (470, 500, 4.0), (640, 560, 4.0))
STATES = (
    "empty", "Cautions", "Order", "What waits", "Repairs", "Cut list", "Sheets", "Blanks", "Cards", "Tacks",
    "Materials", "Checks", "Edit",
)  # fmt: skip


def own_job(folder: Path) -> Path:
    """Write the demo as a person's own job, with holes drawn on an invented photo of its first repair."""
    photo = QImage(1200, 900, QImage.Format.Format_RGB32)
    photo.fill(QColor("#9a8a7c"))
    painter = QPainter(photo)
    painter.setBrush(QColor("#1c1410"))
    for x, y, diameter in HOLES:
        painter.setPen(QColor("#7a4a2a"))
        painter.drawEllipse(QPointF(x, y), diameter * 2.5, diameter * 2.5)
    painter.fillRect(200, 820, 500, 24, QColor("white"))
    painter.end()
    photo.save(str(folder / "mudguard-left-holes.png"))
    holes = tuple(DrawnHole((x, y), diameter) for x, y, diameter in HOLES)
    drawing = HoleDrawing("mudguard-left-holes.png", Scale((200, 832), (700, 832), 100.0), holes)
    path = folder / "boat-and-trailer.yaml"
    path.write_text(with_holes(demo_file().read_text("utf-8"), "mudguard-left", holes_text(holes)), "utf-8")
    drawing_file(path, "mudguard-left").write_text(drawing_yaml(drawing), encoding="utf-8")
    return path


def picture(
    application: QApplication,
    engine: Engine,
    state: str,
    size: tuple[int, int],
    theme: str,
    units: str,
    folder: Path,
) -> QPixmap:
    """Return the window with the job page in front; `folder` is a throw-away configuration."""
    bench = folder / "bench.yaml"
    bench.write_text(starting_bench(USUAL), encoding="utf-8")
    memory = Memory(folder)
    memory.save(LastUse({**USE[units], "joint": "tee"}, units))
    window_state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
    window_state.write("theme", theme)
    own = replace(engine, bench=BenchInUse(engine.tables, bench))
    window = MainWindow(window_state, lambda: Outfit(Theme(application), memory, lambda: own))
    window.resize(*size)
    window.show()
    while window.view is None:
        application.processEvents()
    assert window.pages is not None
    names = [button.text().replace("&", "") for button in window.pages.buttons]
    window.pages.show(names.index("Job"))
    page = window.pages.stack.currentWidget()
    assert isinstance(page, JobView)
    if state != "empty":
        page._presenter.open(own_job(folder))
        while page.tabs.count() == 0:
            application.processEvents()
        titles = [page.tabs.tabText(n) for n in range(page.tabs.count())]
        page.tabs.setCurrentIndex(titles.index(state))
    for _ in range(3):
        application.processEvents()
    grabbed = window.grab()
    page._presenter.jobs.wait()
    window.close()
    window.deleteLater()
    application.processEvents()
    return grabbed


def main() -> int:
    """Write the pictures that the options ask for."""
    chosen = read_options(str(__doc__), "only one size, light, metric")
    ways = [(SIZES[0], "light", "metric")] if chosen.quick else list(product(SIZES, ("light", "dark"), USE))
    with tempfile.TemporaryDirectory() as configuration:
        return write_pictures(
            chosen,
            (
                (
                    f"job-{state.lower().replace(' ', '-')}-{size[0]}-{theme}-{units}",
                    partial(
                        picture, state=state, size=size, theme=theme, units=units, folder=Path(configuration)
                    ),
                )
                for (size, theme, units), state in product(ways, STATES)
            ),
        )


if __name__ == "__main__":
    sys.exit(main())

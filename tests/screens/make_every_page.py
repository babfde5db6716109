"""Every page in one language at one scale, for eyes: make_every_page.py --folder DIR --lang de --scale 2."""

import argparse
import os
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QSettings, QTimer  # noqa: E402
from PySide6.QtGui import QPixmap  # noqa: E402
from PySide6.QtWidgets import QApplication, QWidget  # noqa: E402

from tests.screens.make_job_screens import own_job  # noqa: E402
from tests.screens.make_log_screens import fill  # noqa: E402
from welds import language  # noqa: E402
from welds.bench.templates import USUAL, starting_bench  # noqa: E402
from welds.gui.bench_in_use import BenchInUse  # noqa: E402
from welds.gui.engine import load_engine  # noqa: E402
from welds.gui.main_window import COMPARE, JOB, LOG, SETUP, MainWindow  # noqa: E402
from welds.gui.memory import LastUse, Memory  # noqa: E402
from welds.gui.outfit import Outfit  # noqa: E402
from welds.gui.settings import WindowState  # noqa: E402
from welds.gui.theme import Theme  # noqa: E402
from welds.gui.translation import speak  # noqa: E402

THEMES = ("light", "dark", "contrast")
CORNER = {"metal": "5052", "thickness": "2 mm", "joint": "outside-corner", "coating": ("anodised",)}
JOB_TABS = 12
BENCH, PREVIEW = 2, 5


def settle(application: QApplication, seconds: float = 0.4) -> None:
    """Let what was begun finish."""
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        application.processEvents()
        time.sleep(0.01)


class Walk:
    """One window, and what is to be seen in it one after another."""

    def __init__(self, application: QApplication, window: MainWindow, folder: Path) -> None:
        self._application, self._window, self._folder = application, window, folder

    def views(self) -> Iterator[tuple[str, QPixmap]]:
        """Yield a name and a picture, each page as it stands in front."""
        window = self._window
        assert window.pages is not None
        assert window.view is not None
        for name, place in (("set-up", SETUP), ("side-by-side", COMPARE), ("bench", BENCH)):
            window.pages.show(place)
            yield name, self._settled(window)
        window.pages.show(JOB)
        job = window.pages.stack.currentWidget()
        yield "job-none", self._settled(window)
        job._presenter.open(own_job(self._folder))
        while job.tabs.count() < JOB_TABS:
            self._application.processEvents()
        for place in range(job.tabs.count()):
            job.tabs.setCurrentIndex(place)
            yield f"job-{place}", self._settled(window)
        for name, place in (("log", LOG), ("preview", PREVIEW)):
            window.pages.show(place)
            yield name, self._settled(window, 1.5)
        window.pages.show(SETUP)
        for name, open_it in self._dialogs():
            yield from self._opened(name, open_it)

    def _opened(self, name: str, open_it: Callable[[], object]) -> Iterator[tuple[str, QPixmap]]:
        """Open a dialog, also one that waits to be answered, grab it and close it."""
        before = set(self._application.topLevelWidgets())
        grabbed: list[QPixmap] = []

        def grab() -> None:
            for widget in set(self._application.topLevelWidgets()) - before:
                if widget.isVisible():
                    grabbed.append(widget.grab())
                    widget.close()

        QTimer.singleShot(500, grab)
        open_it()
        settle(self._application, 0.8)
        yield from ((name, picture) for picture in grabbed)

    def _settled(self, widget: QWidget, seconds: float = 0.4) -> QPixmap:
        settle(self._application, seconds)
        return widget.grab()

    def _dialogs(self) -> tuple[tuple[str, Callable[[], object]], ...]:
        actions = self._window.commands
        return (
            ("faults", actions.find_fault.trigger), ("find", actions.find.trigger),
            ("guide", actions.show_guide.trigger), ("method", actions.show_method.trigger),
            ("shortcuts", actions.show_shortcuts.trigger), ("large", actions.large_figures.trigger),
        )  # fmt: skip


def main() -> int:
    """Write the pictures that the options ask for."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--folder", type=Path, required=True)
    options.add_argument("--lang", choices=sorted(language.NAMES), default=language.ENGLISH)
    options.add_argument("--scale", default="1", help="of the screen: 2 is 200 %%")
    options.add_argument("--size", default="1366x768")
    options.add_argument("--units", choices=("metric", "inch"), default="metric")
    options.add_argument("--theme", choices=THEMES, action="append")
    options.add_argument("--only", default="", help="only views whose name holds this text")
    chosen = options.parse_args()
    os.environ["QT_SCALE_FACTOR"] = chosen.scale
    application = QApplication([])
    speak(application, chosen.lang)
    engine = load_engine(None)
    chosen.folder.mkdir(parents=True, exist_ok=True)
    width, height = map(int, chosen.size.split("x"))
    for theme in chosen.theme or THEMES:
        with tempfile.TemporaryDirectory() as scratch:
            folder = Path(scratch)
            for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"):
                os.environ[name] = str(folder / name.lower())
            (folder / "bench.yaml").write_text(starting_bench(USUAL), encoding="utf-8")
            memory = Memory(folder)
            memory.save(LastUse(CORNER, chosen.units))
            state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
            state.write("theme", theme)
            fill(str(folder / "welds.db"), engine)
            own = replace(engine, bench=BenchInUse(engine.tables, folder / "bench.yaml"))
            outfit = Outfit(Theme(application), memory, lambda own=own: own, log=str(folder / "welds.db"))
            window = MainWindow(state, lambda outfit=outfit: outfit)
            window.resize(width, height)
            window.show()
            while window.view is None or window.log is None:
                application.processEvents()
            for name, picture in Walk(application, window, folder).views():
                if chosen.only in name:
                    file = chosen.folder / f"{chosen.lang}-{chosen.scale}-{theme}-{name}.png"
                    picture.save(str(file))
                    print(file)
            window.close()
            settle(application)
    return 0


if __name__ == "__main__":
    sys.exit(main())

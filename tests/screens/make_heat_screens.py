"""Pictures of the weld preview, for eyes: python tests/screens/make_heat_screens.py --folder DIR."""

import os
import sys
import time
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from itertools import product
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtGui import QPixmap  # noqa: E402
from PySide6.QtWidgets import QApplication, QMainWindow  # noqa: E402

from tests.screens.writing import read_options, write_pictures  # noqa: E402
from welds.gui.engine import Engine  # noqa: E402
from welds.gui.pages.heat.page import make_heat_page  # noqa: E402
from welds.gui.pages.heat.view import HeatView  # noqa: E402
from welds.gui.pages.setup.presenter import SetupPresenter  # noqa: E402
from welds.gui.prompts import Prompts  # noqa: E402
from welds.gui.theme import Theme, ThemeChoice  # noqa: E402
from welds.quantities.units import Units  # noqa: E402

SIZES = ((1366, 700), (1920, 1012))
"""What the window leaves to a page on the two usual screens."""

PATIENCE_S = 20.0


@dataclass(frozen=True, slots=True)
class Case:
    """A card of the yard, what is typed on the page, and what is typed after keeping that."""

    fields: Mapping[str, str | tuple[str, ...]]
    typed: tuple[tuple[str, str], ...] = ()
    after_keeping: tuple[tuple[str, str], ...] = ()


CASES: Mapping[str, Case] = {
    "console-box": Case(
        {"process": "tig", "metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}
    ),
    "tank-butt": Case({"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt"}),
    "tank-hot": Case(
        {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt"}, (("current", "150 A"),)
    ),
    "tank-kept": Case(
        {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt"},
        (), (("current", "110 A"), ("travel", "8 mm/s")),
    ),
    "rail-bracket": Case(
        {"process": "tig", "metal": "304", "thickness": "2 mm", "other_thickness": "5 mm", "joint": "tee",
         "part": "bracket"}
    ),
    "trailer-lap": Case(
        {"process": "mig", "metal": "galvanised", "thickness": "2 mm", "joint": "lap",
         "coating": ("galvanised",)}
    ),
    "winch-post": Case({"process": "mig", "metal": "low-carbon", "thickness": "6 mm", "joint": "tee"}),
    "winch-post-gap": Case(
        {"process": "mig", "metal": "low-carbon", "thickness": "4 mm", "joint": "butt", "gap": "1.5 mm"}
    ),
    "rod-rack-edge": Case({"process": "tig", "metal": "6061-T6", "thickness": "3 mm", "joint": "edge"}),
    "plug": Case({"process": "mig", "metal": "galvanised", "thickness": "1 mm", "joint": "plug"}),
    "corner-in": Case(
        {"process": "mig", "metal": "low-carbon", "thickness": "3 mm", "joint": "inside-corner"}
    ),
}  # fmt: skip


def all_screens() -> Iterator[tuple[str, Case, tuple[int, int], str, str]]:
    """Every case in every look."""
    for (name, case), size, theme, units in product(
        CASES.items(), SIZES, ("light", "dark"), ("metric", "inch")
    ):
        yield f"heat-{name}-{size[0]}x{size[1]}-{theme}-{units}", case, size, theme, units


def settle(application: QApplication, page: HeatView) -> None:
    """Wait until the figures are those of the sliders as they stand."""
    until = time.monotonic() + PATIENCE_S
    while not page.presenter.is_settled and page.presenter.knobs and time.monotonic() < until:
        application.processEvents()
        time.sleep(0.005)
    for _ in range(3):
        application.processEvents()


def picture(
    application: QApplication,
    engine: Engine,
    case: Case,
    size: tuple[int, int],
    theme: str,
    units: str,
    look: Callable[[HeatView], None] = lambda page: None,
) -> QPixmap:
    """Return the page as it is painted; `look` may do something with it first."""
    Theme(application).choose(ThemeChoice(theme))
    window = QMainWindow()
    setup = SetupPresenter(engine, window)
    setup.restore(case.fields, Units(units))
    page = make_heat_page(engine, setup, Prompts(window), print, window)
    window.setCentralWidget(page)
    window.resize(*size)
    window.show()
    settle(application, page)
    for name, text in case.typed:
        page.presenter.set_text(name, text)
    settle(application, page)
    if case.after_keeping:
        page.presenter.keep()
        for name, text in case.after_keeping:
            page.presenter.set_text(name, text)
        settle(application, page)
    look(page)
    grabbed = window.grab()
    page.presenter.stop()
    window.close()
    window.deleteLater()
    application.processEvents()
    return grabbed


def main() -> int:
    """Write the pictures that the options ask for."""
    chosen = read_options(str(__doc__), quick="one picture a case: small, light, metric")
    return write_pictures(
        chosen,
        (
            (name, partial(picture, case=case, size=size, theme=theme, units=units))
            for name, case, size, theme, units in all_screens()
            if not chosen.quick or (size, theme, units) == (SIZES[0], "light", "metric")
        ),
    )


if __name__ == "__main__":
    sys.exit(main())

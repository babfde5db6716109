"""Pictures of the page of columns, for eyes: python tests/screens/make_compare_screens.py --folder DIR."""

import os
import sys
import tempfile
from collections.abc import Iterator, Mapping, Sequence
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
from welds.gui.main_window import COMPARE, MainWindow  # noqa: E402
from welds.gui.memory import LastUse, Memory  # noqa: E402
from welds.gui.outfit import Outfit  # noqa: E402
from welds.gui.settings import WindowState  # noqa: E402
from welds.gui.theme import Theme  # noqa: E402

SIZES = ((1366, 768), (1920, 1080))
BOX: Mapping[str, str] = {"metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}


@dataclass(frozen=True, slots=True)
class Case:
    """A card to start from, what varies, the values, and what is looked at."""

    fields: Mapping[str, str | tuple[str, ...]]
    kind: str
    values: Sequence[str]
    page: str = "settings"
    shows_all: bool = False


CASES: Mapping[str, Case] = {
    "two": Case(BOX, "joint", ("outside-corner", "tee")),
    "four": Case(BOX, "joint", ("outside-corner", "tee", "butt", "lap")),
    "eight-thick": Case(BOX, "thickness", [f"{mm:g} mm" for mm in (1, 1.5, 2, 3, 4, 6, 8, 10)]),
    "eight-metals": Case(
        {"metal": "356", "thickness": "3 mm", "joint": "tee", "coating": ("cadmium",)}, "metal",
        ("356", "6061-T6", "magnesium-az31", "silicon-bronze", "titanium-2", "galvanised", "304L", "1020"),
    ),
    "processes": Case(
        {"metal": "5052", "thickness": "3 mm", "joint": "plug", "process": "mig"}, "process", ("mig", "tig")
    ),
    "all-rows": Case(BOX, "joint", ("outside-corner", "tee", "butt"), shows_all=True),
    "curves": Case(BOX, "joint", ("butt", "tee", "lap", "outside-corner", "inside-corner", "edge"), "curves"),
    "curves-two": Case(BOX, "joint", ("butt", "tee"), "curves"),
    "waves": Case(BOX, "joint", ("butt", "tee", "lap", "outside-corner", "inside-corner", "edge"), "waves"),
}  # fmt: skip


def all_screens() -> Iterator[tuple[str, Case, tuple[int, int], str, str]]:
    """Every case in every look."""
    for (name, case), size, theme, units in product(
        CASES.items(), SIZES, ("light", "dark"), ("metric", "inch")
    ):
        yield f"compare-{name}-{size[0]}x{size[1]}-{theme}-{units}", case, size, theme, units


def picture(
    application: QApplication,
    engine: Engine,
    case: Case,
    size: tuple[int, int],
    theme: str,
    units: str,
    folder: Path,
) -> QPixmap:
    """Return the window as it is painted; `folder` is a throw-away configuration."""
    memory = Memory(folder)
    memory.save(LastUse(case.fields, units))
    state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
    state.write("theme", theme)
    window = MainWindow(state, lambda: Outfit(Theme(application), memory, lambda: engine))
    window.resize(*size)
    window.show()
    while window.view is None:
        application.processEvents()
    assert window.pages is not None
    window.pages.show(COMPARE)
    assert window.comparing is not None
    assert window.compare_view is not None
    window.comparing.choose_kind(case.kind)
    if case.kind == "metal":
        for value in case.values[1:]:
            window.comparing.add_value(value)
    else:
        window.comparing.tick(tuple(case.values))
    window.compare_view.equal_rows.setChecked(case.shows_all)
    window.compare_view.show_page(case.page)
    for _ in range(5):
        application.processEvents()
    window.compare_view.curves.wait()
    for _ in range(5):
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
                (name, partial(picture, case=case, size=size, theme=theme, units=units, folder=folder))
                for name, case, size, theme, units in all_screens()
            ),
        )


if __name__ == "__main__":
    sys.exit(main())

"""Pictures of the log and of the strip beside the card: python tests/screens/make_log_screens.py --folder DIR.

The welds are invented for the demo: the yard's console box, bait tank, rod rack, mudguards, winch post.
"""

import os
import sys
import tempfile
from collections.abc import Callable, Iterator, Mapping
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
BOX: Mapping[str, str] = {"metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}
AC = {
    "polarity": "AC",
    "ac_frequency": 100,
    "tungsten_diameter": 2.4,
    "filler_metal": "ER5356",
    "cup": 8,
    "gas_flow": 8.5,
}
MIG = {"polarity": "DCEP", "wire_feed": 5.1, "voltage": 17.5, "transfer": "short-circuit", "wire": "ER70S-6"}
TIG_SET, MIG_SET = "200 A AC/DC TIG, 230 V", "180 A MIG, 230 V"
# ruff: noqa: E501
YARD: tuple[tuple[str, str, float, str, float, str, str, tuple[str, ...], str], ...] = (
    ("tig", "5052-H32", 2.03, "outside-corner", 94, "worked-well", "2026-03-03", (), "console box, long corner"),
    ("tig", "5052-H32", 2.03, "outside-corner", 118, "failed", "2026-03-02", ("burn-through",), "console box, first try"),
    ("tig", "5052-H32", 2.03, "tee", 101, "worked-well", "2026-03-05", (), "bait tank, divider"),
    ("tig", "5052-H32", 2.5, "outside-corner", 108, "worked", "2026-03-09", ("porosity",), "bait tank, bottom edge"),
    ("tig", "5052-H32", 1.6, "lap", 70, "worked-well", "2026-03-14", (), "rod rack, holders"),
    ("tig", "304", 2.0, "tee", 62, "worked-well", "2026-04-01", (), "rail bracket on its foot"),
    ("tig", "304", 1.5, "butt", 38, "worked", "2026-04-02", ("heat-tint",), "rail bracket, mending strip"),
    ("mig", "galvanised", 1.5, "lap", 95, "failed", "2026-04-11", ("burn-through", "porosity"), "trailer mudguard, near edge"),
    ("mig", "galvanised", 1.5, "lap", 78, "worked", "2026-04-11", ("spatter",), "trailer mudguard, far edge"),
    ("mig", "low-carbon", 5.0, "tee", 150, "worked-well", "2026-05-20", (), "winch post, gusset"),
)  # fmt: skip


def fill(address: str, engine: Engine, picture: Path | None = None) -> None:
    """Log the yard's welds."""
    from welds.logbook.fields import read_entry
    from welds.logbook.opening import open_logbook

    with open_logbook(address) as log:
        for number, (process, metal, mm, joint, amps, outcome, day, faults, notes) in enumerate(YARD):
            fields = {
                "process": process,
                "metal": metal,
                "thickness_mm": mm,
                "joint": joint,
                "settings": {
                    "current": amps,
                    **(AC if metal.startswith("5") else MIG if process == "mig" else {}),
                },
                "outcome": outcome,
                "made_at": day,
                "faults": list(faults),
                "notes": f"{notes} (invented for the demo)",
                "machine": TIG_SET if process == "tig" else MIG_SET,
                "welder": "first bench",
                "photos": [str(picture)] if picture is not None and number in (0, 9) else [],
            }
            log.add(read_entry(fields, engine.tables))


def draw_bead(file: Path) -> None:
    """Draw something that stands for a photo of a bead."""
    from PIL import Image, ImageDraw

    image = Image.new("RGB", (640, 480), (150, 152, 155))
    pen = ImageDraw.Draw(image)
    pen.polygon([(0, 300), (640, 260), (640, 480), (0, 480)], fill=(120, 123, 128))
    for step in range(0, 640, 22):
        pen.ellipse(
            (step - 20, 262 - step // 16, step + 24, 318 - step // 16),
            fill=(196, 198, 200),
            outline=(105, 108, 112),
        )
    image.save(file)


def all_screens() -> Iterator[tuple[str, tuple[int, int], str, str]]:
    """Every case in every look."""
    yield from product(CASES, SIZES, ("light", "dark"), ("metric", "inch"))


def on_setup(window: MainWindow, _folder: Path) -> None:
    """Show the strip beside the card."""


def off(window: MainWindow, _folder: Path) -> None:
    """Show the strip with learning off."""
    assert window.view is not None
    window.view.card.past.learning.setChecked(False)


def on_log(window: MainWindow, _folder: Path) -> None:
    """Show the page with the weld that has a picture in hand."""
    assert window.log is not None
    window.log.show_page()
    settle(window)
    assert window.log.view is not None
    window.log.view.table.choose(len(YARD) - 2)


def filtered(window: MainWindow, folder: Path) -> None:
    """Show the page with every filter open."""
    on_log(window, folder)
    assert window.log is not None
    assert window.log.view is not None
    window.log.view.filter.more.setChecked(True)
    window.log.view.filter.text.setText("bait tank")


def undone(window: MainWindow, folder: Path) -> None:
    """Show what stands there after a removal."""
    on_log(window, folder)
    assert window.log is not None
    window.log.presenter.remove()


def form(window: MainWindow, _folder: Path) -> None:
    """Show the form that was filled from the card."""
    assert window.view is not None
    window.view.card.log_weld.click()


def imported(window: MainWindow, folder: Path) -> None:
    """Show what an import would do."""
    on_log(window, folder)
    file = folder / "from-the-other-bench.csv"
    file.write_text(
        "process,metal,thickness_mm,joint,outcome,made_at,settings.current\n"
        "tig,5052-H32,3,tee,worked-well,2026-06-01,132\n"
        "tig,505,3,tee,worked-well,2026-06-01,132\n"
        "tig,304,2,tee,worked,2026-06-02,61\n",
        encoding="utf-8",
    )
    assert window.log is not None
    window.log.files._prompts.ask_open_path = lambda *_: file
    window.log.files.look_into()


CASES: Mapping[str, Callable[[MainWindow, Path], None]] = {
    "setup": on_setup, "off": off, "log": on_log, "filtered": filtered, "undone": undone, "form": form,
    "import": imported,
}  # fmt: skip


def settle(window: MainWindow) -> None:
    """Let everything that was asked of the log be answered and painted."""
    application = QApplication.instance()
    assert application is not None
    for _ in range(6):
        application.processEvents()
        if window.log is not None:
            window.log.desk.wait()
    application.processEvents()


def picture(
    application: QApplication,
    engine: Engine,
    case: str,
    size: tuple[int, int],
    theme: str,
    units: str,
    folder: Path,
) -> QPixmap:
    """Return the window, or the form over it, as it is painted; `folder` is a throw-away home."""
    memory = Memory(folder)
    memory.save(LastUse(BOX, units))
    state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
    state.write("theme", theme)
    state.write("learning", "on")
    state.write("log", str(folder / "yard.db"))
    window = MainWindow(state, lambda: Outfit(Theme(application), memory, lambda: engine))
    window.resize(*size)
    window.show()
    while window.view is None:
        application.processEvents()
    assert window.log is not None
    window.log.start()
    settle(window)
    CASES[case](window, folder)
    settle(window)
    dialog = window.log.entering.dialog
    grabbed = window.grab() if dialog is None else dialog.grab()
    if dialog is not None:
        dialog.form.is_touched = False
        dialog.close()
    window.close()
    window.deleteLater()
    settle(window)
    return grabbed


def picture_at_home(
    application: QApplication, engine: Engine, case: str, size: tuple[int, int], theme: str, units: str
) -> QPixmap:
    """Return the picture with a fresh log of the yard's welds in a throw-away home."""
    with tempfile.TemporaryDirectory() as home:
        os.environ["XDG_DATA_HOME"] = home
        bead = Path(home) / "console-box-corner.png"
        draw_bead(bead)
        fill(str(Path(home) / "yard.db"), engine, bead)
        return picture(application, engine, case, size, theme, units, Path(home))


def main() -> int:
    """Write the pictures that the options ask for."""
    return write_pictures(
        read_options(str(__doc__)),
        (
            (
                f"log-{case}-{size[0]}x{size[1]}-{theme}-{units}",
                partial(picture_at_home, case=case, size=size, theme=theme, units=units),
            )
            for case, size, theme, units in all_screens()
        ),
    )


if __name__ == "__main__":
    sys.exit(main())

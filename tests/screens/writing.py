"""What the makers of pictures share: the options, the folder, and writing one file after another."""

import argparse
import sys
from collections.abc import Callable, Iterable
from pathlib import Path

from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QApplication

from welds.gui.engine import Engine, load_engine

Named = tuple[str, Callable[[QApplication, Engine], QPixmap]]
"""The name of a picture, and what paints it."""


def read_options(what: str, quick: str = "") -> argparse.Namespace:
    """Return --folder and --only, and --quick where a maker offers it."""
    options = argparse.ArgumentParser(description=what)
    options.add_argument("--folder", type=Path, required=True, help="where the PNG files go")
    options.add_argument("--only", default="", help="only screens whose name holds this text")
    if quick:
        options.add_argument("--quick", action="store_true", help=quick)
    return options.parse_args()


def write_pictures(chosen: argparse.Namespace, pictures: Iterable[Named]) -> int:
    """Write the pictures that were asked for and return the exit code."""
    application = QApplication.instance() or QApplication([])
    assert isinstance(application, QApplication)
    engine = load_engine(None)
    chosen.folder.mkdir(parents=True, exist_ok=True)
    for name, paint in pictures:
        if chosen.only not in name:
            continue
        file = chosen.folder / f"{name}.png"
        if not paint(application, engine).save(str(file)):
            print(f"{file} cannot be written", file=sys.stderr)
            return 1
        print(file)
    return 0

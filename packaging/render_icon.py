"""Draws the icon in the sizes desktops ask for, as a tree icons/hicolor; needs no screen."""

import shutil
import sys
from pathlib import Path

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

SIZES = (16, 22, 24, 32, 48, 64, 128, 256, 512)


def render(drawing: Path, icons: Path) -> None:
    """Write hicolor/SIZExSIZE/apps/NAME.png for every size, and the drawing itself as the scalable one."""
    renderer = QSvgRenderer(str(drawing))
    if not renderer.isValid():
        raise SystemExit(f"{drawing} is not a drawing that Qt can read")
    for size in SIZES:
        image = QImage(size, size, QImage.Format.Format_ARGB32_Premultiplied)
        image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(image)
        renderer.render(painter, QRectF(0, 0, size, size))
        painter.end()
        target = icons / "hicolor" / f"{size}x{size}" / "apps" / f"{drawing.stem}.png"
        target.parent.mkdir(parents=True, exist_ok=True)
        if not image.save(str(target)):
            raise SystemExit(f"{target} cannot be written")
    scalable = icons / "hicolor" / "scalable" / "apps"
    scalable.mkdir(parents=True, exist_ok=True)
    shutil.copyfile(drawing, scalable / drawing.name)


if __name__ == "__main__":
    render(Path(sys.argv[1]), Path(sys.argv[2]))

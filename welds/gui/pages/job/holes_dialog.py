"""Drawing a repair's holes over a photograph of them."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QImageReader
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from welds.errors import FileUnavailableError, InputError, WeldsError
from welds.gui.pages.job.hole_canvas import Doing, HoleCanvas
from welds.gui.prompts import Prompts
from welds.gui.widgets.texts import label
from welds.job.hole_drawing import HoleDrawing, drawing_file, drawing_yaml, holes_text, read_drawing
from welds.job.job_edit import with_holes, write_job
from welds.job.lengths import read_length
from welds.language import figure
from welds.quantities.units import Units
from welds.reference.whole_file import write_whole
from welds.report.cut_length import cut_length

PICTURES = "*.png *.jpg *.jpeg *.webp *.bmp *.tif *.tiff"


class HolesDialog(QDialog):
    """Writes the holes into the job file, and picture and points beside it; `saved` follows."""

    saved = Signal()

    def __init__(
        self, job_file: Path, repairs: Sequence[str], units: Units, prompts: Prompts, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._file, self._units, self._prompts = job_file, units, prompts
        self._picture: Path | None = None
        self._trouble = ""
        self.setWindowTitle(self.tr("Holes"))
        self.resize(940, 620)
        is_metric = units is Units.METRIC
        self.canvas = HoleCanvas(self)
        self.repair = QComboBox(self)
        self.repair.addItems(repairs)
        self.load = QPushButton(self.tr("&Picture…"), self)
        self.set_scale = QRadioButton(self.tr("&Scale: mark two points"), self)
        self.set_scale.setChecked(True)
        self.set_holes = QRadioButton(self.tr("&Holes: mark each, once more to take it out"), self)
        self.length = QLineEdit("100 mm" if is_metric else "4 in", self)
        self.diameter = QLineEdit("6 mm" if is_metric else "1/4 in", self)
        self.grid = QLineEdit("10 mm" if is_metric else "1/2 in", self)
        self.words = label(wrap=True, parent=self)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel, self
        )
        self._lay_out()
        self.load.clicked.connect(self._on_load_clicked)
        self.repair.currentTextChanged.connect(lambda _text: self._open_drawing())
        self.set_holes.toggled.connect(self._on_doing_toggled)
        for field in (self.length, self.diameter, self.grid):
            field.textChanged.connect(lambda _text: self._read_fields())
        self.canvas.changed.connect(self._show_words)
        self.buttons.accepted.connect(self._on_save)
        self.buttons.rejected.connect(self.reject)
        self._read_fields()
        self._open_drawing()

    def _lay_out(self) -> None:
        form = QFormLayout()
        form.addRow(self.tr("&Repair"), self.repair)
        form.addRow("", self.load)
        form.addRow(self.set_scale)
        form.addRow(self.tr("&Length between them"), self.length)
        form.addRow(self.set_holes)
        form.addRow(self.tr("&Diameter"), self.diameter)
        form.addRow(self.tr("&Grid"), self.grid)
        side = QVBoxLayout()
        side.addLayout(form)
        side.addWidget(self.words)
        side.addStretch(1)
        side.addWidget(self.buttons)
        layout = QHBoxLayout(self)
        layout.addWidget(self.canvas, 1)
        layout.addLayout(side)

    def show_picture(self, path: Path) -> bool:
        """Show a picture upright; say so and return False where it cannot be read."""
        reader = QImageReader(str(path))
        reader.setAutoTransform(True)
        image = reader.read()
        if image.isNull():
            self._prompts.tell(self.tr("The picture cannot be shown"), f"{path.name}: {reader.errorString()}")
            return False
        self._picture = path
        self.set_scale.setChecked(True)
        self.canvas.show_image(image)
        return True

    def _open_drawing(self) -> None:
        """Show what was drawn for this repair before; without that the picture on show stays, unmarked."""
        path = self._drawing_file()
        self.canvas.holes = []
        self.canvas.update()
        self._show_words()
        if not path.is_file():
            return
        try:
            drawing = read_drawing(path)
        except WeldsError as error:
            self._prompts.tell(self.tr("The drawing cannot be read"), str(error))
            return
        if self.show_picture(path.with_name(drawing.picture)):
            self.length.setText(f"{drawing.scale.length_mm:g} mm")
            self.canvas.ends = [drawing.scale.start, drawing.scale.end]
            self.canvas.holes = list(drawing.holes)
            self.set_holes.setChecked(True)
            self._show_words()

    def _drawing_file(self) -> Path:
        return drawing_file(self._file, self.repair.currentText())

    def _on_load_clicked(self) -> None:
        kinds = self.tr("Pictures ({kinds})").format(kinds=PICTURES)
        path = self._prompts.ask_open_path(self.tr("A picture of the holes, taken square on"), kinds)
        if path is not None:
            self.show_picture(path)

    def _on_doing_toggled(self, is_holes: bool) -> None:
        self.canvas.doing = Doing.HOLES if is_holes else Doing.SCALE
        self._show_words()

    def _read_fields(self) -> None:
        """Take up the three lengths; the first that cannot be read is named and nothing is marked with it."""
        troubles = []
        read = []
        fields = (
            (self.length, self.tr("length")),
            (self.diameter, self.tr("diameter")),
            (self.grid, self.tr("grid")),
        )
        for field, name in fields:
            try:
                read.append(read_length(field.text(), name, self._units))
            except InputError as error:
                troubles.append(str(error))
                read.append(0.0)
        self.canvas.length_mm, self.canvas.diameter_mm, self.canvas.grid_mm = read
        self._trouble = troubles[0] if troubles else ""
        self.canvas.update()
        self._show_words()

    def _drawing(self) -> HoleDrawing | None:
        scale = self.canvas.scale
        if self._picture is None or scale is None or not self.canvas.holes:
            return None
        name = f"{self.repair.currentText()}-holes{self._picture.suffix.lower()}"
        return HoleDrawing(name, scale, tuple(self.canvas.holes))

    def _show_words(self) -> None:
        drawing = self._drawing()
        save = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        save.setEnabled(drawing is not None and not self._trouble)
        if self._trouble:
            self.words.setText(self._trouble)
        elif drawing is not None:
            size = " x ".join(cut_length(side, self._units) for side in drawing.size_mm)
            words = self.tr("{holes}\nwithin {size}, rim to rim")
            self.words.setText(words.format(holes=figure(holes_text(drawing.holes)), size=size))
        elif self.canvas.image.isNull():
            self.words.setText(self.tr("Choose a picture taken square on, with a ruler in it."))
        elif self.canvas.scale is None:
            self.words.setText(self.tr("Mark both ends of a length that you know."))
        else:
            self.words.setText(self.tr("Now mark the holes."))

    def _on_save(self) -> None:
        drawing = self._drawing()
        if drawing is None or self._picture is None:
            return
        try:
            self._write(drawing, self._picture)
        except WeldsError as error:
            self._prompts.tell(self.tr("The holes were not written"), str(error))
            return
        self.saved.emit()
        self.accept()

    def _write(self, drawing: HoleDrawing, picture: Path) -> None:
        target = self._file.with_name(drawing.picture)
        try:
            content = picture.read_bytes()
        except OSError as error:
            raise FileUnavailableError(str(picture), error.strerror or str(error)) from error
        write_whole(target, content)
        write_whole(self._drawing_file(), drawing_yaml(drawing))
        repair, holes = self.repair.currentText(), holes_text(drawing.holes)
        write_job(self._file, lambda text: with_holes(text, repair, holes))

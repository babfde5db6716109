"""One bend measured on the person's own brake: its K is kept and the piece reckons with it."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QLineEdit, QVBoxLayout, QWidget

from welds.errors import WeldsError
from welds.gui.prompts import Prompts
from welds.gui.widgets.texts import label
from welds.job.blank_answer import BlankAnswer
from welds.job.brake_book import BrakeK, book_file, in_temper, keep
from welds.job.calibration import TestBend, read_angle
from welds.job.lengths import read_length
from welds.language import figure, tr
from welds.quantities.units import Units
from welds.report.cut_length import cut_length


class TestBendDialog(QDialog):
    """Tells by `kept` the name of the brake once its K is in the book."""

    kept = Signal(str)

    def __init__(
        self, answer: BlankAnswer, brake: str, units: Units, prompts: Prompts, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._answer, self._units, self._prompts = answer, units, prompts
        self._found: TestBend | None = None
        self._thickness_mm = answer.blank.part.thickness_mm
        self.setWindowTitle(self.tr("Test bend"))
        self.brake = QLineEdit(brake, self)
        self.brake.setPlaceholderText(self.tr("a name for it, such as yard brake"))
        self.flat = QLineEdit(self)
        self.first, self.second = QLineEdit(self), QLineEdit(self)
        self.angle = QLineEdit("90", self)
        bends = answer.blank.part.bends
        self.radius = QLineEdit(f"{bends[0].radius_mm:g} mm" if bends else "", self)
        self.words = label(wrap=True, parent=self)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel, self
        )
        self._lay_out()
        for line in (self.brake, self.flat, self.first, self.second, self.angle, self.radius):
            line.textChanged.connect(lambda _text: self._read())
        self.buttons.accepted.connect(self._on_save)
        self.buttons.rejected.connect(self.reject)
        self._read()

    def _lay_out(self) -> None:
        sheet = f"{in_temper(self._answer.metal)}, {cut_length(self._thickness_mm, self._units)}"
        how = self.tr("Cut a strip of {sheet}, measure it, bend it once, measure both legs outside.")
        form = QFormLayout()
        form.addRow(self.tr("&Brake"), self.brake)
        form.addRow(self.tr("Strip, &flat"), self.flat)
        form.addRow(self.tr("&One leg, outside"), self.first)
        form.addRow(self.tr("Othe&r leg, outside"), self.second)
        form.addRow(self.tr("&Angle turned through"), self.angle)
        form.addRow(self.tr("&Inside radius"), self.radius)
        layout = QVBoxLayout(self)
        layout.addWidget(label(how.format(sheet=sheet), wrap=True, parent=self))
        layout.addLayout(form)
        layout.addWidget(self.words)
        layout.addWidget(self.buttons)

    def _read(self) -> None:
        """Show the K as it is typed, or what is missing or wrong."""
        self._found = None
        typed = (self.flat, self.first, self.second, self.radius)
        if not self.brake.text().strip() or any(not line.text().strip() for line in typed):
            self.words.setText(self.tr("The K follows from all of these."))
        else:
            names = (tr("strip"), tr("one leg"), tr("other leg"), tr("inside radius"))
            try:
                flat, first, second, radius = (
                    read_length(line.text(), name, self._units)
                    for line, name in zip(typed, names, strict=True)
                )
                bend = TestBend(
                    flat, (first, second), abs(read_angle(self.angle.text(), tr("angle"))), radius
                )
                self.words.setText(figure(f"K = {bend.k(self._thickness_mm):.3f}"))
                self._found = bend
            except WeldsError as error:
                self.words.setText(str(error))
        self.buttons.button(QDialogButtonBox.StandardButton.Save).setEnabled(self._found is not None)

    def _on_save(self) -> None:
        if self._found is None:
            return
        brake, bend, thickness = self.brake.text().strip(), self._found, self._thickness_mm
        k = round(bend.k(thickness), 4)
        try:
            keep(book_file(), BrakeK(brake, in_temper(self._answer.metal), thickness, bend.radius_mm, k))
        except WeldsError as error:
            self._prompts.tell(self.tr("The test bend was not kept"), str(error))
            return
        self.kept.emit(brake)
        self.accept()

"""Writing a weld down: what was welded, what was set, what came of it; the last click says how, and logs."""

from collections.abc import Mapping

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QKeyEvent
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from welds.advice.evidence import Outcome
from welds.errors import WeldsError
from welds.gui.pages.log.entry_form import EntryForm
from welds.gui.pages.log.fault_picker import FaultPicker
from welds.gui.pages.log.picture_row import PictureRow
from welds.gui.pages.log.setting_grid import SettingGrid
from welds.gui.pages.setup.options import OptionWords
from welds.gui.prompts import Prompts
from welds.gui.widgets.choices import ChoiceBox, ChoiceRow
from welds.gui.widgets.metal_picker import MetalPicker
from welds.gui.widgets.refusal_bar import RefusalBar
from welds.gui.widgets.side_area import SideArea
from welds.gui.widgets.texts import label
from welds.logbook.entry import Photo

DRAFT_PAUSE_MS = 600
"""Typing is kept as a draft after so short a rest that a crash costs a word, not a weld."""

NOTES_PX = 104
NOTES_STYLE = (
    "QPlainTextEdit { border: 1px solid palette(dark); border-radius: 4px; padding: 3px; }"
    "QPlainTextEdit:focus { border: 2px solid palette(highlight); }"
)
PICTURE_KINDS = "*.jpg *.jpeg *.png *.webp *.tif *.tiff *.gif *.bmp *.heic"


class EntryDialog(QDialog):
    """Shows a form and reports the outcome it ends with; knows nothing of the log."""

    draft_due = Signal(object)
    logged = Signal(object)
    left = Signal(object, bool)

    def __init__(self, form: EntryForm, prompts: Prompts, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.form, self._prompts = form, prompts
        self._words = OptionWords(self)
        self._is_done = False
        self._thumbnails: Mapping[str, bytes | None] = {}
        is_change = form.entry is not None
        self.setWindowTitle(self.tr("Change a logged weld") if is_change else self.tr("Log a weld"))
        self.resize(1180, 690)
        self._fields: dict[str, QLineEdit | ChoiceBox | ChoiceRow | MetalPicker] = {}
        self._pause = QTimer(self, singleShot=True, interval=DRAFT_PAUSE_MS)
        self._pause.timeout.connect(lambda: self.draft_due.emit(self.form))
        form.changed.connect(self._pause.start)
        body = QWidget(self)
        columns = QHBoxLayout(body)
        columns.setContentsMargins(0, 0, 6, 0)
        columns.setSpacing(10)
        columns.addWidget(self._welded(body), 29)
        columns.addWidget(self._set(body), 37)
        columns.addWidget(self._came(body), 38)
        area = SideArea(body, self)
        self.refusal = RefusalBar(self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 10, 12, 10)
        layout.setSpacing(8)
        layout.addWidget(area, 1)
        layout.addWidget(self.refusal)
        layout.addLayout(self._foot())
        self.outcomes[form.outcome or Outcome.WORKED_WELL].setFocus()
        self._area = area

    def show_refusal(self, error: WeldsError) -> None:
        """Say why the weld is not logged; everything stays as it was typed."""
        self.refusal.show_reason(str(error), "", "")
        field = self._fields.get(getattr(error, "field", ""))
        if field is not None:
            field.setFocus()

    def show_thumbnails(self, thumbnails: Mapping[str, bytes | None]) -> None:
        """Show the pictures that are in the log already."""
        self._thumbnails = thumbnails
        self._show_pictures()

    def finish(self) -> None:
        """Close: the weld is in the log, or kept on this computer."""
        self._is_done = True
        self._pause.stop()
        self.accept()

    def closeEvent(self, event: QCloseEvent) -> None:
        self._leave(keep=True)
        super().closeEvent(event)

    def reject(self) -> None:
        self._leave(keep=True)
        super().reject()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        # Enter in a field must not log a weld by the first button in sight.
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            focused = self.focusWidget()
            if isinstance(focused, QPushButton):
                focused.click()
            return
        super().keyPressEvent(event)

    def _leave(self, *, keep: bool) -> None:
        if not self._is_done:
            self._is_done = True
            self._pause.stop()
            self.left.emit(self.form, keep and self.form.is_touched)

    def _sheet(self, title: str, parent: QWidget) -> tuple[QFrame, QVBoxLayout]:
        sheet = QFrame(parent)
        sheet.setProperty("panel", "sheet")
        sheet.setAccessibleName(title)
        layout = QVBoxLayout(sheet)
        layout.setContentsMargins(14, 10, 14, 12)
        layout.setSpacing(6)
        layout.addWidget(label(title, "heading", parent=sheet))
        return sheet, layout

    def _welded(self, parent: QWidget) -> QWidget:
        sheet, layout = self._sheet(self.tr("What was welded"), parent)
        words, metals = self._words, self.form.engine.metals()
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(8)
        self._grid.setVerticalSpacing(5)
        self._grid.setColumnStretch(1, 1)
        self._choice("process", self.tr("&Process"), ChoiceRow(self.tr("Process"), words.processes(), sheet))
        self._metal("metal", self.tr("&Metal"), metals, sheet)
        self._line("thickness", self.tr("&Thickness"), sheet)
        self._metal("other_metal", self.tr("Other metal"), metals, sheet)
        self._line("other_thickness", self.tr("Other piece"), sheet, self.tr("as thick"))
        self._choice("joint", self.tr("&Joint"), ChoiceBox(self.tr("Joint"), words.joints(), sheet))
        self._choice(
            "position", self.tr("Po&sition"), ChoiceBox(self.tr("Position"), words.positions(), sheet)
        )
        self._line("gap", self.tr("&Gap"), sheet, self.tr("none"))
        self._choice("hand", self.tr("&Hand"), ChoiceRow(self.tr("Hand"), words.hands(), sheet))
        self._line("made_at", self.tr("Wh&en"), sheet)
        self._line("welder", self.tr("Wh&o"), sheet)
        self._line("machine", self.tr("M&achine"), sheet)
        self._line("material_lot", self.tr("Material &lot"), sheet)
        layout.addLayout(self._grid)
        layout.addStretch(1)
        return sheet

    def _set(self, parent: QWidget) -> QWidget:
        sheet, layout = self._sheet(self.tr("What was set (correct what you changed)"), parent)
        self.settings = SettingGrid(self.form, sheet)
        self.settings.changed.connect(self.form.set_setting)
        layout.addWidget(self.settings)
        return sheet

    def _came(self, parent: QWidget) -> QWidget:
        sheet, layout = self._sheet(self.tr("What came of it"), parent)
        layout.addWidget(label(self.tr("Faults, where there are any"), "soft", parent=sheet))
        self.faults = FaultPicker(self.form.engine.tables, self.form.texts["process"] or "tig", sheet)
        self.faults.show_faults(self.form.faults)
        self.faults.ticked.connect(self.form.set_fault)
        layout.addWidget(self.faults)
        self.notes = QPlainTextEdit(self.form.texts["notes"], sheet)
        self.notes.setTabChangesFocus(True)
        self.notes.setAccessibleName(self.tr("Notes"))
        self.notes.setFixedHeight(NOTES_PX)
        self.notes.setStyleSheet(NOTES_STYLE)
        self.notes.textChanged.connect(lambda: self.form.set_text("notes", self.notes.toPlainText()))
        named = label(self.tr("&Notes on the bead"), "soft", parent=sheet)
        named.setBuddy(self.notes)
        layout.addWidget(named)
        layout.addWidget(self.notes)
        self.pictures = PictureRow(self.tr("take it off this weld"), sheet)
        self.pictures.clicked.connect(self._on_picture_clicked)
        self.add_pictures = QPushButton(self.tr("Add p&ictures…"), sheet)
        self.add_pictures.setAutoDefault(False)
        self.add_pictures.clicked.connect(self._on_add_pictures)
        layout.addWidget(self.pictures)
        layout.addWidget(self.add_pictures, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addStretch(1)
        self._show_pictures()
        return sheet

    def _foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(8)
        self.throw_away = QPushButton(self.tr("Throw away"), self)
        self.throw_away.clicked.connect(self._on_throw_away)
        self.later = QPushButton(self.tr("Keep for later"), self)
        self.later.clicked.connect(self.reject)
        row.addWidget(self.throw_away)
        row.addWidget(self.later)
        row.addStretch(1)
        row.addWidget(label(self.tr("How did it come out? One click logs it:"), "value", parent=self))
        self.outcomes: dict[str, QPushButton] = {}
        for outcome, words in (
            (Outcome.WORKED_WELL, self.tr("Worked &well")),
            (Outcome.WORKED, self.tr("Wor&ked")),
            (Outcome.FAILED, self.tr("&Failed")),
        ):
            button = QPushButton(words, self)
            button.setMinimumWidth(120)
            button.setAutoDefault(False)
            if outcome == (self.form.outcome or Outcome.WORKED_WELL):
                button.setProperty("kind", "main")
            said = words.replace("&", "")
            button.setAccessibleName(self.tr("Log it: {words}").format(words=said))
            button.clicked.connect(lambda _checked=False, chosen=outcome: self._on_outcome(chosen))
            self.outcomes[outcome.value] = button
            row.addWidget(button)
        for button in (self.throw_away, self.later):
            button.setAutoDefault(False)
        return row

    def _line(self, name: str, words: str, parent: QWidget, hint: str = "") -> None:
        field = QLineEdit(self.form.texts[name], parent)
        field.setPlaceholderText(hint)
        field.setCursorPosition(0)
        field.textEdited.connect(lambda text: self.form.set_text(name, text))
        self._place(name, words, field)

    def _choice(self, name: str, words: str, field: ChoiceBox | ChoiceRow) -> None:
        field.set_value(self.form.texts[name])
        if not self.form.texts[name] and name != "hand":
            self.form.texts[name] = field.value()
        field.chosen.connect(lambda value: self.form.set_text(name, value))
        self._place(name, words, field)

    def _metal(self, name: str, words: str, metals: object, parent: QWidget) -> None:
        field = MetalPicker(words.replace("&", ""), parent)
        field.set_options(metals)  # type: ignore[arg-type]
        field.set_value(self.form.texts[name])
        if name == "other_metal":
            field.line.setPlaceholderText(self.tr("the same"))
        field.chosen.connect(lambda value: self.form.set_text(name, value))
        field.typed.connect(lambda text: self.form.set_text(name, text))
        self._place(name, words, field)

    def _place(self, name: str, words: str, field: QLineEdit | ChoiceBox | ChoiceRow | MetalPicker) -> None:
        row = self._grid.rowCount()
        named = label(words, "soft", parent=self)
        named.setBuddy(field.focusProxy() or field)
        if isinstance(field, QLineEdit):
            field.setAccessibleName(words.replace("&", ""))
        self._fields[name] = field
        self._grid.addWidget(named, row, 0)
        self._grid.addWidget(field, row, 1)

    def _show_pictures(self) -> None:
        pictures = self.form.pictures
        self.pictures.show_names([each.name for each in pictures])
        for place, picture in enumerate(pictures):
            if isinstance(picture, Photo):
                self.pictures.show_picture(place, self._thumbnails.get(picture.sha256))
            else:
                self.pictures.show_file(place, picture)

    def _on_add_pictures(self) -> None:
        files = self._prompts.ask_open_paths(
            self.tr("Pictures of this weld"), self.tr("Pictures ({kinds})").format(kinds=PICTURE_KINDS)
        )
        if files:
            self.form.add_pictures(files)
            self._show_pictures()

    def _on_picture_clicked(self, place: int) -> None:
        self.form.remove_picture(self.form.pictures[place])
        self._show_pictures()

    def _on_throw_away(self) -> None:
        self._leave(keep=False)
        super().reject()

    def _on_outcome(self, outcome: Outcome) -> None:
        try:
            reading = self.form.reading(outcome)
        except WeldsError as error:
            self.show_refusal(error)
        else:
            self.refusal.hide()
            self.logged.emit(reading)

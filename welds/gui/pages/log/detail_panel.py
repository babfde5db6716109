"""One logged weld in full, with its pictures and what can be done with it."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QPushButton, QVBoxLayout, QWidget

from welds.gui.pages.log.picture_row import PictureRow
from welds.gui.pages.log.presenter import Detail
from welds.gui.widgets.side_area import SideArea
from welds.gui.widgets.texts import clear_layout, label, set_property, set_text

WIDTH_PX = 400


class DetailPanel(QFrame):
    """Shows a detail; its buttons say what the person wants."""

    change_wanted = Signal()
    remove_wanted = Signal()
    sheet_wanted = Signal()
    card_wanted = Signal()
    picture_wanted = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self.setAccessibleName(self.tr("The weld in hand"))
        self.setFixedWidth(WIDTH_PX)
        body = QWidget(self)
        self._title = label(role="value", wrap=True, parent=body)
        self._outcome = label(role="value", wrap=True, parent=body)
        self._faults = label(wrap=True, parent=body)
        self._notes = label(wrap=True, parent=body)
        self._notes.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.pictures = PictureRow(self.tr("see it in full"), body)
        self.pictures.clicked.connect(self.picture_wanted)
        self._lines = QGridLayout()
        self._lines.setHorizontalSpacing(10)
        self._lines.setVerticalSpacing(3)
        self._lines.setColumnStretch(1, 1)
        inner = QVBoxLayout(body)
        inner.setContentsMargins(14, 10, 8, 8)
        inner.setSpacing(6)
        for part in (self._title, self._outcome, self._faults, self._notes, self.pictures):
            inner.addWidget(part)
        inner.addLayout(self._lines)
        inner.addStretch(1)
        self._body = body
        self.area = SideArea(body, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 8)
        layout.setSpacing(4)
        layout.addWidget(self.area, 1)
        layout.addLayout(self._buttons())
        self.show_detail(None, can_write=True)

    def show_detail(self, detail: Detail | None, *, can_write: bool) -> None:
        """Show a weld, or that none is in hand."""
        clear_layout(self._lines)
        for button in (self.change, self.remove):
            button.setEnabled(detail is not None and can_write)
        for button in (self.sheet, self.card):
            button.setEnabled(detail is not None)
        if detail is None:
            set_text(self._title, self.tr("No weld in hand."))
            for part in (self._outcome, self._faults, self._notes):
                set_text(part, "")
            self.pictures.show_names(())
            return
        number = f"{detail.entry.number}  ·  " if detail.entry.number is not None else ""
        set_text(self._title, f"{number}{detail.title}")
        set_property(self._outcome, "tone", detail.tone)
        set_text(self._outcome, detail.outcome[:1].upper() + detail.outcome[1:])
        set_text(
            self._faults, self.tr("Faults: {faults}").format(faults=detail.faults) if detail.faults else ""
        )
        set_text(self._notes, detail.notes)
        self.pictures.show_names([photo.name for photo in detail.entry.photos])
        for row, (name, words) in enumerate(detail.lines):
            top = Qt.AlignmentFlag.AlignTop
            self._lines.addWidget(label(name, "soft", wrap=True, parent=self._body), row, 0, top)
            self._lines.addWidget(label(words, wrap=True, parent=self._body), row, 1, top)

    def show_pictures(self, uid: str, pictures: Sequence[bytes | None], detail: Detail | None) -> None:
        """Put the pictures on their buttons, if they are this weld's."""
        if detail is not None and detail.entry.uid == uid:
            self.pictures.show_pictures(pictures)

    def _buttons(self) -> QGridLayout:
        self.change = QPushButton(self.tr("&Change…"), self)
        self.remove = QPushButton(self.tr("&Remove"), self)
        self.sheet = QPushButton(self.tr("Procedure &sheet…"), self)
        self.card = QPushButton(self.tr("To the set-&up page"), self)
        grid = QGridLayout()
        grid.setContentsMargins(12, 0, 12, 0)
        grid.setSpacing(6)
        for place, (button, signal) in enumerate(
            (
                (self.change, self.change_wanted),
                (self.remove, self.remove_wanted),
                (self.sheet, self.sheet_wanted),
                (self.card, self.card_wanted),
            )
        ):
            button.clicked.connect(signal)
            grid.addWidget(button, place // 2, place % 2)
        return grid

"""Making and changing a job without writing its file by hand: all entries, a form for the chosen one."""

from collections.abc import Mapping
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QMenu,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from welds.gui.pages.job.entry_form import EntryForm
from welds.gui.widgets.texts import label, set_text
from welds.job.job_form import KINDS, TO_ADD
from welds.language import tr

_LIST_PX = 300
_PLACE = Qt.ItemDataRole.UserRole

Place = tuple[str, str]
"""Section and id."""


class EditTab(QWidget):
    """Asks through `saved` and `removed`; what was typed and is not in the file stays in `drafts`."""

    saved = Signal(str, str, object)
    removed = Signal(str, str)

    def __init__(
        self,
        entries: Mapping[str, Mapping[str, Mapping[str, str]]],
        metals: list[str],
        drafts: Mapping[Place, Mapping[str, str]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._entries, self._metals = entries, metals
        self.drafts = dict(drafts)
        self.form: EntryForm | None = None
        self.list = QListWidget(self)
        self.list.setAccessibleName(self.tr("All of the job"))
        self.list.setFixedWidth(_LIST_PX)
        self.list.setSpacing(3)
        self.add = QPushButton(self.tr("&Add"), self)
        self.save = QPushButton(self.tr("&Save"), self)
        self.remove = QPushButton(self.tr("Take it &out"), self)
        self.trouble = label(tone="warn", wrap=True, parent=self)
        self.area = QScrollArea(self)
        self.area.setWidgetResizable(True)
        self.area.setAccessibleName(self.tr("Values"))
        self._fill()
        self._lay_out()
        self.list.currentItemChanged.connect(self._on_chosen)
        self.save.clicked.connect(self._on_save)
        self.remove.clicked.connect(self._on_remove)
        self.show_trouble("")
        self._choose_first()

    def begin(self, section: str) -> None:
        """Offer an empty form for one more entry."""
        self.list.setCurrentRow(-1)
        self._open(section, "")
        if self.form is not None:
            self.form.name.setFocus()

    def show_entry(self, section: str, key: str) -> None:
        """Choose an entry where it is there."""
        for row in range(self.list.count()):
            item = self.list.item(row)
            if item is not None and item.data(_PLACE) == [section, key]:
                self.list.setCurrentItem(item)

    def show_trouble(self, text: str) -> None:
        """Say why the form was not written, or nothing."""
        set_text(self.trouble, text)

    def _fill(self) -> None:
        for section in KINDS:
            for key in self._entries.get(section, {}):
                item = QListWidgetItem(self.list)
                item.setData(_PLACE, [section, key])
                self._name(item)
        menu = QMenu(self.add)
        for section, kind in TO_ADD.items():
            menu.addAction(tr(kind), partial(self.begin, section))
        self.add.setMenu(menu)

    def _name(self, item: QListWidgetItem) -> None:
        section, key = item.data(_PLACE)
        draft = self.tr(" (not saved)") if (section, key) in self.drafts else ""
        item.setText(f"{key}{draft}\n{tr(KINDS[section])}")

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.addWidget(self.list, 1)
        left.addWidget(self.add)
        buttons = QHBoxLayout()
        buttons.addWidget(self.save)
        buttons.addWidget(self.remove)
        buttons.addStretch(1)
        right = QVBoxLayout()
        right.addWidget(self.area, 1)
        right.addWidget(self.trouble)
        right.addLayout(buttons)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 0)
        layout.addLayout(left)
        layout.addLayout(right, 1)

    def _choose_first(self) -> None:
        if self.list.count():
            self.list.setCurrentRow(0)
        else:
            self.begin(next(iter(KINDS)))

    def _on_chosen(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            section, key = item.data(_PLACE)
            self._open(section, key)

    def keep_draft(self) -> None:
        """Keep what was typed and is not in the file."""
        if self.form is None:
            return
        place = (self.form.section, self.form.key)
        typed = self.form.fields()
        written = {name: value for name, value in self._written(*place).items() if name != "id"}
        if typed != written:
            self.drafts[place] = typed
        else:
            self.drafts.pop(place, None)
        for row in range(self.list.count()):
            item = self.list.item(row)
            if item is not None:
                self._name(item)

    def forget(self, section: str, key: str) -> None:
        """Let go of what was typed: it is in the file now."""
        self._entries = {**self._entries, section: {**self._entries.get(section, {}), key: self._typed(key)}}
        self.drafts.pop((section, key), None)
        self.drafts.pop((section, ""), None)
        if self.form is not None:
            self.form.key = key

    def _typed(self, key: str) -> Mapping[str, str]:
        return {"id": key, **(self.form.fields() if self.form is not None else {})}

    def _written(self, section: str, key: str) -> Mapping[str, str]:
        return self._entries.get(section, {}).get(key, {})

    def _open(self, section: str, key: str) -> None:
        self.keep_draft()
        fields = self.drafts.get((section, key), self._written(section, key))
        self.form = EntryForm(section, key, fields, self._metals, self)
        self.area.setWidget(self.form)
        self.remove.setEnabled(bool(key))
        self.show_trouble("")

    def _on_save(self) -> None:
        if self.form is not None:
            self.saved.emit(self.form.section, self.form.entry_key(), self.form.fields())

    def _on_remove(self) -> None:
        if self.form is not None and self.form.key:
            self.removed.emit(self.form.section, self.form.key)

"""The bench page: machines on the left, the form of one in the middle, the shelf on the right."""

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from welds.gui.output import NoOutput
from welds.gui.pages.bench.form_panel import FormPanel
from welds.gui.pages.bench.presenter import BenchPresenter, MachineLine, Standing
from welds.gui.pages.bench.shelf_panel import ShelfPanel
from welds.gui.widgets.choices import ChoiceBox
from welds.gui.widgets.side_area import SideArea
from welds.gui.widgets.texts import label, set_property, set_text
from welds.language import tr


class BenchView(QWidget):
    """Builds the three columns and connects them; everything about welding is the presenter's."""

    shown = Signal()

    def __init__(self, presenter: BenchPresenter, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._presenter = presenter
        self.output = NoOutput()
        self.form = FormPanel(self)
        self.shelf = ShelfPanel(presenter.offer, self)
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.addWidget(self._left())
        splitter.addWidget(SideArea(self.form, self))
        splitter.addWidget(SideArea(self.shelf, self))
        for place, stretch in enumerate((0, 3, 2)):
            splitter.setStretchFactor(place, stretch)
        splitter.setChildrenCollapsible(False)
        splitter.setSizes([300, 620, 446])
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(splitter)
        self._connect()
        presenter.start()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.shown.emit()

    def _left(self) -> QWidget:
        side = QWidget(self)
        self.list = QListWidget(side)
        self.list.setAccessibleName(self.tr("Machines"))
        self.list.setWordWrap(True)
        heading = label(self.tr("Machines"), "heading", parent=side)
        heading.setBuddy(self.list)
        self.use = QPushButton(self.tr("&Use this machine"), side)
        self.remove = QPushButton(self.tr("&Remove it"), side)
        kinds = [(each, tr(each)) for each in self._presenter.templates]
        self.templates = ChoiceBox(self.tr("Kind to add"), kinds, side)
        self.add = QPushButton(self.tr("&Add"), side)
        self.undo = QPushButton(self.tr("U&ndo"), side)
        self.undo.setToolTip(self.tr("Take the last change back (Ctrl+Z)"))
        self.save = QPushButton(self.tr("&Save the bench"), side)
        self.standing = label(role="small", wrap=True, parent=side)
        self.preview = label(wrap=True, parent=side)
        layout = QVBoxLayout(side)
        layout.setContentsMargins(12, 8, 8, 8)
        layout.setSpacing(6)
        layout.addWidget(heading)
        layout.addWidget(self.list, 1)
        layout.addLayout(self._row(self.use, self.remove))
        layout.addLayout(self._row(self.templates, self.add))
        layout.addLayout(self._row(self.undo, self.save))
        layout.addWidget(self.standing)
        layout.addWidget(self._preview_sheet(side), 2)
        side.setMinimumWidth(max(260, side.minimumSizeHint().width()))
        return side

    def _preview_sheet(self, side: QWidget) -> QWidget:
        inside = QWidget(side)
        inside.setProperty("scrolled", "true")
        layout = QVBoxLayout(inside)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(label(self.tr("What the card would say now"), "heading", parent=inside))
        layout.addWidget(self.preview)
        layout.addStretch(1)
        return SideArea(inside, self)

    def _row(self, *widgets: QWidget) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(6)
        for widget in widgets:
            row.addWidget(widget)
        return row

    def _connect(self) -> None:
        presenter, form, shelf = self._presenter, self.form, self.shelf
        self.list.currentRowChanged.connect(presenter.select)
        self.use.clicked.connect(presenter.use)
        self.remove.clicked.connect(presenter.remove)
        self.add.clicked.connect(lambda: presenter.add(self.templates.value()))
        self.save.clicked.connect(presenter.save)
        self.undo.clicked.connect(presenter.undo)
        keys = QShortcut(QKeySequence(QKeySequence.StandardKey.Undo), self)
        keys.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        keys.activated.connect(presenter.undo)
        form.edited.connect(presenter.set_field)
        shelf.plain_ticked.connect(presenter.tick)
        shelf.sizes_ticked.connect(presenter.tick_sizes)
        shelf.gases_changed.connect(presenter.set_gases)
        shelf.helmets_edited.connect(presenter.set_helmets)
        shelf.lens_chosen.connect(presenter.set_lens)
        presenter.machines_changed.connect(self._on_machines_changed)
        presenter.units_changed.connect(form.set_units)
        presenter.units_changed.connect(shelf.set_units)
        presenter.form_changed.connect(form.show_texts)
        presenter.faults_changed.connect(form.show_faults)
        presenter.shelf_changed.connect(shelf.show_shelf)
        presenter.preview_changed.connect(self.preview.setText)
        presenter.standing_changed.connect(self._on_standing_changed)

    def _on_machines_changed(self, machines: tuple[MachineLine, ...], place: int) -> None:
        with QSignalBlocker(self.list):
            self.list.clear()
            self.list.addItems(
                [
                    self.tr("{name}, in use").format(name=line.name) if line.is_in_use else line.name
                    for line in machines
                ]
            )
            self.list.setCurrentRow(place)
        self.form.setEnabled(bool(machines))
        self.use.setEnabled(bool(machines))
        self.remove.setEnabled(bool(machines))

    def _on_standing_changed(self, standing: Standing) -> None:
        set_text(self.standing, standing.words)
        set_property(self.standing, "tone", "" if standing.is_sound else "warn")
        can_save = standing.is_unsaved and standing.is_sound
        self.save.setEnabled(can_save)
        self.undo.setEnabled(self._presenter.can_undo)
        set_property(self.save, "kind", "main" if can_save else "")

"""The page of the log: filters on top, the table with the weld in hand beside it, actions at the foot."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QUrl, Signal
from PySide6.QtGui import QDesktopServices, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QMenu, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from welds.errors import LogbookUnavailableError
from welds.gui.models.entry_model import Listing
from welds.gui.pages.log.detail_panel import DetailPanel
from welds.gui.pages.log.entering import Entering
from welds.gui.pages.log.entry_table import EntryTable
from welds.gui.pages.log.files import LogFiles
from welds.gui.pages.log.filter_bar import FilterBar
from welds.gui.pages.log.notices import Notices
from welds.gui.pages.log.output import LogOutput
from welds.gui.pages.log.presenter import Detail, LogPresenter
from welds.gui.prompts import Prompts
from welds.gui.widgets.texts import label
from welds.logbook.places import place_of

if TYPE_CHECKING:
    from pathlib import Path

    from welds.gui.pages.log.import_view import ImportView
    from welds.logbook.importing import Preview


class LogView(QWidget):
    """Builds the page and connects it; everything about the log is the presenter's and the desk's."""

    card_wanted = Signal(object)

    def __init__(
        self,
        presenter: LogPresenter,
        entering: Entering,
        files: LogFiles,
        output: LogOutput,
        prompts: Prompts,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._presenter, self._entering, self._files, self._prompts = presenter, entering, files, prompts
        self.output = output
        self._names: tuple[str, ...] = ()
        self.notices = Notices(self)
        self.filter = FilterBar(presenter.engine.tables, self)
        self.table = EntryTable(self)
        self.detail = DetailPanel(self)
        self.imports: ImportView | None = None
        self.empty = label(role="soft", wrap=True, parent=self)
        self.count = label(role="soft", parent=self)
        self.stack = QStackedWidget(self)
        self.stack.addWidget(self._browsing())
        layout = QVBoxLayout(self)
        layout.setContentsMargins(10, 8, 10, 8)
        layout.setSpacing(6)
        layout.addWidget(self.notices)
        layout.addWidget(self.filter)
        layout.addWidget(self.stack, 1)
        layout.addLayout(self._foot())
        self._connect()
        presenter.has_page = True
        self.table.entries.set_units(presenter.units)
        self._show_trouble(presenter.desk.trouble)
        self.notices.show_work(presenter.desk.at_work)
        self._on_opened()

    def start(self) -> None:
        """Read what the page shows and put the keyboard on the search."""
        self._presenter.show()
        self.filter.text.setFocus()

    def _browsing(self) -> QWidget:
        page = QWidget(self)
        row = QHBoxLayout(page)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        side = QVBoxLayout()
        side.setSpacing(0)
        side.addWidget(self.table, 1)
        side.addWidget(self.empty)
        self.empty.setMargin(12)
        self.empty.hide()
        row.addLayout(side, 1)
        row.addWidget(self.detail)
        return page

    def _foot(self) -> QHBoxLayout:
        self.add = QPushButton(self.tr("&Log a weld…"), self)
        self.add.setProperty("kind", "main")
        self.bring_in = QPushButton(self.tr("&Import…"), self)
        self.export = QPushButton(self.tr("&Export…"), self)
        self.back_up = QPushButton(self.tr("&Back up…"), self)
        self.restore = QPushButton(self.tr("Res&tore…"), self)
        self.which = QPushButton(self.tr("Which lo&g"), self)
        menu = QMenu(self.which)
        menu.addAction(self.tr("Use another log…"), self._files.choose_log)
        menu.addAction(self.tr("Use a log on a server…"), self._files.choose_server)
        menu.addAction(self.tr("Use my own log"), self._files.use_own_log)
        self.which.setMenu(menu)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.count, 1)
        for button in (self.add, self.bring_in, self.export, self.back_up, self.restore, self.which):
            row.addWidget(button)
        return row

    def _connect(self) -> None:
        presenter, entering, files = self._presenter, self._entering, self._files
        self.filter.changed.connect(presenter.set_filter)
        self.filter.cleared.connect(presenter.clear_filter)
        self.filter.nearest_toggled.connect(presenter.show_nearest)
        self.filter.saved_chosen.connect(presenter.use_filter)
        self.filter.save_wanted.connect(self._on_save_wanted)
        self.filter.forget_wanted.connect(self._on_forget_wanted)
        presenter.filter_shown.connect(self._on_filter_shown)
        presenter.filter_refused.connect(self.filter.show_trouble)
        presenter.saved_changed.connect(self._on_saved_changed)
        presenter.values_changed.connect(self.filter.show_values)
        self.table.entries.blocks_wanted.connect(presenter.want_blocks)
        self.table.sort_wanted.connect(presenter.sort_by)
        self.table.chosen.connect(presenter.choose)
        self.table.remove_wanted.connect(presenter.remove)
        self.table.change_wanted.connect(self._on_change_wanted)
        presenter.listing_changed.connect(self._on_listing_changed)
        presenter.blocks_ready.connect(self._on_blocks_ready)
        presenter.units_changed.connect(self.table.entries.set_units)
        presenter.detail_changed.connect(self._on_detail_changed)
        presenter.photos_ready.connect(
            lambda uid, pictures: self.detail.show_pictures(uid, pictures, presenter.detail)
        )
        self.detail.change_wanted.connect(self._on_change_wanted)
        self.detail.remove_wanted.connect(presenter.remove)
        self.detail.sheet_wanted.connect(self.output.save_pdf)
        self.detail.card_wanted.connect(self._on_card_wanted)
        self.detail.picture_wanted.connect(self._on_picture_wanted)
        presenter.undo_changed.connect(self.notices.show_undo)
        self.notices.undo_wanted.connect(presenter.undo)
        self.notices.way_chosen.connect(files.go)
        self.notices.draft_wanted.connect(entering.go_on)
        self.notices.draft_unwanted.connect(entering.throw_away)
        entering.drafts_changed.connect(self.notices.show_drafts)
        presenter.desk.trouble_changed.connect(self._show_trouble)
        presenter.desk.opened.connect(self._on_opened)
        presenter.desk.at_work_changed.connect(self.notices.show_work)
        self.notices.stop_wanted.connect(presenter.desk.stop_work)
        self.add.clicked.connect(lambda: entering.log_anew(presenter.units))
        self.export.clicked.connect(files.export)
        self.bring_in.clicked.connect(files.look_into)
        self.back_up.clicked.connect(files.back_up)
        self.restore.clicked.connect(lambda: files.restore())
        files.preview_changed.connect(self._on_preview_changed)
        for keys, action in (
            (QKeySequence.StandardKey.Undo, presenter.undo),
            (QKeySequence.StandardKey.Find, self.filter.text.setFocus),
        ):
            shortcut = QShortcut(keys, self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(action)

    def _on_listing_changed(self, listing: Listing) -> None:
        presenter = self._presenter
        self.table.show_listing(listing)
        self.filter.show_nearest(presenter.is_nearest)
        if not listing.count:
            presenter.choose(None)
        self.count.setText(self._count_words(listing) + self._where_words())
        self.table.setVisible(listing.count > 0)
        self.empty.setVisible(listing.count == 0)
        self.empty.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.empty.setMinimumHeight(0 if listing.count else self.table.height())
        self.empty.setText(self._empty_words())

    def _count_words(self, listing: Listing) -> str:
        if self._presenter.is_nearest:
            return self.tr("{count} welds nearest to the card, nearest first").format(count=listing.count)
        if not listing.is_counted:
            return self.tr("counting…")
        if self._presenter.is_filtered:
            return self.tr("{count} welds fit").format(count=f"{listing.count:,}".replace(",", " "))
        return self.tr("{count} welds").format(count=f"{listing.count:,}".replace(",", " "))

    def _where_words(self) -> str:
        """Return which log it is, where it is not the person's own."""
        place = self._presenter.desk.place
        if place == place_of():
            return ""
        return self.tr(" in {log}").format(log=place.path.name if place.path else place.name)

    def _empty_words(self) -> str:
        if self._presenter.is_nearest:
            return self.tr("No logged weld comes near the card on the set-up page.")
        if self._presenter.is_filtered:
            return self.tr("No logged weld fits. “Show all” takes the filter away.")
        return self.tr(
            "Nothing is logged yet. After a weld, “Log this weld” on the set-up page writes down what was set"
            " and what came of it; the next card for a like joint learns from it."
        )

    def _on_blocks_ready(self, number: int, blocks: object) -> None:
        self.table.entries.put(number, blocks)  # type: ignore[arg-type]
        current = self.table.currentIndex()
        if current.isValid() and self._presenter.detail is None:
            self._presenter.choose(self.table.entries.entry(current.row()))

    def _on_detail_changed(self, detail: Detail | None) -> None:
        self.detail.show_detail(detail, can_write=not self._presenter.desk.is_read_only)

    def _on_filter_shown(self, fields: dict[str, str]) -> None:
        for field in self.filter.fields.values():
            field.blockSignals(True)
        self.filter.show_fields(fields)
        for field in self.filter.fields.values():
            field.blockSignals(False)

    def _on_saved_changed(self, names: tuple[str, ...]) -> None:
        self._names = names
        self.filter.show_saved(names)

    def _on_save_wanted(self) -> None:
        name = self._prompts.ask_text(self.tr("Keep this filter"), self.tr("A name for it:"))
        if name:
            self._presenter.save_filter(name)

    def _on_forget_wanted(self) -> None:
        name = self._prompts.ask_choice(self.tr("Forget a filter"), self.tr("Which one?"), self._names)
        if name:
            self._presenter.forget_filter(name)

    def _on_change_wanted(self) -> None:
        detail = self._presenter.detail
        if detail is not None and not self._presenter.desk.is_read_only:
            self._entering.change(detail.entry, self._presenter.units)

    def _on_card_wanted(self) -> None:
        if self._presenter.detail is not None:
            self.card_wanted.emit(self._presenter.detail.entry)

    def _on_picture_wanted(self, place: int) -> None:
        detail = self._presenter.detail
        if detail is None:
            return
        photo = detail.entry.photos[place]
        self._presenter.desk.ask(
            lambda log: log.photo_file(photo),
            _open_picture,
        )

    def _on_preview_changed(self, shown: "tuple[str, Preview] | None") -> None:
        self.filter.setVisible(shown is None)
        if shown is None:
            self.stack.setCurrentIndex(0)
            return
        if self.imports is None:
            from welds.gui.pages.log.import_view import ImportView

            self.imports = ImportView(self)
            self.imports.accepted.connect(self._files.accept)
            self.imports.dropped.connect(self._files.drop_preview)
            self.stack.addWidget(self.imports)
        self.imports.show_preview(*shown, self._presenter.units)
        self.stack.setCurrentWidget(self.imports)

    def _show_trouble(self, trouble: LogbookUnavailableError | None) -> None:
        self.notices.show_trouble(trouble, self._files.ways_out(trouble) if trouble else ())

    def _on_opened(self) -> None:
        desk = self._presenter.desk
        is_read_only = desk.is_read_only
        self.notices.show_remarks(desk.remarks, is_read_only=is_read_only)
        for button in (self.add, self.bring_in):
            button.setEnabled(not is_read_only)


def _open_picture(file: "Path | None") -> None:
    """Let the system show a picture, where the log keeps it as a file."""
    if file is not None:
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(file)))

"""The page of the log without its widgets: the welds on show, the one in hand, what can be undone."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from welds.advice.request import Request
from welds.errors import InputError, WeldsError
from welds.gui.engine import Engine
from welds.gui.models.entry_model import BLOCK, Listing
from welds.gui.pages.log import words
from welds.gui.pages.log.desk import LogDesk
from welds.logbook.entry import Entry
from welds.logbook.filter_fields import FIELDS, fields_of, filter_of
from welds.logbook.filters import Filter
from welds.logbook.settings import build_kinds
from welds.quantities.units import Units
from welds.reference.faults import imperfection_words
from welds.report.wording import outcome_words

if TYPE_CHECKING:
    from welds.logbook.logbook import Logbook, Receipt

MOST_ALIKE = 24


@dataclass(frozen=True, slots=True)
class Detail:
    """One weld in words."""

    entry: Entry
    title: str
    outcome: str
    tone: str
    faults: str
    lines: tuple[tuple[str, str], ...]
    notes: str


@dataclass(frozen=True, slots=True)
class Undo:
    """What was done last, in words, the token that takes it back, and whether that does it again."""

    words: str
    token: str
    is_redo: bool = False


class LogPresenter(QObject):
    """Asks the log for what is wanted and passes on what comes; decides nothing about welding."""

    listing_changed = Signal(object)
    blocks_ready = Signal(int, object)
    filter_refused = Signal(str, str)
    filter_shown = Signal(object)
    saved_changed = Signal(object)
    values_changed = Signal(object)
    detail_changed = Signal(object)
    photos_ready = Signal(str, object)
    undo_changed = Signal(object)
    units_changed = Signal(object)
    said = Signal(str)
    refused = Signal(str, str)

    def __init__(
        self,
        engine: Engine,
        desk: LogDesk,
        request_now: Callable[[], Request | None],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._engine, self.desk, self._request_now = engine, desk, request_now
        self._units = Units.METRIC
        self._fields: dict[str, str] = dict.fromkeys(FIELDS, "")
        self._saved: Mapping[str, Filter] = {}
        self._sort, self._is_descending = "made_at", True
        self._is_nearest = False
        self._number = 0
        self._counted: tuple[Filter, int] | None = None
        self._detail: Detail | None = None
        self._undo: Undo | None = None
        self._is_old = True
        self.has_page = False
        desk.changed.connect(self._on_changed)

    @property
    def engine(self) -> Engine:
        """What the page asks of the layers below."""
        return self._engine

    @property
    def units(self) -> Units:
        """The units that words are shown in."""
        return self._units

    @property
    def detail(self) -> Detail | None:
        """The weld in hand."""
        return self._detail

    @property
    def undo_offer(self) -> Undo | None:
        """What can be taken back."""
        return self._undo

    @property
    def is_nearest(self) -> bool:
        """True where the welds nearest to the card are on show, not the filtered log."""
        return self._is_nearest

    @property
    def is_filtered(self) -> bool:
        """True where anything is filtered out."""
        return any(value.strip() for value in self._fields.values())

    def show(self) -> None:
        """Read what the page shows, where that is old."""
        if self._is_old or self._is_nearest:
            self._is_old, self._counted = False, None
            self.refresh()
            self._read_lists()

    def set_units(self, units: Units) -> None:
        """Show the same welds in other words."""
        self._units = units
        self.units_changed.emit(units)
        if self._detail is not None:
            self.choose(self._detail.entry)

    # ------------------------------------------------------------------------------------ the listing

    def set_filter(self, name: str, value: str) -> None:
        """Take one changed input of the filter and answer."""
        self._fields[name] = value
        self._is_nearest = False
        self.refresh()

    def clear_filter(self) -> None:
        """Show the whole log again."""
        self._use(dict.fromkeys(FIELDS, ""))

    def show_nearest(self, is_nearest: bool) -> None:
        """Show the welds nearest to the card of the set-up page, or the filtered log again."""
        self._is_nearest = is_nearest
        self.refresh()

    def sort_by(self, sort: str, is_descending: bool) -> None:
        """Put the log in another order."""
        self._sort, self._is_descending = sort, is_descending
        self.refresh()

    def refresh(self, *, is_same_question: bool = False) -> None:
        """Ask the log for what is to be shown: the first welds at once, how many there are when counted.

        Another order of the same welds is not counted again; a table on show keeps its length meanwhile.
        """
        self._number += 1
        number = self._number
        if self._is_nearest:
            self._ask_nearest(number)
            return
        try:
            wanted = filter_of(self._fields, self._engine.tables, self._units)
        except InputError as error:
            self.filter_refused.emit(error.field, str(error))
            return
        self.filter_refused.emit("", "")
        sort, is_descending = self._sort, self._is_descending
        known = self._counted[1] if self._counted is not None and self._counted[0] == wanted else None

        def look(log: "Logbook") -> Listing:
            from welds.logbook.browse import page

            first = page(log, wanted, sort=sort, is_descending=is_descending, limit=BLOCK).entries
            listing = Listing(number, len(first), first, is_same_question=is_same_question)
            if len(first) < BLOCK:
                return listing
            if known is not None:
                return replace(listing, count=known)
            return counted(log, listing) if is_same_question else replace(listing, is_counted=False)

        def counted(log: "Logbook", listing: Listing) -> Listing:
            from welds.logbook.browse import count

            return replace(listing, count=count(log, wanted), is_same_question=True, is_counted=True)

        def done(listing: Listing) -> None:
            self.listing_changed.emit(listing)
            if listing.is_counted:
                self._counted = (wanted, listing.count)
            else:
                self.desk.ask(lambda log: counted(log, listing), done, "listing")

        self.desk.ask(look, done, "listing")

    def want_blocks(self, wanted: tuple[int, Sequence[int]]) -> None:
        """Bring blocks of the listing on show."""
        number, places = wanted
        if number != self._number:
            return
        asked = filter_of(self._fields, self._engine.tables, self._units)
        sort, is_descending = self._sort, self._is_descending

        def work(log: "Logbook") -> list[tuple[int, Sequence[Entry]]]:
            from welds.logbook.browse import page

            return [
                (
                    place,
                    page(
                        log,
                        asked,
                        sort=sort,
                        is_descending=is_descending,
                        offset=place * BLOCK,
                        limit=BLOCK,
                    ).entries,
                )
                for place in places
            ]

        self.desk.ask(work, lambda blocks: self.blocks_ready.emit(number, blocks), "blocks")

    # ----------------------------------------------------------------------------------- kept filters

    def save_filter(self, name: str) -> None:
        """Keep the filter under a name."""
        try:
            wanted = filter_of(self._fields, self._engine.tables, self._units)
        except InputError as error:
            self.filter_refused.emit(error.field, str(error))
            return

        def work(log: "Logbook") -> None:
            from welds.logbook.browse import save_filter

            save_filter(log, name, wanted)

        self._write_list(work, self.tr("Filter kept: {name}").format(name=name.strip()))

    def use_filter(self, name: str) -> None:
        """Filter as it was kept under this name."""
        if name in self._saved:
            self._use(fields_of(self._saved[name]))

    def forget_filter(self, name: str) -> None:
        """Remove a kept filter."""

        def work(log: "Logbook") -> None:
            from welds.logbook.browse import forget_filter

            forget_filter(log, name)

        self._write_list(work, self.tr("Filter forgotten: {name}").format(name=name))

    # -------------------------------------------------------------------------------- the weld in hand

    def choose(self, entry: Entry | None) -> None:
        """Take a weld in hand."""
        is_other = entry is not None and (self._detail is None or self._detail.entry != entry)
        self._detail = None if entry is None else self._detail_of(entry)
        self.detail_changed.emit(self._detail)
        if entry is None or not entry.photos or not is_other:
            return
        photos = entry.photos
        self.desk.ask(
            lambda log: [log.thumbnail(photo) for photo in photos],
            lambda pictures: self.photos_ready.emit(entry.uid, pictures),
            "photos",
        )

    def remove(self) -> None:
        """Take the weld in hand out of the log; that can be undone."""
        if self._detail is None or self._detail.entry.number is None:
            return
        entry, number = self._detail.entry, self._detail.entry.number
        title = self.tr("The weld was not removed")

        def done(receipt: "Receipt") -> None:
            self.choose(None)
            said = self.tr("Removed: {what}").format(what=words.what_words(entry, self._units))
            self.offer_undo(said, receipt.undo)

        self.desk.write(
            lambda log: log.remove(number), done, lambda error: self.refused.emit(title, str(error))
        )

    def offer_undo(self, said: str, token: str | None, *, is_redo: bool = False) -> None:
        """Say what was done, and offer to take it back."""
        self._undo = Undo(said, token, is_redo) if token else None
        self.undo_changed.emit(self._undo)
        if not token:
            self.said.emit(said)

    def undo(self) -> None:
        """Take the last change back; that can be taken back in turn."""
        offer = self._undo
        if offer is None:
            return
        title = self.tr("It was not taken back")

        def done(token: str) -> None:
            said = self.tr("Done again.") if offer.is_redo else self.tr("Taken back.")
            self.offer_undo(said, token, is_redo=not offer.is_redo)

        self.desk.write(
            lambda log: log.undo(offer.token), done, lambda error: self.refused.emit(title, str(error))
        )

    # ----------------------------------------------------------------------------------------- details

    def _ask_nearest(self, number: int) -> None:
        request, tables = self._request_now(), self._engine.tables
        if request is None:
            self.listing_changed.emit(Listing(number, 0, (), is_whole=True))
            return

        def work(log: "Logbook") -> Listing:
            from welds.logbook.alike import similar

            found = [like.entry for like in similar(log, request, tables, MOST_ALIKE)]
            return Listing(number, len(found), found, is_whole=True)

        self.desk.ask(work, self.listing_changed.emit, "listing")

    def _detail_of(self, entry: Entry) -> Detail:
        tables = self._engine.tables
        kinds = tables.derived(build_kinds)
        return Detail(
            entry,
            words.what_words(entry, self._units),
            outcome_words(entry.outcome),
            words.OUTCOME_TONES[entry.outcome],
            ", ".join(imperfection_words(tables, fault) for fault in entry.faults),
            tuple(words.detail_lines(entry, kinds, self._units))[1:],
            entry.notes,
        )

    def _use(self, fields: Mapping[str, str]) -> None:
        self._fields = dict(fields)
        self._is_nearest = False
        self.filter_shown.emit(dict(self._fields))
        self.refresh()

    def _write_list(self, work: "Callable[[Logbook], Any]", said: str) -> None:
        title = self.tr("The filter was not changed")

        def done(_nothing: object) -> None:
            self.said.emit(said)

        def refused(error: WeldsError) -> None:
            self.refused.emit(title, str(error))

        self.desk.write(work, done, refused)

    def _read_lists(self) -> None:
        def work(log: "Logbook") -> tuple[Mapping[str, Filter], dict[str, list[str]]]:
            from welds.logbook.browse import saved, values_of

            return saved(log), {name: values_of(log, name) for name in ("machine", "welder")}

        def done(answer: tuple[Mapping[str, Filter], dict[str, list[str]]]) -> None:
            self._saved = answer[0]
            self.saved_changed.emit(tuple(self._saved))
            self.values_changed.emit(answer[1])

        self.desk.ask(work, done, "lists")

    def _on_changed(self) -> None:
        if not self.has_page:
            self._is_old = True
            return
        self._counted = None
        self.refresh(is_same_question=True)
        self._read_lists()
        if self._detail is None:
            return
        uid = self._detail.entry.uid

        def done(entry: Entry | None) -> None:
            if self._detail is not None and self._detail.entry.uid == uid:
                self.choose(entry)

        self.desk.ask(lambda log: log.find(uid), done, "detail")

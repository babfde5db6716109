"""From a wish to log a weld to the weld in the log: forms, drafts, what was said last time."""

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from welds.advice.card import Card
from welds.errors import WeldsError
from welds.gui.engine import Engine
from welds.gui.pages.log import words
from welds.gui.pages.log.desk import LogDesk
from welds.gui.pages.log.entry_form import EntryForm
from welds.gui.prompts import Prompts
from welds.gui.settings import WindowState
from welds.logbook.entry import Entry
from welds.logbook.fields import Reading
from welds.quantities.units import Units
from welds.report.wording import outcome_words

if TYPE_CHECKING:
    from welds.gui.pages.log.entry_dialog import EntryDialog
    from welds.logbook.logbook import Receipt

USUAL = ("welder", "machine")
"""What is the same from one weld to the next, and remembered."""


class Entering(QObject):
    """Opens a form, keeps it as a draft while it is open, and hands the weld to the log."""

    logged = Signal(str, object)
    said = Signal(str)
    drafts_changed = Signal(object)

    def __init__(
        self,
        engine: Engine,
        desk: LogDesk,
        prompts: Prompts,
        state: WindowState,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._engine, self._desk, self._prompts, self._state = engine, desk, prompts, state
        self.dialog: EntryDialog | None = None

    def log_card(self, card: Card, units: Units) -> None:
        """Write down a weld made by this card."""
        self._open(EntryForm.from_card(self._engine, units, card, self._usual()))

    def log_anew(self, units: Units) -> None:
        """Write down a weld from scratch."""
        self._open(EntryForm(self._engine, units, {"process": "tig", **self._usual()}))

    def change(self, entry: Entry, units: Units) -> None:
        """Correct a logged weld."""
        self._open(EntryForm.of_entry(self._engine, units, entry))

    def look_for_drafts(self) -> None:
        """Say which welds were begun and never logged."""
        self._desk.read_drafts(self.drafts_changed.emit)

    def go_on(self, draft: Mapping[str, Any]) -> None:
        """Go on with a draft; where it changes a logged weld that is gone, it becomes a new one."""
        uid = str(draft.get("changes", ""))
        if not uid:
            self._open(EntryForm.of_draft(self._engine, draft))
            return

        self._desk.ask(
            lambda log: log.find(uid),
            lambda entry: self._open(EntryForm.of_draft(self._engine, draft, entry)),
        )

    def throw_away(self, name: str) -> None:
        """Forget a draft."""
        self._desk.drop_draft(name)
        self.look_for_drafts()

    def _usual(self) -> dict[str, str]:
        return {name: word for name in USUAL if (word := self._state.word_of(f"log_{name}"))}

    def _open(self, form: EntryForm) -> None:
        from welds.gui.pages.log.entry_dialog import EntryDialog

        dialog = EntryDialog(form, self._prompts, self._prompts.window)
        form.setParent(dialog)
        dialog.draft_due.connect(self._keep)
        dialog.left.connect(self._on_left)
        dialog.logged.connect(lambda reading: self._on_logged(dialog, reading))
        dialog.destroyed.connect(self._on_destroyed)
        if form.entry is not None:
            photos = form.entry.photos
            self._desk.ask(
                lambda log: {photo.sha256: log.thumbnail(photo) for photo in photos}, dialog.show_thumbnails
            )
        self.dialog = dialog
        self._prompts.show_form(dialog)

    def _on_destroyed(self) -> None:
        self.dialog = None

    def _keep(self, form: EntryForm) -> None:
        self._desk.keep_draft(form.draft(), form.draft_name, lambda error: self.said.emit(str(error)))

    def _on_left(self, form: EntryForm, keep: bool) -> None:
        if keep:
            self._keep(form)
            self.said.emit(self.tr("Kept as a draft; the page of the log has it."))
        else:
            self._desk.drop_draft(form.draft_name)
        self.look_for_drafts()

    def _on_logged(self, dialog: "EntryDialog", reading: Reading) -> None:
        is_change = dialog.form.entry is not None
        dialog.setEnabled(False)

        def done(receipt: "Receipt") -> None:
            self._close(dialog, reading)
            self.logged.emit(self._said(receipt.entry, is_change=is_change), receipt)

        def refused(error: WeldsError, is_kept: bool = False) -> None:
            if is_kept:
                self._close(dialog, reading)
                self._prompts.tell(self.tr("The weld waits on this computer"), str(error))
                return
            dialog.setEnabled(True)
            dialog.show_refusal(error)

        if is_change:
            self._desk.write(lambda log: log.edit(reading), done, refused)
        else:
            self._desk.add(reading, done, refused)

    def _close(self, dialog: "EntryDialog", reading: Reading) -> None:
        for name in USUAL:
            self._state.write(f"log_{name}", getattr(reading.entry, name))
        self._desk.drop_draft(dialog.form.draft_name)
        dialog.finish()
        self.look_for_drafts()

    def _said(self, entry: Entry, *, is_change: bool) -> str:
        outcome = outcome_words(entry.outcome)
        pattern = self.tr("Changed number {number}: {metal}, {figure}{outcome}.")
        if not is_change:
            pattern = self.tr("Logged as number {number}: {metal}, {figure}{outcome}.")
        figure = words.current_words(entry)
        return pattern.format(
            number=entry.number, metal=entry.metal, figure=f"{figure}, " if figure else "", outcome=outcome
        )


def draft_words(draft: Mapping[str, Any]) -> str:
    """Return a draft in one line."""
    texts = draft.get("texts") or {}
    what = [str(texts.get(name) or "").replace("-", " ") for name in ("process", "metal", "thickness")]
    what.append(words.joint_words(str(texts.get("joint") or "")))
    kept = str(draft.get("kept_at", ""))
    when = f" ({words.when_words(kept)})" if len(kept) >= 10 else ""
    return f"{' '.join(filter(None, what))}{when}"

"""The bars above the log: what is wrong with it, what was just done, what was begun and not logged."""

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from welds.errors import LogbookUnavailableError
from welds.gui.pages.log.entering import draft_words
from welds.gui.pages.log.presenter import Undo
from welds.gui.widgets.notice_bar import NoticeBar

if TYPE_CHECKING:
    from welds.logbook.progress import Step

GO_ON, THROW_AWAY, UNDO, CLOSE, STOP = "go-on", "throw-away", "undo", "close", "stop"

AT_ONCE_MS = 300
"""What is done in less time is not worth a word."""


class Notices(QWidget):
    """Shows the bars that are needed; reports what the person wants done."""

    way_chosen = Signal(str)
    undo_wanted = Signal()
    draft_wanted = Signal(object)
    draft_unwanted = Signal(str)
    stop_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.trouble = NoticeBar("refusal", self)
        self.trouble.chosen.connect(self.way_chosen)
        self.work = NoticeBar("warn", self)
        self.work.chosen.connect(self._on_stop_chosen)
        self._step: Step | None = None
        self._work_due = QTimer(self, singleShot=True, interval=AT_ONCE_MS)
        self._work_due.timeout.connect(self._on_work_due)
        self.remarks = NoticeBar("warn", self)
        self.remarks.chosen.connect(lambda _name: self.remarks.show_notice(""))
        self.undo = NoticeBar("good", self)
        self.undo.chosen.connect(self._on_undo_chosen)
        self.draft = NoticeBar("warn", self)
        self.draft.chosen.connect(self._on_draft_chosen)
        self._name, self._draft = "", dict[str, Any]()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        for bar in (self.work, self.trouble, self.remarks, self.draft, self.undo):
            layout.addWidget(bar)

    def show_work(self, step: "Step | None") -> None:
        """Say how far long work on the log is, with the button that stops it; not of what is done at once."""
        self._step = step
        if step is None:
            self._work_due.stop()
            self.work.show_notice("")
        elif self.work.isHidden():
            if not self._work_due.isActive():
                self._work_due.start()
        elif self.work.buttons:  # else it has been asked to stop
            self.work.say(self._work_words(step))

    def _on_work_due(self) -> None:
        if self._step is not None:
            self.work.show_notice(self._work_words(self._step), ((STOP, self.tr("Stop")),))

    def _work_words(self, step: "Step") -> str:
        if step.stage == "update":
            words = self.tr("The log is being brought up to date, {done} of {total} steps…")
        elif step.stage == "read":
            words = self.tr("Reading the file, {done} of about {total} rows…")
        elif step.stage == "save":
            words = self.tr("Writing the file, {done} of {total} welds…")
        elif step.stage == "restore":
            words = self.tr("Reading the backup, {done} of {total} welds…")
        else:
            words = self.tr("Writing the welds, {done} of {total}…")
        done, total = (f"{number:,}".replace(",", " ") for number in (step.done, step.total))
        return words.format(done=done, total=total)

    def show_trouble(
        self, trouble: LogbookUnavailableError | None, ways_out: Sequence[tuple[str, str]]
    ) -> None:
        """Say what is wrong with the log, and offer what can be done."""
        words = (
            "" if trouble is None else f"{trouble.problem[:1].upper()}{trouble.problem[1:]}.\n{trouble.log}"
        )
        self.trouble.show_notice(words, ways_out)

    def show_remarks(self, remarks: Sequence[str], *, is_read_only: bool) -> None:
        """Say what the person should know although the log works."""
        read_only = (
            [self.tr("This log was opened to read only: nothing can be written.")] if is_read_only else []
        )
        words = "\n".join((*read_only, *(f"{each[:1].upper()}{each[1:]}." for each in remarks)))
        self.remarks.show_notice(words, () if is_read_only else ((CLOSE, self.tr("Understood")),))

    def show_undo(self, undo: Undo | None) -> None:
        """Say what was done, with the button that takes it back."""
        if undo is None:
            self.undo.show_notice("")
            return
        button = self.tr("Do it again") if undo.is_redo else self.tr("Undo")
        self.undo.show_notice(undo.words, ((UNDO, button), (CLOSE, self.tr("Close"))))

    def show_drafts(self, drafts: Mapping[str, Mapping[str, Any]]) -> None:
        """Say that a weld was begun; the newest is offered first."""
        if not drafts:
            self.draft.show_notice("")
            return
        self._name, self._draft = list(drafts.items())[-1]  # type: ignore[assignment]
        what, others = draft_words(self._draft), len(drafts) - 1
        words = self.tr("Begun and not logged: {what}.").format(what=what)
        if others:
            words = self.tr("Begun and not logged: {what} and {count} more.").format(what=what, count=others)
        self.draft.show_notice(words, ((GO_ON, self.tr("Go on")), (THROW_AWAY, self.tr("Throw away"))))

    def _on_stop_chosen(self, _name: str) -> None:
        self.work.show_notice(self.tr("Stopping…"))
        self.stop_wanted.emit()

    def _on_undo_chosen(self, name: str) -> None:
        if name == UNDO:
            self.undo_wanted.emit()
        else:
            self.undo.show_notice("")

    def _on_draft_chosen(self, name: str) -> None:
        self.draft.show_notice("")
        if name == GO_ON:
            self.draft_wanted.emit(self._draft)
        else:
            self.draft_unwanted.emit(self._name)

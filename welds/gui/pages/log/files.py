"""Taking the log out, bringing entries in, backups, sheets; and the way out of trouble with the log."""

from collections.abc import Mapping
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from welds.errors import LogbookUnavailableError, StoppedError, WeldsError
from welds.gui.engine import Engine
from welds.gui.pages.log.desk import LogDesk
from welds.gui.prompts import Prompts
from welds.logbook import offers
from welds.logbook.places import place_of
from welds.quantities.units import Units

if TYPE_CHECKING:
    from welds.gui.pages.log.desk import LongWork
    from welds.logbook.importing import Preview
    from welds.logbook.logbook import Logbook
    from welds.logbook.progress import Progress

AGAIN, READ_ONLY, RESTORE_NEWEST, RESTORE, CHOOSE = "again", "read-only", "newest", "restore", "choose"
GO_ON = "go-on"
_OFFERS: Mapping[str, tuple[str, ...]] = {
    offers.TRY_AGAIN: (AGAIN,),
    offers.OPEN_READ_ONLY: (READ_ONLY,),
    offers.RESTORE: (RESTORE_NEWEST, RESTORE),
    offers.CHOOSE: (CHOOSE,),
    offers.GO_ON: (GO_ON,),
}


class LogFiles(QObject):
    """Asks for files, has the work done in the log's thread, and says what came of it."""

    said = Signal(str)
    preview_changed = Signal(object)
    imported = Signal(str, str)
    address_chosen = Signal(str)

    def __init__(
        self, engine: Engine, desk: LogDesk, prompts: Prompts, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._engine, self._desk, self._prompts = engine, desk, prompts
        self.units = Units.METRIC
        self._preview: Preview | None = None
        self._preview_file = Path()

    @property
    def is_previewing(self) -> bool:
        """True while the rows of a file stand where the log stood."""
        return self._preview is not None

    # ------------------------------------------------------------------------------------- out

    def export(self) -> None:
        """Write every weld to a CSV or JSON file."""
        suggested = f"welds-log-{date.today()}.csv"
        path = self._prompts.ask_save_path(
            self.tr("Export the log"), suggested, self.tr("CSV (*.csv);;JSON (*.json)")
        )
        if path is None:
            return
        file, tables = path if path.suffix else path.with_suffix(".csv"), self._engine.tables

        def work(log: "Logbook", progress: "Progress") -> int:
            from welds.logbook.exporting import export_file

            return export_file(log, file, tables, progress)

        self._do(work, self.tr("{count} welds written to {file}."), file, self.tr("The log was not exported"))

    def back_up(self) -> None:
        """Write the whole log with its pictures into one file."""
        suggested = f"welds-log-{date.today()}.backup.zip"
        file = self._prompts.ask_save_path(
            self.tr("Back up the log"), suggested, self.tr("Backup of a log (*.zip)")
        )
        if file is None:
            return
        file = file if file.suffix else file.with_suffix(".zip")

        def work(log: "Logbook", progress: "Progress") -> int:
            from welds.logbook.archive import back_up

            return back_up(log, file, progress)

        said = self.tr("{count} welds with their pictures are backed up in {file}.")
        self._do(work, said, file, self.tr("The backup was not made"))

    # -------------------------------------------------------------------------------------- in

    def look_into(self) -> None:
        """Read a CSV or JSON file and show what would become of each row; nothing is written."""
        file = self._prompts.ask_open_path(
            self.tr("Import welds"), self.tr("Exported welds (*.csv *.json);;All files (*)")
        )
        if file is None:
            return
        tables, units = self._engine.tables, self.units

        def work(log: "Logbook", progress: "Progress") -> "Preview":
            from welds.logbook.importing import preview_file

            return preview_file(log, file, tables, units, progress)

        def done(preview: "Preview") -> None:
            self._preview, self._preview_file = preview, file
            self.preview_changed.emit((file.name, preview))

        title = self.tr("The file was not read")
        self._desk.ask_long(work, done, lambda error: self._tell(title, error))

    def accept(self) -> None:
        """Write the new rows of the preview, all or nothing."""
        preview, name = self._preview, self._preview_file.name
        if preview is None:
            return
        count = len(preview.new)

        def work(log: "Logbook", progress: "Progress") -> str | None:
            from welds.logbook.importing import accept

            return accept(log, preview, progress)

        def done(token: str | None) -> None:
            self.drop_preview()
            self.imported.emit(
                self.tr("{count} welds imported from {name}.").format(count=count, name=name), token or ""
            )

        title = self.tr("Nothing was imported")
        self._desk.write_long(work, done, lambda error: self._tell(title, error))

    def drop_preview(self) -> None:
        """Leave the preview; nothing was written."""
        self._preview = None
        self.preview_changed.emit(None)

    # ----------------------------------------------------------------------------------- trouble

    def restore(self, file: Path | None = None) -> None:
        """Make the log what a backup holds, once the person has agreed."""
        file = file or self._prompts.ask_open_path(
            self.tr("Restore a backup"), self.tr("Backups (*.zip *.db);;All files (*)")
        )
        if file is None:
            return
        question = self.tr(
            "The log becomes what {name} holds. The log as it is now is not deleted: it is put aside under"
            " another name, beside the new one."
        ).format(name=file.name)
        if not self._prompts.confirm(self.tr("Restore the log"), question, self.tr("Restore")):
            return

        def done(answer: tuple[int, Path | None]) -> None:
            count, aside = answer
            said = self.tr("Restored: {count} welds.").format(count=count)
            if aside is not None:
                said += " " + self.tr("The log that was there is now {name}.").format(name=aside.name)
            self.said.emit(said)

        title = self.tr("The backup was not restored")
        self._desk.restore(file, done, lambda error: self._tell(title, error))

    def ways_out(self, trouble: LogbookUnavailableError) -> tuple[tuple[str, str], ...]:
        """Return what can be done about it, as (name, words on the button)."""
        newest = self._newest_backup()
        said = {
            AGAIN: self.tr("Try again"),
            READ_ONLY: self.tr("Open to read only"),
            RESTORE_NEWEST: self.tr("Restore {name}").format(name=newest.stem) if newest else "",
            RESTORE: self.tr("Restore a backup…"),
            CHOOSE: self.tr("Use another log…"),
            GO_ON: self.tr("Bring it up to date"),
        }
        names = dict.fromkeys(name for offer in trouble.offers for name in _OFFERS.get(offer, ()))
        return tuple((name, said[name]) for name in names if said[name])

    def go(self, way: str) -> None:
        """Take one of the ways out."""
        if way in (AGAIN, GO_ON):
            self._desk.open_again()
        elif way == READ_ONLY:
            self._desk.open_again(read_only=True)
        elif way == RESTORE_NEWEST:
            self.restore(self._newest_backup())
        elif way == RESTORE:
            self.restore()
        elif way == CHOOSE:
            self.choose_log()

    def choose_log(self) -> None:
        """Use another log file from now on."""
        file = self._prompts.ask_open_path(self.tr("Use another log"), self.tr("Logs (*.db);;All files (*)"))
        if file is not None:
            self.address_chosen.emit(str(file))
            self._desk.switch(str(file))

    def choose_server(self) -> None:
        """Use a log on a server from now on; where the address holds a password, it is not remembered."""
        address = self._prompts.ask_text(
            self.tr("Use a log on a server"),
            self.tr(
                "Its address: postgresql+psycopg://USER@HOST/DATABASE\n"
                "The password is better kept in the password file ~/.pgpass than written here."
            ),
        )
        if address is None:
            return
        try:
            place = place_of(address)
        except WeldsError as error:
            self._prompts.tell(self.tr("Not an address of a log"), str(error))
            return
        if place.has_password:
            self.said.emit(self.tr("This address holds a password: it is used now and not remembered."))
        else:
            self.address_chosen.emit(address)
        self._desk.switch(address)

    def use_own_log(self) -> None:
        """Go back to the person's own log."""
        self.address_chosen.emit("")
        self._desk.switch("")

    # ----------------------------------------------------------------------------------- details

    def _newest_backup(self) -> Path | None:
        from welds.logbook.ring import backups_of  # not at the top: it brings the whole database library

        return next(iter(backups_of(self._desk.place)), None)

    def _do(self, work: "LongWork", said: str, file: Path, title: str) -> None:
        self._desk.ask_long(
            work,
            lambda count: self.said.emit(said.format(count=count, file=file)),
            lambda error: self._tell(title, error),
        )

    def _tell(self, title: str, error: WeldsError) -> None:
        """Say what went wrong; what the person stopped is no trouble, and said in the status line."""
        if isinstance(error, StoppedError):
            self.said.emit(self.tr("Stopped. Nothing was written."))
        else:
            self._prompts.tell(title, str(error))

"""What can be said about the state of a log."""

from collections.abc import Iterator
from dataclasses import asdict, dataclass
from typing import Any

from sqlalchemy import Connection, func, select

from welds.language import tr
from welds.logbook.health import damage_of
from welds.logbook.logbook import Logbook
from welds.logbook.ring import backups_of
from welds.logbook.schema import HEAD, entries, photos


@dataclass(frozen=True, slots=True)
class State:
    """Counts, what is missing, what waits."""

    log: str
    version: str
    damage: str
    entries: int
    photos: int
    photos_missing: int
    waiting: int
    backups: int
    newest_backup: str

    @property
    def is_whole(self) -> bool:
        """True where nothing is damaged or missing."""
        return not self.damage and not self.photos_missing

    def as_json(self) -> dict[str, Any]:
        """Return it all as plain values."""
        return asdict(self) | {"is_whole": self.is_whole}

    def lines(self) -> Iterator[str]:
        """Yield it in words."""
        yield tr("{log} (tables at {version})", log=self.log, version=self.version)
        yield tr("damaged: {damage}", damage=self.damage) if self.damage else tr("whole")
        yield tr("{welds} welds, {pictures} pictures", welds=self.entries, pictures=self.photos)
        if self.photos_missing:
            yield tr(
                "{pictures} pictures are missing; a backup may hold them",
                pictures=self.photos_missing,
            )
        if self.waiting:
            yield tr("{welds} welds wait on this computer to go in", welds=self.waiting)
        yield (
            tr("{backups} dated backups, newest {name}", backups=self.backups, name=self.newest_backup)
            if self.backups
            else tr("{backups} dated backups", backups=self.backups)
        )


def check_log(log: Logbook) -> State:
    """Read the whole log and say what is found."""
    kept = log.photos.names()

    def work(connection: Connection) -> tuple[str, int, set[str]]:
        damage = damage_of(connection) if log.store.is_file else ""
        count = connection.execute(select(func.count()).select_from(entries)).scalar_one()
        return damage, count, set(connection.execute(select(photos.c.sha256).distinct()).scalars())

    damage, count, wanted = log.store.read(work)
    backups = backups_of(log.place)
    return State(
        log.place.name,
        HEAD,
        damage,
        count,
        len(wanted),
        len(wanted - kept),
        len(log.outbox),
        len(backups),
        backups[0].name if backups else "",
    )

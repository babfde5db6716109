"""Where the log is: the file in the person's data folder, another file, or a server."""

import hashlib
from dataclasses import dataclass
from pathlib import Path

from welds.errors import InputError
from welds.language import tr

_SERVER = ("postgresql://", "postgresql+psycopg://", "postgres://")
_DRIVER = "postgresql+psycopg://"


@dataclass(frozen=True, slots=True)
class Place:
    """One log: `path` for a file, `url` for a server; `data` is this person's own folder for what waits."""

    data: Path
    path: Path | None = None
    url: str | None = None

    @property
    def name(self) -> str:
        """The place in a message, without a password."""
        if self.path is not None:
            return str(self.path)
        assert self.url is not None
        scheme, _, rest = self.url.partition("://")
        login, at, host = rest.rpartition("@")
        return f"{scheme}://{login.partition(':')[0]}{at}{host.partition('?')[0]}"

    @property
    def has_password(self) -> bool:
        """True where the address holds a password."""
        login = (self.url or "").partition("://")[2].rpartition("@")[0]
        return ":" in login or "password=" in (self.url or "")

    @property
    def photos(self) -> Path:
        """The folder of pictures beside a log that is a file."""
        assert self.path is not None
        return self.path.with_name(f"{self.path.stem}-photos")

    @property
    def backups(self) -> Path:
        """The folder of dated backups beside a log that is a file."""
        assert self.path is not None
        return self.path.with_name(f"{self.path.stem}-backups")

    @property
    def waiting(self) -> Path:
        """The folder, on this computer, of entries that wait until this log can be written."""
        key = hashlib.sha256(self.name.encode()).hexdigest()[:16]
        return self.data / "waiting" / key

    @property
    def drafts(self) -> Path:
        """The folder, on this computer, of entries that were begun."""
        return self.data / "drafts"


def data_folder() -> Path:
    """Return the person's data folder; it need not exist yet."""
    import platformdirs

    return Path(platformdirs.user_data_dir("welds", appauthor=False))


def place_of(text: str | None = None) -> Place:
    """Return the place that `--log` names, or the person's own file."""
    data = data_folder()
    if text is None:
        return Place(data, path=data / "welds.log.db")
    word = text.strip()
    if "://" in word:
        for scheme in _SERVER:
            if word.startswith(scheme):
                return Place(data, url=_DRIVER + word.removeprefix(scheme))
        if not word.startswith("sqlite:///"):
            raise InputError(
                "--log",
                word.partition("://")[0] + "://...",
                tr("a file, or postgresql+psycopg://USER@HOST/DATABASE"),
            )
        word = word.removeprefix("sqlite:///")
    if not word or "\0" in word:
        raise InputError("--log", text, tr("a file, or postgresql+psycopg://USER@HOST/DATABASE"))
    return Place(data, path=Path(word).expanduser().absolute())

"""The last request, remembered in a small file of the configuration folder."""

import json
from dataclasses import asdict, dataclass, field, fields
from pathlib import Path

from welds.errors import FileUnavailableError
from welds.gui.engine import Fields
from welds.language import tr
from welds.reference.whole_file import write_whole

SCHEMA = "welds.last-use/1"
FILE_NAME = "last-use.json"
UNITS = ("metric", "inch")


@dataclass(frozen=True, slots=True)
class LastUse:
    """The request as it was typed, the units it was read in, and the requests before it, newest first."""

    fields: Fields = field(default_factory=dict)
    units: str = "metric"
    recent: tuple[Fields, ...] = ()


@dataclass(frozen=True, slots=True)
class Loaded:
    """The remembered use, and one line for the status bar when it could not be read."""

    last_use: LastUse
    trouble: str = ""
    is_first: bool = False
    """True where nothing was ever remembered."""


class Memory:
    """Reads and writes the last use; a broken file is set aside, never thrown away."""

    def __init__(self, folder: Path) -> None:
        self._file = folder / FILE_NAME

    def load(self) -> Loaded:
        """Return what was remembered, or a fresh start with the reason."""
        try:
            text = self._file.read_text(encoding="utf-8")
        except FileNotFoundError:
            return Loaded(LastUse(), is_first=True)
        except UnicodeDecodeError:
            return self._set_aside(tr("it is not text"))
        except OSError as error:
            return Loaded(
                LastUse(),
                tr(
                    "The last request could not be read ({reason}); starting fresh.",
                    reason=error.strerror,
                ),
            )
        try:
            return Loaded(_checked(json.loads(text)))
        except (ValueError, RecursionError) as error:
            return self._set_aside(str(error))

    def save(self, last_use: LastUse) -> str:
        """Write the last use in one move; return "" or one line that says why it is not remembered."""
        try:
            self._file.parent.mkdir(parents=True, exist_ok=True)
            write_whole(self._file, json.dumps({"schema": SCHEMA, **asdict(last_use)}, indent=1))
        except OSError as error:
            return tr("This request will not be remembered: {reason}.", reason=error.strerror)
        except FileUnavailableError as error:
            return tr("This request will not be remembered: {reason}.", reason=error.problem)
        return ""

    def _set_aside(self, problem: str) -> Loaded:
        number = 1
        while (aside := self._file.with_name(f"{FILE_NAME}.broken-{number}")).exists():
            number += 1
        try:
            self._file.replace(aside)
        except OSError as error:
            return Loaded(
                LastUse(),
                tr(
                    "The last request is unreadable ({problem}) and stays where it is: {reason}.",
                    problem=problem,
                    reason=error.strerror,
                ),
            )
        return Loaded(
            LastUse(),
            tr(
                "The last request was unreadable ({problem}); starting fresh. Kept as {name}.",
                problem=problem,
                name=aside.name,
            ),
        )


def _checked(data: object) -> LastUse:
    if not isinstance(data, dict) or data.get("schema") != SCHEMA:
        raise ValueError(tr("not a file of this program's version"))
    known = {item.name for item in fields(LastUse)}
    values = {name: value for name, value in data.items() if name in known}
    recent = values.get("recent", [])
    if not isinstance(recent, list):
        raise ValueError(tr("the recent requests are not a list"))
    if values.get("units", UNITS[0]) not in UNITS:
        raise ValueError(tr("units are {units!r:.40}", units=values["units"]))
    return LastUse(
        **{
            **values,
            "fields": _request(values.get("fields", {})),
            "recent": tuple(_request(each) for each in recent),
        }
    )


def _request(data: object) -> Fields:
    if not isinstance(data, dict):
        raise ValueError(tr("the request is not a list of named texts"))
    return {str(name): _text_or_texts(value) for name, value in data.items()}


def _text_or_texts(value: object) -> str | tuple[str, ...]:
    if isinstance(value, str):
        return value
    if isinstance(value, list) and all(isinstance(item, str) for item in value):
        return tuple(value)
    raise ValueError(tr("the request holds something that is not text"))

"""One line that leads anywhere: a joint in a few words, a recent request, a page, a command, a fault."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QObject

from welds.advice.phrase import read_phrase
from welds.advice.request import Joint, Process
from welds.gui.engine import Fields
from welds.gui.pages.faults.finder import FaultFinder
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.reference.names import name_of
from welds.report.wording import joint_name, process_name

MOST = 14


@dataclass(frozen=True, slots=True)
class Place:
    """Somewhere to go: its words, what going there does, and more words to find it by."""

    words: str
    go: Callable[[], object]
    more: str = ""


@dataclass(frozen=True, slots=True)
class Hit:
    """A place that answers the line, with the kind of place it is."""

    kind: str
    words: str
    go: Callable[[], object]


class Finder(QObject):
    """Ranks what answers the line: the joint that it names first, then what holds all its words."""

    def __init__(
        self,
        setup: SetupPresenter,
        recent: Sequence[Fields],
        pages: Sequence[Place],
        commands: Sequence[Place],
        find_fault: Callable[[str], object],
        show_setup: Callable[[], object],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._setup, self._recent = setup, recent
        self._pages, self._commands = pages, commands
        self._find_fault, self._show_setup = find_fault, show_setup

    def hits(self, line: str) -> tuple[Hit, ...]:
        """Return the places for a line; without one, the recent requests and the pages."""
        places = [
            *self._joint(line),
            *self._matching(self.tr("Recent"), self._recent_places(), line),
            *self._matching(self.tr("Page"), self._pages, line),
        ]
        if line.strip():
            places += self._matching(self.tr("Command"), self._commands, line)
            places += self._matching(self.tr("Fault"), self._faults(), line)
            places += self._matching(self.tr("Metal"), self._metals(), line)
        return tuple(places[:MOST])

    def _joint(self, line: str) -> list[Hit]:
        phrase = read_phrase(line, self._setup.engine.tables)
        if not phrase.fields or phrase.rest:
            return []
        fields: Fields = {**self._setup.fields, "other_metal": "", "other_thickness": "", **phrase.fields}
        return [Hit(self.tr("Set up"), self._said(fields), partial(self._restore, fields))]

    def _recent_places(self) -> list[Place]:
        return [Place(self._said(each), partial(self._restore, each)) for each in self._recent]

    def _faults(self) -> list[Place]:
        if self._setup.card is None or self._setup.is_stale:
            return []
        return [
            Place(f"{look.words}: {look.seen_as}", partial(self._find_fault, look.name))
            for look in FaultFinder(self._setup).faults()
        ]

    def _metals(self) -> list[Place]:
        now = self._setup.fields
        return [
            Place(option.text, partial(self._restore, {**now, "metal": option.id}), option.searched)
            for option in self._setup.engine.metals()
        ]

    def _restore(self, fields: Fields) -> None:
        self._setup.restore(fields, self._setup.units)
        self._show_setup()

    def _said(self, fields: Fields) -> str:
        def text(name: str) -> str:
            value = fields.get(name, "")
            return value if isinstance(value, str) else ", ".join(value)

        both = [text("metal"), text("thickness")]
        if text("other_metal") or text("other_thickness"):
            other = " ".join(filter(None, (text("other_metal"), text("other_thickness"))))
            both.append(self.tr("to {other}").format(other=other))
        process = text("process")
        parts = [
            process_name(Process(process)) if process in set(Process) else process,
            _joint_words(text("joint")),
            " ".join(filter(None, both)),
        ]
        parts += [", ".join(map(name_of, text("coating").split(", ")))]
        if text("position") not in ("", "PA"):
            parts.append(text("position"))
        return ", ".join(filter(None, parts))

    def _matching(self, kind: str, places: Sequence[Place], line: str) -> list[Hit]:
        words = line.lower().split()
        return [
            Hit(kind, place.words, place.go)
            for place in places
            if all(word in f"{place.words} {place.more}".lower() for word in words)
        ]


def _joint_words(joint: str) -> str:
    """Return a joint in words; what is none stays as it was typed."""
    return joint_name(Joint(joint)) if joint in set(Joint) else joint

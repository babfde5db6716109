"""Logged welds as a table that pages: however long the log, only a few hundred are in memory."""

from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt, Signal

from welds.advice.evidence import Outcome
from welds.advice.request import Joint, Process
from welds.gui.pages.log import words
from welds.logbook.entry import Entry
from welds.quantities.units import Units
from welds.report.wording import outcome_words, process_name

BLOCK = 100
"""Entries asked for at once."""

MOST_BLOCKS = 8
ENTRY = Qt.ItemDataRole.UserRole
NOT_YET = "…"
_ANSWERED = frozenset(
    {
        Qt.ItemDataRole.DisplayRole,
        Qt.ItemDataRole.ToolTipRole,
        Qt.ItemDataRole.AccessibleTextRole,
        Qt.ItemDataRole.TextAlignmentRole,
        ENTRY,
    }
)
"""Asked for a thousand times a paint, mostly for other roles: these go first."""

Index = QModelIndex | QPersistentModelIndex
_NOWHERE = QModelIndex()
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True, slots=True)
class Column:
    """A column: what the log sorts by for it (empty where it cannot), its title, whether it holds figures."""

    sort: str
    title: str
    is_figure: bool = False


@dataclass(frozen=True, slots=True)
class Listing:
    """What a question to the log brought: how many there are, and the first of them.

    `number` tells one question from the next. `is_whole` where all entries are here, as the nearest ones are;
    `is_same_question` where only the log has changed since it was last asked, or the count has come in;
    until that, `count` is only what is here.
    """

    number: int
    count: int
    first: Sequence[Entry]
    is_whole: bool = False
    is_same_question: bool = False
    is_counted: bool = True


class EntryModel(QAbstractTableModel):
    """Asks for blocks of entries as they come into view, and lets go of those longest out of it."""

    blocks_wanted = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._units = Units.METRIC
        self._listing = Listing(0, 0, ())
        self._blocks: OrderedDict[int, Sequence[Entry]] = OrderedDict()
        self._missing: dict[int, None] = {}
        self._is_waiting = False
        self.columns = (
            Column("made_at", self.tr("When")),
            Column("process", self.tr("Process")),
            Column("metal", self.tr("Metal")),
            Column("thickness_mm", self.tr("Thickness"), is_figure=True),
            Column("joint", self.tr("Joint")),
            Column("position", self.tr("Pos.")),
            Column("current_a", self.tr("Current"), is_figure=True),
            Column("outcome", self.tr("Came out")),
            Column("", self.tr("Faults")),
            Column("machine", self.tr("Machine")),
            Column("welder", self.tr("Who")),
            Column("", self.tr("Notes")),
        )

    @property
    def listing(self) -> Listing:
        """What is on show."""
        return self._listing

    @property
    def held(self) -> int:
        """How many entries are in memory."""
        return sum(len(block) for block in self._blocks.values())

    def set_units(self, units: Units) -> None:
        """Write lengths in these units from now on."""
        self._units = units
        self._say_changed()

    def show_listing(self, listing: Listing) -> None:
        """Show the answer to another question."""
        self.beginResetModel()
        self._listing = listing
        self._blocks.clear()
        self._missing.clear()
        self._is_waiting = False
        for start in range(0, len(listing.first), BLOCK):
            self._blocks[start // BLOCK] = listing.first[start : start + BLOCK]
        self.endResetModel()

    def put(self, number: int, blocks: Sequence[tuple[int, Sequence[Entry]]]) -> None:
        """Take blocks that were asked for; those of an earlier question are dropped."""
        if number != self._listing.number:
            return
        self._is_waiting = False
        for place, entries in blocks:
            self._blocks[place] = entries
            self._blocks.move_to_end(place)
        while len(self._blocks) > MOST_BLOCKS:
            self._blocks.popitem(last=False)
        self._missing.clear()
        self._say_changed()

    def entry(self, row: int) -> Entry | None:
        """Return the entry of a row, or None where it is not here yet."""
        place, within = divmod(row, BLOCK)
        block = self._blocks.get(place)
        if block is None:
            self._want(place)
            return None
        self._blocks.move_to_end(place)
        return block[within] if within < len(block) else None

    def fixed_words(self, column: int) -> tuple[str, ...]:
        """Return all that can stand in a column where that is a closed set, else nothing."""
        match column:
            case 1:
                return tuple(map(process_name, Process))
            case 4:
                return tuple(words.joint_words(joint.value) for joint in Joint)
            case 7:
                return tuple(map(outcome_words, Outcome))
            case _:
                return ()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else self._listing.count

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.columns)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        if orientation is not Qt.Orientation.Horizontal or not 0 <= section < len(self.columns):
            return None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if self.columns[section].is_figure else _LEFT
        return self.columns[section].title if role == Qt.ItemDataRole.DisplayRole else None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if role not in _ANSWERED or not index.isValid() or not self.checkIndex(index):
            return None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if self.columns[index.column()].is_figure else _LEFT
        entry = self.entry(index.row())
        if role == ENTRY:
            return entry
        text = NOT_YET if entry is None else self._text(entry, index.column())
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{self.columns[index.column()].title}: {text or self.tr('nothing')}"
        return text

    def _text(self, entry: Entry, column: int) -> str:
        match column:
            case 0:
                return entry.made_at[:10]
            case 1:
                return process_name(entry.process)
            case 2:
                return entry.metal if entry.other_metal is None else f"{entry.metal} + {entry.other_metal}"
            case 3:
                return words.length_words(entry.thickness_mm, self._units)
            case 4:
                return words.joint_words(entry.joint)
            case 5:
                return entry.position
            case 6:
                return words.current_words(entry)
            case 7:
                return outcome_words(entry.outcome)
            case 8:
                return ", ".join(map(words.fault_words, entry.faults))
            case 9:
                return entry.machine
            case 10:
                return entry.welder
            case _:
                return " ".join(entry.notes.split())

    def _want(self, place: int) -> None:
        """Ask for a block; while one question is under way the next ones gather."""
        self._missing[place] = None
        if not self._is_waiting:
            self._is_waiting = True
            self.blocks_wanted.emit((self._listing.number, (place,)))

    def _say_changed(self) -> None:
        if self._listing.count:
            last = self.index(self._listing.count - 1, len(self.columns) - 1)
            self.dataChanged.emit(self.index(0, 0), last)

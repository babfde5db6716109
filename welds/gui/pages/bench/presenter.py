"""The bench page without widgets: machines and shelf as texts, their mistakes, what the card would say."""

import copy
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal

from welds.advice.card import Card
from welds.advice.equipment import Equipment
from welds.advice.request import Request
from welds.bench.bench import Bench
from welds.bench.load import check_bench
from welds.bench.templates import templates
from welds.bench.write import bench_yaml
from welds.errors import BenchFileError, WeldsError
from welds.gui.bench_in_use import BenchInUse
from welds.gui.pages.bench.form_fields import FIELDS, Raw, put_text, text_of
from welds.gui.pages.bench.own_units import UNITS_OF, problem_in
from welds.gui.pages.bench.shelf_state import Offer, offer_of, put_gases, put_plain, put_sizes
from welds.quantities.units import Units
from welds.reference.strict_yaml import parse_yaml
from welds.reference.tables import Tables
from welds.report import layout

Answer = Callable[[Request, Equipment], Card]
FILE_WORD = "bench.yaml"


@dataclass(frozen=True, slots=True)
class MachineLine:
    """One machine in the list."""

    name: str
    is_in_use: bool


@dataclass(frozen=True, slots=True)
class Standing:
    """Whether the bench can be saved: unsaved, sound, and one line about a mistake or the file."""

    is_unsaved: bool
    is_sound: bool
    words: str


class BenchPresenter(QObject):
    """Holds the bench as it would be written; nothing reaches the cards before it is saved."""

    machines_changed = Signal(object, int)
    form_changed = Signal(object)
    faults_changed = Signal(object)
    shelf_changed = Signal(object)
    preview_changed = Signal(str)
    standing_changed = Signal(object)
    units_changed = Signal(object)
    saved = Signal()

    def __init__(
        self, in_use: BenchInUse, tables: Tables, answer: Answer, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._in_use, self._tables, self._answer = in_use, tables, answer
        self._request: Request | None = None
        self._units = Units.METRIC
        self._raw = _raw_of(in_use.kept.text)
        self._saved_text = bench_yaml(self._raw)
        self._place = 0
        self._complaint = ""
        self._before: list[tuple[str, str]] = []
        self._told_text, self._told_by = self._saved_text, ""

    @property
    def offer(self) -> Offer:
        """What can be ticked."""
        return offer_of(self._tables)

    @property
    def templates(self) -> tuple[str, ...]:
        """Names of the machines to start from."""
        return tuple(templates())

    @property
    def machines(self) -> list[Raw]:
        """The machines as texts."""
        machines = self._raw["machines"]
        assert isinstance(machines, list)
        return machines

    @property
    def shelf(self) -> Raw:
        """The shelf as texts."""
        shelf = self._raw["shelf"]
        assert isinstance(shelf, dict)
        return shelf

    @property
    def text(self) -> str:
        """The file as it would be written."""
        return bench_yaml(self._raw)

    def start(self) -> None:
        """Tell everything once."""
        self._tell_machines()
        self._tell_form()
        self.shelf_changed.emit(self.shelf)
        self._check()

    def take_request(self, request: Request | None, units: Units) -> None:
        """Take the request of the set-up page for the preview, and the person's units."""
        self._request = request
        if units is not self._units:
            self._units = units
            self.units_changed.emit(units)
            self._tell_form()
            self.shelf_changed.emit(self.shelf)
        self._check()

    def select(self, place: int) -> None:
        """Show another machine in the form."""
        if 0 <= place < len(self.machines) and place != self._place:
            self._place = place
            self._tell_form()
            self._check()

    def add(self, template: str) -> None:
        """Add a machine of a common kind; its name gets a number where it is there already."""
        machine = _plain(templates()[template])
        names = {str(each.get("name")) for each in self.machines}
        number = 2
        while machine["name"] in names:
            machine["name"] = f"{template} ({number})"
            number += 1
        self.machines.append(machine)
        self._place = len(self.machines) - 1
        if len(self.machines) == 1:
            self._raw["in_use"] = machine["name"]
        self._remember("")
        self._tell_all()

    def remove(self) -> None:
        """Take the shown machine off the bench."""
        if not self.machines:
            return
        gone = self.machines.pop(self._place)
        self._place = max(0, self._place - 1)
        if self._raw.get("in_use") == gone.get("name"):
            self._raw["in_use"] = str(self.machines[0].get("name", "")) if self.machines else ""
        self._remember("")
        self._tell_all()

    def use(self) -> None:
        """Make the shown machine the one in use."""
        if self.machines:
            self._raw["in_use"] = str(self.machines[self._place].get("name", ""))
            self._remember("")
            self._tell_machines()
            self._check()

    def set_field(self, name: str, text: str) -> None:
        """Take one line of the form."""
        if not self.machines:
            return
        machine = self.machines[self._place]
        was_in_use = self._is_in_use(machine)
        put_text(machine, FIELDS[name], text, self._units)
        if name == "name":
            if was_in_use:
                self._raw["in_use"] = text.strip()
            self._tell_machines()
        self._remember(f"{self._place} {name}")
        self._check()

    def tick(self, kind: str, values: tuple[str, ...]) -> None:
        """Take the ticks of one plain kind."""
        put_plain(self.shelf, kind, values)
        self._shelf_edited()

    def tick_sizes(self, kind: str, name: str, sizes: tuple[str, ...]) -> None:
        """Take the diameters of one type or class."""
        put_sizes(self.shelf, kind, name, sizes)
        self._shelf_edited()

    def set_gases(self, gases: Mapping[str, str]) -> None:
        """Take the gases with the litres left."""
        put_gases(self.shelf, gases)
        self._shelf_edited("gases " + " ".join(gases))

    def set_helmets(self, text: str) -> None:
        """Take the shades of the helmets, such as "9-13, 10"."""
        put_plain(self.shelf, "helmet_shades", [part.strip() for part in text.split(",") if part.strip()])
        self._remember("helmet_shades")
        self._check()

    def set_lens(self, word: str) -> None:
        """Take whether there is a gas lens: yes, no, or nothing stated."""
        self.shelf.pop("has_gas_lens", None)
        if word:
            self.shelf["has_gas_lens"] = word
        self._remember("")
        self._check()

    @property
    def can_undo(self) -> bool:
        """True where a change can be taken back, saved or not."""
        return bool(self._before)

    def undo(self) -> None:
        """Take the last change back; what was typed in one line counts as one."""
        if not self._before:
            return
        self._told_text, self._told_by = self._before.pop()
        self._raw = _raw_of(self._told_text)
        self._place = min(self._place, max(0, len(self.machines) - 1))
        self._tell_all()
        self.shelf_changed.emit(self.shelf)

    def _remember(self, changed: str) -> None:
        """Keep what stood there before a change; `changed` names the line or the kind."""
        text = self.text
        if text == self._told_text:
            return
        if not changed or changed != self._told_by:
            self._before.append((self._told_text, self._told_by))
        self._told_text, self._told_by = text, changed

    def save(self) -> None:
        """Write the bench and let every card follow it; a mistake or the disk is told in one line."""
        self._complaint = ""
        try:
            self._in_use.save(self.text)
        except WeldsError as error:
            self._complaint = str(error)
            self._check()
            return
        self._saved_text = self.text
        self._check()
        self.saved.emit()

    def _shelf_edited(self, changed: str = "") -> None:
        self._remember(changed)
        self.shelf_changed.emit(self.shelf)
        self._check()

    def _is_in_use(self, machine: Mapping[str, object]) -> bool:
        named = self._raw.get("in_use")
        return machine is self.machines[0] if not named else machine.get("name") == named

    def _tell_all(self) -> None:
        self._tell_machines()
        self._tell_form()
        self._check()

    def _tell_machines(self) -> None:
        lines = tuple(MachineLine(str(each.get("name", "")), self._is_in_use(each)) for each in self.machines)
        self.machines_changed.emit(lines, self._place)

    def _tell_form(self) -> None:
        machine = self.machines[self._place] if self.machines else {}
        self.form_changed.emit({name: text_of(machine, field, self._units) for name, field in FIELDS.items()})

    def _check(self) -> None:
        """Read what would be written, tell the mistakes of the shown machine and what the card would say."""
        bench, faults = check_bench(self.text, FILE_WORD, self._tables)
        shown = self._faults_of_shown()
        self.faults_changed.emit(shown)
        is_unsaved = self.text != self._saved_text
        self.standing_changed.emit(
            Standing(is_unsaved, bench is not None, self._words(faults, shown, is_unsaved))
        )
        self.preview_changed.emit(self._preview(bench))

    def _faults_of_shown(self) -> dict[str, str]:
        if not self.machines:
            return {}
        machine = self.machines[self._place]
        alone = bench_yaml({"machines": [machine]})
        found: dict[str, str] = {}
        for fault in check_bench(alone, FILE_WORD, self._tables)[1]:
            field = fault.field.removeprefix("machines.")
            name = next((each for each in FIELDS if field == each or field.startswith(f"{each}.")), "")
            problem = fault.problem.removeprefix(f"{fault.field}: ") if name else fault.problem
            found.setdefault(name, problem)
        return {
            name: problem_in(self._units, name, text_of(machine, FIELDS[name]), problem) if name else problem
            for name, problem in found.items()
        }

    def _words(self, faults: list[BenchFileError], shown: Mapping[str, str], is_unsaved: bool) -> str:
        if self._complaint:
            return self._complaint
        if not self.machines:
            return self.tr("No machine yet: no card is limited. Add one: it starts as a common kind.")
        if faults:
            of_unit = next((problem for name, problem in shown.items() if name in UNITS_OF), "")
            return of_unit or faults[0].problem
        if self._in_use.trouble and not is_unsaved:
            return self._in_use.trouble
        if is_unsaved:
            return self.tr("Not saved yet: the cards still follow the bench as it was.")
        return self.tr("Saved. Every card follows this bench.")

    def _preview(self, bench: Bench | None) -> str:
        if bench is None:
            return self.tr("Put right what is marked, then it shows here.") if self.machines else ""
        if self._request is None:
            return self.tr("The set-up page holds no request that can be read.")
        try:
            card = self._answer(self._request, bench.equipment())
        except WeldsError as error:
            return str(error)
        parts = [f"{line.label} {line.start_text}" for line in layout.headlines(card, self._units)]
        wrong = [check.text for check in card.checks if not check.ok]
        said = f"{layout.title(card.request)}: {', '.join(parts)}."
        return "\n".join([said, self.tr("In the way:"), *wrong]) if wrong else said


def _raw_of(text: str) -> Raw:
    """Return the file as plain texts; the short form with one machine becomes a list of one."""
    found = _plain(parse_yaml(text, FILE_WORD)) if text else {}
    single = found.pop("machine", None)
    machines = found.get("machines") or []
    assert isinstance(machines, list)
    shelf = found.get("shelf")
    return {
        "in_use": found.get("in_use", ""),
        "machines": [*([single] if single else []), *machines],
        "shelf": shelf if isinstance(shelf, dict) else {},
    }


def _plain(raw: Mapping[str, object]) -> Raw:
    """Return a copy of plain dictionaries and lists, free to be changed."""

    def copied(value: object) -> object:
        if isinstance(value, Mapping):
            return {str(name): copied(entry) for name, entry in value.items()}
        if isinstance(value, list):
            return [copied(entry) for entry in value]
        return copy.copy(value)

    made = copied(raw)
    assert isinstance(made, dict)
    return made

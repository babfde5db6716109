"""The set-up page without its widgets: the request as it was typed, and the card that follows it."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from PySide6.QtCore import QObject, Signal

from welds.advice.adjustment import Adjustment
from welds.advice.card import Card
from welds.advice.request import Request
from welds.advice.setting import Check
from welds.advice.validate import FIELDS
from welds.errors import AmbiguousInputError, InputError, NotCoveredError, WeldsError
from welds.gui.card_face import CardFace
from welds.gui.engine import Engine, Fields
from welds.gui.pages.setup.nearest import Nearest, nearest_covered, nearest_word
from welds.quantities.units import Units

DEFAULTS: Fields = {
    "process": "tig",
    "metal": "5052",
    "thickness": "2 mm",
    "joint": "butt",
    "position": "PA",
    "hand": "unhurried",
    "place": "indoors",
    "coating": (),
}
HAZARD_FIELDS = frozenset(
    {"process", "metal", "other_metal", "joint", "coating", "solvent", "part", "place", "gas"}
)
"""A change in one of these can change what may hurt, so it takes the ticks away."""
_TYPED = frozenset({"metal", "other_metal", "thickness", "other_thickness", "gap", "length"})
_ONLY_FOR = {"wire": "mig", "transfer": "mig"}


@dataclass(frozen=True, slots=True)
class Understood:
    """How the lengths were read, in both systems."""

    thickness: str
    other_thickness: str
    thickness_mm: float
    other_thickness_mm: float | None


class SetupPresenter(QObject):
    """Turns texts into requests and requests into cards; every change is answered at once."""

    fields_changed = Signal(object)
    field_changed = Signal(str, object)
    metal_changed = Signal(str)
    units_changed = Signal(object)
    understood = Signal(object)
    card_changed = Signal(object)
    card_completed = Signal(object)
    refused = Signal(str, object)
    field_error = Signal(str, str)
    readings_offered = Signal(str, object)
    readiness_changed = Signal(object)

    def __init__(self, engine: Engine, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._engine = engine
        self._units = Units.METRIC
        self._fields: dict[str, str | tuple[str, ...]] = dict(DEFAULTS)
        self._ticks: set[str] = set()
        self._adjustments: tuple[Adjustment, ...] = ()
        self._card: Card | None = None
        self._is_stale = False
        self._nearest: Nearest | None = None

    @property
    def engine(self) -> Engine:
        """What the page asks of the layers below."""
        return self._engine

    @property
    def fields(self) -> Fields:
        """The request as typed."""
        return dict(self._fields)

    @property
    def units(self) -> Units:
        """The units that words are shown in."""
        return self._units

    @property
    def card(self) -> Card | None:
        """The last card that could be answered."""
        return self._card

    @property
    def ticks(self) -> frozenset[str]:
        """The stop cautions that the person has acknowledged for this request."""
        return frozenset(self._ticks)

    @property
    def is_stale(self) -> bool:
        """True where the card on screen belongs to an earlier request."""
        return self._is_stale

    @property
    def nearest(self) -> Nearest | None:
        """The small change that would lead to a card, while there is none."""
        return self._nearest

    @property
    def open_stops(self) -> int:
        """How many stop cautions still wait for a tick."""
        return sum(stop.rule not in self._ticks for stop in self._card.stops) if self._card else 0

    @property
    def is_ready(self) -> bool:
        """True where the card answers the request and every stop caution is ticked."""
        return self._card is not None and not self._is_stale and self.open_stops == 0

    def restore(self, fields: Mapping[str, str | tuple[str, ...]], units: Units) -> None:
        """Take up a remembered request; what is not there, or is no choice any more, starts as usual."""
        self._units = units
        self._fields = {**DEFAULTS, **{name: fields[name] for name in FIELDS if name in fields}}
        self._drop_unknown_choices()
        self._adjustments = ()
        self._ticks.clear()
        self.units_changed.emit(units)
        self.fields_changed.emit(self.fields)
        self.metal_changed.emit(self._text("metal"))
        self._answer()

    def card_after(self, adjustment: Adjustment) -> Card:
        """Return the card on screen after one more change; raises what the advice raises."""
        assert self._card is not None
        return self._engine.card(self._card.request, (*self._adjustments, adjustment))

    def adjust(self, adjustment: Adjustment) -> None:
        """Take a change that a fault of the last bead asks for; it holds until the request changes."""
        self._adjustments = (*self._adjustments, adjustment)
        self._answer()

    def take_back(self) -> None:
        """Go back to the card before any change."""
        self._adjustments = ()
        self._answer()

    def set_field(self, name: str, value: str | tuple[str, ...]) -> None:
        """Take one changed input and answer."""
        if self._fields.get(name, "") == value:
            return
        self._adjustments = ()
        self._fields[name] = value
        if name in HAZARD_FIELDS:
            self._ticks.clear()
        if name == "metal":
            self.metal_changed.emit(str(value))
        self._answer()

    def answer_again(self) -> None:
        """Answer the same request anew: what stands behind the advice has changed."""
        self._answer()

    def set_thickness_mm(self, thickness_mm: float) -> None:
        """Take a thickness from the slider, written in the person's units."""
        self.choose_reading("thickness", self._engine.length_text(thickness_mm, self._units))

    def choose_reading(self, name: str, text: str) -> None:
        """Take a text that the program offered, and show it in its field."""
        self._adjustments = ()
        self._fields[name] = text
        self.field_changed.emit(name, text)
        self._answer()

    def go_to_nearest(self) -> None:
        """Take up the nearest request that can be answered, where there is one."""
        nearest = self._nearest
        if nearest is None:
            return
        self._adjustments = ()
        self._fields.update(nearest.changes)
        if HAZARD_FIELDS & nearest.changes.keys():
            self._ticks.clear()
        for name, value in nearest.changes.items():
            self.field_changed.emit(name, value)
        self.metal_changed.emit(self._text("metal"))
        self._answer()

    def start_over(self) -> None:
        """Go back to a plain request."""
        self.restore({}, self._units)

    def set_units(self, units: Units) -> None:
        """Show the same card in other words."""
        if units is self._units:
            return
        self._units = units
        self.units_changed.emit(units)
        self._answer()

    def switch_units(self) -> None:
        """Change from metric to inch or back."""
        self.set_units(Units.INCH if self._units is Units.METRIC else Units.METRIC)

    def tick(self, rule: str, on: bool) -> None:
        """Note that a stop caution was acknowledged, or that it was not."""
        (self._ticks.add if on else self._ticks.discard)(rule)
        self.readiness_changed.emit(self)

    def thickness_marks(self) -> tuple[tuple[float, str], ...]:
        """Return the named thicknesses of the metal in hand."""
        return self._engine.thickness_marks(self._text("metal"), self._units)

    def add_checks(self, checks: tuple[Check, ...]) -> None:
        """Put checks that took longer than the card itself on the card on screen, unless it is an old one."""
        if self._card is not None and not self._is_stale and checks:
            self._card = replace(self._card, checks=(*self._card.checks, *checks))
            self.card_completed.emit(self._face(self._card))

    def _answer(self) -> None:
        self._nearest = None
        try:
            request = self._engine.request(self._asked())
            self.understood.emit(self._read_back(request))
            card = self._engine.card(request, self._adjustments)
        except AmbiguousInputError as error:
            self._set_stale()
            self.readings_offered.emit(error.field, error.readings)
        except InputError as error:
            self._nearest = nearest_word(self._engine, self._asked(), error)
            self._set_stale()
            self.field_error.emit(error.field, str(error))
        except NotCoveredError as error:
            self._nearest = nearest_covered(self._engine, self._asked(), self._units, error.nearest)
            self._set_stale()
            self.refused.emit(str(error), self._nearest)
        except WeldsError as error:
            self._set_stale()
            self.refused.emit(str(error), None)
        else:
            self._card, self._is_stale = card, False
            self.card_changed.emit(self._face(card))
            self.readiness_changed.emit(self)

    def _drop_unknown_choices(self) -> None:
        """Put a closed choice that no longer exists back to the usual; texts stay, to be corrected."""
        for _attempt in range(len(self._fields)):
            try:
                self._engine.request(self._asked())
            except InputError as error:
                if error.field in _TYPED or error.field not in self._fields:
                    return
                del self._fields[error.field]
                self._fields.update({name: DEFAULTS[name] for name in DEFAULTS.keys() - self._fields.keys()})
            else:
                return

    def _asked(self) -> dict[str, str | tuple[str, ...]]:
        process = self._fields.get("process")
        return {
            name: value
            for name, value in self._fields.items()
            if value and _ONLY_FOR.get(name, process) == process
        }

    def _read_back(self, request: Request) -> Understood:
        other = request.other_thickness_mm
        return Understood(
            self._engine.understood(request.thickness_mm, self._units),
            "" if other is None else self._engine.understood(other, self._units),
            request.thickness_mm,
            other,
        )

    def _face(self, card: Card) -> CardFace:
        return self._engine.face(card, self._units)

    def _set_stale(self) -> None:
        self._is_stale = True
        self.readiness_changed.emit(self)

    def _text(self, name: str) -> str:
        value = self._fields.get(name, "")
        return value if isinstance(value, str) else ""

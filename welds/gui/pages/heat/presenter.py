"""The heat page without its widgets: sliders that start at the card, and the picture that follows them."""

from dataclasses import dataclass, replace

from PySide6.QtCore import QObject, QTimer, Signal

from welds.advice.card import Card
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.heat.bead import Bead, bead_of
from welds.advice.heat.check import heat_check
from welds.advice.request import Joint
from welds.errors import WeldsError
from welds.gui.engine import Engine
from welds.gui.pages.heat.figures import numbers_csv
from welds.gui.pages.heat.grounds import grounds_text
from welds.gui.pages.heat.knobs import Knob, Knobs, knobs_of
from welds.gui.pages.heat.live import Frame, Readings, frame_of
from welds.gui.pages.heat.runner import NewestRunner
from welds.gui.pages.heat.scenes import Kept, Picture, make_picture
from welds.quantities.units import Units
from welds.report.wording import joint_name, process_name

REST_MS = 180
"""A slider that has not moved for so long rests: the figures are then worked out in full."""


@dataclass(frozen=True)
class _Settled:
    bead: Bead
    disagrees: str


class HeatPresenter(QObject):
    """Asks the physics in a thread whenever a slider moves; makes scenes and words of what comes back."""

    knobs_changed = Signal()
    picture_changed = Signal(object)
    kept_changed = Signal(bool)
    disagreed = Signal(str)
    refused = Signal(str)
    trouble_found = Signal(str, str)

    def __init__(self, engine: Engine, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._engine = engine
        self._units = Units.METRIC
        self._card: Card | None = None
        self._knobs: Knobs | None = None
        self._frame: Frame | None = None
        self._readings: Readings | None = None
        self._bead: Bead | None = None
        self._kept: Kept | None = None
        self._disagrees: tuple[Card, str] | None = None
        self._shown: Picture | None = None
        self.runner = NewestRunner(self)
        self.runner.answered.connect(self._on_answered)
        self.runner.failed.connect(self._on_failed)
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._settle)

    @property
    def engine(self) -> Engine:
        """What the page asks of the layers below."""
        return self._engine

    @property
    def units(self) -> Units:
        """The units that words are shown in."""
        return self._units

    @property
    def card(self) -> Card | None:
        """The card the sliders start from."""
        return self._card

    @property
    def knobs(self) -> tuple[Knob, ...]:
        """The sliders as they stand, in reading order."""
        return tuple(self._knobs.knobs.values()) if self._knobs is not None else ()

    @property
    def holds_voltage(self) -> bool:
        """True where the voltage was set by hand and no longer follows the current."""
        return self._knobs is not None and self._knobs.holds_voltage

    @property
    def picture(self) -> Picture | None:
        """What is on show."""
        return self._shown

    @property
    def has_kept(self) -> bool:
        """True while a setting is kept to compare with."""
        return self._kept is not None

    @property
    def is_settled(self) -> bool:
        """True where the figures on show were worked out in full for the sliders as they stand."""
        return self._bead is not None and not self.runner.is_busy and not self._rest.isActive()

    @property
    def affected_c(self) -> float | None:
        """The temperature that bounds the heat-affected zone on show."""
        return self._readings.affected_c if self._readings is not None else None

    @property
    def title(self) -> str:
        """What the picture is of, in words."""
        if self._card is None:
            return ""
        request = self._card.request
        words = [process_name(request.process), request.metal]
        if request.other_metal and request.other_metal != request.metal:
            words.append(self.tr("to {metal}").format(metal=request.other_metal))
        return f"{' '.join(words)}, {joint_name(request.joint)}"

    def take_card(self, card: Card | None, units: Units) -> None:
        """Start from this card; the same card again leaves the sliders where they are."""
        self._units = units
        if card == self._card and self._knobs is not None:
            self._show()
            return
        self._card, self._bead, self._frame, self._readings = card, None, None, None
        self._shown = None
        self._set_kept(None)
        self.disagreed.emit("")
        self._knobs = knobs_of(card) if card is not None else None
        if self._knobs is None:
            self.knobs_changed.emit()
            self.refused.emit(self._why_not(card))
            return
        self.refused.emit("")
        self._changed()

    def set_units(self, units: Units) -> None:
        """Show the same picture in other words."""
        self._units = units
        self.knobs_changed.emit()
        self._show()

    def set_place(self, name: str, place: int) -> None:
        """Take a slider that was dragged."""
        if self._knobs is not None:
            self._set(name, self._knobs.knobs[name].value_at(place))

    def set_text(self, name: str, text: str) -> None:
        """Take a figure that was typed; what cannot be meant is said beside its box."""
        if self._knobs is None:
            return
        knob = self._knobs.knobs[name]
        if text.strip() == knob.text(self._units):
            self.trouble_found.emit(name, "")
            return
        try:
            value = knob.read(text, self._units)
        except WeldsError as error:
            self.trouble_found.emit(name, str(error))
            return
        self.trouble_found.emit(name, "")
        self._set(name, value)

    def reset(self) -> None:
        """Put every slider back to the card."""
        if self._card is not None:
            self._knobs = knobs_of(self._card)
            if self._knobs is not None:
                self._changed()

    def keep(self) -> None:
        """Keep what is on show, to see it under what comes next."""
        if self._knobs is not None and self._frame is not None:
            self._set_kept(Kept(self._knobs, self._frame))
            self._show()

    def drop(self) -> None:
        """Show one setting again."""
        self._set_kept(None)
        self._show()

    def grounds(self) -> str:
        """Return what the picture rests on."""
        if self._bead is None:
            return ""
        return grounds_text(self._bead, self._engine.tables, self._units)

    def csv(self) -> str:
        """Return the numbers on show as rows of a file."""
        assert self._knobs is not None
        assert self._frame is not None
        assert self._readings is not None
        shown = [("set", self._knobs, self._readings, self._frame.thresholds)]
        if self._kept is not None:
            frame = self._kept.frame
            shown.append(("kept", self._kept.knobs, frame.readings, frame.thresholds))
        return numbers_csv(
            shown, {"of": self.title, "note": "conduction only; to think with, not a procedure"}
        )

    def stop(self) -> bool:
        """Let the thread end: the window closes; False when time ran out."""
        self._rest.stop()
        return self.runner.stop()

    @property
    def _equipment(self) -> Equipment:
        bench = self._engine.bench
        return bench.equipment if bench is not None else GENERIC

    def _set(self, name: str, value: float) -> None:
        assert self._knobs is not None
        if self._knobs.knobs[name].value == value:
            self.knobs_changed.emit()
            return
        self._knobs = self._knobs.with_value(name, value)
        self._changed()

    def _changed(self) -> None:
        self.knobs_changed.emit()
        self._bead = None
        assert self._knobs is not None
        request, settings = self._knobs.asked
        tables, equipment = self._engine.tables, self._equipment
        before, runner = self._frame, self.runner
        self.runner.ask(
            lambda: frame_of(request, settings, tables, before, lambda: runner.is_overtaken, equipment)
        )
        self._rest.start()

    def _settle(self) -> None:
        """Work the figures out one by one, and ask once for each card whether the tables agree."""
        if self._knobs is None or self._card is None:
            return
        if self.runner.is_busy:
            self._rest.start()
            return
        request, settings = self._knobs.asked
        card, tables, known = self._card, self._engine.tables, self._disagrees
        equipment = self._equipment

        def work() -> _Settled:
            bead = bead_of(request, settings, tables, equipment)
            if known is not None and known[0] == card:
                return _Settled(bead, known[1])
            check = heat_check(card, tables, equipment)
            return _Settled(bead, check.text if check is not None else "")

        self.runner.ask(work)

    def _on_answered(self, result: object) -> None:
        if self._knobs is None or self._card is None:
            return
        if isinstance(result, _Settled):
            if (result.bead.request, result.bead.settings) == self._knobs.asked:
                self._bead, self._readings = result.bead, Readings.of(result.bead)
                if self._frame is not None:
                    self._frame = replace(
                        self._frame,
                        thresholds=replace(
                            self._frame.thresholds,
                            melts_a=result.bead.surface_current_a,
                            through_a=result.bead.through_current_a,
                            falls_a=result.bead.collapse_current_a,
                        ),
                    )
                self._disagrees = (self._card, result.disagrees)
                self.disagreed.emit(result.disagrees)
                self._show()
            return
        assert isinstance(result, Frame)
        if replace(result.request, thickness_mm=self._card.request.thickness_mm) != self._card.request:
            return  # belongs to an earlier card
        self._frame, self._readings = result, result.readings
        self.refused.emit("")
        self._show()
        if not result.is_current and not self.runner.is_busy:
            self._changed()

    def _on_failed(self, error: Exception) -> None:
        if not isinstance(error, WeldsError):
            raise error
        self._rest.stop()
        self.refused.emit(str(error))

    def _show(self) -> None:
        if self._frame is None or self._readings is None or self._knobs is None:
            return
        through, kept = self._wants_through, self._kept
        self._shown = make_picture(
            self._frame, self._readings, self._knobs, kept, self._units, wants_through=through
        )
        self.picture_changed.emit(self._shown)

    @property
    def _wants_through(self) -> bool:
        """A butt in one pass has to melt through; a fillet, a corner and an edge need not."""
        assert self._card is not None
        passes = self._card.settings.get("passes")
        return self._card.request.joint is Joint.BUTT and (passes is None or passes.start == 1)

    def _set_kept(self, kept: Kept | None) -> None:
        self._kept = kept
        self.kept_changed.emit(kept is not None)

    def _why_not(self, card: Card | None) -> str:
        if card is None:
            return self.tr("There is no card yet: finish the request on the set-up page.")
        if card.request.joint is Joint.PLUG:
            return self.tr(
                "A plug weld does not travel, and this picture is of a seam. Choose another joint on the"
                " set-up page, or set the plug up by hole and time as the card says."
            )
        return self.tr("This card states no travel speed, and without one there is no picture.")

"""A weld while it is being written down: what stands in each field, kept as a draft, read at the end."""

import uuid
from collections.abc import Container, Mapping, Sequence
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal

from welds.advice.card import Card
from welds.advice.equipment import GENERIC_MACHINE
from welds.advice.evidence import Outcome
from welds.gui.engine import Engine
from welds.gui.pages.log.setting_texts import USUAL, field_text, text_of, value_of
from welds.gui.pages.log.words import SETTING_ORDER
from welds.logbook.entry import Entry, Photo
from welds.logbook.fields import Reading, changed_entry, entry_json, read_entry
from welds.logbook.from_card import fields_from_card
from welds.logbook.settings import Kind, build_kinds
from welds.logbook.times import now
from welds.quantities.display import show_band
from welds.quantities.units import Units

LENGTHS = ("thickness", "other_thickness", "gap")
TEXTS = (
    *("process", "metal", "other_metal", "joint", "position", "hand", "notes", "machine", "welder"),
    "material_lot",
)
Picture = Path | Photo


class EntryForm(QObject):
    """Holds the texts of the form; what nobody touched is logged as it came, not as it was rounded to show.

    `base` are fields as the log reads them. `entry` is the logged weld that is being changed, if one is.
    """

    changed = Signal()

    def __init__(
        self,
        engine: Engine,
        units: Units,
        base: Mapping[str, Any],
        entry: Entry | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._engine, self._units, self._entry = engine, units, entry
        self._base = {"made_at": now(), "uid": str(uuid.uuid4()), **base}
        self.kinds: Mapping[str, Kind] = engine.tables.derived(build_kinds)
        self.texts: dict[str, str] = {name: str(self._base.get(name) or "") for name in TEXTS}
        for name in LENGTHS:
            mm = self._base.get(f"{name}_mm")
            self.texts[name] = "" if mm is None else field_text(engine.length_text(float(mm), units))
        self.texts["made_at"] = _moment_text(str(self._base["made_at"]))
        self.settings: dict[str, str] = {}
        self.faults: tuple[str, ...] = tuple(self._base.get("faults", ()))
        self.pictures: tuple[Picture, ...] = tuple(map(_picture, self._base.get("photos", ())))
        self._fill_settings(self._base.get("settings", {}))
        self._first_texts, self._first_settings = dict(self.texts), dict(self.settings)
        self.draft_name = self._base["uid"]
        self.is_touched = False

    @staticmethod
    def from_card(
        engine: Engine, units: Units, card: Card, usual: Mapping[str, str], parent: QObject | None = None
    ) -> "EntryForm":
        """Return a form filled from a card; `usual` is who welds here and on what."""
        fields = {**usual, **fields_from_card(card)}
        if card.machine == GENERIC_MACHINE.name:
            fields["machine"] = usual.get("machine", "")
        form = EntryForm(engine, units, fields, parent=parent)
        for name in form.settings:
            band = card.settings[name].band
            if band is not None:  # what was set is what the card said, rounded as it was shown
                form.settings[name] = field_text(show_band(band, name, units).start)
        return form

    @staticmethod
    def of_entry(engine: Engine, units: Units, entry: Entry, parent: QObject | None = None) -> "EntryForm":
        """Return a form to change a logged weld with."""
        return EntryForm(engine, units, entry_json(entry), entry, parent)

    @staticmethod
    def of_draft(
        engine: Engine, draft: Mapping[str, Any], entry: Entry | None = None, parent: QObject | None = None
    ) -> "EntryForm":
        """Return the form as it was left, figures as they were typed and in the units of that time."""
        units = Units.INCH if draft.get("units") == Units.INCH.value else Units.METRIC
        form = EntryForm(engine, units, draft.get("base", {}), entry, parent)
        form.texts.update(_known(draft.get("texts"), form.texts))
        form.settings.update(_known(draft.get("settings"), form.kinds))
        form.faults = tuple(str(each) for each in draft.get("faults", ()))
        form.pictures = tuple(map(_picture, draft.get("pictures", ())))
        form.is_touched = True
        return form

    @property
    def engine(self) -> Engine:
        """What the form asks of the layers below."""
        return self._engine

    @property
    def units(self) -> Units:
        """The units its lengths and figures are in."""
        return self._units

    @property
    def entry(self) -> Entry | None:
        """The logged weld that is being changed, if one is."""
        return self._entry

    @property
    def outcome(self) -> str:
        """How the weld came out, where that has been said before."""
        return str(self._base.get("outcome", ""))

    @property
    def missing_settings(self) -> tuple[str, ...]:
        """The settings that have no field yet."""
        return tuple(name for name in SETTING_ORDER if name in self.kinds and name not in self.settings)

    def set_text(self, name: str, text: str) -> None:
        """Take what was typed or chosen."""
        if self.texts[name] != text:
            self.texts[name] = text
            self._touch()

    def set_setting(self, name: str, text: str) -> None:
        """Take what was typed or chosen for a setting; a new one gets a field."""
        if self.settings.get(name) != text:
            self.settings[name] = text
            self._touch()

    def set_fault(self, fault: str, on: bool) -> None:
        """Add a fault, or take it away."""
        others = tuple(each for each in self.faults if each != fault)
        self.faults = (*others, fault) if on else others
        self._touch()

    def add_pictures(self, files: Sequence[Path]) -> None:
        """Add picture files; they are copied when the weld is logged."""
        new = [file for file in files if file not in self.pictures]
        self.pictures = (*self.pictures, *new)
        self._touch()

    def remove_picture(self, picture: Picture) -> None:
        """Take a picture away; its file stays where it is."""
        self.pictures = tuple(each for each in self.pictures if each != picture)
        self._touch()

    def reading(self, outcome: Outcome) -> Reading:
        """Return the entry that the form describes, or raise InputError for the first wrong field."""
        fields = self._fields(outcome)
        if self._entry is not None:
            return changed_entry(self._entry, fields, self._engine.tables, self._units)
        return read_entry({**fields, "uid": self._base["uid"]}, self._engine.tables, self._units)

    def draft(self) -> dict[str, Any]:
        """Return everything that is needed to go on later."""
        return {
            "base": dict(self._base),
            "texts": dict(self.texts),
            "settings": dict(self.settings),
            "faults": list(self.faults),
            "pictures": [_picture_json(each) for each in self.pictures],
            "units": self._units.value,
            "changes": self._entry.uid if self._entry else "",
            "kept_at": now(),
        }

    def _fields(self, outcome: Outcome) -> dict[str, Any]:
        fields: dict[str, Any] = {name: self.texts[name].strip() for name in TEXTS}
        for name in LENGTHS:
            is_as_it_came = self.texts[name] == self._first_texts[name]
            exact = self._base.get(f"{name}_mm")
            if is_as_it_came and exact is not None:
                fields[f"{name}_mm"] = exact
            else:
                fields[name] = self.texts[name].strip()
        is_same_moment = self.texts["made_at"] == self._first_texts["made_at"]
        fields["made_at"] = self._base["made_at"] if is_same_moment else self.texts["made_at"].strip()
        fields["settings"] = {name: self._setting(name) for name in self.settings}
        fields["outcome"] = outcome.value
        fields["faults"] = list(self.faults)
        fields["photos"] = [_picture_json(each) for each in self.pictures]
        return fields

    def _setting(self, name: str) -> object:
        text, given = self.settings[name], self._base.get("settings", {})
        if not text.strip():
            return ""
        if name in given and text == self._first_settings.get(name):
            return given[name]
        return value_of(name, text, self.kinds[name], self._units)

    def _fill_settings(self, given: Mapping[str, Any]) -> None:
        names = [name for name in (given or self._usual()) if name in self.kinds]
        for name in sorted(names, key=SETTING_ORDER.index):
            value = given.get(name)
            text = "" if value is None else text_of(name, value, self.kinds[name], self._units)
            self.settings[name] = text

    def _usual(self) -> tuple[str, ...]:
        return USUAL.get(self.texts["process"] or "tig", ())

    def _touch(self) -> None:
        self.is_touched = True
        self.changed.emit()


def _moment_text(made_at: str) -> str:
    return made_at if len(made_at) == 10 else f"{made_at[:10]} {made_at[11:16]}"


def _picture(given: object) -> Picture:
    if isinstance(given, Mapping):
        return Photo(str(given.get("name", "")), str(given.get("sha256", "")))
    return Path(str(given))


def _picture_json(picture: Picture) -> object:
    if isinstance(picture, Photo):
        return {"name": picture.name, "sha256": picture.sha256}
    return str(picture)


def _known(given: object, names: Container[str]) -> dict[str, str]:
    found = given if isinstance(given, Mapping) else {}
    return {name: str(text) for name, text in found.items() if name in names}

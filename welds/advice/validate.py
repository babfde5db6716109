"""From texts and numbers, as an option, a form or a JSON object gives them, to a Request."""

import math
from collections.abc import Mapping
from enum import StrEnum
from typing import TypeVar

from welds.advice.request import Coating, Goal, Hand, Joint, Part, Place, Process, Request, Solvent, Transfer
from welds.errors import NOTHING, InputError, nearest
from welds.language import figure, mark, tr
from welds.quantities.length import GAP, THICKNESS, WELD_LENGTH, GaugeTable, Limits, parse_length
from welds.quantities.sizes import WIRE, sold_size
from welds.quantities.units import Units
from welds.reference.gauges import gauge_thickness_mm
from welds.reference.metals import Metal, find_metal
from welds.reference.positions import find_position
from welds.reference.tables import Tables

FIELDS = (
    *(mark("process"), mark("metal"), mark("thickness"), mark("other_metal"), mark("other_thickness")),
    *(mark("joint"), mark("position"), mark("gap"), mark("goal"), mark("coating"), mark("solvent")),
    *(mark("part"), mark("place"), mark("length"), mark("hand"), mark("gas"), mark("wire"), mark("transfer")),
)
IN_MILLIMETRES = ("thickness_mm", "other_thickness_mm", "gap_mm", "length_mm", "wire_mm")
_SAME_FIELD = {"coatings": "coating", "wire_diameter": "wire", "wire_diameter_mm": "wire_mm"}
_WIRE = Limits(0.3, 5.0, (min(WIRE), max(WIRE)))
_MIG_ONLY = ("wire", "transfer")

E = TypeVar("E", bound=StrEnum)


def request_from_fields(
    fields: Mapping[str, object], tables: Tables, default_units: Units | None = None
) -> Request:
    """Return the request that the fields describe, or raise InputError for the first that cannot be used.

    Keys are the options with underscores; lengths come as text, or as numbers under a name ending in `_mm`.
    None, an empty text and an empty list mean "not given". Whether a joint suits the process is left to
    the advice.
    """
    given = _given(fields)
    return _Reader(given, tables, default_units).request()


def choices(allowed: type[E]) -> str:
    """Return the words of a closed set, for an error or a help text."""
    return ", ".join(each.value for each in allowed)


def enum_value(allowed: type[E], value: object, field: str) -> E:
    """Return the member that a word names; case, blanks and underscores do not matter."""
    if isinstance(value, str):
        word = "-".join(value.lower().replace("_", " ").replace("-", " ").split())
        for each in allowed:
            if each.value == word:
                return each
    raise InputError(field, value, choices(allowed), nearest(str(value), [each.value for each in allowed]))


def _given(fields: Mapping[str, object]) -> dict[str, object]:
    given: dict[str, object] = {}
    for key, value in fields.items():
        name = _SAME_FIELD.get(key, key)
        if name not in FIELDS and name not in IN_MILLIMETRES:
            raise InputError(mark("field"), key, ", ".join(FIELDS), nearest(key, (*FIELDS, *IN_MILLIMETRES)))
        if value is None or value == "" or value == [] or value == ():
            continue
        if name in given:
            raise InputError(key, value, tr("{field} once, under one name", field=name))
        given[name] = value
    return given


class _Reader:
    """Reads one request, field by field."""

    def __init__(self, given: Mapping[str, object], tables: Tables, default_units: Units | None) -> None:
        self._given, self._tables, self._units = given, tables, default_units

    def request(self) -> Request:
        process = enum_value(Process, self._needed("process", choices(Process)), "process")
        metal = self._metal("metal")
        if metal is None:
            raise InputError("metal", NOTHING, tr("a metal such as 5052, low-carbon, 304"))
        other = self._metal("other_metal")
        thickness_mm = self._length("thickness", THICKNESS, metal[1])
        if thickness_mm is None:
            raise InputError("thickness", NOTHING, tr("a length such as 2 mm, 0.080 in, 14 ga"))
        joint = enum_value(Joint, self._needed("joint", choices(Joint)), "joint")
        for field in _MIG_ONLY:
            if process is not Process.MIG and (field in self._given or f"{field}_mm" in self._given):
                raise InputError(field, self._given.get(field, tr("a value")), tr("only with process mig"))
        return Request(
            process=process,
            metal=metal[0],
            thickness_mm=thickness_mm,
            joint=joint,
            position=self._position(),
            other_metal=other[0] if other else None,
            other_thickness_mm=self._length("other_thickness", THICKNESS, (other or metal)[1]),
            gap_mm=self._length("gap", GAP, None) or 0.0,
            goal=self._choice("goal", Goal),
            coatings=self._coatings(),
            solvent=self._choice("solvent", Solvent),
            part=self._choice("part", Part),
            place=self._choice("place", Place) or Place.INDOORS,
            length_mm=self._length("length", WELD_LENGTH, None),
            hand=self._choice("hand", Hand) or Hand.UNHURRIED,
            gas=self._gas(),
            wire_diameter_mm=self._wire(),
            transfer=self._choice("transfer", Transfer),
        )

    def _needed(self, field: str, allowed: str) -> object:
        if field not in self._given:
            raise InputError(field, NOTHING, allowed)
        return self._given[field]

    def _choice(self, field: str, allowed: type[E]) -> E | None:
        return enum_value(allowed, self._given[field], field) if field in self._given else None

    def _coatings(self) -> tuple[Coating, ...]:
        value = self._given.get("coating", ())
        listed = value if isinstance(value, list | tuple) else (value,)
        return tuple(dict.fromkeys(enum_value(Coating, each, "coating") for each in listed))

    def _text(self, field: str, allowed: str) -> str | None:
        value = self._given.get(field)
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, str | int):
            raise InputError(field, value, allowed)
        return str(value)

    def _metal(self, field: str) -> tuple[str, Metal] | None:
        """Return the metal and its name for the request: the id, with the temper where one was asked."""
        text = self._text(field, tr("a metal such as 5052, low-carbon, 304"))
        if text is None:
            return None
        try:
            metal = find_metal(self._tables, text)
        except InputError as error:
            raise InputError(field, error.given, error.allowed, error.nearest) from error
        asked_temper = metal.temper and text.strip().lower().endswith(metal.temper.lower())
        name = f"{metal.id}-{metal.temper}" if asked_temper and metal.tempers else metal.id
        return name, metal

    def _position(self) -> str:
        text = self._text("position", tr("a position such as PA, 1G, flat"))
        if text is None:
            return "PA"
        return find_position(self._tables, text)

    def _gas(self) -> str | None:
        text = self._text("gas", tr("a gas such as argon, ar-18co2"))
        if text is None:
            return None
        ids = {str(row["id"]).lower(): str(row["id"]) for row in self._tables.table("gases").rows}
        word = "-".join(text.lower().split())
        if word not in ids:
            raise InputError("gas", text, ", ".join(ids.values()), nearest(word, ids.values()))
        return ids[word]

    def _wire(self) -> float | None:
        wire_mm = self._length("wire", _WIRE, None)
        if wire_mm is None:
            return None
        size = sold_size(wire_mm, "wire_diameter")
        if size is None:
            near = min(WIRE, key=lambda sold: abs(sold - wire_mm))
            allowed = figure(", ".join(f"{sold} mm" for sold in WIRE))
            raise InputError("wire", figure(f"{wire_mm:g} mm"), allowed, figure(f"{near} mm"))
        return size[0]

    def _length(self, field: str, limits: Limits, metal: Metal | None) -> float | None:
        in_mm = f"{field}_mm"
        if in_mm in self._given:
            if field in self._given:
                raise InputError(
                    in_mm,
                    self._given[in_mm],
                    tr("either {field} or {in_mm}, not both", field=field, in_mm=in_mm),
                )
            return _millimetres(self._given[in_mm], in_mm, limits)
        value = self._given.get(field)
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, str | int | float):
            raise InputError(field, value, tr("a length such as 2 mm, 0.080 in, 14 ga"))
        gauge = self._gauge_table(metal) if metal else None
        return parse_length(value, field=field, gauge=gauge, default=self._units, limits=limits).mm

    def _gauge_table(self, metal: Metal) -> GaugeTable | None:
        system = metal.gauge_system
        return (lambda number: gauge_thickness_mm(self._tables, system, number)) if system else None


def _millimetres(value: object, field: str, limits: Limits) -> float:
    allowed = tr(
        "a number from {lowest:g} to {highest:g}, in mm",
        lowest=limits.lowest_mm,
        highest=limits.highest_mm,
    )
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise InputError(field, value, allowed)
    if not (math.isfinite(value) and limits.allows(value)):
        raise InputError(field, value, allowed)
    return float(value)

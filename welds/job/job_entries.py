"""Pieces, joints, repairs and the rest of a job, each read from its entry."""

from collections.abc import Mapping
from dataclasses import dataclass

from welds.advice.request import Coating, Part, Process, Request
from welds.advice.validate import FIELDS, enum_value, request_from_fields
from welds.errors import InputError, nearest
from welds.job.bend_radius import Grain
from welds.job.blank import Bend, Dimensions, FoldedPart
from welds.job.calibration import read_angle
from welds.job.damage import Behind, Damage, Holes, read_holes
from welds.job.job import JointWork, Piece, Prices, RepairWork, Step, Stock
from welds.job.job_fields import LINK_FIELDS, Entry, read_number
from welds.job.lengths import read_length, read_lengths, read_size, read_thickness
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.metals import Metal, find_metal
from welds.reference.strict_yaml import YamlMap
from welds.reference.tables import Tables

_FOLDED = ("legs", "angles", "radius", "dims", "width", "k", "brake", "grain")
_STOCK = ("id", "metal", "thickness", "size", "count")
_PIECE = ("id", "name", "stock", "metal", "thickness", "count", "size", *_FOLDED)
_JOINT = ("id", "name", "pieces", "count", "closed", "dry_fit", *FIELDS)
_REPAIR = (
    "id", "name", "metal", "thickness", "holes", "region", "behind", "measured", "panel", "part", "process",
    "load_bearing", "water_trap", "coating",
)  # fmt: skip
_PRICES = ("currency", "filler_kg", "gas_m3", "disc", "power_kwh", "labour_h")


@dataclass(frozen=True, slots=True)
class Setting:
    """What every entry is read against: tables, units, the file's defaults and the stock read so far."""

    tables: Tables
    units: Units | None
    defaults: Mapping[str, object]
    stock: Mapping[str, Stock]


def read_stock(key: str, entry: Entry, setting: Setting) -> Stock | None:
    """Return the sheets of one kind, or None where they cannot be read."""
    entry.refuse_unknown(_STOCK)
    sheet = _sheet(entry, setting)
    size = entry.read("size", lambda value: read_size(value, "size", setting.units), None, is_needed=True)
    if sheet is None or size is None:
        return None
    return Stock(key, *sheet, size, entry.count("count"))


def read_piece(key: str, entry: Entry, setting: Setting) -> Piece | None:
    """Return the piece, or None where it cannot be read."""
    entry.refuse_unknown((*_PIECE, *LINK_FIELDS))
    stock = entry.text("stock") or None
    if stock is not None and stock not in setting.stock:
        entry.complain(_unknown(stock, setting.stock), "stock")
    if stock is not None and stock in setting.stock and not {"metal", "thickness"} & set(entry.found):
        sheet: tuple[Metal, float] | None = (setting.stock[stock].metal, setting.stock[stock].thickness_mm)
    else:
        sheet = _sheet(entry, setting)
    size = entry.read("size", lambda value: read_size(value, "size", setting.units), None)
    if ("size" in entry.found) is ("legs" in entry.found):
        entry.complain(tr("either size (flat) or legs with angles and radius (folded)"))
    if sheet is None:
        return None
    part = _folded(entry, setting, sheet[1]) if "legs" in entry.found else None
    width = entry.read("width", lambda value: read_length(value, "width", setting.units), None)
    if part is not None and not width:
        entry.complain(tr("width is missing: the side that is not folded"))
    if part is None and size is None:
        return None
    if {"k", "brake"} <= set(entry.found):
        entry.complain(tr("k, or the brake whose test bend has it, not both"), "k")
    name = entry.text("name", key.replace("-", " "))
    grain = entry.read("grain", lambda value: enum_value(Grain, value, "grain"), Grain.ACROSS)
    return Piece(
        key,
        name,
        *sheet,
        entry.count("count"),
        stock,
        part,
        width,
        size,
        entry.read("k", read_number, None),
        entry.text("brake"),
        grain is Grain.ALONG,
        entry.links(),
    )


def read_joint(key: str, entry: Entry, setting: Setting) -> JointWork | None:
    """Return the joint, or None where it cannot be read."""
    entry.refuse_unknown((*_JOINT, *LINK_FIELDS))
    given = {name: value for name, value in entry.found.items() if name in FIELDS}
    request = _request(entry, {**setting.defaults, **given}, setting)
    if request is None:
        return None
    if request.length_mm is None and request.joint.value != "plug":
        entry.complain(tr("length is missing: how long the seam is"))
    name = entry.text("name", key.replace("-", " "))
    flags = (entry.flag("closed"), entry.flag("dry_fit"))
    return JointWork(key, name, request, entry.names("pieces"), entry.count("count"), *flags, entry.links())


def read_repair(key: str, entry: Entry, setting: Setting) -> RepairWork | None:
    """Return the repair, or None where it cannot be read."""
    entry.refuse_unknown((*_REPAIR, *LINK_FIELDS))
    sheet = _sheet(entry, setting)
    units = setting.units
    no_holes: tuple[Holes, ...] = ()
    holes = entry.read("holes", lambda value: read_holes(value, units), no_holes, is_needed=True)
    region = entry.read("region", lambda value: read_size(value, "region", units), None, is_needed=True)
    if sheet is None or region is None or not holes:
        return None
    try:
        damage = Damage(
            *sheet,
            holes,
            region,
            entry.read("behind", lambda value: enum_value(Behind, value, "behind"), Behind.NONE),
            entry.read("measured", lambda value: read_length(value, "measured", units), None),
            entry.read("panel", lambda value: read_size(value, "panel", units), None),
            entry.read("part", lambda value: enum_value(Part, value, "part"), None),
            entry.flag("load_bearing"),
            entry.flag("water_trap"),
            entry.read("process", lambda value: enum_value(Process, value, "process"), None),
            tuple(enum_value(Coating, each, "coating") for each in entry.names("coating")),
        )
    except InputError as error:
        entry.complain(str(error))
        return None
    return RepairWork(key, entry.text("name", key.replace("-", " ")), damage, entry.links())


def read_step(key: str, entry: Entry, setting: Setting) -> Step:
    """Return any other step; it has nothing but a name."""
    entry.refuse_unknown(("id", "name", *LINK_FIELDS))
    return Step(key, entry.text("name", key.replace("-", " ")), entry.links())


def read_prices(entry: Entry, tables: Tables) -> Prices:
    """Return what the person pays."""
    entry.refuse_unknown(_PRICES)
    fillers = [str(row["id"]) for row in tables.table("fillers").rows]
    gases = [str(row["iso_code"]) for row in tables.table("gases").rows]
    return Prices(
        entry.text("currency"),
        entry.read("filler_kg", lambda value: _by_name(value, fillers), {}),
        entry.read("gas_m3", lambda value: _by_name(value, gases), {}),
        entry.price("disc"),
        entry.price("power_kwh"),
        entry.price("labour_h"),
    )


def _by_name(value: object, known: list[str]) -> dict[str, float]:
    if not isinstance(value, YamlMap):
        raise ValueError(tr("'name: price' lines below it"))
    for name in value:
        if name not in known:
            raise InputError("name", name, ", ".join(dict.fromkeys(known)), nearest(name, known))
    return {name: read_number(price) for name, price in value.items()}


def _sheet(entry: Entry, setting: Setting) -> tuple[Metal, float] | None:
    """Return metal and thickness; what an entry leaves out comes from the defaults."""
    given = {name: entry.found.get(name, setting.defaults.get(name)) for name in ("metal", "thickness")}
    for name, value in given.items():
        if value is None:
            entry.complain(tr("{name} is missing, here and in defaults", name=name))
    if None in given.values():
        return None
    try:
        metal = find_metal(setting.tables, str(given["metal"]))
    except InputError as error:
        entry.complain(str(error), "metal")
        return None
    try:
        return metal, read_thickness(given["thickness"], metal, setting.tables, setting.units).mm
    except InputError as error:
        entry.complain(str(error), "thickness")
        return None


def _folded(entry: Entry, setting: Setting, thickness_mm: float) -> FoldedPart | None:
    units = setting.units
    none: tuple[float, ...] = ()
    legs = entry.read("legs", lambda value: read_lengths(value, "legs", units), none)
    angles = entry.read("angles", _angles, none, is_needed=True)
    radii = entry.read("radius", lambda value: read_lengths(value, "radius", units), none, is_needed=True)
    dimensions = entry.read("dims", lambda value: enum_value(Dimensions, value, "dims"), Dimensions.OUTSIDE)
    if not legs or not angles or not radii:
        return None
    if len(radii) == 1:
        radii = radii * len(angles)
    if len(radii) != len(angles):
        entry.complain(
            tr(
                "{radii} radii for {angles} angles; allowed: one for all or one each",
                radii=len(radii),
                angles=len(angles),
            ),
            "radius",
        )
        return None
    bends = tuple(Bend(abs(angle), radius, angle > 0.0) for angle, radius in zip(angles, radii, strict=True))
    try:
        return FoldedPart(thickness_mm, legs, bends, dimensions)
    except InputError as error:
        entry.complain(str(error), "legs")
        return None


def _angles(value: object) -> tuple[float, ...]:
    listed = value if isinstance(value, list) else str(value).replace(";", ",").split(",")
    return tuple(read_angle(each, "angles") for each in listed)


def _request(entry: Entry, fields: Mapping[str, object], setting: Setting) -> Request | None:
    try:
        return request_from_fields(fields, setting.tables, setting.units)
    except InputError as error:
        entry.complain(str(error), error.field if error.field in entry.found else None)
        return None


def _unknown(name: str, known: Mapping[str, object]) -> str:
    near = nearest(name, known)
    allowed = ", ".join(known) or tr("an id from the stock section")
    return tr("{name} is not in stock; allowed: {allowed}", name=name, allowed=allowed) + (
        tr("; nearest: {near}", near=near) if near else ""
    )

"""Logged welds in words: cells of the table, lines of the detail, one sentence beside the card."""

from collections.abc import Iterator, Mapping
from datetime import date

from welds.advice.evidence import Outcome
from welds.advice.request import Joint
from welds.language import figure, mark, tr
from welds.logbook.entry import Entry, Value
from welds.logbook.settings import Kind
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.reference.faults import imperfection_words
from welds.reference.names import name_of
from welds.reference.tables import Tables
from welds.report.wording import GROUPS, joint_name, label, outcome_words, process_name, value_words

OUTCOME_TONES: Mapping[Outcome, str] = {
    Outcome.WORKED_WELL: "good",
    Outcome.WORKED: "",
    Outcome.FAILED: "stop",
}
MONTHS = (
    *(mark("January"), mark("February"), mark("March"), mark("April"), mark("May"), mark("June")),
    *(mark("July"), mark("August"), mark("September"), mark("October"), mark("November"), mark("December")),
)
SETTING_ORDER: tuple[str, ...] = tuple(name for _, names in GROUPS for name in names)
_SAME_EVERYWHERE = frozenset({"A", "V", "Hz", "percent", "s"})


def joint_words(joint: str) -> str:
    """Return a joint in words; what is no joint stands as it is."""
    return joint_name(Joint(joint)) if joint in set(Joint) else joint.replace("-", " ")


def day_words(made_at: str, today: date | None = None) -> str:
    """Return the day as people say it, without the year where it is this one."""
    day = date.fromisoformat(made_at[:10])
    month = tr(MONTHS[day.month - 1])
    if today is not None and day.year == today.year:
        return tr("{day} {month}", day=day.day, month=month)
    return tr("{day} {month} {year}", day=day.day, month=month, year=day.year)


def when_words(made_at: str) -> str:
    """Return the day, and the time of day where one was given."""
    return f"{day_words(made_at)}, {made_at[11:16]}" if len(made_at) > 10 else day_words(made_at)


def fault_words(fault: str) -> str:
    """Return a fault's plain name as words; a number stays a number."""
    return fault if fault.isdigit() else name_of(fault)


def length_words(mm: float, units: Units) -> str:
    """Return a length in the person's units."""
    return str(show(mm, "mm", "thickness", units))


def current_words(entry: Entry) -> str:
    """Return the current as logged, or an empty text."""
    current = entry.figure("current")
    return "" if current is None else tr("{current:g} A", current=current)


def what_words(entry: Entry, units: Units) -> str:
    """Return what was welded in one line."""
    sheets = f"{entry.metal} {length_words(entry.thickness_mm, units)}"
    if entry.other_metal or entry.other_thickness_mm:
        thickness = length_words(entry.other_thickness_mm or entry.thickness_mm, units)
        other = f"{entry.other_metal or entry.metal} {thickness}"
        sheets = tr("{sheet} to {other}", sheet=sheets, other=other)
    return f"{process_name(entry.process)}, {sheets}, {joint_words(entry.joint)}, {entry.position}"


def past_words(entry: Entry, today: date, tables: Tables) -> str:
    """Return the sentence beside the card: what was run, when, what came of it; this year goes unsaid."""
    ran_at = current_words(entry)
    feed = entry.figure("wire_feed")
    if not ran_at and feed is not None:
        ran_at = tr("{feed:g} m/min", feed=feed)
    names = (imperfection_words(tables, fault).partition(" (")[0] for fault in entry.faults)
    faults = f" ({', '.join(names)})" if entry.faults else ""
    day, outcome = day_words(entry.made_at, today), outcome_words(entry.outcome) + faults
    if not ran_at:
        return tr("You welded this on {day}: {outcome}", day=day, outcome=outcome)
    return tr("You ran this at {figure} on {day}: {outcome}", figure=ran_at, day=day, outcome=outcome)


def differing_words(entry: Entry, units: Units) -> str:
    """Return what tells this weld's joint from another one's."""
    sheet = f"{entry.metal} {length_words(entry.thickness_mm, units)}"
    return f"{sheet}, {joint_words(entry.joint)}, {entry.position}"


def setting_words(name: str, value: Value, entry: Entry, kinds: Mapping[str, Kind], units: Units) -> str:
    """Return one setting as logged; nothing is rounded in the log's own units."""
    unit = kinds[name].unit if name in kinds else None
    if isinstance(value, bool) or not isinstance(value, int | float):
        return value_words(name, value, entry.process)
    if unit is None:
        return figure(f"{value:g}")
    is_metric = units is Units.METRIC and name != "travel_speed"
    if is_metric or unit in _SAME_EVERYWHERE:
        return f"{figure(f'{value:g}')} {'%' if unit == 'percent' else unit}"
    return str(show(float(value), unit, name, units))


def ordered_settings(settings: Mapping[str, Value]) -> Iterator[tuple[str, Value]]:
    """Yield the settings in the order a hand meets them."""
    place = {name: number for number, name in enumerate(SETTING_ORDER)}
    yield from sorted(settings.items(), key=lambda item: place.get(item[0], len(place)))


def detail_lines(entry: Entry, kinds: Mapping[str, Kind], units: Units) -> Iterator[tuple[str, str]]:
    """Yield (label, words) of everything but the notes and the pictures."""
    yield tr("Welded"), what_words(entry, units)
    if entry.gap_mm:
        yield tr("Gap"), length_words(entry.gap_mm, units)
    yield tr("When"), when_words(entry.made_at)
    named = ((tr("Who"), entry.welder), (tr("Machine"), entry.machine), (tr("Lot"), entry.material_lot))
    yield from (line for line in named if line[1])
    for name, value in ordered_settings(entry.settings):
        yield label(name), setting_words(name, value, entry, kinds, units)

"""Logged welds in words: cells of the table, lines of the detail, one sentence beside the card."""

from collections.abc import Iterator, Mapping
from datetime import date

from welds.advice.evidence import Outcome
from welds.logbook.entry import Entry, Value
from welds.logbook.settings import Kind
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.reference.faults import imperfection_words
from welds.reference.tables import Tables
from welds.report.wording import GROUPS, JOINT_NAMES, PROCESS_NAMES, label, value_words

OUTCOME_WORDS: Mapping[Outcome, str] = {
    Outcome.WORKED_WELL: "worked well",
    Outcome.WORKED: "worked",
    Outcome.FAILED: "failed",
}
OUTCOME_TONES: Mapping[Outcome, str] = {
    Outcome.WORKED_WELL: "good",
    Outcome.WORKED: "",
    Outcome.FAILED: "stop",
}
MONTHS = (
    *("January", "February", "March", "April", "May", "June", "July"),
    *("August", "September", "October", "November", "December"),
)
SETTING_ORDER: tuple[str, ...] = tuple(name for _, names in GROUPS for name in names)
_SAME_EVERYWHERE = frozenset({"A", "V", "Hz", "percent", "s"})


def day_words(made_at: str) -> str:
    """Return the day as people say it."""
    day = date.fromisoformat(made_at[:10])
    return f"{day.day} {MONTHS[day.month - 1]} {day.year}"


def when_words(made_at: str) -> str:
    """Return the day, and the time of day where one was given."""
    return f"{day_words(made_at)}, {made_at[11:16]}" if len(made_at) > 10 else day_words(made_at)


def fault_words(fault: str) -> str:
    """Return a fault's plain name as words; a number stays a number."""
    return fault.replace("-", " ")


def length_words(mm: float, units: Units) -> str:
    """Return a length in the person's units."""
    return str(show(mm, "mm", "thickness", units))


def current_words(entry: Entry) -> str:
    """Return the current as logged, or an empty text."""
    current = entry.figure("current")
    return "" if current is None else f"{current:g} A"


def what_words(entry: Entry, units: Units) -> str:
    """Return what was welded in one line."""
    other = ""
    if entry.other_metal or entry.other_thickness_mm:
        thickness = length_words(entry.other_thickness_mm or entry.thickness_mm, units)
        other = f" to {entry.other_metal or entry.metal} {thickness}"
    return (
        f"{PROCESS_NAMES[entry.process]}, {entry.metal} {length_words(entry.thickness_mm, units)}{other},"
        f" {JOINT_NAMES[entry.joint]}, {entry.position}"
    )


def past_words(entry: Entry, today: date, tables: Tables) -> str:
    """Return the sentence beside the card: what was run, when, what came of it; this year goes unsaid."""
    figure = current_words(entry)
    feed = entry.figure("wire_feed")
    if not figure and feed is not None:
        figure = f"{feed:g} m/min"
    ran = f"You ran this at {figure}" if figure else "You welded this"
    names = (imperfection_words(tables, fault).partition(" (")[0] for fault in entry.faults)
    faults = f" ({', '.join(names)})" if entry.faults else ""
    day = day_words(entry.made_at).removesuffix(f" {today.year}")
    return f"{ran} on {day}: {OUTCOME_WORDS[entry.outcome]}{faults}"


def differing_words(entry: Entry, units: Units) -> str:
    """Return what tells this weld's joint from another one's."""
    sheet = f"{entry.metal} {length_words(entry.thickness_mm, units)}"
    return f"{sheet}, {JOINT_NAMES[entry.joint]}, {entry.position}"


def setting_words(name: str, value: Value, entry: Entry, kinds: Mapping[str, Kind], units: Units) -> str:
    """Return one setting as logged; nothing is rounded in the log's own units."""
    unit = kinds[name].unit if name in kinds else None
    if isinstance(value, bool) or not isinstance(value, int | float):
        return value_words(name, value, entry.process)
    if unit is None:
        return f"{value:g}"
    if units is Units.METRIC and name != "travel_speed":
        return f"{value:g} {'%' if unit == 'percent' else unit}"
    if unit in _SAME_EVERYWHERE:
        return f"{value:g} {'%' if unit == 'percent' else unit}"
    return str(show(float(value), unit, name, units))


def ordered_settings(settings: Mapping[str, Value]) -> Iterator[tuple[str, Value]]:
    """Yield the settings in the order a hand meets them."""
    place = {name: number for number, name in enumerate(SETTING_ORDER)}
    yield from sorted(settings.items(), key=lambda item: place.get(item[0], len(place)))


def detail_lines(entry: Entry, kinds: Mapping[str, Kind], units: Units) -> Iterator[tuple[str, str]]:
    """Yield (label, words) of everything but the notes and the pictures."""
    yield "Welded", what_words(entry, units)
    if entry.gap_mm:
        yield "Gap", length_words(entry.gap_mm, units)
    yield "When", when_words(entry.made_at)
    for name, text in (("Who", entry.welder), ("Machine", entry.machine), ("Lot", entry.material_lot)):
        if text:
            yield name, text
    for name, value in ordered_settings(entry.settings):
        yield label(name), setting_words(name, value, entry, kinds, units)

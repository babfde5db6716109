"""What a card says, line by line in reading order: one decision for every report and for the window."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from welds.advice.card import Card
from welds.advice.request import Process, Request
from welds.advice.setting import Reason, Setting
from welds.language import figure, tr
from welds.quantities.display import Shown, show, show_band
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.reference.names import name_of
from welds.report.wording import (
    GROUPS,
    HEADLINES,
    LABELS,
    OTHER_GROUP,
    WORDS_FIRST,
    joint_name,
    label,
    process_name,
    value_words,
)


@dataclass(frozen=True, slots=True)
class SettingLine:
    """One setting in words; `start` comes without its unit, `range` and `second` may be empty.

    `second` is the start on the machine's own scale and in the other unit system, or the standard's code
    behind a plain word.
    """

    name: str
    label: str
    start: str
    unit: str
    range: str
    second: str
    basis: Basis
    reasons: tuple[Reason, ...]
    sources: tuple[str, ...]
    alternatives: tuple[str, ...]

    @property
    def start_text(self) -> str:
        """The figure with its unit."""
        return f"{self.start} {self.unit}".strip()

    @property
    def range_text(self) -> str:
        """The range with its unit, or nothing."""
        return f"{self.range} {self.unit}".strip() if self.range else ""


@dataclass(frozen=True, slots=True)
class SettingGroup:
    """Settings that belong together, under a plain heading."""

    title: str
    lines: tuple[SettingLine, ...]


def setting_line(setting: Setting, process: Process, units: Units) -> SettingLine:
    """Return one setting ready to print."""
    shown, range_text = _figure(setting, process, units)
    return SettingLine(
        name=setting.name,
        label=label(setting.name),
        start=shown.text,
        unit=shown.unit_text,
        range=range_text,
        second=shown.second_text,
        basis=setting.basis,
        reasons=setting.reasons,
        sources=setting.sources,
        alternatives=tuple(_alternatives(setting, process, units)),
    )


def groups(card: Card, units: Units) -> tuple[SettingGroup, ...]:
    """Return all settings of the card in groups, in reading order; none is left out."""
    process = card.request.process
    lines = {name: setting_line(setting, process, units) for name, setting in card.settings.items()}
    found = [(title, [lines[name] for name in names if name in lines]) for title, names in GROUPS]
    found.append((OTHER_GROUP, [line for name, line in lines.items() if name not in LABELS]))
    return tuple(SettingGroup(tr(title), tuple(members)) for title, members in found if members)


def headlines(card: Card, units: Units) -> tuple[SettingLine, ...]:
    """Return the settings that are read from across the bench."""
    process = card.request.process
    present = (card.settings[name] for name in HEADLINES[process] if name in card.settings)
    return tuple(setting_line(setting, process, units) for setting in present)


def title(request: Request) -> str:
    """Return what the card is for, without lengths: "TIG, outside corner, 5052"."""
    metals = request.metal
    if request.other_metal and request.other_metal != request.metal:
        metals = tr("{metal} to {other}", metal=request.metal, other=request.other_metal)
    return f"{process_name(request.process)}, {joint_name(request.joint)}, {metals}"


def subtitle(request: Request, units: Units) -> str:
    """Return the lengths and the conditions: "2.03 mm (0.080 in), position PA, indoors"."""
    thickness = length_text(request.thickness_mm, "thickness", units)
    other_mm = request.other_thickness_mm
    if other_mm and other_mm != request.thickness_mm:
        other = length_text(other_mm, "thickness", units)
        thickness = tr("{thickness} to {other}", thickness=thickness, other=other)
    parts = [thickness]
    parts.append(tr("position {position}", position=request.position))
    if request.gap_mm:
        parts.append(tr("gap {length}", length=length_text(request.gap_mm, "gap", units)))
    if request.length_mm:
        parts.append(tr("{length} long", length=length_text(request.length_mm, "length", units)))
    parts.append(name_of(request.place.value))
    parts += [name_of(coating.value) for coating in request.coatings]
    if request.part:
        parts.append(name_of(request.part.value))
    if request.goal:
        parts.append(tr("goal: {goal}", goal=name_of(request.goal.value)))
    return ", ".join(parts)


def length_text(mm: float, kind: str, units: Units) -> str:
    """Return a length with the other unit in brackets."""
    shown = show(mm, "mm", kind, units)
    return f"{shown} ({shown.second_text})" if shown.second_text else str(shown)


def sources_in_order(card: Card) -> tuple[str, ...]:
    """Return every source id that the card rests on, each once, in reading order."""
    ids: dict[str, None] = {}

    def note(found: Iterable[str | None]) -> None:
        ids.update((each, None) for each in found if each)

    note(caution.source for caution in card.cautions)
    for setting in card.settings.values():
        note(setting.sources)
        note(reason.source for reason in setting.reasons)
    note(step.source for step in card.preparation)
    return tuple(ids)


def grades_used(card: Card) -> tuple[Basis, ...]:
    """Return the grades that occur on the card, best first."""
    used = {setting.basis for setting in card.settings.values()}
    used |= {caution.basis for caution in card.cautions} | {step.basis for step in card.preparation}
    return tuple(sorted(used, key=lambda basis: basis.rank))


def factor_text(reason: Reason) -> str:
    """Return the factor of a reason as "x 1.08", or nothing."""
    return "" if reason.factor is None else figure(f"x {reason.factor:.3g}")


def short_why(setting: SettingLine) -> str:
    """Return the chain of reasons on one line."""
    links = (f"{reason.text}{_bracketed(factor_text(reason))}" for reason in setting.reasons)
    return "; ".join(links)


def grades_by_source(card: Card) -> Mapping[str, tuple[Basis, ...]]:
    """Return for each source the grades of what was taken from it, best first."""
    found: dict[str, set[Basis]] = {}
    pairs = [(source, setting.basis) for setting in card.settings.values() for source in setting.sources]
    pairs += [(caution.source, caution.basis) for caution in card.cautions if caution.source]
    pairs += [(step.source, step.basis) for step in card.preparation if step.source]
    for source, basis in pairs:
        found.setdefault(source, set()).add(basis)
    return {source: tuple(sorted(grades, key=lambda grade: grade.rank)) for source, grades in found.items()}


def _bracketed(text: str) -> str:
    return f" ({text})" if text else ""


def _figure(setting: Setting, process: Process, units: Units) -> tuple[Shown, str]:
    """Return the start and the range without unit (empty where the setting has no range)."""
    if setting.band is not None:
        band = show_band(setting.band, setting.name, units)
        has_width = band.low != band.high
        second = "; ".join(each for each in (setting.own_scale, band.second_text) if each)
        return Shown(band.start, band.unit_text, second), band.range_text if has_width else ""
    assert setting.value is not None
    shown = _value(setting.name, setting.value, setting.unit, process, units)
    if setting.text:
        words, code = setting.text, str(shown)
        shown = Shown(words, "", code) if setting.name in WORDS_FIRST else replace(shown, second_text=words)
    return shown, ""


def _value(name: str, value: str | float | bool, unit: str | None, process: Process, units: Units) -> Shown:
    if unit is not None and not isinstance(value, str | bool):
        return show(value, unit, name, units)
    words = value_words(name, value, process)
    return Shown(words, "", str(value) if name == "polarity" and words != value else "")


def _alternatives(setting: Setting, process: Process, units: Units) -> Iterable[str]:
    for choice in setting.alternatives:
        shown = str(_value(setting.name, choice.value, setting.unit, process, units))
        if choice.text and setting.name in WORDS_FIRST:
            yield f"{choice.text} ({shown})"
        else:
            yield f"{shown}: {choice.text}" if choice.text else shown

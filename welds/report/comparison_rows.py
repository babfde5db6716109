"""The rows of a comparison: each setting across all columns, what it differs by and why."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from functools import partial
from math import floor, log10

from welds.advice.card import Card
from welds.advice.setting import Setting
from welds.language import figure, mark, tr
from welds.quantities.display import display_unit
from welds.quantities.registry import convert
from welds.quantities.units import Units
from welds.report import layout
from welds.report.column_words import request_changes
from welds.report.comparison import Comparison, setting_names
from welds.report.reason_change import READS, changed_links, has_own_cause, percent_text
from welds.report.wording import GROUPS, LABELS, OTHER_GROUP, label, label_inside, machine_name

NOT_USED = mark("not used")
CHOSEN_FIRST = ("polarity", "transfer")
"""Choices that decide whether a setting is there at all; how large it is, what is asked decides."""


class Mark(StrEnum):
    """How a cell stands to the base; each has a sign, so that no colour is needed."""

    BASE = "base"
    SAME = "same"
    MORE = "more"
    LESS = "less"
    OTHER = "other"
    ABSENT = "absent"


SIGNS: Mapping[Mark, str] = {
    Mark.BASE: "",
    Mark.SAME: "=",
    Mark.MORE: "\N{BLACK UP-POINTING TRIANGLE}",
    Mark.LESS: "\N{BLACK DOWN-POINTING TRIANGLE}",
    Mark.OTHER: "\N{NOT EQUAL TO}",
    Mark.ABSENT: "\N{NOT EQUAL TO}",
}


@dataclass(frozen=True, slots=True)
class Cell:
    """One setting of one column; `change` is what it differs by, `why` the links that make it differ.

    The links are worked out when they are asked for: a page that follows a slider shows few of them.
    """

    line: layout.SettingLine | None
    mark: Mark
    change: str = ""
    find_why: Callable[[], tuple[str, ...]] = field(default=tuple, compare=False, repr=False)

    @property
    def why(self) -> tuple[str, ...]:
        """The links of the chains that make it differ from the base."""
        return self.find_why()

    @property
    def is_different(self) -> bool:
        """Whether it differs from the base."""
        return self.mark not in (Mark.BASE, Mark.SAME)

    @property
    def text(self) -> str:
        """The figure to start with, starred where no published source covers it, or that there is none."""
        if self.line is None:
            return tr(NOT_USED)
        return self.line.start_text + ("" if self.line.basis.is_published else "*")


@dataclass(frozen=True, slots=True)
class Row:
    """One setting across all columns; columns without a card have None."""

    name: str
    label: str
    cells: tuple[Cell | None, ...]

    @property
    def is_different(self) -> bool:
        """Whether any column differs from the base."""
        return any(cell is not None and cell.is_different for cell in self.cells)


@dataclass(frozen=True, slots=True)
class RowGroup:
    """Rows that belong together."""

    title: str
    rows: tuple[Row, ...]


class _Sheet:
    """One card whose settings are put into words once each."""

    def __init__(self, card: Card, units: Units) -> None:
        self.card, self.units = card, units
        self._made: dict[str, layout.SettingLine | None] = {}

    def line(self, name: str) -> layout.SettingLine | None:
        """Return a setting in words, or None where the card has none of that name."""
        if name not in self._made:
            setting = self.card.settings.get(name)
            process = self.card.request.process
            line = None if setting is None else layout.setting_line(setting, process, self.units)
            self._made[name] = line
        return self._made[name]


def row_groups(comparison: Comparison, units: Units) -> tuple[RowGroup, ...]:
    """Return all settings of all columns, in the card's groups and reading order."""
    sheets = [_Sheet(column.card, units) if column.card else None for column in comparison.columns]
    base = comparison.columns.index(comparison.pinned)
    names = setting_names([sheet.card for sheet in sheets if sheet is not None])
    groups = [(title, [name for name in members if name in names]) for title, members in GROUPS]
    groups.append((OTHER_GROUP, [name for name in names if name not in LABELS]))
    return tuple(
        RowGroup(tr(title), tuple(_row(name, sheets, base) for name in members))
        for title, members in groups
        if members
    )


def _row(name: str, sheets: Sequence[_Sheet | None], base: int) -> Row:
    pinned = sheets[base]
    assert pinned is not None
    cells: list[Cell | None] = []
    for place, sheet in enumerate(sheets):
        if sheet is None:
            cells.append(None)
        elif place == base and sheet.line(name) is not None:
            cells.append(Cell(sheet.line(name), Mark.BASE))
        else:
            cells.append(_cell(name, pinned, sheet))
    return Row(name, label(name), tuple(cells))


def _cell(name: str, pinned: _Sheet, sheet: _Sheet) -> Cell:
    line, basis = sheet.line(name), pinned.line(name)
    if _shown(line) == _shown(basis):
        return Cell(line, Mark.SAME)
    if line is None or basis is None:
        change = "" if basis is None else tr("instead of {base}", base=basis.start_text)
        mark = Mark.ABSENT if line is None else Mark.OTHER
        return Cell(line, mark, change, partial(_why_only_one, name, pinned, sheet))
    before, after = pinned.card.settings[name], sheet.card.settings[name]
    mark = Mark.OTHER
    if line.start != basis.start and _is_number(before.start) and _is_number(after.start):
        mark = Mark.MORE if float(after.start) > float(before.start) else Mark.LESS
    change = _change(before, after, basis, line, sheet.units)
    return Cell(line, mark, change, partial(_why, name, pinned, sheet))


def _shown(line: layout.SettingLine | None) -> tuple[str, ...]:
    return () if line is None else (line.start, line.unit, line.range, line.second)


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _change(
    before: Setting, after: Setting, basis: layout.SettingLine, line: layout.SettingLine, units: Units
) -> str:
    """Return the distance in the shown unit and in percent; for a choice, what it stands in place of.

    The distance is taken before rounding: 87 and 94 A are shown as 85 and 95 A, and lie 7 A apart.
    """
    if line.start == basis.start:
        return tr("base {base}", base=basis.range_text or basis.second or basis.start_text)
    if before.band is None or after.band is None or basis.unit != line.unit:
        return tr("instead of {base}", base=basis.start_text)
    first, second = (
        convert(band.start, band.unit, display_unit(line.name, band.unit, units))
        for band in (before.band, after.band)
    )
    distance = _signed(second - first, line.unit)
    is_ratio = first > 0.0 and line.unit not in ("", "%") and not line.unit.startswith("\N{DEGREE SIGN}")
    return f"{distance}, {percent_text(second / first)}" if is_ratio else distance


def _signed(distance: float, unit: str) -> str:
    """Return a distance with two significant digits, none of them behind ten."""
    digits = 0 if abs(distance) >= 10 else 1 - floor(log10(abs(distance))) if distance else 0
    text = f"{distance:+.{digits}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    said = tr("points") if unit == "%" else unit
    return f"{figure(text)} {said}".strip()


def _why(name: str, pinned: _Sheet, sheet: _Sheet) -> tuple[str, ...]:
    """Return the changed links; where the chains alone cannot tell, what they were worked out from."""
    before, after = pinned.card.settings[name], sheet.card.settings[name]
    links = changed_links(before, after)
    if links and has_own_cause(before, after):
        return links
    figures = [cause for cause in READS.get(name, ()) if cause not in CHOSEN_FIRST]
    causes = tuple(_causes(figures, pinned, sheet))
    return (*links, *(causes or (() if links else _asked_otherwise(pinned, sheet))))


def _why_only_one(name: str, pinned: _Sheet, sheet: _Sheet) -> tuple[str, ...]:
    """Return why a setting stands on one of the two cards alone."""
    if pinned.card.request.process is not sheet.card.request.process:
        return _asked_otherwise(pinned, sheet)[:1]
    choices = [cause for cause in READS.get(name, ()) if cause in CHOSEN_FIRST]
    return tuple(_causes(choices, pinned, sheet)) or _asked_otherwise(pinned, sheet)


def _causes(names: Sequence[str], pinned: _Sheet, sheet: _Sheet) -> Iterator[str]:
    for cause in names:
        before, after = pinned.line(cause), sheet.line(cause)
        if before is None or after is None or _shown(before) == _shown(after):
            continue
        figures = [after.start_text, before.start_text]
        if figures[0] == figures[1]:
            figures = [f"{line.start_text} ({line.range_text})" for line in (after, before)]
        yield tr(
            "follows {setting}: {this} instead of {base}",
            setting=label_inside(cause),
            this=figures[0],
            base=figures[1],
        )


def _asked_otherwise(pinned: _Sheet, sheet: _Sheet) -> tuple[str, ...]:
    changes = request_changes(pinned.card.request, sheet.card.request, sheet.units)
    if not changes:
        return (
            tr(
                "follows the machine: {this} instead of {base}",
                this=machine_name(sheet.card.machine),
                base=machine_name(pinned.card.machine),
            ),
        )
    return tuple(tr("follows what is asked: {change}", change=change) for change in changes)

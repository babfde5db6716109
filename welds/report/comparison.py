"""Several requests side by side: one column each, with its card or with the reason why there is none."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from welds.advice.card import NOTICE, Card
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.request import Request
from welds.advice.setting import Caution, Setting, Severity
from welds.errors import WeldsError
from welds.language import mark, tr
from welds.quantities.units import Units
from welds.report.column_words import column_title, shared_words, varying
from welds.report.wording import GROUPS, LABELS, machine_name

MOST_COLUMNS = 8
"""More columns than this can be written to a file, but not read side by side."""


ROUNDING = mark("Figures are rounded as on the card; distances from the base are not.")


class Grounds(StrEnum):
    """What a column's card rests on, where columns are told apart by it."""

    TABLES = "tables alone"
    LOG = "tables and log"


_GROUNDS: Mapping[Grounds, tuple[str, str]] = {
    Grounds.TABLES: (mark("tables alone"), mark("Tables alone")),
    Grounds.LOG: (mark("tables and log"), mark("Tables and log")),
}
"""The grounds inside a heading and as one of their own."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What one column asks, of which bench, and on which grounds where that is fixed."""

    request: Request
    equipment: Equipment = GENERIC
    grounds: Grounds | None = None


@dataclass(frozen=True, slots=True)
class Column:
    """One request with its card, or with the error that says why there is none."""

    request: Request
    machine: str
    card: Card | None = None
    error: WeldsError | None = None
    grounds: Grounds | None = None

    @property
    def problem(self) -> str:
        """Why there is no card, or nothing."""
        return "" if self.error is None else str(self.error)


@dataclass(frozen=True, slots=True)
class Comparison:
    """Columns in the person's order; the others are held against the column `base`."""

    columns: tuple[Column, ...]
    base: int = 0
    notice: str = NOTICE

    @property
    def pinned(self) -> Column:
        """The base, or the first column with a card where the base has none."""
        answered = [column for column in self.columns if column.card is not None]
        chosen = self.columns[self.base]
        return chosen if chosen.card is not None or not answered else answered[0]


def compare(asked: Sequence[Asked], answer: Callable[[Asked], Card], base: int = 0) -> Comparison:
    """Return one column for each request; what cannot be answered is a column with its reason."""
    columns = []
    for each in asked:
        machine = each.equipment.machine.name
        try:
            columns.append(Column(each.request, machine, answer(each), grounds=each.grounds))
        except WeldsError as error:
            columns.append(Column(each.request, machine, error=error, grounds=each.grounds))
    return Comparison(tuple(columns), base)


def differences(comparison: Comparison) -> tuple[str, ...]:
    """Return the names of the settings that are not the same in all columns with a card."""
    cards = [column.card for column in comparison.columns if column.card is not None]
    return tuple(
        name
        for name in setting_names(cards)
        if len({figure_of(card.settings.get(name)) for card in cards}) > 1
    )  # fmt: skip


def titles(comparison: Comparison, units: Units) -> tuple[str, ...]:
    """Return what sets each column apart."""
    columns = comparison.columns
    fields = varying([column.request for column in columns])
    has_machines = len({column.machine for column in columns}) > 1
    has_grounds = len({column.grounds for column in columns}) > 1
    found = []
    for column in columns:
        beside = [machine_name(column.machine)] if has_machines else []
        if has_grounds and column.grounds is not None:
            inside, alone = _GROUNDS[column.grounds]
            beside.append(tr(inside if fields or beside else alone))
        words = [column_title(column.request, fields, units)] if fields or not beside else []
        found.append(", ".join([*words, *beside]))
    return tuple(found)


def heading(comparison: Comparison, units: Units) -> str:
    """Return what all columns have in common."""
    requests = [column.request for column in comparison.columns]
    machines = list(dict.fromkeys(column.machine for column in comparison.columns))
    words = shared_words(requests[0], varying(requests), units)
    return (
        tr("{words}; for {machine}", words=words, machine=machine_name(machines[0]))
        if len(machines) == 1
        else words
    )


def cautions(comparison: Comparison, units: Units) -> tuple[Caution, ...]:
    """Return every caution once, the worst first, with the columns it is for unless it is for all."""
    found: dict[str, tuple[Caution, list[str]]] = {}
    answered = 0
    for column, title in zip(comparison.columns, titles(comparison, units), strict=True):
        answered += column.card is not None
        for caution in column.card.cautions if column.card else ():
            found.setdefault(caution.rule, (caution, []))[1].append(title)
    order = list(Severity)
    return tuple(
        caution
        if len(where) == answered
        else replace(caution, text=tr("{text} (For {columns})", text=caution.text, columns="; ".join(where)))
        for caution, where in sorted(found.values(), key=lambda each: order.index(each[0].severity))
    )


def notes(comparison: Comparison) -> tuple[str, ...]:
    """Return what belongs under the columns: how distances are taken, what the star means, the documents."""
    settings = [
        setting for column in comparison.columns if column.card for setting in column.card.settings.values()
    ]
    is_starred = any(not setting.basis.is_published for setting in settings)
    ids = sorted({source for setting in settings for source in setting.sources})
    found = (
        tr(ROUNDING),
        tr("* rests on practice or memory: no published source covers it") if is_starred else "",
        tr("Sources: {ids}; `welds tables sources` describes them", ids=", ".join(ids)) if ids else "",
    )
    return tuple(note for note in found if note)


def setting_names(cards: Sequence[Card]) -> tuple[str, ...]:
    """Return every setting that any of the cards has, in reading order."""
    found = dict.fromkeys(name for card in cards for name in card.settings)
    listed = [name for _title, members in GROUPS for name in members if name in found]
    return (*listed, *(name for name in found if name not in LABELS))


def figure_of(setting: Setting | None) -> tuple[object, ...]:
    """Return the figure as JSON would carry it, without the dust of binary arithmetic."""
    if setting is None:
        return ()
    band = setting.band
    values = (setting.value,) if band is None else (band.low, band.start, band.high)
    return tuple(f"{each:.6g}" if isinstance(each, float) else each for each in values)

"""Filter shades: the floor a regulation sets and the shade to begin with."""

from dataclasses import dataclass
from typing import ClassVar, NamedTuple

from welds.errors import InputError, NotCoveredError
from welds.language import figure, tr
from welds.reference.basis import Basis, weakest
from welds.reference.tables import Tables

STEPS_DARKER_WITHOUT_COMFORT = 2
"""Our own choice where the guide suggests nothing."""

RULE, GUIDE, EUROPEAN = "us-rule", "us-guide", "eu-standard"


@dataclass(frozen=True, slots=True)
class FilterShade:
    """One band of current in one document: the least shade, the suggested one, or both."""

    TABLE: ClassVar[str] = "filter_shades"

    row_id: str
    document: str
    process: str
    metals: str
    current_from_a: float | None
    current_to_a: float | None
    shade_min: int | None
    shade_suggested_min: int | None
    shade_suggested_max: int | None
    source_id: str
    place: str
    basis: Basis
    note: str


class Shades(NamedTuple):
    """The answer; `rows` holds the rule, then the guide, then the European band where there is one.

    The European band is there to be shown; it changes neither floor nor start.
    """

    floor: int
    start: int
    rows: tuple[FilterShade, ...]

    @property
    def basis(self) -> Basis:
        """The grade of the start: that of rule and guide, or derived where the guide suggests nothing."""
        used = [row for row in self.rows if row.document in (RULE, GUIDE)]
        if all(row.shade_suggested_max is None for row in used):
            return Basis.DERIVED
        return weakest(row.basis for row in used)


def shade_floor_and_start(tables: Tables, process: str, current_a: float, family: str) -> Shades:
    """Return floor, start and rows for an arc of tig or mig.

    The floor is the regulation's minimum, the start the larger of that and the guide's comfort column. Bands
    touch; a current on an edge takes the higher band, and the topmost band includes its end.
    """
    if not current_a > 0:
        raise InputError("current", figure(f"{current_a:g} A"), tr("above 0 A"))
    rule = _band(tables, RULE, (process, "any"), current_a)
    if rule is None or rule.shade_min is None:
        raise _past_the_table(tables, process, current_a)
    guide = _band(tables, GUIDE, (process, "any"), current_a)
    comfort = guide.shade_suggested_max if guide else None
    start = max(rule.shade_min, comfort or rule.shade_min + STEPS_DARKER_WITHOUT_COMFORT)
    european = _band(tables, EUROPEAN, _european_band(process, family), current_a)
    return Shades(rule.shade_min, start, tuple(row for row in (rule, guide, european) if row))


def _past_the_table(tables: Tables, process: str, current_a: float) -> InputError | NotCoveredError:
    bands = [row for row in tables.records(FilterShade) if row.document == RULE and row.process == process]
    if not bands:
        return InputError("process", process, "tig, mig")
    top = max(row.current_to_a or 0.0 for row in bands)
    asked = tr("filter shade for {process} at {current_a:g} A", process=process, current_a=current_a)
    return NotCoveredError(asked, tr("the regulation's table ends below this current"), figure(f"{top:g} A"))


def _european_band(process: str, family: str) -> tuple[str, str]:
    """Steel by MIG runs under active gas, which the European tables call MAG; other metals part by weight."""
    if process != "mig":
        return process, "any"
    if family in ("carbon-steel", "stainless"):
        return "mag", "ferrous"
    return "mig", "light" if family in ("aluminium", "magnesium") else "heavy"


def _band(
    tables: Tables, document: str, process_and_metals: tuple[str, str], current_a: float
) -> FilterShade | None:
    """Return the band that holds the current; on an edge, where two do, the higher one."""
    bands = tables.derived(_bands).get((document, *process_and_metals), ())
    held = [
        row
        for row in bands
        if row.current_from_a is not None
        and row.current_to_a is not None
        and row.current_from_a <= current_a <= row.current_to_a
    ]
    return max(held, key=lambda row: row.current_from_a or 0.0, default=None)


def _bands(tables: Tables) -> dict[tuple[str, str, str], list[FilterShade]]:
    found: dict[tuple[str, str, str], list[FilterShade]] = {}
    for row in tables.records(FilterShade):
        found.setdefault((row.document, row.process, row.metals), []).append(row)
    return found

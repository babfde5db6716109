"""Tungsten diameter: thick enough for the current, thin enough for a steady arc."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import log

from welds.advice.case import Case, SoFar
from welds.advice.nearby import pair_of, read_nearby
from welds.advice.setting import Choice, Reason, Setting
from welds.advice.sizes import holds
from welds.advice.tig_rows import rows_of_family
from welds.advice.words import span
from welds.language import mark, tr
from welds.reference.basis import Basis
from welds.reference.settings import WaveRow
from welds.reference.tables import Tables
from welds.reference.tungsten import TungstenCurrent

SHOP_MM = (0.5, 1.0, 1.6, 2.4, 3.2, 4.0, 4.8, 6.4)
BALANCED, EQUAL_PERCENT = mark("AC balanced"), 50.0
WAVES = frozenset({"balanced", "unbalanced", "any"})


@dataclass(frozen=True, slots=True)
class Rating:
    """Currents one diameter stands at, over all rows that serve."""

    diameter_mm: float
    low_a: float
    high_a: float
    rows: tuple[TungstenCurrent, ...]


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the tungsten that schedules of this sheet print, if its rating holds the current with room.

    Oxide-alloyed rows serve; on AC the balanced and unbalanced rows bound the rating, since the usual balance
    lies between them. With more electrode positive than usual, or on a sine wave, the rating comes down.
    """
    polarity = str(so_far["polarity"].value)
    current = so_far["current"].figure
    rated, why = ratings_here(case, so_far)
    shelf = case.equipment.shelf.tungsten_sizes(str(so_far["tungsten_type"].value))
    on_hand = [each for each in rated if not shelf or holds(shelf, each.diameter_mm)]
    able = [each for each in on_hand if each.high_a >= current.high and each.low_a <= current.start]
    able = able or [each for each in on_hand if each.high_a >= current.start]
    reasons: list[Reason] = []
    printed = read_nearby(
        rows_of_family(case, so_far),
        case.effective_mm,
        lambda row: pair_of(row.electrode_min_mm, row.electrode_max_mm),
    )
    if able and printed:
        chosen = min(able, key=lambda each: abs(log(each.diameter_mm / printed.start)))
        reasons.append(Reason(tr("nearest to what schedules of this sheet print"), source=printed.sources[0]))
    elif able:
        chosen = able[0]
    else:
        chosen = (on_hand or rated)[-1]
        reasons.append(
            Reason(
                tr(
                    "the thickest on hand; its rating ends at {highest:.0f} A: it will spit above that",
                    highest=chosen.high_a,
                )
            )
        )
    best = min(chosen.rows, key=lambda row: row.basis.rank)
    reasons += why
    reasons.append(
        Reason(
            tr(
                "rated {lowest:.0f} to {highest:.0f} A on {polarity}; wanted {start:.0f} A, up to"
                " {high:.0f} A",
                lowest=chosen.low_a,
                highest=chosen.high_a,
                polarity=polarity,
                start=current.start,
                high=current.high,
            ),
            source=best.source_id,
        )
    )
    others = [each for each in rated if each is not chosen and each.low_a <= current.start <= each.high_a]
    return Setting(
        "tungsten_diameter",
        best.basis,
        tuple(reasons),
        tuple(dict.fromkeys(row.source_id for row in chosen.rows)),
        tuple(row.row_id for row in chosen.rows),
        value=chosen.diameter_mm,
        unit="mm",
        alternatives=tuple(
            Choice(each.diameter_mm, span(round(each.low_a), round(each.high_a), "A")) for each in others
        ),
    )


def ratings_here(case: Case, so_far: SoFar) -> tuple[tuple[Rating, ...], tuple[Reason, ...]]:
    """Return the rating of each shop diameter on this machine's wave and balance, with why it is lower.

    Below the usual balance only the balanced rows count. On a sine wave, or with more than half the time
    electrode positive, the printed balanced square-wave figure less the printed share is the bound: no
    document prints a figure for the imbalance itself.
    """
    rated = case.tables.derived(build_ratings)
    polarity = str(so_far["polarity"].value)
    if polarity != "AC":
        return rated[polarity], ()
    rows = {row.row_id: row for row in case.tables.records(WaveRow)}
    usual = next(row for row in rows.values() if (row.topic, row.case) == ("balance", "general"))
    sine = next(row for row in rows.values() if row.topic == "rating")
    negative = so_far["electrode_negative"].figure.start
    is_sine = case.equipment.machine.ac_wave == "sine"
    if is_sine or negative < EQUAL_PERCENT:
        what = (
            tr("a sine wave")
            if is_sine
            else tr("only {negative:.0f} % electrode negative", negative=negative)
        )
        text = tr(
            "{what} heats the tungsten more than a balanced square wave: the printed rating less"
            " about a quarter is the bound; the farther towards electrode positive, the less it"
            " stands",
            what=what,
        )
        lowered = tuple(_lowered(each, sine.start) for each in rated[BALANCED])
        return lowered, (Reason(text, sine.start, sine.source_id),)
    if negative < usual.low:
        text = tr(
            "{negative:.0f} % electrode negative: only what balanced waves are rated for counts",
            negative=negative,
        )
        return rated[BALANCED], (Reason(text, source=sine.source_id),)
    return rated[polarity], ()


def stands(case: Case, settings: SoFar) -> bool:
    """Say whether the chosen tungsten holds the start current."""
    return rating_of(case, settings).high_a >= settings["current"].figure.start


def rating_of(case: Case, settings: SoFar) -> Rating:
    """Return the rating of the chosen tungsten on this machine."""
    chosen = settings["tungsten_diameter"].value
    return next(each for each in ratings_here(case, settings)[0] if each.diameter_mm == chosen)


def _lowered(rating: Rating, share: float) -> Rating:
    printed = [row.current_max_a for row in rating.rows if row.basis is Basis.PRINTED]
    high = share * max(printed, default=rating.high_a)
    return replace(rating, low_a=min(rating.low_a, high), high_a=high)


def build_ratings(tables: Tables) -> Mapping[str, tuple[Rating, ...]]:
    """Return ratings by current type; pure tungsten is left out.

    The printed square-wave rows rule where they are held; recalled rows widen the upper end only half way.
    """
    found = {polarity: tuple(_ratings(tables, polarity)) for polarity in ("AC", "DCEN")}
    return {**found, BALANCED: tuple(_ratings(tables, "AC", {"balanced"}))}


def _ratings(tables: Tables, polarity: str, waves: frozenset[str] | set[str] = WAVES) -> list[Rating]:
    found = []
    for diameter in SHOP_MM:
        rows = [
            row
            for row in tables.records(TungstenCurrent)
            if abs(row.diameter_mm - diameter) < 0.05
            and row.polarity == polarity
            and row.wave in waves
            and row.electrode_class != "pure"
            and row.current_min_a is not None
            and row.current_max_a is not None
        ]
        printed = [row for row in rows if row.basis is Basis.PRINTED]
        if not rows:
            continue
        low = min(row.current_min_a or 0.0 for row in rows)
        highs = [row.current_max_a or 0.0 for row in rows]
        high = sum(highs) / len(highs)
        if printed:
            high = (max(row.current_max_a or 0.0 for row in printed) + high) / 2
        found.append(Rating(diameter, low, high, tuple(printed or rows)))
    return found

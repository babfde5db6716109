"""TIG schedule rows as curves of current over thickness, one per metal, current type, gas and hand."""

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import chain

from welds.advice.factors import FILLETS, joint_factor, series_hand
from welds.advice.pooling import Curve, Point, Reading
from welds.advice.request import Hand, Joint, Process
from welds.reference.metals import Metal
from welds.reference.schedules import TigSchedule
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class Series:
    """What the rows of one curve have in common. Helium mixed into argon counts as argon."""

    material: str
    polarity: str
    gas: str
    hand: str
    joint: Joint = Joint.BUTT


def base_joint(gas: str, joint: Joint) -> Joint:
    """Return the joint a curve is kept for: the butt, but T-joints for fillets under helium.

    The helium schedule prints T-joints at 1.6 down to 1.0 times its butts, which no one factor can bridge.
    """
    return Joint.TEE if gas == "helium" and joint in FILLETS else Joint.BUTT


def material_of(family: str, group: str) -> str:
    """Return what schedules are kept by: the family, but copper alloys by group."""
    return group if family == "copper" else family


@dataclass(frozen=True, slots=True)
class TigSeams:
    """Curves for a butt in flat, and the rows themselves for the lesser figures."""

    curves: Mapping[Series, Curve]
    rows: Mapping[tuple[str, str, str], tuple[TigSchedule, ...]]
    """By material, current type and gas, whatever the hand and the joint."""

    def series(self, metal: Metal, polarity: str, gas: str, hand: Hand, joint: Joint = Joint.BUTT) -> Series:
        """Return the series that would serve."""
        return Series(
            material_of(metal.family, metal.group),
            polarity,
            gas,
            series_hand(metal.family, hand),
            base_joint(gas, joint),
        )

    def reading(self, series: Series, thickness_mm: float) -> tuple[Reading, Series] | None:
        """Return the curve's answer and whose it is, or None where no row reaches.

        Where a brisk hand's rows end but an unhurried hand's go on (or the reverse), the other curve answers;
        the caller scales it by `hand_ratio`.
        """
        for candidate in chain((series,), self._other_hands(series)):
            curve = self.curves.get(candidate)
            if curve is not None and curve.covers(thickness_mm):
                return curve.at(thickness_mm), candidate
        return None

    def hand_ratio(self, wanted: Series, found: Series, thickness_mm: float) -> float:
        """Return the wanted hand's current over the found one's, at the nearest thickness both cover."""
        if wanted == found or wanted not in self.curves:
            return 1.0
        own, other = self.curves[wanted], self.curves[found]
        nearest_mm = min(max(thickness_mm, own.thinnest_mm), own.thickest_mm)
        return own.middle(nearest_mm) / other.middle(nearest_mm)

    def covered(self, series: Series) -> tuple[float, float] | None:
        """Return the thinnest and thickest sheet any hand's rows cover."""
        curves = [self.curves[each] for each in (series, *self._other_hands(series)) if each in self.curves]
        if not curves:
            return None
        return min(curve.thinnest_mm for curve in curves), max(curve.thickest_mm for curve in curves)

    def _other_hands(self, series: Series) -> Iterator[Series]:
        return (replace(series, hand=hand.value) for hand in Hand if hand.value != series.hand)


def build_tig_seams(tables: Tables) -> TigSeams:
    """Fit all curves from the pooled rows."""
    return fit_tig_seams(tables, lambda row: True)


def fit_tig_seams(
    tables: Tables, keep: Callable[[TigSchedule], bool], without: str | None = None
) -> TigSeams:
    """Fit the curves from some of the rows; `without` also leaves a document's joint factors out."""
    rows: dict[tuple[str, str, str], list[TigSchedule]] = defaultdict(list)
    points: dict[Series, list[Point]] = defaultdict(list)
    for row in tables.records(TigSchedule):
        if row.use != "pooled" or not keep(row):
            continue
        gas = "argon" if row.gas == "argon-helium" else row.gas
        base = base_joint(gas, Joint(row.joint))
        series = Series(material_of(row.family, row.group), row.polarity, gas, row.hand, base)
        factor = 1.0
        if row.joint != base:
            factor = joint_factor(
                tables, Process.TIG, row.family, row.hand, Joint(row.joint), gas, without
            ).value
        rows[series.material, series.polarity, series.gas].append(row)
        points[series].append(
            Point(
                row.row_id,
                row.source_id,
                row.basis,
                row.thickness_mm,
                row.current_min_a / factor,
                row.current_max_a / factor,
            )
        )
    return TigSeams(
        {series: Curve(each) for series, each in points.items()},
        {family: tuple(each) for family, each in rows.items()},
    )

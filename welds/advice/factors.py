"""What a change of joint or position does to the current, pooled from table rows."""

from dataclasses import dataclass
from math import exp, log

from welds.advice.pooling import GRADE_WEIGHT
from welds.advice.request import Hand, Joint, Process
from welds.reference.basis import Basis
from welds.reference.schedules import JointFactor, PositionFactor
from welds.reference.tables import Tables

SAME_FAMILY, OTHER_FAMILY = 0.5, 0.12
"""What a row counts when it is from the same family with another hand, or from another family or gas."""

PRACTICE_WEIGHT = 0.3
"""The shop rule's say against the rows; about one recalled row."""

LEAST_OVERHEAD_SHARE = 0.8
"""An overhead difference printed in amperes never takes more than a fifth of a small current."""

FILLETS = frozenset({Joint.TEE, Joint.LAP, Joint.INSIDE_CORNER})


@dataclass(frozen=True, slots=True)
class Factor:
    """A pooled factor, the rows behind it, and how good the best of them is."""

    value: float
    basis: Basis
    rows: tuple[str, ...] = ()
    sources: tuple[str, ...] = ()
    why: str = ""


UNITY = Factor(1.0, Basis.PRINTED)
Asked = tuple[Process, str, str, Joint, str, str | None]


def joint_factor(
    tables: Tables,
    process: Process,
    family: str,
    hand: str,
    joint: Joint,
    gas: str = "argon",
    without: str | None = None,
) -> Factor:
    """Return current of the joint over current of a butt; `without` leaves one document out.

    Rows of the same family, hand and gas count most; rows of others and the shop rule steady the answer
    where there are few.
    """
    if joint is Joint.BUTT:
        return UNITY
    asked = (process, family, hand, joint, gas, without)
    known = tables.derived(_no_factor_yet)
    if asked not in known:
        known[asked] = _pooled(tables, *asked)
    return known[asked]


def _no_factor_yet(_tables: Tables) -> dict[Asked, Factor]:
    return {}


def _pooled(
    tables: Tables, process: Process, family: str, hand: str, joint: Joint, gas: str, without: str | None
) -> Factor:
    total = weighted = 0.0
    speaking: list[JointFactor] = []
    why = ""
    for row in tables.records(JointFactor):
        if row.joint != joint or row.source_id == without:
            continue
        if row.basis is Basis.PRACTICE:
            weight, why = PRACTICE_WEIGHT, row.note
        elif row.process not in (process, "both"):
            continue
        else:
            weight = GRADE_WEIGHT[row.basis]
            if row.family != family or (row.gas not in (gas, "any") and process is Process.TIG):
                weight *= OTHER_FAMILY
            elif row.hand != hand:
                weight *= SAME_FAMILY
            if row.family == family and row.gas in (gas, "any"):
                speaking.append(row)
        total += weight
        weighted += weight * log(row.factor)
    if not total:
        return UNITY
    basis = min((row.basis for row in speaking), key=lambda grade: grade.rank, default=Basis.PRACTICE)
    return Factor(
        exp(weighted / total),
        basis,
        tuple(row.row_id for row in speaking),
        tuple(dict.fromkeys(row.source_id for row in speaking)) or ("COMMON_PRACTICE",),
        why,
    )


def position_factor(
    tables: Tables, process: Process, joint: Joint, position: str, current_a: float
) -> Factor:
    """Return current in the position over current in flat."""
    if position == "PA":
        return UNITY
    fillet = "yes" if joint in FILLETS else "no"
    rows = [
        row
        for row in tables.records(PositionFactor)
        if row.position == position and row.process in (process, "both") and row.fillet in (fillet, "any")
    ]
    why = next((row.note for row in rows if row.basis is Basis.PRACTICE), "")
    for row in rows:
        if row.difference_min_a is not None and row.difference_max_a is not None:
            change = (row.difference_min_a + row.difference_max_a) / 2.0
            value = max(LEAST_OVERHEAD_SHARE, 1.0 + change / current_a)
            return Factor(value, row.basis, (row.row_id,), (row.source_id,), row.note)
    factors = [(row, log(row.factor)) for row in rows if row.factor is not None]
    if not factors:
        return UNITY
    weights = [GRADE_WEIGHT[row.basis] for row, _ in factors]
    mean = sum(weight * value for weight, (_, value) in zip(weights, factors, strict=True)) / sum(weights)
    best = min((row.basis for row, _ in factors), key=lambda grade: grade.rank)
    return Factor(
        exp(mean),
        Basis.RECALLED if any(row.basis is Basis.RECALLED for row, _ in factors) else best,
        tuple(row.row_id for row, _ in factors),
        tuple(dict.fromkeys(row.source_id for row, _ in factors)),
        why,
    )


def series_hand(family: str, hand: Hand) -> str:
    """Return which hand's rows serve: only steel and stainless schedules are split by hand."""
    return hand.value if family in ("carbon-steel", "stainless") else "any"

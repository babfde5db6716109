"""How the heat of one arc is shared between the pieces of a joint."""

from dataclasses import dataclass

from welds.advice.heat_share import PATHS
from welds.advice.request import Joint


@dataclass(frozen=True, slots=True)
class Member:
    """One piece as the heat sees it: a plate of its thickness that takes `share` of the net power.

    A piece that ends at the joint is a half plate; a half plate that takes a power looks like a whole one
    that takes twice as much. So the shares of a butt joint are 1 and 1, those of a T-joint 2/3 and 2/3.
    """

    name: str
    thickness_mm: float
    share: float


def members(joint: Joint, first_mm: float, other_mm: float) -> tuple[Member, Member]:
    """Return both pieces; each way out takes heat in proportion to its thickness.

    The combined thickness of EN 1011-2, method A, read as a rule for sharing: a butt has two ways out, a
    T-joint and a lap three, a corner and an edge two.
    """
    first_ways, other_ways = PATHS[joint]
    whole = first_ways * first_mm + other_ways * other_mm
    return Member("first", first_mm, 2.0 * first_mm / whole), Member(
        "other", other_mm, 2.0 * other_mm / whole
    )

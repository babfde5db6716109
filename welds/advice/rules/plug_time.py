"""Arc time of one plug."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.physics.wire import plug_fill_time
from welds.quantities.band import Band
from welds.reference.basis import Basis, weakest

BITE_SHARE = 0.25
"""Shop practice: a quarter longer than the filling, to melt into the sheet behind and leave a low cap."""


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return the time that fills the hole at the start feed, and a little more."""
    if case.request.joint is not Joint.PLUG:
        return None
    hole, feed = so_far["plug_hole"].figure, so_far["wire_feed"].figure
    basis = weakest((Basis.PRACTICE, so_far["plug_hole"].basis, so_far["wire_feed"].basis))
    wire = float(so_far["wire_diameter"].start)
    low, start, high = (
        round(plug_fill_time(size, case.first_mm, wire, speed * 1000 / 60) * (1 + BITE_SHARE), 1)
        for size, speed in ((hole.low, feed.high), (hole.start, feed.start), (hole.high, feed.low))
    )
    reasons = (
        Reason(tr("hole volume over wire volume at the start feed"), source="COMMON_PRACTICE"),
        Reason(tr("longer to bite into the sheet behind"), 1 + BITE_SHARE, "COMMON_PRACTICE"),
    )
    return Setting("plug_time", basis, reasons, ("COMMON_PRACTICE",), band=Band(low, start, high, "s"))

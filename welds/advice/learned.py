"""What a log of past welds adds to one current, beside what the tables say."""

from dataclasses import dataclass

from welds.language import mark, tr
from welds.quantities.band import Band


@dataclass(frozen=True, slots=True)
class Learned:
    """The answer after learning, with how many welds spoke and how sure it is.

    `table` is the tables' band, `band` the learned start with the range it lies in with 90 % probability;
    both before any limit of the machine or the tungsten. `welds` spoke in all, `alike` of them on the same
    process, family and joint. `sureness` is the probability that this bench really runs to the side of the
    tables that `factor` says. `spoke` names the newest of those that are alike. `burnt_at_a` is the least
    current, brought to this joint, at which a like weld burned through, `cold_at_a` the greatest at which one
    stayed cold.
    """

    setting: str
    table: Band
    band: Band
    factor: float
    factor_low: float
    factor_high: float
    welds: int
    alike: int
    worked: int
    too_hot: int
    too_cold: int
    scatter: float
    sureness: float
    spoke: tuple[str, ...]
    burnt_at_a: float | None = None
    cold_at_a: float | None = None

    @property
    def sureness_words(self) -> str:
        """The sureness in words."""
        for least, words in ((0.975, mark("sure")), (0.9, mark("fairly sure")), (0.75, mark("likely"))):
            if self.sureness >= least:
                return tr(words)
        return tr("no more than a hint")

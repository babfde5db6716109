"""Simulated benches: a known way off the tables, a known scatter, welds good and bad."""

from dataclasses import dataclass

import numpy as np

from welds.advice.bench_posterior import Cell, Marks, Posterior, posteriors

CELL: Cell = ("tig", "aluminium", "outside-corner")
OTHER_CELLS: tuple[Cell, ...] = (
    CELL,
    ("tig", "aluminium", "butt"),
    ("tig", "stainless", "butt"),
    ("mig", "carbon-steel", "lap"),
)


@dataclass(frozen=True)
class Score:
    """How the learned start did over many benches, in log units (0.05 is 5 %)."""

    error: float
    covered: float
    widest: float


def log_of_welds(random: np.random.Generator, truth: float, scatter: float, welds: int, bad: float) -> Marks:
    """Return the marks of a log: the share `bad` was set without knowing better and burned or stayed cold."""
    suited = truth + random.normal(0.0, scatter, welds)
    is_bad = random.random(welds) < bad
    tried = random.normal(truth, 0.2, welds)
    ratio = np.where(is_bad, tried, suited)
    side = np.where(is_bad, np.where(suited < tried, 1, -1), 0)
    return Marks(np.zeros(welds, dtype=int), ratio, side, np.ones(welds))


def log_of_noise(random: np.random.Generator, welds: int) -> Marks:
    """Return currents and outcomes that have nothing to do with each other."""
    ratio = random.normal(0.0, 0.35, welds)
    return Marks(np.zeros(welds, dtype=int), ratio, random.choice([0, 0, 1, -1], welds), np.ones(welds))


def alone(marks: Marks) -> Posterior:
    """Return the posterior of one cell with nothing else in the log."""
    return posteriors([CELL], marks)[0]


def score(truths: np.ndarray, logs: list[Marks]) -> Score:
    """Return how well the truths are met."""
    found = [alone(marks) for marks in logs]
    errors = np.array([each.mean - truth for each, truth in zip(found, truths, strict=True)])
    below = np.array([each.below(truth) for each, truth in zip(found, truths, strict=True)])
    return Score(
        float(np.sqrt((errors**2).mean())),
        float(((below > 0.05) & (below < 0.95)).mean()),
        float(np.abs([each.mean for each in found]).max()),
    )


def simulate(welds: int, *, benches: int, seed: int, scatter: float = 0.15, bad: float = 0.25) -> Score:
    """Return the score over benches drawn as the model assumes: a tenth off the tables, one sigma."""
    random = np.random.default_rng(seed)
    truths = random.normal(0.0, 0.10, benches)
    return score(truths, [log_of_welds(random, truth, scatter, welds, bad) for truth in truths])


def simulate_fixed(
    welds: int, truth: float, *, benches: int, seed: int, scatter: float, bad: float = 0.25
) -> Score:
    """Return the score over logs of one bench with a known way off the tables."""
    random = np.random.default_rng(seed)
    logs = [log_of_welds(random, truth, scatter, welds, bad) for _ in range(benches)]
    return score(np.full(benches, truth), logs)


def simulate_noise(welds: int, *, benches: int, seed: int) -> Score:
    """Return the score over logs of noise, whose truth is the tables."""
    random = np.random.default_rng(seed)
    return score(np.zeros(benches), [log_of_noise(random, welds) for _ in range(benches)])


def theory(welds: int, scatter: float = 0.15, between: float = 0.10) -> float:
    """Return the error of the normal posterior mean with known variances and every weld good.

    Gelman et al., Bayesian Data Analysis, 3rd ed., eq. (2.12): precisions add.
    """
    return float((1.0 / between**2 + welds / scatter**2) ** -0.5)


def follow_the_card(truth: float, welds: int, random: np.random.Generator) -> list[float]:
    """Return how far the card's start was off before each weld, for a person who sets what the card says.

    Not the model's own world: every weld works within 15 % of the current that suits it, whatever was set,
    and the log shows what was set.
    """
    off, log = [], []
    for _ in range(welds):
        marks = Marks(*(np.array(each) for each in zip(*log, strict=True))) if log else None
        start = alone(marks).mean if marks else 0.0
        off.append(start - truth)
        suited, tried = truth + random.normal(0.0, 0.08), start + random.normal(0.0, 0.04)
        apart = tried - suited
        log.append((0, tried, 0 if abs(apart) < 0.15 else (1 if apart > 0 else -1), 1.0))
    return off


def main() -> None:
    """Print the tables for DEVELOPERS.md."""
    print("| welds | error, all good | theory | error, a quarter bad | 90 % band holds the truth |")
    for welds in (1, 5, 20, 50):
        good = simulate(welds, benches=400, seed=welds, bad=0.0)
        mixed = simulate(welds, benches=400, seed=welds)
        cells = (welds, good.error, theory(welds), mixed.error, good.covered, mixed.covered)
        print("| {} | {:.3f} | {:.3f} | {:.3f} | {:.0%} / {:.0%} |".format(*cells))
    print("| bench off by | scatter | 5 welds | 20 welds | 50 welds |")
    for truth, scatter in ((0.0, 0.10), (0.10, 0.06), (0.10, 0.20), (-0.20, 0.10)):
        scores = [
            simulate_fixed(welds, truth, benches=300, seed=welds, scatter=scatter) for welds in (5, 20, 50)
        ]
        print(f"| {truth} | {scatter} |", *(f"{s.error:.3f} ({s.covered:.0%}) |" for s in scores))
    for truth in (0.1, 0.2, 0.3, -0.3):
        random = np.random.default_rng(7)
        off = np.array([follow_the_card(truth, 31, random) for _ in range(40)])
        errors = np.sqrt((off**2).mean(axis=0))
        print("| follows the card,", truth, "|", *(f"{errors[n]:.3f} |" for n in (0, 5, 10, 20, 30)))
    noise = [simulate_noise(welds, benches=200, seed=welds) for welds in (5, 20, 50)]
    print("| noise | moved by |", *(f"{each.error:.3f} at most {each.widest:.2f} |" for each in noise))


if __name__ == "__main__":
    main()

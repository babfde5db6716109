"""Learning from past welds: the posterior against brute force and theory, and what it may never do."""

from dataclasses import replace
from math import erf, exp, log, sqrt

import numpy as np
import pytest

from tests.advice.benches import (
    CELL,
    OTHER_CELLS,
    alone,
    log_of_noise,
    simulate,
    simulate_fixed,
    simulate_noise,
    theory,
)
from welds.advice.advise import advise
from welds.advice.bench_posterior import (
    NOISE,
    SIGMA_MIDDLE,
    SIGMA_SPREAD,
    SIGMAS,
    SLIP,
    TAU_SCALE,
    TAUS,
    Marks,
    posteriors,
)
from welds.advice.equipment import Equipment, Machine, Shelf
from welds.advice.evidence import Evidence, Outcome, PastWeld, Says
from welds.advice.request import Joint, Process, Request

CORNER = Request(Process.TIG, "5052", 2.0, Joint.OUTSIDE_CORNER)
LAP = Request(Process.MIG, "low-carbon", 2.0, Joint.LAP)


def weld(current_a, outcome=Outcome.WORKED_WELL, faults=(), request=CORNER, name="1", feed=None):
    return PastWeld(name, request, outcome, current_a, feed, faults)


def log_at(share, count, tables, request=CORNER, **kind):
    start = advise(request, tables).settings["current"].figure.start
    return Evidence(tuple(weld(start * share, request=request, name=str(n), **kind) for n in range(count)))


def marks(ratios, sides=None, cells=None):
    count = len(ratios)
    return Marks(
        np.array(cells if cells is not None else [0] * count),
        np.array(ratios, dtype=float),
        np.array(sides if sides is not None else [0] * count),
        np.ones(count),
    )


# ------------------------------------------------------------------------------------- the posterior


def brute_force(given: Marks) -> tuple[float, float, float]:
    """Mean and 90 % band by summing the whole model over a fine grid of theta, tau and sigma."""
    theta = np.linspace(-1.5, 1.5, 3001)
    below = np.vectorize(lambda score: 0.5 * (1.0 + erf(score / sqrt(2.0))))
    total = np.zeros_like(theta)
    for tau in TAUS:
        prior = np.exp(-0.5 * (theta / tau) ** 2) / tau
        for sigma in SIGMAS:
            belief = -0.5 * (tau / TAU_SCALE) ** 2 + log(tau)
            belief -= 0.5 * (log(sigma / SIGMA_MIDDLE) / SIGMA_SPREAD) ** 2
            likelihood = np.ones_like(theta)
            for ratio, side in zip(given.ratio, given.side, strict=True):
                if side == 0:
                    likelihood *= np.exp(-0.5 * ((ratio - theta) / sigma) ** 2) / sigma
                else:
                    likelihood *= SLIP + (1 - 2 * SLIP) * below(side * (ratio - theta) / sigma)
            here = exp(belief) * prior * likelihood
            total += here if sigma < NOISE else prior * (here.sum() / prior.sum())
    total /= total.sum()
    rising = total.cumsum()
    return tuple(float(x) for x in (theta @ total, *np.interp((0.05, 0.95), rising, theta)))


@pytest.mark.parametrize(
    "given",
    [
        marks([0.15]),
        marks([0.1, 0.12, -0.05, 0.2]),
        marks([0.1], [1]),
        marks([0.3, -0.2, 0.05, 0.0], [1, -1, 0, 0]),
        marks([0.25, 0.2, -0.1, 0.12, 0.02, 0.3], [1, 1, -1, -1, 0, 1]),
    ],
    ids=["one good", "good", "one bound", "both sides", "mostly bounds"],
)
def test_propagation_agrees_with_brute_force(given):
    found = alone(given)
    mean, low, high = brute_force(given)
    assert found.mean == pytest.approx(mean, abs=0.004)
    assert found.quantile(0.05) == pytest.approx(low, abs=0.02)
    assert found.quantile(0.95) == pytest.approx(high, abs=0.02)


def test_two_cells_agree_with_the_closed_form_of_the_normal_model(monkeypatch):
    """With sigma and tau known the posterior mean is C (C + sigma2/n)^-1 y (Gelman et al., eq. 3.13)."""
    monkeypatch.setattr("welds.advice.bench_posterior.TAUS", np.array([0.1]))
    monkeypatch.setattr("welds.advice.bench_posterior.SIGMAS", np.array([0.2]))
    cells = [CELL, ("tig", "aluminium", "butt")]
    found = posteriors(cells, marks([0.3, 0.3, 0.3, 0.3], cells=[1, 1, 1, 1]))[0]
    shared, own, noise = 0.7 * 0.01, 0.01, 0.04 / 4
    assert found.mean == pytest.approx(0.3 * shared / (own + noise))
    assert found.deviations[0] ** 2 == pytest.approx(own - shared**2 / (own + noise))


def test_one_weld_moves_a_little_ten_move_a_lot():
    moved = [alone(marks([0.18] * count)).mean / 0.18 for count in (1, 3, 10)]
    assert moved[0] < 0.35
    assert moved == sorted(moved)
    assert moved[2] > 0.85


def test_what_is_shared_falls_off_from_the_joint_to_the_process():
    moved = [posteriors(OTHER_CELLS, marks([0.2] * 10, cells=[cell] * 10))[0].mean for cell in range(4)]
    assert moved == sorted(moved, reverse=True)
    assert moved[3] > 0.0


def test_bounds_push_from_one_side_only():
    hot = [alone(marks([0.0] * count, [1] * count)).mean for count in (1, 3, 10)]
    assert 0.0 > hot[0] > hot[1] > hot[2]
    assert abs(alone(marks([0.8], [1])).mean) < 0.005  # burning through far above says next to nothing
    cold = alone(marks([0.0] * 3, [-1] * 3)).mean
    assert cold == pytest.approx(-hot[1], abs=1e-6)


# ---------------------------------------------------------------------------------- simulated benches


@pytest.mark.parametrize("welds", [5, 20, 50])
def test_the_error_falls_as_theory_says(welds):
    found = simulate(welds, benches=120, seed=welds, bad=0.0)
    assert found.error == pytest.approx(theory(welds), rel=0.25)


def test_the_ninety_percent_band_holds_the_truth():
    held = [simulate(welds, benches=120, seed=100 + welds).covered for welds in (5, 20, 50)]
    assert 0.85 <= sum(held) / 3 <= 0.95
    assert min(held) >= 0.82  # 120 benches: give or take 0.027


@pytest.mark.parametrize(("truth", "scatter"), [(0.10, 0.06), (0.10, 0.20), (-0.20, 0.10)])
def test_a_bench_that_is_off_is_found_out(truth, scatter):
    errors = [
        simulate_fixed(welds, truth, benches=60, seed=welds, scatter=scatter).error for welds in (5, 20, 50)
    ]
    assert abs(truth) > errors[0] > errors[1] > errors[2]


def test_noise_does_not_move_the_advice():
    """Least half-width of any current band in the tables is about 10 %; noise stays far inside it."""
    assert simulate_noise(20, benches=80, seed=1).error < 0.04
    assert simulate_noise(50, benches=80, seed=2).error < 0.02
    random = np.random.default_rng(3)
    shown = [alone(log_of_noise(random, 50)) for _ in range(20)]
    assert sum(each.quantile(0.05) < 0.0 < each.quantile(0.95) for each in shown) == 20


# -------------------------------------------------------------------------------------- what one weld says


@pytest.mark.parametrize(
    ("outcome", "faults", "says"),
    [
        (Outcome.WORKED_WELL, (), Says.CENTRE),
        (Outcome.WORKED, (), Says.CENTRE),
        (Outcome.FAILED, ("burn-through",), Says.BELOW),
        (Outcome.FAILED, ("510",), Says.BELOW),
        (Outcome.FAILED, ("lack-of-fusion",), Says.ABOVE),
        (Outcome.WORKED, ("excess-penetration",), Says.BELOW),
        (Outcome.FAILED, ("burn-through", "lack-of-fusion"), Says.NOTHING),
        (Outcome.WORKED, ("burn-through", "lack-of-fusion"), Says.NOTHING),
        (Outcome.FAILED, ("porosity",), Says.NOTHING),
        (Outcome.FAILED, (), Says.NOTHING),
        (Outcome.WORKED, ("porosity",), Says.CENTRE),
    ],
)
def test_what_an_outcome_says(outcome, faults, says):
    assert weld(100.0, outcome, faults).says is says


# ---------------------------------------------------------------------------------------- on the card


def test_without_evidence_nothing_changes(tables):
    bare = advise(CORNER, tables)
    assert bare.learned is None
    assert advise(CORNER, tables, evidence=Evidence(())) == bare


def test_welds_of_another_process_alone_do_not_speak(tables):
    assert advise(CORNER, tables, evidence=log_at(1.2, 5, tables, request=LAP)).learned is None


def test_the_card_shows_both_bands_and_follows_the_learned_one(tables):
    bare = advise(CORNER, tables).settings
    card = advise(CORNER, tables, evidence=log_at(1.15, 12, tables))
    learned, current = card.learned, card.settings["current"]
    assert learned.table == bare["current"].band
    assert learned.factor == pytest.approx(1.15, abs=0.04)
    assert learned.factor_low < learned.factor < learned.factor_high
    assert (learned.welds, learned.alike, learned.worked) == (12, 12, 12)
    assert learned.sureness > 0.9
    assert current.figure.start == pytest.approx(learned.band.start, abs=0.51)
    said = next(reason for reason in current.reasons if reason.factor == learned.factor)
    assert "12 past welds" in said.text
    assert card.settings["filter_shade"].figure.start >= bare["filter_shade"].figure.start


def test_removing_the_welds_takes_the_learning_away(tables):
    evidence = log_at(1.15, 12, tables)
    shorter = Evidence(evidence.welds[:2])
    assert advise(CORNER, tables, evidence=shorter).learned.welds == 2
    assert advise(CORNER, tables, evidence=Evidence(())).learned is None


def test_burnt_and_cold_welds_close_the_window_from_both_sides(tables):
    start = advise(CORNER, tables).settings["current"].figure.start
    evidence = Evidence(
        (
            *(weld(start, name=f"good {n}") for n in range(4)),
            weld(start * 1.08, Outcome.FAILED, ("burn-through",), name="hot"),
            weld(start * 0.93, Outcome.FAILED, ("lack-of-fusion",), name="cold"),
        )
    )
    card = advise(CORNER, tables, evidence=evidence)
    band = card.settings["current"].figure
    assert band.high <= start * 1.08
    assert band.low >= start * 0.93
    assert (card.learned.too_hot, card.learned.too_cold) == (1, 1)
    assert any("burned through" in reason.text for reason in card.settings["current"].reasons)


def test_a_wire_feed_stands_in_for_a_current_that_was_not_read(tables):
    """The feed the tables give at their own start current says: as the tables."""
    settings = advise(LAP, tables).settings
    feed = settings["wire_feed"].figure.start
    evidence = Evidence(tuple(weld(None, request=LAP, name=str(n), feed=feed) for n in range(10)))
    assert advise(LAP, tables, evidence=evidence).learned.factor == pytest.approx(1.0, abs=0.03)


def test_a_slip_of_the_pen_is_left_out(tables):
    assert advise(CORNER, tables, evidence=log_at(10.0, 5, tables)).learned is None


def test_welds_the_tables_cannot_answer_are_left_out(tables):
    odd = replace(CORNER, thickness_mm=70.0)
    assert advise(CORNER, tables, evidence=Evidence((weld(100.0, request=odd),))).learned is None


# -------------------------------------------------------------------------------------- what it never does


@pytest.mark.parametrize("share", [0.5, 0.8, 1.5, 2.0])
@pytest.mark.parametrize("request_", [CORNER, LAP], ids=["tig", "mig"])
def test_never_past_the_machine(tables, share, request_):
    limits = Machine("90 A set", frozenset({"tig", "mig"}), current_min_a=70.0, current_max_a=90.0)
    card = advise(request_, tables, Equipment(limits), log_at(share, 40, tables, request=request_))
    band = card.settings["current"].figure
    assert 70.0 <= band.low <= band.high <= 90.0


def test_never_past_what_the_tungsten_on_hand_stands(tables):
    thin = Equipment(Machine("300 A set", frozenset({"tig"})), Shelf(tungsten_diameters_mm=frozenset({2.4})))
    thick_sheet = replace(CORNER, thickness_mm=3.2)
    bare = advise(thick_sheet, tables, thin)
    card = advise(thick_sheet, tables, thin, log_at(1.9, 40, tables, request=thick_sheet))
    assert card.learned.factor > 1.5
    assert card.settings["tungsten_diameter"].value == bare.settings["tungsten_diameter"].value == 2.4
    assert next(check for check in card.checks if check.name == "tungsten").ok


def test_never_past_what_the_wire_carries(tables):
    pinned = replace(LAP, wire_diameter_mm=0.6)
    card = advise(pinned, tables, evidence=log_at(2.2, 40, tables, request=pinned))
    bare = advise(replace(pinned, thickness_mm=6.0), tables).settings["current"].figure
    assert card.settings["current"].figure.high <= bare.high


def test_no_caution_is_lost(tables):
    bare = advise(CORNER, tables)
    card = advise(CORNER, tables, evidence=log_at(0.6, 40, tables))
    assert {caution.rule for caution in bare.cautions} <= {caution.rule for caution in card.cautions}

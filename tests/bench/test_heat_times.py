"""How long the heat picture takes. Goals: 200 x 200 points in 8 ms, 200 times quicker than quad."""

from statistics import median
from time import perf_counter

import numpy as np
import pytest

from tests.physics.test_moving_source import by_quad
from welds.advice.heat.bead import HeatSettings, bead_of
from welds.advice.heat.picture import CELLS, plan, section
from welds.advice.request import Joint, Process, Request
from welds.physics.moving_source import MovingSource

BUTT = Request(Process.TIG, "5052", 2.0, Joint.BUTT)
SET = HeatSettings(90.0, 4.0)
PIECES = 8
LEAST_GAIN = 200.0


@pytest.fixture(scope="module")
def bead(tables):
    return bead_of(BUTT, SET, tables)


def test_whole_bead(benchmark, tables):
    assert benchmark(bead_of, BUTT, SET, tables).full_penetration


def test_section_of_peak_temperatures(benchmark, bead):
    assert benchmark(section, bead).temperature_c.shape == (CELLS, CELLS)


def test_pool_from_above(benchmark, bead):
    assert benchmark(plan, bead).temperature_c.shape == (CELLS, CELLS)


def test_plane_across_the_weld(beside, bead):
    """The plain case: full quadrature at 200 x 200 points of one plane, the source made anew each time."""
    across, down = np.linspace(-8.0, 8.0, CELLS), np.linspace(0.0, 2.0, CELLS)

    def picture():
        return fresh(bead.source).section(-2.0, across, down)

    points = np.linspace(-8.0, 0.0, CELLS**2)
    floor = "np.exp of as many points"
    answer = beside("bead: plane of 200 x 200", picture, floor, lambda: np.exp(points), 200)
    assert answer.shape == (CELLS, CELLS)


def fresh(source: MovingSource) -> MovingSource:
    """Return the source with nothing remembered."""
    return MovingSource(**{name: getattr(source, name) for name in source.__dataclass_fields__})


def test_is_far_quicker_than_adaptive_quadrature_at_equal_accuracy(bead, capsys):
    across, down = np.linspace(-8.0, 8.0, CELLS), np.linspace(0.0, 2.0, CELLS)
    times, field = [], np.zeros(())
    for _ in range(15):
        begun = perf_counter()
        field = fresh(bead.source).section(-2.0, across, down)
        times.append(perf_counter() - begun)
    begun = perf_counter()
    places = [
        (row, column)
        for row in range(0, CELLS, CELLS // PIECES)
        for column in range(0, CELLS, CELLS // PIECES)
    ]
    exact = [by_quad(bead.source, -2.0, across[column], down[row]) for row, column in places]
    each = (perf_counter() - begun) / len(places)
    worst = max(abs(field[place] / value - 1.0) for place, value in zip(places, exact, strict=True))
    gain = each * CELLS**2 / median(times)
    with capsys.disabled():
        print(
            f"\npicture {1e3 * median(times):.2f} ms, quad {1e6 * each:.0f} us a point: {gain:.0f} times;"
            f" worst error {worst:.1e}"
        )
    assert worst < 1e-3
    assert gain >= LEAST_GAIN

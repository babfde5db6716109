"""How long the advice takes once the tables are loaded. Goals: a card 3 ms at the median, 500 cells 1 s."""

import pytest

from tests.bench.records import making_again
from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.reference.load import load_tables
from welds.reference.paths import data_root
from welds.report.chart import make_chart

CORNER = Request(Process.TIG, "5052", 2.03, Joint.OUTSIDE_CORNER)
LAP = Request(Process.MIG, "galvanised", 1.5, Joint.LAP)
THICKNESSES_MM = tuple(0.8 + 0.11 * step for step in range(84))
JOINTS = tuple(joint for joint in Joint if joint is not Joint.PLUG)


def read_bytes() -> int:
    return sum(len(file.read_bytes()) for file in data_root().rglob("*") if file.is_file())


def test_load_the_tables(beside):
    answer = beside("tables loaded", load_tables, "their files read as bytes", read_bytes, 20)
    assert answer.sources


@pytest.mark.parametrize(("kind", "asked"), [("TIG", CORNER), ("MIG", LAP)])
def test_one_card(beside, tables, kind, asked):
    again = making_again(advise(asked, tables))
    answer = beside(f"one {kind} card", lambda: advise(asked, tables), "its records made anew", again, 200)
    assert answer.settings


def test_first_card_after_loading(benchmark):
    """Includes what is fitted once from the tables."""

    def fresh():
        return (CORNER, load_tables()), {}

    assert benchmark.pedantic(advise, setup=fresh, rounds=5).settings


def test_chart_of_500_cells(beside, tables):
    def make():
        return make_chart(CORNER, THICKNESSES_MM, JOINTS, lambda request: advise(request, tables))

    again = making_again([advise(CORNER, tables)] * len(THICKNESSES_MM) * len(JOINTS))
    chart = beside("chart of 504 cells", make, "records of 504 cards made anew", again, 5)
    assert len(list(chart.cells)) == len(THICKNESSES_MM) * len(JOINTS) >= 500

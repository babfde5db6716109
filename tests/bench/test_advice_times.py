"""How long the advice takes once the tables are loaded. Goals: a card 3 ms at the median, 500 cells 1 s."""

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.reference.load import load_tables
from welds.report.chart import make_chart

CORNER = Request(Process.TIG, "5052", 2.03, Joint.OUTSIDE_CORNER)
LAP = Request(Process.MIG, "galvanised", 1.5, Joint.LAP)
THICKNESSES_MM = tuple(0.8 + 0.11 * step for step in range(84))
JOINTS = tuple(joint for joint in Joint if joint is not Joint.PLUG)


def test_load_the_tables(benchmark):
    assert benchmark(load_tables).sources


def test_one_tig_card(benchmark, tables):
    assert benchmark(advise, CORNER, tables).settings


def test_one_mig_card(benchmark, tables):
    assert benchmark(advise, LAP, tables).settings


def test_first_card_after_loading(benchmark):
    """Includes what is fitted once from the tables."""

    def fresh():
        return (CORNER, load_tables()), {}

    assert benchmark.pedantic(advise, setup=fresh, rounds=5).settings


def test_chart_of_500_cells(benchmark, tables):
    chart = benchmark.pedantic(
        make_chart,
        args=(CORNER, THICKNESSES_MM, JOINTS, lambda request: advise(request, tables)),
        rounds=3,
        warmup_rounds=1,
    )
    assert len(list(chart.cells)) == len(THICKNESSES_MM) * len(JOINTS) >= 500

"""How much memory the program holds at most, each use in a process of its own, and what that may be."""

from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

from tests.architecture.fresh import run_fresh
from tests.job.conftest import HEAD
from tests.job.many import three_hundred_joints
from tests.logbook.many import fill
from tests.support.opening import open_window
from welds.logbook.opening import open_logbook
from welds.reference.load import load_tables

ALL_PAGES, LOG_PAGE = "pages=1,2,3,4,5", "pages=4"

CARD = """
from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.reference.load import load_tables
tables = load_tables()
request = Request(Process.TIG, "5052", 2.03, Joint.OUTSIDE_CORNER)
card = advise(request, tables)
"""
CHART = f"""{CARD}
from welds.report.chart import make_chart
joints = [joint for joint in Joint if joint is not Joint.PLUG]
sheets = [0.8 + 0.11 * step for step in range(84)]
assert len(list(make_chart(request, sheets, joints, lambda asked: advise(asked, tables)).cells)) == 504
"""
PLAN = """
from pathlib import Path
from welds.job.job_file import load_job
from welds.job.plan import plan_job
from welds.reference.load import load_tables
tables = load_tables()
assert len(plan_job(load_job(Path({file!r}), tables), tables).set_ups) == 300
"""
PDF = f"""{CARD}
from welds.gui.pdf import write_card_pdf
from welds.quantities.units import Units
write_card_pdf({{file!r}}, card, Units.METRIC, tables.sources)
"""


def peak_of(code: str) -> float:
    """Return the most memory that a new interpreter held while it ran the code."""
    return float(run_fresh(f"{code}\nfrom tests.support.peak import peak_mb\nprint(peak_mb())"))


def peak_at_a_long_log(folder: Path) -> float:
    """Return what the window held when it had shown the page of a log of 100,000 welds."""
    file = str(folder / "long.db")
    with open_logbook(file) as log:
        fill(log, load_tables(), 100_000)
    return open_window(LOG_PAGE, "--log", file).peak_mb


def peak_of_plan(folder: Path) -> float:
    """Return what a plan of three hundred joints takes."""
    job = folder / "job.yaml"
    job.write_text(HEAD + three_hundred_joints(), encoding="utf-8")
    return peak_of(PLAN.format(file=str(job)))


class Use(NamedTuple):
    """How a use is measured in a folder of its own, and the most megabytes that are let pass."""

    measure: Callable[[Path], float]
    ceiling_mb: float


USES = {
    "Python, nothing imported": Use(lambda _folder: peak_of(""), 20),
    "an empty window": Use(lambda _folder: open_window("empty").peak_mb, 95),
    "window ready, with a card": Use(lambda _folder: open_window().peak_mb, 175),
    "every page shown once": Use(lambda _folder: open_window(ALL_PAGES).peak_mb, 245),
    "page of a log of 100,000": Use(peak_at_a_long_log, 230),
    "one card": Use(lambda _folder: peak_of(CARD), 60),
    "chart of 504 cells": Use(lambda _folder: peak_of(CHART), 65),
    "job of 300 unlike joints": Use(peak_of_plan, 75),
    "card as PDF": Use(lambda folder: peak_of(PDF.format(file=str(folder / "card.pdf"))), 120),
}
"""About half as much again as was measured."""

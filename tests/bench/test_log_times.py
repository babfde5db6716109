"""How long a long log takes to answer. Goals: 100 ms at 100,000 welds, 1 s at 1,000,000.

The floor of each question is its own SQL, given straight to SQLite's driver.
"""

import sqlite3

import pytest
from sqlalchemy import event

from tests.logbook.many import fill
from tests.logbook.timing import questions
from welds.logbook.opening import open_logbook

ASKED = {
    "first page": "first page",
    "last page": "last page",
    "count all": "counted",
    "process: page": "filtered by process",
    "process, joint, outcome: count": "three conditions, counted",
    "two common words: page": "two common words",
    "sort by current_a, up": "sorted by current",
    "similar, usual": "similar to a card",
}


def pytest_generate_tests(metafunc):
    if "welds" in metafunc.fixturenames:
        sizes = (100_000, 1_000_000) if metafunc.config.getoption("--benchmark-enable") else (2_000,)
        metafunc.parametrize("welds", sizes, scope="module", ids=lambda count: f"{count // 1000}k")


@pytest.fixture(scope="module")
def long_log(welds, tables, tmp_path_factory):
    with open_logbook(str(tmp_path_factory.mktemp("long") / "yard.db")) as log:
        fill(log, tables, welds)
        yield log


def straight(log, ask):
    """Return a function that gives the driver what the question gave it."""
    heard: list[tuple[str, object]] = []

    def hear(_connection, _cursor, statement, parameters, _context, _many) -> None:
        if not statement.startswith("BEGIN"):
            heard.append((statement, parameters))

    event.listen(log.store.engine, "before_cursor_execute", hear)
    ask()
    event.remove(log.store.engine, "before_cursor_execute", hear)
    driver = sqlite3.connect(log.place.path, isolation_level=None)

    def run() -> None:
        for statement, parameters in heard:
            driver.execute(statement, parameters).fetchall()
        assert heard

    return driver, run


@pytest.mark.parametrize("question", ASKED)
def test_one_question(beside, long_log, tables, welds, question):
    ask = dict(questions(long_log, tables, welds))[question]
    driver, run = straight(long_log, ask)
    beside(f"log of {welds:,}: {ASKED[question]}", ask, "its SQL, straight to SQLite", run, 9)
    driver.close()

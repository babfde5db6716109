"""Puts the bench page together and ties it to the set-up page."""

from PySide6.QtWidgets import QWidget

from welds.advice.advise import advise
from welds.advice.card import Card
from welds.advice.equipment import Equipment
from welds.advice.request import Request
from welds.errors import WeldsError
from welds.gui.bench_in_use import BenchInUse
from welds.gui.engine import Engine
from welds.gui.pages.bench.presenter import BenchPresenter
from welds.gui.pages.bench.view import BenchView
from welds.gui.pages.setup.presenter import SetupPresenter


def make_bench_page(engine: Engine, setup: SetupPresenter, parent: QWidget) -> BenchView:
    """Return the page; what it saves is followed by the set-up page, whose request it shows a card for."""
    tables = engine.tables
    in_use = engine.bench or BenchInUse(tables, None)

    def answer(request: Request, equipment: Equipment) -> Card:
        evidence = engine.past.of(request) if engine.past is not None else None
        return advise(request, tables, equipment, evidence)

    presenter = BenchPresenter(in_use, tables, answer, parent)
    view = BenchView(presenter, parent)

    def take_request() -> None:
        try:
            request = engine.request({name: value for name, value in setup.fields.items() if value})
        except WeldsError:
            request = None
        presenter.take_request(request, setup.units)

    view.shown.connect(take_request)
    setup.units_changed.connect(lambda _units: take_request() if view.isVisible() else None)
    presenter.saved.connect(lambda: setup.restore(setup.fields, setup.units))
    return view

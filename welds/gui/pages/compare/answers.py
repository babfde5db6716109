"""Cards and curves of columns, each with the past welds that may speak to it."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from welds.advice.card import Card
from welds.advice.equipment import Equipment
from welds.advice.evidence import Evidence
from welds.gui.engine import Engine
from welds.report.comparison import Asked, Grounds
from welds.report.current_curve import CurrentCurve, current_curve
from welds.report.own_welds import own_welds


class Answers:
    """Answers what columns ask; `present` says which bench the set-up page's cards are for."""

    def __init__(self, engine: Engine, present: Callable[[], Equipment]) -> None:
        self._engine, self._present = engine, present

    def card(self, asked: Asked) -> Card:
        """Return a column's card."""
        if asked.grounds is None and asked.equipment == self._present():
            return self._engine.card(asked.request)
        from welds.advice.advise import advise

        return advise(asked.request, self._engine.tables, asked.equipment, self._evidence(asked))

    def curve_key(self, asked: Asked) -> tuple[object, ...]:
        """Return all that a column's curve depends on."""
        any_thickness = replace(asked, request=replace(asked.request, thickness_mm=1.0))
        return any_thickness, self._evidence(asked), self._logged(asked)

    def curve_work(
        self, titles: Sequence[str], columns: Sequence[Asked]
    ) -> Callable[[], tuple[CurrentCurve, ...]]:
        """Return a function that works out every column's curve; it may be called on any thread."""
        tables = self._engine.tables
        named = [
            (title, asked, self._evidence(asked), self._logged(asked))
            for title, asked in zip(titles, columns, strict=True)
        ]

        def work() -> tuple[CurrentCurve, ...]:
            return tuple(
                replace(
                    current_curve(title, asked.request, tables, asked.equipment, evidence=evidence),
                    own=own_welds(asked.request, logged, tables),
                )
                for title, asked, evidence, logged in named
            )

        return work

    def _evidence(self, asked: Asked) -> Evidence | None:
        """Return the past welds that a column's card learns from."""
        past = self._engine.past
        if past is None or asked.grounds is Grounds.TABLES:
            return None
        return past.all_of(asked.request) if asked.grounds is Grounds.LOG else past.of(asked.request)

    def _logged(self, asked: Asked) -> Evidence | None:
        """Return the past welds that stand beside a column's curve, also where its card learns nothing."""
        return self._engine.past.all_of(asked.request) if self._engine.past is not None else None

"""What Help shows: shortcuts, versions, licence, the standing notice."""

import platform
from collections.abc import Iterable
from typing import TYPE_CHECKING

from PySide6.QtCore import qVersion

import welds
from welds.advice.card import NOTICE
from welds.language import tr
from welds.reference.edition import edition

if TYPE_CHECKING:
    from welds.reference.tables import Tables


def shortcuts_text(shortcuts: Iterable[tuple[str, str]]) -> str:
    """Return the shortcuts of the menus, then the keys of the page."""
    page = (
        (tr("Tab, Shift+Tab"), tr("Next input, previous input")),
        (
            tr("Arrow keys"),
            tr("Another joint, process, place or hand; a little more or less on the slider"),
        ),
        (tr("Up, Down on the slider"), tr("Next gauge mark")),
        (tr("Down in the metal field"), tr("Open the list, go into it")),
        (tr("Space"), tr("Tick a box, open or close a Why")),
        (tr("Alt with an underlined letter"), tr("Straight to that input")),
    )
    rows = [*shortcuts, *page]
    width = max(len(keys) for keys, _words in rows) + 3
    return "\n".join(f"{keys:<{width}}{words}" for keys, words in rows)


def about_text(tables: "Tables | None") -> str:
    """Return the versions of program and tables, the licence and the notice."""
    lines = [
        tr("Program: welds {version}", version=welds.__version__),
        tr("Python {python}, Qt {qt}", python=platform.python_version(), qt=qVersion()),
        tr("Licence: Apache-2.0. Qt and PySide6 are used under the LGPL version 3."),
    ]
    if tables is not None:
        rows = sum(len(tables.table(name).rows) for name in tables.names)
        counted = tr(
            "Tables: {tables} with {rows} rows from {sources} sources",
            tables=len(tables.names),
            rows=rows,
            sources=len(tables.sources),
        )
        lines.insert(1, counted)
        lines.insert(2, tr("Tables as shipped: {edition}", edition=edition()))
    return "\n".join(lines) + "\n\n" + tr(NOTICE)

"""What Help shows: shortcuts, versions, licence, the standing notice."""

import platform
from collections.abc import Iterable
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, qVersion

import welds
from welds.advice.card import NOTICE
from welds.reference.edition import edition

if TYPE_CHECKING:
    from welds.reference.tables import Tables


def shortcuts_text(shortcuts: Iterable[tuple[str, str]]) -> str:
    """Return the shortcuts of the menus, then the keys of the page."""
    tr = QCoreApplication.translate
    page = (
        (tr("about", "Tab, Shift+Tab"), tr("about", "Next input, previous input")),
        (
            tr("about", "Arrow keys"),
            tr("about", "Another joint, process, place or hand; a little more or less on the slider"),
        ),
        (tr("about", "Up, Down on the slider"), tr("about", "Next gauge mark")),
        (tr("about", "Down in the metal field"), tr("about", "Open the list, go into it")),
        (tr("about", "Space"), tr("about", "Tick a box, open or close a Why")),
        (tr("about", "Alt with an underlined letter"), tr("about", "Straight to that input")),
    )
    rows = [*shortcuts, *page]
    width = max(len(keys) for keys, _words in rows) + 3
    return "\n".join(f"{keys:<{width}}{words}" for keys, words in rows)


def about_text(tables: "Tables | None") -> str:
    """Return the versions of program and tables, the licence and the notice."""
    tr = QCoreApplication.translate
    lines = [
        tr("about", "Program: welds {version}").format(version=welds.__version__),
        tr("about", "Python {python}, Qt {qt}").format(python=platform.python_version(), qt=qVersion()),
        tr("about", "Licence: Apache-2.0. Qt and PySide6 are used under the LGPL version 3."),
    ]
    if tables is not None:
        rows = sum(len(tables.table(name).rows) for name in tables.names)
        counted = tr("about", "Tables: {tables} with {rows} rows from {sources} sources")
        lines.insert(1, counted.format(tables=len(tables.names), rows=rows, sources=len(tables.sources)))
        lines.insert(2, tr("about", "Tables as shipped: {edition}").format(edition=edition()))
    return "\n".join(lines) + "\n\n" + NOTICE

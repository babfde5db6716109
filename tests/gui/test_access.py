"""Every page by keyboard alone, and every control with a name and a role for a screen reader.

What is asked follows WCAG 2.1: 2.1.1 (all by keyboard), 2.1.2 (no trap), 4.1.2 (name, role, value).
"""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication, QScrollArea, QSplitterHandle, QWidget

from welds.gui.engine import load_engine

PAGES = ("Set-up", "Side by side", "Bench", "Job", "Log", "Weld preview")
CORNER = {
    "process": "tig",
    "metal": "5052",
    "thickness": "2 mm",
    "joint": "outside-corner",
    "coating": ("paint",),
}
NO_ROLE = {QAccessible.Role.NoRole, QAccessible.Role.Client}
MOST_TABS = 400


@pytest.fixture(scope="module")
def real():
    return load_engine(None)


@pytest.fixture(params=range(len(PAGES)), ids=PAGES)
def page(request, make_window, real, qtbot) -> QWidget:
    """Return a page of a real window, in front and settled."""
    window = make_window(lambda: real)
    qtbot.waitUntil(lambda: window.view is not None)
    window.presenter.restore(CORNER, window.presenter.units)
    window.activateWindow()
    window.pages.show(request.param)
    qtbot.wait(50)
    assert window.pages.buttons[request.param].text() == PAGES[request.param]
    return window.pages.stack.currentWidget()


def controls(page: QWidget) -> list[QWidget]:
    """Return what Tab has to reach: visible, enabled, wanting the keyboard, no mere carrier of others."""
    return [
        widget
        for widget in page.findChildren(QWidget)
        if widget.isVisible()
        and widget.isEnabled()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.focusProxy() is None
        and not isinstance(widget, QScrollArea | QSplitterHandle)
        and not isinstance(widget.parentWidget(), QAbstractItemView)
    ]


def said(widget: QWidget) -> str:
    """Return what a screen reader would say of it."""
    interface = QAccessible.queryAccessibleInterface(widget)
    name = interface.text(QAccessible.Text.Name) if interface is not None else ""
    return name or widget.accessibleName()  # a bar without tabs has no current tab to be called by


def told(widget: QWidget) -> str:
    """Return enough to find a widget by."""
    return f"{type(widget).__name__} {widget.objectName()!r} in {type(widget.parentWidget()).__name__}"


def test_every_control_has_a_name_and_a_role(page):
    found = controls(page)
    assert found
    nameless = [told(widget) for widget in found if not said(widget).strip()]
    assert nameless == []
    roleless = [
        told(widget) for widget in found if QAccessible.queryAccessibleInterface(widget).role() in NO_ROLE
    ]
    assert roleless == []


def test_tab_goes_round_and_leaves_nothing_out(page):
    wanted = controls(page)
    wanted[0].setFocus(Qt.FocusReason.TabFocusReason)
    met: list[QWidget] = []
    for _ in range(MOST_TABS):
        focused = QApplication.focusWidget()
        assert focused is not None
        if focused in met and len(met) > 1 and focused is met[0]:
            break
        met.append(focused)
        QTest.keyClick(focused, Qt.Key.Key_Tab)
    else:
        pytest.fail("Tab never came round: it is caught somewhere")
    left_out = [
        told(widget) for widget in wanted if widget not in met and not _beside_a_chosen_one(widget, met)
    ]
    assert left_out == []


def _beside_a_chosen_one(widget: QWidget, met: list[QWidget]) -> bool:
    """Of exclusive buttons Tab meets the chosen one; arrow keys lead to the others."""
    group = getattr(widget, "group", lambda: None)()
    return group is not None and group.exclusive() and any(button in met for button in group.buttons())


def test_back_tab_comes_back(page):
    wanted = controls(page)
    wanted[0].setFocus(Qt.FocusReason.TabFocusReason)
    first = QApplication.focusWidget()
    QTest.keyClick(first, Qt.Key.Key_Tab)
    second = QApplication.focusWidget()
    assert second is not first
    QTest.keyClick(second, Qt.Key.Key_Backtab)
    assert QApplication.focusWidget() is first


@pytest.mark.parametrize("step", range(5))
def test_no_page_is_larger_than_a_small_laptop_at_any_size_of_text(make_window, qtbot, real, step):
    window = make_window(lambda: real)
    qtbot.waitUntil(lambda: window.view is not None)
    window._outfit.theme.set_text_step(step)
    try:
        for place in range(len(window.pages.buttons)):
            window.pages.show(place)
            qtbot.wait(30)
            needed = window.minimumSizeHint()
            assert needed.width() <= 1366, window.pages.buttons[place].text()
            assert needed.height() <= 768, window.pages.buttons[place].text()
            assert window.width() == 1366, window.pages.buttons[place].text()
    finally:
        window._outfit.theme.set_text_step(1)

"""Every page by keyboard alone, and every control with a name and a role for a screen reader.

What is asked follows WCAG 2.1: 2.1.1 (all by keyboard), 2.1.2 (no trap), 4.1.2 (name, role, value).
"""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication, QScrollArea, QSplitterHandle, QWidget

from welds.gui.engine import load_engine
from welds.gui.theme import NORMAL_TEXT_STEP, TEXT_SCALES

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


def test_every_control_has_a_name_and_a_role_and_tab_reaches_it_and_comes_back(page):
    """One walk for all three: making a window takes longer than walking it."""
    wanted = controls(page)
    assert wanted
    nameless = [told(widget) for widget in wanted if not said(widget).strip()]
    assert nameless == []
    roles = [(told(widget), QAccessible.queryAccessibleInterface(widget).role()) for widget in wanted]
    assert [words for words, role in roles if role in NO_ROLE] == []
    met = _round(wanted[0])
    left_out = [told(each) for each in wanted if each not in met and not _beside_a_chosen_one(each, met)]
    assert left_out == []
    first, second = met[0], met[1]
    second.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(second, Qt.Key.Key_Backtab)
    assert QApplication.focusWidget() is first


def _round(start: QWidget) -> list[QWidget]:
    """Return what Tab meets from a widget until it meets that one again."""
    start.setFocus(Qt.FocusReason.TabFocusReason)
    met: list[QWidget] = []
    for _ in range(MOST_TABS):
        focused = QApplication.focusWidget()
        assert focused is not None
        if met and focused is met[0]:
            return met
        met.append(focused)
        QTest.keyClick(focused, Qt.Key.Key_Tab)
    pytest.fail("Tab never came round: it is caught somewhere")


def _beside_a_chosen_one(widget: QWidget, met: list[QWidget]) -> bool:
    """Of exclusive buttons Tab meets the chosen one; arrow keys lead to the others."""
    group = getattr(widget, "group", lambda: None)()
    return group is not None and group.exclusive() and any(button in met for button in group.buttons())


@pytest.mark.parametrize("step", [0, NORMAL_TEXT_STEP, len(TEXT_SCALES) - 1])
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
            scrolls = window.pages.stack.minimumSizeHint().width() > window.pages.area.viewport().width()
            assert not scrolls or step == len(TEXT_SCALES) - 1, window.pages.buttons[place].text()
    finally:
        window._outfit.theme.set_text_step(NORMAL_TEXT_STEP)

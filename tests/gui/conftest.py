"""No test may leave a thread or a window behind, and none may meet a real dialog."""

import gc
import threading
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QSettings, QThreadPool
from PySide6.QtWidgets import QApplication

from tests.gui.fakes import FakePrompts
from tests.gui.sample_cards import sample_engine
from welds.gui.engine import Engine
from welds.gui.main_window import MainWindow
from welds.gui.memory import Memory
from welds.gui.outfit import Outfit
from welds.gui.settings import WindowState
from welds.gui.theme import Theme


@pytest.fixture(autouse=True)
def _nothing_left_behind():
    """Fail when a test leaves a running thread, a busy pool or an open top-level widget."""
    threads = set(threading.enumerate())
    yield
    application = QApplication.instance()
    if not isinstance(application, QApplication):
        return
    assert QThreadPool.globalInstance().waitForDone(2000), "a job is still running"
    application.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    gc.collect()
    left = [widget for widget in application.topLevelWidgets() if widget.isVisible()]
    names = ", ".join(f"{type(widget).__name__} {widget.windowTitle()!r}" for widget in left)
    for widget in left:
        widget.close()
        widget.deleteLater()
    assert not left, f"left open: {names}"
    running = [thread for thread in threading.enumerate() if thread not in threads and thread.is_alive()]
    running = [thread for thread in running if not thread.name.startswith("Dummy")]
    assert not running, f"left running: {running}"


@pytest.fixture(scope="session")
def engine() -> Engine:
    """Return real tables with sample cards."""
    return sample_engine()


@pytest.fixture
def settings_file(tmp_path: Path) -> QSettings:
    """Return window settings that belong to one test."""
    return QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat)


@pytest.fixture
def make_window(qtbot, qapp, engine, settings_file, tmp_path):
    """Return a maker of windows over the same memory, each with its page ready."""
    made = []

    def make(load=None) -> MainWindow:
        outfit = Outfit(Theme(qapp), Memory(tmp_path), load or (lambda: engine), FakePrompts)
        window = MainWindow(WindowState(settings_file), lambda: outfit)
        window.resize(1366, 768)
        made.append(window)
        window.show()
        if load is None:
            qtbot.waitUntil(lambda: window.view is not None)
        return window

    yield make
    for window in made:
        window.close()
        window.deleteLater()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.fixture
def window(make_window) -> MainWindow:
    """Return one window with its page ready."""
    return make_window()

"""Run as a script: opens a window, writes down when it had painted and when it was ready, closes it.

window_watch.py [--log FILE]              our window, by the same door as a person's start
window_watch.py pages=1,4 [--log FILE]    the same, these pages shown one after the other
window_watch.py empty                     a window with one label: what Qt alone costs
"""

import json
import sys
import time
from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication, QLabel, QMainWindow

LOOK_EVERY_MS = 10
GIVE_UP_MS = 55_000
seen: dict[str, object] = {}


def note(moment: str) -> None:
    """Write down the time and what has been imported, once."""
    if moment not in seen:
        seen[moment] = time.clock_gettime(time.CLOCK_MONOTONIC)
        seen[f"{moment}_cpu"] = time.process_time()
        seen[f"{moment}_modules"] = sorted({name.partition(".")[0] for name in sys.modules})


class FirstPaint(QObject):
    """Notes the moment when everything that the first paint brings along has been done."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint and "painted" not in seen:
            QTimer.singleShot(0, lambda: note("painted"))
        return super().eventFilter(watched, event)


def watched_exec(is_ready: Callable[[], bool]) -> int:
    """Run the event loop until the window has painted and is ready, then close it."""
    application = QApplication.instance()
    assert application is not None
    first_paint = FirstPaint()
    application.installEventFilter(first_paint)

    def look() -> None:
        if "painted" in seen and is_ready():
            note("ready")
            QApplication.closeAllWindows()
            application.quit()

    timer = QTimer(interval=LOOK_EVERY_MS)
    timer.timeout.connect(look)
    timer.start()

    def give_up() -> None:
        print(f"not ready after {GIVE_UP_MS / 1000:.0f} s", file=sys.stderr)
        application.exit(1)

    QTimer.singleShot(GIVE_UP_MS, give_up)
    return QApplication.exec()


def has_card() -> bool:
    """Say whether our window shows an answer."""
    return any(
        window.presenter is not None and window.presenter.card is not None
        for window in QApplication.topLevelWidgets()
        if hasattr(window, "presenter")
    )


def has_shown(places: list[int]) -> bool:
    """Turn to the next of the pages at each look, once the card is there; say whether that is done."""
    for window in QApplication.topLevelWidgets():
        if getattr(window, "view", None) is not None:  # all that a start makes is there
            window.log.desk.wait()
            if places:
                window.pages.show(places.pop(0))
                return False
            return True
    return False


def open_ours(is_ready: Callable[[], bool], arguments: list[str]) -> int:
    from welds.__main__ import main
    from welds.gui import app

    class WatchedApplication(QApplication):
        def exec(self) -> int:
            return watched_exec(is_ready)

    app.QApplication = WatchedApplication
    sys.argv[:] = ["welds", *arguments]
    return main()


def open_empty() -> int:
    application = QApplication(["empty"])
    window = QMainWindow()
    window.resize(1366, 768)
    window.setCentralWidget(QLabel("Nothing here yet", window))
    window.show()
    assert application is not None
    return watched_exec(lambda: True)


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["empty"]:
            code = open_empty()
        case [pages, *rest] if pages.startswith("pages="):
            left = [int(place) for place in pages.partition("=")[2].split(",")]
            code = open_ours(lambda: has_shown(left), rest)
        case rest:
            code = open_ours(has_card, rest)
    from tests.support.peak import peak_mb

    seen["peak_mb"] = peak_mb()
    print(json.dumps(seen))
    sys.exit(code)

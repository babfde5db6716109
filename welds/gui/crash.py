"""Mistakes of the program itself: shown in full, never swallowed, and the window stays open."""

import sys
from collections.abc import Callable
from types import TracebackType

import welds

Show = Callable[[str], None]


class CrashReporter:
    """Stands in for `sys.excepthook`; a mistake while reporting goes to stderr so that there is no loop."""

    def __init__(self, show: Show, save: Callable[[], object]) -> None:
        self._show, self._save = show, save
        self._previous = sys.excepthook
        self._is_reporting = False

    def install(self) -> None:
        """Report uncaught exceptions from now on."""
        self._previous, sys.excepthook = sys.excepthook, self._report

    def remove(self) -> None:
        """Give the previous hook its place back."""
        sys.excepthook = self._previous

    def _report(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if self._is_reporting or not issubclass(kind, Exception):
            self._previous(kind, error, trace)
            return
        self._is_reporting = True
        try:
            self._save()
            self._show(report_text(kind, error, trace))
        except Exception as second:
            self._previous(type(second), second, second.__traceback__)
            self._previous(kind, error, trace)
        finally:
            self._is_reporting = False


def report_text(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> str:
    """Return what a developer needs to know."""
    import platform
    import traceback

    head = f"welds {welds.__version__}, Python {platform.python_version()}, {platform.system()}"
    return head + "\n\n" + "".join(traceback.format_exception(kind, error, trace))

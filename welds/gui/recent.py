"""The requests whose cards stood long enough to be used, newest first."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

if TYPE_CHECKING:
    from collections.abc import Sequence

    from welds.gui.engine import Fields
    from welds.gui.pages.setup.presenter import SetupPresenter

MOST = 12
STOOD_MS = 4000
"""A card that stands so long was read; shorter ones are steps on the way."""


class Recent(QObject):
    """Watches the set-up page."""

    def __init__(
        self, setup: "SetupPresenter", known: "Sequence[Fields]", parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._setup = setup
        self.requests: list[Fields] = list(known)[:MOST]
        self._stood = QTimer(self, singleShot=True, interval=STOOD_MS)
        self._stood.timeout.connect(self.note)
        setup.card_changed.connect(lambda _face: self._stood.start())
        if setup.card is not None:
            self._stood.start()

    def note(self) -> None:
        """Take up the request on the page, where it has its card."""
        if self._setup.card is None or self._setup.is_stale:
            return
        fields = {name: value for name, value in self._setup.fields.items() if value}
        self.requests = [fields, *(each for each in self.requests if each != fields)][:MOST]

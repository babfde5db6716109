"""A scroll area that only ever scrolls up and down."""

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget


class SideArea(QScrollArea):
    """Is never narrower than what it holds, and brings an input into view when the keyboard reaches it."""

    def __init__(self, panel: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        panel.setProperty("scrolled", "true")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(panel)
        self._panel = panel

    def minimumSizeHint(self) -> QSize:
        bar = self.verticalScrollBar().sizeHint().width()
        return QSize(self._panel.minimumSizeHint().width() + bar, super().minimumSizeHint().height())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().eventFilter(watched, event)

    def follow(self, focused: QWidget | None) -> None:
        """Scroll to a widget where it is one of those inside."""
        if focused is not None and self._panel.isAncestorOf(focused):
            self.ensureWidgetVisible(focused, 0, 24)

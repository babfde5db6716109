"""Cautions above a page's figures: stops always in full words, the rest on one line until opened."""

from collections.abc import Sequence

from PySide6.QtCore import QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from welds.advice.setting import Severity
from welds.gui.card_face import CautionLine
from welds.gui.widgets.fold import FoldButton
from welds.gui.widgets.texts import clear_layout, label


class CautionStrip(QFrame):
    """What can hurt stands above the figures here too; it is ticked on the set-up page."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Cautions"))
        self._shown: tuple[tuple[Severity, CautionLine], ...] = ()
        self._lines = QVBoxLayout()
        self._lines.setSpacing(3)
        self.button = FoldButton(self.tr("In full"), self.tr("Cautions in full"), self)
        self.button.toggled.connect(lambda _on: self._fill())
        self._lines.setContentsMargins(0, 3, 0, 3)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(12, 0, 4, 0)
        layout.addLayout(self._lines, 1)
        layout.addWidget(self.button)
        self.hide()

    def show_cautions(self, cautions: Sequence[tuple[Severity, CautionLine]]) -> None:
        """Show these, the worst first."""
        if tuple(cautions) != self._shown:
            self._shown = tuple(cautions)
            self._fill()
        self.setVisible(bool(cautions))

    def minimumSizeHint(self) -> QSize:
        """Return the height that the words need at this width, not that of a narrow strip."""
        least = super().minimumSizeHint()
        if self.width() <= least.width():  # not laid out yet
            return QSize(least.width(), self.button.sizeHint().height())
        return QSize(least.width(), min(least.height(), self.heightForWidth(self.width())))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self.updateGeometry()

    def _fill(self) -> None:
        clear_layout(self._lines)
        stops = [caution for severity, caution in self._shown if severity is Severity.STOP]
        others = [caution for severity, caution in self._shown if severity is not Severity.STOP]
        self.setProperty("panel", "stop" if stops else "warn")
        self.style().unpolish(self)
        self.style().polish(self)
        is_open = self.button.isChecked()
        for stop in stops:
            words = self.tr("STOP: {text}").format(text=stop.text)
            self._lines.addWidget(label(words, tone="stop", wrap=True, parent=self))
        if is_open:
            for caution in others:
                self._lines.addWidget(label(caution.text, wrap=True, parent=self))
        elif others:
            first = "  \N{MIDDLE DOT}  ".join(caution.first_words for caution in others)
            line = label(self.tr("Take care: {first}").format(first=first), parent=self)
            line.setToolTip("\n".join(caution.text for caution in others))
            line.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            self._lines.addWidget(line)

"""The stop cautions, each to be ticked."""

from collections.abc import Collection, Sequence

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QWidget

from welds.gui.card_face import CautionLine
from welds.gui.widgets.texts import clear_layout, label
from welds.gui.widgets.tick_box import TickBox


class CautionBar(QFrame):
    """The stop cautions, each with a box that says it was done or seen; they stay on show when ticked."""

    ticked = Signal(str, bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "stop")
        self.boxes: dict[str, TickBox] = {}
        self._layout = QGridLayout(self)
        self._layout.setContentsMargins(14, 8, 14, 8)
        self._layout.setHorizontalSpacing(14)
        self._layout.setVerticalSpacing(6)
        self._layout.setColumnStretch(0, 1)
        self._shown: tuple[CautionLine, ...] = ()
        self.hide()

    def show_stops(self, stops: Sequence[CautionLine], ticks: Collection[str]) -> None:
        """Show these cautions, with the ticked ones ticked."""
        if tuple(stops) != self._shown:
            self._rebuild(tuple(stops))
        for rule, box in self.boxes.items():
            with QSignalBlocker(box):
                box.setChecked(rule in ticks)
        self.setVisible(bool(stops))

    def _rebuild(self, stops: tuple[CautionLine, ...]) -> None:
        clear_layout(self._layout)
        self._shown, self.boxes = stops, {}
        if not stops:
            return
        heading = label(
            self.tr("STOP. Tick each of these before you strike an arc."),
            role="heading",
            tone="stop",
            wrap=True,
            parent=self,
        )
        self._layout.addWidget(heading, 0, 0, 1, 2)
        for row, stop in enumerate(stops, start=1):
            box = TickBox(self.tr("Done / seen"), self)
            box.setAccessibleName(self.tr("Done or seen: {text}").format(text=stop.text))
            box.toggled.connect(lambda on, rule=stop.rule: self.ticked.emit(rule, on))
            text = label(stop.text, wrap=True, parent=self)
            text.setToolTip(stop.source)
            text.setBuddy(box)
            self.boxes[stop.rule] = box
            self._layout.addWidget(text, row, 0)
            self._layout.addWidget(box, row, 1, Qt.AlignmentFlag.AlignVCenter)

"""The card side of the page, in reading order: what can hurt, the big figures, the rest, the reasons."""

from collections.abc import Callable, Collection
from itertools import pairwise

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from welds.advice.card import NOTICE
from welds.gui.card_face import CardFace
from welds.gui.pages.setup.past_strip import PastStrip
from welds.gui.widgets.caution_bar import CautionBar
from welds.gui.widgets.caution_fold import CautionFold
from welds.gui.widgets.drawing_view import DrawingView
from welds.gui.widgets.figure_strip import FigureStrip
from welds.gui.widgets.figure_tile import FigureTile
from welds.gui.widgets.head_bar import HeadBar
from welds.gui.widgets.line_sheet import LineSheet
from welds.gui.widgets.notice_bar import NoticeBar
from welds.gui.widgets.packed_columns import PackedColumns
from welds.gui.widgets.reason_list import ReasonList
from welds.gui.widgets.refusal_bar import RefusalBar
from welds.gui.widgets.setting_row import SettingGroup
from welds.gui.widgets.side_area import SideArea
from welds.gui.widgets.texts import label, set_property, set_text
from welds.language import tr

SCROLLBAR_PX = 20
"""Room right of the sheets, so that everything ends on one line whether there is a scroll bar or not."""

MAIN_WIDTH_PX = 440
"""Beyond this the main figure only stands in emptiness; the drawings get the room."""
DRAWING_PX = (234, 310)
"""Lowest and highest a drawing gets; in between it follows the window."""

PaintCard = Callable[[QPainter, QRectF, CardFace], None]


class CardPanel(QWidget):
    """Shows a card face; reports ticks and the wish to go to the nearest answer."""

    ticked = Signal(str, bool)
    asked_for_nearest = Signal()
    log_wanted = Signal()
    fault_wanted = Signal()
    change_taken_back = Signal()

    def __init__(self, paint_joint: PaintCard, paint_wave: PaintCard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._paint_joint, self._paint_wave = paint_joint, paint_wave
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 8, 8, 6)
        layout.setSpacing(6)
        layout.addLayout(self._header())
        self.refusal = RefusalBar(self)
        self.refusal.asked_for_nearest.connect(self.asked_for_nearest)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, SCROLLBAR_PX, 0)
        row.addWidget(self.refusal)
        layout.addLayout(row)
        self.adjusted = NoticeBar("good", self)
        self.adjusted.chosen.connect(lambda _name: self.change_taken_back.emit())
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, SCROLLBAR_PX, 0)
        row.addWidget(self.adjusted)
        layout.addLayout(row)
        layout.addWidget(self._scroll(), 1)
        layout.addStretch(0)
        self._notice = label(tr(NOTICE), "small", wrap=True, parent=self)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, SCROLLBAR_PX, 0)
        row.addWidget(self._notice)
        layout.addLayout(row)

    def show_face(self, face: CardFace, ticks: Collection[str]) -> None:
        """Show a card that answers the request."""
        self.refusal.hide()
        self.body.setEnabled(True)
        set_text(self._title, face.title)
        set_text(self._subtitle, face.subtitle)
        set_text(self._notice, face.notice)
        self.adjusted.show_notice(face.adjusted, [("back", self.tr("Take it back"))])
        self.stops.show_stops(face.stops, ticks)
        self.warnings.show_cautions(face.warnings)
        self.main.show_figure(face.main)
        self._show_main_reasons()
        self.big.show_figures(face.big)
        self._show_groups(face)
        self._show_drawings(face)
        set_text(self._weak, self._weak_words(face))
        self.steps.show_lines(
            [(f"{number}.", step.text, step.source, "") for number, step in enumerate(face.steps, 1)]
        )
        self.checks.show_lines(
            [
                ("\u2713" if check.ok else "\u2717", check.text, "", "" if check.ok else "warn")
                for check in face.checks
            ]
        )
        self.notes.show_cautions(face.notes)
        self.area.show()
        self._chain_tabs()

    @property
    def title(self) -> str:
        """What the card on show is for."""
        return self._title.text()

    def show_waiting(self, words: str) -> None:
        """Say what keeps the card from being there."""
        set_text(self._title, words)

    def show_refusal(self, reason: str, button: str = "") -> None:
        """Say why there is no card; the last one stays, greyed."""
        below = self.tr("The card below is for the request before this one.") if self._title.text() else ""
        self.refusal.show_reason(reason, below, button)
        self.body.setEnabled(False)

    def show_readiness(self, *, is_stale: bool, open_stops: int) -> None:
        """Say in words whether the card may be used."""
        if is_stale:
            words, tone = self.tr("OLD CARD") if self._title.text() else self.tr("NO CARD"), "warn"
        elif open_stops:
            words, tone = self.tr("NOT READY: {count} to tick").format(count=open_stops), "stop"
        else:
            words, tone = self.tr("READY"), "good"
        self.log_weld.setEnabled(not is_stale)
        self.find_fault.setEnabled(not is_stale)
        self.state.setText(words)
        self.state.setAccessibleName(self.tr("State of the card: {words}").format(words=words))
        set_property(self.state, "tone", tone)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        for drawing in (self.joint, self.wave):
            drawing.setMinimumHeight(min(max(self.height() * 3 // 10, DRAWING_PX[0]), DRAWING_PX[1]))

    def _header(self) -> QHBoxLayout:
        self._title = label(role="title", wrap=True, parent=self)
        self._subtitle = label(role="soft", wrap=True, parent=self)
        self.state = QPushButton(self)
        self.state.setProperty("kind", "state")
        self.state.clicked.connect(self._on_state_clicked)
        self.log_weld = QPushButton(self.tr("Log this weld…"), self)
        self.log_weld.setToolTip(self.tr("Write down what was set and what came of it (Ctrl+L)"))
        self.log_weld.clicked.connect(self.log_wanted)
        self.log_weld.setEnabled(False)
        self.find_fault = QPushButton(self.tr("What went wrong…"), self)
        self.find_fault.setToolTip(
            self.tr("From the looks of a bead to its cause and the change of setting (F7)")
        )
        self.find_fault.clicked.connect(self.fault_wanted)
        self.find_fault.setEnabled(False)
        words = QWidget(self)
        lines = QVBoxLayout(words)
        lines.setContentsMargins(0, 0, 0, 0)
        lines.setSpacing(0)
        lines.addWidget(self._title)
        lines.addWidget(self._subtitle)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, SCROLLBAR_PX, 0)
        row.addWidget(HeadBar(words, (self.find_fault, self.log_weld, self.state), parent=self))
        return row

    def _scroll(self) -> QWidget:
        self.body = QWidget(self)
        self.stops = CautionBar(self.body)
        self.stops.ticked.connect(self.ticked)
        self.warnings = CautionFold("warn", "\u25b2", self.tr("Cautions"), self.body)
        self.main = FigureTile(is_main=True, parent=self.body)
        self.main.setMaximumWidth(MAIN_WIDTH_PX)
        self.main.why.toggled.connect(lambda _on: self._show_main_reasons())
        self.joint = DrawingView(self.tr("The joint with the torch"), QSize(244, DRAWING_PX[0]), self.body)
        self.wave = DrawingView(self.tr("The AC wave"), QSize(220, DRAWING_PX[0]), self.body)
        self._main_reasons = ReasonList(self.body)
        self._main_reasons.hide()
        self.big = FigureStrip(parent=self.body)
        self.past = PastStrip(self.body)
        self._weak = label(role="soft", tone="warn", wrap=True, parent=self.body)
        self._groups: list[SettingGroup] = []
        self._sheets = PackedColumns(390)
        self.steps = LineSheet(self.tr("Before the arc, in this order"), self.body)
        self.checks = LineSheet(self.tr("Checked"), self.body)
        self.notes = CautionFold("raised", "\u00b7", self.tr("Notes"), self.body)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.main, 10)
        row.addWidget(self.joint, 13)
        row.addWidget(self.wave, 11)
        layout = QVBoxLayout(self.body)
        layout.setContentsMargins(0, 0, SCROLLBAR_PX - 14, 0)
        layout.setSpacing(8)
        layout.addWidget(self.stops)
        layout.addWidget(self.warnings)
        layout.addLayout(row)
        layout.addWidget(self._main_reasons)
        layout.addWidget(self.past)
        layout.addWidget(self.big)
        layout.addWidget(self._weak)
        layout.addLayout(self._sheets)
        layout.addWidget(self.notes)
        layout.addStretch(1)
        self.area = SideArea(self.body, self)
        self.area.hide()
        return self.area

    def _show_main_reasons(self) -> None:
        figure = self.main.figure
        if figure is not None and self.main.why.isChecked():
            self._main_reasons.show_figure(figure)
        self._main_reasons.setVisible(self.main.why.isChecked())

    def _show_groups(self, face: CardFace) -> None:
        shape = [[figure.name for figure in group.figures] for group in face.groups]
        if shape == [[row.figure.name for row in group.rows if row.figure] for group in self._groups]:
            for shown, wanted in zip(self._groups, face.groups, strict=True):
                shown.show_group(wanted)
            return
        opened = {name for group in self._groups for name in group.opened()}
        self._sheets.release()
        for group in self._groups:
            group.hide()
            group.deleteLater()
        self._groups = [SettingGroup(wanted, opened, self.body) for wanted in face.groups]
        for group in self._groups:
            self._sheets.add(group, len(group.rows) + 1)
            group.show()
        self._sheets.add(self.steps, len(face.steps) + 1)
        self._sheets.add(self.checks, len(face.checks) + 1)

    def _show_drawings(self, face: CardFace) -> None:
        self.joint.show_drawing(lambda painter, area: self._paint_joint(painter, area, face), face.title)
        self.wave.setVisible(face.has_wave)
        wave = (lambda painter, area: self._paint_wave(painter, area, face)) if face.has_wave else None
        self.wave.show_drawing(wave, self.tr("Time runs to the right; up is electrode positive."))

    def _weak_words(self, face: CardFace) -> str:
        if not face.weak_count:
            return ""
        words = self.tr(
            "{weak} of {all} figures have no published source behind them and say so: common practice or"
            " memory. Try them on scrap first."
        )
        return words.format(weak=face.weak_count, all=face.figure_count)

    def _chain_tabs(self) -> None:
        """Let Tab follow the reading order where parts were made anew."""
        chain: list[QWidget] = [
            self.find_fault,
            self.log_weld,
            self.state,
            self.refusal.button,
            *self.adjusted.buttons.values(),
            *self.stops.boxes.values(),
            self.warnings.button,
        ]
        chain += [self.main.why, self.past.more, self.past.learning, *(tile.why for tile in self.big.tiles)]
        chain += [row.why for group in self._groups for row in group.rows]
        chain.append(self.notes.button)
        for before, after in pairwise(chain):
            QWidget.setTabOrder(before, after)

    def _on_state_clicked(self) -> None:
        self.area.verticalScrollBar().setValue(0)
        for box in self.stops.boxes.values():
            if not box.isChecked():
                box.setFocus(Qt.FocusReason.ShortcutFocusReason)
                return

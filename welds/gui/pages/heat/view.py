"""The page of the weld to come: sliders at the left, gauge, pictures and figures at the right."""

from PySide6.QtCore import QEvent, QSize, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from welds.advice.setting import Severity
from welds.gui.card_face import CautionLine
from welds.gui.pages.heat.band_slider import KnobRow
from welds.gui.pages.heat.drawings import HeatDrawings
from welds.gui.pages.heat.figure_sheet import FigureSheet
from welds.gui.pages.heat.knobs import (
    BALANCE,
    CURRENT,
    FREQUENCY,
    START,
    STEPS,
    THICKNESS,
    TRAVEL,
    VOLTAGE,
    Knob,
)
from welds.gui.pages.heat.outputs import HeatOutput
from welds.gui.pages.heat.presenter import HeatPresenter
from welds.gui.pages.heat.scenes import Picture
from welds.gui.prompts import Prompts
from welds.gui.widgets.caution_strip import CautionStrip
from welds.gui.widgets.drawing_view import DrawingView
from welds.gui.widgets.refusal_bar import RefusalBar
from welds.gui.widgets.side_area import SideArea
from welds.gui.widgets.texts import label, set_property, set_text

SIDE_PX = 340
GAUGE_PX = 108


class TallEnough(QWidget):
    """Asks for the height that its words need in the width there is, not in the narrowest."""

    def minimumSizeHint(self) -> QSize:
        layout = self.layout()
        least = layout.minimumSize().width() if layout is not None else 0
        width = max(self.width(), least)
        return QSize(least, layout.minimumHeightForWidth(width) if layout is not None else 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()


class HeatView(QWidget):
    """Builds the page and connects it; everything about welding is the presenter's."""

    shown = Signal()

    def __init__(
        self,
        presenter: HeatPresenter,
        drawings: HeatDrawings,
        output: HeatOutput,
        prompts: Prompts,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.presenter, self.output = presenter, output
        self._drawings, self._prompts = drawings, prompts
        self.rows = {
            name: self._row(name) for name in (CURRENT, TRAVEL, VOLTAGE, THICKNESS, START, FREQUENCY, BALANCE)
        }
        self.reset = QPushButton(self.tr("Back to the c&ard"), self)
        self.keep = QPushButton(self)
        self.keep.setCheckable(True)
        self.save = QPushButton(self.tr("Save &picture or numbers…"), self)
        self.grounds = QPushButton(self.tr("What this &rests on…"), self)
        self.cautions = CautionStrip(self)
        self.refusal = RefusalBar(self)
        self.disagreement = label(wrap=True, parent=self)
        self.verdict = label(role="value", wrap=True, parent=self)
        self.gauge = DrawingView(self.tr("From cold to burning through"), QSize(300, GAUGE_PX), self)
        self.gauge.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.zone = DrawingView(self.tr("The joint cut across"), QSize(300, 200), self)
        self.pool = DrawingView(self.tr("The pool from above"), QSize(200, 200), self)
        self.pool.setToolTip(self.tr("seen from above; ring: the arc's spot"))
        for each in (self.zone, self.pool):
            each.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.figures = FigureSheet(self)
        self._title = label(role="title", wrap=True, parent=self)
        self._area = SideArea(self._side(), self)
        self._area.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self._sheet = SideArea(self._main(), self)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(8, 6, 10, 6)
        layout.setSpacing(8)
        layout.addWidget(self._area)
        layout.addWidget(self._sheet, 1)
        self._connect()
        self._show_kept(on=False)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.shown.emit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self._repaint()

    def _row(self, name: str) -> KnobRow:
        words = {
            CURRENT: self.tr("C&urrent"),
            TRAVEL: self.tr("&Travel speed"),
            VOLTAGE: self.tr("Arc vo&ltage"),
            THICKNESS: self.tr("Thick&ness"),
            START: self.tr("&Metal starts at"),
            FREQUENCY: self.tr("AC &frequency"),
            BALANCE: self.tr("&Electrode negative"),
        }[name]
        trend = self.tr("trend") if name in (FREQUENCY, BALANCE) else ""
        row = KnobRow(words, STEPS, trend, self)
        row.moved.connect(lambda place: self.presenter.set_place(name, place))
        row.typed.connect(lambda text: self.presenter.set_text(name, text))
        return row

    def _side(self) -> QWidget:
        side = QFrame(self)
        side.setMinimumWidth(SIDE_PX)
        layout = QVBoxLayout(side)
        layout.setContentsMargins(10, 8, 10, 8)
        layout.setSpacing(5)
        for row in self.rows.values():
            layout.addWidget(row)
        layout.addStretch(1)
        for button in (self.reset, self.keep):
            layout.addWidget(button)
        return side

    def _main(self) -> QWidget:
        main = TallEnough(self)
        head = QHBoxLayout()
        head.addWidget(self._title, 1)
        head.addWidget(self.grounds)
        head.addWidget(self.save)
        pictures = QHBoxLayout()
        pictures.setSpacing(8)
        pictures.addWidget(self.zone, 3)
        pictures.addWidget(self.pool, 2)
        self._disagreement_frame = QFrame(self)
        self._disagreement_frame.setProperty("panel", "warn")
        said = QVBoxLayout(self._disagreement_frame)
        said.setContentsMargins(10, 5, 10, 5)
        said.addWidget(self.disagreement)
        self._disagreement_frame.hide()
        layout = QVBoxLayout(main)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(self.refusal)
        layout.addWidget(self.cautions)
        layout.addLayout(head)
        layout.addWidget(self._disagreement_frame)
        layout.addWidget(self.verdict)
        layout.addWidget(self.gauge)
        layout.addLayout(pictures, 1)
        layout.addWidget(self.figures)
        return main

    def _connect(self) -> None:
        presenter = self.presenter
        self.reset.clicked.connect(presenter.reset)
        self.keep.clicked.connect(lambda on: presenter.keep() if on else presenter.drop())
        self.save.clicked.connect(self.output.save)
        self.grounds.clicked.connect(self._on_grounds_clicked)
        presenter.knobs_changed.connect(self._show_knobs)
        presenter.picture_changed.connect(self._on_picture_changed)
        presenter.kept_changed.connect(lambda on: self._show_kept(on=on))
        presenter.disagreed.connect(self._on_disagreed)
        presenter.refused.connect(self._on_refused)
        presenter.trouble_found.connect(lambda name, text: self.rows[name].show_trouble(text))
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.connect(self._on_focus_changed)

    def _on_focus_changed(self, _old: QWidget | None, focused: QWidget | None) -> None:
        self._area.follow(focused)
        self._sheet.follow(focused)

    def _show_knobs(self) -> None:
        shown = {knob.name: knob for knob in self.presenter.knobs}
        for name, row in self.rows.items():
            knob = shown.get(name)
            row.setVisible(knob is not None)
            if knob is not None:
                band = (knob.place(knob.band[0]), knob.place(knob.band[1])) if knob.band is not None else None
                row.slider.show_card(band, knob.place(knob.card))
                row.show_trouble("")
                row.show_value(
                    knob.place(knob.value), knob.text(self.presenter.units), self._card_words(knob)
                )
        self._title.setText(self.presenter.title)

    def _card_words(self, knob: Knob) -> str:
        if knob.name == VOLTAGE and not self.presenter.holds_voltage:
            return self.tr("follows the current")
        return self.tr("card: {band}").format(band=knob.band_text(self.presenter.units))

    def _on_picture_changed(self, picture: Picture) -> None:
        self.verdict.setText(picture.verdict.text)
        set_property(self.verdict, "tone", picture.verdict.tone)
        self.figures.show_lines(picture.figures, picture.kept_figures)
        self._show_cautions()
        self._repaint()

    def _repaint(self) -> None:
        picture = self.presenter.picture
        if picture is None:
            return
        words = "; ".join(f"{each.name}: {each.value}" for each in picture.figures)
        self.gauge.show_drawing(self._drawings.paint_gauge, picture.verdict.text)
        self.zone.show_drawing(self._drawings.paint_zone, words)
        self.pool.show_drawing(self._drawings.paint_pool, words)

    def _show_cautions(self) -> None:
        card = self.presenter.card
        cautions = card.cautions if card is not None else ()
        order = list(Severity)
        self.cautions.show_cautions(
            [
                (each.severity, CautionLine(each.rule, each.text, each.source or ""))
                for each in sorted(cautions, key=lambda caution: order.index(caution.severity))
            ]
        )

    def _show_kept(self, *, on: bool) -> None:
        self.keep.setChecked(on)
        words = self.tr("Drop the &kept setting") if on else self.tr("&Keep this one to compare")
        self.keep.setText(words)
        self.keep.setAccessibleName(words.replace("&", ""))

    def _on_disagreed(self, text: str) -> None:
        set_text(self.disagreement, text)
        self._disagreement_frame.setVisible(bool(text))

    def _on_refused(self, reason: str) -> None:
        for each in (self.gauge, self.zone, self.pool, self.figures, self.verdict, self.save, self.grounds):
            each.setVisible(not reason)
        self._area.setEnabled(bool(self.presenter.knobs))
        self._show_cautions()
        if reason:
            self.refusal.show_reason(reason, "", "")
            self._disagreement_frame.hide()
        else:
            self.refusal.hide()

    def _on_grounds_clicked(self) -> None:
        text = self.presenter.grounds()
        if text:
            introduction = self.tr(
                "To think with: what the picture leaves out, how far it may be off, where figures come from."
            )
            self._prompts.show_text(self.tr("What the picture rests on"), introduction, text)

"""The set-up page: request on the left, card on the right, joined to one presenter."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtWidgets import QApplication, QSplitter, QVBoxLayout, QWidget

from welds.gui.card_face import CardFace
from welds.gui.engine import Engine
from welds.gui.pages.setup.card_panel import CardPanel
from welds.gui.pages.setup.drawings import SetupDrawings
from welds.gui.pages.setup.nearest import Nearest
from welds.gui.pages.setup.presenter import SetupPresenter, Understood
from welds.gui.pages.setup.request_panel import RequestPanel
from welds.gui.widgets.side_area import SideArea
from welds.language import tr

if TYPE_CHECKING:
    from welds.gui.pages.setup.large_figures import LargeFigures


class SetupView(QWidget):
    """Builds both sides; once joined to a presenter it shows what that says. Nothing about welding here."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._face: CardFace | None = None
        self._large: LargeFigures | None = None
        self._drawings = SetupDrawings(self)
        self.request = RequestPanel(self._drawings.paint_tile, self)
        self.card = CardPanel(self._drawings.paint_joint, self._drawings.paint_wave, self)
        self.splitter = QSplitter(Qt.Orientation.Horizontal, self)
        self._request_area = SideArea(self.request, self)
        self.splitter.addWidget(self._request_area)
        self.splitter.addWidget(self.card)
        self.splitter.setStretchFactor(0, 0)
        self.splitter.setStretchFactor(1, 1)
        self.splitter.setChildrenCollapsible(False)
        self.splitter.setSizes([460, 906])
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.splitter)

    def show_waiting(self, words: str) -> None:
        """Stand greyed, with `words` where the card will be."""
        self.setEnabled(False)
        self.card.show_waiting(words)

    def join(self, presenter: SetupPresenter, engine: Engine) -> None:
        """Take input for `presenter` and show what it answers."""
        self._presenter = presenter
        self.request.set_metals(engine.metals())
        self.request.set_gases(engine.gases())
        self._connect()
        self.card.show_waiting("")
        self.setEnabled(True)

    def restore_splitter(self, state: QByteArray | None) -> None:
        """Divide the page as it was left."""
        if state is not None:
            self.splitter.restoreState(state)

    def switch_side(self) -> None:
        """Move the keyboard from the request to the card, or back."""
        focused = self.window().focusWidget()
        if focused is not None and self.card.isAncestorOf(focused):
            self.request.focus_metal()
        else:
            self.card.state.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def find_fault(self, name: str = "") -> None:
        """Ask what the bead looks like, beginning at a fault, and let the card take the change chosen."""
        presenter = self._presenter
        if presenter.card is None or presenter.is_stale:
            return
        from welds.gui.pages.faults.dialog import FaultDialog
        from welds.gui.pages.faults.finder import FaultFinder

        dialog = FaultDialog(FaultFinder(presenter, self), self.card.title, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.chosen.connect(presenter.adjust)
        dialog.show_fault(name)
        dialog.open()

    def show_large(self) -> None:
        """Show the card's main figures over the whole screen; they follow while it is open."""
        if self._face is None:
            return
        from welds.gui.pages.setup.large_figures import LargeFigures

        self._large = LargeFigures(self)
        self._large.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._large.finished.connect(self._on_large_left)
        self._follow_large()
        self._large.showFullScreen()

    def _follow_large(self) -> None:
        if self._large is not None and self._face is not None:
            ticks = self._presenter.ticks
            waiting = tuple(stop.text for stop in self._face.stops if stop.rule not in ticks)
            self._large.show_face(self._face, waiting, is_stale=self._presenter.is_stale)

    def _on_large_left(self) -> None:
        self._large = None

    def _connect(self) -> None:
        presenter, request, card = self._presenter, self.request, self.card
        request.changed.connect(presenter.set_field)
        request.dragged.connect(presenter.set_thickness_mm)
        request.reading_chosen.connect(presenter.choose_reading)
        card.ticked.connect(presenter.tick)
        card.asked_for_nearest.connect(presenter.go_to_nearest)
        card.change_taken_back.connect(presenter.take_back)
        card.fault_wanted.connect(lambda: self.find_fault())
        presenter.fields_changed.connect(request.show_fields)
        presenter.field_changed.connect(request.show_field)
        presenter.metal_changed.connect(lambda _metal: self._show_marks())
        presenter.units_changed.connect(lambda _units: self._show_marks())
        presenter.understood.connect(self._on_understood)
        presenter.card_changed.connect(self._on_card_changed)
        presenter.card_completed.connect(self._on_card_changed)
        presenter.refused.connect(self._on_refused)
        presenter.field_error.connect(self._on_field_error)
        presenter.readings_offered.connect(self._on_readings_offered)
        presenter.readiness_changed.connect(self._on_readiness_changed)

        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.connect(self._on_focus_changed)

    def _on_focus_changed(self, _old: QWidget | None, focused: QWidget | None) -> None:
        self._request_area.follow(focused)
        self.card.area.follow(focused)

    def _show_marks(self) -> None:
        self.request.slider.set_marks(self._presenter.thickness_marks())

    def _on_understood(self, understood: Understood) -> None:
        self._drawings.set_thicknesses(understood.thickness_mm, understood.other_thickness_mm)
        self.request.show_understood(understood)

    def _on_card_changed(self, face: CardFace) -> None:
        self._face = face
        self._drawings.set_units(self._presenter.units)
        self.card.show_face(face, self._presenter.ticks)

    def _on_refused(self, reason: str, nearest: Nearest | None) -> None:
        words = self.tr("Go to {nearest}").format(nearest=nearest.words) if nearest else ""
        self.card.show_refusal(reason, words)

    def _on_field_error(self, field: str, message: str) -> None:
        self.request.show_trouble(field, message.removeprefix(f"{tr(field)}: "))
        nearest = self._presenter.nearest
        words = self.tr("Use {nearest}").format(nearest=nearest.words) if nearest else ""
        self.card.show_refusal(message, words)

    def _on_readings_offered(self, field: str, readings: tuple[str, ...]) -> None:
        self.request.offer_readings(field, readings)
        self.card.show_refusal(
            self.tr("The {field} can be read in more than one way: {readings}.").format(
                field=tr(field).replace("_", " "), readings=self.tr(" or ").join(readings)
            )
        )

    def _on_readiness_changed(self, presenter: SetupPresenter) -> None:
        self.card.show_readiness(is_stale=presenter.is_stale, open_stops=presenter.open_stops)
        self._follow_large()

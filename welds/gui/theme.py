"""Light and dark colours of our own on the Fusion style, and the size of the text."""

from enum import StrEnum

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from welds.gui.colours import CONTRAST_DARK, CONTRAST_LIGHT, DARK, LIGHT, Colours
from welds.gui.stylesheet import stylesheet

BASE_TEXT_PX = 14
TEXT_SCALES = (0.9, 1.0, 1.12, 1.25, 1.4)
NORMAL_TEXT_STEP = 1


class ThemeChoice(StrEnum):
    """What the person asked for; `SYSTEM` follows the desktop where it says, `CONTRAST` in light or dark."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"
    CONTRAST = "contrast"


def palette_of(colours: Colours) -> QPalette:
    """Return the Qt palette that carries these colours to the native parts of every widget."""
    role = QPalette.ColorRole
    pairs = {
        role.Window: colours.paper,
        role.WindowText: colours.ink,
        role.Base: colours.sheet,
        role.AlternateBase: colours.raised,
        role.Text: colours.ink,
        role.PlaceholderText: colours.soft_ink,
        role.Button: colours.raised,
        role.ButtonText: colours.ink,
        role.BrightText: colours.stop,
        role.ToolTipBase: colours.sheet,
        role.ToolTipText: colours.ink,
        role.Highlight: colours.accent,
        role.HighlightedText: colours.on_accent,
        role.Link: colours.accent,
        role.LinkVisited: colours.accent,
        role.Accent: colours.accent,
        role.Light: colours.raised,
        role.Midlight: colours.line,
        role.Mid: colours.line,
        role.Dark: colours.edge,
        role.Shadow: colours.edge,
    }
    palette = QPalette()
    for name, colour in pairs.items():
        palette.setColor(name, QColor(colour))
    for name in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, name, QColor(colours.faded_ink))
    palette.setColor(QPalette.ColorGroup.Disabled, role.Highlight, QColor(colours.line))
    return palette


class Theme(QObject):
    """Puts the chosen colours and text size on the application, and follows the desktop when asked to."""

    changed = Signal(object)

    def __init__(self, application: QApplication, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._application = application
        self._choice = ThemeChoice.SYSTEM
        self._step = NORMAL_TEXT_STEP
        self._applied: tuple[Colours, int] | None = None
        if application.style().objectName().lower() != "fusion":
            application.setStyle("Fusion")
        application.styleHints().colorSchemeChanged.connect(self._on_color_scheme_changed)

    @property
    def choice(self) -> ThemeChoice:
        """What the person asked for."""
        return self._choice

    @property
    def text_step(self) -> int:
        """Which of `TEXT_SCALES` is in use."""
        return self._step

    @property
    def colours(self) -> Colours:
        """The colours in use; a desktop that does not say counts as light."""
        is_dark = QGuiApplication.styleHints().colorScheme() is Qt.ColorScheme.Dark
        if self._choice is ThemeChoice.CONTRAST:
            return CONTRAST_DARK if is_dark else CONTRAST_LIGHT
        if self._choice is ThemeChoice.SYSTEM:
            return DARK if is_dark else LIGHT
        return DARK if self._choice is ThemeChoice.DARK else LIGHT

    @staticmethod
    def choice_named(word: str) -> ThemeChoice:
        """Return the choice of that name; an unknown one counts as following the system."""
        return ThemeChoice(word) if word in set(ThemeChoice) else ThemeChoice.SYSTEM

    def choose(self, choice: ThemeChoice) -> None:
        """Use light, dark or whatever the desktop says."""
        self._choice = choice
        self.apply()

    @staticmethod
    def step_named(word: str) -> int:
        """Return the text step of that number; anything else counts as the usual size."""
        return int(word) if word.isdecimal() and int(word) < len(TEXT_SCALES) else NORMAL_TEXT_STEP

    def change_text_size(self, steps: int) -> None:
        """Go up or down a step; 0 goes back to the usual size."""
        self.set_text_step(self._step + steps if steps else NORMAL_TEXT_STEP)

    def set_text_step(self, step: int) -> None:
        """Use one of `TEXT_SCALES`; a step beyond either end stays at the end."""
        self._step = min(max(step, 0), len(TEXT_SCALES) - 1)
        self.apply()

    def apply(self) -> None:
        """Put the colours and the text size on the application, unless they are there already."""
        colours, size_px = self.colours, round(BASE_TEXT_PX * TEXT_SCALES[self._step])
        if self._applied == (colours, size_px):
            return
        self._applied = (colours, size_px)
        font = QFont(self._application.font())
        font.setPixelSize(size_px)
        self._application.setFont(font)
        self._application.setPalette(palette_of(colours))
        self._application.setStyleSheet(stylesheet(colours, size_px))
        self.changed.emit(colours)

    def _on_color_scheme_changed(self, _scheme: Qt.ColorScheme) -> None:
        if self._choice in (ThemeChoice.SYSTEM, ThemeChoice.CONTRAST):
            self.apply()

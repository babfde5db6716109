"""Every colour of the window, light and dark, by what it is for."""

from dataclasses import dataclass

from PySide6.QtGui import QPalette


@dataclass(frozen=True, slots=True)
class Colours:
    """Every colour of the window, by what it is for; texts stand on the paper named beside them.

    `paper` is the window behind everything, `sheet` the card and the inputs, `raised` what lies on a sheet.
    """

    is_dark: bool
    paper: str
    sheet: str
    raised: str
    line: str
    edge: str
    ink: str
    soft_ink: str
    faded_ink: str
    accent: str
    on_accent: str
    accent_paper: str
    stop: str
    stop_paper: str
    warn: str
    warn_paper: str
    good: str
    good_paper: str

    @staticmethod
    def of(palette: QPalette) -> "Colours":
        """Return the set that belongs to a widget's palette."""
        paper = palette.color(QPalette.ColorRole.Window)
        usual = DARK if paper.lightnessF() < 0.5 else LIGHT
        return next((each for each in ALL if each.paper == paper.name()), usual)

    def text_pairs(self) -> tuple[tuple[str, str], ...]:
        """Return every (text, paper) pair that the window sets words in."""
        papers = (self.paper, self.sheet, self.raised)
        return (
            *((ink, paper) for ink in (self.ink, self.soft_ink, self.accent) for paper in papers),
            (self.on_accent, self.accent),
            (self.ink, self.accent_paper),
            (self.stop, self.stop_paper),
            (self.ink, self.stop_paper),
            (self.stop, self.sheet),
            (self.stop, self.paper),
            (self.warn, self.warn_paper),
            (self.ink, self.warn_paper),
            (self.warn, self.sheet),
            (self.good, self.good_paper),
            (self.good, self.sheet),
            (self.sheet, self.stop),
        )


LIGHT = Colours(
    is_dark=False,
    paper="#e9ece9",
    sheet="#ffffff",
    raised="#f3f5f3",
    line="#cdd4d1",
    edge="#74807b",
    ink="#151d1b",
    soft_ink="#4a5551",
    faded_ink="#8b9491",
    accent="#0b5a70",
    on_accent="#ffffff",
    accent_paper="#dcedf2",
    stop="#a31310",
    stop_paper="#fde9e6",
    warn="#6a4500",
    warn_paper="#fff2d3",
    good="#17603a",
    good_paper="#def2e5",
)
DARK = Colours(
    is_dark=True,
    paper="#14181a",
    sheet="#1e2427",
    raised="#283034",
    line="#3a454a",
    edge="#839096",
    ink="#f0f3f3",
    soft_ink="#b7c2c5",
    faded_ink="#6f7b80",
    accent="#74cbe2",
    on_accent="#04222c",
    accent_paper="#16424f",
    stop="#ffb3a6",
    stop_paper="#4d1714",
    warn="#ffd98c",
    warn_paper="#433208",
    good="#9fe3b7",
    good_paper="#143c24",
)
CONTRAST_LIGHT = Colours(
    is_dark=False,
    paper="#ffffff",
    sheet="#fefefe",
    raised="#f7f7f7",
    line="#3c3c3c",
    edge="#000000",
    ink="#000000",
    soft_ink="#1c1c1c",
    faded_ink="#595959",
    accent="#00304f",
    on_accent="#ffffff",
    accent_paper="#d6ecff",
    stop="#7a0000",
    stop_paper="#fff3f1",
    warn="#4a2f00",
    warn_paper="#fff9e8",
    good="#003d1c",
    good_paper="#f0fff5",
)
CONTRAST_DARK = Colours(
    is_dark=True,
    paper="#000000",
    sheet="#050505",
    raised="#121212",
    line="#c9c9c9",
    edge="#ffffff",
    ink="#ffffff",
    soft_ink="#f0f0f0",
    faded_ink="#a8a8a8",
    accent="#ffe45c",
    on_accent="#000000",
    accent_paper="#3a3200",
    stop="#ffc9bf",
    stop_paper="#3d0500",
    warn="#ffe7a8",
    warn_paper="#2e2200",
    good="#b9ffd0",
    good_paper="#00260f",
)
ALL = (LIGHT, DARK, CONTRAST_LIGHT, CONTRAST_DARK)

"""The menus, the buttons beside them and their shortcuts."""

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu, QMenuBar, QToolButton, QWidget

from welds import language
from welds.gui.theme import ThemeChoice
from welds.gui.widgets.wrap_bar import WrapBar


class Actions(QObject):
    """Makes every action once; buttons in the menus' row show those for dirty hands."""

    theme_chosen = Signal(object)
    language_chosen = Signal(str)

    def __init__(self, window: QMainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.shortcuts: list[tuple[str, str]] = []
        self.print_card = self._make(self.tr("&Print…"), "Ctrl+P")
        self.save_pdf = self._make(self.tr("Save as P&DF…"), "Ctrl+S")
        self.copy_text = self._make(self.tr("&Copy as text"), "Ctrl+Shift+C")
        self.start_over = self._make(self.tr("&Start over"), "Ctrl+N")
        self.quit = self._make(self.tr("&Quit"), "Ctrl+Q")
        self.switch_units = self._make(self.tr("&Units"), "Ctrl+U")
        self.larger = self._make(self.tr("&Larger text"), "Ctrl++", "Ctrl+=")
        self.smaller = self._make(self.tr("S&maller text"), "Ctrl+-")
        self.usual = self._make(self.tr("&Usual text size"), "Ctrl+0")
        self.find = self._make(self.tr("&Go to…"), "Ctrl+K", "Ctrl+F")
        self.go_to_metal = self._make(self.tr("Go to the &metal"), "Ctrl+M")
        self.go_to_thickness = self._make(self.tr("Go to the &thickness"), "Ctrl+T")
        self.switch_side = self._make(self.tr("Between request and &card"), "F6")
        self.find_fault = self._make(self.tr("What went &wrong…"), "F7")
        self.large_figures = self._make(self.tr("Large &figures"), "F9")
        self.save_pdf.setIconText(self.tr("PDF"))
        self.copy_text.setIconText(self.tr("Copy"))
        self.larger.setIconText(self.tr("Text +"))
        self.smaller.setIconText(self.tr("Text \u2212"))
        self.show_shortcuts = self._make(self.tr("&Shortcuts"), "F1")
        self.show_guide = self._make(self.tr("&Guide"), "Shift+F1")
        self.show_method = self._make(self.tr("&How figures are made"))
        self.open_demo = self._make(self.tr("Open the &demo job"))
        self.show_about = self._make(self.tr("&About Welds"))
        self.themes = self._make_themes()
        self.languages = self._make_languages()
        self._fill_menus()
        self.bar = self._make_bar()
        self.set_card_actions(has_card=False, has_output=False)

    def commands(self) -> tuple[QAction, ...]:
        """Return what can be done from anywhere, for those who look for it by its words."""
        return (
            *(self.print_card, self.save_pdf, self.copy_text, self.find_fault, self.large_figures),
            self.start_over,
            *(self.switch_units, self.larger, self.smaller, self.usual, *self.themes.values()),
            *self.languages.values(),
            *(self.show_guide, self.open_demo, self.show_shortcuts, self.show_method, self.show_about),
            self.quit,
        )

    def set_card_actions(self, *, has_card: bool, has_output: bool) -> None:
        """Allow what needs a card, and what takes the page in front out of the window, or grey it."""
        for action in (self.find_fault, self.large_figures):
            action.setEnabled(has_card)
        for action in (self.print_card, self.save_pdf, self.copy_text):
            action.setEnabled(has_output)

    def set_page_actions(self, *, has_page: bool) -> None:
        """Allow what needs the page, or grey it while it is being made ready."""
        for action in (
            self.find, self.open_demo, self.start_over, self.switch_units,
            self.go_to_metal, self.go_to_thickness, self.switch_side,
        ):  # fmt: skip
            action.setEnabled(has_page)

    def show_pages(self, row: QWidget) -> None:
        """Put the buttons of the pages at the left of the bar, or below it where they do not fit."""
        self.bar.show_first(row)

    def show_units(self, words: str) -> None:
        """Say on the unit switch which units are in use."""
        self.switch_units.setText(self.tr("&Units: {words}").format(words=words))

    def _make(self, text: str, *keys: str) -> QAction:
        action = QAction(text, self._window)
        action.setShortcuts([QKeySequence(key) for key in keys])
        if keys:
            shown = QKeySequence(keys[0]).toString(QKeySequence.SequenceFormat.NativeText)
            words = text.replace("&", "").rstrip("…")
            self.shortcuts.append((shown, words))
            action.setToolTip(f"{words} ({shown})")
        return action

    def _make_themes(self) -> dict[ThemeChoice, QAction]:
        group = QActionGroup(self)
        words = {
            ThemeChoice.SYSTEM: self.tr("&Follow the system"),
            ThemeChoice.LIGHT: self.tr("&Light"),
            ThemeChoice.DARK: self.tr("&Dark"),
            ThemeChoice.CONTRAST: self.tr("&High contrast"),
        }
        made = {}
        for choice, text in words.items():
            action = group.addAction(QAction(text, self._window))
            action.setCheckable(True)
            action.triggered.connect(lambda _checked=False, chosen=choice: self.theme_chosen.emit(chosen))
            made[choice] = action
        return made

    def _make_languages(self) -> dict[str, QAction]:
        """Return what to choose a language by: each in its own words, and "" for the system's."""
        group = QActionGroup(self)
        made = {}
        for code, text in {"": self.tr("The &system's language"), **language.NAMES}.items():
            action = group.addAction(QAction(text, self._window))
            action.setCheckable(True)
            action.triggered.connect(lambda _checked=False, chosen=code: self.language_chosen.emit(chosen))
            made[code] = action
        return made

    def _fill_menus(self) -> None:
        self._menus = bar = QMenuBar(self._window)
        bar.setNativeMenuBar(False)
        card = bar.addMenu(self.tr("&Card"))
        card.addActions([self.print_card, self.save_pdf, self.copy_text])
        card.addSeparator()
        card.addActions([self.find_fault, self.start_over])
        card.addSeparator()
        card.addAction(self.quit)
        view = bar.addMenu(self.tr("&View"))
        view.addAction(self.switch_units)
        view.addSeparator()
        colours = QMenu(self.tr("&Colours"), view)
        colours.addActions(list(self.themes.values()))
        view.addMenu(colours)
        languages = QMenu(self.tr("L&anguage"), view)
        languages.addActions(list(self.languages.values()))
        view.addMenu(languages)
        view.addSeparator()
        view.addActions([self.larger, self.smaller, self.usual, self.large_figures])
        view.addSeparator()
        view.addActions([self.find, self.go_to_metal, self.go_to_thickness, self.switch_side])
        helped = bar.addMenu(self.tr("&Help"))
        helped.addActions([self.show_guide, self.open_demo, self.show_shortcuts, self.show_method])
        helped.addAction(self.show_about)

    def _make_bar(self) -> WrapBar:
        """Return the buttons that share the menus' row, so that the page gets the height."""
        bar = WrapBar(self._window)
        bar.setProperty("panel", "top")
        bar.line.addWidget(self._menus, 1, Qt.AlignmentFlag.AlignVCenter)
        shown = (
            self.start_over,
            self.switch_units,
            self.smaller,
            self.larger,
            self.print_card,
            self.save_pdf,
        )
        for action in (*shown, self.copy_text):
            button = QToolButton(bar)
            button.setDefaultAction(action)
            button.setAccessibleName(action.toolTip())
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            bar.line.addWidget(button)
        self._window.setMenuWidget(bar)
        return bar

"""Stand-ins for what a test cannot do: answer dialogs."""

from pathlib import Path

from welds.gui.prompts import Prompts


class FakePrompts(Prompts):
    """Answers every question from its attributes and notes what was said."""

    def __init__(self, window) -> None:
        super().__init__(window)
        self.save_path: Path | None = None
        self.open_path: Path | None = None
        self.printer = None
        self.told: list[tuple[str, str]] = []
        self.shown: list[tuple[str, str, str]] = []
        self.suggested: list[str] = []

    def ask_save_path(self, _title: str, suggested: str, _kinds: str) -> Path | None:
        self.suggested.append(suggested)
        return self.save_path

    def ask_open_path(self, _title: str, _kinds: str) -> Path | None:
        return self.open_path

    def ask_printer(self):
        return self.printer

    def tell(self, title: str, text: str) -> None:
        self.told.append((title, text))

    def show_text(self, title: str, introduction: str, text: str) -> None:
        self.shown.append((title, introduction, text))

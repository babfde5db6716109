"""What the tests of the log page share: prompts that answer, the yard's invented welds."""

from PySide6.QtCore import QEvent

from tests.gui.fakes import FakePrompts

BAIT_TANK = {
    "process": "tig",
    "metal": "5052-H32",
    "thickness_mm": 2.03,
    "joint": "outside-corner",
    "settings": {"current": 112, "polarity": "AC", "ac_frequency": 120, "cup": 7, "gas_flow": 8.5},
    "outcome": "worked-well",
    "notes": "bait tank, long corner (invented)",
    "made_at": "2026-03-03T14:05:00+01:00",
    "machine": "200 A AC/DC TIG, 230 V",
    "welder": "first bench",
}
MUDGUARD = {
    "process": "mig",
    "metal": "galvanised",
    "thickness_mm": 1.5,
    "joint": "lap",
    "settings": {"current": 95, "voltage": 17.5},
    "outcome": "failed",
    "faults": ["burn-through"],
    "notes": "trailer mudguard (invented)",
    "made_at": "2026-04-01",
}


def settle(window, qapp):
    """Let everything that was asked of the log be answered."""
    for _ in range(8):
        qapp.processEvents()
        window.log.desk.wait()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    qapp.processEvents()


class Answers(FakePrompts):
    """Answers what the log asks beyond the usual."""

    def __init__(self, window) -> None:
        super().__init__(window)
        self.open_paths = []
        self.text = None
        self.choice = None
        self.agrees = True
        self.forms = []

    def ask_open_paths(self, _title, _kinds):
        return self.open_paths

    def ask_text(self, _title, _question):
        return self.text

    def ask_choice(self, _title, _question, _choices):
        return self.choice

    def confirm(self, _title, _text, _button):
        return self.agrees

    def show_form(self, form):
        self.forms.append(form)
        super().show_form(form)

"""The made-up language, for one test."""

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QApplication

from tests.languages.pseudo import Pseudo
from welds import language
from welds.gui.translation import Words


@pytest.fixture
def pseudo_language(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the program say everything in the made-up language, with the decimal comma."""
    monkeypatch.setattr(language, "_words", Pseudo())
    monkeypatch.setattr(language, "_code", "xx")


@pytest.fixture
def speaking_window(pseudo_language: None, qapp: QApplication) -> Iterator[None]:
    """Let the window's own texts come from the made-up language, too."""
    words = Words(qapp)
    qapp.installTranslator(words)
    yield
    qapp.removeTranslator(words)

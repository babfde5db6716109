"""Every message box and file dialog of the program, behind one object that a test can stand in for."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QInputDialog,
    QLabel,
    QMessageBox,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter


class Prompts(QObject):
    """Asks and tells; nothing else in the program opens a dialog."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window

    @property
    def window(self) -> QWidget:
        """The window that dialogs belong to."""
        return self._window

    def ask_save_path(self, title: str, suggested: str, kinds: str) -> Path | None:
        """Ask where to write a file; None when the person thinks better of it."""
        chosen, _kind = QFileDialog.getSaveFileName(self._window, title, suggested, kinds)
        return Path(chosen) if chosen else None

    def ask_open_path(self, title: str, kinds: str) -> Path | None:
        """Ask which file to read; None when the person thinks better of it."""
        chosen, _kind = QFileDialog.getOpenFileName(self._window, title, "", kinds)
        return Path(chosen) if chosen else None

    def ask_open_paths(self, title: str, kinds: str) -> list[Path]:
        """Ask which files to read; none when the person thinks better of it."""
        chosen, _kind = QFileDialog.getOpenFileNames(self._window, title, "", kinds)
        return [Path(each) for each in chosen]

    def ask_text(self, title: str, question: str) -> str | None:
        """Ask for one line; None when the person thinks better of it."""
        text, is_accepted = QInputDialog.getText(self._window, title, question)
        return text.strip() if is_accepted and text.strip() else None

    def ask_choice(self, title: str, question: str, choices: Sequence[str]) -> str | None:
        """Ask for one of a list; None when the person thinks better of it."""
        chosen, is_accepted = QInputDialog.getItem(self._window, title, question, list(choices), 0, False)
        return chosen if is_accepted else None

    def confirm(self, title: str, text: str, button: str) -> bool:
        """Ask before something that is hard to take back; the words on the button say what it does."""
        box = QMessageBox(QMessageBox.Icon.Question, title, text, parent=self._window)
        accept = box.addButton(button, QMessageBox.ButtonRole.AcceptRole)
        box.addButton(QMessageBox.StandardButton.Cancel)
        box.exec()
        box.deleteLater()
        return box.clickedButton() is accept

    def show_form(self, form: QDialog) -> None:
        """Open a form over the window; what comes of it the form says itself."""
        form.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        form.open()

    def ask_printer(self) -> "QPrinter | None":
        """Ask which printer; None when the person thinks better of it."""
        from PySide6.QtPrintSupport import QPrintDialog, QPrinter

        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        dialog = QPrintDialog(printer, self._window)
        accepted = dialog.exec() == QDialog.DialogCode.Accepted
        dialog.deleteLater()
        return printer if accepted else None

    def tell(self, title: str, text: str) -> None:
        """Say something that needs no decision."""
        QMessageBox.information(self._window, title, text)

    def show_text(self, title: str, introduction: str, text: str) -> None:
        """Show a longer text that can be read with the keyboard and copied."""
        dialog = TextDialog(title, introduction, text, self._window)
        dialog.exec()
        dialog.deleteLater()


class TextDialog(QDialog):
    """A text to read and to copy."""

    def __init__(self, title: str, introduction: str, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.resize(680, 460)
        heading = QLabel(introduction, self)
        heading.setWordWrap(True)
        self.text = QPlainTextEdit(text, self)
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(title)
        heading.setBuddy(self.text)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        self.copy = buttons.addButton(self.tr("&Copy"), QDialogButtonBox.ButtonRole.ActionRole)
        self.copy.clicked.connect(self._on_copy_clicked)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(heading)
        layout.addWidget(self.text, 1)
        layout.addWidget(buttons)
        self.setWindowModality(Qt.WindowModality.ApplicationModal)

    def _on_copy_clicked(self) -> None:
        QGuiApplication.clipboard().setText(self.text.toPlainText())

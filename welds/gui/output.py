"""What a page has to offer so that the window's own Print, PDF and Copy act on it."""

from typing import Protocol


class Output(Protocol):
    """Takes what a page shows out of the window."""

    @property
    def is_ready(self) -> bool:
        """True where there is something to take out."""

    def print_card(self) -> None:
        """Put it on paper."""

    def save_pdf(self) -> None:
        """Put it into a PDF."""

    def copy_text(self) -> None:
        """Put it on the clipboard as plain text."""


class NoOutput:
    """A page that has nothing to take out of the window."""

    is_ready = False

    def print_card(self) -> None:
        """Do nothing: the command is grey."""

    save_pdf = copy_text = print_card

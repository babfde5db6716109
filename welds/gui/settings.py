"""The state of the window, and nothing else, in QSettings: size, split, colours, size of the text."""

from PySide6.QtCore import QByteArray, QSettings


class WindowState:
    """Reads what the window was like and writes what it is like; a value of the wrong kind counts as none."""

    def __init__(self, store: QSettings) -> None:
        self._store = store

    def bytes_of(self, name: str) -> QByteArray | None:
        """Return remembered bytes, or None when there are none of that name."""
        value = self._store.value(f"window/{name}")
        return value if isinstance(value, QByteArray) else None

    def word_of(self, name: str) -> str:
        """Return a remembered word, or an empty text."""
        value = self._store.value(f"window/{name}")
        return value if isinstance(value, str) else ""

    def write(self, name: str, value: QByteArray | str) -> None:
        """Remember a value under a name."""
        self._store.setValue(f"window/{name}", value)

"""A metal as a list shows it."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class MetalOption:
    """A metal in a list; `names` are what it may be called in full, `words` more to search by."""

    id: str
    text: str
    family: str
    names: tuple[str, ...]
    words: str

    @property
    def searched(self) -> str:
        """Everything a search looks at, in small letters."""
        return " ".join((*self.names, self.words)).lower()

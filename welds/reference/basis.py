"""How good a figure is: the grades every row and every setting carries."""

from collections.abc import Iterable
from enum import StrEnum

from welds.language import mark, tr


class Basis(StrEnum):
    """Grades, best first."""

    PRINTED = "printed"
    QUOTED = "quoted"
    DERIVED = "derived"
    PRACTICE = "practice"
    RECALLED = "recalled"

    @property
    def rank(self) -> int:
        """0 for the best grade."""
        return _ORDER[self]

    @property
    def meaning(self) -> str:
        """One line for the person reading the card, in the language in use."""
        return tr(_MEANINGS[self])

    @property
    def word(self) -> str:
        """The grade as a person reads it."""
        return tr(_WORDS[self])

    @property
    def is_published(self) -> bool:
        """True where a document stands behind the figure."""
        return self.rank <= _ORDER[Basis.DERIVED]


class GradedCells:
    """A row whose cells may carry grades of their own: for classes with `basis` and `cell_bases`."""

    __slots__ = ()
    basis: Basis
    cell_bases: tuple[tuple[str, Basis], ...]

    def basis_of(self, column: str) -> Basis:
        """Return the grade of one cell: its own where the row states one, else the row's."""
        return dict(self.cell_bases).get(column, self.basis)


_ORDER = {grade: rank for rank, grade in enumerate(Basis)}
_WORDS = {
    Basis.PRINTED: mark("printed"),
    Basis.QUOTED: mark("quoted"),
    Basis.DERIVED: mark("derived"),
    Basis.PRACTICE: mark("practice"),
    Basis.RECALLED: mark("recalled"),
}
_MEANINGS = {
    Basis.PRINTED: mark("read in the document itself"),
    Basis.QUOTED: mark("read in another document that cites it"),
    Basis.DERIVED: mark("worked out from published figures"),
    Basis.PRACTICE: mark("common practice, no published source"),
    Basis.RECALLED: mark("from memory, not checked against print"),
}


def weakest(grades: Iterable[Basis]) -> Basis:
    """Return the lowest grade present: a figure is as good as the worst part it rests on."""
    return max(grades, key=lambda grade: grade.rank)

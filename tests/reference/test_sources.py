"""The list of documents."""

import pytest

from welds.reference.check import check_folder
from welds.reference.load import load_tables

from .conftest import SOURCES


def test_a_source_tells_what_it_is(folder):
    source = load_tables(root=folder.root).sources["BOOK"]
    assert (source.id, source.citation, source.status) == ("BOOK", "A book made up for the test", "textbook")
    assert source.caution == ""


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (
            SOURCES.replace("status: textbook", "state: textbook"),
            "row 1: source BOOK: 'status' is missing or empty",
        ),
        (SOURCES + "  state: textbook\n", "row 1: source BOOK: unknown entry 'state'; nearest: status"),
        (SOURCES + "  year: [1993]\n", "row 1: source BOOK: 'year' must be one text"),
        (SOURCES + SOURCES, "row 5: key 'BOOK' comes twice (first on line 1)"),
    ],
)
def test_a_broken_source_is_refused(folder, text, expected):
    folder.write("sources.yaml", text)
    assert any(fault == f"data/sources.yaml, {expected}" for fault in check_folder(folder.root))

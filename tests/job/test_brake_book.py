"""The K of a brake is kept in the person's own file, newest for each sheet."""

import pytest

from welds.errors import FileUnavailableError, InputError
from welds.job.brake_book import BrakeK, book_file, k_of_brake, keep, read_book


def test_kept_replaced_and_found_again():
    path = book_file()
    assert read_book(path) == ()
    keep(path, BrakeK("hand", "5052-H32", 2.0, 3.0, 0.41))
    keep(path, BrakeK("hand", "5052-H32", 2.03, 3.0, 0.43))
    keep(path, BrakeK("hand", "304", 1.5, 3.0, 0.39))
    assert [each.k for each in read_book(path)] == [0.43, 0.39]
    assert k_of_brake(path, "hand", "5052-H32", 2.0).k == 0.43


def test_what_was_not_tried_is_refused_with_what_was():
    path = book_file()
    keep(path, BrakeK("hand", "304", 1.5, 3.0, 0.39))
    with pytest.raises(InputError, match=r"304 1\.5 mm; or bend a test strip"):
        k_of_brake(path, "hand", "304", 3.0)
    with pytest.raises(InputError, match="nearest: hand"):
        k_of_brake(path, "hnad", "304", 1.5)


@pytest.mark.parametrize("text", ["bends: 3\n", "bends: [3]\n", "bends: [{brake: a}]\n", "bends: [\n", "\0"])
def test_a_spoilt_file_is_named(text: str):
    path = book_file()
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")
    with pytest.raises(FileUnavailableError):
        read_book(path)

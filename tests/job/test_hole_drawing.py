"""Holes drawn over a picture, and the one value they change in a job file."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.errors import FileUnavailableError, InputError, ReferenceDataError
from welds.job.damage import read_holes
from welds.job.hole_drawing import DrawnHole, HoleDrawing, Scale, drawing_yaml, holes_text, read_drawing
from welds.job.job_edit import with_holes, write_job
from welds.quantities.units import Units

SCALE = Scale((10.0, 20.0), (310.0, 420.0), 100.0)
JOB = """job: x  # a week's work
repairs:
  - id: left     # the worse one
    holes: 4 mm x 2   # counted
    region: 50 x 50
  - {id: right, holes: "3 mm x 5, 4 mm x 1", region: 60 x 60}
"""


def test_scale_by_pythagoras_and_the_room_the_holes_take():
    """300 by 400 pixels are 500; over 100 mm that is 5 a millimetre."""
    assert SCALE.px_per_mm == 5.0
    drawing = HoleDrawing("a.png", SCALE, (DrawnHole((100.0, 100.0), 6.0), DrawnHole((300.0, 150.0), 4.0)))
    assert drawing.size_mm == pytest.approx((40.0 + 3.0 + 2.0, 10.0 + 3.0 + 2.0))


@given(st.lists(st.sampled_from([3.0, 4.5, 6.35, 8.0]), min_size=1, max_size=60))
def test_the_words_are_read_back_as_the_same_holes(sizes):
    text = holes_text(tuple(DrawnHole((0.0, 0.0), size) for size in sizes))
    read = [holes.diameter_mm for holes in read_holes(text, Units.INCH) for _ in range(holes.count)]
    assert sorted(read) == pytest.approx(sorted(sizes))


def test_a_drawing_comes_back_from_its_file(tmp_path: Path):
    drawing = HoleDrawing('left "worse".png', SCALE, (DrawnHole((12.5, 80.0), 6.35),))
    path = tmp_path / "left-holes.yaml"
    path.write_text(drawing_yaml(drawing), encoding="utf-8")
    assert read_drawing(path) == drawing


@pytest.mark.parametrize(
    "text",
    [
        "picture: a.png\n",
        "picture: a.png\nscale: {from: [1, 2], to: [1, 2], length_mm: 5}\nholes: []\n",
        "picture: a.png\nscale: {from: [1, 2], to: [3, nan], length_mm: 5}\nholes: []\n",
        "picture: a.png\nscale: {from: [1, 2], to: [3, 4], length_mm: 0}\nholes: []\n",
        "picture: a.png\nscale: {from: [1, 2], to: [3, 4], length_mm: 5}\nholes: [{at: [1]}]\n",
        "picture: a.png\nscale: {from: [1, 2], to: [3, 4], length_mm: 5}\nholes: [6 mm]\n",
        "[\n",
    ],
)
def test_a_drawing_that_cannot_be_meant_is_refused(tmp_path: Path, text: str):
    path = tmp_path / "torn.yaml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises((InputError, ReferenceDataError)):
        read_drawing(path)


@pytest.mark.parametrize(("end", "mark"), [("\n", ""), ("\r\n", "\ufeff")])
def test_only_the_holes_of_one_repair_change(tmp_path: Path, end: str, mark: str):
    """Also as Windows writes a file, with its line ends and its mark at the beginning."""
    text = mark + JOB.replace("\n", end)
    path = tmp_path / "job.yaml"
    path.write_bytes(text.encode())
    write_job(path, lambda old: with_holes(old, "left", "6 mm x 14"))
    assert path.read_bytes() == text.replace("4 mm x 2 ", "6 mm x 14 ").encode()
    new = with_holes(text, "right", "8 mm x 1, 6 mm x 2")
    assert new == text.replace("3 mm x 5, 4 mm x 1", "8 mm x 1, 6 mm x 2")


def test_what_cannot_be_changed_is_named(tmp_path: Path):
    with pytest.raises(InputError, match="middle"):
        with_holes(JOB, "middle", "6 mm x 1")
    with pytest.raises(InputError, match="welds job check"):
        with_holes("repairs: [", "left", "6 mm x 1")
    with pytest.raises(FileUnavailableError):
        write_job(tmp_path / "nowhere.yaml", lambda text: text)

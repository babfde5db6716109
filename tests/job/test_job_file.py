"""Every fault of a job file is found, with its line and field; the demo has none."""

from pathlib import Path

import pytest

from welds.errors import FileUnavailableError
from welds.job.demo import demo_file
from welds.job.faults import JobFileError
from welds.job.job_file import load_job, read_job


def faults(job_file, tables, text: str, **options: str) -> list[tuple[int | None, str]]:
    _, found = read_job(job_file(text, **options), tables)
    return [(each.line, each.problem) for each in found]


def test_the_demo_is_sound_and_says_it_is_invented(tables):
    _, found = read_job(demo_file(), tables)
    assert found == []
    assert "Invented" in demo_file().read_text(encoding="utf-8").splitlines()[0]


def test_defaults_stock_and_bare_numbers(job_of):
    job = job_of("""
stock: [{id: plate, size: 1000 x 500}]
pieces: [{id: side, stock: plate, legs: [20, 100], angles: [90], radius: 3, width: 80, count: 2}]
joints: [{id: seam, pieces: [side], joint: butt, length: 100, closed: yes}]
""")
    piece, joint = job.pieces[0], job.joints[0]
    assert (piece.metal.id, piece.metal.temper, piece.thickness_mm, piece.count) == ("5052", "H32", 2.0, 2)
    assert piece.part is not None
    assert piece.part.legs_mm == (20.0, 100.0)
    assert (joint.request.process, joint.length_mm, joint.is_closed) == ("tig", 100.0, True)


@pytest.mark.parametrize(
    ("text", "line", "problem"),
    [
        ("joint: []", 4, "joint: unknown field"),
        ("joints: [{id: a, joint: but, length: 10}]", 4, "nearest: butt"),
        ("joints: [{id: a, joint: butt}]", 4, "length is missing"),
        ("joints: [{id: A b, joint: butt, length: 10}]", 4, "small letters"),
        ("joints: [{id: a, joint: butt, length: 10, count: 0}]", 4, "whole number from 1"),
        ("joints: [{id: a, joint: butt, length: 10, done: perhaps}]", 4, "yes, no"),
        ("joints: [{id: a, joint: butt, length: 10, after: [b]}]", 4, "b is no task"),
        ("joints: [{id: a, joint: butt, length: 10, after: [a]}]", 4, "a names itself"),
        ("joints: [{id: a, joint: butt, length: 10, pieces: [z]}]", 4, "z is no piece"),
        ("joints:\n  - id: a\n    joint: butt\n    length: long", 7, "joints.a.length"),
        ("steps: [{id: a}, {id: a}]", 4, "comes twice"),
        ("pieces: [{id: a}]", 4, "either size (flat) or legs"),
        ("pieces: [{id: a, size: 10 x 10, stock: zz}]", 4, "zz is not in stock"),
        ("pieces: [{id: a, size: 10}]", 4, "two lengths with an x"),
        ("pieces: [{id: a, legs: [10, 20], angles: [90], radius: 2}]", 4, "width is missing"),
        ("pieces: [{id: a, legs: [10, 20], angles: [90, 90], radius: 2, width: 5}]", 4, "one leg more"),
        ("repairs: [{id: a, holes: 3 mm, region: 90 x 90}]", 4, "diameter and number"),
        ("repairs: [{id: a, region: 90 x 90}]", 4, "holes is missing"),
        ("prices: {filler_kg: {ER5357: 3}}", 4, "nearest: ER535"),
        ("prices: {disc: cheap}", 4, "a number such as"),
        ("steps: nothing", 4, "expected a list"),
        ("steps: [one]", 4, "expected 'name: value'"),
    ],
)
def test_fault_has_its_line_and_field(job_file, tables, text: str, line: int, problem: str):
    found = faults(job_file, tables, text)
    assert any(each[0] == line and problem in each[1] for each in found), found


def test_all_faults_are_found_at_once(job_file, tables):
    path = job_file("joints: [{id: a, joint: but, length: 10}]\nsteps: [{id: b, afte: [a]}]\n")
    with pytest.raises(JobFileError, match=r"line 4: .*and 1 more") as caught:
        load_job(path, tables)
    assert [each.line for each in caught.value.others] == [5]


def test_what_is_not_yaml_and_what_is_not_there(job_file, tables, tmp_path: Path):
    assert "not readable as YAML" in faults(job_file, tables, "joints: [", head="")[0][1]
    with pytest.raises(FileUnavailableError):
        load_job(tmp_path / "nothing.yaml", tables)

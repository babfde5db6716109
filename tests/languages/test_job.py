"""Jobs in the made-up language: all they say is said through `tr`, all they write stays as it was."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.languages.pseudo import left_over
from welds import language
from welds.errors import WeldsError
from welds.job import job_edit
from welds.job.blank_drawing import draw_blank
from welds.job.brake_book import BrakeK, k_of_brake, keep
from welds.job.calibration import read_test_bend
from welds.job.demo import demo_file
from welds.job.hole_drawing import DrawnHole, HoleDrawing, Scale, drawing_yaml, read_drawing
from welds.job.job import Job
from welds.job.job_file import load_job, read_job
from welds.job.job_form import CHOICE_WORDS, FORMS, KINDS, TO_ADD
from welds.job.lengths import read_size
from welds.job.order_drawing import draw_order
from welds.job.plan import JobPlan, plan_job
from welds.job.repair_drawing import draw_repair
from welds.job.sheet_drawing import draw_sheet
from welds.job.tack_drawing import draw_tacks
from welds.quantities.units import Units
from welds.reference.load import load_tables

DRAWING = HoleDrawing("a.jpg", Scale((0.0, 0.5), (100.0, 0.5), 62.5), (DrawnHole((3.3, 4.0), 2.5),))
FAULTY = """\
job: x
units: metric
defaults: {metal: 5052-H32, thickness: 2 mm, process: tig, colour: 1}
stock:
  - {id: sheet-a, size: 20}
pieces:
  - {id: aa, stock: sheet-b, size: 10 x 10, legs: "25, 5", angles: 90, radius: 1}
  - {id: bb, legs: "25, 25", angles: 190, radius: "1, 2", count: 0}
  - {id: cc, legs: "25, 25", angles: 90, radius: "1, 2", width: 10}
  - {id: dd, legs: "25, 2, 3", angles: 90, radius: 1, width: 10, k: x, brake: y}
  - {id: Ee}
  - loose
joints:
  - {id: ff, joint: butt, after: [gg, ff], pieces: [hh], closed: perhaps}
repairs:
  - {id: ii, holes: many, region: 10 x 10}
  - {id: jj, holes: 40 mm x 2, region: 10 x 10}
  - {id: jj, holes: 4 mm x 2, region: 10 x 10, measured: 9 mm}
steps: none
prices: {filler_kg: 3, disc: cheap}
"""
KEYS = """field sheet colour metal thickness size stock legs angles radius count width brake joint after
pieces closed holes region measured steps prices filler disc kg defaults many perhaps cheap gg ff hh mm deg
such as front panel yes no id test bend flat one angle"""


@pytest.fixture
def spoken(pseudo_language, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> JobPlan:
    """Return the plan of the demo with one drawing of holes, made in the made-up language."""
    monkeypatch.setattr("welds.job.plan.book_file", lambda: tmp_path / "brakes.yaml")
    job = load_job(demo_file(), load_tables())
    return plan_job(job, load_tables())


def said_of(plan: JobPlan) -> Iterator[str]:
    yield from plan.problems
    yield from (need.why for turn in plan.turns for need in turn.needs)
    yield from (turn.name for turn in plan.turns if turn.task is None)
    for blank in plan.blanks.values():
        yield from blank.notes
        yield from (method.method for method in blank.methods)
        yield from (k.method for k in blank.ks)
    for tacks in plan.tacks.values():
        yield tacks.pull
    for repair in plan.repairs.values():
        yield from (reason.text for reason in repair.reasons)
        yield from repair.checks
    yield from plan.materials.troubles
    yield from plan.materials.unpriced
    yield from (line.what for line in plan.materials.costs)


def drawn_of(plan: JobPlan) -> Iterator[str]:
    drawings = [draw_order(plan.turns)]
    drawings += (draw_sheet(sheet) for sheet in plan.sheets)
    drawings += (draw_tacks("", tacks) for tacks in plan.tacks.values())
    drawings += (
        draw_blank("", answer.blank, answer.width_mm, lambda mm: f"{mm:.0f}")
        for answer in plan.blanks.values()
    )
    for repair in plan.repairs.values():
        for drawing in (None, DRAWING):
            drawings.append(draw_repair("", repair, drawing, None, 10.0, lambda mm: f"{mm:.0f}"))
    return (words.text for drawing in drawings for words in drawing.words)


def names_in(job: Job) -> list[str]:
    """Return what the person called things."""
    named = [word for task in job.tasks for word in (task.id, task.name)]
    return re.findall("[A-Za-z]+", " ".join([*named, *(each.id for each in job.stock)]))


def test_nothing_of_a_plan_is_left_in_english(spoken: JobPlan):
    allowed = [*names_in(spoken.job), "DIN", "MPa", "degC", "kJ", "min", "ER", "fit", "dry"]
    texts = [*said_of(spoken), *drawn_of(spoken)]
    assert len(texts) > 100
    assert {text: left for text in texts if (left := left_over(text, allowed))} == {}


def test_figures_in_what_a_plan_says_have_the_decimal_comma(spoken: JobPlan):
    pointed = re.compile(r"\d\.\d")
    assert [text for text in said_of(spoken) if pointed.search(text) and "mm (" not in text] == []


def test_every_fault_of_a_job_file_is_said_in_the_language(pseudo_language, tmp_path: Path):
    file = tmp_path / "a.yaml"
    file.write_text(FAULTY, encoding="utf-8")
    job, faults = read_job(file, load_tables())
    assert job is not None
    assert len(faults) > 20
    allowed = [*KEYS.split(), *re.findall("[A-Za-z]+", " ".join(text for text in _fields()))]
    said = [fault.problem for fault in faults]
    assert {text: left for text in said if (left := left_over(text, allowed))} == {}


def _fields() -> Iterator[str]:
    for fields in FORMS.values():
        yield from (field.name for field in fields)
    yield from ("currency filler_kg gas_m3 disc power_kwh labour_h", "stock pieces joints repairs steps")


@pytest.mark.parametrize(
    "act",
    [
        lambda folder: read_test_bend("flat=100 mm", Units.METRIC),
        lambda folder: read_test_bend("flat=10 mm; legs=52 x 51 mm; radius=2 mm", Units.METRIC).k(2.0),
        lambda folder: read_size("12", "size", Units.METRIC),
        lambda folder: k_of_brake(folder / "none.yaml", "yard", "5052", 2.0),
        lambda folder: job_edit.with_holes("job: x\n", "left", "1 mm x 2"),
        lambda folder: job_edit.without_entry("job: x\n", "steps", "left"),
        lambda folder: load_job(folder / "none.yaml", load_tables()),
        lambda folder: read_drawing(_written(folder / "x-holes.yaml", "scale: 1\n")),
    ],
)
def test_what_cannot_be_done_is_said_in_the_language(pseudo_language, tmp_path: Path, act):
    with pytest.raises(WeldsError) as raised:
        act(tmp_path)
    allowed = [*KEYS.split(), "none", "yaml", "size", "yard", "left", "repair", "brake", "x", "holes"]
    said = str(raised.value).replace(str(tmp_path), "").replace("flat=100 mm; legs=52 x 51.5 mm", "")
    assert left_over(said, allowed) == []


def test_every_label_and_choice_of_the_forms_can_be_said(pseudo_language):
    fields = [field for form in FORMS.values() for field in form]
    labels = [*(field.label for field in fields), *KINDS.values(), *TO_ADD.values()]
    assert [text for text in labels if left_over(language.tr(text))] == []
    assert {choice for field in fields for choice in field.choices} <= set(CHOICE_WORDS)
    assert all(words == str(choice).replace("-", " ") for choice, words in CHOICE_WORDS.items())


def test_what_is_written_is_the_same_in_every_language(tmp_path: Path, request: pytest.FixtureRequest):
    found = BrakeK("yard", "5052-H32", 1.5, 2.25, 0.4375)

    def written(name: str) -> tuple[str, ...]:
        book = tmp_path / f"{name}.yaml"
        keep(book, found)
        text = job_edit.new_job("boat", "metric", {"thickness": "1.5 mm", "process": "tig"})
        text = job_edit.with_entry(text, "steps", "paint", {"name": "paint it", "can_wait": "yes"})
        text = job_edit.with_entry(text, "repairs", "left", {"holes": "4.5 mm x 2", "region": "90 x 60 mm"})
        return text, drawing_yaml(DRAWING), book.read_text(encoding="utf-8")

    english = written("english")
    request.getfixturevalue("pseudo_language")
    assert written("other") == english
    assert "4.5 mm x 2" in english[0]
    assert read_drawing(_written(tmp_path / "x-holes.yaml", english[1])) == DRAWING


def _written(path: Path, text: str) -> Path:
    path.write_text(text, encoding="utf-8")
    return path

"""`welds job`: check, plan, materials, demo."""

from datetime import date
from pathlib import Path

import pytest

from tests.logbook.conftest import BAIT_TANK
from welds.job.plan import JobPlan
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.logbook.places import place_of


@pytest.fixture
def demo(welds, tmp_path: Path) -> str:
    path = tmp_path / "demo.yaml"
    assert welds("job", "demo", str(path)).code == 0
    return str(path)


def test_the_demo_checks_out_and_is_not_overwritten(welds, demo: str):
    assert welds("job", "check", demo).out == "no faults found\n"
    assert welds("job", "demo", demo).code == 2


def test_check_lists_every_fault(welds, tmp_path: Path):
    path = tmp_path / "bad.yaml"
    path.write_text("job: x\nsteps: [{id: a, afte: [b]}]\nstok: []\n", encoding="utf-8")
    result = welds("job", "check", str(path))
    assert result.code == 2
    assert "line 2: steps.a.afte: unknown field" in result.out
    assert "line 3: stok: unknown field" in result.out
    assert welds("job", "check", str(path), "--json").json["faults"][1]["line"] == 3
    assert "and 1 more" in welds("job", "plan", str(path)).complaint


def test_a_circle_is_one_line(welds, tmp_path: Path):
    path = tmp_path / "circle.yaml"
    path.write_text("job: x\nsteps: [{id: a, after: [b]}, {id: b, after: [a]}]\n", encoding="utf-8")
    for action in ("check", "plan"):
        result = welds("job", action, str(path))
        assert result.code == 2
        assert "a before b before a" in result.complaint or "b before a before b" in result.complaint


def test_plan_in_every_form(welds, demo: str, lent, tmp_path: Path):
    text = welds("job", "plan", demo).out
    assert text.index("TAKE CARE") < text.index("ORDER") < text.index("CUT LIST") < text.index("MATERIALS")
    plan = welds("job", "plan", demo, "--json").json
    assert plan["schema"] == "welds.job/1"
    assert plan["cards"][0]["card"]["schema"] == "welds.card/1"
    assert [turn["id"] for turn in plan["order"]].index("wiring-tray-seam") < [
        turn["id"] for turn in plan["order"]
    ].index("console-corners")
    html = tmp_path / "plan.html"
    assert welds("job", "plan", demo, "--html", str(html), "--pdf", str(tmp_path / "p.pdf")).code == 0
    assert "<p class='title'>Console box" in html.read_text(encoding="utf-8")
    assert isinstance(lent.pdfs[0][1], JobPlan)


def test_materials_alone(welds, demo: str):
    materials = welds("job", "materials", demo, "--json").json
    assert {each["filler"] for each in materials["fillers"]} >= {"ER5356", "ER70S-6", "ER308L"}
    assert all(
        each["mass"]["low"] <= each["mass"]["start"] <= each["mass"]["high"] for each in materials["fillers"]
    )
    assert welds("job", "materials", demo, "--csv").out.startswith("what,usual,range,shelf\n")
    assert "MATERIALS" in welds("job", "materials", demo).out


@pytest.mark.parametrize(
    ("words", "code", "complaint"),
    [
        ((), 2, "check, plan, materials, demo"),
        (("plann",), 2, "nearest: plan"),
        (("plan",), 2, "welds job demo"),
        (("plan", "nowhere.yaml"), 4, "is not there"),
    ],
)
def test_what_cannot_be_used_is_refused_in_one_line(welds, words: tuple[str, ...], code: int, complaint: str):
    result = welds("job", *words)
    assert result.code == code
    assert complaint in result.complaint


def test_a_job_with_nothing_in_it_still_answers(welds, tmp_path: Path):
    path = tmp_path / "empty.yaml"
    path.write_text("job: nothing yet\n", encoding="utf-8")
    assert welds("job", "plan", str(path)).code == 0
    assert welds("job", "materials", str(path), "--json").json["seam_m"] == 0.0


@pytest.mark.parametrize("is_named", [True, False])
def test_the_log_moves_the_cards_and_tells_what_became_of_its_welds(
    welds, tables, tmp_path: Path, is_named: bool
):
    """The person's own log is read where it is there, another one where it is named."""
    named = str(tmp_path / "other.db") if is_named else None
    path = tmp_path / "job.yaml"
    sheet = "process: tig, metal: 5052-H32, thickness: 2.03 mm, joint: outside-corner, length: 90 mm"
    path.write_text(f"job: x\njoints: [{{id: a, {sheet}, log: [1]}}]\n", encoding="utf-8")
    bare = welds("job", "plan", str(path), "--json").json
    with open_logbook(place_of(named)) as log:
        log.add(read_entry(BAIT_TANK | {"made_at": date.today().isoformat()}, tables))
    words = ("--log", named) if named else ()
    plan = welds("job", "plan", str(path), "--json", *words).json
    assert bare["logged"] == {}
    assert "learned" not in bare["cards"][0]["card"]
    assert plan["cards"][0]["card"]["learned"]["welds"] == 1
    assert plan["logged"]["1"]["current_a"] == 112.0
    assert "log 1: 112 A, worked well" in welds("job", "plan", str(path), *words).out


def test_a_named_log_that_cannot_be_read_is_one_line(welds, demo: str, tmp_path: Path):
    torn = tmp_path / "torn.db"
    torn.write_bytes(b"no database at all" * 100)
    result = welds("job", "plan", demo, "--log", str(torn))
    assert result.code != 0
    assert "torn.db" in result.complaint

"""`welds job`: check, plan, materials, demo."""

from pathlib import Path

import pytest

from welds.job.plan import JobPlan


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

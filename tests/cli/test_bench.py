"""`welds bench`, and the own bench behind card, chart and batch."""

import pytest

from welds.bench.keep import bench_file

TEE = ("card", "--process", "tig", "--metal", "5052", "--thickness", "2 mm", "--joint", "tee")


def test_init_show_check(welds) -> None:
    assert "welds bench init" in welds("bench", "show").out
    assert str(bench_file()) in welds("bench", "init").out
    assert bench_file().read_text(encoding="utf-8").count("# ") > 30
    assert "no mistakes" in welds("bench", "check").out
    shown = welds("bench", "show").out
    for words in ("200 A AC/DC TIG, 230 V  (in use)", "2.5 minutes in ten at 200 A", "from memory"):
        assert words in shown
    answer = welds("bench", "show", "--json").json
    assert answer["in_use"] == "200 A AC/DC TIG, 230 V"
    assert answer["machines"][0]["current_max_a"] == 200


def test_init_leaves_an_existing_file_alone(welds) -> None:
    welds("bench", "init")
    before = bench_file().read_text(encoding="utf-8")
    again = welds("bench", "init", "--template", "140 A MIG, 120 V")
    assert again.code == 2
    assert "left as it is" in again.complaint
    assert bench_file().read_text(encoding="utf-8") == before


def test_init_from_a_template_into_a_named_file(welds, tmp_path) -> None:
    file = tmp_path / "van.yaml"
    answer = welds("bench", "init", "--template", "140 a mig, 120 v", "--bench", str(file), "--json").json
    assert answer == {"file": str(file), "machines": ["140 A MIG, 120 V"]}
    assert welds("bench", "check", "--bench", str(file)).code == 0
    wrong = welds("bench", "init", "--template", "140 A MIG", "--bench", str(tmp_path / "x.yaml"))
    assert wrong.code == 2
    assert "nearest: 140 A MIG, 120 V" in wrong.complaint


@pytest.mark.parametrize(
    ("words", "nearest"), [((), None), (("shw",), "show"), (("show", "--template", "x"), None)]
)
def test_wrong_words(welds, words, nearest) -> None:
    result = welds("bench", *words)
    assert result.code == 2
    assert (f"nearest: {nearest}" in result.complaint) == bool(nearest)


def test_the_own_bench_limits_every_command(welds, monkeypatch) -> None:
    free = welds(*TEE, "--json").json
    welds("bench", "init")
    text = bench_file().read_text(encoding="utf-8")
    bench_file().write_text(text.replace("current_max_a: 200", "current_max_a: 80"), encoding="utf-8")
    own = welds(*TEE, "--json").json
    assert free["machine"] == "any machine"
    assert own["machine"] == "200 A AC/DC TIG, 230 V"
    assert own["settings"]["current"]["high"] <= 80 < free["settings"]["current"]["high"]
    chart = welds("chart", *TEE[1:], "--csv").out.splitlines()[1].split(",")
    assert chart[:2] == ["2", "tee"]
    assert max(float(amps) for amps in chart[2:5]) <= 80
    line = b'{"process": "tig", "metal": "5052", "thickness_mm": 2, "joint": "tee"}'
    assert welds("card", "--batch", stdin=line).json["machine"] == own["machine"]


def test_a_mistake_by_hand_is_said_and_the_last_good_bench_stays(welds) -> None:
    welds("bench", "init")
    text = bench_file().read_text(encoding="utf-8")
    bench_file().write_text(text.replace("has_pedal: yes", "has_pedal: perhaps"), encoding="utf-8")
    result = welds(*TEE, "--json")
    assert result.code == 0
    assert "last good bench" in result.complaint
    assert "machines.has_pedal" in result.complaint
    first = result.json["checks"][0]
    assert (first["name"], first["ok"]) == ("bench file", False)
    assert result.json["machine"] == "200 A AC/DC TIG, 230 V"
    assert welds("bench", "show").complaint == result.complaint
    check = welds("bench", "check", "--json")
    assert check.code == 4
    assert check.json["faults"][0]["line"] > 1
    assert welds("bench", "check").err.startswith(str(bench_file()))

"""`welds card --log`: what the log says moves the card, and a log that was named must be there."""

import json

ASKED = ["card", "--process", "tig", "--metal", "5052", "--thickness", "2 mm", "--joint", "butt", "--json"]
WELD = '{"process": "tig", "metal": "5052", "thickness_mm": 2, "joint": "butt", "outcome": "worked-well",'


def current(result) -> float:
    assert result.code == 0, result.complaint
    return json.loads(result.out)["settings"]["current"]["start"]


def test_welds_that_ran_hotter_raise_the_current(welds, tmp_path) -> None:
    log = str(tmp_path / "yard.sqlite")
    table = current(welds(*ASKED))
    for amps in (100, 101, 99, 100):
        entry = f'{WELD} "settings": {{"current": {amps}}}}}'
        assert welds("log", "add", "--log", log, stdin=entry.encode()).code == 0
    assert current(welds(*ASKED, "--log", log)) > table
    line = '{"process": "tig", "metal": "5052", "thickness_mm": 2, "joint": "butt"}'
    batch = welds("card", "--batch", "--log", log, stdin=line.encode())
    assert json.loads(batch.out)["settings"]["current"]["start"] > table


def test_a_named_log_that_is_not_there_is_not_made(welds, tmp_path) -> None:
    result = welds(*ASKED, "--log", str(tmp_path / "yard.sqlite"))
    assert result.code == 4
    assert "no log here yet" in result.complaint
    assert list(tmp_path.iterdir()) == []


def test_a_named_log_that_is_no_log_is_refused(welds, tmp_path) -> None:
    wrong = tmp_path / "notes.txt"
    wrong.write_text("not a log, only a list of things to buy")
    result = welds(*ASKED, "--log", str(wrong))
    assert result.code == 4
    assert "notes.txt" in result.complaint

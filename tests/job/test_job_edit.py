"""A job file changed entry by entry: the rest stays as it was written, and what was meant is what is read."""

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from welds.errors import FileUnavailableError, InputError
from welds.job.demo import demo_file
from welds.job.job_edit import SECTIONS, entries_in, new_job, with_entry, without_entry, write_job
from welds.job.job_file import load_job, read_job
from welds.job.plan import plan_job

DEMO = demo_file().read_text(encoding="utf-8")
ENTRIES = [(section, key) for section in SECTIONS for key in entries_in(DEMO)[section]]


def lines_that_differ(old: str, new: str) -> tuple[list[str], list[str]]:
    before, after = old.splitlines(), new.splitlines()
    return [line for line in before if line not in after], [line for line in after if line not in before]


def test_one_value_changes_and_its_comment_stays():
    fields = entries_in(DEMO)["joints"]["wiring-tray-seam"] | {"length": "75"}
    gone, come = lines_that_differ(DEMO, with_entry(DEMO, "joints", "wiring-tray-seam", fields))
    assert (gone, come) == (["    length: 60"], ["    length: 75"])


@pytest.mark.parametrize("key", ["console-back", "console-front"])  # in brackets, and line by line
def test_a_field_comes_and_goes_again(key):
    fields = entries_in(DEMO)["pieces"][key]
    done = with_entry(DEMO, "pieces", key, fields | {"done": "yes"})
    assert entries_in(done)["pieces"][key]["done"] == "yes"
    assert len(lines_that_differ(DEMO, done)[1]) == 1
    assert with_entry(done, "pieces", key, fields) == DEMO


@settings(max_examples=15)
@given(st.data())
def test_any_words_in_any_field_are_read_back(data):
    section, key = data.draw(st.sampled_from(ENTRIES))
    words = st.text(st.characters(codec="utf-8", exclude_categories=("C", "Z"))).map(str.strip)
    fields = entries_in(DEMO)[section][key]
    name = data.draw(st.sampled_from([*(each for each in fields if each != "id"), "about"]))
    value = data.draw(words.filter(lambda text: "," not in text))
    new = with_entry(DEMO, section, key, fields | {name: value})
    assert entries_in(new)[section][key].get(name, "") == value
    changed, before = entries_in(new), entries_in(DEMO)
    del changed[section][key], before[section][key]
    assert changed == before


@settings(max_examples=8, phases=[Phase.generate])
@given(st.lists(st.sampled_from(ENTRIES), unique=True, min_size=1, max_size=5))
def test_entries_taken_out_and_put_back_say_the_same(chosen):
    text = DEMO
    for section, key in chosen:
        text = without_entry(text, section, key)
    assert sum(map(len, entries_in(text).values())) == len(ENTRIES) - len(chosen)
    for section, key in chosen:
        text = with_entry(text, section, key, entries_in(DEMO)[section][key])
    assert entries_in(text) == entries_in(DEMO)


def test_a_job_is_made_from_nothing(tables, tmp_path):
    text = new_job(
        "Rod rack: the second", "metric", {"metal": "5052-H32", "thickness": "2 mm", "process": "tig"}
    )
    text = with_entry(text, "pieces", "rail", {"size": "600 x 40 mm", "count": "2"})
    text = with_entry(text, "joints", "feet", {"pieces": "rail", "joint": "tee", "length": "40 mm"})
    text = with_entry(text, "repairs", "old-holes", {"holes": "3 mm x 2, 4 mm x 1", "region": "90 x 90 mm"})
    path = tmp_path / "rack.yaml"
    path.write_text(text, encoding="utf-8")
    plan = plan_job(load_job(path, tables), tables)
    assert plan.job.name == "Rod rack: the second"
    assert [turn.id for turn in plan.turns] == ["rail", "old-holes", "feet"]
    assert plan.problems == ()


def test_lists_in_brackets_and_missing_ends_of_lines(tables, tmp_path):
    for text in ("job: x\nsteps: []", "job: x\nsteps:", "job: x\r\nsteps: [{id: a}]\r\n", "job: x"):
        new = with_entry(text, "steps", "paint", {"name": "paint it"})
        assert entries_in(new)["steps"]["paint"] == {"id": "paint", "name": "paint it"}
        assert entries_in(without_entry(new, "steps", "paint")) == entries_in(text)
        path = tmp_path / "job.yaml"
        path.write_bytes(new.encode())
        assert read_job(path, tables)[1] == []


def test_nothing_is_lost_where_a_change_fails(tmp_path):
    path = tmp_path / "job.yaml"
    path.write_text("steps: [\n", encoding="utf-8")
    with pytest.raises(InputError, match="welds job check"):
        write_job(path, lambda text: with_entry(text, "steps", "a", {}))
    with pytest.raises(InputError):
        without_entry("job: x\n", "steps", "a")
    with pytest.raises(FileUnavailableError):
        write_job(tmp_path / "gone" / "job.yaml", lambda text: text)
    assert [each.name for each in tmp_path.iterdir()] == ["job.yaml"]
    assert path.read_text(encoding="utf-8") == "steps: [\n"

import json

import pytest

from welds.gui.memory import FILE_NAME, LastUse, Memory

USE = LastUse({"metal": "5052", "coating": ("oil", "rust")}, "inch")


def test_what_is_saved_is_loaded(tmp_path):
    assert Memory(tmp_path).save(USE) == ""
    loaded = Memory(tmp_path).load()
    assert loaded.last_use == USE
    assert loaded.trouble == ""


def test_a_first_start_is_no_trouble(tmp_path):
    loaded = Memory(tmp_path / "not-there").load()
    assert loaded.last_use == LastUse()
    assert loaded.trouble == ""


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"{",
        b"\xff\xfe\x00",
        b"[]",
        b'{"schema": "welds.last-use/9"}',
        b'{"schema": "welds.last-use/1", "units": "furlongs"}',
        b'{"schema": "welds.last-use/1", "units": []}',
        b'{"schema": "welds.last-use/1", "fields": []}',
        b'{"schema": "welds.last-use/1", "fields": {"thickness": 2}}',
        b'{"schema": "welds.last-use/1", "fields": {"coating": [1]}}',
        b"[" * 100_000,
    ],
)
def test_a_broken_file_is_kept_aside_and_said(tmp_path, content):
    (tmp_path / FILE_NAME).write_bytes(content)
    loaded = Memory(tmp_path).load()
    assert loaded.last_use == LastUse()
    assert "\n" not in loaded.trouble
    aside = tmp_path / f"{FILE_NAME}.broken-1"
    assert aside.name in loaded.trouble
    assert aside.read_bytes() == content
    assert not (tmp_path / FILE_NAME).exists()


def test_a_second_broken_file_does_not_replace_the_first(tmp_path):
    for content in ("one", "two"):
        (tmp_path / FILE_NAME).write_text(content)
        Memory(tmp_path).load()
    kept = [tmp_path / f"{FILE_NAME}.broken-{number}" for number in (1, 2)]
    assert [file.read_text() for file in kept] == ["one", "two"]


def test_a_folder_that_cannot_be_written_is_one_line_and_no_error(tmp_path):
    (tmp_path / "file").write_text("in the way")
    trouble = Memory(tmp_path / "file" / "below").save(USE)
    assert trouble
    assert "\n" not in trouble


def test_unknown_names_of_a_later_program_are_passed_over(tmp_path):
    (tmp_path / FILE_NAME).write_text(json.dumps({"schema": "welds.last-use/1", "colour": "red"}))
    assert Memory(tmp_path).load().last_use == LastUse()
    assert Memory(tmp_path).load().trouble == ""

"""YAML without its traps."""

import pytest

from welds.errors import ReferenceDataError
from welds.reference.strict_yaml import read_yaml


def read(tmp_path, text: str | bytes):
    path = tmp_path / "some.yaml"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return read_yaml(path, "some.yaml")


@pytest.mark.parametrize(
    "scalar", ["NO", "yes", "1:30", "1e-3", "012", "0x10", "null", "~", "2024-01-31", "1_000"]
)
def test_a_scalar_stays_what_was_typed(tmp_path, scalar):
    assert read(tmp_path, f"key: {scalar}\n") == {"key": scalar}
    assert read(tmp_path, f"key: [{scalar}]\n") == {"key": [scalar]}


def test_an_empty_value_is_empty_text(tmp_path):
    assert read(tmp_path, "key:\n") == {"key": ""}


def test_keys_know_their_lines(tmp_path):
    found = read(tmp_path, "a: 1\n\nb:\n  c: 2\n")
    assert found.line_of == {"a": 1, "b": 3}
    assert found["b"].line_of == {"c": 4}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("a: 1\nb: 2\na: 3\n", "some.yaml, row 3: key 'a' comes twice (first on line 1)"),
        ("a:\n  x: 1\n  x: 2\n", "some.yaml, row 3: key 'x' comes twice (first on line 2)"),
        ("a: &one {x: 1}\nb: *one\n", "anchors and aliases"),
        ("a: [1, 2\n", "not readable as YAML"),
        ("a:\n\t- b\n", "some.yaml, row 2: not readable as YAML"),
        ("- a\n- b\n", "expected 'name: value' lines at the top"),
        ("just words\n", "expected 'name: value' lines at the top"),
        ("[a, b]: c\n", "some.yaml, row 1: a key must be a plain word"),
        ("a: 1\n---\nb: 2\n", "not readable as YAML"),
        ("", "the file is empty"),
        ("# only a remark\n", "expected 'name: value' lines at the top"),
        (b"\xff\xfe\x00", "not a UTF-8 text file"),
        ("a: !!python/object/apply:os.getcwd []\n", "some.yaml, row 1: tags (!) are not used here"),
        ("a: " + "[" * 500 + "]" * 500, "not readable as YAML: nested too deeply"),
        ("a: " + "[" * 20_000, "not readable as YAML"),
        ("a: \x07\n", "not readable as YAML"),
    ],
)
def test_what_cannot_be_trusted_is_refused_in_one_line(tmp_path, text, expected):
    with pytest.raises(ReferenceDataError) as caught:
        read(tmp_path, text)
    assert expected in str(caught.value)
    assert "\n" not in str(caught.value)

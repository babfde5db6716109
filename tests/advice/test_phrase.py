"""What people type when they are in a hurry, and what is meant by it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.advice.phrase import read_phrase


@pytest.mark.parametrize(
    ("text", "fields", "rest"),
    [
        ("5052 corner", {"metal": "5052", "joint": "outside-corner"}, ()),
        ("corner 5052", {"joint": "outside-corner", "metal": "5052"}, ()),
        (
            "mig 3 mm low-carbon fillet",
            {"process": "mig", "thickness": "3 mm", "metal": "low-carbon", "joint": "tee"},
            (),
        ),
        (
            "6061-T6, inside corner, 1/8 in, overhead",
            {"metal": "6061-t6", "joint": "inside-corner", "thickness": "1/8 in", "position": "PE"},
            (),
        ),
        ("14 ga 304 lap", {"thickness": "14 ga", "metal": "304", "joint": "lap"}, ()),
        ("1,6 mm 5083", {"thickness": "1,6 mm", "metal": "5083"}, ()),
        (".080 5052 t", {"thickness": ".080", "metal": "5052", "joint": "tee"}, ()),
        ("304 low-carbon", {"metal": "304", "other_metal": "low-carbon"}, ()),
        ("5052 2mm 4mm", {"metal": "5052", "thickness": "2mm", "other_thickness": "4mm"}, ()),
        ("undercut on 5052", {"metal": "5052"}, ("undercut", "on")),
        ("outdoors brisk", {"place": "outdoors", "hand": "brisk"}, ()),
        ("", {}, ()),
    ],
)
def test_words(tables, text, fields, rest):
    found = read_phrase(text, tables)
    assert dict(found.fields) == fields
    assert found.rest == rest


@given(text=st.text(max_size=60))
def test_anything_can_be_typed(tables, text):
    found = read_phrase(text, tables)
    assert all(isinstance(value, str) and value for value in found.fields.values())

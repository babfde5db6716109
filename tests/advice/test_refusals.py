"""Where the tables end the answer names what is covered and the nearest case; ends as the rows print them."""

import pytest

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.errors import NotCoveredError
from welds.reference.schedules import MigSchedule


@pytest.mark.parametrize(
    ("metal", "thickness", "joint", "ends", "nearest"),
    [
        ("low-carbon", 0.4, Joint.BUTT, ("0.6 mm", "10.0 mm"), "0.6 mm (0.024 in) by MIG, or TIG"),
        ("low-carbon", 15.0, Joint.BUTT, ("0.6 mm", "10.0 mm"), "10.0 mm (0.394 in)"),
        ("304", 0.8, Joint.TEE, ("1.2 mm", "9.5 mm"), "1.2 mm (0.047 in) by MIG, or TIG"),
        ("304", 0.8, Joint.PLUG, ("1.2 mm", "9.5 mm"), "1.2 mm (0.047 in) by MIG, or TIG, as a lap"),
        ("5083", 1.0, Joint.BUTT, ("1.6 mm", "20.0 mm"), "1.6 mm (0.063 in) by MIG, or TIG"),
        ("5083", 30.0, Joint.BUTT, ("1.6 mm", "20.0 mm"), "20.0 mm (0.787 in)"),
        ("304", 4.5, Joint.PLUG, ("0.5 mm", "4.0 mm"), "4.0 mm (0.157 in)"),
    ],
)
def test_mig_names_its_own_metals_ends(tables, metal, thickness, joint, ends, nearest):
    with pytest.raises(NotCoveredError) as refusal:
        advise(Request(Process.MIG, metal, thickness, joint), tables)
    text = str(refusal.value)
    assert all(end in text for end in ends)
    assert text.endswith(nearest)


@pytest.mark.parametrize(("metal", "family"), [("low-carbon", "carbon-steel"), ("304", "stainless")])
def test_the_ends_are_those_of_the_rows(tables, metal, family):
    rows = [
        row
        for row in tables.records(MigSchedule)
        if (row.family, row.kind, row.use) == (family, "seam", "pooled")
    ]
    with pytest.raises(NotCoveredError) as refusal:
        advise(Request(Process.MIG, metal, 40.0, Joint.BUTT), tables)
    for end in (min, max):
        assert f"{end(row.thickness_max_mm or row.thickness_mm for row in rows):.1f} mm" in str(refusal.value)


@pytest.mark.parametrize("metal", ["copper", "titanium-2", "magnesium-az31"])
def test_a_metal_without_mig_rows_is_sent_to_tig(tables, metal):
    with pytest.raises(NotCoveredError, match="no schedule is held for this metal") as refusal:
        advise(Request(Process.MIG, metal, 2.0, Joint.BUTT), tables)
    assert str(refusal.value).endswith("TIG")


@pytest.mark.parametrize(("metal", "instead"), [("2024", "5052 or 6061"), ("7075", "6061")])
@pytest.mark.parametrize("process", list(Process))
def test_alloys_that_crack_are_refused_whatever_the_process(tables, metal, instead, process):
    """Trade and textbooks: 2024 and 7075 are not for fusion welding by hand."""
    with pytest.raises(NotCoveredError, match=f"in {instead}"):
        advise(Request(process, metal, 2.0, Joint.BUTT), tables)

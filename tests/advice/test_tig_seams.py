"""Curves of TIG rows made from a few rows, by hand. Rows are invented."""

from dataclasses import dataclass, field, fields

import pytest

from welds.advice.request import Hand, Joint
from welds.advice.tig_seams import Series, base_joint, fit_tig_seams, material_of
from welds.reference.basis import Basis
from welds.reference.schedules import JointFactor, TigSchedule

BUTT = Series("aluminium", "AC", "argon", "any")


@dataclass
class Made:
    """Tables that hold these rows and nothing else."""

    rows: tuple
    made: dict = field(default_factory=dict)

    def records(self, kind):
        return [row for row in self.rows if isinstance(row, kind)]

    def derived(self, build):
        return self.made.setdefault(build, build(self))


def row(number: int, amps: float, **more) -> TigSchedule:
    usual = {
        "row_id": f"A-{number}", "family": "aluminium", "group": "", "polarity": "AC", "gas": "argon",
        "hand": "any", "thickness_mm": 2.0, "joint": "butt", "preparation": "square", "position": "PA",
        "current_min_a": 0.9 * amps, "current_max_a": 1.1 * amps, "use": "pooled", "source_id": "A",
        "basis": Basis.PRINTED,
    }  # fmt: skip
    return TigSchedule(**{each.name: None for each in fields(TigSchedule)} | usual | more)


def over_butt(joint: str, factor: float, **more) -> JointFactor:
    usual = {
        "row_id": f"J-{joint}", "process": "tig", "family": "aluminium", "hand": "any", "gas": "argon",
        "joint": joint, "factor": factor, "from_rows": (), "source_id": "F",
        "basis": Basis.PRINTED, "note": "",
    }  # fmt: skip
    return JointFactor(**usual | more)


def fitted(*rows, keep=lambda row: True, **more):
    return fit_tig_seams(Made(rows), keep, **more)


@pytest.mark.parametrize("joint", ["tee", "lap", "edge", "outside-corner"])
def test_rows_of_other_joints_are_brought_to_a_butt(joint):
    """120 A over a factor of 1.2 is 100 A; without the document of the factor it stays 120 A."""
    rows = row(1, 120.0, joint=joint), over_butt(joint, 1.2)
    assert fitted(*rows).curves[BUTT].at(2.0).middle == pytest.approx(100.0, rel=2e-3)
    assert fitted(*rows, without="F").curves[BUTT].at(2.0).middle == pytest.approx(120.0, rel=2e-3)


def test_fillets_under_helium_have_a_curve_of_their_own():
    seams = fitted(
        row(1, 150.0, gas="helium", joint="tee"), row(2, 165.0, gas="helium", joint="lap", thickness_mm=2.0),
        row(3, 100.0, gas="helium"), over_butt("lap", 1.1, gas="helium"),
    )  # fmt: skip
    helium = Series("aluminium", "AC", "helium", "any")
    tee = Series("aluminium", "AC", "helium", "any", Joint.TEE)
    assert seams.curves[helium].at(2.0).middle == pytest.approx(100.0, rel=2e-3)
    assert seams.curves[tee].at(2.0).middle == pytest.approx(150.0, rel=2e-3)
    assert base_joint("helium", Joint.LAP) is base_joint("helium", Joint.INSIDE_CORNER) is Joint.TEE
    assert base_joint("helium", Joint.EDGE) is base_joint("argon", Joint.TEE) is Joint.BUTT


def test_what_is_kept_apart_and_what_together():
    seams = fitted(
        row(1, 100.0), row(2, 100.0, gas="argon-helium"), row(3, 80.0, polarity="DCEN"),
        row(4, 90.0, use="shown"),
        row(5, 70.0, family="copper", group="silicon-bronze", polarity="DCEN"), row(6, 95.0),
        keep=lambda each: each.row_id != "A-6",
    )  # fmt: skip
    assert [each.row_id for each in seams.rows["aluminium", "AC", "argon"]] == ["A-1", "A-2"]
    assert {series.material for series in seams.curves} == {"aluminium", "silicon-bronze"}
    assert material_of("copper", "silicon-bronze") == "silicon-bronze"
    assert material_of("stainless", "austenitic") == "stainless"


CALM, BRISK = (Series("stainless", "DCEN", "argon", hand.value) for hand in (Hand.UNHURRIED, Hand.BRISK))


@pytest.fixture
def hands():
    steel = {"family": "stainless", "polarity": "DCEN"}
    return fitted(
        *(
            row(n, 40.0 * mm, thickness_mm=mm, hand="unhurried", **steel)
            for n, mm in enumerate((1.0, 2.0, 3.0))
        ),
        *(row(n, 60.0 * mm, thickness_mm=mm, hand="brisk", **steel) for n, mm in enumerate((2.0, 3.0, 6.0))),
    )


def test_where_one_hands_rows_end_the_others_answer(hands):
    assert hands.reading(CALM, 2.0)[1] == CALM
    assert hands.reading(CALM, 5.0)[1] == BRISK
    assert hands.reading(BRISK, 1.0)[1] == CALM
    assert hands.reading(CALM, 9.0) is None
    assert hands.covered(CALM) == hands.covered(BRISK) == pytest.approx((1.0, 6.0))
    assert hands.covered(BUTT) is None


def test_the_ratio_of_the_hands_is_taken_where_both_are_known(hands):
    """60 over 40 A a millimetre; at 5 mm it is that of 3 mm, the last sheet the wanted hand's rows know."""
    assert hands.hand_ratio(BRISK, CALM, 2.0) == pytest.approx(1.5, rel=0.02)
    assert hands.hand_ratio(CALM, BRISK, 5.0) == hands.hand_ratio(CALM, BRISK, 3.0)
    assert hands.hand_ratio(CALM, BRISK, 5.0) == pytest.approx(1 / 1.5, rel=0.03)
    assert hands.hand_ratio(BRISK, CALM, 1.0) == hands.hand_ratio(BRISK, CALM, 2.0)
    assert hands.hand_ratio(CALM, CALM, 2.0) == 1.0
    assert hands.hand_ratio(BUTT, CALM, 2.0) == 1.0

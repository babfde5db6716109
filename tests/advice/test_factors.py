"""Joint and position factors pooled by hand from a few rows. Rows are invented."""

from dataclasses import dataclass, field
from math import exp, log

import pytest

from welds.advice.factors import UNITY, joint_factor, position_factor, series_hand
from welds.advice.request import Hand, Joint, Process
from welds.reference.basis import Basis
from welds.reference.schedules import JointFactor, PositionFactor


@dataclass
class Made:
    """Tables that hold these rows and nothing else."""

    rows: tuple
    made: dict = field(default_factory=dict)

    def records(self, kind):
        return [row for row in self.rows if isinstance(row, kind)]

    def derived(self, build):
        return self.made.setdefault(build, build(self))


def joint(factor: float, **more) -> JointFactor:
    usual = {
        "row_id": "J-1", "process": "tig", "family": "aluminium", "hand": "any", "gas": "argon",
        "joint": "tee", "factor": factor, "from_rows": (), "source_id": "A",
        "basis": Basis.PRINTED, "note": "",
    }  # fmt: skip
    return JointFactor(**usual | more)


def shop(factor: float, **more) -> JointFactor:
    return joint(
        factor,
        row_id="J-S",
        process="both",
        source_id="COMMON_PRACTICE",
        basis=Basis.PRACTICE,
        note="so it is",
        **more,
    )


def of_tee(*rows: JointFactor, hand: str = "any", gas: str = "argon", process=Process.TIG, **more):
    return joint_factor(Made(rows), process, "aluminium", hand, Joint.TEE, gas, **more)


def mean(*pairs: tuple[float, float]) -> float:
    """Return the weighted mean of ratios: weights and factors."""
    return exp(sum(weight * log(value) for weight, value in pairs) / sum(weight for weight, _ in pairs))


def test_a_butt_is_the_measure():
    assert (
        joint_factor(Made((joint(1.2, joint="butt"),)), Process.TIG, "aluminium", "any", Joint.BUTT) is UNITY
    )
    assert UNITY.value == 1.0


def test_no_rows_change_nothing():
    assert of_tee() is UNITY
    assert of_tee(joint(1.2, joint="lap")) is UNITY


def test_one_row_of_this_very_case():
    found = of_tee(joint(1.2))
    assert found.value == pytest.approx(1.2)
    assert (found.basis, found.rows, found.sources, found.why) == (Basis.PRINTED, ("J-1",), ("A",), "")


def test_printed_and_recalled_rows_and_the_shop_rule_meet():
    """Weights 1, 0.35 and 0.3: the ratio's logarithms are averaged."""
    found = of_tee(joint(1.2), joint(1.0, row_id="J-2", source_id="B", basis=Basis.RECALLED), shop(1.1))
    assert found.value == pytest.approx(mean((1.0, 1.2), (0.35, 1.0), (0.3, 1.1)))
    assert (found.rows, found.sources, found.why) == (("J-1", "J-2"), ("A", "B"), "so it is")
    assert found.basis is Basis.PRINTED


def test_the_shop_rule_alone_is_told_as_practice():
    found = of_tee(shop(1.1))
    assert found.value == pytest.approx(1.1)
    assert (found.basis, found.rows, found.sources) == (Basis.PRACTICE, (), ("COMMON_PRACTICE",))


def test_another_hand_counts_half_and_another_family_or_gas_an_eighth():
    sure = joint(1.0)
    assert of_tee(sure, joint(1.2, hand="brisk")).value == pytest.approx(mean((1, 1.0), (0.5, 1.2)))
    assert of_tee(sure, joint(1.2, family="stainless")).value == pytest.approx(mean((1, 1.0), (0.12, 1.2)))
    assert of_tee(sure, joint(1.2, gas="helium")).value == pytest.approx(mean((1, 1.0), (0.12, 1.2)))
    assert of_tee(sure, joint(1.2, gas="helium", hand="brisk")).value == pytest.approx(
        mean((1, 1.0), (0.12, 1.2))
    )
    assert of_tee(sure, joint(1.2, gas="any")).value == pytest.approx(mean((1, 1.0), (1, 1.2)))


def test_only_rows_of_the_family_and_gas_are_named():
    found = of_tee(
        joint(1.1), joint(1.2, row_id="J-F", family="stainless"), joint(1.2, row_id="J-H", gas="helium")
    )
    assert found.rows == ("J-1",)
    assert of_tee(joint(1.2, family="stainless")).basis is Basis.PRACTICE


def test_rows_of_the_other_process_say_nothing():
    assert of_tee(joint(1.0), joint(1.5, process="mig")).value == 1.0
    assert of_tee(joint(1.0), joint(1.21, process="both")).value == pytest.approx(1.1)
    # By MIG the gas makes no difference to what a row counts.
    assert of_tee(
        joint(1.0, process="mig"), joint(1.21, process="mig", gas="helium"), process=Process.MIG
    ).value == pytest.approx(1.1)


def test_a_document_left_out_says_nothing():
    rows = joint(1.2), joint(1.0, row_id="J-2", source_id="B")
    assert of_tee(*rows, without="A").value == 1.0
    assert of_tee(*rows, without="B").value == pytest.approx(1.2)


def place(factor: float | None, **more) -> PositionFactor:
    usual = {
        "row_id": "P-1", "process": "mig", "position": "PF", "fillet": "any", "factor": factor,
        "difference_min_a": None, "difference_max_a": None, "source_id": "A",
        "basis": Basis.PRINTED, "note": "",
    }  # fmt: skip
    return PositionFactor(**usual | more)


def of_uphill(*rows: PositionFactor, seam=Joint.BUTT, current: float = 100.0, position: str = "PF"):
    return position_factor(Made(rows), Process.MIG, seam, position, current)


def test_flat_is_the_measure_and_no_row_changes_nothing():
    assert of_uphill(place(0.5, position="PA"), position="PA") is UNITY
    assert of_uphill(place(0.5, position="PG")) is UNITY
    assert of_uphill(place(0.5, process="tig")) is UNITY


def test_rows_of_a_position_are_averaged_by_grade():
    found = of_uphill(
        place(0.8), place(0.9, row_id="P-2", source_id="B", basis=Basis.PRACTICE, note="it runs back")
    )
    assert found.value == pytest.approx(mean((1.0, 0.8), (0.25, 0.9)))
    assert (found.basis, found.rows, found.sources) == (Basis.PRINTED, ("P-1", "P-2"), ("A", "B"))
    assert found.why == "it runs back"


def test_a_recalled_row_lowers_the_grade():
    assert of_uphill(place(0.8), place(0.9, basis=Basis.RECALLED)).basis is Basis.RECALLED


@pytest.mark.parametrize(
    ("seam", "value"),
    [(Joint.TEE, 0.8), (Joint.LAP, 0.8), (Joint.INSIDE_CORNER, 0.8), (Joint.BUTT, 0.9), (Joint.EDGE, 0.9)],
)
def test_fillets_have_rows_of_their_own(seam, value):
    rows = place(0.8, fillet="yes"), place(0.9, fillet="no")
    assert of_uphill(*rows, seam=seam).value == pytest.approx(value)


@pytest.mark.parametrize(("current", "value"), [(150.0, 0.9), (300.0, 0.95), (75.0, 0.8), (40.0, 0.8)])
def test_a_difference_in_amperes(current, value):
    """10 to 20 A less: 15 of 150 is a tenth; never more than a fifth."""
    found = of_uphill(place(None, difference_min_a=-20.0, difference_max_a=-10.0), current=current)
    assert found.value == pytest.approx(value)
    assert (found.rows, found.sources, found.basis) == (("P-1",), ("A",), Basis.PRINTED)


def test_only_steels_have_schedules_by_hand():
    assert series_hand("stainless", Hand.BRISK) == "brisk"
    assert series_hand("carbon-steel", Hand.UNHURRIED) == "unhurried"
    assert series_hand("aluminium", Hand.BRISK) == "any"

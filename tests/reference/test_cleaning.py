"""The order of cleaning, and what comes on top for a coating."""

from welds.reference.basis import Basis
from welds.reference.cleaning import CleaningStep, cleaning_steps


def words(steps):
    return [step.step for step in steps]


def test_aluminium_peel_degrease_brush_wipe_weld_soon(tables):
    steps = cleaning_steps(tables, "aluminium", "tig")
    leads = [step.split()[0] for step in words(steps)]
    assert leads == ["Peel", "Degrease", "Brush", "Wipe", "Weld"]
    assert "4 hours" in steps[-1].step
    assert steps[0].basis is Basis.PRACTICE
    assert {step.basis for step in steps[1:]} == {Basis.PRINTED}


def test_a_coating_comes_before_the_plain_steps(tables):
    painted = cleaning_steps(tables, "aluminium", "tig", {"paint"})
    assert "paint" in painted[0].step
    zinc = cleaning_steps(tables, "carbon-steel", "mig", {"zinc"})
    assert "zinc" in zinc[0].step
    assert "Degrease first." in words(zinc)


def test_casting_and_anodising_only_when_asked(tables):
    plain = set(words(cleaning_steps(tables, "aluminium", "tig")))
    with_cases = set(words(cleaning_steps(tables, "aluminium", "tig", {"cast", "anodised"})))
    assert len(with_cases - plain) == 2


def test_steps_keep_to_the_process(tables):
    tig = cleaning_steps(tables, "carbon-steel", "tig")
    mig = cleaning_steps(tables, "carbon-steel", "mig")
    assert "mill scale" in tig[-1].step
    assert "mill scale" not in mig[-1].step
    assert "rod" in cleaning_steps(tables, "aluminium", "tig", kind="filler")[0].step
    assert "spool" in cleaning_steps(tables, "aluminium", "mig", kind="filler")[0].step


def test_every_family_has_steps_in_an_order_without_holes(tables):
    for family in ("aluminium", "magnesium", "carbon-steel", "stainless", "copper", "titanium"):
        for process in ("tig", "mig"):
            orders = [step.order for step in cleaning_steps(tables, family, process)]
            assert len(orders) >= 2
            assert orders == list(range(orders[0], orders[0] + len(orders)))


def test_steps_have_a_place_in_the_order_and_nothing_else_has(tables):
    for step in tables.records(CleaningStep):
        assert (step.order is not None) is (step.kind == "step"), step.row_id
        assert step.step.endswith("."), step.row_id

"""Shrinkage and distortion: D1 to D7, computed apart from the program; no text that could be read prints one.

Formulas: [DESIGN-WELDMENTS] as quoted in [SHRINK-METHOD-Q], [SPRARAGEN-ETTINGER], [AWS-WHB1], [KING-1944]
(all from memory but the first); figures per metre: [TWI-FAQ-SHRINK], primary text seen.
"""

import pytest

from welds.errors import OutsideValidityError
from welds.physics.shrinkage import (
    LAP_MM,
    TEE_MM,
    edge_rise_fillets,
    longitudinal_shrinkage,
    transverse_shrinkage_butt,
    transverse_shrinkage_fillets,
    transverse_shrinkage_gap,
)


def test_d1_to_d4_transverse():
    assert transverse_shrinkage_butt(60.0, 10.0) == pytest.approx(0.60)
    assert transverse_shrinkage_gap(60.0, 10.0, 2.0) == pytest.approx(1.30)
    assert transverse_shrinkage_fillets(6.0, 10.0, TEE_MM) == pytest.approx(0.61, abs=5e-3)
    assert transverse_shrinkage_fillets(5.0, 5.0, LAP_MM) == pytest.approx(1.52)


def test_d5_longitudinal():
    assert longitudinal_shrinkage(200.0, 1000.0, 6.0) == pytest.approx(1.02, abs=5e-3)


def test_d6_a_butt_at_200_a_in_6_mm_shrinks_as_much_as_the_institute_says():
    """3 mm per 3 m of butt [TWI-FAQ-SHRINK], printed."""
    assert longitudinal_shrinkage(200.0, 3000.0, 6.0) == pytest.approx(3.0, rel=0.05)


def test_d7_edge_rise():
    assert edge_rise_fillets(254.0, 6.35, 12.7) / 25.4 == pytest.approx(0.132, abs=5e-4)


def test_no_plate_is_refused():
    with pytest.raises(OutsideValidityError):
        transverse_shrinkage_butt(60.0, 0.0)

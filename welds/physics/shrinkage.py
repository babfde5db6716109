"""How much a weld shrinks and bends its parts: rules of thumb, right in their order of size."""

from welds.errors import OutsideValidityError
from welds.language import tr

TEE_MM, LAP_MM = 1.02, 1.52
"""Shrinkage of two fillets whose leg equals the plate: T-joint and lap."""

CURRENT_CONSTANT_MM = 305.0
MM_PER_INCH = 25.4
OF_CARBON_STEEL = {"carbon-steel": 1.0, "stainless": 1.30, "aluminium": 1.17}
"""Transverse shrinkage at equal heat per thickness over that of carbon steel [CAPEL-1961], low confidence."""


def transverse_shrinkage_butt(weld_area_mm2: float, thickness_mm: float) -> float:
    r"""Shrinkage across a butt weld.

    .. math:: \Delta = 0.10 \, \frac{A_w}{t}

    Parameters
    ----------
    weld_area_mm2 : float
        Section of the weld with its reinforcement :math:`A_w`. [mm2]
    thickness_mm : float
        Plate thickness :math:`t`, above zero. [mm]

    Returns
    -------
    float
        Shrinkage. [mm]

    Notes
    -----
    Steel, free to move.
    Source: [DESIGN-WELDMENTS] as quoted in [SHRINK-METHOD-Q].

    Examples
    --------
    >>> round(transverse_shrinkage_butt(60.0, 10.0), 2)
    0.6
    """
    return 0.10 * weld_area_mm2 / _above_zero("thickness_mm", thickness_mm)


def transverse_shrinkage_gap(weld_area_mm2: float, thickness_mm: float, gap_mm: float) -> float:
    r"""Shrinkage across a butt weld in heavier plate, with the root opening counted.

    .. math:: \Delta = 0.2 \, \frac{A_w}{t} + 0.05 \, d

    Parameters
    ----------
    weld_area_mm2 : float
        Section of the weld :math:`A_w`. [mm2]
    thickness_mm : float
        Plate thickness :math:`t`, above zero; made for plate over 25. [mm]
    gap_mm : float
        Root opening :math:`d`. [mm]

    Returns
    -------
    float
        Shrinkage. [mm]

    Notes
    -----
    Steel, free to move.
    Source: [SPRARAGEN-ETTINGER], from memory.

    Examples
    --------
    >>> round(transverse_shrinkage_gap(60.0, 10.0, 2.0), 2)
    1.3
    """
    return 0.2 * weld_area_mm2 / _above_zero("thickness_mm", thickness_mm) + 0.05 * gap_mm


def transverse_shrinkage_fillets(leg_mm: float, thickness_mm: float, constant_mm: float) -> float:
    r"""Shrinkage across two continuous fillets of a T-joint or lap.

    .. math:: \Delta = C \, \frac{w}{t}

    Parameters
    ----------
    leg_mm : float
        Fillet leg :math:`w`. [mm]
    thickness_mm : float
        Thickness of the plate that goes through :math:`t`, above zero. [mm]
    constant_mm : float
        Constant :math:`C`: `TEE_MM` or `LAP_MM`. [mm]

    Returns
    -------
    float
        Shrinkage; times welded over total length where the fillets are intermittent. [mm]

    Notes
    -----
    Steel, free to move.
    Source: [AWS-WHB1], from memory.

    Examples
    --------
    >>> round(transverse_shrinkage_fillets(6.0, 10.0, TEE_MM), 2)
    0.61
    >>> round(transverse_shrinkage_fillets(5.0, 5.0, LAP_MM), 2)
    1.52
    """
    return constant_mm * leg_mm / _above_zero("thickness_mm", thickness_mm)


def longitudinal_shrinkage(current_a: float, length_mm: float, thickness_mm: float) -> float:
    r"""Shrinkage along a butt weld.

    .. math:: \Delta = 305 \cdot 10^{-7} \, \frac{I L}{t}

    Parameters
    ----------
    current_a : float
        Welding current :math:`I`. [A]
    length_mm : float
        Length of the weld :math:`L`. [mm]
    thickness_mm : float
        Plate thickness :math:`t`, above zero. [mm]

    Returns
    -------
    float
        Shrinkage. [mm]

    Notes
    -----
    Steel, few passes. For comparison: 1 mm per metre of butt, 0.27 mm per metre of fillet
    [TWI-FAQ-SHRINK].
    Source: [KING-1944], from memory.

    Examples
    --------
    >>> round(longitudinal_shrinkage(200.0, 1000.0, 6.0), 2)
    1.02
    """
    scale = CURRENT_CONSTANT_MM * 1e-7
    return scale * current_a * length_mm / _above_zero("thickness_mm", thickness_mm)


def edge_rise_fillets(flange_width_mm: float, leg_mm: float, thickness_mm: float) -> float:
    r"""Rise of a flange's edges when fillets on both sides of its web pull it up.

    .. math:: \Delta = 0.02 \, \frac{W \, w^{1.3}}{t^2} \quad \text{(inches)}

    Parameters
    ----------
    flange_width_mm : float
        Width of the flange :math:`W`. [mm]
    leg_mm : float
        Fillet leg :math:`w`. [mm]
    thickness_mm : float
        Thickness of the flange :math:`t`, above zero. [mm]

    Returns
    -------
    float
        Rise of the edges. [mm]

    Notes
    -----
    Steel, one run on each side.
    Source: [DESIGN-WELDMENTS], from memory.

    Examples
    --------
    A 10 in flange, 1/4 in fillets, 1/2 in plate: 0.132 in.

    >>> round(edge_rise_fillets(254.0, 6.35, 12.7) / 25.4, 3)
    0.132
    """
    thickness = _above_zero("thickness_mm", thickness_mm) / MM_PER_INCH
    return 0.02 * flange_width_mm * (leg_mm / MM_PER_INCH) ** 1.3 / thickness**2


def _above_zero(name: str, value: float) -> float:
    if not value > 0.0:
        raise OutsideValidityError(name, value, tr("above zero"))
    return value

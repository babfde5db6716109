"""What a wire adds to the joint, and how much of the bead is parent metal."""

from math import sqrt

from welds.errors import OutsideValidityError
from welds.language import tr
from welds.physics.wire import wire_area


def deposition_rate(feed_mm_s: float, diameter_mm: float, density_kg_m3: float, efficiency_1: float) -> float:
    r"""Mass of filler laid down per hour of arc.

    .. math:: D = \eta_d \, \rho \, \frac{\pi d^2}{4} \, W

    Parameters
    ----------
    feed_mm_s : float
        Wire feed :math:`W`. [mm/s]
    diameter_mm : float
        Wire diameter :math:`d`. [mm]
    density_kg_m3 : float
        Density of the wire :math:`\rho`. [kg/m3]
    efficiency_1 : float
        Share of the wire that ends in the joint :math:`\eta_d`, above 0 to 1. [1]

    Returns
    -------
    float
        Deposition rate. [kg/h]

    Raises
    ------
    OutsideValidityError
        If the share is not above 0 and at most 1.

    Notes
    -----
    Mass balance.

    Examples
    --------
    >>> round(deposition_rate(100.0, 1.2, 7850.0, 0.95), 2)
    3.04
    """
    if not 0.0 < efficiency_1 <= 1.0:
        raise OutsideValidityError("efficiency_1", efficiency_1, tr("above 0 to 1"))
    return efficiency_1 * density_kg_m3 * 1e-9 * wire_area(diameter_mm) * feed_mm_s * 3600.0


def deposited_area(feed_mm_s: float, diameter_mm: float, speed_mm_s: float) -> float:
    r"""Section that the wire adds to the weld.

    .. math:: A_d = \frac{\pi d^2}{4} \, \frac{W}{v}

    Parameters
    ----------
    feed_mm_s : float
        Wire feed :math:`W`. [mm/s]
    diameter_mm : float
        Wire diameter :math:`d`. [mm]
    speed_mm_s : float
        Travel speed :math:`v`, above zero. [mm/s]

    Returns
    -------
    float
        Added section. [mm2]

    Raises
    ------
    OutsideValidityError
        If the speed is not above zero.

    Notes
    -----
    Volume balance, nothing lost as spatter.

    Examples
    --------
    >>> round(deposited_area(100.0, 1.2, 6.0), 1)
    18.8
    """
    if not speed_mm_s > 0.0:
        raise OutsideValidityError("speed_mm_s", speed_mm_s, tr("above zero"))
    return wire_area(diameter_mm) * feed_mm_s / speed_mm_s


def fillet_leg(deposited_area_mm2: float) -> float:
    r"""Leg of a flat fillet with equal legs that an added section makes.

    .. math:: z = \sqrt{2 A_d}

    Parameters
    ----------
    deposited_area_mm2 : float
        Section of added filler :math:`A_d`, zero or above. [mm2]

    Returns
    -------
    float
        Leg length. [mm]

    Notes
    -----
    Geometry of two pieces at a right angle without a gap; a bulging face has a little less leg.
    Source: [TWI_JK95].

    Examples
    --------
    >>> fillet_leg(12.5)
    5.0
    """
    return sqrt(2.0 * deposited_area_mm2)


def dilution(parent_area_mm2: float, deposited_area_mm2: float) -> float:
    r"""Share of the bead that is melted parent metal.

    .. math:: D = \frac{A_p}{A_p + A_d}

    Parameters
    ----------
    parent_area_mm2 : float
        Section of melted parent metal :math:`A_p`. [mm2]
    deposited_area_mm2 : float
        Section of added filler :math:`A_d`. [mm2]

    Returns
    -------
    float
        Dilution; 0 where nothing was melted. [1]

    Notes
    -----
    Definition.

    Examples
    --------
    >>> dilution(6.0, 18.0)
    0.25
    """
    total = parent_area_mm2 + deposited_area_mm2
    return parent_area_mm2 / total if total > 0.0 else 0.0

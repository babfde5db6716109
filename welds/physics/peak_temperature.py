"""Peak temperature beside a weld, and how fast it cools: the relations of Adams."""

from math import e, pi, sqrt

from welds.errors import OutsideValidityError
from welds.language import tr


def peak_temperature_thin(
    heat_j_mm: float,
    volumetric_heat_j_mm3k: float,
    thickness_mm: float,
    melting_c: float,
    start_c: float,
    beside_fusion_mm: float,
) -> float:
    r"""Highest temperature reached beside a weld that goes right through.

    .. math:: \frac{1}{T_p - T_0} = \frac{\sqrt{2 \pi e} \, \rho C \, d \, Y}{H_{net}}
        + \frac{1}{T_m - T_0}

    Parameters
    ----------
    heat_j_mm : float
        Net heat per length :math:`H_{net}`, above zero. [J/mm]
    volumetric_heat_j_mm3k : float
        Density times specific heat :math:`\rho C`. [J/(mm3 K)]
    thickness_mm : float
        Plate thickness :math:`d`. [mm]
    melting_c : float
        Melting temperature :math:`T_m`. [degC]
    start_c : float
        Start or preheat temperature :math:`T_0`. [degC]
    beside_fusion_mm : float
        Distance from the fusion line :math:`Y`, zero or above. [mm]

    Returns
    -------
    float
        Peak temperature. [degC]

    Raises
    ------
    OutsideValidityError
        If the heat is not above zero.

    Notes
    -----
    One pass, full penetration.
    Source: [HEATFLOW-SLIDES] after [AWS-WHB1].

    Examples
    --------
    >>> round(peak_temperature_thin(720.0, 0.0044, 5.0, 1510.0, 25.0, 1.5))
    1184
    """
    if not heat_j_mm > 0.0:
        raise OutsideValidityError("heat_j_mm", heat_j_mm, tr("above zero"))
    slope = sqrt(2.0 * pi * e) * volumetric_heat_j_mm3k * thickness_mm / heat_j_mm
    return start_c + 1.0 / (slope * beside_fusion_mm + 1.0 / (melting_c - start_c))


def distance_of_peak_thin(
    heat_j_mm: float,
    volumetric_heat_j_mm3k: float,
    thickness_mm: float,
    melting_c: float,
    start_c: float,
    peak_c: float,
) -> float:
    r"""Distance from the fusion line to where a peak temperature is just reached.

    .. math:: Y = \frac{H_{net}}{\sqrt{2 \pi e} \, \rho C \, d}
        \left( \frac{1}{T_p - T_0} - \frac{1}{T_m - T_0} \right)

    Parameters
    ----------
    heat_j_mm : float
        Net heat per length :math:`H_{net}`. [J/mm]
    volumetric_heat_j_mm3k : float
        Density times specific heat :math:`\rho C`. [J/(mm3 K)]
    thickness_mm : float
        Plate thickness :math:`d`. [mm]
    melting_c : float
        Melting temperature :math:`T_m`. [degC]
    start_c : float
        Start or preheat temperature :math:`T_0`. [degC]
    peak_c : float
        Peak temperature asked for, above the start and below melting. [degC]

    Returns
    -------
    float
        Width of the zone on one side of the fusion line. [mm]

    Raises
    ------
    OutsideValidityError
        If the peak is not between start and melting.

    Notes
    -----
    `peak_temperature_thin` solved for the distance.
    Source: [HEATFLOW-SLIDES] after [AWS-WHB1].

    Examples
    --------
    >>> round(distance_of_peak_thin(720.0, 0.0044, 5.0, 1510.0, 25.0, 730.0), 1)
    5.9
    """
    if not start_c < peak_c <= melting_c:
        raise OutsideValidityError(
            "peak_c",
            peak_c,
            tr("above {lowest:g} to {highest:g} degC", lowest=start_c, highest=melting_c),
        )
    share = heat_j_mm / (sqrt(2.0 * pi * e) * volumetric_heat_j_mm3k * thickness_mm)
    return share * (1.0 / (peak_c - start_c) - 1.0 / (melting_c - start_c))


def relative_thickness(
    thickness_mm: float, volumetric_heat_j_mm3k: float, heat_j_mm: float, reference_c: float, start_c: float
) -> float:
    r"""Number that says whether a plate counts as thick or thin for cooling.

    .. math:: \tau = d \sqrt{\frac{\rho C \, (T_c - T_0)}{H_{net}}}

    Parameters
    ----------
    thickness_mm : float
        Plate thickness :math:`d`. [mm]
    volumetric_heat_j_mm3k : float
        Density times specific heat :math:`\rho C`. [J/(mm3 K)]
    heat_j_mm : float
        Net heat per length :math:`H_{net}`. [J/mm]
    reference_c : float
        Temperature at which the cooling rate matters :math:`T_c`, 550 for steel. [degC]
    start_c : float
        Start or preheat temperature :math:`T_0`. [degC]

    Returns
    -------
    float
        Relative thickness: above 0.9 thick, below 0.6 thin, divided at 0.75. [1]

    Notes
    -----
    Source: [HEATFLOW-SLIDES]; limits from memory.

    Examples
    --------
    >>> round(relative_thickness(6.0, 0.0044, 843.75, 550.0, 25.0), 2)
    0.31
    """
    return thickness_mm * sqrt(volumetric_heat_j_mm3k * (reference_c - start_c) / heat_j_mm)


def solidification_time(
    latent_j_mm3: float,
    heat_j_mm: float,
    conductivity_w_mk: float,
    volumetric_heat_j_mm3k: float,
    melting_rise_k: float,
) -> float:
    r"""Time the pool takes to freeze at one place.

    .. math:: S_t = \frac{L \, H_{net}}{2 \pi k \, \rho C \, (T_m - T_0)^2}

    Parameters
    ----------
    latent_j_mm3 : float
        Heat of fusion per volume :math:`L`, about 2 for steel. [J/mm3]
    heat_j_mm : float
        Net heat per length :math:`H_{net}`. [J/mm]
    conductivity_w_mk : float
        Thermal conductivity :math:`k`. [W/(m K)]
    volumetric_heat_j_mm3k : float
        Density times specific heat :math:`\rho C`. [J/(mm3 K)]
    melting_rise_k : float
        Melting temperature above the plate's start :math:`T_m - T_0`. [K]

    Returns
    -------
    float
        Solidification time. [s]

    Notes
    -----
    Source: [AWS-WHB1].

    Examples
    --------
    >>> round(solidification_time(2.0, 800.0, 28.0, 0.0044, 1485.0), 2)
    0.94
    """
    below = 2.0 * pi * conductivity_w_mk * 1e-3 * volumetric_heat_j_mm3k * melting_rise_k**2
    return latent_j_mm3 * heat_j_mm / below

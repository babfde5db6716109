"""How much of the heat melts metal: melting efficiency, and the section it fuses."""

from math import exp

from welds.errors import OutsideValidityError
from welds.language import tr

HIGHEST_THICK, HIGHEST_THIN = 0.37, 0.48
"""What melting efficiency cannot exceed by conduction alone, on thick plate (1/e) and in a sheet."""


def melting_efficiency_fuerschbach(
    power_w: float, speed_mm_s: float, diffusivity_mm2_s: float, heat_to_melt_j_mm3: float
) -> float:
    r"""Share of the net heat that melts metal, from one dimensionless group.

    .. math:: \eta_m = 0.48 - 0.29 \, e^{-Ry / 6.8} - 0.17 \, e^{-Ry / 59},
        \qquad Ry = \frac{q v}{\alpha^2 h}

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    diffusivity_mm2_s : float
        Thermal diffusivity :math:`\alpha`. [mm2/s]
    heat_to_melt_j_mm3 : float
        Heat that warms and melts a volume :math:`h`. [J/mm3]

    Returns
    -------
    float
        Melting efficiency, 0.02 to 0.48. [1]

    Notes
    -----
    Fitted to beads on plate that did not go through. A second opinion beside the field, not a part of it.
    Source: [FUERSCHBACH-1996], constants from memory.

    Examples
    --------
    >>> round(melting_efficiency_fuerschbach(2000.0, 5.0, 5.3, 10.0), 2)
    0.39
    """
    group = power_w * speed_mm_s / (diffusivity_mm2_s**2 * heat_to_melt_j_mm3)
    return 0.48 - 0.29 * exp(-group / 6.8) - 0.17 * exp(-group / 59.0)


def melting_efficiency_dupont(
    power_w: float,
    speed_mm_s: float,
    diffusivity_mm2_s: float,
    viscosity_mm2_s: float,
    heat_to_melt_j_mm3: float,
) -> float:
    r"""Share of the net heat that melts metal, from power, speed and the metal's own numbers.

    .. math:: \eta_m = 0.5 \, e^{-175 / X}, \qquad X = \frac{q v}{h \, \alpha \, \nu}

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    diffusivity_mm2_s : float
        Thermal diffusivity :math:`\alpha`. [mm2/s]
    viscosity_mm2_s : float
        Kinematic viscosity at the melting point :math:`\nu`. [mm2/s]
    heat_to_melt_j_mm3 : float
        Heat that warms and melts a volume :math:`h`. [J/mm3]

    Returns
    -------
    float
        Melting efficiency, below 0.5. [1]

    Notes
    -----
    Fitted to arcs on structural steel. A second opinion beside the field, not a part of it.
    Source: [DUPONT-1995], constants from memory.

    Examples
    --------
    >>> round(melting_efficiency_dupont(2000.0, 5.0, 7.0, 0.8, 10.0), 2)
    0.19
    """
    group = power_w * speed_mm_s / (heat_to_melt_j_mm3 * diffusivity_mm2_s * viscosity_mm2_s)
    return 0.5 * exp(-175.0 / group)


def heat_to_melt_by_temperature(melting_c: float) -> float:
    r"""Rough heat that warms and melts a volume, from the melting temperature alone.

    .. math:: h = \frac{(T_m + 273)^2}{300\,000}

    Parameters
    ----------
    melting_c : float
        Melting temperature :math:`T_m`. [degC]

    Returns
    -------
    float
        Heat to melt. [J/mm3]

    Notes
    -----
    Steels; too high for others.
    Source: [HEATFLOW-SLIDES].

    Examples
    --------
    >>> round(heat_to_melt_by_temperature(1510.0), 1)
    10.6
    """
    return (melting_c + 273.0) ** 2 / 300_000.0


def heat_to_melt(
    density_kg_m3: float, specific_heat_j_kgk: float, latent_heat_j_kg: float, melting_rise_k: float
) -> float:
    r"""Heat that warms and melts a volume.

    .. math:: h = \rho \, (c \, \Delta T + L)

    Parameters
    ----------
    density_kg_m3 : float
        Density :math:`\rho`. [kg/m3]
    specific_heat_j_kgk : float
        Specific heat, mean from start to melting :math:`c`. [J/(kg K)]
    latent_heat_j_kg : float
        Heat of fusion :math:`L`. [J/kg]
    melting_rise_k : float
        Melting temperature above the start :math:`\Delta T`. [K]

    Returns
    -------
    float
        Heat to melt. [J/mm3]

    Notes
    -----
    With the specific heat of a cold metal 20 to 30 % low for steel.

    Examples
    --------
    >>> round(heat_to_melt(7850.0, 690.0, 247e3, 1490.0), 1)
    10.0
    """
    return density_kg_m3 * 1e-9 * (specific_heat_j_kgk * melting_rise_k + latent_heat_j_kg)


def fused_area(
    power_w: float, speed_mm_s: float, melting_efficiency_1: float, heat_to_melt_j_mm3: float
) -> float:
    r"""Section of weld that the heat can melt.

    .. math:: A_w = \frac{\eta_m \, q}{v \, h}

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`, above zero. [mm/s]
    melting_efficiency_1 : float
        Melting efficiency :math:`\eta_m`. [1]
    heat_to_melt_j_mm3 : float
        Heat that warms and melts a volume :math:`h`. [J/mm3]

    Returns
    -------
    float
        Fused section, filler included. [mm2]

    Raises
    ------
    OutsideValidityError
        If the speed is not above zero.

    Notes
    -----
    Energy balance.
    Source: [AWS-WHB1].

    Examples
    --------
    20 V, 200 A and 0.9 thermal efficiency at 5 mm/s:

    >>> round(fused_area(3600.0, 5.0, 0.3, 10.0), 1)
    21.6
    """
    if not speed_mm_s > 0.0:
        raise OutsideValidityError("speed_mm_s", speed_mm_s, tr("above zero"))
    return melting_efficiency_1 * power_w / (speed_mm_s * heat_to_melt_j_mm3)

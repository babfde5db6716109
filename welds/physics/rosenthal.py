"""Temperature around a point or line of heat that moves steadily: Rosenthal's fields and their limits."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from welds.errors import OutsideValidityError
from welds.language import tr

Floats = NDArray[np.float64]

_K0_NODES, _K0_STEP = np.linspace(0.0, 10.0, 201, retstep=True)
IMAGES = 40


def bessel_k0(argument_1: ArrayLike) -> Floats:
    r"""Modified Bessel function of the second kind and order zero.

    .. math:: K_0(x) = \int_0^\infty e^{-x \cosh t} \, dt

    Parameters
    ----------
    argument_1 : array_like
        Argument :math:`x`, 0.01 and above. [1]

    Returns
    -------
    ndarray
        Value, to eight digits or better. [1]

    Notes
    -----
    Trapezoidal rule, which converges exponentially for this integrand; saves a dependency.

    Examples
    --------
    >>> round(float(bessel_k0(1.0)), 10)
    0.4210244382
    """
    argument = np.asarray(argument_1, dtype=np.float64)
    return np.exp(-argument) * _scaled_k0(argument)


def _scaled_k0(argument: Floats) -> Floats:
    """Return K0 times exp of its argument, which stays in range where each alone does not."""
    narrow = 1.0 / np.sqrt(1.0 + argument)[..., None]
    values = np.exp(-argument[..., None] * (np.cosh(_K0_NODES * narrow) - 1.0))
    return (values.sum(axis=-1) - values[..., 0] / 2.0) * _K0_STEP * narrow[..., 0]


def thick_plate_rise(
    power_w: float,
    speed_mm_s: float,
    conductivity_w_mk: float,
    diffusivity_mm2_s: float,
    ahead_mm: ArrayLike,
    aside_mm: ArrayLike,
    below_mm: ArrayLike,
) -> Floats:
    r"""Temperature rise around a point of heat on a plate of no end in any direction.

    .. math:: T - T_0 = \frac{q}{2 \pi k R} \, e^{-v (\xi + R) / 2 \alpha},
        \qquad R^2 = \xi^2 + y^2 + z^2

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    conductivity_w_mk : float
        Thermal conductivity :math:`k`. [W/(m K)]
    diffusivity_mm2_s : float
        Thermal diffusivity :math:`\alpha`. [mm2/s]
    ahead_mm : array_like
        Distance ahead of the source :math:`\xi`, negative behind. [mm]
    aside_mm : array_like
        Distance from the weld line :math:`y`. [mm]
    below_mm : array_like
        Depth :math:`z`. [mm]

    Returns
    -------
    ndarray
        Temperature rise. [K]

    Notes
    -----
    Constant properties, no latent heat; without meaning inside the pool.
    Source: [ROSENTHAL], form seen in [ORNL-TRAIN].

    Examples
    --------
    >>> round(float(thick_plate_rise(2000.0, 4.0, 25.0, 5.3079, 0.0, 4.0, 0.0)) + 25.0, 2)
    730.15
    """
    ahead = np.asarray(ahead_mm, dtype=np.float64)
    radius = np.sqrt(ahead**2 + np.asarray(aside_mm) ** 2 + np.asarray(below_mm) ** 2)
    decay = np.exp(-speed_mm_s * (ahead + radius) / (2.0 * diffusivity_mm2_s))
    return 1e3 * power_w / (2.0 * np.pi * conductivity_w_mk * radius) * decay


def thin_plate_rise(
    power_w: float,
    speed_mm_s: float,
    conductivity_w_mk: float,
    diffusivity_mm2_s: float,
    thickness_mm: float,
    ahead_mm: ArrayLike,
    aside_mm: ArrayLike,
) -> Floats:
    r"""Temperature rise around a line of heat through the full thickness of a sheet.

    .. math:: T - T_0 = \frac{q}{2 \pi k d} \, e^{-v \xi / 2 \alpha} \,
        K_0 \! \left( \frac{v r}{2 \alpha} \right), \qquad r^2 = \xi^2 + y^2

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    conductivity_w_mk : float
        Thermal conductivity :math:`k`. [W/(m K)]
    diffusivity_mm2_s : float
        Thermal diffusivity :math:`\alpha`. [mm2/s]
    thickness_mm : float
        Sheet thickness :math:`d`. [mm]
    ahead_mm : array_like
        Distance ahead of the source :math:`\xi`, negative behind. [mm]
    aside_mm : array_like
        Distance from the weld line :math:`y`. [mm]

    Returns
    -------
    ndarray
        Temperature rise. [K]

    Notes
    -----
    Wide sheet, no heat lost from its faces, constant properties, no latent heat.
    Source: [ROSENTHAL].

    Examples
    --------
    >>> round(float(thin_plate_rise(960.0, 3.0, 25.0, 5.3079, 2.0, 0.0, 6.0)) + 25.0)
    534
    """
    ahead = np.asarray(ahead_mm, dtype=np.float64)
    per_mm = speed_mm_s / (2.0 * diffusivity_mm2_s)
    radius = np.sqrt(ahead**2 + np.asarray(aside_mm) ** 2)
    scale = 1e3 * power_w / (2.0 * np.pi * conductivity_w_mk * thickness_mm)
    return scale * np.exp(-per_mm * (ahead + radius)) * _scaled_k0(per_mm * radius)


def finite_plate_rise(
    power_w: float,
    speed_mm_s: float,
    conductivity_w_mk: float,
    diffusivity_mm2_s: float,
    thickness_mm: float,
    ahead_mm: float,
    aside_mm: float,
    below_mm: float,
) -> float:
    r"""Temperature rise around a point of heat on a plate of finite thickness, by image sources.

    .. math:: T - T_0 = \sum_{i=-N}^{N} \frac{q}{2 \pi k R_i} \, e^{-v (\xi + R_i) / 2 \alpha},
        \qquad R_i^2 = \xi^2 + y^2 + (z - 2 i d)^2

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    conductivity_w_mk : float
        Thermal conductivity :math:`k`. [W/(m K)]
    diffusivity_mm2_s : float
        Thermal diffusivity :math:`\alpha`. [mm2/s]
    thickness_mm : float
        Plate thickness :math:`d`. [mm]
    ahead_mm : float
        Distance ahead of the source :math:`\xi`, negative behind. [mm]
    aside_mm : float
        Distance from the weld line :math:`y`. [mm]
    below_mm : float
        Depth :math:`z`. [mm]

    Returns
    -------
    float
        Temperature rise. [K]

    Raises
    ------
    OutsideValidityError
        If the images needed would be more than are summed: use the thin-plate field there.

    Notes
    -----
    Faces that lose no heat. The sum needs images out to several times the larger of the distance and
    :math:`2 \alpha / v`.
    Source: [GRONG].

    Examples
    --------
    A thick plate gives the thick-plate field, a thin one the thin-plate field:

    >>> round(finite_plate_rise(2000.0, 4.0, 25.0, 5.3079, 60.0, 0.0, 4.0, 0.0) + 25.0, 2)
    730.15
    >>> round(finite_plate_rise(960.0, 3.0, 25.0, 5.3079, 2.0, 0.0, 6.0, 1.0) + 25.0, 0)
    534.0
    """
    reach = np.hypot(ahead_mm, aside_mm) + 40.0 * diffusivity_mm2_s / speed_mm_s
    if reach > 2.0 * IMAGES * thickness_mm:
        raise OutsideValidityError(
            "thickness_mm", thickness_mm, tr("{reach:.3g} mm and above", reach=reach / (2.0 * IMAGES))
        )
    depths = below_mm - 2.0 * thickness_mm * np.arange(-IMAGES, IMAGES + 1)
    return float(
        thick_plate_rise(
            power_w, speed_mm_s, conductivity_w_mk, diffusivity_mm2_s, ahead_mm, aside_mm, depths
        ).sum()
    )


def cooling_rate_thick(
    power_w: float, speed_mm_s: float, conductivity_w_mk: float, above_start_k: float
) -> float:
    r"""Cooling rate on the weld line of a thick plate, far behind a quick source.

    .. math:: -\frac{dT}{dt} = \frac{2 \pi k \, v \, (T - T_0)^2}{q}

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    conductivity_w_mk : float
        Thermal conductivity :math:`k`. [W/(m K)]
    above_start_k : float
        How far the metal is above where it started :math:`T - T_0`. [K]

    Returns
    -------
    float
        Cooling rate. [K/s]

    Notes
    -----
    Source: [KOU].

    Examples
    --------
    >>> round(cooling_rate_thick(2000.0, 4.0, 25.0, 525.0), 2)
    86.59
    """
    return 2.0 * np.pi * conductivity_w_mk * speed_mm_s * 1e-3 * above_start_k**2 / power_w


def cooling_rate_thin(
    power_w: float,
    speed_mm_s: float,
    conductivity_w_mk: float,
    volumetric_heat_j_m3k: float,
    thickness_mm: float,
    above_start_k: float,
) -> float:
    r"""Cooling rate on the weld line of a sheet, far behind a quick source.

    .. math:: -\frac{dT}{dt} = 2 \pi k \rho c \left( \frac{d v}{q} \right)^2 (T - T_0)^3

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    conductivity_w_mk : float
        Thermal conductivity :math:`k`. [W/(m K)]
    volumetric_heat_j_m3k : float
        Density times specific heat :math:`\rho c`. [J/(m3 K)]
    thickness_mm : float
        Sheet thickness :math:`d`. [mm]
    above_start_k : float
        How far the metal is above where it started :math:`T - T_0`. [K]

    Returns
    -------
    float
        Cooling rate. [K/s]

    Notes
    -----
    Source: [KOU].

    Examples
    --------
    >>> round(cooling_rate_thin(960.0, 3.0, 25.0, 4.71e6, 2.0, 525.0), 2)
    4.18
    """
    per_power = thickness_mm * speed_mm_s * 1e-6 / power_w
    return 2.0 * np.pi * conductivity_w_mk * volumetric_heat_j_m3k * per_power**2 * above_start_k**3


def rykalin_number(
    power_w: float,
    speed_mm_s: float,
    diffusivity_mm2_s: float,
    volumetric_heat_j_m3k: float,
    melting_rise_k: float,
) -> float:
    r"""Ratio that alone decides the shape of the isotherms in a thick plate.

    .. math:: Ry = \frac{q v}{4 \pi \alpha^2 \rho c \, \Delta T}

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    speed_mm_s : float
        Travel speed :math:`v`. [mm/s]
    diffusivity_mm2_s : float
        Thermal diffusivity :math:`\alpha`. [mm2/s]
    volumetric_heat_j_m3k : float
        Density times specific heat :math:`\rho c`. [J/(m3 K)]
    melting_rise_k : float
        Temperature of the isotherm above the plate's :math:`\Delta T`. [K]

    Returns
    -------
    float
        Rykalin number: small for a slow, round pool, large for a quick, long one. [1]

    Notes
    -----
    Source: [MENDEZ] for the group, its definition from memory.

    Examples
    --------
    >>> round(rykalin_number(2000.0, 4.0, 5.3079, 4.71e6, 1475.0), 2)
    3.25
    """
    heat = volumetric_heat_j_m3k * 1e-9 * melting_rise_k
    return power_w * speed_mm_s / (4.0 * np.pi * diffusivity_mm2_s**2 * heat)


def rosenthal_number(
    power_w: float, conductivity_w_mk: float, thickness_mm: float, melting_rise_k: float
) -> float:
    r"""Ratio that alone decides the shape of the isotherms in a sheet.

    .. math:: Ro = \frac{q}{4 \pi k d \, \Delta T}

    Parameters
    ----------
    power_w : float
        Net power :math:`q`. [W]
    conductivity_w_mk : float
        Thermal conductivity :math:`k`. [W/(m K)]
    thickness_mm : float
        Sheet thickness :math:`d`. [mm]
    melting_rise_k : float
        Temperature of the isotherm above the sheet's :math:`\Delta T`. [K]

    Returns
    -------
    float
        Rosenthal number: the larger, the longer the pool. [1]

    Notes
    -----
    Source: [MENDEZ] for the group, its definition from memory.

    Examples
    --------
    >>> round(rosenthal_number(960.0, 25.0, 2.0, 1475.0), 2)
    1.04
    """
    return power_w * 1e3 / (4.0 * np.pi * conductivity_w_mk * thickness_mm * melting_rise_k)

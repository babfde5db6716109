"""Conductivity and specific heat of hot metal, as the fire parts of the structural standards give them."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]


def carbon_steel_conductivity(temperature_c: ArrayLike) -> Floats:
    r"""Thermal conductivity of carbon steel.

    .. math:: k = 54 - 0.0333 \, T \; (T < 800), \qquad k = 27.3 \; (T \ge 800)

    Parameters
    ----------
    temperature_c : array_like
        Temperature :math:`T`, 20 to 1200; the last value is kept above. [degC]

    Returns
    -------
    ndarray
        Conductivity. [W/(m K)]

    Notes
    -----
    Source: [EN1993-1-2-Q].

    Examples
    --------
    >>> round(float(carbon_steel_conductivity(20.0)), 1)
    53.3
    """
    return np.maximum(54.0 - 0.0333 * np.asarray(temperature_c, dtype=np.float64), 27.3)


def carbon_steel_specific_heat(temperature_c: ArrayLike) -> Floats:
    r"""Specific heat of carbon steel, with its peak where the lattice changes.

    .. math:: c = \begin{cases}
        425 + 0.773 T - 1.69 \cdot 10^{-3} T^2 + 2.22 \cdot 10^{-6} T^3 & T < 600 \\
        666 + 13002 / (738 - T) & T < 735 \\
        545 + 17820 / (T - 731) & T < 900 \\
        650 & T \ge 900 \end{cases}

    Parameters
    ----------
    temperature_c : array_like
        Temperature :math:`T`, 20 to 1200; the last value is kept above. [degC]

    Returns
    -------
    ndarray
        Specific heat. [J/(kg K)]

    Notes
    -----
    Source: [EN1993-1-2-Q].

    Examples
    --------
    >>> round(float(carbon_steel_specific_heat(20.0)))
    440
    """
    t = np.asarray(temperature_c, dtype=np.float64)
    cold = 425.0 + 0.773 * t - 1.69e-3 * t**2 + 2.22e-6 * t**3
    rising = 666.0 + 13002.0 / np.maximum(738.0 - t, 1.0)
    falling = 545.0 + 17820.0 / np.maximum(t - 731.0, 1.0)
    return np.select([t < 600.0, t < 735.0, t < 900.0], [cold, rising, falling], 650.0)


def stainless_conductivity(temperature_c: ArrayLike) -> Floats:
    r"""Thermal conductivity of austenitic stainless steel.

    .. math:: k = 14.6 + 0.0127 \, T

    Parameters
    ----------
    temperature_c : array_like
        Temperature :math:`T`, 20 to 1200. [degC]

    Returns
    -------
    ndarray
        Conductivity. [W/(m K)]

    Notes
    -----
    Source: [EN1993-1-2-C-MEM].

    Examples
    --------
    >>> round(float(stainless_conductivity(20.0)), 1)
    14.9
    """
    return 14.6 + 0.0127 * np.asarray(temperature_c, dtype=np.float64)


def stainless_specific_heat(temperature_c: ArrayLike) -> Floats:
    r"""Specific heat of austenitic stainless steel.

    .. math:: c = 450 + 0.280 T - 2.91 \cdot 10^{-4} T^2 + 1.34 \cdot 10^{-7} T^3

    Parameters
    ----------
    temperature_c : array_like
        Temperature :math:`T`, 20 to 1200. [degC]

    Returns
    -------
    ndarray
        Specific heat. [J/(kg K)]

    Notes
    -----
    Source: [EN1993-1-2-C-MEM].

    Examples
    --------
    >>> round(float(stainless_specific_heat(20.0)))
    455
    """
    t = np.asarray(temperature_c, dtype=np.float64)
    return 450.0 + 0.280 * t - 2.91e-4 * t**2 + 1.34e-7 * t**3


def aluminium_conductivity(temperature_c: ArrayLike, at_zero_w_mk: float, slope_w_mk: float) -> Floats:
    r"""Thermal conductivity of an aluminium alloy.

    .. math:: k = k_0 + s \, T

    Parameters
    ----------
    temperature_c : array_like
        Temperature :math:`T`, 0 to 500. [degC]
    at_zero_w_mk : float
        Conductivity at 0 degC :math:`k_0`: 190 for 3xxx and 6xxx, 140 for 5xxx and 7xxx. [W/(m K)]
    slope_w_mk : float
        What a degree adds :math:`s`: 0.07 for 3xxx and 6xxx, 0.1 for 5xxx and 7xxx. [W/(m K)]

    Returns
    -------
    ndarray
        Conductivity. [W/(m K)]

    Notes
    -----
    Source: [EN1999-1-2], from memory.

    Examples
    --------
    >>> float(aluminium_conductivity(300.0, 140.0, 0.1))
    170.0
    """
    return at_zero_w_mk + slope_w_mk * np.asarray(temperature_c, dtype=np.float64)


def aluminium_specific_heat(temperature_c: ArrayLike) -> Floats:
    r"""Specific heat of an aluminium alloy.

    .. math:: c = 903 + 0.41 \, T

    Parameters
    ----------
    temperature_c : array_like
        Temperature :math:`T`, 0 to 500. [degC]

    Returns
    -------
    ndarray
        Specific heat. [J/(kg K)]

    Notes
    -----
    Source: [EN1999-1-2], from memory.

    Examples
    --------
    >>> float(aluminium_specific_heat(300.0))
    1026.0
    """
    return 903.0 + 0.41 * np.asarray(temperature_c, dtype=np.float64)

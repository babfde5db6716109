"""What keeps a pool that is molten right through from falling out: the skin of the liquid."""

from math import log, pi, sqrt

from welds.errors import OutsideValidityError
from welds.language import tr

GRAVITY_M_S2 = 9.80665
PERMEABILITY_N_A2 = 4e-7 * pi


def capillary_length(surface_tension_n_m: float, density_kg_m3: float) -> float:
    r"""Length over which a liquid's skin and its weight are equals.

    .. math:: l_c = \sqrt{\frac{\gamma}{\rho g}}

    Parameters
    ----------
    surface_tension_n_m : float
        Surface tension :math:`\gamma`, above zero. [N/m]
    density_kg_m3 : float
        Density of the liquid :math:`\rho`, above zero. [kg/m3]

    Returns
    -------
    float
        Capillary length. [mm]

    Notes
    -----
    Exact.

    Examples
    --------
    Water (0.072 N/m) has 2.7 mm, liquid steel about 4.5 mm:

    >>> round(capillary_length(0.072, 1000.0), 1), round(capillary_length(1.4, 7030.0), 1)
    (2.7, 4.5)
    """
    return 1e3 * sqrt(surface_tension_n_m / (density_kg_m3 * GRAVITY_M_S2))


def pool_sag(width_mm: float, length_mm: float, capillary_length_mm: float) -> float:
    r"""Sag of a liquid sheet over an elliptic opening, as a share of its thickness.

    .. math:: \frac{\delta}{d} = \frac{1}{4 l_c^2} \, \frac{a^2 b^2}{a^2 + b^2},
        \qquad a = \frac{w}{2}, \; b = \frac{L}{2}

    Parameters
    ----------
    width_mm : float
        Width of the opening :math:`w`, zero or above. [mm]
    length_mm : float
        Length of the opening :math:`L`, zero or above. [mm]
    capillary_length_mm : float
        Capillary length of the liquid :math:`l_c`, above zero. [mm]

    Returns
    -------
    float
        Sag over thickness. [1]

    Notes
    -----
    The deflection of a membrane with the tension of two liquid faces, :math:`2 \gamma`, under the weight of
    the sheet, small against its width; thickness cancels.
    Source: elasticity textbooks for the elliptic membrane, from memory.

    Examples
    --------
    A round pool of steel 13 mm across sags by a quarter of the sheet:

    >>> round(pool_sag(12.7, 12.7, 4.5), 2)
    0.25
    """
    if width_mm == 0.0 or length_mm == 0.0:
        return 0.0
    a, b = (width_mm / 2.0) ** 2, (length_mm / 2.0) ** 2
    return a * b / (a + b) / (4.0 * capillary_length_mm**2)


def arc_force(current_a: float, spread_1: float) -> float:
    r"""Push of an arc that widens from the electrode to the plate.

    .. math:: F = \frac{\mu_0 I^2}{8 \pi} \left( 1 + 2 \ln \frac{r_2}{r_1} \right)

    Parameters
    ----------
    current_a : float
        Arc current :math:`I`. [A]
    spread_1 : float
        Radius of the current on the plate over that at the electrode :math:`r_2 / r_1`, 1 and above. [1]

    Returns
    -------
    float
        Force. [N]

    Raises
    ------
    OutsideValidityError
        If the arc narrows towards the plate.

    Notes
    -----
    The current's own magnetic field; drops and shielding gas push besides.
    Source: [ARC-PHYSICS-MEM].

    Examples
    --------
    >>> round(1e3 * arc_force(200.0, 2.0), 1)
    4.8
    """
    if spread_1 < 1.0:
        raise OutsideValidityError("spread_1", spread_1, tr("1 and above"))
    return PERMEABILITY_N_A2 * current_a**2 / (8.0 * pi) * (1.0 + 2.0 * log(spread_1))


def arc_dent(force_n: float, surface_tension_n_m: float) -> float:
    r"""Depth to which a force presses a liquid's skin in.

    .. math:: \delta = \frac{F}{4 \pi \gamma}

    Parameters
    ----------
    force_n : float
        Force :math:`F`. [N]
    surface_tension_n_m : float
        Surface tension :math:`\gamma`, above zero. [N/m]

    Returns
    -------
    float
        Depth. [mm]

    Notes
    -----
    A point force on a membrane with the tension of two faces, the logarithm of the two radii taken as one:
    right to a factor of about two.
    Source: elasticity textbooks, from memory.

    Examples
    --------
    >>> round(arc_dent(arc_force(200.0, 2.0), 1.4), 2)
    0.27
    """
    return 1e3 * force_n / (4.0 * pi * surface_tension_n_m)

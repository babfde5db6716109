"""Heat that hot faces radiate, as a coefficient the moving-source field can carry."""

STEFAN_BOLTZMANN_W_M2K4 = 5.670374e-8
ZERO_C = 273.15


def radiation_coefficient(emissivity_1: float, hottest_c: float, surroundings_c: float) -> float:
    r"""Coefficient of the linear loss that radiates as much as a face between two temperatures does.

    .. math:: h = \varepsilon \sigma \,
        \frac{\int_{T_0}^{T_m} (T^4 - T_0^4) \, dT}{\int_{T_0}^{T_m} (T - T_0) \, dT}

    Parameters
    ----------
    emissivity_1 : float
        Emissivity :math:`\varepsilon`, 0 to 1. [1]
    hottest_c : float
        Melting temperature :math:`T_m`, above the surroundings. [degC]
    surroundings_c : float
        Temperature of plate and surroundings :math:`T_0`. [degC]

    Returns
    -------
    float
        Loss of one face. [W/(m2 K)]

    Notes
    -----
    Every temperature between the two counts alike; too little inside the pool, too much far from it. The
    law is exact, the mean our own.

    Examples
    --------
    >>> round(radiation_coefficient(0.4, 1500.0, 20.0))
    72
    """
    hot, cold = hottest_c + ZERO_C, surroundings_c + ZERO_C
    radiated = (hot**5 - cold**5) / 5.0 - cold**4 * (hot - cold)
    return emissivity_1 * STEFAN_BOLTZMANN_W_M2K4 * radiated / ((hot - cold) ** 2 / 2.0)

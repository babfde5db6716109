"""Cooling time of a steel weld from 800 to 500 degC, as EN 1011-2 has it."""

from math import sqrt

from welds.errors import OutsideValidityError
from welds.language import tr

HOTTEST_PREHEAT_C = 450.0


def cooling_time_two_dimensional(
    heat_input_kj_mm: float, thickness_mm: float, preheat_c: float, shape_factor_1: float
) -> float:
    r"""Cooling time where heat can only flow along the plate.

    .. math:: t_{8/5} = (4300 - 4.3 T_p) \, 10^5 \, \frac{Q^2}{d^2}
        \left[ \left( \frac{1}{500 - T_p} \right)^2 - \left( \frac{1}{800 - T_p} \right)^2 \right] F_2

    Parameters
    ----------
    heat_input_kj_mm : float
        Heat input :math:`Q` with the process factor of EN 1011-1, above zero. [kJ/mm]
    thickness_mm : float
        Plate thickness :math:`d`, above zero. [mm]
    preheat_c : float
        Preheat or interpass temperature :math:`T_p`, below 450. [degC]
    shape_factor_1 : float
        Shape factor :math:`F_2`. [1]

    Returns
    -------
    float
        Cooling time. [s]

    Raises
    ------
    OutsideValidityError
        If the preheat is 450 degC or above.

    Notes
    -----
    Unalloyed and low-alloy ferritic steel, plates thinner than `transition_thickness`.
    Source: [EN1011-2-T85-Q].

    Examples
    --------
    >>> round(cooling_time_two_dimensional(1.0, 6.0, 20.0, 1.0), 2)
    31.57
    """
    upper, lower = _spans(preheat_c)
    rise = (4300.0 - 4.3 * preheat_c) * 1e5 * (heat_input_kj_mm / thickness_mm) ** 2
    return rise * (upper**2 - lower**2) * shape_factor_1


def cooling_time_three_dimensional(heat_input_kj_mm: float, preheat_c: float, shape_factor_1: float) -> float:
    r"""Cooling time where heat can flow along and into the plate.

    .. math:: t_{8/5} = (6700 - 5 T_p) \, Q \left[ \frac{1}{500 - T_p} - \frac{1}{800 - T_p} \right] F_3

    Parameters
    ----------
    heat_input_kj_mm : float
        Heat input :math:`Q` with the process factor of EN 1011-1, above zero. [kJ/mm]
    preheat_c : float
        Preheat or interpass temperature :math:`T_p`, below 450. [degC]
    shape_factor_1 : float
        Shape factor :math:`F_3`. [1]

    Returns
    -------
    float
        Cooling time. [s]

    Raises
    ------
    OutsideValidityError
        If the preheat is 450 degC or above.

    Notes
    -----
    Unalloyed and low-alloy ferritic steel, plates thicker than `transition_thickness`.
    Source: [EN1011-2-T85-Q].

    Examples
    --------
    >>> round(cooling_time_three_dimensional(1.0, 20.0, 1.0), 2)
    5.29
    """
    upper, lower = _spans(preheat_c)
    return (6700.0 - 5.0 * preheat_c) * heat_input_kj_mm * (upper - lower) * shape_factor_1


def transition_thickness(
    heat_input_kj_mm: float, preheat_c: float, shape_factor_2_1: float, shape_factor_3_1: float
) -> float:
    r"""Thickness at which both cooling times are the same.

    .. math:: d_t = \sqrt{ \frac{(4300 - 4.3 T_p) \, 10^5}{6700 - 5 T_p} \, \frac{F_2}{F_3} \, Q
        \left[ \frac{1}{500 - T_p} + \frac{1}{800 - T_p} \right] }

    Parameters
    ----------
    heat_input_kj_mm : float
        Heat input :math:`Q` with the process factor of EN 1011-1, above zero. [kJ/mm]
    preheat_c : float
        Preheat or interpass temperature :math:`T_p`, below 450. [degC]
    shape_factor_2_1 : float
        Shape factor :math:`F_2`. [1]
    shape_factor_3_1 : float
        Shape factor :math:`F_3`. [1]

    Returns
    -------
    float
        Transition thickness. [mm]

    Raises
    ------
    OutsideValidityError
        If the preheat is 450 degC or above.

    Notes
    -----
    Algebra on the two cooling times.
    Source: [EN1011-2-T85-Q].

    Examples
    --------
    >>> round(transition_thickness(1.0, 20.0, 1.0, 1.0), 2)
    14.66
    """
    upper, lower = _spans(preheat_c)
    ratio = (4300.0 - 4.3 * preheat_c) * 1e5 / (6700.0 - 5.0 * preheat_c)
    return sqrt(ratio * shape_factor_2_1 / shape_factor_3_1 * heat_input_kj_mm * (upper + lower))


def cooling_time(
    heat_input_kj_mm: float,
    thickness_mm: float,
    preheat_c: float,
    shape_factor_2_1: float,
    shape_factor_3_1: float,
) -> float:
    r"""Cooling time by whichever of the two forms holds for the thickness.

    .. math:: t_{8/5} = \max ( t_{2D}, t_{3D} )

    Parameters
    ----------
    heat_input_kj_mm : float
        Heat input :math:`Q` with the process factor of EN 1011-1, above zero. [kJ/mm]
    thickness_mm : float
        Plate thickness, above zero. [mm]
    preheat_c : float
        Preheat or interpass temperature, below 450. [degC]
    shape_factor_2_1 : float
        Shape factor :math:`F_2`. [1]
    shape_factor_3_1 : float
        Shape factor :math:`F_3`. [1]

    Returns
    -------
    float
        Cooling time. [s]

    Raises
    ------
    OutsideValidityError
        If heat input or thickness is not above zero or the preheat is 450 degC or above.

    Notes
    -----
    Unalloyed and low-alloy ferritic steel.
    Source: [EN1011-2-T85-Q].

    Examples
    --------
    >>> round(cooling_time(1.5, 12.0, 100.0, 0.9, 0.9), 2)
    22.91
    """
    for name, value in (("heat_input_kj_mm", heat_input_kj_mm), ("thickness_mm", thickness_mm)):
        if not value > 0.0:
            raise OutsideValidityError(name, value, tr("above zero"))
    return max(
        cooling_time_two_dimensional(heat_input_kj_mm, thickness_mm, preheat_c, shape_factor_2_1),
        cooling_time_three_dimensional(heat_input_kj_mm, preheat_c, shape_factor_3_1),
    )


def _spans(preheat_c: float) -> tuple[float, float]:
    if not preheat_c < HOTTEST_PREHEAT_C:
        raise OutsideValidityError(
            "preheat_c",
            preheat_c,
            tr("below {hottest:g} degC", hottest=HOTTEST_PREHEAT_C),
        )
    return 1.0 / (500.0 - preheat_c), 1.0 / (800.0 - preheat_c)

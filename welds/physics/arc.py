"""Arc voltage, arc energy and heat input."""

from welds.errors import OutsideValidityError
from welds.language import tr

TIG_LOAD_LINE_V, MIG_LOAD_LINE_V = (10.0, 0.04), (14.0, 0.05)
"""Conventional load voltage: volts at zero current, volts per ampere."""

LOAD_LINE_LIMIT_A = 600.0


def conventional_load_voltage_tig(current_a: float) -> float:
    r"""Voltage at which a TIG power source is rated.

    .. math:: U_2 = 10 + 0.04 \, I_2

    Parameters
    ----------
    current_a : float
        Welding current :math:`I_2`, 0 to 600. [A]

    Returns
    -------
    float
        Conventional load voltage. [V]

    Raises
    ------
    OutsideValidityError
        If the current is outside 0 to 600 A.

    Notes
    -----
    A rating line, not a measured arc: real argon arcs on thin metal run 1 to 3 V lower.
    Source: [IEC_60974_1_MEM], clause 11.2.

    Examples
    --------
    >>> conventional_load_voltage_tig(150.0)
    16.0
    """
    return _on_load_line(current_a, *TIG_LOAD_LINE_V)


def conventional_load_voltage_mig(current_a: float) -> float:
    r"""Voltage at which a MIG or MAG power source is rated.

    .. math:: U_2 = 14 + 0.05 \, I_2

    Parameters
    ----------
    current_a : float
        Welding current :math:`I_2`, 0 to 600. [A]

    Returns
    -------
    float
        Conventional load voltage. [V]

    Raises
    ------
    OutsideValidityError
        If the current is outside 0 to 600 A.

    Notes
    -----
    A rating line, not a set-up line.
    Source: [IEC_60974_1_MEM], clause 11.2.

    Examples
    --------
    >>> conventional_load_voltage_mig(150.0)
    21.5
    """
    return _on_load_line(current_a, *MIG_LOAD_LINE_V)


def _on_load_line(current_a: float, at_zero_v: float, slope_v_a: float) -> float:
    if not 0.0 <= current_a <= LOAD_LINE_LIMIT_A:
        raise OutsideValidityError(
            "current_a",
            current_a,
            tr("{low:g} to {high:g} {unit}", low=0.0, high=LOAD_LINE_LIMIT_A, unit="A"),
        )
    return at_zero_v + slope_v_a * current_a


def heat_input(voltage_v: float, current_a: float, speed_mm_s: float, process_factor_1: float) -> float:
    r"""Heat put into the plate per length of weld.

    .. math:: Q = k \, \frac{U I}{v} \, 10^{-3}

    Parameters
    ----------
    voltage_v : float
        Arc voltage :math:`U`. [V]
    current_a : float
        Arc current :math:`I`. [A]
    speed_mm_s : float
        Travel speed :math:`v`, above zero. [mm/s]
    process_factor_1 : float
        Thermal efficiency :math:`k`, above 0 and at most 1: 0.6 for TIG and 0.8 for MIG in EN 1011-1. [1]

    Returns
    -------
    float
        Heat input :math:`Q`. [kJ/mm]

    Raises
    ------
    OutsideValidityError
        If the speed is not above zero or the factor is outside its range.

    Notes
    -----
    Mean values of a steady arc; for pulsed arcs use the mean of the instantaneous power instead.
    Source: [EN1011-2-Q].

    Examples
    --------
    >>> round(heat_input(21.5, 150.0, 5.0, 0.8), 3)
    0.516
    """
    if not speed_mm_s > 0.0:
        raise OutsideValidityError("speed_mm_s", speed_mm_s, tr("above zero"))
    if not 0.0 < process_factor_1 <= 1.0:
        raise OutsideValidityError("process_factor_1", process_factor_1, tr("above 0 to 1"))
    return process_factor_1 * voltage_v * current_a / speed_mm_s * 1e-3

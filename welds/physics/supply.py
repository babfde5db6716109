"""What the mains give so that the arc gets its current: supply current, cord and feeder arithmetic."""

from collections.abc import Sequence
from math import sqrt

from welds.errors import OutsideValidityError
from welds.language import tr

COPPER_OHM_MM2_M = 0.0175
"""Resistivity of copper wire at room temperature; a warm cord has more."""

GROUP_SHARES = (1.0, 1.0, 0.85, 0.70)
GROUP_REST = 0.60
"""Shares of the largest, second, third and fourth welder on one feeder, and of all further ones."""

CONDUCTORS_THERE_AND_BACK, LINE_TO_LINE = 2.0, sqrt(3.0)


def apparent_power(voltage_v: float, current_a: float, efficiency_1: float, power_factor_1: float) -> float:
    r"""Apparent power that a power source draws at one output.

    .. math:: S = \frac{U_2 I_2}{\eta \lambda} \, 10^{-3}

    Parameters
    ----------
    voltage_v : float
        Load voltage :math:`U_2`. [V]
    current_a : float
        Welding current :math:`I_2`. [A]
    efficiency_1 : float
        Efficiency :math:`\eta`, above 0 to 1. [1]
    power_factor_1 : float
        Power factor :math:`\lambda`, above 0 to 1. [1]

    Returns
    -------
    float
        Apparent power :math:`S`. [kVA]

    Raises
    ------
    OutsideValidityError
        If efficiency or power factor is not above 0 to 1.

    Notes
    -----
    Leaves out what the set draws idle, at most 50 W on new sets.
    Source: [EU_2019_1784], the quantities it limits; the balance itself is arithmetic.

    Examples
    --------
    >>> round(apparent_power(21.5, 150.0, 0.80, 0.70), 3)
    5.759
    """
    for name, value in (("efficiency_1", efficiency_1), ("power_factor_1", power_factor_1)):
        if not 0.0 < value <= 1.0:
            raise OutsideValidityError(name, value, tr("above 0 to 1"))
    return voltage_v * current_a / (efficiency_1 * power_factor_1) * 1e-3


def supply_current(apparent_power_kva: float, supply_v: float, phases: int) -> float:
    r"""Current in each supply conductor.

    .. math:: I_1 = \frac{1000 S}{U_1} \quad\text{or}\quad I_1 = \frac{1000 S}{\sqrt{3}\, U_1}

    Parameters
    ----------
    apparent_power_kva : float
        Apparent power :math:`S`. [kVA]
    supply_v : float
        Supply voltage :math:`U_1`, between the conductors; above zero. [V]
    phases : int
        1 or 3. [1]

    Returns
    -------
    float
        Supply current :math:`I_1`. [A]

    Raises
    ------
    OutsideValidityError
        If the voltage is not above zero or the phases are neither 1 nor 3.

    Notes
    -----
    Balanced phases.
    Source: [MEM_GMAW], textbook arithmetic.

    Examples
    --------
    >>> round(supply_current(5.759, 230.0, 1), 1)
    25.0
    """
    if not supply_v > 0.0:
        raise OutsideValidityError("supply_v", supply_v, tr("above zero"))
    if phases not in (1, 3):
        raise OutsideValidityError("phases", phases, "1 or 3")
    return 1e3 * apparent_power_kva / (supply_v * (LINE_TO_LINE if phases == 3 else 1.0))


def effective_supply_current(current_a: float, idle_a: float, duty_1: float) -> float:
    r"""Steady current that warms wires and breaker as much as welding and waiting in turn.

    .. math:: I_{1eff} = \sqrt{I_1^2 X + I_0^2 (1 - X)}

    Parameters
    ----------
    current_a : float
        Supply current under load :math:`I_1`. [A]
    idle_a : float
        Supply current at no load :math:`I_0`. [A]
    duty_1 : float
        Share of the time with the arc burning :math:`X`, 0 to 1. [1]

    Returns
    -------
    float
        Effective supply current. [A]

    Raises
    ------
    OutsideValidityError
        If the share is outside 0 to 1.

    Notes
    -----
    Over cycles of ten minutes.
    Source: [IEC_60974_1_MEM]; the quantity is named in [NEC_630_2008].

    Examples
    --------
    >>> round(effective_supply_current(25.0, 1.0, 0.35), 1)
    14.8
    """
    if not 0.0 <= duty_1 <= 1.0:
        raise OutsideValidityError("duty_1", duty_1, "0 to 1")
    return sqrt(current_a**2 * duty_1 + idle_a**2 * (1.0 - duty_1))


def feeder_current(conductor_currents_a: Sequence[float]) -> float:
    r"""Ampacity asked of one feeder for several welders used by different hands.

    .. math:: I = I_a + I_b + 0.85 I_c + 0.70 I_d + 0.60 \sum I_{rest}

    Parameters
    ----------
    conductor_currents_a : Sequence[float]
        Supply current of each welder times its factor for the duty cycle, in any order. [A]

    Returns
    -------
    float
        Ampacity of the shared conductors. [A]

    Raises
    ------
    OutsideValidityError
        If a current is negative.

    Notes
    -----
    Largest first. Who governs the installation decides; this only shows the size of it.
    Source: [NEC_630_2008], 630.11(B).

    Examples
    --------
    >>> feeder_current([40.0, 30.0, 20.0])
    87.0
    """
    if any(each < 0.0 for each in conductor_currents_a):
        raise OutsideValidityError("conductor_currents_a", min(conductor_currents_a), tr("zero or more"))
    largest_first = sorted(conductor_currents_a, reverse=True)
    shares = [*GROUP_SHARES, *[GROUP_REST] * len(largest_first)]
    return sum(share * each for share, each in zip(shares, largest_first, strict=False))


def cord_voltage_drop(current_a: float, length_m: float, area_mm2: float, phases: int) -> float:
    r"""Volts that a copper extension cord takes.

    .. math:: \Delta U = k \frac{\rho L}{A} I

    Parameters
    ----------
    current_a : float
        Supply current :math:`I`. [A]
    length_m : float
        Length of the cord :math:`L`, one way. [m]
    area_mm2 : float
        Cross-section of one copper conductor :math:`A`, above zero. [mm2]
    phases : int
        1 (there and back, k = 2) or 3 (k = square root of 3). [1]

    Returns
    -------
    float
        Voltage drop between the conductors. [V]

    Raises
    ------
    OutsideValidityError
        If the cross-section is not above zero or the phases are neither 1 nor 3.

    Notes
    -----
    Copper at 20 degC, 0.0175 ohm mm2 per m; a loaded cord is warmer and takes up to a fifth more.
    Source: [MEM_GMAW], textbook arithmetic.

    Examples
    --------
    >>> cord_voltage_drop(25.0, 20.0, 2.5, 1)
    7.0
    """
    if not area_mm2 > 0.0:
        raise OutsideValidityError("area_mm2", area_mm2, tr("above zero"))
    if phases not in (1, 3):
        raise OutsideValidityError("phases", phases, "1 or 3")
    ways = LINE_TO_LINE if phases == 3 else CONDUCTORS_THERE_AND_BACK
    return ways * COPPER_OHM_MM2_M * length_m / area_mm2 * current_a


def gas_left(water_volume_l: float, pressure_bar: float) -> float:
    r"""Gas in a bottle, as litres at the cup.

    .. math:: V = V_w \frac{p}{p_0}

    Parameters
    ----------
    water_volume_l : float
        What the bottle would hold of water :math:`V_w`. [L]
    pressure_bar : float
        Reading of the bottle's gauge :math:`p`, 0 to 300. [bar]

    Returns
    -------
    float
        Gas at 1 bar :math:`V`. [L]

    Raises
    ------
    OutsideValidityError
        If the pressure is outside 0 to 300 bar.

    Notes
    -----
    Ideal gas at room temperature, with p0 = 1 bar. Argon at 200 bar holds some percent more. Does not hold
    for carbon dioxide, which is liquid in the bottle.
    Source: [COMMON_PRACTICE].

    Examples
    --------
    >>> gas_left(20.0, 150.0)
    3000.0
    """
    if not 0.0 <= pressure_bar <= 300.0:
        raise OutsideValidityError("pressure_bar", pressure_bar, tr("0 to 300 bar"))
    return water_volume_l * pressure_bar

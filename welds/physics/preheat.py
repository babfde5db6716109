"""Carbon equivalents of a steel, and the preheat they ask for."""

from math import tanh

from welds.errors import OutsideValidityError
from welds.language import tr


def carbon_equivalent_iiw(
    carbon_percent: float,
    manganese_percent: float = 0.0,
    chromium_percent: float = 0.0,
    molybdenum_percent: float = 0.0,
    vanadium_percent: float = 0.0,
    nickel_percent: float = 0.0,
    copper_percent: float = 0.0,
) -> float:
    r"""Carbon equivalent of the International Institute of Welding.

    .. math:: CE = C + \frac{Mn}{6} + \frac{Cr + Mo + V}{5} + \frac{Ni + Cu}{15}

    Parameters
    ----------
    carbon_percent, manganese_percent, chromium_percent : float
        Share by mass. [percent]
    molybdenum_percent, vanadium_percent : float
        Share by mass. [percent]
    nickel_percent, copper_percent : float
        Share by mass. [percent]

    Returns
    -------
    float
        Carbon equivalent. [percent]

    Notes
    -----
    Made for steels with more than about 0.18 % carbon.
    Source: [CE-FORM-Q].

    Examples
    --------
    >>> round(carbon_equivalent_iiw(0.30, 0.50, 0.95, 0.20), 3)
    0.613
    """
    alloying = (chromium_percent + molybdenum_percent + vanadium_percent) / 5.0
    return carbon_percent + manganese_percent / 6.0 + alloying + (nickel_percent + copper_percent) / 15.0


def carbon_equivalent_cet(
    carbon_percent: float,
    manganese_percent: float = 0.0,
    molybdenum_percent: float = 0.0,
    chromium_percent: float = 0.0,
    copper_percent: float = 0.0,
    nickel_percent: float = 0.0,
) -> float:
    r"""Carbon equivalent of EN 1011-2, method B.

    .. math:: CET = C + \frac{Mn + Mo}{10} + \frac{Cr + Cu}{20} + \frac{Ni}{40}

    Parameters
    ----------
    carbon_percent, manganese_percent, molybdenum_percent : float
        Share by mass. [percent]
    chromium_percent, copper_percent, nickel_percent : float
        Share by mass. [percent]

    Returns
    -------
    float
        Carbon equivalent. [percent]

    Notes
    -----
    One copy prints 10 below chromium and copper; taken as a typing error.
    Source: [EN1011-2].

    Examples
    --------
    >>> round(carbon_equivalent_cet(0.18, 1.4), 3)
    0.32
    """
    light = (manganese_percent + molybdenum_percent) / 10.0
    return carbon_percent + light + (chromium_percent + copper_percent) / 20.0 + nickel_percent / 40.0


def preheat_cet(
    cet_percent: float, thickness_mm: float, hydrogen_ml_100g: float, heat_input_kj_mm: float
) -> float:
    r"""Preheat against cracks from hydrogen, EN 1011-2 method B.

    .. math:: T_p = 697 \, CET + 160 \tanh \frac{d}{35} + 62 \, HD^{0.35} + (53 \, CET - 32) \, Q - 328

    Parameters
    ----------
    cet_percent : float
        Carbon equivalent :math:`CET`, 0.2 to 0.5. [percent]
    thickness_mm : float
        Plate thickness :math:`d`, 10 to 90. [mm]
    hydrogen_ml_100g : float
        Diffusible hydrogen of the weld metal :math:`HD`, 1 to 20. [ml/100g]
    heat_input_kj_mm : float
        Heat input :math:`Q`, 0.5 to 4. [kJ/mm]

    Returns
    -------
    float
        Preheat; below about 20 none is needed beyond drying. [degC]

    Raises
    ------
    OutsideValidityError
        If any argument is outside the range the standard states.

    Notes
    -----
    Source: [EN1011-2-Q]; ranges other than composition from memory.

    Examples
    --------
    >>> round(preheat_cet(0.32, 30.0, 5.0, 1.5), 1)
    92.5
    """
    for name, value, low, high, unit in (
        ("cet_percent", cet_percent, 0.2, 0.5, "percent"),
        ("thickness_mm", thickness_mm, 10.0, 90.0, "mm"),
        ("hydrogen_ml_100g", hydrogen_ml_100g, 1.0, 20.0, "ml/100g"),
        ("heat_input_kj_mm", heat_input_kj_mm, 0.5, 4.0, "kJ/mm"),
    ):
        if not low <= value <= high:
            raise OutsideValidityError(
                name, value, tr("{low:g} to {high:g} {unit}", low=low, high=high, unit=unit)
            )
    section = 160.0 * tanh(thickness_mm / 35.0)
    heat = (53.0 * cet_percent - 32.0) * heat_input_kj_mm
    return 697.0 * cet_percent + section + 62.0 * hydrogen_ml_100g**0.35 + heat - 328.0

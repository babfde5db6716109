"""Sheet bent cold along a straight line: what it takes off the flat."""

from math import log10, pi, radians, tan

from welds.errors import OutsideValidityError
from welds.language import tr

LARGEST_ANGLE_DEG = 170.0
"""Beyond this the two outside faces hardly meet any more and a dimension to their crossing means nothing."""


def bend_allowance(angle_deg: float, radius_mm: float, thickness_mm: float, k: float) -> float:
    r"""Length of flat sheet that a bend uses up, along its neutral line.

    .. math:: B_A = \frac{\pi}{180} A \, (R + K T)

    Parameters
    ----------
    angle_deg : float
        Angle turned through :math:`A`, above zero, up to 180. [deg]
    radius_mm : float
        Inside radius :math:`R`, zero or above. [mm]
    thickness_mm : float
        Thickness :math:`T`, above zero. [mm]
    k : float
        Neutral line from the inside face, over the thickness, :math:`K`. [1]

    Returns
    -------
    float
        Allowance. [mm]

    Raises
    ------
    OutsideValidityError
        If the angle is not above zero and up to 180.

    Notes
    -----
    Exact once K is known.
    Source: [TEXT-COMMON].

    Examples
    --------
    >>> round(bend_allowance(90.0, 3.0, 2.0, 0.42), 4)
    6.0319
    """
    if not 0.0 < angle_deg <= 180.0:
        raise OutsideValidityError("angle_deg", angle_deg, tr("above 0, up to 180"))
    return radians(angle_deg) * (radius_mm + k * thickness_mm)


def setback(angle_deg: float, radius_mm: float) -> float:
    r"""Distance from where a face begins to curve to where its two straight parts would cross.

    .. math:: S = R \tan\frac{A}{2}

    Parameters
    ----------
    angle_deg : float
        Angle turned through :math:`A`, above zero, up to 170. [deg]
    radius_mm : float
        Radius of that face :math:`R`: inside radius, or inside radius plus thickness for the outside. [mm]

    Returns
    -------
    float
        Setback. [mm]

    Raises
    ------
    OutsideValidityError
        If the angle is out of range.

    Notes
    -----
    Geometry; grows without end towards 180 degrees.
    Source: [FAA-8083-31].

    Examples
    --------
    Outside face of a bend of 0.16 in inside radius in 0.040 in sheet:

    >>> round(setback(90.0, (0.16 + 0.040) * 25.4) / 25.4, 3)
    0.2
    """
    if not 0.0 < angle_deg <= LARGEST_ANGLE_DEG:
        raise OutsideValidityError(
            "angle_deg",
            angle_deg,
            tr("above 0, up to {largest:g}", largest=LARGEST_ANGLE_DEG),
        )
    return radius_mm * tan(radians(angle_deg) / 2.0)


def bend_deduction(angle_deg: float, radius_mm: float, thickness_mm: float, k: float) -> float:
    r"""What two outside dimensions are too long by, taken together, for the flat.

    .. math:: B_D = 2 (R + T) \tan\frac{A}{2} - B_A

    Parameters
    ----------
    angle_deg : float
        Angle turned through :math:`A`, above zero, up to 170. [deg]
    radius_mm : float
        Inside radius :math:`R`, zero or above. [mm]
    thickness_mm : float
        Thickness :math:`T`, above zero. [mm]
    k : float
        Neutral line from the inside face, over the thickness, :math:`K`. [1]

    Returns
    -------
    float
        Deduction. [mm]

    Notes
    -----
    Dimensions to where the outside faces cross, at every angle.
    Source: [TEXT-COMMON].

    Examples
    --------
    >>> round(bend_deduction(90.0, 3.0, 2.0, 0.42), 4)
    3.9681
    """
    outside = 2.0 * setback(angle_deg, radius_mm + thickness_mm)
    return outside - bend_allowance(angle_deg, radius_mm, thickness_mm, k)


def neutral_line_din_6935(radius_mm: float, thickness_mm: float) -> float:
    r"""Neutral line of a bend in steel, from the inside face, over the thickness.

    .. math:: K = \frac{1}{2} \min\left(1,\; 0.65 + \frac{1}{2} \log_{10}\frac{r}{s}\right)

    Parameters
    ----------
    radius_mm : float
        Inside radius :math:`r`, above zero. [mm]
    thickness_mm : float
        Thickness :math:`s`, above zero. [mm]

    Returns
    -------
    float
        K, half the standard's correction factor k. [1]

    Raises
    ------
    OutsideValidityError
        If the radius is below a tenth of the thickness: the logarithm runs away.

    Notes
    -----
    Flat steel products; the factor is 1 for r/s above 5.
    Source: [DIN6935-Q].

    Examples
    --------
    >>> round(2.0 * neutral_line_din_6935(1.6, 1.0), 3)
    0.752
    """
    ratio = radius_mm / thickness_mm
    if not ratio >= 0.1:
        raise OutsideValidityError("radius_mm", radius_mm, tr("a tenth of the thickness or more"))
    return min(1.0, 0.65 + 0.5 * log10(ratio)) / 2.0


def compensation_din_6935(opening_deg: float, radius_mm: float, thickness_mm: float) -> float:
    r"""Compensation value that DIN 6935 adds to the sum of the leg lengths; negative shortens.

    .. math:: v = \pi \frac{180 - \beta}{180} \left(r + \frac{k s}{2}\right) - 2 (r + s) \, c,
        \quad c = 1 \;(\beta \le 90), \; \tan\frac{180 - \beta}{2} \;(\beta \le 165)

    Parameters
    ----------
    opening_deg : float
        Opening angle :math:`\beta` between the legs, 0 to 180. [deg]
    radius_mm : float
        Inside radius :math:`r`, above zero. [mm]
    thickness_mm : float
        Thickness :math:`s`, above zero. [mm]

    Returns
    -------
    float
        Compensation v. [mm]

    Raises
    ------
    OutsideValidityError
        If the opening angle is outside 0 to 180.

    Notes
    -----
    Zero above 165 degrees.  Up to 90 degrees legs are measured over the bend, to its tangent.
    Source: [DIN6935-Q].

    Examples
    --------
    >>> round(compensation_din_6935(90.0, 1.0, 1.0), 3)
    -1.919
    """
    if not 0.0 <= opening_deg <= 180.0:
        raise OutsideValidityError("opening_deg", opening_deg, "0 to 180")
    if opening_deg > 165.0:
        return 0.0
    turned = 180.0 - opening_deg
    neutral = radius_mm + neutral_line_din_6935(radius_mm, thickness_mm) * thickness_mm
    crossing = 1.0 if opening_deg <= 90.0 else tan(radians(turned) / 2.0)
    return radians(turned) * neutral - 2.0 * (radius_mm + thickness_mm) * crossing


def airframe_allowance(angle_deg: float, radius_mm: float, thickness_mm: float) -> float:
    r"""Bend allowance by the airframe handbooks' fitted formula.

    .. math:: B_A = (0.01743 R + 0.0078 T) \, A

    Parameters
    ----------
    angle_deg : float
        Angle turned through :math:`A`, 1 to 180. [deg]
    radius_mm : float
        Inside radius :math:`R`, zero or above. [mm]
    thickness_mm : float
        Thickness :math:`T`, above zero. [mm]

    Returns
    -------
    float
        Allowance. [mm]

    Raises
    ------
    OutsideValidityError
        If the angle is outside 1 to 180.

    Notes
    -----
    Fitted to bends in aircraft sheet; one page prints 0.0173 for the radius.
    Source: [FAA-BA-MEM], [NAVY-ASM-13-19].

    Examples
    --------
    60 degrees, 0.156 in radius, 0.040 in sheet:

    >>> round(airframe_allowance(60.0, 0.156 * 25.4, 0.040 * 25.4) / 25.4, 3)
    0.182
    """
    if not 1.0 <= angle_deg <= 180.0:
        raise OutsideValidityError("angle_deg", angle_deg, "1 to 180")
    return (0.01743 * radius_mm + 0.0078 * thickness_mm) * angle_deg


def shop_deduction(radius_mm: float, thickness_mm: float) -> float:
    r"""Deduction for one bend of 90 degrees by the drawing school's rule of thumb.

    .. math:: v = 0.5 \, r + 1.5 \, t

    Parameters
    ----------
    radius_mm : float
        Inside radius :math:`r`, small. [mm]
    thickness_mm : float
        Thickness :math:`t`, above zero. [mm]

    Returns
    -------
    float
        What to take off the sum of the outside dimensions. [mm]

    Notes
    -----
    90 degrees and small radii only.
    Source: [WESTERMANN].

    Examples
    --------
    >>> 50.0 + 40.0 + 30.0 - 2 * shop_deduction(1.0, 1.0)
    116.0
    """
    return 0.5 * radius_mm + 1.5 * thickness_mm


def neutral_line_from_test_bend(
    angle_deg: float, radius_mm: float, thickness_mm: float, flat_mm: float, legs_mm: float
) -> float:
    r"""Neutral line that one measured bend shows: `bend_allowance` solved for K.

    .. math:: K = \frac{1}{T} \left( \frac{180 \, (L_0 - \Sigma + 2 S)}{\pi A} - R \right)

    Parameters
    ----------
    angle_deg : float
        Angle turned through :math:`A`, above zero, up to 170. [deg]
    radius_mm : float
        Inside radius as it came out :math:`R`. [mm]
    thickness_mm : float
        Thickness :math:`T`, above zero. [mm]
    flat_mm : float
        Length of the strip before the bend :math:`L_0`. [mm]
    legs_mm : float
        Sum of both outside dimensions after it :math:`\Sigma`. [mm]

    Returns
    -------
    float
        K. [1]

    Notes
    -----
    Good to the measuring error over A T: 0.1 mm on a 90 degree bend in 2 mm sheet is 0.03.
    Source: [TEXT-COMMON].

    Examples
    --------
    >>> round(neutral_line_from_test_bend(90.0, 3.0, 2.0, 76.0319, 80.0), 3)
    0.42
    """
    allowance = flat_mm - legs_mm + 2.0 * setback(angle_deg, radius_mm + thickness_mm)
    return (180.0 * allowance / (pi * angle_deg) - radius_mm) / thickness_mm

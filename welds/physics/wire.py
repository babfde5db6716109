"""Wire melted by its own current, and what it fills."""

from math import pi, sqrt

from welds.errors import OutsideValidityError
from welds.language import tr


def wire_area(diameter_mm: float) -> float:
    r"""Cross-section of a round wire or rod.

    .. math:: A = \frac{\pi d^2}{4}

    Parameters
    ----------
    diameter_mm : float
        Diameter :math:`d`, above zero. [mm]

    Returns
    -------
    float
        Area. [mm2]

    Notes
    -----
    Exact.

    Examples
    --------
    >>> round(wire_area(0.9), 4)
    0.6362
    """
    return pi * diameter_mm**2 / 4.0


def wire_feed(
    current_a: float, diameter_mm: float, extension_mm: float, arc_mm3_as: float, resistance_mm4_a2s: float
) -> float:
    r"""Feed at which wire melts as fast as it comes.

    .. math:: W = \frac{K_1 I}{A} + \frac{K_2 L I^2}{A^2}

    Parameters
    ----------
    current_a : float
        Arc current :math:`I`, above zero. [A]
    diameter_mm : float
        Wire diameter, from which the area :math:`A`. [mm]
    extension_mm : float
        Wire between contact tip and arc :math:`L`, zero or above. [mm]
    arc_mm3_as : float
        Volume the arc melts per ampere second :math:`K_1`. [mm3/(A s)]
    resistance_mm4_a2s : float
        What the wire's own resistance adds :math:`K_2`. [mm4/(A2 s)]

    Returns
    -------
    float
        Wire feed. [mm/s]

    Raises
    ------
    OutsideValidityError
        If the current or the diameter is not above zero.

    Notes
    -----
    Steady arc, electrode positive.  The resistance term is poorly known; carry at least 20 % either way.
    Source: [QUINTINO_ALLUM_MEM], [AWS_WHB1_MEM].

    Examples
    --------
    Mild steel, 1.2 mm (0.30 mm/(s A) and 5.0e-5 per s A2, times the area and its square):

    >>> round(wire_feed(200.0, 1.2, 15.0, 0.339, 6.4e-5), 1)
    90.0
    """
    if not current_a > 0.0:
        raise OutsideValidityError("current_a", current_a, tr("above zero"))
    if not diameter_mm > 0.0:
        raise OutsideValidityError("diameter_mm", diameter_mm, tr("above zero"))
    area = wire_area(diameter_mm)
    return arc_mm3_as * current_a / area + resistance_mm4_a2s * extension_mm * (current_a / area) ** 2


def current_for_wire_feed(
    feed_mm_s: float, diameter_mm: float, extension_mm: float, arc_mm3_as: float, resistance_mm4_a2s: float
) -> float:
    r"""Current that a wire feed settles at: `wire_feed` solved for the current.

    .. math:: I = A \, \frac{-K_1 + \sqrt{K_1^2 + 4 K_2 L W}}{2 K_2 L}

    Parameters
    ----------
    feed_mm_s : float
        Wire feed :math:`W`, above zero. [mm/s]
    diameter_mm : float
        Wire diameter, from which the area :math:`A`. [mm]
    extension_mm : float
        Wire between contact tip and arc :math:`L`, zero or above. [mm]
    arc_mm3_as : float
        Volume the arc melts per ampere second :math:`K_1`. [mm3/(A s)]
    resistance_mm4_a2s : float
        What the wire's own resistance adds :math:`K_2`; zero leaves the linear law. [mm4/(A2 s)]

    Returns
    -------
    float
        Current. [A]

    Raises
    ------
    OutsideValidityError
        If the feed is not above zero.

    Notes
    -----
    Same range as `wire_feed`.
    Source: [QUINTINO_ALLUM_MEM].

    Examples
    --------
    >>> round(current_for_wire_feed(90.0, 1.2, 15.0, 0.339, 6.4e-5), 0)
    200.0
    """
    if not feed_mm_s > 0.0:
        raise OutsideValidityError("feed_mm_s", feed_mm_s, tr("above zero"))
    area = wire_area(diameter_mm)
    bend = resistance_mm4_a2s * extension_mm
    if bend == 0.0:
        return feed_mm_s * area / arc_mm3_as
    return area * (-arc_mm3_as + sqrt(arc_mm3_as**2 + 4.0 * bend * feed_mm_s)) / (2.0 * bend)


def plug_fill_time(hole_mm: float, thickness_mm: float, diameter_mm: float, feed_mm_s: float) -> float:
    r"""Arc time that fills a round hole flush with wire.

    .. math:: t = \frac{d_h^2 \, s}{d^2 \, W}

    Parameters
    ----------
    hole_mm : float
        Hole diameter :math:`d_h`, above zero. [mm]
    thickness_mm : float
        Depth of the hole :math:`s`, above zero. [mm]
    diameter_mm : float
        Wire diameter :math:`d`, above zero. [mm]
    feed_mm_s : float
        Wire feed :math:`W`, above zero. [mm/s]

    Returns
    -------
    float
        Time. [s]

    Notes
    -----
    Volume balance, cap and melted sheet not counted, nothing lost as spatter.

    Examples
    --------
    An 8 mm hole (5/16 in) in 1.52 mm sheet, 0.76 mm wire at 63.5 mm/s (150 in/min):

    >>> round(plug_fill_time(7.94, 1.52, 0.76, 63.5), 1)
    2.6
    """
    return hole_mm**2 * thickness_mm / (diameter_mm**2 * feed_mm_s)

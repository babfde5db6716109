"""The cross-section that filler has to fill, joint by joint: plain geometry of the drawn weld."""

from math import pi, radians, tan

from welds.advice.request import Joint

SQUARE_BUTT_MM = 3.2
"""Up to 1/8 in edges are left square (NAVEDTRA 14250 chapter 8); thicker ones get a V."""
V_ANGLE_DEG = 60.0
CAP_HEIGHT_MM = 1.0
"""Height of the cap on a V; a square butt gets a quarter of its thickness."""
_PARABOLA = 2.0 / 3.0


def weld_section(joint: Joint, thickness_mm: float, gap_mm: float = 0.0) -> float:
    """Return the section in square millimetres; `thickness_mm` is the thinner sheet's.

    Fillets have legs of one thickness, an open corner is filled like one, a square butt carries a parabolic
    cap two thicknesses wide on the face, an edge is bridged by such a cap over both edges.
    """
    if joint in (Joint.TEE, Joint.LAP, Joint.INSIDE_CORNER, Joint.OUTSIDE_CORNER):
        return fillet_section(thickness_mm)
    if joint is Joint.EDGE:
        return _PARABOLA * 2.0 * thickness_mm * thickness_mm / 4.0
    if thickness_mm <= SQUARE_BUTT_MM:
        return gap_mm * thickness_mm + _PARABOLA * (2.0 * thickness_mm + gap_mm) * thickness_mm / 4.0
    return v_section(thickness_mm, gap_mm)


def fillet_section(leg_mm: float) -> float:
    """Return the triangle of a fillet with equal legs."""
    return leg_mm**2 / 2.0


def v_section(thickness_mm: float, gap_mm: float) -> float:
    """Return a V without root face, with its gap and a parabolic cap."""
    slope = tan(radians(V_ANGLE_DEG / 2.0))
    width = 2.0 * thickness_mm * slope + gap_mm
    return thickness_mm**2 * slope + gap_mm * thickness_mm + _PARABOLA * width * CAP_HEIGHT_MM


def plug_volume(hole_mm: float, thickness_mm: float) -> float:
    """Return what a hole takes, filled flush, in cubic millimetres."""
    return pi * hole_mm**2 / 4.0 * thickness_mm

"""Heat carried away by a plate while a moving source melts it."""

from welds.errors import OutsideValidityError
from welds.language import tr


def power_to_melt_thin_plate(
    conductivity_w_mk: float,
    volumetric_heat_j_m3k: float,
    melting_rise_k: float,
    thickness_mm: float,
    fused_width_mm: float,
    speed_mm_s: float,
) -> float:
    r"""Net power that melts a given width right through a thin plate.

    .. math:: q = 8 \, k \, \Delta T \, d \left( \frac{1}{5} + \frac{v w \, \rho c}{4 k} \right)

    Parameters
    ----------
    conductivity_w_mk : float
        Thermal conductivity :math:`k`, above zero. [W/(m K)]
    volumetric_heat_j_m3k : float
        Density times specific heat :math:`\rho c`, above zero. [J/(m3 K)]
    melting_rise_k : float
        Melting temperature above the plate's :math:`\Delta T`, above zero. [K]
    thickness_mm : float
        Plate thickness :math:`d`, above zero. [mm]
    fused_width_mm : float
        Width melted :math:`w`, above zero. [mm]
    speed_mm_s : float
        Travel speed :math:`v`, zero or above. [mm/s]

    Returns
    -------
    float
        Power that has to reach the plate. [W]

    Raises
    ------
    OutsideValidityError
        If a quantity that must be positive is not.

    Notes
    -----
    A line source through the full thickness, wide plate, constant properties, no latent heat; an
    approximation to Rosenthal's thin-plate field.
    Source: [WELLS-1952].

    Examples
    --------
    An arc of 2.125 kW on 3 mm steel (a textbook case, [GHOSH]) travels 16.6 mm/s:

    >>> round(power_to_melt_thin_plate(43.6, 43.6 / 1.2e-5, 1450.0, 3.0, 3.464, 16.64))
    2125
    """
    for name, value in (
        ("conductivity_w_mk", conductivity_w_mk),
        ("volumetric_heat_j_m3k", volumetric_heat_j_m3k),
        ("melting_rise_k", melting_rise_k),
        ("thickness_mm", thickness_mm),
        ("fused_width_mm", fused_width_mm),
    ):
        if not value > 0.0:
            raise OutsideValidityError(name, value, tr("above zero"))
    if speed_mm_s < 0.0:
        raise OutsideValidityError("speed_mm_s", speed_mm_s, tr("zero or above"))
    swept = speed_mm_s * fused_width_mm * 1e-6 * volumetric_heat_j_m3k / (4.0 * conductivity_w_mk)
    return 8.0 * conductivity_w_mk * melting_rise_k * thickness_mm * 1e-3 * (0.2 + swept)


def speed_for_power_share(
    conductivity_w_mk: float,
    volumetric_heat_j_m3k: float,
    fused_width_mm: float,
    speed_mm_s: float,
    power_share_1: float,
) -> float:
    r"""Travel speed at which a share of the power still melts the same width of the same plate.

    .. math:: v_2 = \frac{4 k}{w \, \rho c}
        \left( s \left( \frac{1}{5} + \frac{v_1 w \, \rho c}{4 k} \right) - \frac{1}{5} \right)

    Parameters
    ----------
    conductivity_w_mk : float
        Thermal conductivity :math:`k`, above zero. [W/(m K)]
    volumetric_heat_j_m3k : float
        Density times specific heat :math:`\rho c`, above zero. [J/(m3 K)]
    fused_width_mm : float
        Width melted :math:`w`, above zero. [mm]
    speed_mm_s : float
        Travel speed :math:`v_1` at full power, above zero. [mm/s]
    power_share_1 : float
        Share of the full power :math:`s`, above zero. [1]

    Returns
    -------
    float
        Travel speed; zero or negative when the share cannot melt the width at any speed. [mm/s]

    Notes
    -----
    The thin-plate balance of `power_to_melt_thin_plate` solved for the speed; same range.
    Source: [WELLS-1952].

    Examples
    --------
    >>> round(speed_for_power_share(15.0, 3.95e6, 5.0, 5.0, 0.65), 2)
    3.04
    """
    per_speed = fused_width_mm * 1e-6 * volumetric_heat_j_m3k / (4.0 * conductivity_w_mk)
    return (power_share_1 * (0.2 + speed_mm_s * per_speed) - 0.2) / per_speed

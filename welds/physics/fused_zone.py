"""How wide, how deep and how long the metal is molten under a moving source."""

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from welds.physics.moving_source import MovingSource

Floats = NDArray[np.float64]

COARSE, FINE = 40, 9
NARROWEST_MM, WIDEST_MM = 0.05, 60.0


def fused_width(source: MovingSource, melting_rise_k: float, below_mm: float) -> float:
    r"""Width that has been molten at one depth once the source has passed.

    .. math:: w = 2 \max \{ y : \max_x T(x, y, z) \ge T_m \}

    Parameters
    ----------
    source : MovingSource
        The source and its plate. [1]
    melting_rise_k : float
        Melting temperature above the plate's start. [K]
    below_mm : float
        Depth at which the width is wanted: 0 on the face, the thickness on the root side. [mm]

    Returns
    -------
    float
        Width; 0 where nothing melts, 120 where it is wider than that. [mm]

    Notes
    -----
    Source: the field of [EAGAR-TSAI].

    Examples
    --------
    >>> stainless = MovingSource(1100.0, 5.0, 24.0, 6.0e6, 2.4, 1.2)
    >>> round(fused_width(stainless, 1400.0, 0.0), 1)
    5.5
    """
    below = np.array([below_mm])

    def rises(aside: Floats) -> Floats:
        return source.peak_section(aside, below)[0]

    aside = np.concatenate([[0.0], np.geomspace(NARROWEST_MM, WIDEST_MM, COARSE)])
    return 2.0 * _last_above(rises, aside, melting_rise_k)


def fused_depth(source: MovingSource, melting_rise_k: float) -> float:
    r"""Depth that has been molten on the weld line.

    .. math:: p = \max \{ z : \max_x T(x, 0, z) \ge T_m \}

    Parameters
    ----------
    source : MovingSource
        The source and its plate. [1]
    melting_rise_k : float
        Melting temperature above the plate's start. [K]

    Returns
    -------
    float
        Depth; the thickness where it melts right through. [mm]

    Notes
    -----
    Source: the field of [EAGAR-TSAI].

    Examples
    --------
    >>> round(fused_depth(MovingSource(1100.0, 5.0, 24.0, 6.0e6, 4.0, 1.2), 1400.0), 1)
    1.8
    """
    weld_line = np.zeros(1)

    def rises(below: Floats) -> Floats:
        return source.peak_section(weld_line, below)[:, 0]

    return _last_above(rises, np.linspace(0.0, source.thickness_mm, COARSE), melting_rise_k)


def pool_length(source: MovingSource, melting_rise_k: float, below_mm: float) -> float:
    r"""Length of the pool on the weld line at one depth.

    .. math:: L = \max \{ x : T \ge T_m \} - \min \{ x : T \ge T_m \}, \qquad y = 0

    Parameters
    ----------
    source : MovingSource
        The source and its plate. [1]
    melting_rise_k : float
        Melting temperature above the plate's start. [K]
    below_mm : float
        Depth at which the length is wanted. [mm]

    Returns
    -------
    float
        Length; 0 where nothing melts, at most 250. [mm]

    Notes
    -----
    The heat of fusion comes out at the tail of a real pool, which makes it longer than any field with
    constant properties says.
    Source: the field of [EAGAR-TSAI].

    Examples
    --------
    >>> round(pool_length(MovingSource(1100.0, 5.0, 24.0, 6.0e6, 2.4, 1.2), 1400.0, 0.0), 0)
    13.0
    """
    radius = source.radius_mm
    ahead = radius * np.concatenate([-np.geomspace(250.0 / radius, 0.05, 90), np.linspace(-0.04, 6.0, 40)])
    rises = source.plan(ahead, np.zeros(1), below_mm)[0]
    molten = np.flatnonzero(rises >= melting_rise_k)
    if molten.size == 0:
        return 0.0
    ends = []
    for inside, outside in ((molten[0], molten[0] - 1), (molten[-1], molten[-1] + 1)):
        if not 0 <= outside < len(ahead):
            ends.append(ahead[inside])
            continue
        share = (rises[inside] - melting_rise_k) / (rises[inside] - rises[outside])
        ends.append(ahead[inside] + share * (ahead[outside] - ahead[inside]))
    return float(ends[1] - ends[0])


def _last_above(rises: Callable[[Floats], Floats], places: Floats, level: float) -> float:
    """Return where falling rises cross the level: a coarse look, then a fine one between two places."""
    found = rises(places)
    if found[0] < level:
        return 0.0
    beyond = np.flatnonzero(found < level)
    if beyond.size == 0:
        return float(places[-1])
    fine = np.linspace(places[beyond[0] - 1], places[beyond[0]], FINE)
    near = rises(fine)
    last = int(np.clip(np.flatnonzero(near >= level)[-1] if (near >= level).any() else 0, 0, FINE - 2))
    share = (near[last] - level) / (near[last] - near[last + 1])
    return float(fine[last] + np.clip(share, 0.0, 1.0) * (fine[last + 1] - fine[last]))

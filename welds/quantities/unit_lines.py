"""What pint makes of the conversions that a card needs, written down so that a start needs no pint.

Importing pint takes a third of the time between an empty window and an answer. A test has pint work out
every line from `welders_units.txt` again; a conversion that is not here is left to pint.
"""

from collections.abc import Mapping

LINES: Mapping[tuple[str, str], tuple[float, float]] = {
    ("cm", "mm"): (10.0, 0.0),
    ("m", "mm"): (1000.0, 0.0),
    ("foot", "mm"): (304.79999999999995, 0.0),
    ("inch", "mm"): (25.4, 0.0),
    ("foot", "m"): (0.30479999999999996, 0.0),
    ("m", "foot"): (3.2808398950131235, 0.0),
    ("mm", "inch"): (0.03937007874015748, 0.0),
    ("mm/min", "mm/s"): (0.016666666666666666, 0.0),
    ("cm/min", "mm/s"): (0.16666666666666666, 0.0),
    ("m/min", "mm/s"): (16.666666666666668, 0.0),
    ("ipm", "mm/s"): (0.4233333333333333, 0.0),
    ("mm/s", "mm/min"): (60.0, 0.0),
    ("mm/s", "ipm"): (2.3622047244094486, 0.0),
    ("mm/min", "ipm"): (0.03937007874015748, 0.0),
    ("m/min", "ipm"): (39.37007874015748, 0.0),
    ("ipm", "m/min"): (0.0254, 0.0),
    ("L/min", "cfh"): (2.118880003289316, 0.0),
    ("cfh", "L/min"): (0.47194744319999987, 0.0),
    ("kJ/mm", "kJ/inch"): (25.4, 0.0),
    ("degC", "degF"): (1.7999999999999972, 31.999999999999936),
    ("degF", "degC"): (0.5555555555555429, -17.777777777777743),
}
"""Scale and offset by (unit, unit wanted)."""

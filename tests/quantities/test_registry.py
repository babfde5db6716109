"""The registry's factors against the legal definitions of the units.

NIST Special Publication 811 (2008), appendix B: 1 in = 25.4 mm exactly, 1 ft3 = 2.831 685 E-02 m3,
1 degF = (t - 32) / 1.8 degC.
"""

import subprocess
import sys

import pytest

from welds.quantities.registry import convert, line, registry
from welds.quantities.unit_lines import LINES


@pytest.mark.parametrize(
    ("value", "unit", "to", "expected"),
    [
        (1, "inch", "mm", 25.4),
        (1, "foot", "mm", 304.8),
        (1, "ipm", "mm/s", 25.4 / 60),
        (1, "cfh", "L/min", 28.31685 / 60),
        (1, "kJ/mm", "kJ/inch", 25.4),
        (1, "m/min", "ipm", 39.37008),
        (32, "degF", "degC", 0),
        (212, "degF", "degC", 100),
        (20, "degC", "degF", 68),
        (5, "percent", "percent", 5),
    ],
)
def test_factors(value: float, unit: str, to: str, expected: float) -> None:
    assert convert(value, unit, to) == pytest.approx(expected, rel=1e-6, abs=1e-9)


def test_units_of_other_kinds_are_refused() -> None:
    with pytest.raises(Exception, match="Cannot convert"):
        convert(1, "mm", "A")


def test_physics_units_are_known() -> None:
    for unit in ("W/(m*K)", "J/(kg*K)", "kg/m**3", "1/K", "kJ/mm", "V", "Hz", "J/kg", "degree", "percent"):
        registry().Unit(unit)


@pytest.mark.parametrize("pair", LINES, ids=" to ".join)
def test_kept_lines_are_what_the_registry_says(pair: tuple[str, str]) -> None:
    assert LINES[pair] == pytest.approx(line(*pair), rel=1e-12, abs=1e-12)


def test_pint_is_not_imported_for_what_a_person_types() -> None:
    code = (
        "import sys; import welds.quantities.display, welds.quantities.length, welds.quantities.speed;"
        "from welds.quantities.length import parse_length;"
        "from welds.quantities.registry import convert;"
        "assert parse_length('2 mm', field='thickness').mm == 2.0;"
        "assert parse_length('1/8 in', field='thickness').mm == 3.175;"
        "assert 'pint' not in sys.modules, 'pint came in';"
        "assert convert(1.0, 'pound', 'kg') == 0.45359237;"
        "assert 'pint' in sys.modules"
    )
    result = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=False)
    assert result.returncode == 0, result.stderr

"""Physics docstrings stay true: names, units, an example, sources that exist."""

import inspect
import re

import pytest

import welds.physics
from tests.architecture.numpydoc import parameters, physics_functions, results, sections, suffix

FUNCTIONS = list(physics_functions(welds.physics))
DIMENSIONLESS = "1"
CITED = re.compile(r"\[([A-Z][A-Z0-9]*[-_A-Z0-9]+)\]")

every_function = pytest.mark.parametrize("function", FUNCTIONS, ids=lambda function: function.__qualname__)


def test_the_walk_finds_the_formulas():
    assert "wire_feed" in {function.__name__ for function in FUNCTIONS}


@pytest.mark.parametrize(
    ("unit", "name"),
    [
        ("A", "a"),
        ("mm/s", "mm_s"),
        ("W/(m K)", "w_mk"),
        ("mm3/(A s)", "mm3_as"),
        ("1/K", "per_k"),
        ("degC", "c"),
    ],
)
def test_how_a_name_says_its_unit(unit: str, name: str):
    assert suffix(unit) == name


@every_function
def test_parameters_are_those_of_the_signature(function):
    described = [entry.name for entry in parameters(sections(function).get("Parameters", []))]
    assert described == list(inspect.signature(function).parameters)


@every_function
def test_every_parameter_ends_in_the_unit_its_name_says(function):
    for entry in parameters(sections(function).get("Parameters", [])):
        assert entry.unit, f"{entry.name}: no [unit] at the end"
        if entry.unit != DIMENSIONLESS:
            assert entry.name.endswith("_" + suffix(entry.unit)), f"{entry.name} against [{entry.unit}]"


@every_function
def test_every_result_ends_in_a_unit(function):
    found = results(sections(function).get("Returns", []))
    assert found, "no Returns section"
    assert all(entry.unit for entry in found), "no [unit] at the end"


@every_function
def test_has_an_equation_and_an_example_that_runs(function):
    parts = sections(function)
    assert any(".. math::" in line for line in parts[""]), "no equation"
    assert any(line.lstrip().startswith(">>> ") for line in parts.get("Examples", [])), "no example"


@every_function
def test_cited_sources_exist(function, tables):
    unknown = [key for key in CITED.findall(inspect.getdoc(function) or "") if key not in tables.sources]
    assert not unknown

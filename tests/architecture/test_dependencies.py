"""What is installed is what is locked and asked for; what is declared is imported, and the other way round.

Known holes of these libraries are looked up by packaging/audit.sh, which needs a network.
"""

import ast
import sys
from importlib.metadata import packages_distributions

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from tests.architecture.distributions import ROOT, brought_along, declared, holds

BY_ADDRESS = {"psycopg": "postgresql+psycopg"}
"""Imported by SQLAlchemy for an address that says so; the words stand in the program."""

IMPORTED = {
    alias.name.partition(".")[0] if isinstance(node, ast.Import) else str(node.module).partition(".")[0]
    for path in (ROOT / "welds").rglob("*.py")
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
    if isinstance(node, ast.Import) or (isinstance(node, ast.ImportFrom) and node.level == 0)
    for alias in node.names
}


def test_every_library_is_the_locked_one():
    lines = (ROOT / "packaging" / "constraints.txt").read_text(encoding="utf-8").splitlines()
    pins = [Requirement(line) for line in lines if line and not line.startswith("#")]
    locked = {canonicalize_name(pin.name): pin.specifier for pin in pins if holds(pin)}
    libraries = brought_along("shop", "test")
    assert len(libraries) > 40
    strays = {
        name: library.version
        for name, (library, _asked) in libraries.items()
        if name not in locked or library.version not in locked[name]
    }
    assert strays == {}


def test_every_library_suits_all_that_ask_for_it():
    unfit = [
        f"{library.name} {library.version}: {wanted}"
        for library, asked in brought_along("shop", "test").values()
        for wanted in asked
        if not wanted.specifier.contains(library.version, prereleases=True)
    ]
    assert unfit == []


def test_every_import_is_declared_and_every_declared_library_imported():
    owners = packages_distributions()
    foreign = IMPORTED - sys.stdlib_module_names - {"welds"}
    imported = {canonicalize_name(owner) for name in foreign for owner in owners[name]}
    named = {canonicalize_name(wanted.name) for wanted in declared("shop")}
    assert imported - named == set()
    assert named - imported == set(BY_ADDRESS)


def test_what_is_imported_by_an_address_has_that_address_in_the_program():
    program = "".join(path.read_text(encoding="utf-8") for path in (ROOT / "welds").rglob("*.py"))
    for words in BY_ADDRESS.values():
        assert words in program

"""Every library that the program brings along, at any depth, has a licence whose terms we meet."""

import re
from importlib.metadata import Distribution

from tests.architecture.distributions import brought_along

KNOWN = r"MIT( License|-CMU)?|0?BSD|BSD( License|[- ]3-Clause( License)?)|Apache-2\.0|PSF-2\.0|Zlib|CC0-1\.0"
"""Licences that ask for their notice only."""

SEPARATE = "LGPL-3.0-only"
"""Stays a library of its own that can be replaced: see DEVELOPERS.md, Licences."""


def licences(library: Distribution) -> list[str]:
    """Return the licences that all hold, or those among which one may be chosen, as the library says."""
    said = library.metadata["License-Expression"] or library.metadata["License"] or ""
    if not said or "\n" in said:
        classes = library.metadata.get_all("Classifier", ())
        said = next(each.rpartition(" :: ")[2] for each in classes if each.startswith("License ::"))
    choices = said.split(" OR ")
    return [SEPARATE] if SEPARATE in choices else said.split(" AND ")


def test_every_licence_is_one_we_can_meet():
    libraries = {name: library for name, (library, _asked) in brought_along("shop").items()}
    assert {"numpy", "pandas", "pyside6-essentials", "psycopg-binary", "rectpack"} <= set(libraries)
    said = {name: licences(library) for name, library in libraries.items()}
    separate = {name for name, found in said.items() if SEPARATE in found}
    assert separate == {"psycopg", "psycopg-binary", "pyside6-essentials", "shiboken6"}
    others = {name: found for name, found in said.items() if name not in separate}
    unknown = {
        name: [each for each in found if not re.fullmatch(KNOWN, each)] for name, found in others.items()
    }
    assert {name: found for name, found in unknown.items() if found} == {}


def test_the_pattern_refuses_what_binds_the_whole_program():
    for licence in ("GPL-3.0-only", "AGPL-3.0", "SSPL-1.0", "Proprietary", ""):
        assert not re.fullmatch(KNOWN, licence)

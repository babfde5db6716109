"""Finding a metal by what people call it."""

import pytest

from welds.errors import InputError
from welds.reference.basis import Basis
from welds.reference.metals import Metal, find_metal


@pytest.mark.parametrize(
    ("text", "metal", "temper"),
    [
        ("5052", "5052", "H32"),
        ("5052-H34", "5052", "H34"),
        ("5052 h34", "5052", "H34"),
        ("5052H34", "5052", "H34"),
        ("AA6061-T6", "6061", "T6"),
        ("EN AW-5083", "5083", "H116"),
        ("en aw-6063 T5", "6063", "T5"),
        ("6061-o", "6061", "O"),
        ("A356", "356", "T6"),
        ("Low-Carbon", "low-carbon", ""),
        ("mild steel", "low-carbon", ""),
        ("galvanized", "galvanised", ""),
        ("S355", "structural", ""),
        ("AISI 304", "304", ""),
        ("304l", "304L", ""),
        ("1.4404", "316L", ""),
        ("chrome_moly", "4130", ""),
        ("titanium", "titanium-2", ""),
    ],
)
def test_names_people_use(tables, text, metal, temper):
    found = find_metal(tables, text)
    assert (found.id, found.temper) == (metal, temper)


@pytest.mark.parametrize(
    ("text", "nearest"),
    [
        ("5025", "5052"),
        ("low-carbn", "low-carbon"),
        ("galvanisd", "galvanised"),
        ("", None),
        ("42", None),
        ("5052; rm", None),
        ("x" * 10_000, None),
    ],
)
def test_an_unknown_metal_names_the_nearest(tables, text, nearest):
    with pytest.raises(InputError) as caught:
        find_metal(tables, text)
    assert len(str(caught.value)) < 600
    if nearest:
        assert caught.value.nearest == nearest


def test_an_unknown_temper_names_those_of_the_alloy(tables):
    with pytest.raises(InputError, match=r"5052 in temper O, F, H112, H32.*nearest: 5052-H38"):
        find_metal(tables, "5052-H39")


def test_a_metal_without_tempers_takes_none(tables):
    with pytest.raises(InputError):
        find_metal(tables, "low-carbon-T6")


def test_annealed_sheet_has_no_temper_to_lose(tables):
    assert find_metal(tables, "6061-T6").heat_softens == "age-hardened"
    assert find_metal(tables, "6061-O").heat_softens == "none"


def test_a_cell_may_be_graded_apart_from_its_row(tables):
    metal = find_metal(tables, "304")
    assert metal.basis_of("density_kg_m3") is metal.basis is Basis.QUOTED
    assert metal.basis_of("latent_heat_j_kg") is Basis.RECALLED


def test_no_name_belongs_to_two_metals(tables):
    names = [name.lower() for metal in tables.records(Metal) for name in (metal.id, *metal.aliases)]
    assert len(names) == len(set(names))


def test_every_id_and_alias_finds_its_own_metal(tables):
    for metal in tables.records(Metal):
        for name in (metal.id, *metal.aliases):
            assert find_metal(tables, name) == metal
        for temper in metal.tempers:
            assert find_metal(tables, f"{metal.id}-{temper}").temper == temper

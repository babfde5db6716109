"""What is written is read back the same, whatever words a person types."""

from hypothesis import given
from hypothesis import strategies as st

from welds.bench.load import check_bench, read_bench
from welds.bench.machine_fields import MACHINE as MACHINE_READERS
from welds.bench.notes import MACHINE, SHELF
from welds.bench.shelf_fields import shelf_readers
from welds.bench.templates import USUAL, starting_bench, templates
from welds.bench.write import bench_yaml
from welds.reference.strict_yaml import parse_yaml

WORDS = st.text(
    st.characters(codec="utf-8", exclude_categories=("Cs", "Cc", "Zl", "Zp")), min_size=1, max_size=12
).filter(lambda text: text == text.strip())
FLAT = WORDS | st.lists(WORDS, min_size=1, max_size=3) | st.dictionaries(WORDS, WORDS, min_size=1, max_size=3)
NESTED = st.dictionaries(WORDS, FLAT, min_size=1, max_size=3)
ROWS = st.lists(st.dictionaries(WORDS, WORDS, min_size=1, max_size=2), min_size=1, max_size=3)


@given(st.dictionaries(st.sampled_from(sorted(MACHINE)), FLAT | NESTED | ROWS, min_size=1, max_size=6))
def test_round_trip(machine) -> None:
    raw = {"in_use": "x: [y] # z", "machines": [machine], "shelf": {"cups": ["5", "6"]}}
    assert parse_yaml(bench_yaml(raw), "bench.yaml") == raw


def test_templates_are_sound(tables) -> None:
    assert len(templates()) >= 5
    bench = read_bench(starting_bench(list(templates())), "bench.yaml", tables)
    assert [machine.name for machine in bench.machines] == list(templates())
    for machine in bench.machines:
        assert machine.current_max_a >= max(amps for amps, _ in machine.duty_cycle)
        assert machine.supply.volts in machine.supply_volts


def test_a_start_states_no_shelf(tables) -> None:
    bench = read_bench(starting_bench(USUAL), "bench.yaml", tables)
    assert bench.machine.name == USUAL[0]
    assert bench.equipment().shelf == type(bench.shelf)()


def test_examples_of_the_shelf_can_be_taken_as_they_are(tables) -> None:
    """Each commented line of the shelf, with its # taken away."""
    lines = starting_bench(USUAL).split("shelf:")[1].splitlines()
    examples = [line.replace("  # ", "  ", 1) for line in lines if line.startswith("  # ") and ": " in line]
    assert len(examples) == len(SHELF)
    text = starting_bench(USUAL) + "\n".join(examples) + "\n"
    bench, faults = check_bench(text, "bench.yaml", tables)
    assert not faults
    assert bench.shelf.cups == {5, 6, 7, 8}


def test_every_field_is_explained(tables) -> None:
    assert set(MACHINE) == set(MACHINE_READERS)
    short = {"tungsten_types", "tungsten_diameters", "filler_metals", "filler_diameters", "wire_diameters"}
    assert set(SHELF) | short == set(shelf_readers(tables))

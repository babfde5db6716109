"""The person's bench file; machines and shelves are invented."""

import textwrap

import pytest

from welds.advice.equipment import Equipment, Machine, Shelf
from welds.bench.load import load_equipment
from welds.errors import BenchFileError
from welds.reference.load import load_tables


@pytest.fixture(scope="module")
def tables():
    return load_tables()


@pytest.fixture
def load(tmp_path, tables):
    def load(text: str) -> Equipment:
        path = tmp_path / "bench.yaml"
        path.write_text(textwrap.dedent(text), encoding="utf-8")
        return load_equipment(path, tables)

    return load


FULL = """
    machine:
      name: 200 A AC/DC TIG, 230 V
      processes: [tig]
      current_min_a: 5
      current_max_a: 200
      has_ac: yes
      ac_frequency_min_hz: 50
      ac_frequency_max_hz: 150
      electrode_negative_min_percent: 50
      electrode_negative_max_percent: 90
      has_pulse: no
      has_pedal: yes
      duty_cycle:
        - {current_a: 200, percent: 30}
        - {current_a: 120, percent: 60}
    shelf:
      tungsten_diameters: [1.6 mm, 3/32 in, 3.2]
      tungsten_types: [WLa20, wce20]
      filler_metals: [ER5356]
      filler_diameters: [1/16 in, 2.4]
      wire_diameters: [0.030 in]
      gases: [argon]
      cups: [6, 7, 8]
      has_gas_lens: yes
"""


def test_everything_that_can_be_said(load) -> None:
    assert load(FULL) == Equipment(
        Machine(
            name="200 A AC/DC TIG, 230 V",
            processes=frozenset({"tig"}),
            current_min_a=5.0,
            current_max_a=200.0,
            has_ac=True,
            ac_frequency_min_hz=50.0,
            ac_frequency_max_hz=150.0,
            electrode_negative_min_percent=50.0,
            electrode_negative_max_percent=90.0,
            has_pulse=False,
            has_pedal=True,
            duty_cycle=((200.0, 30.0), (120.0, 60.0)),
        ),
        Shelf(
            tungsten_diameters_mm=frozenset({1.6, 2.4, 3.2}),
            tungsten_types=frozenset({"WLa20", "WCe20"}),
            filler_metals=frozenset({"ER5356"}),
            filler_diameters_mm=frozenset({1.6, 2.4}),
            wire_diameters_mm=frozenset({0.8}),
            gases=frozenset({"argon"}),
            cups=frozenset({6, 7, 8}),
            has_gas_lens=True,
        ),
    )


def test_a_name_and_a_process_are_enough(load) -> None:
    equipment = load("machine: {name: a small MIG, processes: [mig]}")
    assert equipment == Equipment(Machine("a small MIG", frozenset({"mig"})))


HEAD = "machine:\n  name: x\n  processes: [tig]\n"


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        ("", None, "empty"),
        ("- a\n- b\n", None, "expected"),
        ("machine: {name: x\n", 2, "not readable"),
        ("machine: 200 A\n", 1, "machine"),
        ("machine: {processes: [tig]}\n", 1, "machine.name"),
        ("machine: {name: x}\n", 1, "machine.processes"),
        ("machnes:\n  name: x\n", 1, "nearest: machine"),
        ("machines:\n  name: x\n", 1, "expected a list"),
        (HEAD + "  curent_max_a: 200\n", 4, "nearest: current_max_a"),
        (HEAD + "  current_max_a: 200 A\n", 4, "a number from 1 to 1000"),
        (HEAD + "  current_max_a: -5\n", 4, "a number from 1 to 1000"),
        (HEAD + "  current_max_a: 1e9\n", 4, "a number from 1 to 1000"),
        (HEAD + "  current_max_a: nan\n", 4, "a number from 1 to 1000"),
        (HEAD + "  current_max_a: [200]\n", 4, "a number from 1 to 1000"),
        (HEAD + "  current_min_a: 200\n  current_max_a: 5\n", 4, "is above"),
        (HEAD + "  has_ac: maybe\n", 4, "allowed: yes, no"),
        (HEAD + "  name: y\n", 4, "comes twice"),
        (HEAD + "  duty_cycle: 30\n", 4, "current_a: 200"),
        (HEAD + "  duty_cycle:\n    - {current: 200, percent: 30}\n", 5, "current_a: 200"),
        ("machine:\n  name: x\n  processes: tig\n", 3, "list"),
        ("machine:\n  name: x\n  processes: [tigg]\n", 3, "nearest: tig"),
        (HEAD + "shelf:\n  gases: [argonn]\n", 5, "nearest: argon"),
        (HEAD + "shelf:\n  filler_metals: [R5356]\n", 5, "nearest: ER5356"),
        (HEAD + "shelf:\n  tungsten_diameters: [2.7 mm]\n", 5, "nearest: 2.4 mm"),
        (HEAD + "shelf:\n  tungsten_diameters: [thick]\n", 5, "tungsten_diameters"),
        (HEAD + "shelf:\n  cups: [6.5]\n", 5, "whole cup number"),
    ],
)
def test_what_is_wrong_is_named_with_its_line(load, text, line, words) -> None:
    with pytest.raises(BenchFileError) as caught:
        load(text)
    assert words in str(caught.value)
    assert caught.value.line == line
    assert "\n" not in str(caught.value)
    assert caught.value.exit_code == 4


def test_missing_folder_and_binary_files(tmp_path, tables) -> None:
    for path in (tmp_path / "no.yaml", tmp_path):
        with pytest.raises(BenchFileError, match="cannot be read"):
            load_equipment(path, tables)
    binary = tmp_path / "bench.yaml"
    binary.write_bytes(b"\xff\xfe\x00")
    with pytest.raises(BenchFileError):
        load_equipment(binary, tables)

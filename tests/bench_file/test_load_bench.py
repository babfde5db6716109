"""Several machines, own scales, circuits and a shelf by pairs; all of it invented."""

import textwrap

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from welds.advice.equipment import Control, Supply, Torch
from welds.bench.load import check_bench
from welds.errors import BenchFileError

YARD = """
    in_use: 140 A MIG, 120 V
    machines:
      - name: 200 A AC/DC TIG, 230 V
        processes: [tig]
        kind: corrected-inverter
        current_min_a: 5
        current_max_a: 200
        current_step_a: 1
        ac_frequency_hz: [60, 90, 120]
        electrode_negative_min_percent: 50
        electrode_negative_max_percent: 90
        electrode_negative_step_percent: 5
        ac_wave: sine
        has_hot_start: yes
        open_circuit_dc_v: 65
        torch: {cooling: water, rated_a: 250, rated_ac_a: 200, percent: 60}
        supply_volts: [230, 400]
        plug: 230 V, 16 A
        efficiency: 0.85
        power_factor: 0.98
        supply: {volts: 230, phases: 1, breaker_a: 16, cord_mm2: 2.5, cord_length_m: 20, generator_kva: 6}
      - name: 140 A MIG, 120 V
        processes: [mig]
        wire_diameters: [0.030 in]
        scales:
          voltage: {name: tap, only_marks: yes, marks: {A: 15, B: 16.5, C: 18}}
          wire_feed: {name: dial, unit: in/min, marks: {1: 100, 10: 500}}
    shelf:
      tungstens: {WLa20: [1.6 mm, 3/32 in], wce20: 1.6 mm}
      fillers: {ER5356: [2.4 mm]}
      wires: {ER70S-6: [0.8 mm]}
      gases: {argon: 3200, ar-25co2: unknown, co2: 0, helium: 1500 L}
      lens_cups: [8]
      gas_lenses: [2.4 mm]
      collets: [1.6 mm]
      backing_bars: [copper]
      helmet_shades: [10, 9-13]
      brushes: [aluminium, steel]
      wheels: [steel]
"""


def test_all_of_it(load) -> None:
    bench = load(YARD)
    tig, mig = bench.machines
    assert bench.machine is mig
    assert bench.equipment().others == (tig,)
    assert tig.control("current") == Control("current", step=1.0)
    assert tig.control("ac_frequency") == Control("ac_frequency", positions=(60.0, 90.0, 120.0))
    assert tig.reach("ac_frequency") == (60, 120)
    assert tig.control("electrode_negative").step == 5
    assert tig.torch == Torch("water", 250, 200, 60)
    assert tig.supply == Supply(230, 1, 16, 2.5, 20, None, 6)
    assert (tig.kind, tig.ac_wave, tig.has_hot_start) == ("corrected-inverter", "sine", True)
    assert mig.control("voltage").positions == (15, 16.5, 18)
    assert mig.control("voltage").marks[1] == ("B", 16.5)
    # 100 in/min is 2.54 m/min, 500 in/min is 12.7 m/min
    assert mig.control("wire_feed").marks == (("1", 2.54), ("10", 12.7))
    assert mig.reach("wire_feed") == (2.54, 12.7)
    shelf = bench.shelf
    assert shelf.tungsten_sizes("WLa20") == {1.6, 2.4}
    assert shelf.types_of_tungsten == {"WLa20", "WCe20"}
    assert shelf.gases == {"argon", "ar-25co2", "helium"}
    assert shelf.litres_left("co2") == 0
    assert shelf.litres_left("ar-25co2") is None
    assert shelf.litres_left("helium") == 1500
    assert shelf.has_gas_lens is True
    assert shelf.helmet_shades == ((10, 10), (9, 13))


def test_the_first_machine_is_in_use_where_none_is_named(load) -> None:
    bench = load("machines: [{name: a, processes: [tig]}, {name: b, processes: [mig]}]")
    assert bench.machine.name == "a"


MACHINES = "machines:\n  - name: x\n    processes: [tig]\n"


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        ("in_use: y\n" + MACHINES, 1, "in_use: y is not usable; allowed: x"),
        (MACHINES + "  - name: x\n    processes: [mig]\n", 4, "two machines are called x"),
        (MACHINES + "    ac_frequency_hz: mains\n", 4, "machines.ac_frequency_hz"),
        (MACHINES + "    ac_frequency_hz: [50,\n      6o]\n", 5, "6o is not usable"),
        (MACHINES + "    torch: {cooling: oil}\n", 4, "machines.torch.cooling: oil"),
        (MACHINES + "    torch: {rated_a: 150}\n", 4, "cooling is missing"),
        (MACHINES + "    supply: {breaker_a: 16}\n", 4, "volts is missing"),
        (MACHINES + "    supply: {volts: 230, phases: 2}\n", 4, "allowed: 1, 3"),
        (MACHINES + "    supply:\n      volts: 230\n      breakr_a: 16\n", 6, "nearest: breaker_a"),
        (MACHINES + "    scales: {wirefeed: {marks: {1: 2, 2: 3}}}\n", 4, "nearest: wire_feed"),
        (MACHINES + "    scales: {wire_feed: {marks: {1: 2}}}\n", 4, "at least two marks"),
        (MACHINES + "    scales: {wire_feed: {name: dial}}\n", 4, "marks are missing"),
        (MACHINES + "    scales: {wire_feed: {marks: {1: 2, 2: 9, 3: 4}}}\n", 4, "all the way"),
        (MACHINES + "    scales: {voltage: {marks: {a: 15, b: 15}}}\n", 4, "the same figure"),
        (MACHINES + "    scales: {voltage: {unit: m/min, marks: {a: 15, b: 16}}}\n", 4, "choice of units"),
        (MACHINES + "    scales: {electrode_negative: {marks: {1: 15, 2: 160}}}\n", 4, "0 to 100"),
        (MACHINES + "    scales: {wire_feed: {unit: in/min, marks: {1: 50, 2: 9000}}}\n", 4, "m/min"),
        (MACHINES + "shelf:\n  gases:\n    argon: 3200\n    argn: 1\n", 7, "nearest: argon"),
        (MACHINES + "shelf:\n  gases: {argon: lots}\n", 5, "a number from 0"),
        (MACHINES + "shelf:\n  tungstens:\n    WLa20: [1.6 mm,\n      2.7 mm]\n", 7, "2.7 mm is not sold"),
        (MACHINES + "shelf:\n  helmet_shades: [13-9]\n", 5, "runs backwards"),
        (MACHINES + "shelf:\n  helmet_shades: [dark]\n", 5, "helmet_shades"),
        (MACHINES + "shelf:\n  brushes: [aluminum]\n", 5, "nearest: aluminium"),
        (MACHINES + "shelf: [argon]\n", 4, "shelf: expected"),
    ],
)
def test_mistakes_name_line_and_field(load, text, line, words) -> None:
    with pytest.raises(BenchFileError) as caught:
        load(text)
    assert words in str(caught.value)
    assert caught.value.line == line


def test_every_mistake_is_found_in_the_order_of_the_lines(tables) -> None:
    text = textwrap.dedent(YARD).replace("[tig]", "[tog]").replace("copper]", "coper]").replace("60}", "6x}")
    bench, faults = check_bench(text, "bench.yaml", tables)
    assert bench is None
    assert [fault.line for fault in faults] == sorted(fault.line for fault in faults)
    assert [word for fault in faults for word in ("tog", "6x", "coper") if word in str(fault)] == [
        "tog",
        "6x",
        "coper",
    ]


def test_an_empty_shelf_states_nothing(load) -> None:
    assert load(MACHINES + "shelf:\n").shelf == load(MACHINES).shelf


@settings(max_examples=300)
@given(data=st.data())
def test_no_mistake_by_hand_is_more_than_a_line(tables, data) -> None:
    """Lines dropped, doubled, moved in or out, words replaced: a bench or named faults."""
    lines = textwrap.dedent(YARD).splitlines()
    for _ in range(data.draw(st.integers(1, 3))):
        place = data.draw(st.integers(0, len(lines) - 1))
        line = lines[place]
        kind = data.draw(st.sampled_from(["drop", "double", "in", "out", "value", "junk"]))
        if kind == "drop":
            lines[place] = ""
        elif kind == "double":
            lines.insert(place, line)
        elif kind == "in":
            lines[place] = f"  {line}"
        elif kind == "out":
            lines[place] = line[1:]
        elif kind == "value":
            junk = data.draw(
                st.sampled_from(["", "[]", "{}", "[[x]]", "{a: {b: c}}", "-1", "1e99", "~", "a b"])
            )
            lines[place] = f"{line.split(':')[0]}: {junk}"
        else:
            typed = st.text(max_size=4).filter(lambda text: "None" not in text)  # a fault repeats it
            lines[place] = line + data.draw(typed)
    bench, faults = check_bench("\n".join(lines), "bench.yaml", tables)
    assert (bench is None) == bool(faults)
    for fault in faults:
        assert "\n" not in fault.problem
        assert "None" not in str(fault)

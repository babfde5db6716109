"""Every card can be set as printed on a plain bench, or a check says exactly what is in the way."""

from hypothesis import given, settings
from hypothesis import strategies as st

from welds.advice.advise import advise
from welds.advice.equipment import Control, Equipment, Machine, Shelf
from welds.advice.request import Goal, Hand, Joint, Place, Process, Request
from welds.errors import InputError, NotCoveredError
from welds.reference.metals import Metal
from welds.reference.shielding import Gas

PLAIN = Machine(
    "165 A AC/DC TIG, mains frequency",
    frozenset({"tig"}),
    current_min_a=10,
    current_max_a=165,
    ac_wave="sine",
    has_pulse=False,
    has_pedal=False,
    controls=(Control("ac_frequency", positions=(60.0,)), Control("electrode_negative", positions=(50.0,))),
)
TAPPED = Machine(
    "140 A MIG, 120 V",
    frozenset({"mig"}),
    current_min_a=30,
    current_max_a=140,
    has_ac=False,
    has_pulse=False,
    has_pedal=False,
    wire_diameters_mm=frozenset({0.6, 0.8}),
    controls=(
        Control("voltage", positions=(15.0, 16.5, 18.0, 19.5), scale="tap"),
        Control("wire_feed", scale="dial", marks=(("1", 1.8), ("10", 14.0))),
    ),
)
ONLY_SIXTEENTH = Shelf(tungstens=frozenset({("WLa20", 1.6)}))
SPARSE = Shelf(
    tungstens=frozenset({("WLa20", 1.6)}),
    fillers=frozenset({("ER4043", 2.4), ("ER5356", 1.6), ("ER70S-6", 1.6)}),
    wires=frozenset({("ER70S-6", 0.8), ("ER4043", 1.2)}),
    gases=frozenset({"argon"}),
    cups=frozenset({5, 7}),
    has_gas_lens=False,
    backing_bars=frozenset({"stainless"}),
)


POSITIONS = ["PA", "PB", "PC", "PD", "PE", "PF", "PG"]
THICKNESS = st.floats(0.3, 16.0)


def drawn(data, tables) -> Request:
    metals = st.sampled_from([metal.id for metal in tables.records(Metal)])
    return Request(
        data.draw(st.sampled_from(Process)),
        data.draw(metals),
        data.draw(THICKNESS),
        data.draw(st.sampled_from(Joint)),
        data.draw(st.sampled_from(POSITIONS)),
        other_metal=data.draw(st.none() | metals),
        other_thickness_mm=data.draw(st.none() | THICKNESS),
        goal=data.draw(st.none() | st.sampled_from(Goal)),
        place=data.draw(st.sampled_from(Place)),
        hand=data.draw(st.sampled_from(Hand)),
        length_mm=data.draw(st.none() | st.floats(5.0, 5000.0)),
        wire_diameter_mm=data.draw(st.none() | st.sampled_from([0.6, 0.8, 1.2])),
    )


def in_the_way(card, machine: Machine, shelf: Shelf, tables) -> dict[str, str]:
    """Say for each setting what it cannot be, with the word that some failed check has to hold."""
    found = {}
    settings_, process = card.settings, card.request.process

    def value(name):
        return settings_[name].start

    def note(name, is_there, word) -> None:
        if not is_there:
            found[name] = word

    current = settings_["current"]
    note("process", process in machine.processes, "does not do")
    note("current", machine.current_min_a <= value("current") <= machine.current_max_a, "A")
    for control in machine.controls:
        band = settings_[control.setting].band if control.setting in settings_ else None
        for figure in (band.low, band.start, band.high) if band and control.positions else ():
            note(control.setting, figure in control.positions, control.setting)
    for setting in settings_.values():
        if setting.wanted is not None and setting.name in ("wire_feed", "voltage", "electrode_negative"):
            note(setting.name, setting.start in setting.wanted, setting.name.replace("_", " "))
    assert "machine_maximum" not in settings_ or machine.has_pedal
    if current.wanted.start != current.start and not current.wanted.low <= current.start:
        found["reach"] = "asks for"
    if process is Process.TIG:
        assert value("pulse") == "off" or machine.has_pulse
        note("polarity", value("polarity") != "AC" or machine.has_ac, "no AC")
        size = f"{value('tungsten_diameter'):g} mm"
        sizes = {each for kind, each in shelf.tungstens if kind == value("tungsten_type")}
        note("tungsten", value("tungsten_diameter") in sizes, f"tungsten {value('tungsten_type')}, {size}")
        rod = (value("filler_metal"), value("filler_diameter"))
        if shelf.fillers:
            note("rod", rod in shelf.fillers, f"rod {rod[0]}, {rod[1]:g} mm")
        if shelf.cups:
            note("cup", value("cup") in shelf.cups, f"cup {value('cup')}")
        assert value("gas_lens") is not True or shelf.has_gas_lens is not False
    else:
        wire = (value("wire"), value("wire_diameter"))
        if shelf.wires:
            note("wire", wire in shelf.wires, f"wire {wire[0]}, {wire[1]:g} mm")
        if machine.wire_diameters_mm:
            note("rolls", wire[1] in machine.wire_diameters_mm, "rolls")
    if shelf.gases:
        name = settings_["shielding_gas"].text
        names = {gas.name for gas in tables.records(Gas) if gas.id in shelf.gases}
        note("gas", name in names, f"gas: {name}")
    if shelf.backing_bars and value("backing") == "copper bar":
        note("backing", "copper" in shelf.backing_bars, "copper bar")
    return found


def check_every_card(request: Request, machine: Machine, shelf: Shelf, tables) -> None:
    try:
        card = advise(request, tables, Equipment(machine, shelf))
    except (NotCoveredError, InputError):
        return
    failed = " | ".join(check.text for check in card.checks if not check.ok)
    for name, word in in_the_way(card, machine, shelf, tables).items():
        assert word in failed, f"{name}: nothing says {word!r} in {failed!r}"
    if request.process is Process.TIG:
        stands = next(check for check in card.checks if check.name == "tungsten")
        rated = float(stands.text.split("stands ")[1].split(" A")[0])
        assert (
            stands.ok == (rated >= card.settings["current"].start - 0.5)
            or abs(rated - card.settings["current"].start) <= 0.5
        )


@settings(max_examples=80)
@given(data=st.data())
def test_fixed_sixty_hertz_no_pedal_and_one_tungsten(tables, data) -> None:
    check_every_card(drawn(data, tables), PLAIN, ONLY_SIXTEENTH, tables)


@settings(max_examples=80)
@given(data=st.data())
def test_the_same_with_a_sparse_shelf(tables, data) -> None:
    check_every_card(drawn(data, tables), PLAIN, SPARSE, tables)


@settings(max_examples=80)
@given(data=st.data())
def test_a_tapped_feeder_with_a_sparse_shelf(tables, data) -> None:
    check_every_card(drawn(data, tables), TAPPED, SPARSE, tables)

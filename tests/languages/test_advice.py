"""Cards and refusals in the made-up language: every word of theirs was said through the translations.

Machines and shelves are invented; their names are a person's and stay as they are.
"""

import re
from collections.abc import Iterator
from functools import cache
from itertools import product

import pytest

from tests.languages.pseudo import left_over, pseudo
from welds.advice import request as asked
from welds.advice.adjustment import adjustment_of
from welds.advice.advise import advise
from welds.advice.card import Card
from welds.advice.equipment import GENERIC, Control, Equipment, Machine, Shelf, Supply, Torch
from welds.advice.evidence import Evidence, Outcome, PastWeld
from welds.advice.heat.disagreement import FALLS_THROUGH, STAYS_COLD
from welds.advice.phrase import read_phrase
from welds.advice.request import Coating, Goal, Hand, Joint, Part, Place, Process, Request, Solvent, Transfer
from welds.advice.validate import request_from_fields
from welds.advice.words import value_said
from welds.bench.load import check_bench
from welds.errors import InputError, NotCoveredError, WeldsError
from welds.language import tr
from welds.reference.fillers import Filler
from welds.reference.load import load_tables
from welds.reference.metals import Metal
from welds.reference.names import NAMES, name_of
from welds.reference.tables import Tables

CODES = re.compile(
    r"\[[A-Z0-9_-]+\]|\b(ISO|AWS|EW\w+-?\w*|WLa20|DCEN|DCEP|TIG|MIG|kVA|m/min)\b|\b[A-Z][a-z][A-Z]\w+(\(\w\))?"
    r"|AA 200"
)
"""Ids of documents, classes and symbols of open standards, and the name of the invented machine."""

ONE_OF_EACH_FAMILY = (
    "5052",
    "6061",
    "low-carbon",
    "galvanised",
    "304",
    "copper",
    "titanium-2",
    "magnesium-az31",
)
SET = Machine(
    "AA 200",
    frozenset({"tig", "mig"}),
    current_min_a=20.0,
    current_max_a=120.0,
    ac_frequency_max_hz=60.0,
    has_pulse=False,
    has_pedal=False,
    has_hot_start=False,
    ac_wave="sine",
    duty_cycle=((110.0, 30.0),),
    wire_feed_max_m_min=5.0,
    voltage_max_v=17.0,
    wire_diameters_mm=frozenset({0.8}),
    open_circuit_dc_v=120.0,
    open_circuit_ac_v=80.0,
    supply_volts=(400.0,),
    supply=Supply(230.0, 1, 16.0, 1.5, 30.0, 10.0, 3.0),
    torch=Torch("air", 80.0, 60.0, 35.0),
    controls=(
        Control("electrode_negative", positions=(55.0, 60.0), marks=(("1", 55.0), ("5", 60.0))),
        Control("current", step=7.0),
    ),
)
SHELF = Shelf(
    tungsten_types=frozenset({"WP"}),
    filler_metals=frozenset({"ER4043", "ER70S-2"}),
    filler_diameters_mm=frozenset({1.2}),
    gases=frozenset({"ar-25co2", "ar-50he"}),
    gas_left_l=(("argon", 60.0), ("ar-25co2", 60.0)),
    cups=frozenset({4}),
    has_gas_lens=False,
    collet_diameters_mm=frozenset({1.0}),
    backing_bars=frozenset({"stainless"}),
    helmet_shades=((8, 9),),
    brushes=frozenset({"aluminium"}),
    wheels=frozenset({"steel"}),
)


@cache
def _words() -> Tables:
    return load_tables()


@pytest.fixture
def words(pseudo_language) -> Tables:
    """Return the tables as they are read in the made-up language."""
    return _words()


def said(card: Card) -> Iterator[tuple[str, str]]:
    """Yield each text of the card with where it stands."""
    for setting in card.settings.values():
        texts = [setting.text, setting.own_scale, *(reason.text for reason in setting.reasons)]
        values = [setting.value, *(choice.value for choice in setting.alternatives)]
        texts += [choice.text for choice in setting.alternatives]
        if setting.name not in (
            "filler_metal",
            "wire",
            "shielding_gas",
            "tungsten_type",
            "polarity",
            "transfer",
        ):
            texts += [value_said(value) for value in values if isinstance(value, str)]
        yield from ((setting.name, text) for text in texts)
    for check in card.checks:
        yield from (("check", tr(check.name)), (check.name, check.text))
    yield from (("preparation", step.text) for step in card.preparation)
    yield from ((caution.rule, caution.text) for caution in card.cautions)
    yield from (("shopping", each.item) for each in card.shopping)


def plain(texts: Iterator[tuple[str, str]], allowed: set[str]) -> dict[str, str]:
    """Return the words still in English, with the text each stands in."""
    return {word: text for _, text in texts for word in left_over(CODES.sub("", text), allowed)}


def requests() -> Iterator[Request]:
    """Yield enough requests to meet each rule: thin and thick, both hands, bad places, every coating."""
    for process, metal, joint in product(Process, ONE_OF_EACH_FAMILY, Joint):
        yield Request(process, metal, 0.8, joint, coatings=tuple(Coating), place=Place.ENCLOSED)
        yield Request(
            *(process, metal, 2.0, joint, "PF"),
            other_thickness_mm=3.0,
            gap_mm=0.9,
            goal=Goal.ANODISED_COLOUR if metal == "6061" else None,
            place=Place.OUTDOORS,
            length_mm=900.0,
            hand=Hand.BRISK,
        )
        yield Request(process, metal, 9.0, joint, "PE")


@pytest.mark.parametrize("equipment", [GENERIC, Equipment(SET, SHELF, (SET,))], ids=["any", "own"])
def test_cards_and_refusals_leave_no_english_word(words, equipment) -> None:
    fillers = {part for each in words.records(Filler) for part in re.findall(r"[A-Za-z]+", each.id)}
    allowed = {*fillers, *(each.value for each in Process)}
    left, cards = {}, 0
    for request in requests():
        try:
            card = advise(request, words, equipment)
        except NotCoveredError as error:
            left |= plain(iter([("", str(error))]), allowed)
        except InputError as error:
            ids = {part for joint in Joint for part in joint.split("-")}
            left |= plain(iter([("", str(error))]), allowed | ids)
        else:
            cards += 1
            left |= plain(said(card), allowed)
    assert not left
    assert cards > 100


def test_what_json_and_the_log_keep_is_english(tables, request) -> None:
    requests = [Request(Process.TIG, metal, 1.2, Joint.BUTT) for metal in ("304", "5052")]
    english = [advise(each, tables) for each in requests]
    words = request.getfixturevalue("words")
    for each, before in zip(requests, english, strict=True):
        card = advise(each, words)
        for name, setting in card.settings.items():
            assert setting.value == before.settings[name].value
        assert [check.name for check in card.checks] == [check.name for check in before.checks]


def test_values_with_figures_are_said_with_the_comma(words) -> None:
    card = advise(Request(Process.TIG, "304", 1.2, Joint.BUTT), words)
    assert str(card.settings["tip"].value).endswith("deg cone, 0.25 mm flat")
    assert "0,25 mm".translate(str.maketrans("m", "ɱ")) in value_said(card.settings["tip"].value)


def test_remedies_are_whole_sentences(words) -> None:
    from welds.reference.faults import Fault

    steps = [step for row in words.records(Fault) if (step := adjustment_of(row)) is not None]
    request = Request(Process.TIG, "5052", 2.0, Joint.BUTT)
    assert not plain(said(advise(request, words, adjustments=steps)), set())


def test_what_the_log_adds_is_said(words) -> None:
    request = Request(Process.TIG, "5052", 2.0, Joint.BUTT)
    ampere = advise(request, words).settings["current"].start
    welds = tuple(PastWeld(f"w{each}", request, Outcome.WORKED_WELL, 1.2 * ampere) for each in range(5))
    card = advise(request, words, evidence=Evidence(welds))
    assert card.learned is not None
    assert not left_over(card.learned.sureness_words)
    assert not plain(said(card), set())


@pytest.mark.parametrize(
    "fields",
    [
        {},
        {"process": "tig", "metal": "5052", "thickness": "thick", "joint": "lap"},
        {"process": "tig", "metal": "5052", "thickness": "20000 mm", "joint": "lap"},
        {"process": "tig", "metal": "5052", "thickness_mm": "2", "joint": "lap"},
        {"process": "tig", "metal": "5052", "thickness": "2 mm", "thickness_mm": 2, "joint": "lap"},
        {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "lap", "wire": "1 mm"},
        {"process": "mig", "metal": "5052", "thickness": "2 mm", "joint": "lap", "wire": "1.1 mm"},
        {"process": "mig", "metal": "5052", "thickness": "99 ga", "joint": "lap"},
        {"process": "tig", "metal": "5052", "thickness": "2", "joint": "lap", "position": "vertical"},
    ],
)
def test_what_cannot_be_used_is_said(words, fields) -> None:
    with pytest.raises(WeldsError) as caught:
        request_from_fields(fields, words)
    typed = {part for value in fields.values() for part in re.findall(r"[A-Za-z]+", str(value))}
    ids = {*typed, *fields, *Process, "AWS", "AWG"}
    assert not left_over(str(caught.value), ids)


def test_mistakes_in_a_bench_file_are_said(words) -> None:
    written = """
machines:
  - name: AA 200
    processes: [tig, gas]
    has_ac: perhaps
    current_max_a: lots
    duty_cycle: 30
    scales: {current: {name: dial}}
    wire_diameters: [1.1 mm]
shelf: {cups: [4.5], helmet_shades: [13-9], brushes: steel}
"""
    faults = check_bench(written, "bench.yaml", words)[1]
    assert len(faults) > 7
    fields = set(re.findall(r"[a-z]+", written)) | {"bench", "yaml", "tig", "mig", "max"}
    ids = {"percent", "marks", "yes"}
    for fault in faults:
        assert not left_over(str(fault), fields | ids), fault


def test_every_closed_word_is_given_to_the_translators(tables) -> None:
    kinds = (Joint, Goal, Place, Hand, Coating, Solvent, Part, Transfer)
    assert all(getattr(asked, kind.__name__) is kind for kind in kinds)
    words = {member.value for kind in kinds for member in kind}
    words |= {metal.family for metal in tables.records(Metal)}
    columns = (
        ("faults", "fault"),
        ("tungstens", "oxide"),
        ("tig_schedules", "hand"),
        ("tig_schedules", "gas"),
    )
    words |= {str(row[column]) for table, column in columns for row in tables.table(table).rows}
    assert {word.replace("-", " ") for word in words} <= NAMES


def test_a_name_is_said_and_an_english_id_stays(pseudo_language) -> None:
    assert name_of("carbon-steel") == pseudo("carbon steel")


@pytest.mark.parametrize("text", [STAYS_COLD, FALLS_THROUGH])
def test_the_heat_picture_disagrees_in_one_sentence(text) -> None:
    assert text.endswith("try it on scrap.")


def test_a_phrase_is_understood_in_the_language_in_use(tables, monkeypatch) -> None:
    from welds import language

    german = {
        "outside corner; corner": "Außenecke; Ecke; Eckstoß",
        "galvanised; galvanized": "verzinkt; verzinktes Blech",
        "overhead; upside down": "Überkopf",
        "brisk": "zügig",
    }
    monkeypatch.setattr(language, "_words", german)
    monkeypatch.setattr(language, "_code", "de")
    found = read_phrase("5052 AUSSENECKE 0,080 in zügig Überkopf", tables)
    assert dict(found.fields) == {
        "metal": "5052",
        "joint": "outside-corner",
        "thickness": "0,080 in",
        "hand": "brisk",
        "position": "PE",
    }
    assert not found.rest
    assert dict(read_phrase("verzinktes Blech corner", tables).fields) == {
        "metal": "galvanised",
        "joint": "outside-corner",
    }

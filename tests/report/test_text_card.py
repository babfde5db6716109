"""The card as plain text."""

from dataclasses import replace

from welds.quantities.units import Units
from welds.report.text_card import text_card


def test_cautions_stand_before_every_figure(tig_card, sources) -> None:
    text = text_card(tig_card, Units.METRIC, sources)
    first_figure = text.index("Filter shade")
    assert text.index("[ ] STOP: No chlorinated solvent") < text.index("TAKE CARE: Clear") < first_figure
    assert text.index("NOTE: Aluminium does not glow") < first_figure


def test_figures_stand_in_columns(tig_card, sources) -> None:
    rows = text_card(tig_card, Units.METRIC, sources).splitlines()
    current = next(row for row in rows if row.startswith("  Current"))
    assert current.split() == ["Current", "85", "A", "70", "to", "100", "A", "printed"]
    balance = next(row for row in rows if row.startswith("  Balance"))
    assert balance.index("72 %") == current.index("85 A")
    assert balance.index("68 to") == current.index("70 to")
    assert balance.index("quoted") == current.index("printed")


def test_no_line_is_wider_than_a_terminal_row(tig_card, mig_card, sources) -> None:
    for card in (tig_card, mig_card):
        for units in Units:
            rows = text_card(card, units, sources, why=True).splitlines()
            assert max(len(row) for row in rows[3:]) <= 90


def test_reasons_come_only_when_asked(tig_card, sources) -> None:
    assert "melts more easily" not in text_card(tig_card, Units.METRIC, sources)
    assert "an outside corner melts more easily (x 0.93) [DOC-2]" in text_card(
        tig_card, Units.METRIC, sources, why=True
    )


def test_units_change_words_only(tig_card, sources) -> None:
    metric = text_card(tig_card, Units.METRIC, sources)
    inch = text_card(tig_card, Units.INCH, sources)
    assert "8.5 L/min (18 cfh)" in metric
    assert "18 cfh (8.5 L/min)" in inch
    assert "2.4 mm (3/32 in)" in metric
    assert "3/32 in (2.4 mm)" in inch


def test_foot_carries_checks_sources_grades_and_notice(tig_card, sources) -> None:
    text = text_card(tig_card, Units.METRIC, sources)
    assert "NOT OK: the 16 A socket" in text
    assert "DOC-3: Rule on hot work & fumes (printed, quoted)" in text
    assert "recalled: from memory, not checked against print" in text
    assert " ".join(text.split()).endswith(tig_card.notice)


def test_long_words_wrap_inside_their_column(tig_card, sources) -> None:
    setting = replace(tig_card.settings["gas_lens"], name="backing", value="copper bar " * 12)
    card = replace(tig_card, settings={"backing": setting})
    rows = text_card(card, Units.METRIC, sources).splitlines()
    start = next(index for index, row in enumerate(rows) if row.startswith("  Back of the joint"))
    assert rows[start].endswith("practice")
    assert rows[start + 1].startswith(" " * 32 + "copper")

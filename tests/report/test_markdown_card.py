"""The card as Markdown."""

from dataclasses import replace

from welds.quantities.units import Units
from welds.report.markdown_card import escape_markdown, markdown_card


def test_tables_have_five_cells_in_every_row(tig_card, sources) -> None:
    text = markdown_card(replace(tig_card, machine="a|b"), Units.METRIC, sources)
    rows = [row for row in text.splitlines() if row.startswith("|")]
    assert len(rows) > 18
    assert {row.replace("\\|", "").count("|") for row in rows} == {6}
    assert "a\\|b" in text


def test_reasons_and_cautions_are_there(tig_card, sources) -> None:
    text = markdown_card(tig_card, Units.METRIC, sources)
    assert text.index("- [ ] **STOP** No chlorinated") < text.index("| Current |")
    assert "an outside corner melts more easily (x 0.93)" in text
    assert "Clear \\<everything\\> that burns" in text
    assert tig_card.notice in text


def test_escaping_keeps_one_line() -> None:
    assert escape_markdown("a *b*\n| c_d") == "a \\*b\\* \\| c\\_d"

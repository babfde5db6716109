"""What rests on a document, counted again from the files as they lie there."""

import csv

from welds.reference.hazards import load_hazards
from welds.reference.paths import data_root
from welds.reference.uses import CAUTIONS, uses_of_sources


def test_every_row_and_every_caution_is_counted_once(tables):
    uses = uses_of_sources(tables)
    assert set(uses) == set(tables.sources)
    total = 0
    for path in sorted((data_root() / "tables").glob("*.csv")):
        with path.open(encoding="utf-8") as file:
            total += sum(1 for _row in csv.DictReader(file))
    total += len(load_hazards(tables))
    assert sum(use.count for found in uses.values() for use in found) == total


def test_the_best_grade_comes_first(tables):
    uses = uses_of_sources(tables)
    assert all(list(found) == sorted(found, key=lambda use: use.basis.rank) for found in uses.values())
    assert [use.where for use in uses["HSE-DRUM"]] == [CAUTIONS]

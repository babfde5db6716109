"""No figure is dressed up: a published grade needs a document that was read."""

from itertools import product

import pytest

from tests.validation.documents import UNREAD
from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.errors import InputError, NotCoveredError
from welds.reference.metals import Metal


@pytest.mark.parametrize("process", Process)
def test_a_published_grade_has_a_document_that_was_read(tables, process):
    dressed_up = set()
    asked = 0
    for metal, joint, mm in product(tables.records(Metal), Joint, (1.6, 3.0, 6.0)):
        try:
            card = advise(Request(process, metal.id, mm, joint), tables)
        except (InputError, NotCoveredError):
            continue
        asked += 1
        for name, setting in card.settings.items():
            read = [key for key in setting.sources if not UNREAD.match(tables.sources[key].how_read)]
            if setting.basis.is_published and not read:
                dressed_up.add((name, setting.sources))
    assert asked > 200
    assert dressed_up == set()

"""No use of the program holds more memory than it may; what others cover is left to the table."""

import pytest

from tests.bench.memory import USES
from tests.support.peak import STATUS

TRIED = ("every page shown once", "chart of 504 cells", "job of 300 unlike joints", "card as PDF")


@pytest.mark.slow
@pytest.mark.skipif(not STATUS.exists(), reason="the system does not say how much memory a program held")
@pytest.mark.parametrize("name", TRIED)
def test_a_use_takes_no_more_than_it_may(tmp_path, name):
    use = USES[name]
    assert 5.0 < use.measure(tmp_path) < use.ceiling_mb

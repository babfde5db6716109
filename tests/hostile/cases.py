"""How many cases a run tries: few by itself, as many as `WELDS_CASES` says on demand."""

import os

from hypothesis import HealthCheck, settings

TOTAL = int(os.environ.get("WELDS_CASES", "0"))
"""Over all tests of this folder together, about; 0 takes each test's own few."""


def cases(usual: int, share: float) -> settings:
    """Return the settings of a test: `usual` cases, or its share of the number that was asked for."""
    wanted = max(usual, round(TOTAL * share))
    checks = [HealthCheck.too_slow, HealthCheck.function_scoped_fixture, HealthCheck.data_too_large]
    return settings(max_examples=wanted, suppress_health_check=checks)

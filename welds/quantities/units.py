"""Which units a person reads; the program itself always works in metric."""

from enum import StrEnum


class Units(StrEnum):
    """The two unit systems of the trade."""

    METRIC = "metric"
    INCH = "inch"

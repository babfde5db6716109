"""A figure with its room: lowest, where to start, highest, one unit for all three."""

from dataclasses import dataclass, replace


@dataclass(frozen=True, slots=True)
class Band:
    """Three values of one quantity in one unit, lowest <= start <= highest."""

    low: float
    start: float
    high: float
    unit: str

    def __post_init__(self) -> None:
        if not self.low <= self.start <= self.high:
            raise ValueError(f"band out of order: {self.low}, {self.start}, {self.high} {self.unit}")

    def scaled(self, factor: float) -> "Band":
        """Return the band multiplied by a positive factor."""
        return Band(self.low * factor, self.start * factor, self.high * factor, self.unit)

    def clipped(self, lowest: float | None = None, highest: float | None = None) -> "Band":
        """Return the band moved inside the limits; it shrinks to the limit when all of it lies beyond."""

        def clip(value: float) -> float:
            if highest is not None and value > highest:
                return highest
            if lowest is not None and value < lowest:
                return lowest
            return value

        return replace(self, low=clip(self.low), start=clip(self.start), high=clip(self.high))

    def __contains__(self, value: float) -> bool:
        return self.low <= value <= self.high

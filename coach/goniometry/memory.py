"""What earlier frames teach about a body and how it stands."""

from __future__ import annotations

import statistics
from dataclasses import dataclass

KEPT = 64


@dataclass(frozen=True, slots=True)
class Level:
    """The median of a quantity over all the time it was seen, in bounded space.

    Samples are taken every ``step_s``; when there are 64, every other one is dropped and the step
    doubles, so that they always spread evenly over the whole time.
    """

    samples: tuple[float, ...] = ()
    step_s: float = 0.1
    due_s: float = float("-inf")

    def seen(self, time_s: float, value: float) -> Level:
        """Take in a value, if one is due."""
        if time_s < self.due_s:
            return self
        if len(self.samples) < KEPT:
            return Level((*self.samples, value), self.step_s, time_s + self.step_s)
        thinned = (*self.samples[::2], value)
        return Level(thinned, 2 * self.step_s, time_s + 2 * self.step_s)

    @property
    def median(self) -> float | None:
        """None before the first sample."""
        return statistics.median(self.samples) if self.samples else None


NO_SAMPLES = Level()

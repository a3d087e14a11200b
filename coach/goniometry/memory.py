"""A few samples evenly spread over all the time that was seen, in bounded space."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Spread(Generic[T]):
    """At most ``most`` samples.

    They are taken every ``step_s``; when there are ``most``, every other one is dropped and the
    step doubles, so that they always spread evenly over the whole time.
    """

    most: int
    samples: tuple[T, ...] = ()
    step_s: float = 0.1
    due_s: float = float("-inf")

    def due(self, time_s: float) -> bool:
        """Whether a sample of this time would be taken."""
        return time_s >= self.due_s

    def seen(self, time_s: float, sample: T) -> Spread[T]:
        """Take a sample, if one is due."""
        if not self.due(time_s):
            return self
        if len(self.samples) < self.most:
            kept, step_s = (*self.samples, sample), self.step_s
        else:
            kept, step_s = (*self.samples[::2], sample), 2 * self.step_s
        return Spread(self.most, kept, step_s, time_s + step_s)

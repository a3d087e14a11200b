"""A low-pass filter for what is shown live; stored values never pass through it."""

from __future__ import annotations

import math
from dataclasses import dataclass


def _weight(cutoff_hz: float, step_s: float) -> float:
    return 1.0 / (1.0 + 1.0 / (2.0 * math.pi * cutoff_hz * step_s))


@dataclass(frozen=True, slots=True)
class OneEuro:
    """The 1 Euro filter of Casiez, Roussel and Vogel 2012 (CHI), as an immutable state.

    ``min_cutoff_hz`` sets the calm at rest, ``beta`` how fast the cutoff rises with speed.
    ``value`` is the filtered signal, None before the first sample.
    """

    min_cutoff_hz: float = 1.0
    beta: float = 0.1
    speed_cutoff_hz: float = 1.0
    time_s: float = 0.0
    value: float | None = None
    speed: float = 0.0

    def advance(self, time_s: float, sample: float) -> OneEuro:
        """Take a sample; a stamp that does not move on leaves the filter as it is."""
        if self.value is None:
            value, speed = sample, 0.0
        else:
            step_s = time_s - self.time_s
            if step_s <= 0:
                return self
            raw_speed = (sample - self.value) / step_s
            weight = _weight(self.speed_cutoff_hz, step_s)
            speed = weight * raw_speed + (1 - weight) * self.speed
            weight = _weight(self.min_cutoff_hz + self.beta * abs(speed), step_s)
            value = weight * sample + (1 - weight) * self.value
        return OneEuro(self.min_cutoff_hz, self.beta, self.speed_cutoff_hz, time_s, value, speed)

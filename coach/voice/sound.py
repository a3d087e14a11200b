"""Speech as samples, and what makes it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Protocol

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True, slots=True, eq=False)
class Sound:
    """One spoken text: ``samples`` of shape (N,), mono, signed 16 bit, read-only."""

    samples: NDArray[np.int16] = field(repr=False)
    rate_hz: int

    @property
    def seconds(self) -> float:
        """How long it sounds."""
        return len(self.samples) / self.rate_hz


class Synthesizer(Protocol):
    """Anything that turns a text into a sound at once.

    ``speak`` raises ``coach.domain.fault.Fault`` where that fails; callers then go on with
    captions.
    """

    def speak(self, text: str) -> Sound:
        """Speak a text."""
        ...

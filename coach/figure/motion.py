"""A demonstration's keyframes, and how the figure moves from one to the next."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from coach.domain.exercise import Bend

Angles = NDArray[np.float64]
"""Eleven degrees: of the arm, of the other arm (four each), of the trunk (three), as in `Bend`."""

RETURN_S = 2.5
"""How long the figure takes back to its first keyframe where the last one is another."""
_STILL_DEG = 0.5
_PLANELESS_DEG = 5.0
"""An arm that hangs so close to the trunk has no plane of elevation that could be seen."""
_PLANES = ((0, 1), (4, 5))
"""Where a plane of elevation and its elevation stand among the angles."""


def smooth_step(share: float) -> float:
    """Give the share of the way at a share of the time, both 0 to 1, with the least jerk.

    Flash and Hogan 1985 (J Neurosci 5:1688-1703): 10 t^3 - 15 t^4 + 6 t^5.
    """
    return share**3 * (10.0 - 15.0 * share + 6.0 * share**2)


class Motion:
    """The loop through some keyframes."""

    def __init__(self, bends: Sequence[Bend]) -> None:
        """Take two keyframes or more, in the order of their times."""
        times = [bend.at_s - bends[0].at_s for bend in bends]
        if any(later <= earlier for earlier, later in pairwise(times)):
            raise ValueError("keyframes out of order")
        keys = [np.array((*bend.arm, *bend.other, *bend.trunk)) for bend in bends]
        if np.abs(keys[-1] - keys[0]).max() > _STILL_DEG:
            times.append(times[-1] + RETURN_S)
            keys.append(keys[0])
        self._times = tuple(times)
        self._keys = tuple(keys)
        self.period_s = times[-1]

    @property
    def key_times_s(self) -> tuple[float, ...]:
        """When each keyframe is reached; the last one is the first again."""
        return self._times

    def at(self, time_s: float) -> Angles:
        """Give the angles (11,) at a time, which may lie beyond the loop's end."""
        within = time_s % self.period_s
        begin = max(i for i, at in enumerate(self._times[:-1]) if at <= within)
        first, last = self._keys[begin].copy(), self._keys[begin + 1].copy()
        for plane, elevation in _PLANES:
            if abs(first[elevation]) < _PLANELESS_DEG:
                first[plane] = last[plane]
            elif abs(last[elevation]) < _PLANELESS_DEG:
                last[plane] = first[plane]
        span_s = self._times[begin + 1] - self._times[begin]
        angles: Angles = first + smooth_step((within - self._times[begin]) / span_s) * (
            last - first
        )
        return angles

"""The last few seconds of readings."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import dataclass, field
from itertools import pairwise
from statistics import median

from coach.counting.hold import Sample

TRAIL_S = 7.0
"""Long enough for a slow movement of 5 s and the plateau after it."""


@dataclass(frozen=True, slots=True)
class Trail:
    """Usable readings, oldest first, all tuples alike in length.

    ``credit_s`` is the time each reading vouches for: since the frame before it, if that is
    not too long ago.
    """

    times_s: tuple[float, ...] = field(default=(), repr=False)
    angles_deg: tuple[float, ...] = field(default=(), repr=False)
    credit_s: tuple[float, ...] = field(default=(), repr=False)
    rows: tuple[Sample, ...] = field(default=(), repr=False)

    def with_sample(self, row: Sample, credit_s: float) -> Trail:
        """Add the newest and forget what is older than ``TRAIL_S``."""
        first = bisect_left(self.times_s, row.time_s - TRAIL_S)
        return Trail(
            (*self.times_s[first:], row.time_s),
            (*self.angles_deg[first:], row.angle_deg),
            (*self.credit_s[first:], credit_s),
            (*self.rows[first:], row),
        )

    def median_deg(self, from_s: float, to_s: float, least: int = 1) -> float | None:
        """Median angle in ``from_s < time <= to_s``; None with fewer than ``least`` readings."""
        first, last = bisect_right(self.times_s, from_s), bisect_right(self.times_s, to_s)
        return median(self.angles_deg[first:last]) if last - first >= least else None

    def noise_deg(self, from_s: float) -> float:
        """Standard deviation of readings after ``from_s``, from their jumps; 0 if too few."""
        angles = self.angles_deg[bisect_right(self.times_s, from_s) :]
        if len(angles) < 5:
            return 0.0
        return 1.4826 / 2**0.5 * median(abs(b - a) for a, b in pairwise(angles))

    def between(self, from_s: float, to_s: float) -> tuple[tuple[float, ...], tuple[float, ...]]:
        """Times and angles in ``from_s <= time <= to_s``."""
        first, last = bisect_left(self.times_s, from_s), bisect_right(self.times_s, to_s)
        return self.times_s[first:last], self.angles_deg[first:last]

    def credited_s(self, after_s: float) -> float:
        """Seen seconds after ``after_s``."""
        return sum(self.credit_s[bisect_right(self.times_s, after_s) :])

    def blind_s(self, after_s: float, bridge_s: float) -> float:
        """Sum of the gaps longer than ``bridge_s`` that begin at or after ``after_s``."""
        times = self.times_s[bisect_left(self.times_s, after_s) :]
        gaps = (b - a for a, b in pairwise(times))
        return sum(gap for gap in gaps if gap > bridge_s)

    def first_at(self, time_s: float) -> float:
        """Stamp at which a plateau since ``time_s`` was first seen: the nearest, or after a gap."""
        return self._nearest(time_s, later=True)

    def last_at(self, time_s: float) -> float:
        """Stamp at which a plateau until ``time_s`` was last seen: the nearest, or before a gap."""
        return self._nearest(time_s, later=False)

    def _nearest(self, time_s: float, later: bool) -> float:
        after = bisect_left(self.times_s, time_s)
        if after == 0:
            return self.times_s[0]
        if after == len(self.times_s):
            return self.times_s[-1]
        before_s, after_s = self.times_s[after - 1], self.times_s[after]
        if after_s - before_s > 0.25:
            return after_s if later else before_s
        return after_s if after_s - time_s < time_s - before_s else before_s

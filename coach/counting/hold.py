"""A hold that is under way: its clock and what has been read in it."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from coach.domain.reading import Form

KEPT = 2048
"""Readings kept for the medians: 34 s at 60 a second, thinned evenly beyond."""


@dataclass(frozen=True, slots=True)
class Sample:
    """A usable reading of a hold: its value in the rules' degrees, its error in its own unit."""

    time_s: float
    angle_deg: float
    error: float
    form: Form


@dataclass(frozen=True, slots=True)
class Samples:
    """Readings evenly thinned in time, so that the longest hold costs no more than a short one.

    Whenever ``KEPT`` are reached every second one goes and ``every_s``, the least distance of
    those yet to come, doubles.
    """

    rows: tuple[Sample, ...] = field(default=(), repr=False)
    every_s: float = 0.0

    def with_sample(self, row: Sample) -> Samples:
        """Add the newest, if it is far enough from the one before."""
        if self.rows and row.time_s - self.rows[-1].time_s < self.every_s * 0.999:
            return self
        rows = (*self.rows, row)
        if len(rows) < KEPT:
            return Samples(rows, self.every_s)
        spacing_s = (rows[-1].time_s - rows[0].time_s) / (len(rows) - 1)
        return Samples(rows[::2], 2 * max(self.every_s, spacing_s))


@dataclass(frozen=True, slots=True)
class Hold:
    """An open hold.

    ``blind_s`` are the seconds since ``start_s`` in gaps too long to vouch for, ``seen_s`` those
    vouched for by usable readings. ``there_s`` is when the arm was last seen at its place and
    ``there_blind_s`` the blind seconds until then: the clock stands at these while the arm is away
    or unseen, and makes good if it proves to have been a blink or a wrong frame.
    """

    start_s: float
    level_deg: float
    foot_deg: float
    samples: Samples
    there_s: float
    seen_s: float = 0.0
    blind_s: float = 0.0
    there_blind_s: float = 0.0
    top_deg: float = -1e9
    paused: bool = False
    completed: bool = False
    away_level_deg: float | None = None
    below_since_s: float | None = None
    above_since_s: float | None = None
    left_s: float | None = None
    left_from_s: float = 0.0
    lowest_deg: float = 1e9
    lowest_s: float = 0.0

    @property
    def held_s(self) -> float:
        """Seconds the arm was there and seen, as far as is known."""
        return max(0.0, self.there_s - self.start_s - self.there_blind_s)

    @property
    def range_deg(self) -> float:
        """How far the arm had come to be here."""
        return self.level_deg - self.foot_deg

    def there(self, time_s: float) -> Hold:
        """The arm is seen at its place."""
        return replace(
            self,
            there_s=time_s,
            there_blind_s=self.blind_s,
            away_level_deg=None,
            below_since_s=None,
            above_since_s=None,
        )

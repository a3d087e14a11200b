"""How an arm moves through an exercise: rest, raise, hold, return, again and again.

A hold's true start and end are the first and last moment at which the profile, before wobble, is
within ``HOLD_BAND_DEG`` of the hold's value; ``Repetition.hold_s`` is that span, and the ramps and
the plateau are laid out to give it. Wobble and breathing stay inside the band by construction.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from tests.bench.skeleton import Array

HOLD_BAND_DEG = 2.0
SHORTEST_HOLD_S = 2.0


@dataclass(frozen=True, slots=True)
class Repetition:
    """One raise and return. Under ``SHORTEST_HOLD_S`` it is a touch and not a hold.

    ``rest_s`` comes before it; the value drifts by ``creep_deg`` in the course of the hold; on
    the way up the arm stops for ``pause_s`` at ``pause_at`` (0-1) of the way.
    """

    peak_deg: float
    hold_s: float
    raise_s: float = 2.0
    return_s: float = 2.0
    rest_s: float = 2.0
    creep_deg: float = 0.8
    pause_at: float = 0.5
    pause_s: float = 0.0


@dataclass(frozen=True, slots=True)
class TrueHold:
    """A hold as it was made, seconds from the clip's start; ``peak_deg`` as asked for."""

    start_s: float
    end_s: float
    peak_deg: float

    @property
    def held_s(self) -> float:
        """How long it lasted."""
        return self.end_s - self.start_s


@dataclass(frozen=True, slots=True)
class Script:
    """An exercise from beginning to end.

    With ``jerk`` (0-1) it is done by fits and starts, ``jerk_hz`` a second: its own time runs
    between 1 - jerk and 1 + jerk times as fast as the clock's.
    """

    rest_deg: float
    repetitions: tuple[Repetition, ...]
    tail_s: float = 2.0
    jerk: float = 0.0
    jerk_hz: float = 1.0

    def angle_deg(self, times_s: Array) -> Array:
        """Give the profile (N,) at times (N,), without wobble."""
        knots = self._knots()
        times_s = self._own_s(times_s)
        out = np.full(len(times_s), self.rest_deg)
        for (t0, a0), (t1, a1) in pairwise(knots):
            inside = (times_s >= t0) & (times_s <= t1)
            if t1 <= t0 or not inside.any():
                continue
            part = (times_s[inside] - t0) / (t1 - t0)
            # A plateau creeps evenly; a ramp starts and stops gently.
            slow = abs(a1 - a0) < 2 * HOLD_BAND_DEG
            out[inside] = a0 + (a1 - a0) * (part if slow else min_jerk(part))
        return out

    @property
    def duration_s(self) -> float:
        """Length of the whole script."""
        return self._knots()[-1][0]

    def holds(self) -> tuple[TrueHold, ...]:
        """Give the holds that a counter should find."""
        out, t = [], 0.0
        for rep in self.repetitions:
            up_s, flat_s, down_s = self._spans(rep)
            start_s = t + rep.rest_s + rep.pause_s + rep.raise_s - up_s
            if rep.hold_s >= SHORTEST_HOLD_S:
                ends_s = (self._clock_s(start_s), self._clock_s(start_s + rep.hold_s))
                out.append(TrueHold(*ends_s, rep.peak_deg))
            t += rep.rest_s + rep.pause_s + rep.raise_s + flat_s + rep.return_s
            assert abs(up_s + flat_s + down_s - rep.hold_s) < 1e-9
        return tuple(out)

    def _own_s(self, clock_s: Array) -> Array:
        """How far the script has come at a clock's time; both begin at 0."""
        if self.jerk == 0.0:
            return clock_s
        turns = 2 * np.pi * self.jerk_hz
        return np.asarray(clock_s + self.jerk * np.sin(turns * clock_s) / turns)

    def _clock_s(self, own_s: float) -> float:
        """The clock's time at which the script has come so far."""
        if self.jerk == 0.0:
            return own_s
        low_s, high_s = own_s - 1.0 / self.jerk_hz, own_s + 1.0 / self.jerk_hz
        for _ in range(60):
            middle_s = (low_s + high_s) / 2
            if self._own_s(np.array([middle_s]))[0] > own_s:
                high_s = middle_s
            else:
                low_s = middle_s
        return low_s

    def _knots(self) -> list[tuple[float, float]]:
        t, out = 0.0, [(0.0, self.rest_deg)]

        def then(lasting_s: float, to_deg: float) -> None:
            nonlocal t
            t += lasting_s
            out.append((t, to_deg))

        for rep in self.repetitions:
            _, flat_s, _ = self._spans(rep)
            low, high = rep.peak_deg - rep.creep_deg / 2, rep.peak_deg + rep.creep_deg / 2
            then(rep.rest_s, self.rest_deg)
            if rep.pause_s > 0:
                stop = self.rest_deg + rep.pause_at * (low - self.rest_deg)
                then(rep.raise_s * rep.pause_at, stop)
                then(rep.pause_s, stop)
                then(rep.raise_s * (1 - rep.pause_at), low)
            else:
                then(rep.raise_s, low)
            then(flat_s, high)
            then(rep.return_s, self.rest_deg)
        then(self.tail_s, self.rest_deg)
        return out

    def _spans(self, rep: Repetition) -> tuple[float, float, float]:
        """Seconds inside the band while rising, on the plateau and while returning."""
        low, high = rep.peak_deg - rep.creep_deg / 2, rep.peak_deg + rep.creep_deg / 2
        from_deg, rise_s = self.rest_deg, rep.raise_s
        if rep.pause_s > 0:
            from_deg += rep.pause_at * (low - self.rest_deg)
            rise_s *= 1 - rep.pause_at
        up_s = rise_s * _end_share((HOLD_BAND_DEG - (rep.peak_deg - low)) / abs(low - from_deg))
        down_s = rep.return_s * _end_share(
            (HOLD_BAND_DEG + (high - rep.peak_deg)) / abs(high - self.rest_deg)
        )
        flat_s = rep.hold_s - up_s - down_s
        if flat_s < 0.0:
            raise ValueError(f"a hold of {rep.hold_s} s is shorter than its gentle ends")
        return up_s, flat_s, down_s


def min_jerk(part: Array) -> Array:
    """Give the place (0-1) on a smooth path at a part (0-1) of its time."""
    return np.asarray(part**3 * (10 - 15 * part + 6 * part**2))


def _end_share(distance: float) -> float:
    """Last part of a smooth path's time that is spent within ``distance`` (0-1) of its end."""
    low, high = 0.0, 1.0
    for _ in range(60):
        middle = (low + high) / 2
        if min_jerk(np.array([middle]))[0] > distance:
            high = middle
        else:
            low = middle
    return low


def wobble(times_s: Array, amplitude: float, rng: np.random.Generator, hz: float = 0.5) -> Array:
    """Smooth random movement (N,) about zero that never leaves +-amplitude."""
    rates_hz = hz * rng.uniform(0.3, 2.2, 5)
    phases = rng.uniform(0, 2 * np.pi, 5)
    waves = np.sin(2 * np.pi * rates_hz * times_s[:, None] + phases)
    return np.asarray(amplitude * waves.mean(axis=1))

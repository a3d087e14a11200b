"""What the axes of a replayed repetition cover."""

from __future__ import annotations

import math

import numpy as np

from coach.domain.movement import Unit
from coach.review.axis import Axis, Tick, value_axis
from coach.review.replay import Replay

_STEPS_S = (1, 2, 5, 10, 20, 30, 60, 120, 300, 600)
_ROOM = 0.05
"""Of the values' range, free above and below them."""


def time_axis(begin_s: float, end_s: float, most_ticks: int) -> Axis:
    """Cover seconds about the beginning of a hold with whole, round seconds."""
    step = next((s for s in _STEPS_S if (end_s - begin_s) / s <= most_ticks), _STEPS_S[-1])
    first, last = math.ceil(begin_s / step), math.floor(end_s / step)
    ticks = tuple(Tick(i * step, f"{i * step} s") for i in range(first, last + 1))
    return Axis(begin_s, end_s, ticks)


def span_of(shown: Replay) -> tuple[float, float]:
    """Give what a replay covers, in seconds since the beginning of its hold."""
    begin_s, _ = shown.hold_s
    return shown.begin_s - begin_s, shown.end_s - begin_s


def values_of(shown: Replay) -> tuple[float, float]:
    """Give the least and the largest value with its error that a replay shows."""
    repetition = shown.repetition
    edges = np.concatenate(
        (
            shown.value - shown.error,
            shown.value + shown.error,
            [repetition.value - repetition.error, repetition.value + repetition.error],
        )
    )
    return float(np.nanmin(edges)), float(np.nanmax(edges))


def close_axis(low: float, high: float, unit: Unit, most_ticks: int) -> Axis:
    """Cover values without the rounding outward that costs a low trace its height."""
    round_axis = value_axis(low, high, unit, most_ticks)
    room = _ROOM * max(high - low, abs(round_axis.hi - round_axis.lo) / 10)
    low, high = low - room, high + room
    ticks = tuple(tick for tick in round_axis.ticks if low <= tick.at <= high)
    return Axis(low, high, ticks) if round_axis.lo < round_axis.hi else Axis(high, low, ticks)

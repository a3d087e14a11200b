"""Turning points of a curve, and which of them are the tops of repetitions."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

BACK_SHARE = 0.5
"""Back by half of the rise or more, the next rise is another repetition; less is a pause."""


@dataclass(frozen=True, slots=True)
class Peak:
    """Positions in a curve: a top and the lowest points before and after it, None if not seen."""

    before: int | None
    top: int
    after: int | None


def turning_points(level: Floats, least: float) -> tuple[list[int], bool]:
    """Positions at which ``level`` (n,) turns by ``least`` or more, and whether the first is low.

    Lows and tops alternate. The first and the last are the extremes toward the ends, turned or not.
    """
    slopes = np.sign(np.diff(level))
    candidates = [0, *(np.flatnonzero(slopes[1:] != slopes[:-1]) + 1).tolist(), len(level) - 1]
    low = top = 0
    points: list[int] = []
    first_is_low = rising = True
    for i in candidates:
        low = i if level[i] < level[low] else low
        top = i if level[i] > level[top] else top
        if (rising or not points) and level[top] - level[i] >= least:
            first_is_low = first_is_low if points else False
            points.append(top)
            rising, low = False, i
        elif (not rising or not points) and level[i] - level[low] >= least:
            points.append(low)
            rising, top = True, i
    if points:
        points.append(top if rising else low)
    return points, first_is_low


def peaks(level: Floats, least: float) -> list[Peak]:
    """Tops that rise by ``least`` or more, pauses on the way and double tops made one.

    Between two tops the curve must come back to half of the way from the lower top to where the
    two movements began or ended, whichever is lower; the least return is judged first.
    """
    points, first_is_low = turning_points(level, least)
    lows: list[int | None] = list(points[0 if first_is_low else 1 :: 2])
    tops = points[1 if first_is_low else 0 :: 2]
    if not first_is_low:
        lows.insert(0, None)
    if len(lows) == len(tops):
        lows.append(None)
    while (between := _least_return(level, lows, tops)) is not None:
        left, right = tops[between - 1], tops[between]
        tops[between - 1 : between + 1] = [left if level[left] >= level[right] else right]
        del lows[between]
    return [Peak(lows[i], top, lows[i + 1]) for i, top in enumerate(tops)]


def _least_return(level: Floats, lows: Sequence[int | None], tops: Sequence[int]) -> int | None:
    worst, found = 1 - BACK_SHARE, None
    for i in range(1, len(tops)):
        low = lows[i]
        outer = [float(level[at]) for at in (lows[i - 1], lows[i + 1]) if at is not None]
        if low is None or not outer:
            continue
        lower = float(min(level[tops[i - 1]], level[tops[i]]))
        rise = lower - min(outer)
        kept = (float(level[low]) - min(outer)) / rise if rise > 0 else 0.0
        if kept > worst:
            worst, found = kept, i
    return found

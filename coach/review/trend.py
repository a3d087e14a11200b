"""Where the course of a patient's sessions goes."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np
from numpy.typing import NDArray

ENOUGH_SESSIONS = 6
"""From how many sessions on a patient's own scatter is worth estimating: below it Student's factor
alone is over 3."""
ENOUGH_WEEKS = 5
"""With four values no order of them is rarer than 5 % by chance (Kendall: 2 of 24)."""
DAYS_A_WEEK = 7
_MOST_PAIRS = 1_000
_Z95 = 1.959964


@dataclass(frozen=True, slots=True)
class WeekMedian:
    """The median of one calendar week's sessions, Monday to Sunday."""

    monday: date
    value: float
    sessions: int


@dataclass(frozen=True, slots=True)
class Trend:
    """A robust line through the weeks' medians.

    ``slope_per_week`` is in the values' unit, ``low`` and ``high`` the ends of its 95 % interval
    for weeks that are independent of each other: a camera moved once makes a slope too, so this
    tells how fast, and ``change.Difference`` whether at all.
    """

    weeks: tuple[WeekMedian, ...]
    slope_per_week: float
    low: float
    high: float

    @property
    def sure(self) -> bool:
        """Whether the interval leaves no doubt of the direction."""
        return self.low > 0 or self.high < 0


def robust_line(days: Sequence[float], values: Sequence[float]) -> tuple[float, float]:
    """Fit slope (units a day) and intercept after Theil and Sen.

    Slope: the median over all pairs with different days; intercept: median value minus slope
    times median day (Sen 1968, J Am Stat Assoc 63:1379). From a thousand sessions on, every n-th
    is taken, so that pairs stay few.
    """
    x, y = np.asarray(days, float), np.asarray(values, float)
    step = max(1, math.ceil(len(x) / _MOST_PAIRS))
    x, y = x[::step], y[::step]
    first, second = np.triu_indices(len(x), 1)
    dx = x[second] - x[first]
    apart = dx != 0
    if not apart.any():
        return 0.0, float(np.median(y))
    slope = float(np.median((y[second] - y[first])[apart] / dx[apart]))
    return slope, float(np.median(y) - slope * np.median(x))


def slope_interval(days: Sequence[float], values: Sequence[float]) -> tuple[float, float]:
    """Give the ends of the slope's 95 % interval, in units a day (Sen 1968, with his ties).

    Raises ValueError with fewer than two different days.
    """
    x, y = np.asarray(days, float), np.asarray(values, float)
    n = len(x)
    first, second = np.triu_indices(n, 1)
    dx, dy = x[second] - x[first], y[second] - y[first]
    apart = dx != 0
    slopes = np.sort(dy[apart] / dx[apart])
    if not len(slopes):
        raise ValueError("a slope needs two different days")
    variance = (_ordered(n) - _tied(x) - _tied(y)) / 18
    half = _Z95 * math.sqrt(max(variance, 0.0))
    low = max(round((len(slopes) - half) / 2) - 1, 0)
    high = min(round((len(slopes) + half) / 2), len(slopes) - 1)
    return float(slopes[low]), float(slopes[high])


def _ordered(n: float) -> float:
    return n * (n - 1) * (2 * n + 5)


def _tied(values: NDArray[np.float64]) -> float:
    return sum(_ordered(float(n)) for n in np.unique(values, return_counts=True)[1])


def week_medians(
    first: date, days: Sequence[float], values: Sequence[float]
) -> tuple[WeekMedian, ...]:
    """Sort values, ``days`` after ``first``, into calendar weeks."""
    weeks: dict[date, list[float]] = {}
    for day, value in zip(days, values, strict=True):
        on = first + timedelta(days=math.floor(day))
        weeks.setdefault(on - timedelta(days=on.weekday()), []).append(value)
    return tuple(
        WeekMedian(monday, float(np.median(found)), len(found))
        for monday, found in sorted(weeks.items())
    )


def trend(first: date, days: Sequence[float], values: Sequence[float]) -> Trend | None:
    """Lay a line after Theil and Sen through the weeks' medians; None with few weeks."""
    weeks = week_medians(first, days, values)
    if len(weeks) < ENOUGH_WEEKS:
        return None
    at = [(w.monday - weeks[0].monday) / timedelta(days=1) for w in weeks]
    medians = [w.value for w in weeks]
    slope, _ = robust_line(at, medians)
    low, high = slope_interval(at, medians)
    return Trend(weeks, DAYS_A_WEEK * slope, DAYS_A_WEEK * low, DAYS_A_WEEK * high)

"""How far a patient's sessions scatter about their own course."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

ENOUGH_SESSIONS = 6
"""From how many sessions on a patient's own scatter is worth estimating: four degrees of freedom
about a line, where Student's factor has come down to 2.8."""
_MOST_PAIRS = 1_000
_PAUSE_DAYS = 21.0
"""A pause over which nobody knows what the course did."""
_STRETCH = 28
"""Sessions over which a course passes for straight: four weeks of daily ones. Simulated unchanged
patients with independent days are then called changed in 2 to 4 of 100, those whose deviations
carry over by 0.4 in 6 to 11 (16 to 18 without ``carry_over``)."""


@dataclass(frozen=True, slots=True)
class Repeatability:
    """The standard deviation between sessions of one patient, the course taken out.

    ``sd`` is the standard error of measurement of one session; ``dof`` its degrees of
    freedom, so that a scatter known from few sessions is trusted less; ``carry_over`` the
    correlation of one session's deviation with the next one's, 0-1 (good and bad weeks).
    """

    sd: float
    dof: float
    sessions: int
    carry_over: float = 0.0

    @property
    def factor95(self) -> float:
        """Student's two-sided 95 % point for these degrees of freedom, 1.96 for very many."""
        return student95(self.dof)

    def mean_of(self, count: int) -> float:
        """Give the standard error of the mean of successive sessions, in the values' unit.

        sd / sqrt(count) where sessions are independent; larger where deviations carry over, by
        the variance of the mean of a first-order autoregressive series.
        """
        lags = range(1, count)
        shared = 2 * sum((1 - lag / count) * self.carry_over**lag for lag in lags)
        return self.sd * math.sqrt((1 + shared) / count)


def student95(dof: float) -> float:
    """Two-sided 95 % point of Student's distribution."""
    from scipy.special import stdtrit

    return float(stdtrit(dof, 0.975))


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


def repeatability(days: Sequence[float], values: Sequence[float]) -> Repeatability | None:
    """Estimate the scatter between sessions, None where there are too few to tell.

    Two estimates, each blind to something the other sees, and the larger counts: differences of
    successive sessions (von Neumann et al. 1941, Ann Math Stat 12:153), which any slow course
    leaves alone but which miss good and bad days in a row; and residuals about robust lines
    through four weeks at a time, which see those but take a sharp bend for scatter.
    """
    n = len(values)
    if n < ENOUGH_SESSIONS:
        return None
    y: NDArray[np.float64] = np.asarray(values, float)
    steps = np.diff(y)
    successive = float(steps @ steps) / (2 * (n - 1))
    residuals, dof = _about_lines(np.asarray(days, float), y)
    about_line = float(residuals @ residuals) / dof
    carry_over = max(0.0, min(_carry_over(residuals), 1 + 2 * _carry_over(steps)))
    if successive > about_line:
        # Degrees of freedom of a mean square successive difference, for independent values.
        dof = 2 * (n - 1) ** 2 / (3 * n - 4)
        return Repeatability(math.sqrt(successive), dof, n, carry_over)
    return Repeatability(math.sqrt(about_line), dof, n, carry_over)


def _about_lines(
    days: NDArray[np.float64], values: NDArray[np.float64]
) -> tuple[NDArray[np.float64], float]:
    """Give residuals about a robust line for each stretch, and their degrees of freedom."""
    cuts = _cuts(days)
    residuals = [
        y - (intercept + slope * x)
        for x, y in zip(np.split(days, cuts), np.split(values, cuts), strict=True)
        for slope, intercept in (robust_line(list(x), list(y)),)
    ]
    return np.concatenate(residuals), float(len(days) - 2 * len(residuals))


def _cuts(days: NDArray[np.float64]) -> list[int]:
    """Say where one stretch ends and the next begins: after long pauses, and when it is full."""
    pauses = np.flatnonzero(np.diff(days) > _PAUSE_DAYS) + 1
    edges = [0]
    for pause in (*(int(p) for p in pauses), len(days)):
        last = pause == len(days)
        if not last and min(pause - edges[-1], len(days) - pause) < ENOUGH_SESSIONS:
            continue
        parts = max(1, (pause - edges[-1]) // _STRETCH)
        edges += [edges[-1] + (pause - edges[-1]) * i // parts for i in range(1, parts + 1)]
    return edges[1:-1]


def _carry_over(values: NDArray[np.float64]) -> float:
    power = float(values @ values)
    return float(values[1:] @ values[:-1]) / power if power > 0 else 0.0

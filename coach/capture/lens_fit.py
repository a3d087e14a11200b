"""From views of the printed board to the camera's field of view and how far off it may be.

Only the focal length and one radial coefficient are free: pixels of today's sensors are square,
and what a sheet of paper shows of higher coefficients is mostly its own bend, for which the focal
length would pay. The principal point is held to the middle by its usual spread, so that it moves
only as far as the views demand, and what is not known of it is in the interval.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from coach.capture.lens_board import Seen
from coach.capture.lens_solve import first_guess, solve

Floats = NDArray[np.float64]

_OUTLIER = 4.0
"""In robust standard deviations: corners that miss by more are left out."""
_LEAST_GOOD = 8
"""Corners that a view must keep; four give it no freedom at all."""
_LEAST_VARIANCE = 1e-6
"""Square pixels: corners without any noise would leave nothing to weigh by."""
SPLITS = 8
"""Balanced splits of the views into halves; each gives one estimate of the spread."""
T95 = 2.1
"""Of the t distribution with about 20 degrees of freedom."""
FLOOR_DEG = 0.5
"""Never claimed better: a sheet bent by 0.5 mm can cost a quarter of a degree."""


@dataclass(frozen=True, slots=True)
class Fit:
    """A pinhole and one radial coefficient over some views; ``sd_deg`` by the covariance."""

    field_of_view_deg: float
    sd_deg: float
    k1: float
    centre_px: tuple[float, float]
    miss_px: float


@dataclass(frozen=True, slots=True)
class Calibrated:
    """The fit of all views with the half width of its 95 % interval and where that comes from."""

    fit: Fit
    error_deg: float
    halves_sd_deg: float


def calibrate(views: Sequence[Seen], size_px: tuple[int, int]) -> Calibrated | None:
    """Fit all views, and halves of them; None where they do not settle on one lens."""
    whole = fit_views(views, size_px)
    if whole is None:
        return None
    apart = []
    for split in range(SPLITS):
        # Views come in order of time, hence alike: one of every two neighbours in each half.
        random = np.random.default_rng(split)
        first = np.arange(0, len(views) - 1, 2) + random.integers(0, 2, len(views) // 2)
        halves = [
            fit_views([view for i, view in enumerate(views) if (i in first) is inside], size_px)
            for inside in (True, False)
        ]
        if halves[0] is None or halves[1] is None:
            return None
        apart.append((halves[0].field_of_view_deg - halves[1].field_of_view_deg) / 2)
    # Two halves differ by twice the standard deviation of their mean.
    halves_sd = math.sqrt(float(np.mean(np.square(apart))))
    error = math.hypot(T95 * max(whole.sd_deg, halves_sd), FLOOR_DEG)
    return Calibrated(whole, error, halves_sd)


def fit_views(views: Sequence[Seen], size_px: tuple[int, int]) -> Fit | None:
    """Least squares, once more without the corners that miss; None where it does not settle."""
    longer = max(size_px)
    start = first_guess(views, size_px)
    if start is None:
        return None
    solved = solve(views, *start, 1.0, size_px)
    if solved is None:
        return None
    misses = solved.misses(views)
    limit = _OUTLIER * 1.4826 * float(np.median(np.concatenate(misses)))
    good = [miss <= limit for miss in misses]
    if min(int(each.sum()) for each in good) < _LEAST_GOOD:
        return None
    views = [
        Seen(view.numbers[each], view.image_px[each])
        for view, each in zip(views, good, strict=True)
    ]
    count = 2 * sum(len(view.numbers) for view in views)
    squares = sum(float(miss @ miss) for miss in solved.misses(views))
    variance = squares / max(count - 4 - 6 * len(views), 1)
    solved = solve(views, solved.lens, solved.poses, max(variance, _LEAST_VARIANCE), size_px)
    if solved is None:
        return None
    focal = float(solved.lens[0])
    # d(field) / d(focal) = -longer / (focal^2 + longer^2 / 4)
    slope = longer / (focal**2 + longer**2 / 4)
    return Fit(
        math.degrees(2 * math.atan(longer / 2 / focal)),
        math.degrees(slope * math.sqrt(float(np.linalg.inv(solved.normal)[0, 0]))),
        float(solved.lens[1]),
        (float(solved.lens[2]), float(solved.lens[3])),
        math.sqrt(float(np.mean(np.concatenate(solved.misses(views)) ** 2))),
    )

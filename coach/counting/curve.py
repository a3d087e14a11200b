"""A calm curve through the readings of a whole recording: without wrong frames and without lag.

For recordings only: it looks ahead. SciPy has these filters, but loading it takes most of a second,
as long as measuring a short clip; ``tests/counting/test_curve.py`` holds them to SciPy's.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from numpy.typing import NDArray

Floats = NDArray[np.float64]

GRID_HZ = 60.0
"""Uniform time of the curve: no camera here is faster."""
CUTOFF_HZ = 2.0
"""Twice the pace of the quickest repetition, one a second: of its swing 94 % stay."""
ORDER = 2
"""Of the Butterworth filter, which runs forward and back (Winter, Biomechanics and Motor Control of
Human Movement, from memory: the usual filter for human movement)."""
BURST_S = 0.5
"""Wrong frames are off the median over this span if they fill less than half of it."""
BURST_DEG, BURST_SDS = 6.0, 4.0
BURST_SHARE, NEARBY_S = 0.2, 1.0
"""The top of the quickest repetition is off that median by a tenth of what is swept in its time."""
SLOWEST_HZ = 6.0
"""Frame rate below which the filter takes away too little for its residue to show the noise."""

_AT_ONCE = 65_536


@dataclass(frozen=True, slots=True, eq=False)
class Curve:
    """A stretch of a recording without a long gap.

    ``time_s`` (n,) uniform and ``level_deg`` (n,) the smoothed level; ``seen_s`` (k,) and
    ``seen_deg`` (k,) the readings it goes through, wrong frames left out.
    """

    time_s: Floats = field(repr=False)
    level_deg: Floats = field(repr=False)
    seen_s: Floats = field(repr=False)
    seen_deg: Floats = field(repr=False)

    @property
    def residue_deg(self) -> Floats:
        """What smoothing took away, at each reading, shape (k,)."""
        smooth: Floats = np.interp(self.seen_s, self.time_s, self.level_deg)
        return self.seen_deg - smooth


def calm_curve(seen_s: Floats, seen_deg: Floats) -> Curve | None:
    """Draw the curve through readings at ascending stamps; None under a second of them."""
    if len(seen_s) < 2 or seen_s[-1] - seen_s[0] < 1.0:
        return None
    time_s = np.arange(seen_s[0], seen_s[-1], 1 / GRID_HZ)
    right = _without_bursts(time_s, seen_s, seen_deg)
    seen_s, seen_deg = seen_s[right], seen_deg[right]
    level = low_pass(np.interp(time_s, seen_s, seen_deg), CUTOFF_HZ, GRID_HZ)
    return Curve(time_s, level, seen_s, seen_deg)


def low_pass(signal: Floats, cutoff_hz: float, rate_hz: float) -> Floats:
    """Smooth without lag; at ``cutoff_hz`` half of the amplitude stays."""
    # Half a period at either end: shorter, the filter has not settled; longer, it mirrors motion.
    pad = min(len(signal) - 1, round(rate_hz / cutoff_hz / 2))
    padded = np.pad(signal, pad, mode="reflect", reflect_type="odd")
    tangent = math.tan(math.pi * cutoff_hz / rate_hz)
    forward = _butterworth(padded.tolist(), tangent)
    smooth = np.array(_butterworth(forward[::-1], tangent)[::-1])
    return smooth[pad : len(smooth) - pad]


def _butterworth(signal: list[float], tangent: float) -> list[float]:
    """Second order, by the bilinear transform; settled at the first value before it begins.

    ``tangent`` is that of half the cutoff's angle per sample (Oppenheim & Schafer, Discrete-Time
    Signal Processing, from memory).
    """
    scale = 1.0 / (1.0 + math.sqrt(2.0) * tangent + tangent * tangent)
    b = tangent * tangent * scale
    a1 = 2.0 * (tangent * tangent - 1.0) * scale
    a2 = (1.0 - math.sqrt(2.0) * tangent + tangent * tangent) * scale
    one, other = signal[0] * (1.0 - b), signal[0] * (b - a2)
    smooth = []
    for value in signal:
        now = b * value + one
        one = 2.0 * b * value - a1 * now + other
        other = b * value - a2 * now
        smooth.append(now)
    return smooth


def _without_bursts(time_s: Floats, seen_s: Floats, seen_deg: Floats) -> NDArray[np.bool_]:
    """Mask of readings that are not a short burst far off their neighbourhood (Hampel's rule)."""
    level = np.interp(time_s, seen_s, seen_deg)
    middle = running_median(level, round(BURST_S * GRID_HZ) + 1)
    spread = 1.4826 * running_median(np.abs(level - middle), round(BURST_S * GRID_HZ) + 1)
    swept = running_range(level, round(NEARBY_S * GRID_HZ) + 1)
    limit = np.maximum(BURST_DEG, np.maximum(BURST_SDS * spread, BURST_SHARE * swept))
    off = np.abs(seen_deg - np.interp(seen_s, time_s, middle))
    right: NDArray[np.bool_] = off <= np.interp(seen_s, time_s, limit)
    return right


def running_median(signal: Floats, size: int) -> Floats:
    """Median of ``size`` samples, an odd number, around each; the ends go on as they are."""
    around = sliding_window_view(np.pad(signal, size // 2, mode="edge"), size)
    parts = range(0, len(around), _AT_ONCE)
    return np.concatenate([np.median(around[k : k + _AT_ONCE], axis=1) for k in parts])


def running_range(signal: Floats, size: int) -> Floats:
    """Largest less smallest of ``size`` samples, an odd number, around each; mirrored at the ends.

    By doubling spans, so that each sample is looked at a few times only.
    """
    high = low = np.pad(signal, size // 2, mode="symmetric")
    span = 1
    while span < size:
        further = min(span, size - span)
        high = np.maximum(high[: len(high) - further], high[further:])
        low = np.minimum(low[: len(low) - further], low[further:])
        span += further
    return high - low


def smoothed_noise_deg(curves: list[Curve]) -> float:
    """Standard deviation of the noise that is left in the curves.

    White noise of a camera is spread evenly up to half its frame rate. The filter passes the
    share 1 / (1 + (f / cutoff)^4) of an amplitude, and what it took away tells how much was there.
    """
    residue = np.concatenate([curve.residue_deg for curve in curves])
    steps = np.concatenate([np.diff(curve.seen_s) for curve in curves])
    rate_hz = max(SLOWEST_HZ, 1 / float(np.median(steps)))
    passed = 1 / (1 + (np.linspace(0, rate_hz / 2, 501) / CUTOFF_HZ) ** (2 * ORDER))
    share = np.mean(passed**2) / np.mean((1 - passed) ** 2)
    return 1.4826 * float(np.median(np.abs(residue)) * np.sqrt(share))

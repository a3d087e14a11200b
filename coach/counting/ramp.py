"""Where a movement ends in a plateau: the moment, found by fitting whole movements.

A band about the later level is entered long before the arm has come to rest: a minimum-jerk
movement of 90 degrees in 2 s is within 3 degrees of its end 0.3 s early. So the shape of the
approach is fitted, and the moment averaged over all shapes that explain the readings.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

DURATIONS_S = np.array([0.4, 0.6, 0.9, 1.4, 2.1, 3.2, 4.8, 7.2])
"""Durations tried first; the best of each shape is then refined."""
SHAPE_ODDS = np.array([0.45, 0.45, 0.10])
"""Before looking: people start and stop smoothly, uniform speed is the exception."""
THIN_S = 0.06
"""Spacing to which faster cameras are thinned."""
NOISE_FLOOR_DEG = 0.3
"""Least noise of a single reading, so that a perfect input stays solvable."""
WOBBLE_DEG = 0.8
"""Breathing and sway: about a degree, alike over ``WOBBLE_S``."""
WOBBLE_S = 0.7
REACHED_DEG, REACHED_SHARE = 0.3, 0.005
"""An arm this near its end of range is there, by degrees or by share of the movement, whichever is
nearer: the last instants of a smooth movement are too slow to see. Of a minimum-jerk movement of
90 degrees in 2 s this leaves the last 0.15 s to the hold; a band of two degrees would give it
0.28 s, and the very end of the movement nothing.
"""
MISFIT = 0.01
"""People's movements differ from the shapes by about so much of their range, equally slowly."""


@dataclass(frozen=True, slots=True)
class Plateau:
    """The flat end of a movement: since when, at which level, reached over how many degrees.

    ``since_s`` is when the arm came within reach of the level (``REACHED_DEG``).
    """

    since_s: float
    level_deg: float
    rise_deg: float
    noise_deg: float


def _progress(u: Array) -> Array:
    """Share of the way at share ``u`` of the time, shape (3, *u.shape).

    Minimum jerk (Flash & Hogan 1985, J Neurosci 5:1688-1703), the cubic with zero end speeds,
    and uniform speed.
    """
    u = np.clip(u, 0.0, 1.0)
    return np.stack([u**3 * (10 - 15 * u + 6 * u**2), u**2 * (3 - 2 * u), u])


_SHARES = np.linspace(0.0, 1.0, 401)
_MISSING = 1 - _progress(_SHARES)


def _reached_s(shape: int, ended_s: float, duration_s: float, rise_deg: float) -> float:
    """Moment at which a movement came within reach of its end."""
    missing = min(REACHED_SHARE, REACHED_DEG / max(rise_deg, REACHED_DEG))
    share = float(np.interp(missing, _MISSING[shape][::-1], _SHARES[::-1]))
    return ended_s - (1 - share) * duration_s


def _thinned(times_s: Array, angles_deg: Array) -> tuple[Array, Array]:
    """Medians over ``THIN_S``: the same work, and nearly the same result, at any frame rate."""
    bins = np.floor((times_s - times_s[0]) / THIN_S + 1e-6).astype(np.intp)
    edges = np.flatnonzero(np.diff(bins)) + 1
    groups = zip(np.split(times_s, edges), np.split(angles_deg, edges), strict=True)
    pairs = [(float(t.mean()), float(np.median(a))) for t, a in groups]
    return np.array([p[0] for p in pairs]), np.array([p[1] for p in pairs])


def _without_bursts(times_s: Array, angles_deg: Array) -> Array:
    """Mask of readings near the running median over 0.8 s, which a steady ramp passes."""
    near = np.abs(times_s[:, None] - times_s[None, :]) <= 0.4
    median = np.nanmedian(np.where(near, angles_deg[None, :], np.nan), axis=1)
    off = np.abs(angles_deg - median)
    return np.asarray(off <= np.maximum(6.0, 4 * 1.4826 * np.median(off)), dtype=np.bool_)


def _starts(t: Array, y: Array) -> list[tuple[float, float]]:
    """Best moment and duration of each shape on a coarse grid, by plain least squares."""
    ends = np.arange(t[0] + 0.1, t[-1] + 0.05, 0.1)
    u = 1 + (t - ends[:, None, None]) / DURATIONS_S[:, None]
    missing = 1 - _progress(u)
    missing -= missing.mean(axis=-1, keepdims=True)
    explained = np.minimum(missing @ (y - y.mean()), 0.0) ** 2
    gain = explained / np.maximum(np.einsum("...n,...n", missing, missing), 1e-3)
    best = gain.reshape(3, -1).argmax(axis=1)
    return [
        (float(ends[k // len(DURATIONS_S)]), float(DURATIONS_S[k % len(DURATIONS_S)])) for k in best
    ]


def _refined(
    t: Array, y: Array, whiten: Array, shape: int, since_s: float, duration_s: float
) -> tuple[float, tuple[float, float, float]]:
    """Gauss-Newton over moment and log duration, level and rise solved exactly each time.

    Gives the whitened squares and (since_s, level_deg, rise_deg).
    """
    at = np.array([since_s, np.log(duration_s)])
    trial = [_solved(t, y, whiten, shape, at + np.array(d)) for d in ((0, 0), (0.02, 0), (0, 0.02))]
    damping = 1e-3
    for _ in range(8):
        residual, squares, _ = trial[0]
        jacobian = np.stack([(trial[1][0] - residual) / 0.02, (trial[2][0] - residual) / 0.02], 1)
        normal = jacobian.T @ jacobian
        step = np.linalg.solve(
            normal + damping * np.diag(np.diag(normal) + 1e-6), -jacobian.T @ residual
        )
        new = at + np.clip(step, -0.4, 0.4)
        new[0] = min(max(new[0], t[0] + 0.05), t[-1])
        new[1] = min(max(new[1], np.log(0.3)), np.log(9.0))
        moved = _solved(t, y, whiten, shape, new)
        if moved[1] >= squares:
            damping = max(damping * 10, 1e-2)
            if damping > 10:
                break
            continue
        done = squares - moved[1] < 0.01
        at, damping = new, damping / 10
        trial = [moved] + [
            _solved(t, y, whiten, shape, at + np.array(d)) for d in ((0.02, 0), (0, 0.02))
        ]
        if done:
            break
    level, rise = trial[0][2]
    reached_s = _reached_s(shape, float(at[0]), float(np.exp(at[1])), rise)
    return trial[0][1], (reached_s, level, rise)


def _solved(
    t: Array, y: Array, whiten: Array, shape: int, at: Array
) -> tuple[Array, float, tuple[float, float]]:
    missing = 1 - _progress(1 + (t - at[0]) / np.exp(at[1]))[shape]
    design = whiten @ np.stack([np.ones(len(t)), -missing], axis=1)
    seen = whiten @ y
    normal = design.T @ design
    normal[1, 1] += 1e-6
    level, rise = np.linalg.solve(normal, design.T @ seen)
    residual = seen - design @ np.array([level, rise])
    return residual, float(residual @ residual), (float(level), float(rise))


def plateau_after_rise(times_s: Sequence[float], angles_deg: Sequence[float]) -> Plateau | None:
    """Fit a rise into a plateau that lasts to the end of the readings.

    ``times_s`` ascending stamps, ``angles_deg`` readings; None with fewer than six readings or
    where no rise explains them.
    """
    t, y = _thinned(np.asarray(times_s, dtype=np.float64), np.asarray(angles_deg, np.float64))
    if len(t) < 6:
        return None
    keep = _without_bursts(t, y)
    t, y = t[keep], y[keep]
    if len(t) < 6:
        return None
    jumps = np.abs(np.diff(y))
    noise = max(NOISE_FLOOR_DEG, 1.4826 * float(np.median(jumps)) / np.sqrt(2))
    wobble = float(np.hypot(WOBBLE_DEG, MISFIT * np.ptp(y)))
    alike = wobble**2 * np.exp(-0.5 * ((t[:, None] - t[None, :]) / WOBBLE_S) ** 2)
    whiten = np.linalg.inv(np.linalg.cholesky(alike + noise**2 * np.eye(len(t))))
    fits = [_refined(t, y, whiten, k, *start) for k, start in enumerate(_starts(t, y))]
    odds = SHAPE_ODDS * np.exp(-0.5 * np.array([f[0] - min(g[0] for g in fits) for f in fits]))
    odds /= odds.sum()
    since, level, rise = odds @ np.array([f[1] for f in fits])
    if rise <= 0:
        return None
    return Plateau(float(since), float(level), float(rise), noise)


def plateau_before_fall(times_s: Sequence[float], angles_deg: Sequence[float]) -> Plateau | None:
    """The same with time reversed: ``since_s`` is when the arm left a plateau it came down from."""
    back = [-t for t in reversed(times_s)]
    found = plateau_after_rise(back, list(reversed(angles_deg)))
    if found is None:
        return None
    return Plateau(-found.since_s, found.level_deg, found.rise_deg, found.noise_deg)

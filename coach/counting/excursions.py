"""Repetitions of a whole recording, held or not: from rest to a turning point and back.

Rules, in full:

- Wrong frames are left out and the rest is smoothed without lag (``coach.counting.curve``). Up to
  ``LOST_S`` without a reading are bridged; a longer gap parts the recording, and a movement that
  goes into one is incomplete.
- A repetition rises by ``REST_SDS`` standard deviations of what a resting arm shows: sway and
  breath of ``SWAY_DEG``, and the noise that smoothing leaves. Movements under ``RANGE_SHARE`` of
  the recording's large ones are fidgeting.
- Coming back by half of the rise ends it; less is a pause, a tremble or a second top of the same
  repetition (``coach.counting.turns``).
- The first and the last count if seen from the beginning or to the end by as much, or if the
  recording begins at rest and the movement sets out from there, or comes back there.
- It begins and ends a tenth of the rise above the lowest points on either side, or where the
  straight line through a quarter and three quarters of the rise meets them, whichever is nearer.
- Its value is the median of the readings about the turning point while the curve is within
  ``TOP_SHARE`` of the rise below it, or two standard deviations of the noise that is left: the
  highest of many readings would be too high by their scatter (of 60 with a standard deviation of
  2 degrees by 4.6). With fewer than three readings there it is the curve's. A top next to a gap of
  more than ``BRIDGE_S`` was not seen and has no value.
"""

from __future__ import annotations

from collections.abc import Sequence
from statistics import median

import numpy as np
from numpy.typing import NDArray

from coach.counting.curve import Curve, calm_curve, smoothed_noise_deg
from coach.counting.leaving import BRIDGE_S, LOST_S
from coach.counting.task import Task
from coach.counting.turns import BACK_SHARE, Peak, peaks
from coach.domain.excursion import Excursion
from coach.domain.progress import Repetition
from coach.domain.reading import Reading

Floats = NDArray[np.float64]

SWAY_DEG = 1.0
"""Breathing and sway of a resting arm, standard deviation (``ramp.WOBBLE_DEG`` is that of a held
one)."""
REST_SDS = 8.0
"""The widest swing of smoothed noise in two minutes is 6.2 standard deviations on average, and was
at most 7.9 in 600 simulated recordings."""
RANGE_SHARE = 0.2
"""As for holds: less than a fifth of the large movements is fidgeting."""
LARGE_QUANTILE = 0.75
"""Three of four movements may be fidgeting, one of four may be an arm that is put into place."""
LEAST_S = 0.65
"""Repetitions of one second take 0.7 s or more from leaving rest to being back, by the rule above;
shorter is a jerk, or wrong frames."""
REST_SEEN_S = 0.3
"""An arm cut off on its way is through the tenth in 0.1 s, even at 8 s a repetition."""
EDGE_SHARE = 0.1
TOP_SHARE = 0.03
"""A smooth turn is on average a quarter of this below its top, 1.3 degrees of 170."""


def excursions(
    readings: Sequence[Reading], task: Task, holds: Sequence[Repetition] = ()
) -> tuple[Excursion, ...]:
    """Find the repetitions of a recording; ``holds`` are those that ``count`` found in it."""
    seen = [each for each in readings if each.value is not None and np.isfinite(each.value)]
    curves = [curve for part in _parts(seen, task) if (curve := calm_curve(*part)) is not None]
    if not curves:
        return ()
    noise_deg = smoothed_noise_deg(curves)
    least_deg = REST_SDS * float(np.hypot(SWAY_DEG, noise_deg))
    found = [
        (curve, peak)
        for curve in curves
        for peak in _complete(curve, peaks(curve.level_deg, least_deg))
    ]
    if not found:
        return ()
    rises = [_rise_deg(curve, peak) for curve, peak in found]
    fidget_deg = RANGE_SHARE * float(np.quantile(rises, LARGE_QUANTILE))
    return tuple(
        _excursion(curve, peak, noise_deg, readings, task, holds)
        for (curve, peak), rise_deg in zip(found, rises, strict=True)
        if rise_deg >= fidget_deg
    )


def _parts(seen: Sequence[Reading], task: Task) -> list[tuple[Floats, Floats]]:
    """Stamps and degrees of the readings between long gaps.

    An arm on the other side of hanging makes another movement: it counts as hanging.
    """
    time_s = np.array([each.time_s for each in seen], dtype=np.float64)
    values = np.array([each.value for each in seen], dtype=np.float64)
    degrees = np.maximum(values * task.degrees_per_unit, task.lowest_rest_deg)
    later = np.concatenate(([True], np.diff(time_s) > 0)) if len(time_s) else np.array([], bool)
    time_s, degrees = time_s[later], degrees[later]
    cuts = np.flatnonzero(np.diff(time_s) > LOST_S) + 1
    return list(zip(np.split(time_s, cuts), np.split(degrees, cuts), strict=True))


def _complete(curve: Curve, tops: list[Peak]) -> list[Peak]:
    """Those movements of a curve that were seen from their beginning to their end."""
    level = curve.level_deg
    home_deg: float | None = None
    found: list[Peak] = []
    for number, peak in enumerate(tops):
        if peak.before is None or peak.after is None:
            continue
        start_s, end_s = _span_s(curve, peak)
        rise, fall = level[peak.top] - level[[peak.before, peak.after]]
        if number == 0 and start_s - curve.time_s[0] >= REST_SEEN_S:
            home_deg = float(level[peak.before])
        begun = rise >= BACK_SHARE * fall or (number == 0 and home_deg is not None)
        back_home = home_deg is not None and level[peak.after] <= home_deg + EDGE_SHARE * fall
        if begun and (fall >= BACK_SHARE * rise or back_home) and end_s - start_s >= LEAST_S:
            found.append(peak)
    return found


def _rise_deg(curve: Curve, peak: Peak) -> float:
    level = curve.level_deg
    assert peak.before is not None
    assert peak.after is not None
    return float(level[peak.top] - max(level[peak.before], level[peak.after]))


def _span_s(curve: Curve, peak: Peak) -> tuple[float, float]:
    """Stamps of leaving rest and of being back."""
    assert peak.before is not None
    assert peak.after is not None
    top = peak.top
    up = curve.level_deg[peak.before : top + 1]
    down = curve.level_deg[top : peak.after + 1][::-1]
    first = peak.before + _leaving(up)
    last = peak.after - _leaving(down)
    return float(curve.time_s[first]), float(curve.time_s[last])


def _leaving(rise: Floats) -> int:
    """Position at which a rise from its first to its last value gets under way."""
    share = (rise - rise[0]) / (rise[-1] - rise[0])
    tenth, quarter, most = (int(np.flatnonzero(share <= at)[-1]) for at in (EDGE_SHARE, 0.25, 0.75))
    return max(0, tenth, quarter - (most - quarter) // 2)


def _excursion(
    curve: Curve,
    peak: Peak,
    noise_deg: float,
    readings: Sequence[Reading],
    task: Task,
    holds: Sequence[Repetition],
) -> Excursion:
    start_s, end_s = _span_s(curve, peak)
    peak_s = float(curve.time_s[peak.top])
    within = [each for each in readings if start_s <= each.time_s <= end_s]
    usable = [each for each in within if each.value is not None]
    value, error = _value(curve, peak, noise_deg, usable, task)
    return Excursion(
        start_s=start_s,
        peak_s=peak_s,
        end_s=end_s,
        value=value,
        error=error,
        usable=len(usable),
        frames=len(within),
        held_s=sum(
            hold.held_s for hold in holds if start_s <= (hold.start_s + hold.end_s) / 2 <= end_s
        ),
    )


def _beside_a_gap(seen_s: Floats, at_s: float) -> bool:
    """Whether nothing was seen for more than ``BRIDGE_S`` within half of that of a moment."""
    starts = np.flatnonzero(np.diff(seen_s) > BRIDGE_S)
    near_s = BRIDGE_S / 2
    return bool(np.any((seen_s[starts] < at_s + near_s) & (seen_s[starts + 1] > at_s - near_s)))


def _value(
    curve: Curve, peak: Peak, noise_deg: float, usable: Sequence[Reading], task: Task
) -> tuple[float | None, float | None]:
    """Value and error at the top, both in the movement's unit."""
    level, time_s, top = curve.level_deg, curve.time_s, peak.top
    if _beside_a_gap(curve.seen_s, float(time_s[top])):
        return None, None
    below = level < level[top] - max(TOP_SHARE * _rise_deg(curve, peak), 2 * noise_deg)
    first = int(np.flatnonzero(below[:top])[-1]) + 1 if below[:top].any() else 0
    last = top + int(np.argmax(below[top:])) - 1 if below[top:].any() else len(level) - 1
    at_top = (curve.seen_s >= time_s[first]) & (curve.seen_s <= time_s[last])
    degrees = float(np.median(curve.seen_deg[at_top])) if at_top.sum() >= 3 else float(level[top])
    errors = [
        (abs(each.time_s - time_s[top]), each.error) for each in usable if each.error is not None
    ]
    near = [error for away_s, error in errors if away_s <= BRIDGE_S] or [min(errors)[1]]
    return degrees / task.degrees_per_unit, median(near)

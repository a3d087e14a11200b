"""From rest to a hold: moving, settling, and which plateau is the end of a range.

A plateau is an end range when the arm has risen to it by ``RISE_DEG`` since it was last down, when
it lies as much above the learned rest, and when it is no pause on the way back from a higher point.
10 degrees is twice the sway and drift of a resting arm on camera (measured jitter 0.5-2 degrees,
slow bias of a few) and less than the smallest range worth a stretch, 15 degrees of rotation.
Where the movement begins with the arm hanging, an arm on the other side of hanging neither rests
nor starts: coming back from there to the side of the body is no end of a range.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from coach.counting.hold import Hold, Samples
from coach.counting.leaving import BRIDGE_S, check_completed, drop_deg, recorded
from coach.counting.opening import follow_opening
from coach.counting.ramp import plateau_after_rise
from coach.counting.state import LEVEL_S, RISE_DEG, State
from coach.counting.trail import Trail
from coach.domain.progress import (
    HoldStarted,
    Phase,
    PhaseChanged,
    ProgressEvent,
)

RANGE_SHARE = 0.2
"""A range of less than a fifth of one held before is fidgeting."""
BACK_SHARE = 0.7
"""Below this share of the way to the highest point a plateau is a pause on the way back."""
QUIET_DEG = 2.5
"""Change of the running median over ``QUIET_S`` in a quiet arm: breath and creep; noise on top."""
QUIET_S = 0.55
FOLLOW_DEG_S = 0.5
"""How fast the learned rest follows a quiet arm upward: slow enough for the slowest stretch."""
TRY_S = 0.1
"""How often a settling arm is looked at closely."""
LONG_S, UNBROKEN_S = 1.6, 1.4
"""A slow machine gives fewer than eleven readings in that time: they do if none is missing."""
SLACK_S = 0.05
"""Half a frame at ten a second, by which dated stamps are rounded."""
LEAST_RAMP_DEG = 5.0
NEAR_DEG = 6.0
"""A plateau is within this of its level all along, wrong frames apart."""
FLAT_S = 2.5
"""A plateau of this length is believed even if no movement into it was seen."""

Events = tuple[ProgressEvent, ...]


def approach(state: State, gap_s: float) -> tuple[State, Events]:
    """Take the newest reading of ``state.trail`` with no hold open."""
    t, trail = state.time_s, state.trail
    level = trail.median_deg(t - LEVEL_S, t)
    assert level is not None
    state, events = _waiting(state, level)
    state = _extremes(state, level)
    early = trail.median_deg(t - QUIET_S - LEVEL_S, t - QUIET_S)
    moving = state.phase in (Phase.MOVING, Phase.RETURNING)
    allowed = (1.0 if moving else 1.5) * (QUIET_DEG + trail.noise_deg(t - 1.0))
    quiet = early is not None and abs(level - early) <= allowed
    raised = quiet and _is_raised(state, level)
    state = replace(
        state,
        quiet_since_s=(state.quiet_since_s if state.quiet_since_s is not None else t)
        if quiet
        else None,
        raised_since_s=(state.raised_since_s if state.raised_since_s is not None else t)
        if raised
        else None,
    )
    if raised:
        if t - state.tried_s >= TRY_S:
            state = replace(state, tried_s=t)
            since = _settled_since(state, level)
            if since is not None:
                state, more = _start(state, since)
                return state, (*events, *more)
        phase = Phase.SETTLING
    elif quiet:
        state = _learn_rest(state, level, min(gap_s, BRIDGE_S))
        resting = state.quiet_since_s is not None and t - state.quiet_since_s >= 1.0
        phase = Phase.REST if resting or state.phase is not Phase.RETURNING else state.phase
    elif early is None:
        phase = state.phase
    else:
        risen = state.low_deg is not None and level - state.low_deg > RISE_DEG / 2
        back = state.phase is Phase.RETURNING and not risen
        phase = Phase.RETURNING if back else Phase.MOVING
    state, opened = follow_opening(state, level, gap_s, quiet)
    if phase is not state.phase:
        return replace(state, phase=phase), (*events, *opened, PhaseChanged(t, phase))
    return state, (*events, *opened)


def _waiting(state: State, level: float) -> tuple[State, Events]:
    """Record a stage once the arm has come down without holding higher."""
    if state.stage is None or level >= state.stage.below_deg:
        return state, ()
    return recorded(replace(state, stage=None), state.stage.repetition)


def _extremes(state: State, level: float) -> State:
    """Follow the lowest and highest level by medians of which five wrong frames are a minority."""
    t, trail = state.time_s, state.trail
    slow = trail.median_deg(t - LONG_S, t, least=11)
    if slow is None and trail.credited_s(t - LONG_S) >= UNBROKEN_S:
        slow = trail.median_deg(t - LONG_S, t, least=5)
    low, peak = state.low_deg, state.peak_deg
    if slow is not None:
        low = slow if low is None else min(low, slow)
        peak = max(peak, slow)
    if low is not None:
        low = max(low, state.task.lowest_rest_deg)
    if low is not None and level < low + 0.3 * (peak - low):
        peak = max(low, level)
    return replace(state, low_deg=low, peak_deg=peak)


def _is_raised(state: State, level: float) -> bool:
    if state.low_deg is None:
        return False
    rise = level - state.low_deg
    least = max(RISE_DEG, RANGE_SHARE * state.range_deg)
    if rise < (drop_deg(state.range_deg) if state.range_deg else RISE_DEG):
        return False
    rest = state.task.lowest_rest_deg if state.rest_deg is None else state.rest_deg
    if level < rest + least:
        return False
    return rise >= BACK_SHARE * (state.peak_deg - state.low_deg)


def _learn_rest(state: State, level: float, dt_s: float) -> State:
    t, low, rest = state.time_s, state.low_deg, state.rest_deg
    if level < state.task.lowest_rest_deg:
        return state
    follow = FOLLOW_DEG_S * dt_s
    if low is not None and level > low:
        low = min(level, low + follow)
    if state.quiet_since_s is not None and t - state.quiet_since_s >= 1.0:
        rest = level if rest is None else min(level, rest + follow)
    return replace(state, low_deg=low, rest_deg=rest)


def _settled_since(state: State, level: float) -> float | None:
    t, trail = state.time_s, state.trail
    way = _way_here(trail, t, level)
    times, angles = trail.between(way.foot_s, t)
    found = plateau_after_rise(times, angles if way.upward else [-a for a in angles])
    if found is not None and found.rise_deg >= LEAST_RAMP_DEG:
        start_s = trail.first_at(found.since_s)
        if t - max(start_s, found.since_s) >= state.task.settle_s - SLACK_S:
            return max(start_s, trail.first_at(way.near_s))
    if t - max(way.near_s, state.raised_since_s or t) >= FLAT_S:
        return trail.first_at(way.near_s)
    return None


@dataclass(frozen=True, slots=True)
class _Way:
    """How the arm came to its present level: since when near it, from below or above, from when."""

    near_s: float
    upward: bool
    foot_s: float


def _way_here(trail: Trail, now_s: float, level: float) -> _Way:
    """Go back in steps of 0.2 s to the foot (or head) of the last movement.

    A movement stays off the level for 0.8 s, longer than any burst of wrong frames.
    """
    step_s, stamps, levels = 0.2, [now_s], [level]
    while stamps[-1] - step_s > trail.times_s[0]:
        at = stamps[-1] - step_s
        known = trail.median_deg(at - LEVEL_S / 2, at + LEVEL_S / 2)
        stamps.append(at)
        levels.append(levels[-1] if known is None else known)
    off = [abs(known - level) > NEAR_DEG for known in levels]
    first = next((k for k in range(len(off)) if all(off[k : k + 4])), None)
    if first is None:
        return _Way(stamps[-1], True, trail.times_s[0])
    sign = 1 if levels[first] < level else -1
    for k in range(first + 4, len(stamps)):
        if sign * (levels[k] - levels[k - 4]) > -1.5:
            return _Way(stamps[first - 1], sign > 0, stamps[k - 4] - 0.3)
    return _Way(stamps[first - 1], sign > 0, trail.times_s[0])


def _start(state: State, start_s: float) -> tuple[State, Events]:
    t, trail = state.time_s, state.trail
    samples = Samples()
    for row in trail.rows:
        if row.time_s >= start_s:
            samples = samples.with_sample(row)
    level = trail.median_deg(start_s - SLACK_S, t)
    blind_s = trail.blind_s(start_s, BRIDGE_S)
    assert level is not None
    assert state.low_deg is not None
    hold = Hold(
        start_s=start_s,
        level_deg=level,
        foot_deg=state.low_deg,
        samples=samples,
        there_s=t,
        seen_s=trail.credited_s(start_s),
        blind_s=blind_s,
        there_blind_s=blind_s,
    )
    state = replace(
        state,
        hold=hold,
        opening=None,
        phase=Phase.HOLDING,
        quiet_since_s=None,
        raised_since_s=None,
    )
    state, done = check_completed(state)
    return state, (PhaseChanged(t, Phase.HOLDING), HoldStarted(t, start_s), *done)

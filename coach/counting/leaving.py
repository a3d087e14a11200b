"""While a hold is open: its clock, sight lost and found, and how it ends."""

from __future__ import annotations

from dataclasses import replace

import msgspec

from coach.counting.hold import Hold
from coach.counting.ramp import plateau_before_fall
from coach.counting.state import LEVEL_S, Stage, State
from coach.counting.trail import Trail
from coach.counting.value import repetition
from coach.domain.progress import (
    EndedBecause,
    HoldCompleted,
    HoldResumed,
    Phase,
    PhaseChanged,
    ProgressEvent,
    Repetition,
    RepetitionEnded,
)

BRIDGE_S = 0.5
"""Unseen for so long the clock makes good: no arm is let down and raised again in it."""
LOST_S = 3.0
"""Unseen for longer a hold ends: in that time an arm can be lowered, rested and raised again."""
CONFIRM_S = 0.65
"""Five wrong frames at ten a second last 0.5 s."""
WATCH_S = (0.5, 1.6)
"""After a let-go is certain, how long the fall is watched to date its beginning: until it is over,
at least and at most."""
UP_DEG = 8.0
"""A rise by this within ``LAG_S`` is a new stage; slower ones are the stretch giving way."""
LAG_S = (3.5, 1.0)
"""The level of a hold is the median over this span before now: creep and breath are in it."""

Events = tuple[ProgressEvent, ...]


def drop_deg(range_deg: float) -> float:
    """Fall that lets go of a hold: 10 degrees, for small ranges 40 % of them, at least 6."""
    return min(10.0, max(6.0, 0.4 * range_deg))


def holding(state: State, gap_s: float) -> tuple[State, Events]:
    """Take the newest reading of ``state.trail`` with a hold open."""
    t, trail, hold = state.time_s, state.trail, state.hold
    assert hold is not None
    level = trail.median_deg(t - LEVEL_S, t)
    assert level is not None
    hold = replace(
        hold,
        samples=hold.samples.with_sample(trail.rows[-1]),
        seen_s=hold.seen_s + trail.credit_s[-1],
        blind_s=hold.blind_s + (gap_s if gap_s > BRIDGE_S else 0.0),
    )
    if hold.left_s is not None:
        return _watch_fall(replace(state, hold=hold), hold, level)
    before = _level_before(trail, hold, t)
    hold = replace(hold, level_deg=before, top_deg=max(hold.top_deg, before))
    fall, limit = before - level, drop_deg(hold.range_deg)
    events: Events = ()
    if fall > limit:
        since = t if hold.below_since_s is None else hold.below_since_s
        hold = replace(hold, away_level_deg=before, below_since_s=since, above_since_s=None)
        if t - since >= CONFIRM_S:
            hold = replace(hold, left_s=t, left_from_s=since, lowest_deg=level, lowest_s=t)
            state = replace(state, phase=Phase.RETURNING)
            events = (PhaseChanged(t, Phase.RETURNING),)
    elif fall > limit / 2 and t - hold.there_s < LAG_S[0]:
        hold = replace(hold, away_level_deg=before, below_since_s=None, above_since_s=None)
    elif fall < -UP_DEG:
        since = t if hold.above_since_s is None else hold.above_since_s
        hold = replace(hold, away_level_deg=before, below_since_s=None, above_since_s=since)
        if t - since >= CONFIRM_S:
            return _left_upward(replace(state, hold=hold), level)
    else:
        hold = hold.there(t)
        if hold.paused:
            hold, events = replace(hold, paused=False), (HoldResumed(t),)
    state = replace(state, hold=hold)
    if hold.top_deg - before > max(12.0, 0.4 * hold.range_deg):
        return ended(state, hold.there_s, EndedBecause.LET_GO, level)
    state, done = check_completed(state)
    return state, (*events, *done)


def _watch_fall(state: State, hold: Hold, level: float) -> tuple[State, Events]:
    """Follow the fall until it is over or seen for long enough to date its beginning."""
    t, watched_s = state.time_s, state.time_s - (hold.left_s or 0.0)
    if level < hold.lowest_deg:
        hold = replace(hold, lowest_deg=level, lowest_s=t)
    early = state.trail.median_deg(t - 2 * LEVEL_S, t - LEVEL_S)
    over = level > hold.lowest_deg + 4.0 or (early is not None and early - level < 1.0)
    state = replace(state, hold=hold)
    if watched_s >= WATCH_S[1] or (over and watched_s >= WATCH_S[0]):
        return let_go(state)
    return state, ()


def _level_before(trail: Trail, hold: Hold, now_s: float) -> float:
    """Level of the hold a little while ago; frozen while the arm seems to be away."""
    if hold.away_level_deg is not None:
        return hold.away_level_deg
    lagged = trail.median_deg(max(hold.start_s, now_s - LAG_S[0]), now_s - LAG_S[1], least=11)
    return hold.level_deg if lagged is None else lagged


def check_completed(state: State) -> tuple[State, Events]:
    """Say once that the asked seconds are held."""
    hold, asked = state.hold, state.task.hold_s
    if hold is None or asked is None or hold.completed or hold.held_s < asked:
        return state, ()
    return replace(state, hold=replace(hold, completed=True)), (HoldCompleted(state.time_s),)


def fall_start_s(trail: Trail, hold: Hold, fallen_s: float, until_s: float) -> float:
    """Stamp at which the arm began the fall that was certain at ``fallen_s``."""
    times, angles = trail.between(max(hold.start_s, fallen_s - 3.0), until_s)
    found = plateau_before_fall(times, angles)
    since = hold.there_s if found is None else found.since_s
    return trail.last_at(min(max(since, hold.start_s), fallen_s))


def let_go(state: State) -> tuple[State, Events]:
    """End a hold whose arm is on its way down, dated back to where the fall began."""
    hold = state.hold
    assert hold is not None
    fallen_s = hold.left_from_s if hold.left_s is not None else hold.below_since_s
    assert fallen_s is not None
    until_s = hold.lowest_s if hold.left_s is not None else state.usable_s
    end_s = fall_start_s(state.trail, hold, fallen_s, until_s)
    return ended(state, end_s, EndedBecause.LET_GO, min(hold.lowest_deg, hold.level_deg))


def ended(
    state: State, end_s: float, because: EndedBecause, level_deg: float
) -> tuple[State, Events]:
    """Close the hold at ``end_s``; ``level_deg`` is where the arm is now."""
    hold = state.hold
    assert hold is not None
    lost = because is EndedBecause.LOST
    phase = Phase.MOVING if lost else Phase.RETURNING
    changed: Events = () if phase is state.phase else (PhaseChanged(state.time_s, phase),)
    rep = summary(state, hold, end_s, because)
    state = replace(
        state,
        hold=None,
        phase=phase,
        range_deg=max(state.range_deg, hold.range_deg),
        low_deg=hold.foot_deg if lost else level_deg,
        peak_deg=hold.level_deg if lost else level_deg,
    )
    if rep.held_s >= state.task.least_s:
        state, events = recorded(replace(state, stage=None), rep)
    elif state.stage is not None:
        state, events = recorded(replace(state, stage=None), state.stage.repetition)
    else:
        events = ()
    return state, (*events, *changed)


def recorded(state: State, rep: Repetition) -> tuple[State, Events]:
    """Number a repetition and hand it out."""
    count = state.counted + 1
    numbered = _renumbered(rep, count)
    return replace(state, counted=count), (RepetitionEnded(state.time_s, numbered),)


def _left_upward(state: State, level: float) -> tuple[State, Events]:
    """A finished hold is a repetition; an unfinished one waits for what the arm does higher up."""
    hold, t = state.hold, state.time_s
    assert hold is not None
    assert hold.above_since_s is not None
    times, angles = state.trail.between(max(hold.start_s, t - 3.0), t)
    found = plateau_before_fall(times, [-a for a in angles])
    since = hold.there_s if found is None else found.since_s
    end_s = state.trail.last_at(min(max(since, hold.start_s), hold.above_since_s))
    rep = summary(state, hold, end_s, EndedBecause.LET_GO)
    below = hold.level_deg - drop_deg(hold.range_deg)
    state = replace(
        state, hold=None, phase=Phase.MOVING, low_deg=hold.foot_deg, peak_deg=hold.level_deg
    )
    moved = PhaseChanged(t, Phase.MOVING)
    if hold.completed:
        state, events = recorded(replace(state, stage=None, low_deg=hold.level_deg), rep)
        return state, (*events, moved)
    if rep.held_s >= state.task.least_s:
        state = replace(state, stage=Stage(rep, below))
    return state, (moved,)


def summary(state: State, hold: Hold, end_s: float, because: EndedBecause) -> Repetition:
    """Sum up a hold that ended at ``end_s``, which lies within the trail."""
    blind_s = hold.blind_s - state.trail.blind_s(end_s, BRIDGE_S)
    seen_s = hold.seen_s - state.trail.credited_s(end_s)
    return repetition(
        hold.samples.rows,
        number=state.counted + 1,
        start_s=hold.start_s,
        end_s=end_s,
        held_s=end_s - hold.start_s - blind_s,
        seen_s=seen_s,
        ended_because=EndedBecause.COMPLETED if hold.completed else because,
        unit=state.task.unit,
    )


def _renumbered(rep: Repetition, number: int) -> Repetition:
    return msgspec.structs.replace(rep, number=number)

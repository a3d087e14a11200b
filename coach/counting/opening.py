"""The plateau with which a clip begins: rest, or a hold begun before it."""

from __future__ import annotations

from dataclasses import replace

from coach.counting.hold import Hold, Samples
from coach.counting.leaving import BRIDGE_S, CONFIRM_S, fall_start_s, recorded, summary
from coach.counting.state import LEVEL_S, RISE_DEG, State
from coach.domain.progress import EndedBecause, ProgressEvent

OPENING_RISE_DEG = 8.0
"""An arm that rises by this from where the clip began was at rest there."""
OPENING_FALL_DEG = 20.0
"""Of a plateau that was there from the start only one side is seen: twice the usual height."""
AWAY_S = 5.0
"""Neither there nor fallen far for so long: it was no hold."""

Events = tuple[ProgressEvent, ...]


def follow_opening(state: State, level: float, gap_s: float, quiet: bool) -> tuple[State, Events]:
    """Follow the plateau with which a clip began: rest, or a hold begun before it."""
    t, trail, hold = state.time_s, state.trail, state.opening
    if state.task.hold_s is not None:
        return state, ()
    if hold is None:
        if state.opened or not quiet:
            return state, ()
        start_s = trail.times_s[0]
        first = trail.median_deg(start_s - 1.0, start_s + LEVEL_S)
        if t - start_s > AWAY_S or first is None or abs(first - level) > OPENING_RISE_DEG / 2:
            return replace(state, opened=True), ()
        hanging = state.task.hanging_deg
        if hanging is not None and level < hanging + RISE_DEG:
            return replace(state, opened=True), ()
        hold = Hold(
            start_s,
            level,
            level,
            Samples(),
            there_s=t,
            seen_s=trail.credited_s(start_s),
            blind_s=trail.blind_s(start_s, BRIDGE_S),
        )
        return replace(state, opening=hold, opened=True), ()
    if level > hold.level_deg + OPENING_RISE_DEG or state.usable_s - hold.there_s > AWAY_S:
        return replace(state, opening=None), ()
    hold = replace(
        hold,
        samples=hold.samples.with_sample(trail.rows[-1]),
        seen_s=hold.seen_s + trail.credit_s[-1],
        blind_s=hold.blind_s + (gap_s if gap_s > BRIDGE_S else 0.0),
    )
    if level >= hold.level_deg - OPENING_FALL_DEG:
        there = abs(level - hold.level_deg) < OPENING_RISE_DEG / 2
        hold = hold.there(t) if there else replace(hold, below_since_s=None)
        return replace(state, opening=hold), ()
    since = t if hold.below_since_s is None else hold.below_since_s
    if t - since < CONFIRM_S:
        return replace(state, opening=replace(hold, below_since_s=since)), ()
    end_s = fall_start_s(trail, hold, since, t)
    state = replace(state, opening=None, rest_deg=None)
    rep = summary(state, hold, end_s, EndedBecause.LET_GO)
    return (state, ()) if rep.held_s < state.task.least_s else recorded(state, rep)

"""What is said about a hold: its beginning, its numbers from true time, its end, and the next."""

from __future__ import annotations

from dataclasses import replace
from typing import Final, assert_never

from coach.cues.happening import Happening
from coach.cues.marks import Mark, hold_marks, marks_ahead
from coach.cues.state import Rules, by_time, cue
from coach.domain.cue import Cue, Urgency
from coach.domain.moment import Stage
from coach.domain.progress import (
    EndedBecause,
    HoldCompleted,
    HoldPaused,
    HoldResumed,
    HoldStarted,
    Phase,
    PhaseChanged,
    ProgressEvent,
    Repetition,
    RepetitionEnded,
    TimedHold,
    TimedHoldEnded,
)

NUMBER_STALE_S: Final = 0.4
LOST_LASTED_S: Final = 1.0
"""A shorter loss of sight is not worth a word. Our choice."""
LOST_AGAIN_S: Final = 8.0
STEADY_DEG: Final = 5.0
"""Lean and turn below this are called steady: a third of the 15 degrees that must be corrected."""


def hold_event(state: Rules, happening: Happening, event: ProgressEvent) -> tuple[Rules, list[Cue]]:
    """Say what began, paused, went on or ended."""
    match event:
        case HoldStarted(time_s=time_s):
            planned, remaining_s = happening.planned, happening.remaining_s
            marks: tuple[Mark, ...] = ()
            if planned is not None and remaining_s is not None:
                marks = marks_ahead(hold_marks(planned.hold_s), remaining_s)
            state = replace(state, marks=marks, lost_since_s=None, lost_said=False)
            return state, [cue(state, time_s, 1.0, Urgency.TIMED, "hold")]
        case HoldPaused(time_s=time_s):
            return replace(state, lost_since_s=time_s), []
        case HoldResumed(time_s=time_s):
            told = state.lost_said
            state = replace(state, lost_since_s=None, lost_said=False)
            found = cue(state, time_s, 1.5, Urgency.NORMAL, "sight.found")
            return state, [found] if told else []
        case HoldCompleted(time_s=time_s):
            return replace(state, marks=()), [cue(state, time_s, 2.0, Urgency.TIMED, "rest")]
        case RepetitionEnded(repetition=repetition):
            state = replace(state, marks=(), lost_since_s=None, lost_said=False)
            steady = _steady(repetition)
            return state, _ended(state, happening, repetition, steady=steady)
        case TimedHoldEnded(hold=hold):
            return replace(state, marks=()), _ended(state, happening, hold, steady=False)
        case PhaseChanged():
            return state, []
        case _:
            assert_never(event)


def _ended(
    state: Rules, happening: Happening, repetition: Repetition | TimedHold, *, steady: bool
) -> list[Cue]:
    now_s, done, asked = (
        happening.time_s,
        happening.repetitions_done,
        happening.repetitions_asked,
    )
    match repetition.ended_because:
        case _ if happening.planned is None:
            return []
        case EndedBecause.COMPLETED:
            if done >= asked:
                key = "count-only" if asked == 1 else "count-last"
                return [cue(state, now_s, 8.0, Urgency.NORMAL, key, asked=asked)]
            key = "count-steady" if steady else "count"
            return [cue(state, now_s, 6.0, Urgency.GENTLE, key, done=done, asked=asked)]
        case EndedBecause.LET_GO | EndedBecause.LOST if happening.stage is not Stage.EXERCISE:
            return []
        case EndedBecause.LET_GO:
            held_s = int(repetition.held_s)
            key = "let-go" if held_s >= 2 else "let-go-short"
            return [cue(state, now_s, 4.0, Urgency.NORMAL, key, held_s=held_s)]
        case EndedBecause.LOST:
            key = "broken-hold" if by_time(happening) else "lost-hold"
            return [cue(state, now_s, 4.0, Urgency.NORMAL, key)]
        case EndedBecause.STOPPED | EndedBecause.INPUT_ENDED:
            return []
        case _:
            assert_never(repetition.ended_because)


def _steady(repetition: Repetition) -> bool:
    """Tell whether what this view can see of the trunk stayed where it was."""
    seen = [
        abs(tilt_deg)
        for tilt_deg in (repetition.form.trunk_lean_deg, repetition.form.trunk_turn_deg)
        if tilt_deg is not None
    ]
    return bool(seen) and max(seen) < STEADY_DEG and not repetition.faults


def sight_lost(state: Rules, happening: Happening) -> tuple[Rules, list[Cue]]:
    """Say that the clock waits, once a loss has lasted."""
    now_s, since_s = happening.time_s, state.lost_since_s
    if since_s is None or state.lost_said or now_s - since_s < LOST_LASTED_S:
        return state, []
    if now_s - state.lost_said_s < LOST_AGAIN_S:
        return state, []
    state = replace(state, lost_said=True, lost_said_s=now_s)
    return state, [cue(state, now_s, 2.0, Urgency.NORMAL, "sight.lost")]


def numbers(state: Rules, happening: Happening) -> tuple[Rules, list[Cue]]:
    """Say the number whose second this is, stamped with the instant it was exactly true."""
    remaining_s = happening.remaining_s
    if remaining_s is None or happening.resting or happening.stage is not Stage.EXERCISE:
        return state, []
    reached = [mark for mark in state.marks if mark.remaining_s >= remaining_s]
    if not reached:
        return state, []
    state = replace(state, marks=state.marks[len(reached) :])
    late_s = reached[-1].remaining_s - remaining_s
    due_s = happening.time_s - late_s
    return state, [cue(state, due_s, NUMBER_STALE_S, Urgency.TIMED, reached[-1].key)]


def invitation(state: Rules, happening: Happening) -> list[Cue]:
    """Invite to the next hold when the timed rest is over."""
    done, asked = happening.repetitions_done, happening.repetitions_asked
    over = state.resting and not happening.resting
    at_it = happening.phase in (Phase.SETTLING, Phase.HOLDING)
    if not over or at_it or happening.stage is not Stage.EXERCISE or done >= asked:
        return []
    if happening.exercise_index != state.exercise_index:
        return []
    return [cue(state, happening.time_s, 4.0, Urgency.NORMAL, "again", next=done + 1, asked=asked)]

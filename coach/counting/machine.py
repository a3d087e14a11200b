"""Holds and repetitions from stamped readings: a state machine without clock or memory leaks.

    REST -> MOVING -> SETTLING -> HOLDING -> RETURNING -> REST

Rules, in full:

- A hold begins when the arm has settled at an end range (``coach.counting.approach``), dated back
  to the frame in which the plateau began; it is known ``Task.settle_s`` later, give or take 0.3 s.
- Its clock counts the time between usable readings at the level of the hold. Up to ``BRIDGE_S``
  without sight are made good when the arm is seen again in its place, longer ones never; after
  ``LOST_S`` the hold ends. Breath, creep and wrong frames under ``CONFIRM_S`` stay inside it.
- Falling by ``drop_deg`` lets go, dated back to the frame in which the fall began, and told when
  the fall has been watched for ``WATCH_S``; the phase is RETURNING before that.
- Rising by ``UP_DEG`` in a movement of its own makes the hold a stage on the way: the clock begins
  again at the higher level, and the stage is forgotten once the arm has held there. Does it come
  down without, the stage is the repetition. A hold already completed stays a repetition.
- Once HoldCompleted was given the repetition is COMPLETED, whatever ends it, and holds the true
  seconds, those beyond the asked ones too.
- Without asked seconds a hold that lasted less than ``FREE_HOLD_S`` leaves no repetition, though
  it had a HoldStarted; with asked seconds each HoldStarted leads to a repetition or to a higher
  stage.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from typing import Literal

from coach.counting.approach import approach
from coach.counting.hold import Sample
from coach.counting.leaving import BRIDGE_S, LOST_S, ended, holding, let_go, recorded
from coach.counting.state import State
from coach.counting.task import Task
from coach.counting.trail import Trail
from coach.domain.progress import (
    EndedBecause,
    HoldPaused,
    ProgressEvent,
    Repetition,
    RepetitionEnded,
)
from coach.domain.reading import Doubt, Reading

Events = tuple[ProgressEvent, ...]


def begin(task: Task) -> State:
    """Before the first reading of an exercise."""
    return State(task)


def advance(state: State, reading: Reading) -> tuple[State, Events]:
    """Take one reading; one not later than the reading before it changes nothing."""
    t = reading.time_s
    if not t > state.time_s:
        return state, ()
    frame_gap_s = t - state.time_s
    state = replace(state, time_s=t)
    value, error = reading.value, reading.error
    if not reading.usable or value is None or error is None or not math.isfinite(value):
        return _unseen(state, reading.doubt or Doubt.UNSURE)
    gap_s = t - state.usable_s
    events: Events = ()
    if gap_s > LOST_S:
        state, events = _lost(state)
        state = replace(state, trail=Trail(), opening=None, quiet_since_s=None, raised_since_s=None)
    row = Sample(t, value * state.task.degrees_per_unit, error, reading.form)
    credit_s = frame_gap_s if frame_gap_s <= BRIDGE_S else 0.0
    state = replace(state, usable_s=t, trail=state.trail.with_sample(row, credit_s))
    state, more = approach(state, gap_s) if state.hold is None else holding(state, gap_s)
    return state, (*events, *more)


def finish(
    state: State,
    time_s: float,
    because: Literal[EndedBecause.STOPPED, EndedBecause.INPUT_ENDED],
) -> Events:
    """Events of stopping at ``time_s``: an open hold ends where the arm was last seen in place."""
    state = replace(state, time_s=max(time_s, state.time_s))
    hold = state.hold
    if hold is None:
        return () if state.stage is None else recorded(state, state.stage.repetition)[1]
    if hold.left_s is not None or hold.below_since_s is not None:
        return let_go(state)[1]
    return ended(state, hold.there_s, because, hold.level_deg)[1]


def count(readings: Iterable[Reading], task: Task) -> tuple[Repetition, ...]:
    """Repetitions of a whole recording."""
    state, events = begin(task), list[ProgressEvent]()
    for reading in readings:
        state, more = advance(state, reading)
        events += more
    events += finish(state, state.time_s, EndedBecause.INPUT_ENDED)
    return tuple(event.repetition for event in events if isinstance(event, RepetitionEnded))


def _unseen(state: State, doubt: Doubt) -> tuple[State, Events]:
    hold, blind_s = state.hold, state.time_s - state.usable_s
    if hold is None:
        return state, ()
    if blind_s > LOST_S:
        return _lost(state)
    if hold.paused or blind_s <= BRIDGE_S:
        return state, ()
    return replace(state, hold=replace(hold, paused=True)), (HoldPaused(state.time_s, doubt),)


def _lost(state: State) -> tuple[State, Events]:
    hold = state.hold
    if hold is None:
        return state, ()
    if hold.left_s is not None or hold.below_since_s is not None:
        return let_go(state)
    return ended(state, hold.there_s, EndedBecause.LOST, hold.level_deg)

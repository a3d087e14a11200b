"""Holds that are timed without looking at the arm: a lead to get into place, then hold and rest.

The clock is that of the frames, and nobody is heard or watched in a gap between two of them: a
laptop that slept, a camera that stood still. Up to ``GAP_S`` a hold runs on through it; a longer
one breaks the hold, which ends as LOST where the gap began and is done again. A wait goes on by the
clock, and where it was over in the gap a new lead begins: no hold begins unannounced.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from coach.domain.progress import (
    EndedBecause,
    HoldCompleted,
    HoldStarted,
    ProgressEvent,
    TimedHold,
    TimedHoldEnded,
)

LEAD_S = 8.0
"""From the beginning of the exercise to the first hold, to get into the stretch. Our choice."""
LEAST_REST_S = 4.0
"""Even where the plan asks for no rest, the next hold is announced and begun anew."""
GAP_S = 2.0
"""In that no stretch is let go and taken up again. Our choice."""


@dataclass(frozen=True, slots=True)
class Timed:
    """Immutable. ``wait_s`` is what is left of the lead or the rest; None while a hold runs.

    ``done`` counts the holds held in full, ``ended`` all that are over.
    """

    hold_s: float
    repetitions: int
    rest_s: float
    time_s: float | None = None
    wait_s: float | None = LEAD_S
    start_s: float = 0.0
    held_s: float = 0.0
    done: int = 0
    ended: int = 0

    @property
    def holding(self) -> bool:
        """Whether a hold is being timed."""
        return self.wait_s is None

    @property
    def remaining_s(self) -> float | None:
        """Seconds of the hold still to come; None outside one."""
        return max(0.0, self.hold_s - self.held_s) if self.holding else None


def begin(hold_s: float, repetitions: int, rest_s: float, done: int = 0, ended: int = 0) -> Timed:
    """Before the first step; of the ``ended`` holds before it ``done`` were held in full."""
    return Timed(hold_s, repetitions, max(rest_s, LEAST_REST_S), done=done, ended=ended)


def advance(state: Timed, time_s: float) -> tuple[Timed, tuple[ProgressEvent, ...]]:
    """Let time pass up to ``time_s``; what ends in between ends at its own instant."""
    before_s = time_s if state.time_s is None else state.time_s
    step_s = time_s - before_s
    if step_s < 0 or state.done >= state.repetitions:
        return state, ()
    state = replace(state, time_s=time_s)
    if state.wait_s is not None:
        left_s = state.wait_s - step_s
        if left_s <= 0 and step_s > GAP_S:
            left_s = LEAD_S
        if left_s > 0:
            return replace(state, wait_s=left_s), ()
        start_s = time_s + left_s
        state = replace(state, wait_s=None, start_s=start_s, held_s=-left_s)
        return state, (HoldStarted(time_s, start_s),)
    if step_s > GAP_S:
        broken = _ended(state, before_s, EndedBecause.LOST)
        state = replace(state, wait_s=LEAD_S, held_s=0.0, ended=state.ended + 1)
        return state, (TimedHoldEnded(time_s, broken),)
    state = replace(state, held_s=state.held_s + step_s)
    if state.held_s < state.hold_s:
        return state, ()
    over_s = state.held_s - state.hold_s
    end_s = time_s - over_s
    ended = _ended(state, end_s, EndedBecause.COMPLETED)
    state = replace(state, wait_s=max(0.0, state.rest_s - over_s), held_s=0.0)
    state = replace(state, done=state.done + 1, ended=state.ended + 1)
    return state, (HoldCompleted(time_s), TimedHoldEnded(time_s, ended))


def finish(state: Timed, because: EndedBecause) -> tuple[ProgressEvent, ...]:
    """Events of stopping now: an open hold ends."""
    if not state.holding or state.time_s is None:
        return ()
    return (TimedHoldEnded(state.time_s, _ended(state, state.time_s, because)),)


def _ended(state: Timed, end_s: float, because: EndedBecause) -> TimedHold:
    return TimedHold(
        number=state.ended + 1,
        start_s=state.start_s,
        end_s=end_s,
        held_s=min(state.held_s, state.hold_s),
        ended_because=because,
    )

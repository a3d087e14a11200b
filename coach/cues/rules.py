"""What to say when: ``advance(state, happening) -> (state, cues)``.

Each stage is opened with its own sentences. In an exercise a hold is announced, its last seconds
are counted from true time, its end is 'rest', and then the count. Praise is for time and
steadiness, never for pain.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Final, assert_never

from coach import texts
from coach.catalogue import safety
from coach.cues.corrections import Corrections, watch_doubt, watch_speed, watch_target
from coach.cues.happening import Happening
from coach.cues.marks import Mark, hold_marks, marks_ahead
from coach.cues.opening import STAGE_FRESH_S, opening_cues
from coach.cues.wording import doubt_sentence, form_sentence, sentence
from coach.domain.cue import Cue, Urgency
from coach.domain.moment import Asked, Stage
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
from coach.form import FormNoticed

NUMBER_STALE_S: Final = 0.4
LOST_LASTED_S: Final = 1.0
"""A shorter loss of sight is not worth a word. Our choice."""
LOST_AGAIN_S: Final = 8.0
STEADY_DEG: Final = 5.0
"""Lean and turn below this are called steady: a third of the 15 degrees that must be corrected."""


@dataclass(frozen=True, slots=True)
class Rules:
    """What has been heard and said so far."""

    language: str = field(default_factory=texts.language)
    stage: Stage | None = None
    exercise_index: int = -1
    resting: bool = False
    pain_above_limit: bool = False
    marks: tuple[Mark, ...] = ()
    lost_since_s: float | None = None
    lost_said: bool = False
    lost_said_s: float = float("-inf")
    corrections: Corrections = field(default_factory=Corrections)
    asked: Asked | None = None


def advance(state: Rules, happening: Happening) -> tuple[Rules, tuple[Cue, ...]]:
    """Take in one frame's outcome; give what is to be said about it, in order."""
    cues: list[Cue] = []
    if happening.pain_above_limit and not state.pain_above_limit:
        cues += _too_much(state, happening)
    for event in happening.events:
        state, spoken = _event(state, happening, event)
        cues += spoken
    state, spoken = _lost(state, happening)
    cues += spoken
    state, spoken = _numbers(state, happening)
    cues += spoken
    cues += _again(state, happening)
    cues += _asked(state, happening)
    cues += opening_cues(
        happening,
        after=state.stage,
        another=happening.exercise_index != state.exercise_index,
        language=state.language,
    )
    if happening.stage is Stage.EXERCISE and state.stage is Stage.PREPARE:
        # Of a measured one the introduction may still be going on.
        key, fresh_s = ("timed-lead", 6.0) if _timed(happening) else ("in-place", STAGE_FRESH_S)
        cues.append(_cue(state, happening.time_s, fresh_s, Urgency.NORMAL, key))
    if happening.stage is state.stage and happening.stage in (Stage.EXERCISE, Stage.PREPARE):
        state, spoken = _corrections(state, happening)
        cues += spoken
    if happening.stage not in (Stage.EXERCISE, Stage.PREPARE):
        state = replace(state, marks=(), lost_since_s=None, corrections=Corrections())
    return replace(
        state,
        stage=happening.stage,
        exercise_index=happening.exercise_index,
        resting=happening.resting,
        pain_above_limit=happening.pain_above_limit,
        asked=happening.asked,
    ), tuple(cues)


def _timed(happening: Happening) -> bool:
    return happening.planned is not None and happening.planned.movement is None


def _too_much(state: Rules, happening: Happening) -> list[Cue]:
    if happening.stage is Stage.OFFER:
        return []  # the offer says it
    stop = happening.score is not None and happening.score > safety().pain_to_stop
    key = "pain-stop" if stop else "pain-limit"
    return [_cue(state, happening.time_s, 15.0, Urgency.URGENT, key)]


def _asked(state: Rules, happening: Happening) -> list[Cue]:
    """Say the number that a raised hand would choose, and the one it chose."""
    now, before, time_s = happening.asked, state.asked, happening.time_s
    if now is None:
        left = state.stage in (Stage.PAIN_BEFORE, Stage.PAIN_AFTER)
        unanswered = left and happening.score is None and before is not None
        if unanswered and happening.stage is Stage.PREPARE:
            return [_cue(state, time_s, 8.0, Urgency.NORMAL, "pain-unanswered")]
        return []
    if now.chosen is not None and (before is None or before.chosen != now.chosen):
        words = "pain-chosen"
        return [_cue(state, time_s, 4.0, Urgency.TIMED, words, number=now.chosen)]
    if now.offered is not None and (before is None or before.offered != now.offered):
        return [_cue(state, time_s, 1.0, Urgency.TIMED, f"pain.{now.offered}")]
    return []


def _cue(
    state: Rules, time_s: float, fresh_s: float, urgency: Urgency, key: str, **numbers: float
) -> Cue:
    words = sentence(key, state.language, **numbers)
    return words.as_cue(key, urgency, time_s, fresh_s)


def _event(state: Rules, happening: Happening, event: ProgressEvent) -> tuple[Rules, list[Cue]]:
    match event:
        case HoldStarted(time_s=time_s):
            planned, remaining_s = happening.planned, happening.remaining_s
            marks: tuple[Mark, ...] = ()
            if planned is not None and remaining_s is not None:
                marks = marks_ahead(hold_marks(planned.hold_s), remaining_s)
            state = replace(state, marks=marks, lost_since_s=None, lost_said=False)
            return state, [_cue(state, time_s, 1.0, Urgency.TIMED, "hold")]
        case HoldPaused(time_s=time_s):
            return replace(state, lost_since_s=time_s), []
        case HoldResumed(time_s=time_s):
            told = state.lost_said
            state = replace(state, lost_since_s=None, lost_said=False)
            cue = _cue(state, time_s, 1.5, Urgency.NORMAL, "sight.found")
            return state, [cue] if told else []
        case HoldCompleted(time_s=time_s):
            return replace(state, marks=()), [_cue(state, time_s, 2.0, Urgency.TIMED, "rest")]
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
                return [_cue(state, now_s, 8.0, Urgency.NORMAL, key, asked=asked)]
            key = "count-steady" if steady else "count"
            return [_cue(state, now_s, 6.0, Urgency.GENTLE, key, done=done, asked=asked)]
        case EndedBecause.LET_GO | EndedBecause.LOST if happening.stage is not Stage.EXERCISE:
            return []
        case EndedBecause.LET_GO:
            held_s = int(repetition.held_s)
            key = "let-go" if held_s >= 2 else "let-go-short"
            return [_cue(state, now_s, 4.0, Urgency.NORMAL, key, held_s=held_s)]
        case EndedBecause.LOST:
            key = "broken-hold" if _timed(happening) else "lost-hold"
            return [_cue(state, now_s, 4.0, Urgency.NORMAL, key)]
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


def _lost(state: Rules, happening: Happening) -> tuple[Rules, list[Cue]]:
    """Say that the clock waits, once a loss has lasted."""
    now_s, since_s = happening.time_s, state.lost_since_s
    if since_s is None or state.lost_said or now_s - since_s < LOST_LASTED_S:
        return state, []
    if now_s - state.lost_said_s < LOST_AGAIN_S:
        return state, []
    state = replace(state, lost_said=True, lost_said_s=now_s)
    return state, [_cue(state, now_s, 2.0, Urgency.NORMAL, "sight.lost")]


def _numbers(state: Rules, happening: Happening) -> tuple[Rules, list[Cue]]:
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
    return state, [_cue(state, due_s, NUMBER_STALE_S, Urgency.TIMED, reached[-1].key)]


def _again(state: Rules, happening: Happening) -> list[Cue]:
    """Invite to the next hold when the timed rest is over."""
    done, asked = happening.repetitions_done, happening.repetitions_asked
    over = state.resting and not happening.resting
    at_it = happening.phase in (Phase.SETTLING, Phase.HOLDING)
    if not over or at_it or happening.stage is not Stage.EXERCISE or done >= asked:
        return []
    if happening.exercise_index != state.exercise_index:
        return []
    return [_cue(state, happening.time_s, 4.0, Urgency.NORMAL, "again", next=done + 1, asked=asked)]


def _corrections(state: Rules, happening: Happening) -> tuple[Rules, list[Cue]]:
    cues: list[Cue] = []
    corrections, beyond = watch_target(state.corrections, happening)
    if beyond:
        cues.append(_cue(state, happening.time_s, 1.5, Urgency.URGENT, "ease-off"))
    corrections, rushes = watch_speed(corrections, happening)
    if rushes and not beyond:
        cues.append(_cue(state, happening.time_s, 0.8, Urgency.NORMAL, "slowly"))
    planned = happening.planned
    if planned is not None:
        for event in happening.form:
            if isinstance(event, FormNoticed):
                words = form_sentence(event.fault, planned.position, state.language)
                key = f"correct.{event.fault.value}"
                cues.append(words.as_cue(key, Urgency.NORMAL, happening.time_s, 3.0))
            else:
                cue = _cue(state, happening.time_s, 2.0, Urgency.GENTLE, "form.mended")
                cues.append(cue)
        if happening.wrong_arm:
            key = f"wrong-arm.{planned.side.value}"
            cues.append(_cue(state, happening.time_s, 3.0, Urgency.NORMAL, key))
    corrections, doubt = watch_doubt(corrections, happening)
    if doubt is not None and planned is not None:
        words = doubt_sentence(doubt, planned.side, planned.position, state.language)
        key = f"correct.{doubt.value}"
        cues.append(words.as_cue(key, Urgency.NORMAL, happening.time_s, 4.0))
    return replace(state, corrections=corrections), cues

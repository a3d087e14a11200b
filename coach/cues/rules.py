"""What to say when: ``advance(state, happening) -> (state, cues)``.

Each stage is opened with its own sentences. In an exercise a hold is announced, its last seconds
are counted from true time, its end is 'rest', and then the count. Praise is for time and
steadiness, never for pain.
"""

from __future__ import annotations

from dataclasses import replace

from coach.catalogue import safety
from coach.cues.corrections import Corrections, watch_doubt, watch_speed, watch_target
from coach.cues.happening import Happening
from coach.cues.holds import hold_event, invitation, numbers, sight_lost
from coach.cues.opening import STAGE_FRESH_S, opening_cues
from coach.cues.state import Rules, by_time, cue
from coach.cues.wording import doubt_sentence, form_sentence
from coach.domain.cue import Cue, Urgency
from coach.domain.moment import Stage
from coach.form import FormNoticed

__all__ = ["Rules", "advance"]


def advance(state: Rules, happening: Happening) -> tuple[Rules, tuple[Cue, ...]]:
    """Take in one frame's outcome; give what is to be said about it, in order."""
    cues: list[Cue] = []
    if happening.pain_above_limit and not state.pain_above_limit:
        cues += _too_much(state, happening)
    for event in happening.events:
        state, spoken = hold_event(state, happening, event)
        cues += spoken
    state, spoken = sight_lost(state, happening)
    cues += spoken
    state, spoken = numbers(state, happening)
    cues += spoken
    cues += invitation(state, happening)
    cues += _asked(state, happening)
    cues += opening_cues(
        happening,
        after=state.stage,
        another=happening.exercise_index != state.exercise_index,
        language=state.language,
    )
    if happening.stage is Stage.EXERCISE and state.stage is Stage.PREPARE:
        # Of a measured one the introduction may still be going on.
        key, fresh_s = ("timed-lead", 6.0) if by_time(happening) else ("in-place", STAGE_FRESH_S)
        cues.append(cue(state, happening.time_s, fresh_s, Urgency.NORMAL, key))
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


def _too_much(state: Rules, happening: Happening) -> list[Cue]:
    if happening.stage is Stage.OFFER:
        return []  # the offer says it
    stop = happening.score is not None and happening.score > safety().pain_to_stop
    key = "pain-stop" if stop else "pain-limit"
    return [cue(state, happening.time_s, 15.0, Urgency.URGENT, key)]


def _asked(state: Rules, happening: Happening) -> list[Cue]:
    """Say the number that a raised hand would choose, and the one it chose."""
    now, before, time_s = happening.asked, state.asked, happening.time_s
    if now is None:
        left = state.stage in (Stage.PAIN_BEFORE, Stage.PAIN_AFTER)
        unanswered = left and happening.score is None and before is not None
        if unanswered and happening.stage is Stage.PREPARE:
            return [cue(state, time_s, 8.0, Urgency.NORMAL, "pain-unanswered")]
        return []
    if now.chosen is not None and (before is None or before.chosen != now.chosen):
        words = "pain-chosen"
        return [cue(state, time_s, 4.0, Urgency.TIMED, words, number=now.chosen)]
    if now.offered is not None and (before is None or before.offered != now.offered):
        return [cue(state, time_s, 1.0, Urgency.TIMED, f"pain.{now.offered}")]
    return []


def _corrections(state: Rules, happening: Happening) -> tuple[Rules, list[Cue]]:
    cues: list[Cue] = []
    corrections, beyond = watch_target(state.corrections, happening)
    if beyond:
        cues.append(cue(state, happening.time_s, 1.5, Urgency.URGENT, "ease-off"))
    corrections, rushes = watch_speed(corrections, happening)
    if rushes and not beyond:
        cues.append(cue(state, happening.time_s, 0.8, Urgency.NORMAL, "slowly"))
    planned = happening.planned
    if planned is not None:
        for event in happening.form:
            if isinstance(event, FormNoticed):
                words = form_sentence(event.fault, planned.position, state.language)
                key = f"correct.{event.fault.value}"
                cues.append(words.as_cue(key, Urgency.NORMAL, happening.time_s, 3.0))
            else:
                cues.append(cue(state, happening.time_s, 2.0, Urgency.GENTLE, "form.mended"))
        if happening.wrong_arm:
            key = f"wrong-arm.{planned.side.value}"
            cues.append(cue(state, happening.time_s, 3.0, Urgency.NORMAL, key))
    corrections, doubt = watch_doubt(corrections, happening)
    if doubt is not None and planned is not None:
        words = doubt_sentence(doubt, planned.side, planned.position, state.language)
        key = f"correct.{doubt.value}"
        cues.append(words.as_cue(key, Urgency.NORMAL, happening.time_s, 4.0))
    return replace(state, corrections=corrections), cues

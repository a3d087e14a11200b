"""The course of a sitting: what an order, an event or time changes.

Functions take a ``Course`` and give the next one with the facts to write down. Times given in are
frame stamps; times in facts, and in ``Course.repetitions``, count from the session's start.
"""

from __future__ import annotations

from dataclasses import replace
from typing import assert_never

from msgspec.structs import replace as replace_struct

from coach.documents.rounding import rounded
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Order, Stage
from coach.domain.plan import Plan
from coach.domain.progress import (
    EndedBecause,
    HoldStarted,
    ProgressEvent,
    Repetition,
    RepetitionEnded,
    TimedHoldEnded,
)
from coach.domain.reading import Calibration
from coach.domain.session import SessionEnd
from coach.session import moves
from coach.session.agenda import whole
from coach.session.entries import Calibrated, Fact, RepetitionDone, TimedHoldDone
from coach.session.moves import pain_allowed
from coach.session.state import Course, Step

__all__ = [
    "Course",
    "Step",
    "begin",
    "calibrated",
    "end_input",
    "leaves_exercise",
    "order",
    "pain_allowed",
    "progress",
    "tick",
]

EXTRA_TRIES = 3
"""Unfinished holds beyond the asked repetitions before an exercise ends of itself: someone who
lets go that often should not be kept trying. Our choice; holds lost from sight do not count."""
TRY_S = 2.0
"""A shorter hold is no try: ten rendered minutes of everyday movement rest for up to 1.5 s."""


def begin(plan: Plan, time_s: float, items: tuple[AgendaItem, ...] = ()) -> Course:
    """Open a sitting at frame stamp ``time_s``, from which all facts count.

    ``items`` are what is due, by default the whole plan.
    """
    return Course(plan=plan, started_s=time_s, items=items or whole(plan))


def order(course: Course, time_s: float, given: Order, pain: int | None = None) -> Step:
    """Carry out an order; ``pain`` is the score of ``Order.PAIN``.

    Where ``leaves_exercise`` says so, end the open hold and hand its repetition to ``progress``
    first: after the order it would no longer belong to an exercise.
    """
    match given:
        case Order.START:
            if course.stage is Stage.WELCOME:
                return replace(course, stage=Stage.PAIN_BEFORE), ()
        case Order.PAUSE:
            if course.stage in moves.PAUSABLE:
                return replace(course, stage=Stage.PAUSED, left_stage=course.stage), ()
        case Order.RESUME:
            if course.left_stage is not None:
                return replace(course, stage=course.left_stage, left_stage=None), ()
        case Order.SKIP:
            return moves.skip(course, time_s)
        case Order.STOP:
            return moves.break_off(course, time_s, SessionEnd.STOPPED)
        case Order.PAIN:
            if pain is not None and 0 <= pain <= 10:
                return moves.pain(course, time_s, pain)
        case Order.READY:
            return moves.ready(course, time_s)
        case Order.ACCEPT:
            return moves.accept(course, time_s)
        case Order.GO_ON:
            return moves.go_on(course, time_s)
        case _:
            assert_never(given)
    return course, ()


def leaves_exercise(course: Course, given: Order, pain: int | None = None) -> bool:
    """Tell whether the order would end or pause the exercise that is being measured."""
    if course.stage is not Stage.EXERCISE:
        return False
    after, _ = order(course, course.started_s, given, pain)
    return (after.stage, after.exercise_index) != (course.stage, course.exercise_index)


def progress(course: Course, event: ProgressEvent) -> Step:
    """Take in what the counting found."""
    if course.working_stage is not Stage.EXERCISE:
        return course, ()
    if isinstance(event, HoldStarted):
        return replace(course, rest_until_s=None), ()
    if isinstance(event, RepetitionEnded):
        return _repetition(course, event)
    if isinstance(event, TimedHoldEnded):
        return _timed(course, event)
    return course, ()


def calibrated(course: Course, time_s: float, calibration: Calibration) -> Step:
    """Take in what keeping still at the start of the present exercise taught."""
    start_s, end_s = (
        None if stamp_s is None else course.since_start_s(stamp_s)
        for stamp_s in (calibration.start_s, calibration.end_s)
    )
    fact = Calibrated(
        time_s=course.since_start_s(time_s),
        planned_index=course.item.planned_index,
        eased=course.item.eased,
        calibration=replace_struct(rounded(calibration), start_s=start_s, end_s=end_s),
    )
    return course, (fact,)


def tick(course: Course, time_s: float) -> Step:
    """Let time pass: a rest may be over."""
    if course.rest_until_s is not None and time_s >= course.rest_until_s:
        return replace(course, rest_until_s=None), ()
    return course, ()


def end_input(course: Course, time_s: float) -> Step:
    """Take in that no more frames will come."""
    return moves.break_off(course, time_s, SessionEnd.INPUT_ENDED)


def _repetition(course: Course, event: RepetitionEnded) -> Step:
    item = course.item
    repetition = _since_start(event.repetition, course)
    now_s = course.since_start_s(event.time_s)
    fact = RepetitionDone(
        time_s=now_s,
        planned_index=item.planned_index,
        repetition=repetition,
        eased=item.eased,
    )
    course = replace(course, repetitions=(*course.repetitions, repetition))
    return _after_hold(course, event.time_s, repetition.ended_because, fact)


def _timed(course: Course, event: TimedHoldEnded) -> Step:
    item, hold = course.item, event.hold
    hold = replace_struct(
        hold,
        start_s=course.since_start_s(hold.start_s),
        end_s=course.since_start_s(hold.end_s),
        held_s=round(hold.held_s, 3),
    )
    fact = TimedHoldDone(
        time_s=course.since_start_s(event.time_s),
        planned_index=item.planned_index,
        hold=hold,
        eased=item.eased,
    )
    course = replace(course, timed=(*course.timed, hold))
    return _after_hold(course, event.time_s, hold.ended_because, fact)


def _after_hold(course: Course, time_s: float, why: EndedBecause, fact: Fact) -> Step:
    planned = course.item.planned
    rests = why in (EndedBecause.COMPLETED, EndedBecause.LET_GO)
    course = replace(
        course, rest_until_s=time_s + planned.rest_s if rests and planned.rest_s > 0 else None
    )
    now_s = course.since_start_s(time_s)
    let_go = sum(
        r.ended_because is EndedBecause.LET_GO and r.held_s >= TRY_S for r in course.repetitions
    )
    if course.completed >= planned.repetitions:
        ended, facts = moves.end_exercise(course, now_s, SessionEnd.COMPLETED)
    elif course.completed + let_go >= planned.repetitions + EXTRA_TRIES:
        ended, facts = moves.end_exercise(course, now_s, SessionEnd.UNFINISHED)
    else:
        return course, (fact,)
    return ended, (fact, *facts)


def _since_start(repetition: Repetition, course: Course) -> Repetition:
    digits = repetition.unit.decimals + 1
    return replace_struct(
        repetition,
        start_s=course.since_start_s(repetition.start_s),
        end_s=course.since_start_s(repetition.end_s),
        held_s=round(repetition.held_s, 3),
        value=round(repetition.value, digits),
        error=round(repetition.error, digits),
        spread=round(repetition.spread, digits),
        seen_fraction=round(repetition.seen_fraction, 4),
        form=rounded(repetition.form),
    )

"""How a sitting moves from stage to stage; times named ``now_s`` count from its start."""

from __future__ import annotations

from dataclasses import replace

from msgspec.structs import replace as msgspec_replace

from coach.catalogue import safety
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Stage
from coach.domain.plan import PlannedExercise
from coach.domain.session import SessionEnd
from coach.session.entries import (
    Asked,
    EasierOffered,
    ExerciseEnded,
    ExerciseStarted,
    Fact,
    PainGiven,
    SessionEnded,
)
from coach.session.state import Course, Step

PAUSABLE = (Stage.PAIN_BEFORE, Stage.PREPARE, Stage.EXERCISE, Stage.PAIN_AFTER, Stage.OFFER)


def pain(course: Course, time_s: float, score: int) -> Step:
    """Take in a score given at this instant."""
    now_s = course.since_start_s(time_s)
    index, item = course.exercise_index, course.item
    stage = course.working_stage
    after = PainGiven(
        time_s=now_s,
        asked=Asked.AFTER,
        score=score,
        planned_index=item.planned_index,
        eased=item.eased,
    )
    known = replace(course, score=score)
    match stage:
        case Stage.PAIN_BEFORE | Stage.PREPARE if score > safety().pain_to_stop:
            before = msgspec_replace(after, asked=Asked.BEFORE)
            ended = _ended(course, now_s, SessionEnd.PAIN)
            stopped, facts = finish(known, now_s, SessionEnd.PAIN, score)
            return replace(stopped, stopped_by_pain=True), (before, ended, *facts)
        case Stage.PAIN_BEFORE | Stage.PREPARE:
            return enter(replace(course, left_stage=None), now_s, index, score)
        case Stage.EXERCISE if score > pain_allowed(item.planned):
            ended = _ended(course, now_s, SessionEnd.PAIN)
            moved, facts = _too_much(replace(known, stopped_by_pain=True), now_s, score)
            return moved, (ended, after, *facts)
        case Stage.PAIN_AFTER | Stage.OFFER if score > safety().pain_to_stop:
            stopped, facts = finish(known, now_s, SessionEnd.PAIN, score)
            return replace(stopped, stopped_by_pain=True), (after, *facts)
        case Stage.PAIN_AFTER if score > item.planned.pain_limit:
            moved, facts = _too_much(known, now_s, score)
            return moved, (after, *facts)
        case Stage.PAIN_AFTER:
            moved, facts = enter(course, now_s, index + 1, score)
            return moved, (after, *facts)
        case Stage.FINISHED if course.pain_at_end is None:
            at_end = PainGiven(time_s=now_s, asked=Asked.AT_END, score=score)
            return replace(course, pain_at_end=score, score=score), (at_end,)
        case _:
            return course, ()


def pain_allowed(planned: PlannedExercise) -> int:
    """Give the highest score with which the exercise goes on."""
    return min(planned.pain_limit, safety().pain_to_stop)


def _too_much(course: Course, now_s: float, score: int) -> Step:
    """Go on after a pain above the exercise's limit: to the end, to an offer, or to the next."""
    if score > safety().pain_to_stop:
        return finish(course, now_s, SessionEnd.PAIN, score)
    item, easier = course.item, course.item.easier
    if easier is None or easier.exercise is None or item.eased:
        return enter(course, now_s, course.exercise_index + 1, score)
    offered = EasierOffered(
        time_s=now_s,
        planned_index=item.planned_index,
        exercise=easier.exercise,
        movement=easier.movement,
        view=easier.seen_from,
        position=easier.position,
    )
    return replace(course, stage=Stage.OFFER, left_stage=None, rest_until_s=None), (offered,)


def accept(course: Course, time_s: float) -> Step:
    """Take the easier exercise: the pain is asked for anew before it."""
    if course.working_stage is not Stage.OFFER or course.item.easier is None:
        return course, ()
    index = course.exercise_index + 1
    eased = AgendaItem(course.item.planned_index, course.item.easier, eased=True, new=True)
    items = (*course.items[:index], eased, *course.items[index:])
    return enter(replace(course, items=items), course.since_start_s(time_s), index, None)


def go_on(course: Course, time_s: float) -> Step:
    """Go on without an answer."""
    now_s = course.since_start_s(time_s)
    match course.working_stage:
        case Stage.PAIN_BEFORE:
            return replace(course, stage=Stage.PREPARE, left_stage=None, score=None), ()
        case Stage.PAIN_AFTER:
            return enter(course, now_s, course.exercise_index + 1, None, asked=True)
        case Stage.OFFER:
            return enter(course, now_s, course.exercise_index + 1, course.score)
        case _:
            return course, ()


def ready(course: Course, time_s: float) -> Step:
    """Begin the exercise: the person is in place."""
    if course.stage is not Stage.PREPARE:
        return course, ()
    item = course.item
    started = ExerciseStarted(
        time_s=course.since_start_s(time_s),
        planned_index=item.planned_index,
        view=item.planned.seen_from,
        position=item.planned.position,
        eased=item.eased,
        exercise=item.planned.exercise,
        movement=item.planned.movement,
    )
    # Its cautions were heard: the other side of the same exercise comes without them.
    later = tuple(
        replace(each, told=True)
        if item.planned.exercise and each.planned.exercise == item.planned.exercise
        else each
        for each in course.items[course.exercise_index + 1 :]
    )
    items = (*course.items[: course.exercise_index + 1], *later)
    return replace(course, stage=Stage.EXERCISE, items=items), (started,)


def skip(course: Course, time_s: float) -> Step:
    """Leave the present question or exercise out."""
    now_s = course.since_start_s(time_s)
    match course.working_stage:
        case Stage.PAIN_BEFORE | Stage.PREPARE:
            skipped = _ended(course, now_s, SessionEnd.SKIPPED)
            moved, facts = enter(course, now_s, course.exercise_index + 1, course.score)
            return moved, (skipped, *facts)
        case Stage.EXERCISE:
            return end_exercise(course, now_s, SessionEnd.SKIPPED)
        case Stage.PAIN_AFTER:
            return enter(course, now_s, course.exercise_index + 1, None)
        case Stage.OFFER:
            return go_on(course, time_s)
        case _:
            return course, ()


def enter(
    course: Course, now_s: float, index: int, score: int | None, *, asked: bool = False
) -> Step:
    """Go to the exercise at ``index``, or to a later one, with the pain known at this instant.

    Where it is not known it is asked for, unless it has just been ``asked`` without an answer.
    """
    facts: list[Fact] = []
    course = replace(
        course, left_stage=None, rest_until_s=None, repetitions=(), timed=(), score=score
    )
    while index < len(course.items):
        course = replace(course, exercise_index=index)
        item = course.item
        if score is None:
            stage = Stage.PREPARE if asked else Stage.PAIN_BEFORE
            return replace(course, stage=stage), tuple(facts)
        before = PainGiven(
            time_s=now_s,
            asked=Asked.BEFORE,
            score=score,
            planned_index=item.planned_index,
            eased=item.eased,
        )
        facts.append(before)
        if score <= item.planned.pain_limit:
            return replace(course, stage=Stage.PREPARE), tuple(facts)
        facts.append(_ended(course, now_s, SessionEnd.PAIN))
        course = replace(course, stopped_by_pain=True)
        index += 1
    because = SessionEnd.PAIN if course.stopped_by_pain else SessionEnd.COMPLETED
    finished, ending = finish(course, now_s, because, score)
    return finished, (*facts, *ending)


def _ended(course: Course, now_s: float, because: SessionEnd) -> ExerciseEnded:
    item = course.item
    return ExerciseEnded(
        time_s=now_s, planned_index=item.planned_index, ended_because=because, eased=item.eased
    )


def end_exercise(course: Course, now_s: float, because: SessionEnd) -> Step:
    """Close the present exercise and ask for pain."""
    ended = _ended(course, now_s, because)
    course = replace(course, stage=Stage.PAIN_AFTER, left_stage=None, rest_until_s=None)
    return course, (ended,)


def break_off(course: Course, time_s: float, because: SessionEnd) -> Step:
    """End the sitting where it stands."""
    if course.stage is Stage.FINISHED:
        return course, ()
    now_s = course.since_start_s(time_s)
    facts: tuple[Fact, ...] = ()
    if course.working_stage is Stage.EXERCISE:
        course, facts = end_exercise(course, now_s, because)
    finished, ending = finish(course, now_s, because, None)
    return finished, (*facts, *ending)


def finish(course: Course, now_s: float, because: SessionEnd, score: int | None) -> Step:
    """Close the sitting."""
    facts: list[Fact] = []
    if score is not None:
        facts.append(PainGiven(time_s=now_s, asked=Asked.AT_END, score=score))
    facts.append(SessionEnded(time_s=now_s, ended_because=because))
    course = replace(
        course,
        stage=Stage.FINISHED,
        left_stage=None,
        rest_until_s=None,
        pain_at_end=score,
        ended_because=because,
    )
    return course, tuple(facts)

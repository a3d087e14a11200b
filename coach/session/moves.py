"""How a sitting moves from stage to stage; times named ``now_s`` count from its start."""

from __future__ import annotations

from dataclasses import replace

from coach.domain.moment import Stage
from coach.domain.session import SessionEnd
from coach.session.entries import (
    Asked,
    ExerciseEnded,
    ExerciseStarted,
    Fact,
    PainGiven,
    SessionEnded,
)
from coach.session.state import Course, Step


def pain(course: Course, time_s: float, score: int) -> Step:
    """Take in a score given at this instant."""
    now_s = course.since_start_s(time_s)
    index = course.exercise_index
    above = score > course.plan.exercises[index].pain_limit
    match course.working_stage:
        case Stage.PAIN_BEFORE:
            return enter(replace(course, left_stage=None), now_s, index, score)
        case Stage.EXERCISE if above:
            after = PainGiven(time_s=now_s, asked=Asked.AFTER, score=score, planned_index=index)
            ended = ExerciseEnded(time_s=now_s, planned_index=index, ended_because=SessionEnd.PAIN)
            moved, facts = enter(replace(course, stopped_by_pain=True), now_s, index + 1, score)
            return moved, (ended, after, *facts)
        case Stage.PAIN_AFTER:
            after = PainGiven(time_s=now_s, asked=Asked.AFTER, score=score, planned_index=index)
            moved, facts = enter(course, now_s, index + 1, score)
            return moved, (after, *facts)
        case Stage.FINISHED if course.pain_at_end is None:
            at_end = PainGiven(time_s=now_s, asked=Asked.AT_END, score=score)
            return replace(course, pain_at_end=score), (at_end,)
        case _:
            return course, ()


def skip(course: Course, time_s: float) -> Step:
    """Leave the present question or exercise out."""
    now_s = course.since_start_s(time_s)
    match course.working_stage:
        case Stage.PAIN_BEFORE:
            skipped = ExerciseEnded(
                time_s=now_s,
                planned_index=course.exercise_index,
                ended_because=SessionEnd.SKIPPED,
            )
            moved, facts = enter(course, now_s, course.exercise_index + 1, None)
            return moved, (skipped, *facts)
        case Stage.EXERCISE:
            return end_exercise(course, now_s, SessionEnd.SKIPPED)
        case Stage.PAIN_AFTER:
            return enter(course, now_s, course.exercise_index + 1, None)
        case _:
            return course, ()


def enter(course: Course, now_s: float, index: int, score: int | None) -> Step:
    """Go to the exercise at ``index``, or to a later one, with the pain known at this instant."""
    facts: list[Fact] = []
    exercises = course.plan.exercises
    course = replace(course, left_stage=None, rest_until_s=None, repetitions=())
    while index < len(exercises):
        if score is None:
            return replace(course, stage=Stage.PAIN_BEFORE, exercise_index=index), tuple(facts)
        planned = exercises[index]
        facts.append(PainGiven(time_s=now_s, asked=Asked.BEFORE, score=score, planned_index=index))
        if score <= planned.pain_limit:
            facts.append(
                ExerciseStarted(
                    time_s=now_s,
                    planned_index=index,
                    view=planned.seen_from,
                    position=planned.position,
                )
            )
            return replace(course, stage=Stage.EXERCISE, exercise_index=index), tuple(facts)
        facts.append(
            ExerciseEnded(time_s=now_s, planned_index=index, ended_because=SessionEnd.PAIN)
        )
        course = replace(course, stopped_by_pain=True)
        index += 1
    because = SessionEnd.PAIN if course.stopped_by_pain else SessionEnd.COMPLETED
    finished, ending = finish(course, now_s, because, score)
    return finished, (*facts, *ending)


def end_exercise(course: Course, now_s: float, because: SessionEnd) -> Step:
    """Close the present exercise and ask for pain."""
    ended = ExerciseEnded(time_s=now_s, planned_index=course.exercise_index, ended_because=because)
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

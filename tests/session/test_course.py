from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.domain.moment import Order, Stage
from coach.domain.movement import Movement, Side, View
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import (
    EndedBecause,
    HoldStarted,
    Phase,
    PhaseChanged,
    Repetition,
    RepetitionEnded,
)
from coach.domain.session import SessionEnd
from coach.session.course import (
    Course,
    begin,
    end_input,
    leaves_exercise,
    order,
    progress,
    tick,
)
from coach.session.entries import (
    Asked,
    ExerciseEnded,
    ExerciseStarted,
    Fact,
    PainGiven,
    RepetitionDone,
    SessionEnded,
)

START_S = 500_000.0
"""A stamp like that of a machine that has been on for days."""


def exercise(repetitions: int = 2, pain_limit: int = 4, rest_s: float = 10) -> PlannedExercise:
    return PlannedExercise(
        movement=Movement.FLEXION,
        side=Side.RIGHT,
        hold_s=30,
        repetitions=repetitions,
        rest_s=rest_s,
        pain_limit=pain_limit,
    )


def plan(*exercises: PlannedExercise) -> Plan:
    return Plan(patient_code="INVENTED", exercises=exercises or (exercise(), exercise()))


def ended(
    at_s: float, because: EndedBecause = EndedBecause.COMPLETED, number: int = 1
) -> RepetitionEnded:
    held_s = 30.0 if because is EndedBecause.COMPLETED else 5.0
    repetition = Repetition(
        number=number,
        start_s=START_S + at_s - held_s,
        end_s=START_S + at_s,
        held_s=held_s,
        value=120.0,
        error=3.0,
        spread=1.0,
        seen_fraction=1.0,
        ended_because=because,
    )
    return RepetitionEnded(time_s=START_S + at_s, repetition=repetition)


class Sitting:
    """Plays a course and collects what it writes down."""

    def __init__(self, *exercises: PlannedExercise) -> None:
        self.course = begin(plan(*exercises), START_S)
        self.facts: list[Fact] = []

    def take(self, step: tuple[Course, tuple[Fact, ...]]) -> Sitting:
        self.course, facts = step
        self.facts += facts
        return self

    def order(self, at_s: float, given: Order, pain: int | None = None) -> Sitting:
        """Give an order; whoever is to get ready is ready at once."""
        self.take(order(self.course, START_S + at_s, given, pain))
        if self.course.stage is Stage.PREPARE:
            self.take(order(self.course, START_S + at_s, Order.READY))
        return self

    def hold(self, at_s: float, because: EndedBecause = EndedBecause.COMPLETED) -> Sitting:
        return self.take(progress(self.course, ended(at_s, because)))

    def tick(self, at_s: float) -> Sitting:
        return self.take(tick(self.course, START_S + at_s))

    @property
    def where(self) -> tuple[Stage, int]:
        return self.course.stage, self.course.exercise_index


def exercising(*exercises: PlannedExercise, pain: int = 1) -> Sitting:
    return Sitting(*exercises).order(1, Order.START).order(2, Order.PAIN, pain)


def test_a_whole_sitting_from_welcome_to_the_end() -> None:
    sitting = Sitting(exercise(2), exercise(1))
    assert sitting.where == (Stage.WELCOME, 0)
    assert sitting.order(1, Order.START).where == (Stage.PAIN_BEFORE, 0)
    assert sitting.order(2, Order.PAIN, 3).where == (Stage.EXERCISE, 0)
    assert sitting.hold(40).where == (Stage.EXERCISE, 0)
    assert sitting.hold(80).where == (Stage.PAIN_AFTER, 0)
    assert sitting.order(82, Order.PAIN, 2).where == (Stage.EXERCISE, 1)
    assert sitting.hold(120).where == (Stage.PAIN_AFTER, 1)
    assert sitting.order(121, Order.PAIN, 4).course.stage is Stage.FINISHED
    assert sitting.course.ended_because is SessionEnd.COMPLETED
    assert sitting.course.pain_at_end == 4
    first, second = (ended(at).repetition for at in (40, 80))
    done = [fact for fact in sitting.facts if isinstance(fact, RepetitionDone)]
    assert [fact.planned_index for fact in done] == [0, 0, 1]
    assert (done[0].repetition.start_s, done[0].repetition.end_s) == (10, 40)
    assert done[0].repetition.value == first.value
    assert done[1].time_s == 80 == second.end_s - START_S
    assert [fact for fact in sitting.facts if not isinstance(fact, RepetitionDone)] == [
        PainGiven(time_s=2, asked=Asked.BEFORE, score=3, planned_index=0),
        ExerciseStarted(time_s=2, planned_index=0, view=View.SIDE, movement=Movement.FLEXION),
        ExerciseEnded(time_s=80, planned_index=0, ended_because=SessionEnd.COMPLETED),
        PainGiven(time_s=82, asked=Asked.AFTER, score=2, planned_index=0),
        PainGiven(time_s=82, asked=Asked.BEFORE, score=2, planned_index=1),
        ExerciseStarted(time_s=82, planned_index=1, view=View.SIDE, movement=Movement.FLEXION),
        ExerciseEnded(time_s=120, planned_index=1, ended_because=SessionEnd.COMPLETED),
        PainGiven(time_s=121, asked=Asked.AFTER, score=4, planned_index=1),
        PainGiven(time_s=121, asked=Asked.AT_END, score=4),
        SessionEnded(time_s=121, ended_because=SessionEnd.COMPLETED),
    ]


def test_pain_above_the_limit_passes_over_exercises_until_one_allows_it() -> None:
    sitting = exercising(exercise(pain_limit=3), exercise(pain_limit=2), exercise(pain_limit=6))
    assert sitting.course.stage is Stage.EXERCISE
    sitting = exercising(
        exercise(pain_limit=3), exercise(pain_limit=2), exercise(pain_limit=6), pain=5
    )
    assert sitting.where == (Stage.EXERCISE, 2)
    why = [fact.ended_because for fact in sitting.facts if isinstance(fact, ExerciseEnded)]
    assert why == [SessionEnd.PAIN, SessionEnd.PAIN]


def test_pain_above_every_limit_ends_the_sitting_because_of_pain() -> None:
    sitting = exercising(pain=5)
    assert sitting.course.stage is Stage.FINISHED
    assert sitting.course.ended_because is SessionEnd.PAIN
    assert sitting.course.pain_at_end == 5


def test_pain_at_the_limit_is_allowed() -> None:
    assert exercising(exercise(pain_limit=4), pain=4).where == (Stage.EXERCISE, 0)


@pytest.mark.parametrize("paused", [False, True])
def test_pain_above_the_limit_during_an_exercise_ends_it(paused: bool) -> None:
    sitting = exercising(exercise(pain_limit=4), exercise(pain_limit=8)).hold(40)
    if paused:
        sitting.order(45, Order.PAUSE)
    assert sitting.order(50, Order.PAIN, 4).course.exercise_index == 0
    assert sitting.order(51, Order.PAIN, 7).where == (Stage.EXERCISE, 1)
    assert sitting.course.repetitions == ()
    assert sitting.facts[-4:] == [
        ExerciseEnded(time_s=51, planned_index=0, ended_because=SessionEnd.PAIN),
        PainGiven(time_s=51, asked=Asked.AFTER, score=7, planned_index=0),
        PainGiven(time_s=51, asked=Asked.BEFORE, score=7, planned_index=1),
        ExerciseStarted(time_s=51, planned_index=1, view=View.SIDE, movement=Movement.FLEXION),
    ]


def test_unfinished_holds_are_recorded_but_do_not_count() -> None:
    sitting = exercising(exercise(repetitions=2))
    sitting.hold(40).hold(60, EndedBecause.LET_GO).hold(70, EndedBecause.LOST)
    assert sitting.where == (Stage.EXERCISE, 0)
    assert sitting.course.completed == 1
    assert len(sitting.course.repetitions) == 3
    assert sitting.hold(120).course.stage is Stage.PAIN_AFTER


def test_after_three_tries_more_than_asked_the_exercise_ends_by_itself() -> None:
    sitting = exercising(exercise(repetitions=2))
    for at_s in (10, 20, 30, 40):
        assert sitting.hold(at_s, EndedBecause.LET_GO).course.stage is Stage.EXERCISE
    for at_s in (50, 60, 70):
        assert sitting.hold(at_s, EndedBecause.LOST).course.stage is Stage.EXERCISE
    assert sitting.hold(80, EndedBecause.LET_GO).course.stage is Stage.PAIN_AFTER
    assert sitting.facts[-1] == ExerciseEnded(
        time_s=80, planned_index=0, ended_because=SessionEnd.UNFINISHED
    )


def test_rest_is_timed_and_may_be_cut_short_by_a_new_hold() -> None:
    sitting = exercising(exercise(repetitions=3, rest_s=10)).hold(40)
    assert sitting.course.resting
    assert sitting.course.rest_remaining_s(START_S + 44) == 6
    assert sitting.tick(49.9).course.resting
    assert not sitting.tick(50).course.resting
    assert sitting.course.rest_remaining_s(START_S + 51) is None
    assert sitting.hold(90).course.resting
    started = HoldStarted(time_s=START_S + 95, start_s=START_S + 94)
    assert not sitting.take(progress(sitting.course, started)).course.resting


def test_no_rest_where_none_is_planned_or_sight_was_lost() -> None:
    assert not exercising(exercise(rest_s=0)).hold(40).course.resting
    assert not exercising().hold(40, EndedBecause.LOST).course.resting


def test_pause_goes_back_to_where_it_was_and_keeps_the_count() -> None:
    sitting = exercising().hold(40).order(42, Order.PAUSE)
    assert sitting.where == (Stage.PAUSED, 0)
    assert not sitting.course.resting
    sitting.hold(43, EndedBecause.STOPPED)
    assert sitting.order(60, Order.RESUME).where == (Stage.EXERCISE, 0)
    assert sitting.course.completed == 1
    assert len(sitting.course.repetitions) == 2
    assert not sitting.tick(60).course.resting


def test_skip_goes_on_and_asks_anew_where_no_score_is_known() -> None:
    sitting = exercising(exercise(), exercise(), exercise())
    assert sitting.order(5, Order.SKIP).where == (Stage.PAIN_AFTER, 0)
    assert sitting.order(6, Order.SKIP).where == (Stage.PAIN_BEFORE, 1)
    assert sitting.order(7, Order.SKIP).where == (Stage.PAIN_BEFORE, 2)
    assert sitting.order(8, Order.SKIP).course.ended_because is SessionEnd.COMPLETED
    assert sitting.course.pain_at_end is None


def test_after_stop_the_pain_may_still_be_given_once() -> None:
    sitting = exercising().hold(40).order(41, Order.STOP)
    assert sitting.course.ended_because is SessionEnd.STOPPED
    assert sitting.order(50, Order.PAIN, 6).facts[-1] == PainGiven(
        time_s=50, asked=Asked.AT_END, score=6
    )
    count = len(sitting.facts)
    assert len(sitting.order(51, Order.PAIN, 1).facts) == count


def test_the_end_of_the_input_ends_the_exercise_and_the_sitting() -> None:
    sitting = exercising().hold(40)
    sitting.take(end_input(sitting.course, START_S + 45))
    assert sitting.facts[-2:] == [
        ExerciseEnded(time_s=45, planned_index=0, ended_because=SessionEnd.INPUT_ENDED),
        SessionEnded(time_s=45, ended_because=SessionEnd.INPUT_ENDED),
    ]


@pytest.mark.parametrize(
    ("sitting", "given", "pain"),
    [
        (Sitting(), Order.PAUSE, None),
        (Sitting(), Order.SKIP, None),
        (Sitting(), Order.PAIN, 3),
        (Sitting(), Order.RESUME, None),
        (exercising(), Order.START, None),
        (exercising(), Order.PAIN, None),
        (exercising(), Order.PAIN, 11),
        (exercising(), Order.RESUME, None),
        (exercising().order(3, Order.PAUSE), Order.PAUSE, None),
        (exercising().order(3, Order.STOP), Order.STOP, None),
        (exercising().order(3, Order.STOP), Order.START, None),
        (exercising().order(3, Order.STOP), Order.SKIP, None),
    ],
)
def test_orders_that_make_no_sense_change_nothing(
    sitting: Sitting, given: Order, pain: int | None
) -> None:
    course, facts = order(sitting.course, START_S + 10, given, pain)
    assert course is sitting.course
    assert facts == ()


EVENTS = st.one_of(
    st.tuples(st.just("order"), st.sampled_from(Order), st.none() | st.integers(-1, 12)),
    st.tuples(st.just("hold"), st.sampled_from(EndedBecause), st.none()),
    st.tuples(st.just("tick"), st.none(), st.none()),
    st.tuples(st.just("event"), st.none(), st.none()),
)
PLANS = st.lists(
    st.builds(
        exercise,
        repetitions=st.integers(1, 3),
        pain_limit=st.integers(0, 10),
        rest_s=st.sampled_from([0.0, 2.0, 100.0]),
    ),
    min_size=1,
    max_size=4,
)


@settings(max_examples=300, deadline=None)
@given(PLANS, st.lists(EVENTS, max_size=40))
def test_whatever_happens_the_sitting_makes_sense(
    exercises: list[PlannedExercise], events: list[tuple[str, object, int | None]]
) -> None:
    sitting = Sitting(*exercises)
    score: int | None = None
    for at_s, (kind, what, pain) in enumerate(events, start=1):
        before, count = sitting.course, len(sitting.facts)
        if isinstance(what, Order):
            was_leaving = leaves_exercise(before, what, pain)
            sitting.order(at_s, what, pain)
            if sitting.course is not before and what is Order.PAIN:
                score = pain
            elif what in (Order.SKIP, Order.GO_ON):
                score = None
            left = sitting.where != (Stage.EXERCISE, before.exercise_index)
            assert was_leaving == (before.stage is Stage.EXERCISE and left)
        elif isinstance(what, EndedBecause):
            sitting.hold(at_s, what)
        elif kind == "tick":
            sitting.tick(at_s)
        else:
            changed = PhaseChanged(time_s=START_S + at_s, phase=Phase.HOLDING)
            sitting.take(progress(sitting.course, changed))
        course = sitting.course
        if course.stage is Stage.EXERCISE and before.stage in (
            Stage.PAIN_BEFORE,
            Stage.PAIN_AFTER,
        ):
            assert score is not None or what in (Order.GO_ON, Order.SKIP)
            assert (score or 0) <= exercises[course.exercise_index].pain_limit
        if before.stage is Stage.FINISHED:
            assert course.stage is Stage.FINISHED
        assert (course.stage is Stage.PAUSED) == (course.left_stage is not None)
        assert (course.planned is None) == (course.stage is Stage.FINISHED)
        assert course.exercise_index >= before.exercise_index
        assert all(fact.time_s == at_s for fact in sitting.facts[count:])
    assert sitting.order(1000, Order.STOP).course.stage is Stage.FINISHED
    check_facts(sitting.facts, exercises)


def check_facts(facts: list[Fact], exercises: list[PlannedExercise]) -> None:
    """What is written down, read without the course: starts and ends pair, nobody in pain."""
    started: list[int] = []
    closed: list[int] = []
    pain: dict[int, int] = {}
    assert sum(isinstance(fact, SessionEnded) for fact in facts) == 1
    for fact in facts:
        match fact:
            case PainGiven(asked=Asked.BEFORE, planned_index=int(index), score=score):
                pain[index] = score
            case ExerciseStarted(planned_index=index):
                assert pain.get(index, 0) <= exercises[index].pain_limit
                assert len(set(started) - set(closed)) == 0
                started.append(index)
            case RepetitionDone(planned_index=index):
                assert started[-1] == index
                assert index not in closed
            case ExerciseEnded(planned_index=index):
                closed.append(index)
    assert len(closed) == len(set(closed))
    assert closed == sorted(closed)
    assert set(started) <= set(closed)


def test_courses_are_values() -> None:
    course = begin(plan(), START_S)
    order(course, START_S, Order.START)
    assert course == replace(course) == begin(plan(), START_S)

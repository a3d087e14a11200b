"""Too much pain, the easier neighbour, pain that nobody tells; and any order of orders."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.catalogue import catalogue
from coach.documents.session import read_session_document, write_session_document
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Order, Stage
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import (
    EndedBecause,
    Repetition,
    RepetitionEnded,
    TimedHold,
    TimedHoldEnded,
)
from coach.domain.session import Camera, ExerciseRecord, SessionDocument, SessionEnd, Software
from coach.session.agenda import easier_than
from coach.session.assemble import assemble
from coach.session.course import Course, begin, end_input, order, progress, tick
from coach.session.entries import Fact, PainGiven, SessionEnded, SessionOpened

KNOWN = catalogue().by_name
START_S = 1000.0
LOW, BRACED = "doorway-rotation-low", "doorway-rotation-braced"


def planned(name: str = LOW, pain_limit: int = 4, repetitions: int = 2) -> PlannedExercise:
    known = KNOWN[name]
    return PlannedExercise(
        exercise=name,
        movement=known.movement,
        position=known.position,
        view=known.view,
        side=Side.LEFT,
        hold_s=20,
        repetitions=repetitions,
        rest_s=3,
        pain_limit=pain_limit,
    )


class Sitting:
    """A course of exercises of the catalogue, second by second, with all that it writes down."""

    def __init__(self, *exercises: PlannedExercise) -> None:
        self.plan = Plan(patient_code="INVENTED", exercises=exercises)
        items = tuple(
            AgendaItem(index, each, easier=easier_than(each, KNOWN))
            for index, each in enumerate(exercises)
        )
        self.course = begin(self.plan, START_S, items)
        self.facts: list[Fact] = []
        self.now_s = START_S

    def take(self, step: tuple[Course, tuple[Fact, ...]]) -> Sitting:
        self.course, facts = step
        self.facts += facts
        self.now_s += 1.0
        return self

    def give(self, *orders: Order | int) -> Sitting:
        """Give orders, a number being the answer to the question about pain."""
        for each in orders:
            given, pain = (each, None) if isinstance(each, Order) else (Order.PAIN, each)
            self.take(order(self.course, self.now_s, given, pain))
        return self

    def hold(self, because: EndedBecause = EndedBecause.COMPLETED) -> Sitting:
        number, now_s = len(self.course.repetitions) + len(self.course.timed) + 1, self.now_s
        item = self.course.item.planned
        if item.movement is None:
            timed = TimedHold(
                number=number, start_s=now_s - 0.5, end_s=now_s, held_s=0.5, ended_because=because
            )
            return self.take(progress(self.course, TimedHoldEnded(now_s, timed)))
        unit = item.movement.unit
        repetition = Repetition(
            number=number, start_s=now_s - 0.5, end_s=now_s, held_s=0.5, value=0.5, error=0.1,
            spread=0.1, unit=unit, seen_fraction=1.0, ended_because=because,
        )  # fmt: skip
        return self.take(progress(self.course, RepetitionEnded(now_s, repetition)))

    def document(self, facts: int | None = None) -> SessionDocument:
        opened = SessionOpened(
            session_id="c" * 32,
            started_at="2026-11-25T10:00:00+01:00",
            software=Software(name="t", version="1", definitions=1, model_sha256="0" * 64),
            camera=Camera(kind="camera", width_px=640, height_px=480, frames_per_s=30.0),
            plan=self.plan,
        )
        document = assemble([opened, *self.facts[:facts]]).document
        assert read_session_document(write_session_document(document), "it") == document
        return document

    @property
    def where(self) -> tuple[Stage, int]:
        return self.course.stage, self.course.exercise_index

    @property
    def records(self) -> list[tuple[int, str | None, bool, SessionEnd]]:
        return [brief(record) for record in self.document().exercises]


def brief(record: ExerciseRecord) -> tuple[int, str | None, bool, SessionEnd]:
    return record.planned_index, record.exercise, record.eased, record.ended_because


def exercising(*exercises: PlannedExercise) -> Sitting:
    return Sitting(*exercises).give(Order.START, 2, Order.READY)


@pytest.mark.parametrize("when", ["during", "after", "paused"])
def test_after_too_much_pain_the_easier_neighbour_is_offered_and_done(when: str) -> None:
    sitting = exercising(planned(), planned("pendulum"))
    if when == "after":
        sitting.hold().hold()
    if when == "paused":
        sitting.give(Order.PAUSE)
    assert sitting.give(6).where == (Stage.OFFER, 0)
    assert sitting.give(Order.ACCEPT).where == (Stage.PAIN_BEFORE, 1)
    assert sitting.course.item.planned.exercise == BRACED
    assert sitting.give(3, Order.READY).where == (Stage.EXERCISE, 1)
    assert sitting.hold().hold().where == (Stage.PAIN_AFTER, 1)
    assert sitting.give(2).where == (Stage.PREPARE, 2)
    sitting.give(Order.READY).hold().hold().give(1)
    first = SessionEnd.COMPLETED if when == "after" else SessionEnd.PAIN
    assert sitting.records == [
        (0, LOW, False, first),
        (0, BRACED, True, SessionEnd.COMPLETED),
        (1, "pendulum", False, SessionEnd.COMPLETED),
    ]
    low, braced, pendulum = sitting.document().exercises
    assert (low.offered, braced.offered, pendulum.offered) == (BRACED, None, None)
    assert (low.pain_before, low.pain_after) == (2, 6)
    assert (braced.pain_before, braced.pain_after) == (3, 2)
    assert (braced.movement, braced.position) == (Movement.EXTERNAL_ROTATION_0, Position.DOORWAY)
    assert [len(each.timed) for each in (low, braced, pendulum)] == [0, 0, 2]


@pytest.mark.parametrize("declined", [Order.GO_ON, Order.SKIP])
def test_an_offer_that_is_declined_goes_on_with_the_pain_that_is_known(declined: Order) -> None:
    sitting = exercising(planned(), planned("pendulum"), planned("table-slide", pain_limit=6))
    sitting.give(5, declined)
    # The pendulum's limit is 4.
    assert sitting.where == (Stage.PREPARE, 2)
    assert [record[:3] for record in sitting.records] == [
        (0, LOW, False),
        (1, "pendulum", False),
    ]


def test_nothing_easier_is_offered_twice_or_where_there_is_nothing() -> None:
    sitting = exercising(planned("doorway-rotation-middle"), planned("pendulum", pain_limit=6))
    sitting.give(6, Order.ACCEPT, 3, Order.READY, 6)
    assert sitting.course.item.planned.exercise == "pendulum"
    assert exercising(planned("pendulum"), planned(pain_limit=7)).give(6).where[0] is Stage.PREPARE


@pytest.mark.parametrize(
    ("ending", "why"),
    [
        ((7,), SessionEnd.PAIN),
        ((9,), SessionEnd.PAIN),
        ((Order.SKIP,), SessionEnd.SKIPPED),
        ((3, Order.SKIP), SessionEnd.SKIPPED),
    ],
)
def test_an_accepted_exercise_that_never_begins_is_still_written_down(
    ending: tuple[Order | int, ...], why: SessionEnd
) -> None:
    sitting = exercising(planned(pain_limit=6)).give(7, Order.ACCEPT, *ending)
    assert sitting.course.stage is Stage.FINISHED
    assert sitting.records[1:] == [(0, BRACED, True, why)]
    record = sitting.document().exercises[1]
    assert (record.movement, record.view) == (Movement.EXTERNAL_ROTATION_0, View.FRONT)
    assert record.repetitions == ()


STAGES = {
    Stage.PAIN_BEFORE: (Order.START,),
    Stage.PREPARE: (Order.START, 2),
    Stage.EXERCISE: (Order.START, 2, Order.READY),
    Stage.PAIN_AFTER: (Order.START, 2, Order.READY, Order.SKIP),
    Stage.OFFER: (Order.START, 2, Order.READY, 5),
}


@pytest.mark.parametrize("paused", [False, True])
@pytest.mark.parametrize("score", [8, 9, 10])
@pytest.mark.parametrize("stage", STAGES)
def test_pain_above_seven_ends_the_sitting_whatever_the_plan_allows(
    stage: Stage, score: int, paused: bool
) -> None:
    limit = 4 if stage is Stage.OFFER else 10
    sitting = Sitting(planned(pain_limit=limit), planned("pendulum", pain_limit=10))
    sitting.give(*STAGES[stage])
    assert sitting.course.stage is stage
    if paused:
        sitting.give(Order.PAUSE)
    sitting.give(score)
    assert sitting.course.stage is Stage.FINISHED
    assert sitting.course.ended_because is SessionEnd.PAIN
    assert sitting.document().pain_at_end == score


def test_pain_of_seven_is_the_plans_to_judge() -> None:
    sitting = exercising(planned(pain_limit=10), planned("pendulum", pain_limit=10))
    assert sitting.give(7).where == (Stage.EXERCISE, 0)
    assert sitting.hold().hold().give(7).where == (Stage.PREPARE, 1)


def test_who_does_not_answer_is_asked_after_the_next_exercise_and_not_before_it() -> None:
    sitting = Sitting(planned(), planned("pendulum"), planned("table-slide"))
    assert sitting.give(Order.START, Order.GO_ON).where == (Stage.PREPARE, 0)
    assert sitting.give(Order.READY).hold().hold().where == (Stage.PAIN_AFTER, 0)
    assert sitting.give(Order.GO_ON).where == (Stage.PREPARE, 1)
    assert sitting.give(Order.READY).hold().hold().where == (Stage.PAIN_AFTER, 1)
    assert sitting.give(3).where == (Stage.PREPARE, 2)
    sitting.give(Order.READY).hold().hold().give(Order.GO_ON)
    document = sitting.document()
    assert document.ended_because is SessionEnd.COMPLETED
    assert [(r.pain_before, r.pain_after) for r in document.exercises] == [
        (None, None),
        (None, 3),
        (3, None),
    ]
    assert document.pain_at_end is None


def test_touches_of_half_a_second_are_no_tries() -> None:
    sitting = exercising(planned())
    for _ in range(20):
        assert sitting.hold(EndedBecause.LET_GO).where == (Stage.EXERCISE, 0)
    assert len(sitting.document().exercises[0].repetitions) == 20


EVENTS = st.one_of(
    st.sampled_from(Order).map(lambda given: ("order", given)),
    st.integers(0, 10).map(lambda score: ("order", score)),
    st.sampled_from([Order.READY, Order.ACCEPT, 2]).map(lambda given: ("order", given)),
    st.sampled_from(EndedBecause).map(lambda because: ("hold", because)),
    st.just(("tick", None)),
)
EXERCISES = st.builds(
    planned,
    st.sampled_from([LOW, BRACED, "pendulum", "stick-rotation-lying-45", "stick-pull-up-behind"]),
    st.integers(0, 10),
    st.integers(1, 2),
)


@settings(max_examples=400)
@given(
    exercises=st.lists(EXERCISES, min_size=1, max_size=3),
    events=st.lists(EVENTS, max_size=60),
    cut=st.integers(0, 60),
    torn=st.booleans(),
)
def test_whatever_happens_a_whole_document_comes_of_it(
    exercises: list[PlannedExercise], events: list[tuple[str, object]], cut: int, torn: bool
) -> None:
    sitting = Sitting(*exercises).give(Order.START)
    planned_items = list(sitting.course.items)
    for kind, what in events:
        before = sitting.course
        if kind == "order":
            sitting.give(what)  # type: ignore[arg-type]
        elif kind == "hold":
            sitting.hold(what)  # type: ignore[arg-type]
        else:
            sitting.take(tick(sitting.course, sitting.now_s))
        course = sitting.course
        own = [replace(item, told=False) for item in course.items if not item.eased]
        assert own == planned_items
        assert course.exercise_index >= before.exercise_index
        if before.stage is Stage.FINISHED:
            assert course.stage is Stage.FINISHED
            assert course.ended_because is before.ended_because
        if course.stage is Stage.EXERCISE and course.score is not None:
            assert course.score <= min(7, course.item.planned.pain_limit)
    if torn:
        sitting.take(end_input(sitting.course, sitting.now_s))
        assert sitting.course.stage is Stage.FINISHED
    times_s = [fact.time_s for fact in sitting.facts]
    assert times_s == sorted(times_s)
    ends = [place for place, fact in enumerate(sitting.facts) if isinstance(fact, SessionEnded)]
    assert len(ends) == (sitting.course.stage is Stage.FINISHED)
    # After the end only the pain that is told late.
    assert all(isinstance(fact, PainGiven) for each in ends for fact in sitting.facts[each + 1 :])
    records = sitting.document().exercises
    assert len({(each.planned_index, each.eased) for each in records}) == len(records)
    places = [each.planned_index for each in records]
    assert places == sorted(places)
    for each in records:
        if each.eased:
            known = KNOWN[exercises[each.planned_index].exercise or ""]
            assert each.exercise == known.easier
            assert each.movement is KNOWN[known.easier or ""].movement
    sitting.document(cut)

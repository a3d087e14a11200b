"""A whole programme from frames alone: somebody who hears what is said and raises a hand."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

import numpy as np
import pytest
from msgspec import structs

from coach.catalogue import catalogue
from coach.documents.session import read_session_document, write_session_document
from coach.domain.agenda import AgendaItem
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Landmark, Pose
from coach.domain.progress import EndedBecause
from coach.domain.reading import Doubt
from coach.domain.session import Camera, SessionDocument, SessionEnd, Software
from coach.pipeline import Pipeline
from coach.session.agenda import easier_than
from coach.session.assemble import assemble
from coach.session.entries import Entry, SessionOpened
from coach.voice.speaker import Speaker
from coach.voice.timeline import Timeline
from tests.goniometry.stick_body import MAN, NATURAL, Seen, X, Y, camera, joints, project
from tests.goniometry.ways import RANGE

PICTURE = np.zeros((48, 64, 3), np.uint8)
KNOWN = catalogue().by_name
REST_S, RAMP_S, HOLD_S = 3.0, 2.0, 7.0
CYCLE_S = REST_S + 2 * RAMP_S + HOLD_S
END = {Movement.FLEXION: 95.0, Movement.ABDUCTION: 85.0, Movement.EXTENSION: 40.0}


def bare(movement: Movement, **changes: object) -> PlannedExercise:
    asked = {"movement": movement, "side": Side.LEFT, "hold_s": 5, "repetitions": 1} | changes
    return PlannedExercise(**asked)  # type: ignore[arg-type]


def named(name: str, **changes: object) -> PlannedExercise:
    known = KNOWN[name]
    said = {"exercise": name, "position": known.position, "view": known.view}
    return bare(known.movement, **(said | changes))  # type: ignore[arg-type]


def reach(since_s: float, rest: float, end: float) -> float:
    """Rest, a smooth way there, a hold of seven seconds and a smooth way back, over and over."""
    in_cycle_s = since_s % CYCLE_S - REST_S
    up = np.clip(in_cycle_s / RAMP_S, 0, 1)
    down = np.clip((in_cycle_s - RAMP_S - HOLD_S) / RAMP_S, 0, 1)
    share = up**3 * (10 - 15 * up + 6 * up**2) - down**3 * (10 - 15 * down + 6 * down**2)
    return float(rest + (end - rest) * share)


def body(planned: PlannedExercise, value: float | None, raised: bool, time_s: float) -> Pose:
    """Somebody placed as asked, the stiff arm at a value, the other hanging or straight up."""
    movement = planned.movement or Movement.FLEXION
    at = RANGE[movement][0] if value is None else value
    placed, _ = joints(movement, at, planned.side, planned.position, NATURAL, MAN)
    if raised:
        up = X if planned.position is Position.SUPINE else Y
        other = planned.side.other.name
        elbow = placed[f"{other}_SHOULDER"] + MAN.upper_arm * up
        placed |= {f"{other}_ELBOW": elbow, f"{other}_WRIST": elbow + MAN.forearm * up}
        placed[f"{other}_INDEX"] = placed[f"{other}_WRIST"] + 0.1 * up
    points = np.zeros((33, 3))
    for name, point in placed.items():
        points[Landmark[name]] = point
    seen = Seen(planned.seen_from, lift_m=0.0 if planned.position.lying else 0.2)
    axes, place = camera(seen, planned.side, planned.position, MAN)
    return project((points - place) @ axes.T, seen, time_s)


class Person:
    """Does as told: an estimator that knows how they stand. ``raises`` says when a hand is up."""

    model_sha256 = "0" * 64

    def __init__(self) -> None:
        self.moment: Moment | None = None
        self.since_s = 0.0
        self.raised = False
        self.away = False
        self.eager = False

    def hears(self, moment: Moment) -> None:
        going_on = self.eager and moment.stage is Stage.EXERCISE
        if self.moment is None or (self.moment.stage is not moment.stage and not going_on):
            self.since_s = moment.time_s
        self.moment = moment

    def estimate(self, frame: Frame) -> Pose | None:
        moment = self.moment
        if moment is None or moment.planned is None or self.away:
            return None
        planned, value = moment.planned, None
        if moment.stage is Stage.EXERCISE and planned.movement is not None and not self.eager:
            end = END[planned.movement]
            value = reach(frame.time_s - self.since_s, RANGE[planned.movement][0], end)
        elif self.eager and planned.movement is not None:
            # Up as soon as in place, and kept there.
            up_s = min(frame.time_s - self.since_s, REST_S + RAMP_S + 1.0)
            value = reach(up_s, RANGE[planned.movement][0], END[planned.movement])
        return body(planned, value, self.raised, frame.time_s)

    def close(self) -> None:
        pass


class Sitting:
    """Frames at ten a second where it matters and five a second in between, each a little off."""

    def __init__(self, *exercises: PlannedExercise, new: bool = False) -> None:
        plan = Plan(patient_code="INVENTED", exercises=exercises)
        self.entries: list[Entry] = [
            SessionOpened(
                session_id="d" * 32,
                started_at="2026-11-25T10:00:00+01:00",
                software=Software(
                    name="t", version="1", definitions=1, model_sha256=Person.model_sha256
                ),
                camera=Camera(kind="file", width_px=64, height_px=48, frames_per_s=10.0),
                plan=plan,
            )
        ]
        items = tuple(
            AgendaItem(index, each, easier=easier_than(each, KNOWN), new=new)
            for index, each in enumerate(exercises)
        )
        self.person = Person()
        self.moments: list[Moment] = []
        self.pipeline = Pipeline(plan, self.person, self._keep, 0.0, items=items)
        self.now_s = 0.0
        self.rng = np.random.default_rng(0)
        self.step()

    def _keep(self, entries: Iterable[Entry]) -> None:
        self.entries += entries

    def _took(self, moment: Moment) -> Moment:
        self.moments.append(moment)
        self.person.hears(moment)
        return moment

    def give(self, order: Order, pain: int | None = None) -> Moment:
        return self._took(self.pipeline.order(self.now_s, order, pain))

    def step(self) -> Moment:
        moment = self._took(self.pipeline.step(Frame(len(self.moments), self.now_s, PICTURE)))
        at_work = moment.stage in (Stage.PREPARE, Stage.EXERCISE)
        self.now_s += (0.1 if at_work else 0.2) * self.rng.uniform(0.8, 1.0)
        return moment

    def until(self, reached: Callable[[Moment], bool], most_s: float = 200.0) -> Moment:
        """Play on to a moment of that kind."""
        last_s = self.now_s + most_s
        while self.now_s < last_s:
            if reached(moment := self.step()):
                return moment
        raise AssertionError(f"not reached from {self.moments[-1].stage}")

    def to(self, stage: Stage, most_s: float = 200.0) -> Moment:
        return self.until(lambda moment: moment.stage is stage, most_s)

    def wait(self, seconds: float) -> Moment:
        end_s = self.now_s + seconds
        return self.until(lambda moment: self.now_s >= end_s)

    def raise_hand(self, seconds: float) -> Moment:
        self.person.raised = True
        self.wait(seconds)
        self.person.raised = False
        return self.wait(1.0)

    def answer(self, number: int) -> Moment:
        """Raise the hand a second after the number was offered, and leave it at that."""
        asked = self.until(lambda m: m.asked is not None and m.asked.offered == number)
        stage = asked.stage
        self.wait(1.0)
        self.raise_hand(2.0)
        return self.until(lambda moment: moment.stage is not stage)

    def stages(self) -> Iterator[Stage]:
        before = None
        for moment in self.moments:
            if moment.stage is not before:
                yield moment.stage
            before = moment.stage

    @property
    def document(self) -> SessionDocument:
        document = assemble(self.entries).document
        assert read_session_document(write_session_document(document), "it") == document
        return document

    def said(self) -> list[str]:
        return [cue.key for moment in self.moments for cue in moment.cues]


def test_six_exercises_play_to_the_end_without_a_word_from_anybody() -> None:
    sitting = Sitting(
        bare(Movement.ABDUCTION),
        named("pendulum"),
        bare(Movement.FLEXION, repetitions=2, rest_s=2),
        named("armpit-squeeze", repetitions=2, rest_s=0),
        named("stick-extension-standing"),
        named("side-lying-rotation"),
    )
    sitting.give(Order.START)
    sitting.to(Stage.FINISHED, most_s=1500.0)
    document = sitting.document
    assert document.ended_because is SessionEnd.COMPLETED
    assert [record.planned_index for record in document.exercises] == [0, 1, 2, 3, 4, 5]
    for record, asked in zip(document.exercises, document.plan.exercises, strict=True):
        assert record.ended_because is SessionEnd.COMPLETED
        assert (record.pain_before, record.pain_after) == (None, None)
        done = record.timed if asked.movement is None else record.repetitions
        assert [hold.number for hold in done] == list(range(1, asked.repetitions + 1))
        assert {hold.ended_because for hold in done} == {EndedBecause.COMPLETED}
        if asked.movement is None:
            assert [hold.held_s for hold in record.timed] == [5.0] * asked.repetitions
        for repetition in record.repetitions:
            assert repetition.value == pytest.approx(END[record.measured], abs=repetition.error)
    assert list(sitting.stages()) == [
        Stage.WELCOME,
        Stage.PAIN_BEFORE,
        *[Stage.PREPARE, Stage.EXERCISE, Stage.PAIN_AFTER] * 6,
        Stage.FINISHED,
    ]
    said = sitting.said()
    assert said.count("stage.pain-before") == 1
    assert said.count("stage.pain-after") == 6
    assert said.count("stage.finished") == 1
    # Two rounds of each of seven questions.
    assert all(said.count(f"pain.{number}") == 14 for number in range(11))


def test_a_raised_hand_answers_pauses_goes_on_and_stops() -> None:
    sitting = Sitting(bare(Movement.ABDUCTION, hold_s=30, repetitions=2))
    sitting.wait(2.0)
    # Whether it begins is for the window to say; the raise is told, and is not an answer later.
    sitting.person.raised = True
    told = sitting.wait(2.0)
    assert told.stage is Stage.WELCOME
    assert told.raised_s is not None
    assert told.raised_s >= 1.2
    sitting.person.raised = False
    sitting.wait(1.0)
    sitting.give(Order.START)
    assert sitting.answer(2).stage is Stage.PREPARE
    assert sitting.to(Stage.EXERCISE, 5.0)
    sitting.wait(8.0)
    assert sitting.raise_hand(2.0).stage is Stage.PAUSED
    sitting.wait(10.0)
    assert sitting.raise_hand(2.0).stage is Stage.EXERCISE
    sitting.wait(8.0)
    sitting.person.raised = True
    paused = sitting.to(Stage.PAUSED, 3.0)
    stopped = sitting.to(Stage.FINISHED, 6.0)
    assert stopped.time_s - paused.time_s == pytest.approx(5.0 - 1.2, abs=0.5)
    document = sitting.document
    assert document.ended_because is SessionEnd.STOPPED
    (record,) = document.exercises
    assert record.pain_before == 2
    assert {hold.ended_because for hold in record.repetitions} == {EndedBecause.STOPPED}


def test_too_much_pain_by_hand_then_the_easier_one_then_enough() -> None:
    sitting = Sitting(
        named("doorway-rotation-middle", pain_limit=3), named("pendulum", pain_limit=3)
    )
    sitting.give(Order.START)
    assert sitting.answer(1).stage is Stage.PREPARE
    sitting.to(Stage.PAIN_AFTER)
    offer = sitting.answer(5)
    assert offer.stage is Stage.OFFER
    assert "stage.offer" in [cue.key for cue in offer.cues]
    sitting.wait(4.0)
    assert sitting.raise_hand(3.0).stage is Stage.PAIN_BEFORE
    # The hand that accepted is not taken for an answer.
    asked = sitting.until(lambda m: m.asked is not None and m.asked.offered is not None)
    assert asked.planned is not None
    assert asked.planned.exercise == "doorway-rotation-low"
    end = sitting.answer(8)
    assert end.stage is Stage.FINISHED
    assert "pain-stop" in [cue.key for cue in end.cues]
    document = sitting.document
    assert document.ended_because is SessionEnd.PAIN
    middle, low = document.exercises
    assert (middle.ended_because, middle.pain_after) == (SessionEnd.COMPLETED, 5)
    assert middle.offered == low.exercise == "doorway-rotation-low"
    assert (low.eased, low.ended_because, low.pain_before) == (True, SessionEnd.PAIN, 8)
    assert low.movement is Movement.EXTERNAL_ROTATION_0


def test_an_offer_that_nobody_takes_up_passes() -> None:
    sitting = Sitting(named("doorway-rotation-middle", pain_limit=3), named("pendulum"))
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 1)
    sitting.to(Stage.EXERCISE)
    assert sitting.give(Order.PAIN, 4).stage is Stage.OFFER
    moment = sitting.to(Stage.PREPARE, 30.0)
    assert moment.planned is not None
    assert moment.planned.exercise == "pendulum"


def test_somebody_who_never_comes_into_view_is_waited_for_and_told() -> None:
    sitting = Sitting(bare(Movement.FLEXION))
    sitting.person.away = True
    sitting.give(Order.START)
    sitting.to(Stage.PREPARE)
    last = sitting.wait(120.0)
    assert (last.stage, last.doubt) == (Stage.PREPARE, Doubt.NOBODY)
    assert "correct.nobody-in-view" in sitting.said()
    sitting.pipeline.end_input()
    document = sitting.document
    assert (document.ended_because, document.exercises) == (SessionEnd.INPUT_ENDED, ())


def test_what_is_only_timed_begins_without_anybody_in_view() -> None:
    sitting = Sitting(named("pendulum"))
    sitting.person.away = True
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 1)
    sitting.to(Stage.PAIN_AFTER)
    (record,) = sitting.document.exercises
    assert [hold.held_s for hold in record.timed] == [5.0]


def test_what_is_timed_waits_until_its_introduction_was_heard() -> None:
    """At 150 words a minute, as the program speaks (common practice for clear speech)."""
    sitting = Sitting(named("side-lying-rotation"), new=True)
    sitting.give(Order.START)
    opening = sitting.give(Order.PAIN, 1)
    words = sum(len(cue.spoken.split()) for cue in opening.cues)
    begun = sitting.to(Stage.EXERCISE)
    assert begun.time_s - opening.time_s == pytest.approx(words / 150 * 60, rel=0.25)


@pytest.mark.parametrize("name", sorted(KNOWN))
def test_every_exercise_of_the_catalogue_can_be_played(name: str) -> None:
    """No position of it is unknown to whatever looks at the frames."""
    sitting = Sitting(named(name))
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 1)
    for _ in range(60):
        sitting.pipeline.step(Frame(0, sitting.now_s, PICTURE))
        sitting.now_s += 0.5
    sitting.give(Order.STOP)
    assert sitting.document.ended_because is SessionEnd.STOPPED


def test_a_timed_hold_that_was_paused_is_kept_and_the_next_ones_are_counted_on() -> None:
    sitting = Sitting(named("pendulum", hold_s=20, repetitions=2, rest_s=5))
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 1)
    begun = sitting.until(lambda m: m.stage is Stage.EXERCISE and m.held_s > 0)
    sitting.wait(10.0 - begun.held_s)
    paused = sitting.give(Order.PAUSE)
    sitting.wait(60.0)
    sitting.give(Order.RESUME)
    sitting.to(Stage.PAIN_AFTER)
    (record,) = sitting.document.exercises
    stopped, *whole = record.timed
    assert stopped.ended_because is EndedBecause.STOPPED
    assert stopped.held_s == pytest.approx(10.0, abs=0.3)
    assert stopped.end_s <= paused.time_s
    assert [(hold.number, hold.held_s) for hold in whole] == [(2, 20.0), (3, 20.0)]
    assert whole[0].start_s > paused.time_s + 60.0


def test_pain_above_seven_is_told_whatever_the_plan_allows() -> None:
    sitting = Sitting(bare(Movement.ABDUCTION, pain_limit=10))
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 7)
    sitting.to(Stage.EXERCISE)
    assert "pain-limit" not in sitting.said()
    end = sitting.give(Order.PAIN, 8)
    assert end.stage is Stage.FINISHED
    assert "pain-stop" in [cue.key for cue in end.cues]
    assert sitting.document.ended_because is SessionEnd.PAIN


def test_a_number_that_nobody_asked_for_is_not_commented() -> None:
    sitting = Sitting(bare(Movement.ABDUCTION))
    assert sitting.give(Order.PAIN, 9).cues == ()
    assert sitting.moments[-1].stage is Stage.WELCOME


@pytest.mark.parametrize(
    ("exercise", "told"),
    [(bare(Movement.ABDUCTION, hold_s=30), "lost-hold"), (named("pendulum"), "broken-hold")],
    ids=["measured", "timed"],
)
def test_a_hold_in_which_the_laptop_slept_is_broken_and_says_so(
    exercise: PlannedExercise, told: str
) -> None:
    sitting = Sitting(structs.replace(exercise, hold_s=30))
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 1)
    sitting.until(lambda m: m.stage is Stage.EXERCISE and m.held_s > 3.0)
    held_s = sitting.moments[-1].held_s
    sitting.now_s += 600.0
    sitting.step()
    assert told in sitting.said()
    (record,) = sitting.document.exercises
    (hold,) = (*record.repetitions, *record.timed)
    assert hold.ended_because is EndedBecause.LOST
    assert hold.held_s == pytest.approx(held_s, abs=0.3)
    assert sitting.moments[-1].completed == 0


def test_a_rest_in_which_the_laptop_slept_is_over() -> None:
    sitting = Sitting(bare(Movement.ABDUCTION, repetitions=2, rest_s=30))
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 1)
    resting = sitting.until(lambda m: m.resting)
    assert resting.remaining_s is not None
    sitting.now_s += 600.0
    assert not sitting.step().resting
    assert "again" in [cue.key for cue in sitting.moments[-1].cues]


def test_who_lifts_the_arm_at_once_hears_the_cautions_first_and_need_not_begin_anew() -> None:
    """The arm is up three seconds after getting ready, long before the cautions are over."""
    sitting = Sitting(named("stick-extension-standing"), new=True)
    sitting.person.eager = True
    sitting.give(Order.START)
    sitting.give(Order.PAIN, 1)
    sitting.until(lambda m: m.held_s >= 5.0, 100.0)
    sitting.give(Order.STOP)
    speaker = Speaker(None, timeline=(timeline := Timeline()))
    for moment in sitting.moments:
        speaker.hear(moment)
        speaker.tick(moment.time_s)
    placed = {each.cue.key: each for each in timeline.placed}
    words = KNOWN["stick-extension-standing"].telling["en"]
    must = [f"stage.caution.{n}" for n in range(1, len(words.cautions) + 1)] + ["stage.do"]
    assert len(must) > 1
    for key in must:
        assert not placed[key].interrupted
        assert placed[key].end_s <= placed["hold"].start_s
    (record,) = sitting.document.exercises
    (hold,) = record.repetitions
    assert hold.ended_because is EndedBecause.COMPLETED
    begun_s = next(m.time_s for m in sitting.moments if m.stage is Stage.EXERCISE)
    assert hold.start_s == pytest.approx(begun_s, abs=0.3)


def test_the_other_side_of_the_same_exercise_is_not_introduced_at_length_again() -> None:
    name = "stick-extension-standing"
    sitting = Sitting(named(name), named(name, side=Side.RIGHT))
    sitting.give(Order.START)
    first = sitting.give(Order.PAIN, 1)
    assert "stage.caution.1" in [cue.key for cue in first.cues]
    sitting.give(Order.READY)
    sitting.give(Order.SKIP)
    second = sitting.give(Order.PAIN, 1)
    keys = [cue.key for cue in second.cues]
    assert "stage.do" in keys
    assert "stage.caution.1" not in keys
    assert sitting.to(Stage.EXERCISE).time_s - second.time_s < 3.0

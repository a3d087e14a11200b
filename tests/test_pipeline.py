"""A whole sitting on a body whose movement is known: the same at any frame rate."""

from __future__ import annotations

from collections.abc import Callable, Iterable

import numpy as np
import pytest

from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Pose
from coach.domain.progress import EndedBecause, Phase
from coach.domain.reading import Doubt
from coach.domain.session import Camera, SessionDocument, SessionEnd, Software
from coach.pipeline import Pipeline
from coach.session.assemble import assemble
from coach.session.entries import Entry, SessionOpened
from tests.goniometry.stick_body import Seen, pose

PICTURE = np.zeros((480, 640, 3), np.uint8)
REST_DEG, HELD_DEG, RAMP_S, FIRST_S, HOLD_S, APART_S = 5.0, 95.0, 2.0, 3.0, 6.0, 14.0


def plan(**changes: object) -> Plan:
    exercise = {
        "movement": Movement.ABDUCTION,
        "side": Side.LEFT,
        "hold_s": 5.0,
        "repetitions": 2,
        "rest_s": 3.0,
        "pain_limit": 4,
    } | changes
    return Plan(patient_code="T", exercises=(PlannedExercise(**exercise),))  # type: ignore[arg-type]


def angle_deg(time_s: float) -> float:
    """Rest, a smooth rise, a hold of six seconds, a smooth return; every 14 s again."""
    in_cycle_s = (time_s - FIRST_S) % APART_S if time_s > FIRST_S else APART_S
    up = np.clip(in_cycle_s / RAMP_S, 0, 1)
    down = np.clip((in_cycle_s - RAMP_S - HOLD_S) / RAMP_S, 0, 1)
    share = up**3 * (10 - 15 * up + 6 * up**2) - down**3 * (10 - 15 * down + 6 * down**2)
    return float(REST_DEG + (HELD_DEG - REST_DEG) * share)


class SeenBody:
    """A pose estimator that knows the truth; blind where ``hidden`` says so."""

    model_sha256 = "0" * 64

    def __init__(self, hidden: Callable[[float], bool]) -> None:
        self._hidden = hidden

    def estimate(self, frame: Frame) -> Pose | None:
        if self._hidden(frame.time_s):
            return None
        angle = angle_deg(frame.time_s)
        return pose(Movement.ABDUCTION, angle, Side.LEFT, Seen(View.FRONT), frame.time_s)

    def close(self) -> None:
        pass


class Sitting:
    """A pipeline with its entries kept, so that the document can be made of them."""

    def __init__(self, plan: Plan, hidden: Callable[[float], bool] = lambda _: False) -> None:
        self.entries: list[Entry] = [
            SessionOpened(
                session_id="a" * 32,
                started_at="2026-02-03T10:00:00+01:00",
                software=Software(
                    name="test", version="1", definitions=1, model_sha256=SeenBody.model_sha256
                ),
                camera=Camera(kind="file", width_px=640, height_px=480, frames_per_s=30.0),
                plan=plan,
            )
        ]
        self.moments: list[Moment] = []
        self.pipeline = Pipeline(plan, SeenBody(hidden), self._keep, 0.0)
        self.give(0.0, Order.START)

    def _keep(self, entries: Iterable[Entry]) -> None:
        self.entries += entries

    def give(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        self.moments.append(self.pipeline.order(time_s, order, pain))
        return self.moments[-1]

    def play(self, from_s: float, to_s: float, frames_per_s: float) -> None:
        for n in range(round((to_s - from_s) * frames_per_s)):
            time_s = from_s + n / frames_per_s
            self.moments.append(self.pipeline.step(Frame(n, time_s, PICTURE)))

    @property
    def document(self) -> SessionDocument:
        return assemble(self.entries).document

    def said(self) -> list[str]:
        return [cue.key for moment in self.moments for cue in moment.cues]


def test_keeping_still_at_the_start_is_written_down_with_the_position() -> None:
    sitting = Sitting(plan(position=Position.SITTING))
    sitting.give(0.0, Order.PAIN, 2)
    sitting.play(0.0, 4.0, 10.0)
    sitting.give(4.0, Order.STOP)
    (record,) = sitting.document.exercises
    assert record.position is Position.SITTING
    assert record.calibration is not None
    # The body stands still until the first rise.
    assert record.calibration.state == "still"
    assert record.calibration.end_s is not None
    assert record.calibration.end_s <= FIRST_S + 0.5


@pytest.mark.parametrize("frames_per_s", [10.0, 15.0, 30.0, 60.0])
def test_two_holds_are_timed_and_counted_at_any_frame_rate(frames_per_s: float) -> None:
    sitting = Sitting(plan())
    sitting.give(0.0, Order.PAIN, 2)
    sitting.play(0.0, 33.0, frames_per_s)
    assert sitting.moments[-1].stage is Stage.PAIN_AFTER
    sitting.give(33.0, Order.PAIN, 3)
    document = sitting.document
    assert document.ended_because is SessionEnd.COMPLETED
    (exercise,) = document.exercises
    assert (exercise.pain_before, exercise.pain_after) == (2, 3)
    first, second = exercise.repetitions
    for repetition, start_s in ((first, 5.0), (second, 19.0)):
        assert repetition.ended_because is EndedBecause.COMPLETED
        assert repetition.start_s == pytest.approx(start_s, abs=0.35)
        assert repetition.held_s == pytest.approx(HOLD_S, abs=0.5)
        assert repetition.value == pytest.approx(HELD_DEG, abs=repetition.error)
        assert repetition.seen_fraction == pytest.approx(1.0, abs=0.02)
    said = sitting.said()
    for key in ("hold", "number.3", "number.1", "rest"):
        assert said.count(key) == 2, (key, said)


def test_a_hold_counts_from_the_moment_it_was_long_enough() -> None:
    sitting = Sitting(plan())
    sitting.give(0.0, Order.PAIN, 2)
    sitting.play(0.0, 33.0, 30.0)
    enough = 0
    for moment in sitting.moments:
        said = [cue.key for cue in moment.cues]
        enough += said.count("rest")
        assert moment.completed == enough, (moment.time_s, said)
        if moment.phase is Phase.HOLDING and moment.held_s < 5.0:
            # Two holds of six seconds from 5 s and from 19 s on: the second is not counted yet.
            assert moment.completed == (moment.time_s > 12.0)
    assert enough == 2
    returning = [m for m in sitting.moments if m.phase is Phase.RETURNING]
    assert {m.completed for m in returning} == {1, 2}


def test_the_shown_countdown_is_the_time_that_is_left() -> None:
    sitting = Sitting(plan())
    sitting.give(0.0, Order.PAIN, 2)
    sitting.play(0.0, 12.0, 30.0)
    holding = [m for m in sitting.moments if m.phase is Phase.HOLDING and m.remaining_s]
    assert len(holding) > 90
    for moment in holding:
        assert moment.remaining_s is not None
        # The arm is in place from 5 s on, so that five seconds are over at 10.
        assert moment.remaining_s == pytest.approx(10.0 - moment.time_s, abs=0.4)


def test_what_was_not_seen_was_not_held() -> None:
    # Hidden for two of the six seconds: more than a blink, less than a loss.
    sitting = Sitting(plan(repetitions=1, hold_s=5.0), lambda t: 7.0 < t < 9.0)
    sitting.give(0.0, Order.PAIN, 0)
    sitting.play(0.0, 16.0, 30.0)
    (repetition,) = sitting.document.exercises[0].repetitions
    assert repetition.held_s == pytest.approx(HOLD_S - 2.0, abs=0.6)
    assert repetition.ended_because is EndedBecause.LET_GO


def test_a_pause_ends_the_hold_as_what_it_was() -> None:
    sitting = Sitting(plan(repetitions=1))
    sitting.give(0.0, Order.PAIN, 0)
    sitting.play(0.0, 7.5, 30.0)
    assert sitting.give(7.5, Order.PAUSE).stage is Stage.PAUSED
    sitting.play(7.6, 9.0, 30.0)
    (repetition,) = sitting.document.exercises[0].repetitions
    assert repetition.ended_because is EndedBecause.STOPPED
    assert repetition.held_s == pytest.approx(2.5, abs=0.5)


def test_pain_above_the_limit_ends_before_it_begins_and_is_said() -> None:
    sitting = Sitting(plan(pain_limit=3))
    moment = sitting.give(0.0, Order.PAIN, 6)
    assert moment.stage is Stage.FINISHED
    assert "pain-limit" in [cue.key for cue in moment.cues]
    assert sitting.document.ended_because is SessionEnd.PAIN


def test_the_end_of_the_clip_keeps_an_open_hold() -> None:
    sitting = Sitting(plan(repetitions=1, hold_s=30.0))
    sitting.give(0.0, Order.PAIN, 0)
    sitting.play(0.0, 9.0, 30.0)
    sitting.pipeline.end_input()
    document = sitting.document
    assert document.ended_because is SessionEnd.INPUT_ENDED
    (repetition,) = document.exercises[0].repetitions
    assert repetition.ended_because is EndedBecause.INPUT_ENDED
    assert repetition.held_s == pytest.approx(4.0, abs=0.5)


def test_where_nobody_is_in_view_the_model_rests_and_misses_nobody_who_comes_back() -> None:
    looked_at: list[float] = []

    def hidden(time_s: float) -> bool:
        looked_at.append(time_s)
        return 4.0 <= time_s < 24.0

    sitting = Sitting(plan(), hidden)
    sitting.give(0.0, Order.PAIN, 1)
    sitting.give(0.0, Order.READY)
    moments = [sitting.pipeline.step(Frame(index, index / 30, PICTURE)) for index in range(26 * 30)]
    away = [time_s for time_s in looked_at if 6.5 <= time_s < 23.5]
    assert 4.5 <= len(away) / 17.0 <= 5.5
    assert [m.deserted for m in moments[15::30]] == [6 <= i < 24 for i in range(26)]
    unseen = [m for m in moments if 4.0 <= m.time_s < 24.0]
    assert {m.reading.doubt for m in unseen if m.reading} == {Doubt.NOBODY}
    back = next(m.time_s for m in moments if m.time_s >= 24.0 and m.pose is not None)
    assert back < 24.25
    assert all(m.pose is not None for m in moments if m.time_s >= back)


def test_looking_one_frame_ahead_changes_nothing_that_is_measured() -> None:
    in_turn, ahead = Sitting(plan()), Sitting(plan())
    for sitting in (in_turn, ahead):
        sitting.give(0.0, Order.PAIN, 2)
        sitting.give(0.0, Order.READY)
    in_turn.play(0.0, 28.0, 30.0)
    pipeline = ahead.pipeline
    looked = pipeline.look(Frame(0, 0.0, PICTURE))
    for n in range(1, 28 * 30 + 1):
        following = pipeline.look(Frame(n, n / 30.0, PICTURE))
        ahead.moments.append(pipeline.take(looked))
        looked = following
    assert len(in_turn.document.exercises[0].repetitions) == 2
    assert ahead.document == in_turn.document
    assert ahead.said() == in_turn.said()
    assert ahead.entries == in_turn.entries


def test_a_frame_looked_past_during_a_pause_is_not_taken_for_nobody_after_it() -> None:
    sitting = Sitting(plan())
    sitting.give(0.0, Order.PAIN, 2)
    sitting.give(0.0, Order.READY)
    sitting.play(0.0, 5.0, 30.0)
    sitting.give(5.0, Order.PAUSE)
    sitting.play(5.0, 6.0, 30.0)
    past = next(
        looked
        for n in range(30)
        if not (looked := sitting.pipeline.look(Frame(n, 6.0 + n / 30.0, PICTURE))).asked
    )
    sitting.give(6.0, Order.RESUME)
    moment = sitting.pipeline.take(past)
    assert moment.stage is Stage.EXERCISE
    assert moment.reading is None
    after = sitting.pipeline.step(Frame(0, 7.0, PICTURE))
    assert after.reading is not None
    assert after.reading.usable

"""Properties of the counting against arms whose true holds are known."""

from __future__ import annotations

from dataclasses import replace

import hypothesis
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from coach.counting import State, Task, advance, begin, count, finish
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
)
from coach.domain.reading import Doubt, Form, Reading

from .simulator import Arm, Camera, Leg

FREE = Task()
TOLERANCE_S = 0.7
search = settings(
    max_examples=20,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
    phases=[hypothesis.Phase.explicit, hypothesis.Phase.generate],
    derandomize=True,
)


def exercise(*stays: float, top: float = 100.0, rest: float = 5.0, ramp: float = 1.5) -> Arm:
    """Rest, then a hold of each length with 3 s of rest after it."""
    legs = [Leg(rest, 0, 2)]
    for stay in stays:
        legs += [Leg(top, ramp, stay), Leg(rest, ramp, 3)]
    return Arm(rest, tuple(legs), breath_deg=1.0, sway_deg=0.5)


def events_of(readings: list[Reading], task: Task) -> tuple[State, list[ProgressEvent]]:
    state, events = begin(task), list[ProgressEvent]()
    for reading in readings:
        state, more = advance(state, reading)
        events += more
    return state, events


def ended(events: list[ProgressEvent]) -> list[Repetition]:
    return [event.repetition for event in events if isinstance(event, RepetitionEnded)]


def unseen(readings: list[Reading], from_s: float, to_s: float) -> list[Reading]:
    return [
        Reading(x.time_s, None, None, Doubt.ARM_OUT_OF_VIEW) if from_s <= x.time_s < to_s else x
        for x in readings
    ]


@st.composite
def exercises(draw: st.DrawFn) -> Arm:
    rest = draw(st.floats(-40, 20))
    rise = draw(st.floats(25, 140))
    shape = draw(st.sampled_from(["minimum-jerk", "smoothstep", "cosine"]))
    legs = [Leg(rest, 0, draw(st.floats(1, 4)))]
    for _ in range(draw(st.integers(1, 3))):
        stay = draw(st.floats(3, 12))
        legs.append(Leg(rest + rise, draw(st.floats(0.8, 2.5)), stay, shape, 0.15 * stay))
        legs.append(Leg(rest, draw(st.floats(0.8, 2.5)), draw(st.floats(1, 4)), shape))
    return Arm(rest, tuple(legs), draw(st.floats(0, 1)), draw(st.floats(0, 6)), 0.5)


@search
@given(arm=exercises(), fps=st.sampled_from([10.0, 15.0, 30.0, 60.0]), seed=st.integers(0, 999))
def test_holds_and_seconds_are_true_at_every_frame_rate(arm: Arm, fps: float, seed: int) -> None:
    camera = Camera(fps, 1.0, 2.0, dropped=0.05, jitter=0.5, seed=seed)
    held = [stay for stay in arm.stays() if stay[2].level_deg > arm.start_deg + 20]
    found = count(camera.look(arm), FREE)
    assert len(found) == len(held)
    for rep, (start_s, end_s, leg) in zip(found, held, strict=True):
        assert rep.held_s == pytest.approx(end_s - start_s, abs=TOLERANCE_S)
        assert rep.value == pytest.approx(leg.level_deg + leg.creep_deg / 2, abs=5.0)
        assert rep.ended_because is EndedBecause.LET_GO


@search
@given(loss_s=st.floats(0.6, 2.8), at_s=st.floats(6, 10), fps=st.sampled_from([10.0, 30.0, 60.0]))
def test_losing_sight_never_adds_time(loss_s: float, at_s: float, fps: float) -> None:
    readings = Camera(fps, 0.7, seed=3).look(exercise(12))
    whole, parted = (
        count(readings, FREE)[0],
        count(unseen(readings, at_s, at_s + loss_s), FREE)[0],
    )
    assert parted.held_s == pytest.approx(whole.held_s - loss_s, abs=2.5 / fps)
    assert parted.seen_fraction < whole.seen_fraction
    gone = [x for x in readings if not at_s <= x.time_s < at_s + loss_s]
    assert count(gone, FREE)[0].held_s == pytest.approx(parted.held_s, abs=1e-9)


@search
@given(lost=st.sets(st.integers(70, 180), max_size=60))
def test_deleting_readings_in_a_hold_never_lengthens_it(lost: set[int]) -> None:
    readings = Camera(15, 0.7, seed=4).look(exercise(12))
    whole = count(readings, FREE)[0]
    thinned = count([x for i, x in enumerate(readings) if i not in lost], FREE)
    assert sum(rep.held_s for rep in thinned) <= whole.held_s + 1e-9


@search
@given(
    at_s=st.floats(5, 9),
    size=st.integers(1, 5),
    off_deg=st.floats(10, 40) | st.floats(-40, -10),
    fps=st.sampled_from([10, 15, 30]),
)
def test_wrong_frames_do_not_split_a_hold(at_s: float, size: int, off_deg: float, fps: int) -> None:
    readings = Camera(fps, 0.7, seed=5).look(exercise(8))
    first = int(at_s * fps)
    wrong = list(readings)
    for i in range(first, first + size):
        wrong[i] = replace(wrong[i], value=(wrong[i].value or 0.0) + off_deg)
    (clean,), (hit,) = count(readings, FREE), count(wrong, FREE)
    assert hit.held_s == pytest.approx(clean.held_s, abs=0.25)
    assert hit.value == pytest.approx(clean.value, abs=1.0)


def test_a_pause_on_the_way_up_or_down_is_no_repetition() -> None:
    legs = (Leg(5, 0, 2), Leg(60, 1.5, 2.5), Leg(100, 1.5, 10), Leg(55, 1.5, 3), Leg(5, 1.5, 3))
    readings = Camera(30, 0.7).look(Arm(5, legs))
    for task in (FREE, Task(8.0)):
        (rep,) = count(readings, task)
        assert rep.held_s == pytest.approx(10, abs=TOLERANCE_S)
        assert rep.value == pytest.approx(100, abs=1)


def test_the_clock_begins_again_at_a_higher_level() -> None:
    legs = (Leg(5, 0, 2), Leg(60, 1.5, 4), Leg(100, 1.5, 10), Leg(5, 1.5, 3))
    _, events = events_of(Camera(30, 0.7).look(Arm(5, legs)), Task(8.0))
    starts = [event.start_s for event in events if isinstance(event, HoldStarted)]
    completed = [event.time_s for event in events if isinstance(event, HoldCompleted)]
    assert starts == pytest.approx([3.5, 9.0], abs=0.35)
    assert completed == pytest.approx([17.0], abs=0.35)


def test_a_last_push_before_letting_go_keeps_the_hold() -> None:
    legs = (Leg(5, 0, 2), Leg(80, 1.5, 10), Leg(100, 1.0, 0.1), Leg(5, 1.5, 3))
    (rep,) = count(Camera(30, 0.7).look(Arm(5, legs)), Task(20.0))
    assert rep.held_s == pytest.approx(10, abs=TOLERANCE_S)
    assert rep.ended_because is EndedBecause.LET_GO


@search
@given(
    level=st.floats(-60, 30), sway=st.floats(0, 3), seed=st.integers(0, 999), asked=st.booleans()
)
def test_rest_never_counts(level: float, sway: float, seed: int, asked: bool) -> None:
    arm = Arm(level, (Leg(level, 0, 40),), breath_deg=1.0, sway_deg=sway)
    camera = Camera(15, 2.0, 2.0, bursts_per_min=6, unusable=0.1, seed=seed)
    _, events = events_of(camera.look(arm), Task(5.0) if asked else FREE)
    assert not any(isinstance(event, HoldStarted | RepetitionEnded) for event in events)


@pytest.mark.parametrize("stay_s", [0.0, 0.5, 1.0, 1.4])
def test_touches_count_only_where_so_little_was_asked(stay_s: float) -> None:
    readings = Camera(30, 0.7).look(exercise(stay_s, stay_s, top=70))
    assert count(readings, FREE) == ()
    assert not any(rep.ended_because is EndedBecause.COMPLETED for rep in count(readings, Task(5)))


@pytest.mark.parametrize("asked_s", [1.0, 2.0, 5.0])
def test_short_asked_holds_are_completed(asked_s: float) -> None:
    readings = Camera(30, 0.7).look(exercise(asked_s + 0.6, asked_s + 0.6, top=40))
    reps = count(readings, Task(asked_s))
    assert [rep.ended_because for rep in reps] == [EndedBecause.COMPLETED] * 2
    for rep in reps:
        assert rep.held_s == pytest.approx(asked_s + 0.6, abs=0.4)


@pytest.mark.parametrize(("rest", "top"), [(-35.0, -20.0), (0.0, 15.0), (5.0, 30.0), (10.0, 170.0)])
def test_every_range_from_fifteen_degrees_is_found(rest: float, top: float) -> None:
    reps = count(Camera(30, 1.0, seed=2).look(exercise(6, 6, top=top, rest=rest)), FREE)
    assert [rep.held_s for rep in reps] == pytest.approx([6, 6], abs=TOLERANCE_S)
    assert [rep.value for rep in reps] == pytest.approx([top, top], abs=1.5)


def test_an_unfinished_hold_is_recorded_as_what_it_was() -> None:
    (rep,) = count(Camera(30, 0.7).look(exercise(6)), Task(10.0))
    assert rep.ended_because is EndedBecause.LET_GO
    assert rep.held_s == pytest.approx(6, abs=TOLERANCE_S)


def test_a_hold_beyond_the_asked_seconds_keeps_its_true_length() -> None:
    state, events = events_of(Camera(30, 0.7).look(exercise(9)), Task(5.0))
    (rep,) = ended(events)
    assert rep.ended_because is EndedBecause.COMPLETED
    assert rep.held_s == pytest.approx(9, abs=TOLERANCE_S)
    assert [e.time_s for e in events if isinstance(e, HoldCompleted)] == pytest.approx(
        [8.5], abs=0.35
    )
    assert state.phase is Phase.REST


def test_phases_follow_the_arm_and_the_start_is_known_soon() -> None:
    _, events = events_of(Camera(30, 0.7).look(exercise(8)), Task(5.0))
    phases = [event.phase for event in events if isinstance(event, PhaseChanged)]
    assert phases == [
        Phase.MOVING,
        Phase.SETTLING,
        Phase.HOLDING,
        Phase.RETURNING,
        Phase.REST,
    ]
    (start,) = [event for event in events if isinstance(event, HoldStarted)]
    assert start.start_s == pytest.approx(3.5, abs=0.3)
    assert start.time_s <= 3.5 + 1.2


def test_what_a_window_shows_during_a_loss() -> None:
    readings = unseen(Camera(30, 0.7).look(exercise(20)), 10.0, 12.0)
    state, shown = begin(Task(15.0)), []
    log: list[ProgressEvent] = []
    for reading in readings:
        state, more = advance(state, reading)
        log += more
        if 10.6 < reading.time_s < 12.0:
            shown.append((state.paused, state.held_s, state.remaining_s))
    assert {paused for paused, _, _ in shown} == {True}
    assert len({held for _, held, _ in shown}) == 1
    _, held_s, remaining_s = shown[0]
    assert held_s == pytest.approx(6.5, abs=0.35)
    assert remaining_s == pytest.approx(15 - held_s)
    kinds = [type(e) for e in log if isinstance(e, HoldPaused | HoldResumed | HoldCompleted)]
    assert kinds == [HoldPaused, HoldResumed, HoldCompleted]
    (paused,) = [e for e in log if isinstance(e, HoldPaused)]
    assert paused.doubt is Doubt.ARM_OUT_OF_VIEW
    assert paused.time_s == pytest.approx(10.5, abs=0.1)


@pytest.mark.parametrize("dropped", [False, True])
def test_a_long_loss_ends_the_hold_where_it_was_last_seen(dropped: bool) -> None:
    readings = Camera(30, 0.7).look(exercise(15))
    gap = unseen(readings, 9.0, 14.0)
    rep = count([x for x in gap if x.usable or not dropped], FREE)[0]
    assert rep.ended_because is EndedBecause.LOST
    assert rep.end_s == pytest.approx(9.0, abs=0.05)
    assert rep.held_s == pytest.approx(5.5, abs=0.35)


@pytest.mark.parametrize("because", [EndedBecause.INPUT_ENDED, EndedBecause.STOPPED])
def test_an_open_hold_ends_with_the_input(because: EndedBecause) -> None:
    readings = [x for x in Camera(30, 0.7).look(exercise(20)) if x.time_s < 10]
    state, events = events_of(readings, Task(30.0))
    assert ended(events) == []
    (rep,) = ended(list(finish(state, 10.0, because)))
    assert rep.ended_because is because
    assert rep.held_s == pytest.approx(6.5, abs=0.4)
    assert rep.end_s <= 10.0


def test_a_clip_that_begins_in_a_hold_counts_what_is_seen_of_it() -> None:
    legs = (Leg(90, 0, 5), Leg(5, 1.5, 3), Leg(90, 1.5, 6), Leg(5, 1.5, 3))
    readings = Camera(30, 0.7).look(Arm(90, legs))
    held = [rep.held_s for rep in count(readings, FREE)]
    assert held == pytest.approx([5, 6], abs=TOLERANCE_S)
    parted = [rep.held_s for rep in count(unseen(readings, 2.0, 4.0), FREE)]
    assert parted == pytest.approx([held[0] - 2, held[1]], abs=0.1)


def test_the_value_is_the_median_without_the_first_second_and_its_error_does_not_shrink() -> None:
    still = [Reading(i / 20, 5.0, 4.0, None, Form(1.0, None, 10.0)) for i in range(40)]
    rise = [Reading(2 + i / 20, 5 + 85 * i / 20, 4.0) for i in range(20)]
    giving = [Reading(3 + i / 20, 90.0, 7.0) for i in range(20)]
    steady = [
        Reading(4 + i / 20, 92.0 + 2 * (i % 3 - 1), 7.0, None, Form(3.0 + i % 3, None, 10.0))
        for i in range(200)
    ]
    fall = [Reading(14 + i / 20, 92 - 85 * i / 20, 4.0) for i in range(20)]
    rest = [Reading(15 + i / 20, 7.0, 4.0) for i in range(60)]
    (rep,) = count([*still, *rise, *giving, *steady, *fall, *rest], FREE)
    assert rep.value == pytest.approx(92.0, abs=0.05)
    assert rep.spread == pytest.approx(4.0, abs=0.5)
    assert rep.error == 7.0
    assert rep.form == Form(4.0, None, 10.0)
    assert rep.seen_fraction == pytest.approx(1.0)


def test_ten_minutes_cost_no_more_state_than_one() -> None:
    arm = exercise(600)
    sizes = []
    state = begin(Task(60.0))
    for i, reading in enumerate(Camera(60, 0.5).look(arm)):
        state, _ = advance(state, reading)
        if state.hold is not None and i % 600 == 0:
            sizes.append(len(state.hold.samples.rows) + len(state.trail.times_s))
    assert max(sizes) < 2600
    assert state.counted == 1


def test_stamps_that_stand_still_or_go_back_change_nothing() -> None:
    readings = Camera(30, 0.7).look(exercise(5))
    doubled = [y for x in readings for y in (x, x, replace(x, time_s=x.time_s - 0.01))]
    assert count(doubled, FREE) == count(readings, FREE)
    assert len(count(readings, FREE)) == 1


def test_the_target_not_to_be_passed() -> None:
    state, _ = events_of([Reading(i / 30, 80.0, 5.0) for i in range(30)], Task(10.0, 75.0))
    assert state.past_target
    state, _ = events_of([Reading(i / 30, 70.0, 5.0) for i in range(30)], Task(10.0, 75.0))
    assert not state.past_target


def test_an_arm_that_comes_back_to_hanging_from_the_other_side_holds_nothing() -> None:
    legs = (Leg(4, 0, 3), Leg(-60, 1.5, 4), Leg(4, 1.5, 4), Leg(-40, 1.5, 4), Leg(4, 1.5, 3))
    arm = Arm(4, legs, breath_deg=1.0)
    readings = Camera(30, 0.7).look(arm)
    assert count(readings, Task(hanging_deg=0.0)) == ()
    # A rotation may rest anywhere: there the same movement is two holds.
    assert [rep.value for rep in count(readings, FREE)][-1] == pytest.approx(4, abs=2)
    (small,) = count(
        Camera(30, 0.7).look(
            Arm(0, (Leg(-60, 1.5, 1), Leg(0, 1.5, 2), Leg(14, 1.5, 5), *legs[:1]))
        ),
        Task(hanging_deg=0.0),
    )
    assert small.value == pytest.approx(14, abs=1)


def test_a_restless_arm_that_hangs_for_two_seconds_holds_nothing() -> None:
    legs = (Leg(13, 0.6, 1.4), Leg(-6, 0.6, 0.3), Leg(-30, 0.8, 0.8), Leg(-5, 0.8, 0.6))
    legs += (Leg(3, 0.6, 2.5), Leg(-45, 0.8, 2))
    readings = Camera(30, 0.3).look(Arm(-1, legs))
    assert count(readings, Task(hanging_deg=0.0)) == ()


def test_seconds_without_sight_do_not_make_a_short_touch_a_hold() -> None:
    readings = Camera(30, 0.7).look(exercise(3.5))
    assert count(unseen(readings, 4.2, 6.4), FREE) == ()
    assert len(count(readings, FREE)) == 1

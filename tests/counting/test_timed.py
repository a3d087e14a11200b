"""Timed holds: what was held is what the frames' clock says, at any rate and jitter."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.counting import timed
from coach.domain.progress import (
    EndedBecause,
    HoldCompleted,
    HoldStarted,
    ProgressEvent,
    TimedHold,
    TimedHoldEnded,
)

LEAD_S = 8.0


def play(
    state: timed.Timed, stamps_s: list[float]
) -> tuple[timed.Timed, list[tuple[float, ProgressEvent]]]:
    out: list[tuple[float, ProgressEvent]] = []
    for time_s in stamps_s:
        state, events = timed.advance(state, time_s)
        out += [(time_s, event) for event in events]
    return state, out


def stamps(until_s: float, rate_hz: float, jitter: float = 0.0, seed: int = 0) -> list[float]:
    steps_s = np.random.default_rng(seed).uniform(1 - jitter, 1 + jitter, 20_000) / rate_hz
    times_s = np.concatenate([[0.0], np.cumsum(steps_s)])
    return [float(time_s) for time_s in times_s[times_s < until_s]]


def holds(events: list[tuple[float, ProgressEvent]]) -> list[TimedHold]:
    return [event.hold for _, event in events if isinstance(event, TimedHoldEnded)]


@given(
    rate_hz=st.floats(5, 60),
    jitter=st.floats(0, 0.9),
    seed=st.integers(0, 1000),
    hold_s=st.floats(1, 60),
    rest_s=st.floats(0, 60),
    repetitions=st.integers(1, 3),
)
def test_holds_begin_and_end_at_their_own_instants(
    rate_hz: float, jitter: float, seed: int, hold_s: float, rest_s: float, repetitions: int
) -> None:
    apart_s = hold_s + max(rest_s, timed.LEAST_REST_S)
    until_s = LEAD_S + repetitions * apart_s + 5.0
    frames_s = stamps(until_s, rate_hz, jitter, seed)
    longest_s = max(b - a for a, b in pairwise(frames_s))
    state, events = play(timed.begin(hold_s, repetitions, rest_s), frames_s)
    done = holds(events)
    assert [hold.number for hold in done] == list(range(1, repetitions + 1))
    for hold in done:
        begins_s = LEAD_S + (hold.number - 1) * apart_s
        assert hold.start_s == pytest.approx(begins_s, abs=1e-6)
        assert hold.end_s == pytest.approx(begins_s + hold_s, abs=1e-6)
        assert hold.held_s == pytest.approx(hold_s, abs=1e-9)
        assert hold.ended_because is EndedBecause.COMPLETED
    for time_s, event in events:
        match event:
            case HoldStarted():
                assert 0 <= time_s - event.start_s <= longest_s + 1e-9
            case TimedHoldEnded():
                assert 0 <= time_s - event.hold.end_s <= longest_s + 1e-9
            case HoldCompleted():
                pass
            case _:
                raise AssertionError(event)
    assert not state.holding


AWAKE_HOLDS_S = ((8.0, 38.0), (48.0, 78.0))


def slept(at_s: float, asleep_s: float) -> list[float]:
    return [t if t < at_s else t + asleep_s for t in stamps(120.0, 20.0)]


@pytest.mark.parametrize("asleep_s", [2.5, 300.0, 30_000.0])
@pytest.mark.parametrize("at_s", [10.0, 20.0, 37.0])
def test_a_hold_broken_by_a_sleep_is_marked_and_done_again_after_a_new_lead(
    at_s: float, asleep_s: float
) -> None:
    _, events = play(timed.begin(30.0, 2, 10.0), slept(at_s, asleep_s))
    broken, again, last = holds(events)
    assert broken.ended_because is EndedBecause.LOST
    assert broken.held_s == pytest.approx(at_s - 8.0, abs=0.1)
    assert broken.end_s == pytest.approx(at_s, abs=0.1)
    assert again.start_s == pytest.approx(at_s + asleep_s + LEAD_S, abs=0.1)
    for number, hold in ((2, again), (3, last)):
        assert hold.ended_because is EndedBecause.COMPLETED
        assert (hold.number, hold.held_s) == (number, pytest.approx(30.0))
        assert hold.end_s - hold.start_s == pytest.approx(30.0)


@pytest.mark.parametrize("asleep_s", [0.3, 1.0, 1.9])
def test_a_short_stop_is_bridged_and_its_time_is_true(asleep_s: float) -> None:
    _, events = play(timed.begin(30.0, 2, 10.0), slept(20.0, asleep_s))
    for hold, (start_s, end_s) in zip(holds(events), AWAKE_HOLDS_S, strict=True):
        assert (hold.start_s, hold.end_s) == (pytest.approx(start_s), pytest.approx(end_s))
        assert hold.held_s == pytest.approx(30.0)


@pytest.mark.parametrize("at_s", [4.0, 41.0], ids=["lead", "rest"])
@pytest.mark.parametrize("asleep_s", [2.5, 300.0, 30_000.0])
def test_a_wait_goes_on_by_the_clock_and_no_hold_begins_unannounced(
    at_s: float, asleep_s: float
) -> None:
    _, events = play(timed.begin(30.0, 2, 10.0), slept(at_s, asleep_s))
    due_s = next(start_s for start_s, _ in AWAKE_HOLDS_S if start_s > at_s)
    over = at_s + asleep_s >= due_s
    starts_s = [event.start_s for _, event in events if isinstance(event, HoldStarted)]
    expected_s = at_s + asleep_s + LEAD_S if over else due_s
    assert expected_s == pytest.approx(next(s for s in starts_s if s > at_s), abs=0.1)
    assert {hold.ended_because for hold in holds(events)} == {EndedBecause.COMPLETED}


@pytest.mark.parametrize("slow_hz", [8.0, 3.0, 1.0])
def test_a_camera_that_slows_down_in_a_hold_changes_no_time(slow_hz: float) -> None:
    fast_s = [t for t in stamps(120.0, 30.0) if t < 15.0]
    slow_s = [15.0 + t for t in stamps(105.0, slow_hz)]
    _, events = play(timed.begin(30.0, 2, 10.0), fast_s + slow_s)
    for hold, (start_s, end_s) in zip(holds(events), AWAKE_HOLDS_S, strict=True):
        assert (hold.start_s, hold.end_s) == (pytest.approx(start_s), pytest.approx(end_s))
        assert hold.ended_because is EndedBecause.COMPLETED


@given(stop_s=st.floats(8.5, 37.5), rate_hz=st.floats(5, 60))
def test_stopping_in_a_hold_keeps_what_was_held(stop_s: float, rate_hz: float) -> None:
    state, events = play(timed.begin(30.0, 2, 10.0), stamps(stop_s, rate_hz))
    assert not holds(events)
    assert state.time_s is not None
    (event,) = timed.finish(state, EndedBecause.STOPPED)
    assert isinstance(event, TimedHoldEnded)
    assert event.hold.held_s == pytest.approx(state.time_s - LEAD_S)
    assert event.hold.end_s == state.time_s
    assert event.hold.ended_because is EndedBecause.STOPPED
    assert state.remaining_s == pytest.approx(30.0 - event.hold.held_s)


def test_outside_a_hold_stopping_ends_nothing() -> None:
    for until_s in (0.1, 7.0, 40.0):
        state, _ = play(timed.begin(30.0, 2, 10.0), stamps(until_s, 10.0))
        assert timed.finish(state, EndedBecause.STOPPED) == ()
    assert timed.finish(timed.begin(30.0, 2, 10.0), EndedBecause.STOPPED) == ()


def test_after_a_pause_counting_goes_on_behind_the_holds_before_it() -> None:
    _, events = play(timed.begin(10.0, 3, 5.0, done=1, ended=2), stamps(60.0, 10.0))
    assert [hold.number for hold in holds(events)] == [3, 4]


def test_a_stamp_that_runs_backward_changes_nothing() -> None:
    state, _ = play(timed.begin(30.0, 1, 0.0), stamps(12.0, 10.0))
    assert timed.advance(state, 3.0) == (state, ())

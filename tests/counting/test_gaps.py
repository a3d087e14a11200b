"""Cameras that freeze, slow down or jump in a hold: its time is right to 0.3 s, or it is marked."""

from __future__ import annotations

from dataclasses import replace

import pytest

from coach.counting.machine import count
from coach.counting.task import Task
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.reading import Reading

from .simulator import Arm, Camera, Leg

HELD_S = 24.0
# Straight ramps: where a hold begins and ends is clear, so that gaps alone are judged.
ARM = Arm(5.0, (Leg(5.0, 0.0, 3.0), Leg(95.0, 2.0, HELD_S, "linear"), Leg(5.0, 2.0, 4.0, "linear")))
FROM_S, TO_S = ARM.stays()[1][:2]
ASKED = Task(hold_s=20.0)
RIGHT_S = 0.3


def frames(fps: float, seed: int = 1) -> list[Reading]:
    return Camera(fps=fps, noise_deg=1.0, jitter=0.3, seed=seed).look(ARM)


def frozen(readings: list[Reading], at_s: float, for_s: float) -> list[Reading]:
    return [each for each in readings if not at_s < each.time_s < at_s + for_s]


def counted(readings: list[Reading]) -> tuple[Repetition, ...]:
    return count(readings, ASKED)


@pytest.mark.parametrize("fps", [10.0, 30.0])
@pytest.mark.parametrize("at_s", [7.0, 12.0, 22.0])
def test_a_camera_frozen_for_five_seconds_breaks_the_hold(fps: float, at_s: float) -> None:
    first, *others = counted(frozen(frames(fps), at_s, 5.0))
    assert first.ended_because is EndedBecause.LOST
    assert first.held_s == pytest.approx(at_s - FROM_S, abs=RIGHT_S)
    assert first.end_s == pytest.approx(at_s, abs=RIGHT_S)
    # The arm is still up when the picture comes back: that is a hold of its own.
    for other in others:
        assert other.start_s == pytest.approx(at_s + 5.0, abs=RIGHT_S)
        assert other.held_s == pytest.approx(TO_S - at_s - 5.0, abs=RIGHT_S)
        assert other.ended_because is EndedBecause.LET_GO


@pytest.mark.parametrize("for_s", [0.3, 0.45, 0.8, 2.0, 2.9])
def test_what_a_shorter_stop_hides_is_made_good_up_to_half_a_second_and_else_left_out(
    for_s: float,
) -> None:
    readings = frozen(frames(30.0), 12.0, for_s)
    (only,) = counted(readings)
    before = max(each.time_s for each in readings if each.time_s <= 12.0)
    after = min(each.time_s for each in readings if each.time_s >= 12.0 + for_s)
    missing_s = after - before
    hidden_s = missing_s if missing_s > 0.5 else 0.0
    assert only.held_s == pytest.approx(HELD_S - hidden_s, abs=RIGHT_S)
    assert only.ended_because is EndedBecause.COMPLETED


@pytest.mark.parametrize("seed", range(4))
def test_slowing_from_thirty_to_eight_frames_a_second_changes_no_time(seed: int) -> None:
    readings = [each for each in frames(30.0, seed) if each.time_s < 10.0]
    readings += [each for each in frames(8.0, seed) if each.time_s >= 10.0]
    (only,) = counted(readings)
    assert only.held_s == pytest.approx(HELD_S, abs=RIGHT_S)
    assert only.ended_because is EndedBecause.COMPLETED


@pytest.mark.parametrize("jump_s", [3.2, 20.0, 3600.0])
def test_stamps_that_jump_ahead_break_the_hold_and_add_nothing(jump_s: float) -> None:
    readings = [
        each if each.time_s < 15.0 else replace(each, time_s=each.time_s + jump_s)
        for each in frames(30.0)
    ]
    first, second = counted(readings)
    assert first.ended_because is EndedBecause.LOST
    assert first.held_s == pytest.approx(15.0 - FROM_S, abs=RIGHT_S)
    assert second.held_s == pytest.approx(TO_S - 15.0, abs=RIGHT_S)
    assert second.ended_because is EndedBecause.LET_GO


@pytest.mark.parametrize("fps", [5.0, 6.0, 7.0, 8.0, 15.0])
@pytest.mark.parametrize("seed", [1, 2, 3])
def test_a_slow_machine_times_the_same_hold(fps: float, seed: int) -> None:
    """Moved as people move: of a straight ramp's corner fewer frames show less."""
    up, down = Leg(95.0, 2.0, HELD_S, "smoothstep"), Leg(5.0, 2.0, 4.0, "smoothstep")
    smooth = Arm(5.0, (Leg(5.0, 0.0, 3.0), up, down))
    (only,) = counted(Camera(fps=fps, noise_deg=1.0, jitter=0.3, seed=seed).look(smooth))
    assert only.ended_because is EndedBecause.COMPLETED
    assert only.held_s == pytest.approx(HELD_S, abs=RIGHT_S)

"""Repetitions of whole recordings against arms whose number of repetitions is known."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from scipy.signal import find_peaks

from coach.counting import Task, count
from coach.counting.curve import calm_curve, smoothed_noise_deg
from coach.counting.excursions import excursions
from coach.counting.turns import peaks
from coach.domain.movement import Unit
from coach.domain.reading import Doubt, Reading

from .repetitions import KINDS, Case, Random
from .simulator import Arm, Camera, Leg

RECORDINGS = 60
STILL = ("swaying", "wandering", "only_noise", "one_way")


def raises(number: int, stay_s: float = 0.0, top: float = 90.0, ramp: float = 1.5) -> Arm:
    legs = [Leg(5.0, 0.0, 2.0)]
    for _ in range(number):
        legs += [Leg(top, ramp, stay_s), Leg(5.0, ramp, 1.0)]
    return Arm(5.0, tuple(legs), breath_deg=0.5, sway_deg=0.5)


def right(case: Case) -> bool:
    """As many as there were, in order, each with its top inside of its own movement."""
    found = excursions(case.camera.look(case.arm), case.task)
    stays = case.arm.stays()
    ways = [(stays[k][0] - stays[k][2].ramp_s, stays[k + 1][0]) for k in case.tops]
    return len(found) == len(ways) and all(
        start_s <= each.start_s < each.peak_s < each.end_s and each.peak_s <= end_s
        for each, (start_s, end_s) in zip(found, _widened(ways), strict=True)
    )


def _widened(ways: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """A pause on the way belongs to the movement: from the end of the one before to the next."""
    ends = [-1.0, *(end_s for _, end_s in ways)]
    starts = [*(start_s for start_s, _ in ways), math.inf]
    return [(ends[k] - 0.3, starts[k + 1] + 0.3) for k in range(len(ways))]


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_the_number_is_right(kind: Callable[[Random], Case]) -> None:
    wrong = []
    for seed in range(RECORDINGS):
        case = kind(np.random.default_rng([2026, seed]))
        assert (case.tops == ()) is (kind.__name__ in STILL)
        if not right(case):
            wrong.append(seed)
    # Bursts of wrong frames, one after the other, can look like a quick movement.
    assert len(wrong) <= (2 if kind.__name__ == "wrong_frames" else 0), wrong


def test_as_many_peaks_as_scipy_finds_where_there_is_no_noise() -> None:
    for seed in range(40):
        r = np.random.default_rng(seed)
        legs = [Leg(0.0, 0.0, 1.0)]
        for _ in range(int(r.integers(2, 10))):
            legs += [
                Leg(r.uniform(40, 150), r.uniform(0.5, 3), 0.0),
                Leg(r.uniform(0, 8), 2.0, 0.5),
            ]
        arm = Arm(0.0, tuple(legs))
        times = np.arange(0, arm.duration_s, 1 / 60)
        level = np.array([arm.angle_deg(t) for t in times])
        tops, _ = find_peaks(level, prominence=30.0)
        found = excursions(Camera(fps=30.0).look(arm), Task())
        assert [each.peak_s for each in found] == pytest.approx(times[tops].tolist(), abs=0.15)


def test_the_value_is_not_the_highest_reading() -> None:
    """Of 60 readings with a standard deviation of 2 degrees the highest is 4.6 too high."""
    off, highest = [], []
    for seed in range(60):
        readings = Camera(fps=30.0, noise_deg=2.0, seed=seed).look(
            Arm(5.0, (Leg(5.0, 0.0, 1.0), Leg(90.0, 1.5, 2.0), Leg(5.0, 1.5, 1.0)))
        )
        (each,) = excursions(readings, Task())
        assert each.value is not None
        off.append(each.value - 90.0)
        highest.append(max(x.value for x in readings if x.value is not None) - 90.0)
    assert np.mean(highest) > 4.0
    assert abs(np.mean(off)) < 0.5
    assert np.max(np.abs(off)) < 2.5


@pytest.mark.parametrize("whole_s", [1.0, 2.0, 4.0])
@pytest.mark.parametrize("top", [20.0, 90.0, 165.0])
def test_the_top_of_a_turn_loses_little(whole_s: float, top: float) -> None:
    """Of a quick turn-around at most a twentieth, of one in two seconds a fiftieth."""
    arm = raises(5, top=top, ramp=whole_s / 2)
    found = excursions(Camera(fps=30.0, noise_deg=0.5, seed=3).look(arm), Task())
    off = [each.value - top for each in found if each.value is not None]
    assert len(off) == 5
    allowed = (0.05 if whole_s < 2 else 0.02) * (top - 5.0)
    assert np.all(np.abs(off) < allowed + 1.5)


def test_leaving_and_coming_back_are_dated() -> None:
    arm = raises(4, stay_s=1.0, ramp=1.5)
    stays = arm.stays()
    found = excursions(Camera(fps=30.0, noise_deg=1.0, seed=1).look(arm), Task())
    for each, up, down in zip(found, stays[1::2], stays[2::2], strict=True):
        # A minimum-jerk movement has made a tenth of its way after a quarter of its time.
        assert each.start_s == pytest.approx(up[0] - 0.75 * 1.5, abs=0.2)
        assert each.end_s == pytest.approx(down[0] - 0.25 * 1.5, abs=0.2)


def test_seconds_held_are_those_of_the_hold() -> None:
    arm = Arm(
        5.0,
        (Leg(5, 0, 2), Leg(90, 1.5, 6), Leg(5, 1.5, 2), Leg(90, 1.5, 0), Leg(5, 1.5, 2)),
    )
    readings = Camera(fps=30.0, noise_deg=1.0, seed=2).look(arm)
    holds = count(readings, Task())
    first, second = excursions(readings, Task(), holds)
    assert first.held_s == pytest.approx(6.0, abs=0.7)
    assert first.held_s == holds[0].held_s
    assert second.held_s == 0.0


def test_a_hand_that_goes_up_the_back_counts_as_its_ratio_falls() -> None:
    ratio = Task(unit=Unit.RATIO)
    degrees = Camera(fps=30.0, noise_deg=1.0, seed=4).look(raises(6, top=50.0))
    readings = [replace(x, value=None if x.value is None else 1 - x.value / 100) for x in degrees]
    found = excursions(readings, ratio)
    assert len(found) == 6
    assert [each.value for each in found] == pytest.approx([0.5] * 6, abs=0.02)
    assert excursions(degrees, Task())[2].peak_s == found[2].peak_s


def blind(readings: list[Reading], from_s: float, to_s: float) -> list[Reading]:
    return [
        Reading(x.time_s, None, None, Doubt.ARM_OUT_OF_VIEW) if from_s <= x.time_s < to_s else x
        for x in readings
    ]


def test_a_top_out_of_sight_has_no_value() -> None:
    arm = raises(3, ramp=1.5)
    top_s = arm.stays()[3][0]
    readings = blind(Camera(fps=30.0, noise_deg=1.0, seed=5).look(arm), top_s - 0.5, top_s + 0.5)
    found = excursions(readings, Task())
    assert [each.value is None for each in found] == [False, True, False]
    assert [each.error is None for each in found] == [False, True, False]
    assert found[1].frames - found[1].usable == pytest.approx(30, abs=1)
    assert found[0].frames == found[0].usable


def test_a_movement_that_goes_into_a_long_gap_does_not_count() -> None:
    arm = raises(3, stay_s=4.0, ramp=1.5)
    top_s = arm.stays()[3][0]
    readings = blind(Camera(fps=30.0, noise_deg=1.0, seed=6).look(arm), top_s - 0.2, top_s + 3.5)
    assert len(excursions(readings, Task())) == 2


def test_a_movement_from_a_seen_rest_half_way_up_is_complete() -> None:
    """From rest at 40 up to 75 and down to -30, five times, in the end back to 40; and the same
    without the rests, cut from a movement that goes on: then the first and the last are not."""
    swings = [Leg(level, 1.5, 0.0) for level in (75.0, -30.0) * 5]
    rested = Arm(40.0, (Leg(40.0, 0.0, 1.0), *swings[:-1], Leg(40.0, 1.0, 1.0)))
    camera = Camera(fps=30.0, noise_deg=0.5, seed=8)
    assert len(excursions(camera.look(rested), Task())) == 5
    readings = camera.look(Arm(-30.0, tuple(swings)))
    high = [k for k, x in enumerate(readings) if x.value is not None and x.value > 40.0]
    assert len(excursions(readings[high[0] : high[-1] + 1], Task())) == 3


def test_the_other_side_of_hanging_is_another_movement() -> None:
    back = Arm(0.0, tuple(Leg(level, 1.0, 0.5) for level in (-50.0, 0.0) * 5))
    readings = Camera(fps=30.0, noise_deg=1.0, seed=7).look(back)
    assert excursions(readings, Task(hanging_deg=0.0)) == ()
    # Begun and ended at its top, a rotation over the same way has four that are complete.
    assert len(excursions(readings, Task())) == 4


def test_nothing_comes_of_nothing() -> None:
    assert excursions([], Task()) == ()
    assert excursions([Reading(0.1 * k, None, None, Doubt.NOBODY) for k in range(50)], Task()) == ()
    assert excursions([Reading(1.0, 20.0, 5.0)], Task()) == ()
    assert excursions([Reading(1.0, float(k), 5.0) for k in range(50)], Task()) == ()


def test_half_of_the_rise_parts_two_repetitions() -> None:
    def between(low: float) -> int:
        points = [0.0, 100.0, low, 95.0, 0.0]
        ways = [np.linspace(a, b, 50) for a, b in pairwise(points)]
        return len(peaks(np.concatenate(ways), 8.0))

    assert between(47.0) == 2
    assert between(48.0) == 1


@pytest.mark.parametrize("fps", [8.0, 15.0, 30.0, 60.0])
def test_noise_left_in_the_curve_is_known(fps: float) -> None:
    """Against the scatter of the curve itself, where the arm stands still."""
    r = np.random.default_rng(int(fps))
    times = np.arange(0, 120, 1 / fps)
    curve = calm_curve(times, r.normal(20.0, 2.0, len(times)))
    assert curve is not None
    assert smoothed_noise_deg([curve]) == pytest.approx(float(np.std(curve.level_deg)), rel=0.3)

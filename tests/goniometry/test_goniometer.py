"""Readings of a body whose angles are known, and the refusals."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.domain.movement import BEST_VIEW, Movement, Side, View
from coach.domain.pose import Landmark, Pose
from coach.domain.reading import Doubt, Reading
from coach.goniometry import read_sequence
from coach.goniometry.interval import error_deg
from tests.goniometry.stick_body import Seen, mirrored, pose

RANGE_DEG = {
    Movement.FLEXION: (0, 170),
    Movement.EXTENSION: (0, 60),
    Movement.ABDUCTION: (0, 170),
    Movement.EXTERNAL_ROTATION_0: (-40, 60),
}


def read(pose: Pose | None, movement: Movement, side: Side, view: View) -> Reading:
    return read_sequence([(0.0, pose)], movement, side, view)[0]


@given(
    movement=st.sampled_from(Movement),
    side=st.sampled_from(Side),
    share=st.floats(0, 1),
    distance_m=st.floats(2.7, 3.4),
    turned_deg=st.floats(-8, 8),
    aside_m=st.floats(-0.2, 0.2),
    size_px=st.sampled_from([(640, 480), (1280, 720), (1920, 1080)]),
)
def test_the_truth_lies_inside_the_interval(
    movement: Movement,
    side: Side,
    share: float,
    distance_m: float,
    turned_deg: float,
    aside_m: float,
    size_px: tuple[int, int],
) -> None:
    low, high = RANGE_DEG[movement]
    true_deg = low + share * (high - low)
    seen = Seen(BEST_VIEW[movement], distance_m, turned_deg, aside_m, size_px)
    reading = read(pose(movement, true_deg, side, seen), movement, side, seen.view)
    assert reading.usable, reading
    assert reading.angle_deg is not None
    assert reading.error_deg is not None
    assert abs(reading.angle_deg - true_deg) <= reading.error_deg


@given(movement=st.sampled_from(Movement), side=st.sampled_from(Side), share=st.floats(0, 1))
def test_a_flipped_picture_swaps_the_sides(movement: Movement, side: Side, share: float) -> None:
    low, high = RANGE_DEG[movement]
    seen = Seen(BEST_VIEW[movement], turned_deg=5.0, aside_m=0.1)
    straight = pose(movement, low + share * (high - low), side, seen)
    here = read(straight, movement, side, seen.view)
    there = read(mirrored(straight), movement, side.other, seen.view)
    assert here.angle_deg == pytest.approx(there.angle_deg, abs=1e-6)
    assert here.error_deg == pytest.approx(there.error_deg, abs=1e-6)


@pytest.mark.parametrize("movement", Movement)
@pytest.mark.parametrize("side", Side)
def test_a_wrong_view_is_refused_with_what_to_do(movement: Movement, side: Side) -> None:
    wanted = BEST_VIEW[movement]
    remedies = {
        View.FRONT: {Doubt.TURN_TO_FACE, Doubt.TURN_AROUND},
        View.SIDE: {Doubt.TURN_SIDEWAYS, Doubt.WRONG_SIDE},
    }[wanted]
    for turned_deg in (65.0, -65.0, 100.0, -100.0, 150.0, 180.0, -150.0):
        seen = Seen(wanted, turned_deg=turned_deg)
        reading = read(pose(movement, 30.0, side, seen), movement, side, wanted)
        assert reading.angle_deg is None
        assert reading.doubt in remedies, (turned_deg, reading.doubt)


@pytest.mark.parametrize("movement", [Movement.FLEXION, Movement.EXTENSION])
def test_a_view_along_the_plane_of_movement_measures_nothing(movement: Movement) -> None:
    for view in (View.FRONT, View.BACK):
        reading = read(pose(movement, 40.0, Side.LEFT, Seen(view)), movement, Side.LEFT, view)
        assert reading.doubt is Doubt.TURN_SIDEWAYS


def test_abduction_is_measured_from_behind_as_well() -> None:
    behind = pose(Movement.ABDUCTION, 70.0, Side.LEFT, Seen(View.BACK))
    reading = read(behind, Movement.ABDUCTION, Side.LEFT, View.BACK)
    assert reading.angle_deg == pytest.approx(70.0, abs=reading.error_deg)


def test_the_wrong_shoulder_toward_the_camera_is_named() -> None:
    seen = Seen(View.SIDE)
    right = pose(Movement.FLEXION, 60.0, Side.RIGHT, seen)
    assert read(right, Movement.FLEXION, Side.LEFT, View.SIDE).doubt is Doubt.WRONG_SIDE


@pytest.mark.parametrize(
    ("change", "doubt"),
    [
        ({"brightness": 0.03}, Doubt.TOO_DARK),
        ({"another_person": True}, Doubt.ANOTHER_PERSON),
    ],
)
def test_what_the_pose_says_of_itself_is_heeded(change: dict[str, object], doubt: Doubt) -> None:
    good = pose(Movement.ABDUCTION, 60.0, Side.LEFT, Seen(View.FRONT))
    bad = replace(good, **change)  # type: ignore[arg-type]
    assert read(bad, Movement.ABDUCTION, Side.LEFT, View.FRONT).doubt is doubt


@pytest.mark.parametrize(
    ("landmark", "doubt"),
    [
        (Landmark.LEFT_WRIST, Doubt.ARM_OUT_OF_VIEW),
        (Landmark.LEFT_ELBOW, Doubt.ARM_OUT_OF_VIEW),
        (Landmark.LEFT_HIP, Doubt.HIPS_OUT_OF_VIEW),
        (Landmark.LEFT_SHOULDER, Doubt.SHOULDERS_OUT_OF_VIEW),
    ],
)
def test_a_point_that_is_hidden_or_cut_off_is_named(landmark: Landmark, doubt: Doubt) -> None:
    good = pose(Movement.ABDUCTION, 60.0, Side.LEFT, Seen(View.FRONT))
    hidden = good.visibility.copy()
    hidden[landmark] = 0.2
    reading = read(replace(good, visibility=hidden), Movement.ABDUCTION, Side.LEFT, View.FRONT)
    assert reading.doubt is doubt


@pytest.mark.parametrize("movement", Movement)
@pytest.mark.parametrize("turned_deg", [-42.0, 42.0])
def test_a_view_whose_error_leaves_the_interval_is_refused(
    movement: Movement, turned_deg: float
) -> None:
    view = BEST_VIEW[movement]
    angle_deg = 30.0 if movement is Movement.EXTERNAL_ROTATION_0 else 60.0
    oblique = pose(movement, angle_deg, Side.RIGHT, Seen(view, turned_deg=turned_deg))
    wanted = Doubt.TURN_SIDEWAYS if view is View.SIDE else Doubt.TURN_TO_FACE
    assert read(oblique, movement, Side.RIGHT, view).doubt is wanted


def test_distance_is_named() -> None:
    far = pose(Movement.ABDUCTION, 60.0, Side.LEFT, Seen(View.FRONT, distance_m=6.0))
    assert read(far, Movement.ABDUCTION, Side.LEFT, View.FRONT).doubt is Doubt.TOO_FAR
    near = pose(Movement.ABDUCTION, 60.0, Side.LEFT, Seen(View.FRONT, distance_m=0.8))
    assert read(near, Movement.ABDUCTION, Side.LEFT, View.FRONT).doubt is Doubt.TOO_CLOSE


def test_elbows_are_asked_to_be_as_the_movement_needs_them() -> None:
    straight = pose(Movement.FLEXION, 10.0, Side.RIGHT, Seen(View.FRONT))
    reading = read(straight, Movement.EXTERNAL_ROTATION_0, Side.RIGHT, View.FRONT)
    assert reading.doubt is Doubt.BEND_ELBOW
    bent = pose(Movement.EXTERNAL_ROTATION_0, 30.0, Side.RIGHT, Seen(View.FRONT))
    reading = read(bent, Movement.ABDUCTION, Side.RIGHT, View.FRONT)
    assert reading.doubt is Doubt.STRAIGHTEN_ELBOW


@pytest.mark.parametrize("movement", [Movement.FLEXION, Movement.ABDUCTION])
def test_a_bend_that_the_metric_points_miss_is_seen_in_the_picture(movement: Movement) -> None:
    view = BEST_VIEW[movement]
    straight = pose(movement, 30.0, Side.RIGHT, Seen(view))
    bent = pose(Movement.EXTERNAL_ROTATION_0, 0.0, Side.RIGHT, Seen(view))
    missed = replace(bent, world_m=straight.world_m)
    assert read(straight, movement, Side.RIGHT, view).usable
    assert read(missed, movement, Side.RIGHT, view).doubt is Doubt.STRAIGHTEN_ELBOW


@pytest.mark.parametrize("raised_deg", [95.0, 130.0, 170.0])
def test_an_arm_raised_in_front_is_no_extension(raised_deg: float) -> None:
    raised = pose(Movement.FLEXION, raised_deg, Side.LEFT, Seen(View.SIDE))
    reading = read(raised, Movement.EXTENSION, Side.LEFT, View.SIDE)
    assert reading.doubt is Doubt.OTHER_MOVEMENT


def test_nobody_is_no_angle() -> None:
    assert read(None, Movement.FLEXION, Side.LEFT, View.SIDE).doubt is Doubt.NOBODY


def test_points_that_are_not_numbers_are_refused() -> None:
    good = pose(Movement.ABDUCTION, 60.0, Side.LEFT, Seen(View.FRONT))
    for row in (11, 12, 13, 15, 23, 24):
        image, world = good.image_px.copy(), good.world_m.copy()
        image[row] = np.nan
        world[row] = np.nan
        broken = replace(good, image_px=image, world_m=world)
        reading = read(broken, Movement.ABDUCTION, Side.LEFT, View.FRONT)
        assert reading.angle_deg is None, Landmark(row)
        assert reading.doubt is not None


def test_the_interval_widens_as_an_arm_off_its_plane_errs() -> None:
    # Far camera, trunk turned by psi about its length, arm 10 degrees to either side of its plane.
    elevation = np.radians(np.linspace(0, 180, 361))
    off = np.radians([[10.0], [-10.0]])

    def worst_deg(turned_deg: float) -> float:
        psi = np.radians(turned_deg)
        across = np.sin(elevation) * np.cos(off) * np.cos(psi) + np.sin(off) * np.sin(psi)
        seen = np.degrees(np.arctan2(across, np.cos(elevation) * np.cos(off)))
        return float(np.abs((seen - np.degrees(elevation) + 180) % 360 - 180).max())

    square_on = error_deg(Movement.FLEXION, 60.0, 20.0)
    for turned_deg in (25.0, 30.0, 35.0):
        widened = error_deg(Movement.FLEXION, 60.0, turned_deg) - square_on
        assert widened == pytest.approx(worst_deg(turned_deg) - worst_deg(20.0), abs=0.5)

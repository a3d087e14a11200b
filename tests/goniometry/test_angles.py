"""The angles against SciPy's rotations and against closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial.transform import Rotation

from coach.domain.movement import Movement, Position, Side, Unit
from coach.goniometry.angles import (
    elbow_flexion_deg,
    external_rotation_deg,
    movement_angle_deg,
    trunk_axes,
    unit,
)
from coach.goniometry.camera import Pinhole
from tests.goniometry.stick_body import MAN, Way, joints
from tests.goniometry.ways import RANGE

AXES = (np.eye(3)[0], np.eye(3)[1], np.eye(3)[2])  # X forward, Y up, Z right
ANGLES = [movement for movement in Movement if movement.unit is Unit.DEGREES]
DOWN = np.array([0.0, -1.0, 0.0])


def ball() -> st.SearchStrategy[Rotation]:
    number = st.floats(-1, 1)
    return (
        st.tuples(number, number, number, number)
        .filter(lambda q: math.hypot(*q) > 0.1)
        .map(Rotation.from_quat)
    )


@pytest.mark.parametrize("elevation_deg", [5, 40, 90, 130, 175])
def test_planes_of_elevation_are_those_of_the_standard(elevation_deg: float) -> None:
    # In the standard's frame the hanging humerus points down and elevation in plane 0 goes out.
    abducted = Rotation.from_euler("X", -elevation_deg, degrees=True).apply(DOWN)
    flexed = Rotation.from_euler("Z", elevation_deg, degrees=True).apply(DOWN)
    forearm = np.array([1.0, 0.0, 0.0])
    for side in Side:
        mirrored = abducted * [1, 1, side.sign]
        angle = movement_angle_deg(Movement.ABDUCTION, side, AXES, mirrored, forearm)
        assert angle == pytest.approx(elevation_deg, abs=1e-9)
        angle = movement_angle_deg(Movement.FLEXION, side, AXES, flexed, forearm)
        assert angle == pytest.approx(elevation_deg, abs=1e-9)
        angle = movement_angle_deg(Movement.EXTENSION, side, AXES, flexed, forearm)
        assert angle == pytest.approx(-elevation_deg, abs=1e-9)


@given(rotation_deg=st.floats(-80, 120), flexion_deg=st.floats(60, 120))
def test_external_rotation_is_the_turn_of_the_humerus(
    rotation_deg: float, flexion_deg: float
) -> None:
    # With the arm at the side the forearm turns about the vertical; outward is -Y for the right.
    bend = Rotation.from_euler("Z", flexion_deg, degrees=True)
    outward = Rotation.from_euler("Y", -rotation_deg, degrees=True)
    forearm = outward.apply(bend.apply(DOWN))
    for side in Side:
        mirrored = forearm * [1, 1, side.sign]
        angle = external_rotation_deg(DOWN, mirrored, AXES[0], side)
        assert angle == pytest.approx(rotation_deg, abs=1e-7)
    assert elbow_flexion_deg(DOWN, forearm) == pytest.approx(flexion_deg, abs=1e-7)


@given(turned=ball(), elevation_deg=st.floats(1, 170), plane_deg=st.floats(-60, 120))
def test_angles_do_not_depend_on_where_the_camera_is(
    turned: Rotation, elevation_deg: float, plane_deg: float
) -> None:
    arm = Rotation.from_euler("YX", [plane_deg, -elevation_deg], degrees=True).apply(DOWN)
    forearm = unit(np.cross(arm, [0.3, 0.2, 0.9]))
    points = np.array([[0.0, 0.5, -0.2], [0.0, 0.5, 0.2], [0.0, 0.0, -0.1], [0.0, 0.0, 0.1]])
    here = [
        movement_angle_deg(movement, side, trunk_axes(*points), arm, forearm)
        for movement in ANGLES
        for side in Side
    ]
    moved = turned.apply(points) + np.array([0.3, -1.0, 2.0])
    there = [
        movement_angle_deg(
            movement, side, trunk_axes(*moved), turned.apply(arm), turned.apply(forearm)
        )
        for movement in ANGLES
        for side in Side
    ]
    difference = (np.array(here) - np.array(there) + 180) % 360 - 180
    assert np.abs(difference).max() < 1e-6


@given(elevation_deg=st.floats(1, 170), plane_deg=st.floats(-60, 120))
def test_mirroring_swaps_the_sides(elevation_deg: float, plane_deg: float) -> None:
    arm = Rotation.from_euler("YX", [plane_deg, -elevation_deg], degrees=True).apply(DOWN)
    forearm = unit(np.cross(arm, [0.3, 0.2, 0.9]))
    mirror = np.array([1.0, 1.0, -1.0])
    for movement in ANGLES:
        right = movement_angle_deg(movement, Side.RIGHT, AXES, arm, forearm)
        left = movement_angle_deg(movement, Side.LEFT, AXES, arm * mirror, forearm * mirror)
        assert right == pytest.approx(float(left), abs=1e-9)


def test_a_hand_behind_the_back_is_no_angle() -> None:
    with pytest.raises(ValueError, match="ratio"):
        movement_angle_deg(Movement.HAND_BEHIND_BACK, Side.LEFT, AXES, DOWN, DOWN)


def humerus(plane_deg: float, elevation_deg: float, internal_deg: float) -> Rotation:
    """The right humerus in the thorax by Y-X'-Y'' of Wu et al. 2005: plane of elevation (0
    abduction, 90 forward flexion), negative elevation, axial rotation (internal positive)."""
    return Rotation.from_euler("YXY", [plane_deg, -elevation_deg, internal_deg], degrees=True)


def seen(movement: Movement, turn: Rotation, side: Side, bend_deg: float = 90.0) -> float:
    """The angle of an arm turned as the right humerus is; a left one is its mirror image."""
    forearm = Rotation.from_euler("Z", bend_deg, degrees=True).apply(DOWN)
    mirror = np.array([1.0, 1.0, side.sign])
    arm = turn.apply(DOWN) * mirror, turn.apply(forearm) * mirror
    return float(movement_angle_deg(movement, side, AXES, *arm))


@given(
    plane_deg=st.floats(-30, 120), elevation_deg=st.floats(20, 160), axial_deg=st.floats(-90, 90)
)
def test_elevations_are_those_of_the_standard_in_every_plane(
    plane_deg: float, elevation_deg: float, axial_deg: float
) -> None:
    """The arm's direction in a sagittal or frontal plane: tan a = tan(elevation) sin(plane) or
    cos(plane); seen from above its plane of elevation is the horizontal adduction."""
    turn = humerus(plane_deg, elevation_deg, axial_deg)
    plane, elevation = math.radians(plane_deg), math.radians(elevation_deg)
    for side in Side:
        level = seen(Movement.HORIZONTAL_ADDUCTION, turn, side)
        assert level == pytest.approx(plane_deg, abs=1e-7)
        for movement, share, sign in (
            (Movement.FLEXION, math.sin(plane), 1),
            (Movement.EXTENSION, math.sin(plane), -1),
            (Movement.ABDUCTION, math.cos(plane), 1),
        ):
            wanted = math.degrees(math.atan2(math.sin(elevation) * share, math.cos(elevation)))
            off = (sign * seen(movement, turn, side) - wanted + 180.0) % 360.0 - 180.0
            assert off == pytest.approx(0.0, abs=1e-7)


@given(plane_deg=st.floats(-80, 80), axial_deg=st.floats(-100, 80), bend_deg=st.floats(60, 120))
def test_rotation_of_a_level_arm_is_the_third_angle_of_the_standard(
    plane_deg: float, axial_deg: float, bend_deg: float
) -> None:
    """Short of a level arm straight ahead, which leaves no forward direction to count from."""
    turn = humerus(plane_deg, 90.0, axial_deg)
    for side in Side:
        external = seen(Movement.EXTERNAL_ROTATION_90, turn, side, bend_deg)
        assert external == pytest.approx(-axial_deg, abs=1e-7)


@given(elevation_deg=st.floats(5, 175), axial_deg=st.floats(-100, 80))
def test_rotation_of_an_abducted_arm_is_the_third_angle_of_the_standard(
    elevation_deg: float, axial_deg: float
) -> None:
    turn = humerus(0.0, elevation_deg, axial_deg)
    for side in Side:
        external = seen(Movement.EXTERNAL_ROTATION_90, turn, side)
        assert external == pytest.approx(-axial_deg, abs=1e-7)


@given(plane_deg=st.floats(-90, 90), axial_deg=st.floats(-90, 90))
def test_with_the_arm_hanging_first_and_third_angle_add_up(
    plane_deg: float, axial_deg: float
) -> None:
    """There the standard is singular: only their sum is defined, and it is the rotation."""
    turn = humerus(plane_deg, 0.0, axial_deg)
    total_deg = -(plane_deg + axial_deg)
    for side in Side:
        external = seen(Movement.EXTERNAL_ROTATION_0, turn, side)
        off = (external - total_deg + 180.0) % 360.0 - 180.0
        assert off == pytest.approx(0.0, abs=1e-7)


@given(
    movement=st.sampled_from(ANGLES),
    side=st.sampled_from(Side),
    share=st.floats(0, 1),
    out_deg=st.floats(-15, 15),
    swung_deg=st.floats(-15, 15),
    turned=ball(),
)
def test_the_sticks_of_these_tests_are_at_their_angles(
    movement: Movement,
    side: Side,
    share: float,
    out_deg: float,
    swung_deg: float,
    turned: Rotation,
) -> None:
    """Whatever the arm does beside its movement, and wherever the camera is."""
    low, high = RANGE[movement]
    value = low + share * (high - low)
    way = Way(out_deg=out_deg, swung_deg=swung_deg, lean_right_deg=5.0, turn_left_deg=-8.0)
    placed, _ = joints(movement, value, side, Position.STANDING, way, MAN)
    at = {name: turned.apply(point) for name, point in placed.items()}
    axes = trunk_axes(
        *(at[f"{s}_{name}"] for name in ("SHOULDER", "HIP") for s in ("LEFT", "RIGHT"))
    )
    arm = [at[f"{side.name}_{name}"] for name in ("SHOULDER", "ELBOW", "WRIST")]
    upper, fore = unit(arm[1] - arm[0]), unit(arm[2] - arm[1])
    found = movement_angle_deg(movement, side, axes, upper, fore)
    # The risen shoulder turns the trunk's axes by a little.
    assert found == pytest.approx(value, abs=3.0)
    if np.linalg.norm(placed["LEFT_SHOULDER"] - placed["LEFT_HIP"]) == pytest.approx(
        np.linalg.norm(placed["RIGHT_SHOULDER"] - placed["RIGHT_HIP"]), abs=1e-12
    ):
        assert found == pytest.approx(value, abs=1e-6)


def test_a_pinhole_projects_as_its_field_of_view_says() -> None:
    camera = Pinhole.of((640, 480), 90.0)
    assert camera.focal_px == pytest.approx(320.0)
    edges = camera.slopes(np.array([[0.0, 240.0], [640.0, 240.0], [320.0, 560.0]]))
    assert edges == pytest.approx(np.array([[-1, 0], [1, 0], [0, 1]]))
    assert Pinhole.of((480, 640), 90.0).focal_px == pytest.approx(320.0)

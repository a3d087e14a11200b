"""The angles against SciPy's rotations and against closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial.transform import Rotation

from coach.domain.movement import Movement, Side, Unit
from coach.goniometry.angles import (
    elbow_flexion_deg,
    external_rotation_deg,
    movement_angle_deg,
    trunk_axes,
    unit,
)
from coach.goniometry.camera import Pinhole, frontal_rotation_deg

AXES = tuple(np.eye(3))  # X forward, Y up, Z right
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


@given(
    rotation_deg=st.floats(-60, 75),
    elbow_x_m=st.floats(-0.3, 0.5),
    depth_m=st.floats(1.2, 4.0),
    forearm_m=st.floats(0.2, 0.32),
)
def test_rotation_from_the_front_inverts_the_projection(
    rotation_deg: float, elbow_x_m: float, depth_m: float, forearm_m: float
) -> None:
    turn = math.radians(rotation_deg)
    wrist = (elbow_x_m + forearm_m * math.sin(turn)) / (depth_m - forearm_m * math.cos(turn))
    # Beyond the tangent ray from the camera two rotations share a picture.
    if rotation_deg + math.degrees(math.atan(wrist)) < 88:
        found = frontal_rotation_deg(elbow_x_m / depth_m, wrist, depth_m, forearm_m)
        assert found == pytest.approx(rotation_deg, abs=1e-4)


def test_a_pinhole_projects_as_its_field_of_view_says() -> None:
    camera = Pinhole.of((640, 480), 90.0)
    assert camera.focal_px == pytest.approx(320.0)
    edges = camera.slopes(np.array([[0.0, 240.0], [640.0, 240.0], [320.0, 560.0]]))
    assert edges == pytest.approx(np.array([[-1, 0], [1, 0], [0, 1]]))
    assert Pinhole.of((480, 640), 90.0).focal_px == pytest.approx(320.0)

"""The definitions of the true angles, against rotations made by scipy."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from tests.bench import tracking, truth
from tests.bench.skeleton import Array, turn, unit

X, Y, Z = np.eye(3)
SIGN = {"right": 1, "left": -1}


def joints(side: str, upper: Array, fore: Array, world: Rotation | None = None) -> truth.Joints:
    """Joint centres with the thorax along X forward, Y up, Z right, then turned as a whole."""
    s = SIGN[side]
    thorax = np.array([[0.0, 0.5, -0.17], [0.0, 0.5, 0.17]])
    hips = np.array([[0.0, 0.0, -0.1], [0.0, 0.0, 0.1]])
    shoulder = thorax[(s + 1) // 2] + np.array([0.01, 0.04, 0.02 * s])
    elbow = shoulder + 0.3 * unit(upper)
    wrist = elbow + 0.25 * unit(fore)
    shoulders, elbows, wrists = (np.zeros((2, 3)) for _ in range(3))
    for row in range(2):
        shoulders[row], elbows[row], wrists[row] = shoulder, elbow, wrist
    whole = (shoulders, elbows, wrists, hips, thorax)
    if world is None:
        return truth.Joints(*whole)
    return truth.Joints(*(world.apply(points) + np.array([0.3, -1.2, 2.0]) for points in whole))


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("angle_deg", [-50.0, 0.0, 37.0, 90.0, 150.0, 179.0, 190.0])
def test_flexion_and_extension_turn_about_the_lateral_axis(side: str, angle_deg: float) -> None:
    upper = Rotation.from_rotvec(np.radians(angle_deg) * Z).apply(-Y)
    pose = joints(side, upper, upper)
    assert truth.angle_deg("flexion", side, pose) == pytest.approx(angle_deg)
    if angle_deg < 180.0:
        assert truth.angle_deg("extension", side, pose) == pytest.approx(-angle_deg)


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("angle_deg", [-10.0, 0.0, 45.0, 100.0, 170.0, 185.0])
def test_abduction_goes_out_on_either_side(side: str, angle_deg: float) -> None:
    upper = Rotation.from_rotvec(np.radians(angle_deg) * -X * SIGN[side]).apply(-Y)
    assert truth.angle_deg("abduction", side, joints(side, upper, upper)) == pytest.approx(
        angle_deg
    )


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("angle_deg", [-60.0, 0.0, 25.0, 80.0])
@pytest.mark.parametrize("elbow_deg", [60.0, 90.0, 110.0])
def test_external_rotation_turns_the_forearm_outward(
    side: str, angle_deg: float, elbow_deg: float
) -> None:
    # Outward is to the right of the right arm and to the left of the left one.
    spin = Rotation.from_rotvec(np.radians(angle_deg) * -Y * SIGN[side])
    fore = spin.apply(Rotation.from_rotvec(np.radians(elbow_deg) * Z).apply(-Y))
    pose = joints(side, -Y, fore)
    assert truth.angle_deg("external-rotation-0", side, pose) == pytest.approx(angle_deg)
    assert truth.elbow_flexion_deg(side, pose) == pytest.approx(elbow_deg)
    assert fore[2] * SIGN[side] * angle_deg >= 0.0


@pytest.mark.parametrize("side", ["left", "right"])
def test_rotation_at_ninety_of_abduction_is_zero_with_the_forearm_forward(side: str) -> None:
    s = SIGN[side]
    forward = joints(side, s * Z, X)
    upward = joints(side, s * Z, Y)
    assert truth.angle_deg("external-rotation-90", side, forward) == pytest.approx(0.0)
    assert truth.angle_deg("external-rotation-90", side, upward) == pytest.approx(90.0)


@pytest.mark.parametrize("side", ["left", "right"])
def test_angles_do_not_depend_on_where_the_person_stands(side: str) -> None:
    rng = np.random.default_rng(3)
    for world in Rotation.random(20, rng=rng):
        upper, fore = unit(rng.normal(size=3)), unit(rng.normal(size=3))
        for movement in truth.MOVEMENTS:
            here = truth.angle_deg(movement, side, joints(side, upper, fore))
            there = truth.angle_deg(movement, side, joints(side, upper, fore, world))
            assert there == pytest.approx(here, abs=1e-6)


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(("plane_deg", "elevation_deg"), [(0, 40), (30, 120), (90, 75), (-60, 20)])
def test_elevation_and_plane_follow_the_y_x_y_order(
    side: str, plane_deg: float, elevation_deg: float
) -> None:
    # Thorax to humerus, right arm: plane of elevation about Y, then elevation about -X'.
    turned = Rotation.from_euler("YX", [plane_deg, -elevation_deg], degrees=True)
    upper = turned.apply(-Y) * (1, 1, SIGN[side])
    found = truth.elevation_deg(side, joints(side, upper, upper))
    assert found == pytest.approx((elevation_deg, plane_deg))


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("angle_deg", [-20.0, 0.0, 60.0, 90.0, 134.0])
@pytest.mark.parametrize("raised_deg", [-15.0, 0.0, 12.0])
def test_horizontal_adduction_goes_from_the_side_across(
    side: str, angle_deg: float, raised_deg: float
) -> None:
    s = SIGN[side]
    raised = Rotation.from_rotvec(np.radians(raised_deg) * -s * X).apply(s * Z)
    upper = Rotation.from_rotvec(np.radians(angle_deg) * s * Y).apply(raised)
    pose = joints(side, upper, upper)
    assert truth.angle_deg("horizontal-adduction", side, pose) == pytest.approx(angle_deg)
    if angle_deg > 90.0:
        assert upper[2] * s < 0.0


@pytest.mark.parametrize(
    ("height", "ratio"), [(0.0, 0.0), (-0.25, 0.5), (-0.5, 1.0), (-0.62, 1.24)]
)
def test_the_reach_ratio_is_the_height_along_the_back(height: float, ratio: float) -> None:
    # C7 in the origin and the iliac spines 50 cm below; the whole turned and moved anyhow.
    line = np.array([[0.0, 0.0, 0.0], [0.0, -0.5, 0.0]])
    wrists = np.array([[-0.07, 0.3, 0.2], [-0.05, height, 0.06]])
    world = Rotation.from_rotvec([0.4, -1.0, 0.3])
    moved = [world.apply(points) + np.array([1.0, 2.0, -0.5]) for points in (line, wrists)]
    nobody = np.zeros((2, 3))
    pose = truth.Joints(nobody, nobody, moved[1], nobody, nobody, moved[0])
    assert truth.reach_ratio("right", pose) == pytest.approx(ratio)


def test_a_shrug_does_not_tilt_the_trunk() -> None:
    low = joints("right", -Y, -Y)
    shrugged = truth.Joints(
        low.shoulders_m + 0.05 * Y, low.elbows_m, low.wrists_m, low.hips_m, low.thorax_m
    )
    assert truth.thorax_axes(shrugged) == pytest.approx(truth.thorax_axes(low))


def test_turn_is_the_rotation_of_scipy() -> None:
    axis = unit(np.array([1.0, -2.0, 0.5]))
    assert turn(axis, 33.0) == pytest.approx(
        Rotation.from_rotvec(np.radians(33.0) * axis).as_matrix()
    )


def test_an_unknown_movement_is_refused() -> None:
    with pytest.raises(ValueError, match="unknown movement"):
        truth.angle_deg("shrug", "left", joints("left", -Y, -Y))


@pytest.mark.parametrize("movement", truth.MOVEMENTS)
@pytest.mark.parametrize("side", ["left", "right"])
def test_a_mirrored_picture_shows_the_same_angle_of_the_other_arm(movement: str, side: str) -> None:
    random = np.random.default_rng(2)
    other = {"left": "right", "right": "left"}[side]
    # Both arms are alike in ``joints``: these are not.
    pose = joints(side, random.normal(size=3), random.normal(size=3), Rotation.random(rng=random))
    pose.elbows_m[int(other == "right")] += random.normal(size=3)
    points, axes = pose.stacked()[None], truth.thorax_axes(pose)[None]
    seen = tracking.mirror_image(
        {
            "side": side,
            "size_px": np.array([640, 480]),
            "joints_px": 100.0 * points[..., :2],
            "joints_camera_m": points,
            "thorax_axes_camera": axes,
        }
    )
    mirrored = truth.Joints(*np.split(seen["joints_camera_m"][0], 6))
    assert seen["side"] == other
    assert truth.angle_deg(movement, other, mirrored) == pytest.approx(
        truth.angle_deg(movement, side, pose)
    )
    assert seen["thorax_axes_camera"][0] == pytest.approx(truth.thorax_axes(mirrored))
    px = 100.0 * seen["joints_camera_m"][..., :2]
    assert seen["joints_px"][:, :10] == pytest.approx(px[:, :10] + np.array([640.0, 0.0]))


def test_a_mirrored_file_is_called_after_the_arm_it_shows() -> None:
    name = "flexion_standing_side_right_03_elm"
    assert tracking.mirrored_name(name) == "flexion_standing_side_left_03_elm_m"
    assert tracking.mirrored_name(f"{name}_r2") == "flexion_standing_side_left_03_elm_m_r2"

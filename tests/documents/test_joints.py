"""Joint centres with known angles, seen by a nominal camera, give those angles back."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from coach.documents.joints import (
    Axis,
    JointTable,
    Stand,
    Viewpoint,
    landmark_table,
    level_viewpoint,
    read_joints,
)
from coach.documents.landmarks import read_landmarks, write_landmarks
from coach.domain.fault import Fault
from coach.domain.movement import Side
from coach.domain.pose import Landmark

L = Landmark
POINTS = (
    L.LEFT_SHOULDER, L.RIGHT_SHOULDER, L.LEFT_ELBOW, L.RIGHT_ELBOW, L.LEFT_WRIST, L.RIGHT_WRIST,
    L.LEFT_HIP, L.RIGHT_HIP,
)  # fmt: skip


def body(abduction_deg: np.ndarray, flexion_deg: np.ndarray) -> JointTable:
    """Someone who faces +x with +z up, +y their left; the left arm abducts, the right one flexes.

    One row a pair of angles, ten a second.
    """
    rows = np.zeros((len(abduction_deg), len(POINTS), 3))
    a, f = np.radians(abduction_deg), np.radians(flexion_deg)
    zero = np.zeros(len(a))
    arms = {
        Side.LEFT: (0.2, np.stack([zero, np.sin(a), -np.cos(a)], axis=1)),
        Side.RIGHT: (-0.2, np.stack([np.sin(f), zero, -np.cos(f)], axis=1)),
    }
    for side, (y, down_the_arm) in arms.items():
        k = 0 if side is Side.LEFT else 1
        shoulder = np.array([0.0, y, 1.45])
        rows[:, 0 + k] = shoulder
        rows[:, 2 + k] = shoulder + 0.30 * down_the_arm
        rows[:, 4 + k] = shoulder + 0.55 * down_the_arm
        rows[:, 6 + k] = (0.0, y / 2, 0.95)
    return JointTable(POINTS, np.arange(len(a)) / 10, rows)


ANGLES_DEG = np.linspace(0.0, 160.0, 17)


def between_deg(arm: np.ndarray, trunk_up: np.ndarray) -> np.ndarray:
    cosine = np.einsum("...i,...i->...", arm, -trunk_up)
    return np.degrees(
        np.arccos(cosine / np.linalg.norm(arm, axis=-1) / np.linalg.norm(trunk_up, axis=-1))
    )


def trunk_up(points: np.ndarray) -> np.ndarray:
    return (points[:, 0] + points[:, 1] - points[:, 6] - points[:, 7]) / 2


@pytest.mark.parametrize(
    ("stand", "shoulder", "side"), [(Stand.FRONT, 0, Side.LEFT), (Stand.RIGHT, 1, Side.RIGHT)]
)
def test_angles_come_back_from_picture_and_metres(stand: Stand, shoulder: int, side: Side) -> None:
    """From the front for the arm that abducts, from the right for the one that flexes."""
    joints = body(ANGLES_DEG, ANGLES_DEG)
    table = landmark_table(joints, level_viewpoint(joints, Axis.Z, stand, 2.5, 63.0))
    for points in (table.image_px, table.world_m):
        arm = points[:, shoulder + 2] - points[:, shoulder]
        # Seen from the side the trunk's middle is farther away than the arm, in the same direction.
        assert between_deg(arm, trunk_up(points)) == pytest.approx(ANGLES_DEG, abs=1e-6)
    outward = table.image_px[8, shoulder + 2, 0] - table.image_px[8, shoulder, 0]
    # In front their left is picture right; from the right they face picture right.
    assert outward > 0, side
    behind = Stand.BACK if stand is Stand.FRONT else Stand.LEFT
    table = landmark_table(joints, level_viewpoint(joints, Axis.Z, behind, 2.5, 63.0))
    assert table.image_px[8, shoulder + 2, 0] < table.image_px[8, shoulder, 0]


def test_any_frame_and_place_of_a_recording_gives_the_same_table() -> None:
    joints = body(ANGLES_DEG, ANGLES_DEG)
    expected = landmark_table(joints, level_viewpoint(joints, Axis.Z, Stand.FRONT, 3.0, 63.0))
    swapped = np.array([[0.0, 1, 0], [0, 0, 1], [1, 0, 0]])
    for turn, up in [
        (swapped, Axis.Y),
        (np.diag([1.0, -1, -1]), Axis.MINUS_Z),
        (Rotation.from_euler("z", 70, degrees=True).as_matrix(), Axis.Z),
    ]:
        assert np.linalg.det(turn) == pytest.approx(1.0)
        moved = JointTable(POINTS, joints.time_s, joints.points_m @ turn.T + [3.0, -7.0, 2.0])
        table = landmark_table(moved, level_viewpoint(moved, up, Stand.FRONT, 3.0, 63.0))
        np.testing.assert_allclose(table.image_px, expected.image_px, atol=1e-9)
        np.testing.assert_allclose(table.world_m, expected.world_m, atol=1e-9)


def test_the_picture_is_that_of_a_pinhole() -> None:
    """Against a projection written out with SciPy's rotations, for cameras that are not level."""
    r = np.random.default_rng(1)
    joints = body(ANGLES_DEG, ANGLES_DEG)
    for _ in range(20):
        turn = Rotation.from_euler("xyz", r.uniform(-0.3, 0.3, 3))
        level = np.array([[0.0, 1, 0], [0, 0, -1], [-1, 0, 0]])
        seen = turn * Rotation.from_matrix(level)
        eye = np.array([3.0, 0.2, 1.1])
        table = landmark_table(joints, Viewpoint(seen.as_matrix(), eye, 500.0))
        x, y, z = np.moveaxis(seen.apply((joints.points_m - eye).reshape(-1, 3)), 1, 0)
        drawn = np.stack([320 + 500 * x / z, 240 + 500 * y / z], axis=1)
        np.testing.assert_allclose(table.image_px.reshape(-1, 2), drawn)
        lengths = np.linalg.norm(table.world_m[:, 0] - table.world_m[:, 2], axis=1)
        assert lengths == pytest.approx(0.30)
        assert table.world_m[:, 6] + table.world_m[:, 7] == pytest.approx(0.0, abs=1e-12)


def test_the_person_is_in_the_middle_at_the_distance() -> None:
    joints = body(ANGLES_DEG, ANGLES_DEG)
    table = landmark_table(joints, level_viewpoint(joints, Axis.Z, Stand.FRONT, 2.5, 60.0))
    shoulders, hips = table.image_px[0, :2], table.image_px[0, 6:]
    middle = (shoulders.mean(axis=0) + hips.mean(axis=0)) / 2
    assert middle == pytest.approx([320.0, 240.0])
    focal_px = 320 / math.tan(math.radians(30))
    assert shoulders[0, 0] - shoulders[1, 0] == pytest.approx(focal_px * 0.4 / 2.5)


def test_what_is_missing_stays_missing() -> None:
    joints = body(ANGLES_DEG, ANGLES_DEG)
    points = joints.points_m.copy()
    points[3, 2] = np.nan
    points[5, 6] = np.nan
    points[7, 4, 0] = 100.0  # behind the camera
    joints = JointTable(POINTS, joints.time_s, points)
    viewpoint = level_viewpoint(joints, Axis.Z, Stand.FRONT, 2.5, 63.0)
    table = read_landmarks(write_landmarks(landmark_table(joints, viewpoint)), "the table")
    assert np.isnan(table.image_px[3, 2]).all()
    assert np.isnan(table.world_m[3, 2]).all()
    assert np.isfinite(table.image_px[3, [0, 1, 3, 4, 5, 6, 7]]).all()
    assert np.isnan(table.world_m[5]).all()  # without a hip there is no origin
    assert np.isnan(table.image_px[7, 4]).all()
    assert np.isnan(table.visibility).all()


def csv_of(joints: JointTable) -> bytes:
    names = [f"{p.name.lower()}_{axis}_m" for p in joints.landmarks for axis in "xyz"]
    rows = [",".join(["time_s", *names])]
    for time_s, points in zip(joints.time_s, joints.points_m, strict=True):
        cells = ["" if math.isnan(v) else f"{v:.6f}" for v in points.ravel()]
        rows.append(",".join([f"{time_s:.3f}", *cells]))
    return ("\n".join(rows) + "\n").encode()


def test_a_table_of_joints_is_read() -> None:
    joints = body(ANGLES_DEG, ANGLES_DEG)
    joints.points_m[2, 3] = np.nan
    back = read_joints(csv_of(joints), "joints.csv")
    assert back.landmarks == POINTS
    np.testing.assert_allclose(back.points_m, joints.points_m, atol=1e-6)
    np.testing.assert_allclose(back.time_s, joints.time_s)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda text: text.replace("left_hip_x_m", "left_hop_x_m"), "left_hop_x_m"),
        (lambda text: text.replace("left_hip_x_m", "left_knee_x_m"), "no column left_hip_x_m"),
        (lambda text: text.replace("left_hip_x_m", "right_hip_x_m"), "twice"),
        (lambda text: text.replace("time_s", "when"), "when"),
        (lambda text: text.replace("0.100,", "oops,", 1), "line 3"),
        (lambda text: text.replace("0.100,", "9.000,", 1), "backwards"),
        (lambda text: text.replace("1.450000", "1450.0", 1), "1450"),
        (lambda text: text.partition("\n")[0] + "\n", "no rows"),
        (lambda text: text.replace(",1.450000", ","), "left_shoulder"),
    ],
)
def test_what_is_wrong_is_said_in_a_sentence(change: Callable[[str], str], said: str) -> None:
    text = csv_of(body(ANGLES_DEG, ANGLES_DEG)).decode()
    assert change(text) != text
    with pytest.raises(Fault, match=r"^joints.csv") as refused:
        read_joints(change(text).encode(), "joints.csv")
    assert said in str(refused.value)
    assert "\n" not in str(refused.value)


def test_an_axis_that_is_not_up_is_refused() -> None:
    joints = body(ANGLES_DEG, ANGLES_DEG)
    with pytest.raises(Fault, match="ceiling"):
        level_viewpoint(joints, Axis.Y, Stand.FRONT, 2.5, 63.0)

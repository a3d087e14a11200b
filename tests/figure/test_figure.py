"""The drawn figure against the definitions of the angles, and against what a body cannot do."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from coach.catalogue import catalogue
from coach.domain.exercise import Bend, Exercise
from coach.domain.movement import Movement, Position, Side
from coach.figure import stage_of
from coach.figure.motion import Motion, smooth_step
from coach.figure.rotation import arm_directions
from coach.figure.skeleton import RIGHT, joints_of
from coach.goniometry.angles import (
    elbow_flexion_deg,
    external_rotation_deg,
    movement_angle_deg,
    trunk_axes,
    unit,
)

AXES = np.eye(3)
"""Trunk axes of someone upright: columns forward, up, right."""
X, Y = np.array([1.0, 0.0, 0.0]), np.array([0.0, 1.0, 0.0])
ALL = catalogue().all
NAMES = [exercise.exercise for exercise in ALL]


@pytest.mark.parametrize(
    ("movement", "plane", "sign"),
    [
        (Movement.FLEXION, 90.0, 1.0),
        (Movement.EXTENSION, -90.0, 1.0),
        (Movement.ABDUCTION, 0.0, 1.0),
    ],
)
@pytest.mark.parametrize("elevation", [5.0, 30.0, 60.0, 75.0])
def test_elevation_in_its_plane_is_the_movement(
    movement: Movement, plane: float, sign: float, elevation: float
) -> None:
    upper, fore = arm_directions(plane, elevation, 0.0, 0.0)
    angle = movement_angle_deg(movement, Side.RIGHT, AXES, upper, fore)
    assert float(angle) == pytest.approx(sign * elevation, abs=1e-9)


@pytest.mark.parametrize("rotation", [-60.0, -20.0, 0.0, 35.0, 80.0])
@pytest.mark.parametrize("elevation", [0.0, 45.0, 90.0])
def test_rotation_is_that_of_the_definition(rotation: float, elevation: float) -> None:
    upper, fore = arm_directions(0.0, elevation, rotation, 90.0)
    turned = external_rotation_deg(upper, fore, X, Side.RIGHT)
    assert float(turned) == pytest.approx(rotation, abs=1e-9)


@pytest.mark.parametrize("elbow", [0.0, 30.0, 90.0, 140.0])
def test_the_elbow_bends_as_asked(elbow: float) -> None:
    upper, fore = arm_directions(40.0, 50.0, 20.0, elbow)
    assert float(elbow_flexion_deg(upper, fore)) == pytest.approx(elbow, abs=1e-6)


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_a_loop_closes_and_its_limbs_keep_their_lengths(exercise: Exercise) -> None:
    motion = Motion(exercise.demonstration)
    assert 5.0 <= motion.period_s <= 12.0
    assert motion.at(0.0) == pytest.approx(motion.at(motion.period_s), abs=1e-9)
    lengths = []
    for time_s in np.linspace(0.0, motion.period_s, 25):
        joints = joints_of(motion.at(float(time_s)), exercise.position)
        for first, last in (("shoulder", "elbow"), ("elbow", "wrist")):
            limbs = getattr(joints, last) - getattr(joints, first)
            lengths.append(np.linalg.norm(limbs, axis=1))
    upper, fore = np.array(lengths[::2]), np.array(lengths[1::2])
    assert np.ptp(upper) < 1e-9
    assert np.ptp(fore) < 1e-9


def test_mirrored_is_the_mirror_image() -> None:
    joints = joints_of(np.array([30.0, 60.0, 10.0, 40.0, 0, 0, 0, 0, 0, 0, 0]), Position.STANDING)
    twice = joints.mirrored().mirrored()
    assert twice.wrist == pytest.approx(joints.wrist)
    assert joints.mirrored().wrist[1 - RIGHT] == pytest.approx(
        joints.wrist[RIGHT] * np.array([1.0, 1.0, -1.0])
    )


def test_the_step_is_of_least_jerk() -> None:
    """Flash and Hogan 1985: at rest at both ends, half way at half time, 1.875 times as fast."""
    assert [smooth_step(t) for t in (0.0, 0.5, 1.0)] == pytest.approx([0.0, 0.5, 1.0])
    step = 1e-5
    assert (smooth_step(step) - smooth_step(0.0)) / step == pytest.approx(0.0, abs=1e-6)
    fastest = (smooth_step(0.5 + step) - smooth_step(0.5 - step)) / (2 * step)
    assert fastest == pytest.approx(1.875, abs=1e-6)


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_every_drawing_lies_in_its_picture(exercise: Exercise, side: Side) -> None:
    stage = stage_of(exercise, side)
    for time_s in np.linspace(0.0, stage.period_s, 7):
        drawing = stage.drawing(float(time_s))
        assert drawing.shapes
        points = [drawing.hand, *drawing.path]
        for shape in drawing.shapes:
            points += [*shape.polygon, *(p for s in shape.strokes for p in (s.begin, s.end))]
        assert (np.array(points) >= 0.0).all()
        assert (np.array(points) <= np.array(stage.size)).all()
    assert max(stage.size) == pytest.approx(1.0)


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_the_left_picture_is_the_right_one_mirrored(exercise: Exercise) -> None:
    right, left = (stage_of(exercise, side) for side in (Side.RIGHT, Side.LEFT))
    for time_s in (0.0, right.key_s):
        pairs = zip(right.drawing(time_s).shapes, left.drawing(time_s).shapes, strict=True)
        for one, other in pairs:
            assert one.role is other.role
            for a, b in zip(one.strokes, other.strokes, strict=True):
                assert b.begin == pytest.approx((right.size[0] - a.begin[0], a.begin[1]))


@pytest.mark.parametrize("plane", [-80.0, -30.0, 0.0, 40.0, 90.0, 120.0])
@pytest.mark.parametrize("elevation", [10.0, 80.0, 150.0])
@pytest.mark.parametrize("rotation", [-70.0, 0.0, 50.0])
def test_the_arm_turns_as_in_the_angles_of_the_isb(
    plane: float, elevation: float, rotation: float
) -> None:
    """Wu et al. 2005, 2.4.7: plane, negative elevation and axial rotation about Y, X, Y in turn.

    Here the rotation is told from an arm lifted without a twist: axially, it is less the plane.
    """
    turn = Rotation.from_euler("YXY", [plane, -elevation, -plane + rotation], degrees=True)
    upper, fore = arm_directions(plane, elevation, -rotation, 90.0)
    assert upper == pytest.approx(turn.apply(-Y), abs=1e-9)
    assert fore == pytest.approx(turn.apply(X), abs=1e-9)


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize(("lean", "bend"), [(0.0, 0.0), (15.0, 0.0), (0.0, 50.0)])
@pytest.mark.parametrize("position", [Position.STANDING, Position.SUPINE, Position.DOORWAY])
def test_the_goniometry_reads_the_drawn_joints_as_they_were_posed(
    side: Side, lean: float, bend: float, position: Position
) -> None:
    angles = np.array([0.0, 70.0, 25.0, 90.0, 0, 0, 0, 0, lean, 0, bend])
    joints = joints_of(angles, position)
    arm = RIGHT if side is Side.RIGHT else 1 - RIGHT
    if side is Side.LEFT:
        joints = joints.mirrored()
    axes = trunk_axes(*joints.shoulder, *joints.hip)
    upper, fore = unit(joints.elbow[arm] - joints.shoulder[arm]), joints.wrist - joints.elbow
    fore = unit(fore[arm])
    read = [
        float(movement_angle_deg(movement, side, axes, upper, fore))
        for movement in (Movement.ABDUCTION, Movement.EXTERNAL_ROTATION_0)
    ]
    assert read == pytest.approx([70.0, 25.0], abs=1e-6)
    assert float(elbow_flexion_deg(upper, fore)) == pytest.approx(90.0, abs=1e-6)


def test_the_planted_hand_stays_on_the_door_frame_while_the_body_turns() -> None:
    stage = stage_of(catalogue().get("doorway-rotation-low"), Side.LEFT)
    hands = np.stack([stage.joints(t).hand[1 - RIGHT] for t in np.linspace(0, stage.period_s, 20)])
    forward = np.stack([stage.joints(t).forward for t in (0.0, stage.key_s)])
    assert np.ptp(hands[:, [0, 2]], axis=0) == pytest.approx(0.0, abs=1e-9)
    assert np.degrees(np.arccos(forward[0] @ forward[1])) == pytest.approx(35.0, abs=1e-6)


@pytest.mark.parametrize("elevation", [60.0, 150.0])
def test_an_arm_that_rises_from_hanging_stays_in_its_plane(elevation: float) -> None:
    bends = [Bend(at_s=0, arm=(0, 0, 0, 0)), Bend(at_s=4, arm=(90, elevation, 0, 0))]
    motion = Motion(bends)
    for time_s in (1.0, 2.0, 3.0):
        upper = arm_directions(*motion.at(time_s)[:4])[0]
        assert upper[2] == pytest.approx(0.0, abs=1e-12)
    assert motion.at(2.0)[1] == pytest.approx(elevation / 2)


@pytest.mark.parametrize("name", ["cross-body-stretch", "side-lying-rotation", "armpit-squeeze"])
def test_the_helping_hand_is_on_the_stiff_arm(name: str) -> None:
    stage = stage_of(catalogue().get(name), Side.RIGHT)
    joints = stage.joints(stage.key_s)
    shoulder, elbow, wrist = (
        getattr(joints, name)[RIGHT] for name in ("shoulder", "elbow", "wrist")
    )
    points = np.concatenate([np.linspace(shoulder, elbow, 30), np.linspace(elbow, wrist, 30)])
    assert np.linalg.norm(points - joints.hand[1 - RIGHT], axis=1).min() < 0.10

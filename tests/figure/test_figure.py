"""The drawn figure against the definitions of the angles, and against what a body cannot do."""

from __future__ import annotations

import numpy as np
import pytest

from coach.catalogue import catalogue
from coach.domain.exercise import Exercise
from coach.domain.movement import Movement, Position, Side
from coach.figure import stage_of
from coach.figure.motion import Motion, smooth_step
from coach.figure.rotation import arm_directions
from coach.figure.skeleton import RIGHT, joints_of
from coach.goniometry.angles import elbow_flexion_deg, external_rotation_deg, movement_angle_deg

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
        points = np.concatenate([np.atleast_2d(drawing.hand)])
        assert np.isfinite(points).all()
        assert ((points > -0.1) & (points < 1.1)).all()

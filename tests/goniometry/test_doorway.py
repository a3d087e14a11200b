"""Rotation in a doorway: how far the trunk has turned away from the arm, against true turns."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Landmark, Pose
from coach.goniometry.doorway import Doorway
from coach.goniometry.sight import Sight
from tests.goniometry.stick_body import AT_JOINTS, Array, Seen, raised
from tests.goniometry.ways import read, taken

MOVEMENT, POSITION, VIEW = Movement.EXTERNAL_ROTATION_0, Position.DOORWAY, View.FRONT
FLAT = 1.0 / 1.35
"""Of a turn of the trunk the metric points show this share from in front (``TURN_GAIN``)."""


def turning(values: Array, side: Side, turned_deg: float = 0.0) -> list[Pose]:
    """Sticks from far away, so that breadths are narrower by the cosine and by nothing else."""
    seen = Seen(
        VIEW, distance_m=40.0, field_of_view_deg=4.0, depth_shown=FLAT, turned_deg=turned_deg
    )
    poses = taken(MOVEMENT, values, side, seen, POSITION, marks=AT_JOINTS)
    return [pose for _, pose in poses if pose is not None]


def rotations(poses: list[Pose], side: Side, resting: int) -> Array:
    sights = [Sight.of(pose, side) for pose in poses]
    doorway = Doorway.of(sights, sights[:resting])
    return np.array([doorway.rotation_deg(sight) for sight in sights])


@pytest.mark.parametrize("side", Side)
def test_the_turn_is_the_rotation(side: Side) -> None:
    """Within a degree where the breadth shows it, within three where the metric points do."""
    values = raised(0.0, 70.0, 5, 13, 3)
    found = rotations(turning(values, side), side, 5)
    assert found[:5] == pytest.approx(np.zeros(5), abs=0.5)
    assert found == pytest.approx(values, abs=3.0)
    beyond = values > 22.0
    assert found[beyond] == pytest.approx(values[beyond], abs=1.0)


@pytest.mark.parametrize("side", Side)
def test_turning_toward_the_arm_is_negative(side: Side) -> None:
    values = np.concatenate([np.zeros(8), np.linspace(-5.0, -40.0, 8)])
    found = rotations(turning(values, side), side, 8)
    assert found == pytest.approx(values, abs=3.0)


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize("turned_deg", [-9.0, 9.0])
def test_where_the_camera_stands_is_taken_off(side: Side, turned_deg: float) -> None:
    """From one side the trunk comes square only on its way, or never by nine degrees: of the full
    breadth that leaves one per cent unseen."""
    values = raised(0.0, 50.0, 5, 10, 3)
    found = rotations(turning(values, side, turned_deg=turned_deg), side, 5)
    assert found == pytest.approx(values, abs=6.0)
    assert found[-1] - found[0] == pytest.approx(50.0, abs=5.0)


def test_the_arm_itself_is_not_used() -> None:
    """The frame hides it."""
    side = Side.LEFT
    poses = turning(raised(0.0, 40.0, 5, 5, 5), side)
    rows = [Landmark.LEFT_ELBOW, Landmark.LEFT_WRIST, Landmark.LEFT_INDEX]
    hidden = []
    for pose in poses:
        image, world = pose.image_px.copy(), pose.world_m.copy()
        image[rows] += np.random.default_rng(1).normal(0.0, 80.0, (3, 2))
        world[rows] += np.random.default_rng(2).normal(0.0, 0.3, (3, 3))
        hidden.append(replace(pose, image_px=image, world_m=world))
    assert rotations(hidden, side, 5) == pytest.approx(rotations(poses, side, 5))
    clean, without = (
        read([(t / 4, pose) for t, pose in enumerate(each)], MOVEMENT, side, VIEW, POSITION)
        for each in (poses, hidden)
    )
    for one, other in zip(clean.readings, without.readings, strict=True):
        assert one.value == pytest.approx(other.value)


def test_a_short_rest_shows_the_full_breadth() -> None:
    """Square to the camera for one frame in twelve, and turned for all the others."""
    side = Side.RIGHT
    values = raised(0.0, 50.0, 5, 5, 50)
    found = rotations(turning(values, side), side, 5)
    assert found == pytest.approx(values, abs=3.0)


def test_one_frame_that_is_too_wide_changes_little() -> None:
    """A hundredth of the frames may be as wide as they like."""
    side = Side.RIGHT
    values = raised(0.0, 45.0, 40, 40, 40)
    poses = turning(values, side)
    image = poses[20].image_px.copy()
    image[Landmark.RIGHT_SHOULDER, 0] -= 60.0
    wide = [replace(pose, image_px=image) if t == 20 else pose for t, pose in enumerate(poses)]
    found = rotations(wide, side, 40)
    others = np.arange(len(values)) != 20
    assert found[others] == pytest.approx(values[others], abs=3.0)


def test_a_slow_turn_is_no_rest() -> None:
    """Somebody who begins to turn after one second has not been still for two."""
    side = Side.LEFT
    values = raised(0.0, 22.0, 9, 10, 6)
    seen = Seen(VIEW, depth_shown=FLAT)
    recording = read(
        taken(MOVEMENT, values, side, seen, POSITION, rate_hz=9.0), MOVEMENT, side, VIEW, POSITION
    )
    assert recording.calibration.state == "moving"
    assert recording.readings[0].value == pytest.approx(0.0, abs=2.0)

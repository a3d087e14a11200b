"""External rotation with the arm at the side, seen from the front.

Two views of the same forearm are weighed. In the picture the forearm's sideways reach, as a share
of its length, gives the rotation by ``frontal_rotation_deg``; it is true to the person's range but
takes any turn of the trunk for rotation. The metric points know about half of the trunk's turn and
compress a wide rotation by about a third. So the metric reading counts more near zero, the
picture's more at the end of the range.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from coach.goniometry.angles import external_rotation_deg, trunk_axes, unit
from coach.goniometry.camera import Pinhole, frontal_rotation_deg
from coach.goniometry.memory import NO_SAMPLES, Level
from coach.goniometry.sight import Sight

FOREARM = 0.82
"""Elbow to wrist over shoulder to elbow. Segment lengths of 0.146 and 0.186 of body height give
0.785 (Winter, Biomechanics and Motor Control of Human Movement, from memory); the pose model's
upper arm is shorter than that between joint centres by a few per cent (tuning bodies)."""
PICTURE_WEIGHT = (0.4, 0.7)
"""Of the picture's reading near zero and from 40 degrees on (tuning bodies)."""
_WEIGHT_FROM_DEG, _WEIGHT_SPAN_DEG = 5.0, 35.0


@dataclass(frozen=True, slots=True)
class Rotation:
    """What is known of the arm: its upper part over the trunk's length, both in the picture."""

    upper_arm: Level = NO_SAMPLES

    def seen(self, time_s: float, sight: Sight) -> Rotation:
        """Learn from one more frame."""
        return replace(self, upper_arm=self.upper_arm.seen(time_s, sight.upper_arm_share))


NOTHING_KNOWN = Rotation()


def rotation_deg(sight: Sight, known: Rotation, camera: Pinhole) -> float:
    """Read external rotation from one frame, degrees."""
    picture = picture_rotation_deg(sight, known, camera)
    metric = metric_rotation_deg(sight)
    middle = (picture + metric) / 2
    share = min(1.0, max(0.0, (middle - _WEIGHT_FROM_DEG) / _WEIGHT_SPAN_DEG))
    weight = PICTURE_WEIGHT[0] + (PICTURE_WEIGHT[1] - PICTURE_WEIGHT[0]) * share
    return weight * picture + (1 - weight) * metric


def picture_rotation_deg(sight: Sight, known: Rotation, camera: Pinhole) -> float:
    """Rotation from the forearm's reach in the picture, the trunk taken to face the camera."""
    share = known.upper_arm.median or sight.upper_arm_share
    forearm_px = FOREARM * share * sight.trunk_px
    outward = -sight.side.sign
    elbow = float(camera.slopes(sight.near.elbow_px)[0]) * outward
    wrist = float(camera.slopes(sight.near.wrist_px)[0]) * outward
    # The elbow's depth over the forearm's length is the focal length over its length in pixels.
    return frontal_rotation_deg(elbow, wrist, camera.focal_px / forearm_px, 1.0)


def metric_rotation_deg(sight: Sight) -> float:
    """Rotation from the metric points by its definition."""
    left, right = sight.left_and_right
    axes = trunk_axes(left.shoulder_m, right.shoulder_m, left.hip_m, right.hip_m)
    near = sight.near
    angle = external_rotation_deg(
        unit(near.elbow_m - near.shoulder_m), unit(near.wrist_m - near.elbow_m), axes[0], sight.side
    )
    return float(angle) if math.isfinite(angle) else 0.0

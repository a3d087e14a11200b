"""External rotation with the arm at the side, seen from the front.

Two views of the same forearm are joined. The metric points give the rotation against the trunk
well as long as the forearm points roughly ahead, and compress it by about a third at the end of
the range. In the picture the forearm's sideways reach as a share of its length gives the rotation
by ``frontal_rotation_deg``, true to the range, but every degree of the trunk's turn adds one. So
the picture is set by the metric reading while the forearm points ahead (which takes out the turn
the person stands in), later turning is taken from the metric points' yaw, and the reading goes
over from the metric to the picture's as the forearm leaves the middle.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from coach.goniometry.angles import external_rotation_deg, trunk_axes, unit
from coach.goniometry.camera import Pinhole, frontal_rotation_deg
from coach.goniometry.memory import NO_SAMPLES, Level
from coach.goniometry.sight import Sight

FOREARM = 0.68
"""Elbow to wrist over shoulder to shoulder, between joint centres: 0.69, SD 0.03, over the tuning
bodies in the picture. The forearm is 0.146 of body height (Winter, Biomechanics and Motor Control
of Human Movement, from memory)."""
AHEAD_DEG = 25.0
"""Metric rotation within which the forearm points ahead."""
_LEAVES_DEG, _LEFT_DEG = 5.0, 30.0


@dataclass(frozen=True, slots=True)
class Rotation:
    """What earlier frames taught.

    ``breadth``: shoulder line over trunk, in the picture. ``offset_deg`` and ``yaw_deg``: how far
    the metric reading lies above the picture's, and the trunk's yaw then, while the forearm
    pointed ahead.
    """

    breadth: Level = NO_SAMPLES
    offset_deg: Level = NO_SAMPLES
    yaw_deg: Level = NO_SAMPLES

    def seen(self, time_s: float, sight: Sight, camera: Pinhole) -> Rotation:
        """Learn from one more frame."""
        known = replace(self, breadth=self.breadth.seen(time_s, sight.breadth))
        metric = metric_rotation_deg(sight)
        if abs(metric) > AHEAD_DEG:
            return known
        offset = metric - picture_rotation_deg(sight, known, camera)
        return replace(
            known,
            offset_deg=known.offset_deg.seen(time_s, offset),
            yaw_deg=known.yaw_deg.seen(time_s, sight.yaw_deg),
        )


NOTHING_KNOWN = Rotation()


def rotation_deg(sight: Sight, known: Rotation, camera: Pinhole) -> float:
    """Read external rotation from one frame, degrees."""
    metric = metric_rotation_deg(sight)
    offset, yaw = known.offset_deg.median, known.yaw_deg.median
    picture = picture_rotation_deg(sight, known, camera)
    if offset is not None and yaw is not None:
        picture += offset + sight.side.sign * (sight.yaw_deg - yaw)
    share = min(1.0, max(0.0, (metric - _LEAVES_DEG) / (_LEFT_DEG - _LEAVES_DEG)))
    return share * picture + (1 - share) * metric


def picture_rotation_deg(sight: Sight, known: Rotation, camera: Pinhole) -> float:
    """Rotation from the forearm's reach in the picture, the trunk taken to face the camera."""
    breadth = known.breadth.median or sight.breadth
    forearm_px = FOREARM * breadth * sight.trunk_px
    outward = -sight.side.sign
    elbow = float(camera.slopes(sight.near.elbow_px)[0]) * outward
    wrist = float(camera.slopes(sight.near.wrist_px)[0]) * outward
    # The elbow's depth over the forearm's length is the focal length over its length in pixels.
    return frontal_rotation_deg(elbow, wrist, camera.focal_px / forearm_px, 1.0)


def metric_rotation_deg(sight: Sight) -> float:
    """Rotation from the metric points by its definition; NaN where they do not give one."""
    left, right = sight.left_and_right
    axes = trunk_axes(left.shoulder_m, right.shoulder_m, left.hip_m, right.hip_m)
    near = sight.near
    upper_arm, forearm = unit(near.elbow_m - near.shoulder_m), unit(near.wrist_m - near.elbow_m)
    return float(external_rotation_deg(upper_arm, forearm, axes[0], sight.side))

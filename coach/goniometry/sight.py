"""A pose as seen from one shoulder: the picture's points of both sides, and how the trunk faces.

Picture vectors are in pixels, x right, y down.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from coach.domain.movement import Side, View
from coach.domain.pose import Landmark, Pose
from coach.goniometry.angles import Vector, trunk_axes

_ROWS = {
    Side.LEFT: np.array(
        [
            Landmark.LEFT_SHOULDER,
            Landmark.LEFT_ELBOW,
            Landmark.LEFT_WRIST,
            Landmark.LEFT_HIP,
            Landmark.LEFT_INDEX,
        ]
    ),
    Side.RIGHT: np.array(
        [
            Landmark.RIGHT_SHOULDER,
            Landmark.RIGHT_ELBOW,
            Landmark.RIGHT_WRIST,
            Landmark.RIGHT_HIP,
            Landmark.RIGHT_INDEX,
        ]
    ),
}
_SHOULDER, _ELBOW, _WRIST, _HIP = range(4)
_POINTS = {
    side: np.array(
        [
            rows[_SHOULDER],
            _ROWS[side.other][_SHOULDER],
            rows[_HIP],
            _ROWS[side.other][_HIP],
            rows[_ELBOW],
            rows[_WRIST],
        ]
    )
    for side, rows in _ROWS.items()
}

WRIST_VISIBILITY = 2
"""Index of the wrist in a limb's ``visibility``."""
SHOULDERS_OVER_TRUNK = 0.75
"""Between the shoulders' joint centres over the trunk: tuning people 0.69 to 0.83."""


@dataclass(frozen=True, slots=True, eq=False)
class Limb:
    """One arm with its hip: picture points (2,) in pixels, points in space (3,) in metres."""

    shoulder_px: Vector = field(repr=False)
    elbow_px: Vector = field(repr=False)
    wrist_px: Vector = field(repr=False)
    hip_px: Vector = field(repr=False)
    shoulder_m: Vector = field(repr=False)
    elbow_m: Vector = field(repr=False)
    wrist_m: Vector = field(repr=False)
    hip_m: Vector = field(repr=False)
    visibility: Vector = field(repr=False)
    """Shoulder, elbow, wrist, hip, index finger (5,), 0-1."""

    @classmethod
    def of(cls, pose: Pose, side: Side) -> Limb:
        """Take one side's points."""
        rows = _ROWS[side]
        px, m = pose.image_px[rows], pose.world_m[rows]
        return cls(px[0], px[1], px[2], px[3], m[0], m[1], m[2], m[3], pose.visibility[rows])


@dataclass(frozen=True, eq=False)
class Sight:
    """The measured side, the other side, and what follows from both at once.

    What several ask for is worked out once.
    """

    pose: Pose
    side: Side
    near: Limb
    other: Limb
    axes: tuple[Vector, Vector, Vector] = field(repr=False)
    """X forward, Y up, Z right of the trunk (3,) each, from the metric points."""

    @classmethod
    def of(cls, pose: Pose, side: Side) -> Sight:
        """Look at a pose from the shoulder of ``side``."""
        near, other = Limb.of(pose, side), Limb.of(pose, side.other)
        left, right = (other, near) if side is Side.RIGHT else (near, other)
        axes = trunk_axes(left.shoulder_m, right.shoulder_m, left.hip_m, right.hip_m)
        return cls(pose, side, near, other, axes)

    @property
    def of_other_side(self) -> Sight:
        """The same pose seen from the other shoulder."""
        return Sight(self.pose, self.side.other, self.other, self.near, self.axes)

    @property
    def round_deg(self) -> float:
        """Where the camera is, going round the trunk: 0 in front, 90 at the right, 180 behind."""
        forward, _, right = self.axes
        return math.degrees(math.atan2(-float(right[2]), -float(forward[2])))

    @property
    def above_deg(self) -> float:
        """Where the camera is along the trunk: 90 beyond the head, -90 at the feet."""
        return math.degrees(math.asin(max(-1.0, min(1.0, -float(self.axes[1][2])))))

    @cached_property
    def scale_px(self) -> float:
        """How long the trunk would be in the picture if it were not foreshortened."""
        shoulders_px = _length(self.near.shoulder_px - self.other.shoulder_px)
        return max(self.trunk_px, shoulders_px / SHOULDERS_OVER_TRUNK)

    @property
    def points_px(self) -> Vector:
        """Shoulder and other shoulder, hip and other hip, elbow, wrist (6, 2)."""
        points: Vector = self.pose.image_px[_POINTS[self.side]]
        return points

    @property
    def points_m(self) -> Vector:
        """The same in space (6, 3)."""
        points: Vector = self.pose.world_m[_POINTS[self.side]]
        return points

    @cached_property
    def hips_px(self) -> Vector:
        """Middle of the hips (2,)."""
        middle: Vector = (self.near.hip_px + self.other.hip_px) / 2
        return middle

    @cached_property
    def shoulders_px(self) -> Vector:
        """Middle of the shoulders (2,)."""
        middle: Vector = (self.near.shoulder_px + self.other.shoulder_px) / 2
        return middle

    @cached_property
    def trunk_px(self) -> float:
        """Length of the trunk in the picture, mid-hip to mid-shoulder."""
        return _length(self.shoulders_px - self.hips_px)

    @property
    def breadth(self) -> float:
        """Shoulder line in the picture over trunk length, positive where the front is seen."""
        across, down = (self.near.shoulder_px - self.other.shoulder_px).tolist()
        up_across, up_down = (self.shoulders_px - self.hips_px).tolist()
        square_px: float = (down * up_across - across * up_down) * -self.side.sign
        return square_px / self.trunk_px**2 if self.trunk_px > 0.0 else math.nan

    @property
    def knees_above_shoulders(self) -> bool:
        """Whether both knees are higher in the picture than the shoulders."""
        knees = self.pose.image_px[[Landmark.LEFT_KNEE, Landmark.RIGHT_KNEE], 1]
        return bool(np.all(knees < self.shoulders_px[1]))

    @property
    def left_and_right(self) -> tuple[Limb, Limb]:
        """The person's own left and right."""
        if self.side is Side.RIGHT:
            return self.other, self.near
        return self.near, self.other

    @property
    def upper_arm_share(self) -> float:
        """Upper arm over trunk, lengths in the picture."""
        return _length(self.near.elbow_px - self.near.shoulder_px) / self.scale_px

    @property
    def forearm_share(self) -> float:
        """Forearm over trunk, lengths in the picture."""
        return _length(self.near.wrist_px - self.near.elbow_px) / self.scale_px

    @property
    def bend_seen_deg(self) -> float:
        """Bend of the elbow in the picture, 0 straight."""
        near = self.near
        return _between_deg(near.elbow_px - near.shoulder_px, near.wrist_px - near.elbow_px)

    @cached_property
    def elevation_seen_deg(self) -> float:
        """Unsigned elevation of the upper arm in the picture, 0 along the trunk."""
        upper_arm = self.near.elbow_px - self.near.shoulder_px
        return _between_deg(upper_arm, self.hips_px - self.shoulders_px)

    @property
    def tilt_deg(self) -> float:
        """Lean of the trunk in the picture, 0 upright, positive toward picture right."""
        up = self.shoulders_px - self.hips_px
        return math.degrees(math.atan2(float(up[0]), -float(up[1])))

    @cached_property
    def elbow_flexion_deg(self) -> float:
        """Bend of the elbow from the metric points, 0 straight."""
        near = self.near
        return _between_deg(near.elbow_m - near.shoulder_m, near.wrist_m - near.elbow_m)

    @property
    def arm_known(self) -> bool:
        """Whether all that a fit takes of the arm is there, in the picture and in space."""
        in_picture = (*self.near.elbow_px.tolist(), *self.near.wrist_px.tolist())
        return all(map(math.isfinite, in_picture)) and not math.isnan(self.elbow_flexion_deg)

    @property
    def near_elevation_deg(self) -> float:
        """Unsigned elevation of the measured upper arm from the metric points."""
        near, other = self.near, self.other
        down = near.hip_m + other.hip_m - near.shoulder_m - other.shoulder_m
        return _between_deg(near.elbow_m - near.shoulder_m, down)

    def turned_from_deg(self, view: View) -> float:
        """Signed turn of the trunk about its long axis away from how ``view`` wants it."""
        match view:
            case View.FRONT | View.FOOT:
                wanted_deg = 0.0
            case View.SIDE:
                wanted_deg = 90.0 * self.side.sign
            case View.BACK:
                wanted_deg = 180.0
        return (self.round_deg - wanted_deg + 180.0) % 360.0 - 180.0


def _length(vector: Vector) -> float:
    return math.hypot(*vector.tolist())


def _between_deg(a: Vector, b: Vector) -> float:
    """Angle between two vectors (2,) or (3,), degrees; NaN where one has no length.

    By sines and cosines of single numbers, which for one vector is many times quicker than arrays.
    """
    u, v = a.tolist(), b.tolist()
    lengths = math.hypot(*u) * math.hypot(*v)
    if not lengths > 1e-12:  # the square of a smaller one vanishes
        return math.nan
    cosine: float = sum(x * y for x, y in zip(u, v, strict=True)) / lengths
    return math.degrees(math.acos(1.0 if cosine > 1.0 else -1.0 if cosine < -1.0 else cosine))

"""A pose as seen from one shoulder: the picture's points of both sides, and how the trunk faces.

Picture vectors are in pixels, x right, y down.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np

from coach.domain.movement import Side, View
from coach.domain.pose import Landmark, Pose
from coach.goniometry.angles import Vector, elbow_flexion_deg, trunk_axes, unit

_ROWS = {
    Side.LEFT: (
        Landmark.LEFT_SHOULDER,
        Landmark.LEFT_ELBOW,
        Landmark.LEFT_WRIST,
        Landmark.LEFT_HIP,
        Landmark.LEFT_INDEX,
    ),
    Side.RIGHT: (
        Landmark.RIGHT_SHOULDER,
        Landmark.RIGHT_ELBOW,
        Landmark.RIGHT_WRIST,
        Landmark.RIGHT_HIP,
        Landmark.RIGHT_INDEX,
    ),
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
        rows = list(_ROWS[side])
        px, m = pose.image_px[rows], pose.world_m[rows]
        return cls(px[0], px[1], px[2], px[3], m[0], m[1], m[2], m[3], pose.visibility[rows])


@dataclass(frozen=True, slots=True, eq=False)
class Sight:
    """The measured side, the other side, and what follows from both at once."""

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
    def round_deg(self) -> float:
        """Where the camera is, going round the trunk: 0 in front, 90 at the right, 180 behind."""
        forward, _, right = self.axes
        return math.degrees(math.atan2(-float(right[2]), -float(forward[2])))

    @property
    def above_deg(self) -> float:
        """Where the camera is along the trunk: 90 beyond the head, -90 at the feet."""
        return math.degrees(math.asin(max(-1.0, min(1.0, -float(self.axes[1][2])))))

    @property
    def scale_px(self) -> float:
        """How long the trunk would be in the picture if it were not foreshortened."""
        shoulders_px = float(np.linalg.norm(self.near.shoulder_px - self.other.shoulder_px))
        return max(self.trunk_px, shoulders_px / SHOULDERS_OVER_TRUNK)

    @property
    def points_px(self) -> Vector:
        """Shoulder and other shoulder, hip and other hip, elbow, wrist (6, 2)."""
        near, other = self.near, self.other
        return np.stack(
            [
                near.shoulder_px,
                other.shoulder_px,
                near.hip_px,
                other.hip_px,
                near.elbow_px,
                near.wrist_px,
            ]
        )

    @property
    def points_m(self) -> Vector:
        """The same in space (6, 3)."""
        near, other = self.near, self.other
        return np.stack(
            [near.shoulder_m, other.shoulder_m, near.hip_m, other.hip_m, near.elbow_m, near.wrist_m]
        )

    @property
    def hips_px(self) -> Vector:
        """Middle of the hips (2,)."""
        middle: Vector = (self.near.hip_px + self.other.hip_px) / 2
        return middle

    @property
    def shoulders_px(self) -> Vector:
        """Middle of the shoulders (2,)."""
        middle: Vector = (self.near.shoulder_px + self.other.shoulder_px) / 2
        return middle

    @property
    def trunk_px(self) -> float:
        """Length of the trunk in the picture, mid-hip to mid-shoulder."""
        return float(np.linalg.norm(self.shoulders_px - self.hips_px))

    @property
    def breadth(self) -> float:
        """Shoulder line in the picture over trunk length, positive where the front is seen."""
        across = (self.near.shoulder_px - self.other.shoulder_px) * -self.side.sign
        up = (self.shoulders_px - self.hips_px) / self.trunk_px
        return float(across @ np.array([-up[1], up[0]])) / self.trunk_px

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
        return float(np.linalg.norm(self.near.elbow_px - self.near.shoulder_px)) / self.scale_px

    @property
    def forearm_share(self) -> float:
        """Forearm over trunk, lengths in the picture."""
        return float(np.linalg.norm(self.near.wrist_px - self.near.elbow_px)) / self.scale_px

    @property
    def bend_seen_deg(self) -> float:
        """Bend of the elbow in the picture, 0 straight."""
        near = self.near
        return float(
            elbow_flexion_deg(
                unit(near.elbow_px - near.shoulder_px), unit(near.wrist_px - near.elbow_px)
            )
        )

    @property
    def elevation_seen_deg(self) -> float:
        """Unsigned elevation of the upper arm in the picture, 0 along the trunk."""
        upper_arm = unit(self.near.elbow_px - self.near.shoulder_px)
        down = unit(self.hips_px - self.shoulders_px)
        return math.degrees(math.acos(float(np.clip(upper_arm @ down, -1.0, 1.0))))

    @property
    def tilt_deg(self) -> float:
        """Lean of the trunk in the picture, 0 upright, positive toward picture right."""
        up = self.shoulders_px - self.hips_px
        return math.degrees(math.atan2(float(up[0]), -float(up[1])))

    @property
    def elbow_flexion_deg(self) -> float:
        """Bend of the elbow from the metric points, 0 straight."""
        near = self.near
        return float(
            elbow_flexion_deg(
                unit(near.elbow_m - near.shoulder_m), unit(near.wrist_m - near.elbow_m)
            )
        )

    @property
    def near_elevation_deg(self) -> float:
        """Unsigned elevation of the measured upper arm from the metric points."""
        down = unit(
            self.near.hip_m + self.other.hip_m - self.near.shoulder_m - self.other.shoulder_m
        )
        upper_arm = unit(self.near.elbow_m - self.near.shoulder_m)
        return math.degrees(math.acos(float(np.clip(upper_arm @ down, -1.0, 1.0))))

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

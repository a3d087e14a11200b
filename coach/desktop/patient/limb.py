"""What is drawn on the picture: trunk, arm and angle, in the pixels of the unmirrored frame."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Landmark, Pose

Point = tuple[float, float]
_Vector = NDArray[np.float64]

_DIAL_FLATNESS = 0.32
"""How flat the level circle of a rotation is drawn, as if seen a little from above; no measure."""
_ARC_STEPS = 48
_ARC_OF_ARM = 0.55
_DIAL_OF_ARM = 0.8
"""Radius of the arc or dial as a share of the upper arm's length in the picture."""
_ROOMY_DEG = 65.0
"""From here on the value finds room between trunk and arm; tried on the sample clips."""
_BEYOND_DEG = 60.0
_LEVEL_DEG = 100.0
"""Below that the value stands so far beyond the arm, but not before the face."""


@dataclass(frozen=True, slots=True)
class Limb:
    """Lines in pixels of the unmirrored frame, x right, y down.

    ``trunk`` runs from between the shoulders to between the hips, ``arm`` from the shoulder over
    the elbow to the wrist where that is known, ``zero`` from the angle's apex along its zero,
    ``arc`` from zero to the value (empty without a value), ``limit`` across the plan's target
    angle (None without one); the value is written beyond ``label``, seen from the apex.
    """

    trunk: tuple[Point, Point]
    arm: tuple[Point, ...]
    zero: tuple[Point, Point]
    arc: tuple[Point, ...]
    limit: tuple[Point, Point] | None
    label: Point


@dataclass(frozen=True, slots=True, eq=False)
class _Fan:
    """Directions about an apex: ``down`` at zero, ``toward`` at 90 degrees; pixels."""

    apex: _Vector
    down: _Vector
    toward: _Vector

    flat: bool = False

    def label_deg(self, swept_deg: float) -> float:
        """Where the value leaves the arm free: under a flat dial, in a wide arc, else beyond."""
        if self.flat:
            return 0.0
        if swept_deg >= _ROOMY_DEG:
            return swept_deg / 2
        return min(swept_deg + _BEYOND_DEG, _LEVEL_DEG)

    def point(self, angle_deg: float, reach: float = 1.0) -> Point:
        angle_rad = math.radians(angle_deg)
        spoke = math.cos(angle_rad) * self.down + math.sin(angle_rad) * self.toward
        return _point(self.apex + reach * spoke)


def limb_of(pose: Pose, planned: PlannedExercise, angle_deg: float | None) -> Limb | None:
    """Give the lines of the measured limb, None where a shoulder, hip or the elbow is unknown."""
    right = planned.side is Side.RIGHT
    at = pose.image_px
    shoulder = at[Landmark.RIGHT_SHOULDER if right else Landmark.LEFT_SHOULDER]
    other = at[Landmark.LEFT_SHOULDER if right else Landmark.RIGHT_SHOULDER]
    elbow = at[Landmark.RIGHT_ELBOW if right else Landmark.LEFT_ELBOW]
    wrist = at[Landmark.RIGHT_WRIST if right else Landmark.LEFT_WRIST]
    neck = (shoulder + other) / 2
    pelvis = (at[Landmark.LEFT_HIP] + at[Landmark.RIGHT_HIP]) / 2
    if not np.isfinite([neck, pelvis, elbow]).all() or np.allclose(neck, pelvis):
        return None
    lateral_px = float(shoulder[0] - other[0])
    if planned.movement is Movement.EXTERNAL_ROTATION_0:
        fan = _dial(elbow, _DIAL_OF_ARM * float(np.linalg.norm(elbow - shoulder)), lateral_px)
        swept_deg = angle_deg or 0.0
    else:
        ahead_px = float(at[Landmark.NOSE][0] - neck[0])
        toward_px = {
            Movement.ABDUCTION: lateral_px,
            Movement.FLEXION: ahead_px,
            Movement.EXTENSION: -ahead_px,
        }[planned.movement]
        fan = _swing(shoulder, elbow, pelvis - neck, toward_px)
        swept_deg = _swept_deg(fan, elbow)
    return Limb(
        trunk=(_point(neck), _point(pelvis)),
        arm=tuple(_point(joint) for joint in (shoulder, elbow, wrist) if np.isfinite(joint).all()),
        zero=(_point(fan.apex), fan.point(0.0, 1.3)),
        arc=()
        if angle_deg is None
        else tuple(fan.point(swept_deg * step / _ARC_STEPS) for step in range(_ARC_STEPS + 1)),
        limit=None
        if planned.target_deg is None
        else (fan.point(planned.target_deg, 0.75), fan.point(planned.target_deg, 1.5)),
        label=fan.point(fan.label_deg(swept_deg)),
    )


def _swing(shoulder: _Vector, elbow: _Vector, trunk: _Vector, toward_px: float) -> _Fan:
    """Fan of an arm that swings in the picture, to the side of ``toward_px``."""
    down = trunk / np.linalg.norm(trunk)
    across = np.array([down[1], -down[0]])
    if not math.isfinite(toward_px):
        toward_px = float(elbow[0] - shoulder[0])
    if across[0] * toward_px < 0:
        across = -across
    reach_px = _ARC_OF_ARM * max(np.linalg.norm(elbow - shoulder), np.linalg.norm(trunk) / 2)
    return _Fan(shoulder, reach_px * down, reach_px * across)


def _dial(elbow: _Vector, reach_px: float, lateral_px: float) -> _Fan:
    """Fan of a forearm that turns about an upright upper arm, seen from before the person."""
    outward = math.copysign(reach_px, lateral_px)
    return _Fan(
        elbow, np.array([0.0, _DIAL_FLATNESS * reach_px]), np.array([outward, 0.0]), flat=True
    )


def _swept_deg(fan: _Fan, elbow: _Vector) -> float:
    arm = elbow - fan.apex
    swept_deg = math.degrees(math.atan2(float(arm @ fan.toward), float(arm @ fan.down)))
    return swept_deg + 360.0 if swept_deg < -90.0 else swept_deg


def _point(at: _Vector) -> Point:
    return float(at[0]), float(at[1])

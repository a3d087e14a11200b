"""What is drawn on the picture: trunk, arm and value, in the pixels of the unmirrored frame."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import assert_never

import numpy as np

from coach.desktop.patient.fan import (
    BEYOND_DEG,
    ROOMY_DEG,
    Fan,
    Point,
    Vector,
    beside_deg,
    level_fan,
    point,
    square_to,
    upright_fan,
)
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Landmark, Pose
from coach.review.levels import MEASURED_LEVELS, reach_band

_ARC_STEPS = 48
_ARC_OF_ARM = 0.85
_DIAL_OF_ARM = 0.8
"""Radius of the arc or dial as a share of the upper arm's length in the picture."""
_BACK_OF_TRUNK = 1.04
"""C7 to the posterior superior iliac spines over mid-shoulders to mid-hips: 0.30 of body height
(``coach.review.levels``) over 0.288 (Winter, Biomechanics and Motor Control of Human Movement,
from memory)."""
_TICK_OF_TRUNK = 0.07
_LEAST_TRUNK_PX = 1e-3
"""A trunk as short as that has no direction."""


@dataclass(frozen=True, slots=True)
class Limb:
    """Lines in pixels of the unmirrored frame, x right, y down.

    ``trunk`` runs from between the shoulders to between the hips, ``arm`` from the shoulder over
    the elbow to the wrist where that is known. Of an angle, ``zero`` runs from its apex along its
    zero, ``arc`` from zero to the value (empty without a value), ``limit`` across the plan's
    target (None without one). Of a hand behind the back, ``ticks`` stand across the spine and
    ``band`` is the stretch of it that the thumb reaches. The value is written beyond ``label``,
    seen from ``apex``.
    """

    trunk: tuple[Point, Point]
    arm: tuple[Point, ...]
    apex: Point
    label: Point
    zero: tuple[Point, Point] | None = None
    arc: tuple[Point, ...] = ()
    limit: tuple[Point, Point] | None = None
    ticks: tuple[tuple[Point, Point], ...] = ()
    band: tuple[Point, Point] | None = None


@dataclass(frozen=True, slots=True, eq=False)
class _Body:
    """The joints that are drawn, in pixels (2,)."""

    shoulder: Vector
    other: Vector
    elbow: Vector
    wrist: Vector
    neck: Vector
    pelvis: Vector
    nose: Vector

    @classmethod
    def of(cls, pose: Pose, side: Side) -> _Body:
        right, at = side is Side.RIGHT, pose.image_px
        shoulder = at[Landmark.RIGHT_SHOULDER if right else Landmark.LEFT_SHOULDER]
        other = at[Landmark.LEFT_SHOULDER if right else Landmark.RIGHT_SHOULDER]
        return cls(
            shoulder,
            other,
            at[Landmark.RIGHT_ELBOW if right else Landmark.LEFT_ELBOW],
            at[Landmark.RIGHT_WRIST if right else Landmark.LEFT_WRIST],
            (shoulder + other) / 2,
            (at[Landmark.LEFT_HIP] + at[Landmark.RIGHT_HIP]) / 2,
            at[Landmark.NOSE],
        )

    @property
    def drawable(self) -> bool:
        known = bool(np.isfinite([self.neck, self.pelvis, self.elbow]).all())
        return known and math.dist(self.neck, self.pelvis) > _LEAST_TRUNK_PX

    @property
    def trunk(self) -> Vector:
        along: Vector = self.pelvis - self.neck
        return along

    @property
    def lateral(self) -> Vector:
        """Out of the measured shoulder, away from the other one."""
        out: Vector = self.shoulder - self.other
        return out

    @property
    def ahead(self) -> Vector:
        """Where the face is, as seen from between the shoulders."""
        face: Vector = self.nose - self.neck
        return face

    @property
    def arm(self) -> tuple[Point, ...]:
        """The joints that are known, from the shoulder on."""
        joints = (self.shoulder, self.elbow, self.wrist)
        return tuple(point(joint) for joint in joints if np.isfinite(joint).all())


def limb_of(
    pose: Pose, planned: PlannedExercise, value: float | None, error: float = 0.0
) -> Limb | None:
    """Give the lines of the measured limb, None where a shoulder, hip or the elbow is unknown."""
    body = _Body.of(pose, planned.side)
    if not body.drawable:
        return None
    if planned.movement is Movement.HAND_BEHIND_BACK:
        return _reach(body, value, error)
    fan, swept_deg, label_deg = _fan(body, planned, value or 0.0)
    target_deg = planned.target_deg
    return Limb(
        trunk=(point(body.neck), point(body.pelvis)),
        arm=body.arm,
        apex=point(fan.apex),
        label=fan.point(label_deg),
        zero=(point(fan.apex), fan.point(0.0, 1.3)),
        arc=() if value is None else fan.arc(swept_deg, _ARC_STEPS),
        limit=None
        if target_deg is None
        else (fan.point(target_deg, 0.75), fan.point(target_deg, 1.5)),
    )


def _fan(body: _Body, planned: PlannedExercise, angle_deg: float) -> tuple[Fan, float, float]:
    """Give the fan, where the limb is seen in it, and where the value leaves the limb free."""
    movement, from_foot = planned.measured, planned.seen_from is View.FOOT
    half_trunk_px = float(np.linalg.norm(body.trunk)) / 2
    arm_px = float(np.linalg.norm(body.elbow - body.shoulder))
    forearm_px = max(half_trunk_px, float(np.nan_to_num(np.linalg.norm(body.wrist - body.elbow))))
    outward = math.copysign(1.0, float(body.lateral[0]))
    match movement:
        case Movement.FLEXION | Movement.EXTENSION | Movement.ABDUCTION:
            toward = {
                Movement.ABDUCTION: body.lateral,
                Movement.FLEXION: body.ahead,
                Movement.EXTENSION: -body.ahead,
            }[movement]
            down = body.trunk / np.linalg.norm(body.trunk)
            across = square_to(down, toward, body.elbow - body.shoulder)
            reach_px = _ARC_OF_ARM * max(arm_px, half_trunk_px)
            fan = Fan(body.shoulder, reach_px * down, reach_px * across)
            swept_deg = fan.swept_deg(body.elbow, angle_deg)
            return fan, swept_deg, beside_deg(swept_deg)
        case Movement.EXTERNAL_ROTATION_90:
            up = -body.trunk / np.linalg.norm(body.trunk)
            ahead = square_to(up, body.ahead, body.wrist - body.elbow)
            reach_px = _DIAL_OF_ARM * forearm_px
            fan = Fan(body.elbow, reach_px * ahead, reach_px * up)
            swept_deg = fan.swept_deg(body.wrist, angle_deg)
            # Above the elbow is the face.
            return fan, swept_deg, -40.0 if swept_deg > 0 else swept_deg + BEYOND_DEG
        case Movement.EXTERNAL_ROTATION_0 if from_foot:
            # The upper arm points at the camera, and ahead of the person is up in the picture.
            fan = upright_fan(body.elbow, np.array([0.0, -_DIAL_OF_ARM * forearm_px]), outward)
            swept_deg = fan.swept_deg(body.wrist, angle_deg)
            return fan, swept_deg, beside_deg(swept_deg)
        case Movement.EXTERNAL_ROTATION_0 if planned.position is Position.DOORWAY:
            # The forearm stays ahead, and the trunk turns away from it.
            fan = level_fan(body.elbow, _DIAL_OF_ARM * arm_px, outward).turned(-angle_deg)
            return fan, angle_deg, angle_deg + 90.0
        case Movement.EXTERNAL_ROTATION_0:
            fan = level_fan(body.elbow, _DIAL_OF_ARM * arm_px, outward)
            return fan, angle_deg, 0.0
        case Movement.HORIZONTAL_ADDUCTION if from_foot:
            reach_px = _ARC_OF_ARM * max(arm_px, half_trunk_px)
            fan = upright_fan(body.shoulder, np.array([0.0, -reach_px]), outward)
            fan = Fan(fan.apex, fan.toward, fan.zero)
            swept_deg = fan.swept_deg(body.elbow, angle_deg)
            return fan, swept_deg, beside_deg(swept_deg)
        case Movement.HORIZONTAL_ADDUCTION:
            fan = level_fan(body.shoulder, half_trunk_px, outward)
            fan = Fan(fan.apex, fan.toward, fan.zero)
            return fan, angle_deg, 90.0 if angle_deg < ROOMY_DEG else 0.0
        case Movement.HAND_BEHIND_BACK:
            raise ValueError(movement)
        case _ as never:
            assert_never(never)


def _reach(body: _Body, value: float | None, error: float) -> Limb:
    """Draw the back's scale along the spine, set by the wrist's own height where it is known."""
    one = _BACK_OF_TRUNK * body.trunk
    down = body.trunk / np.linalg.norm(body.trunk)
    across = np.array([-down[1], down[0]])
    at_zero = body.neck
    if value is not None and np.isfinite(body.wrist).all():
        at_zero = body.neck + float((body.wrist - body.neck) @ down) * down - value * one
    half = _TICK_OF_TRUNK * float(np.linalg.norm(body.trunk)) * across
    ticks = tuple(
        (point(at_zero + share * one - half), point(at_zero + share * one + half))
        for _, share in MEASURED_LEVELS
    )
    middle, band = body.neck, None
    if value is not None:
        found = reach_band(value, error)
        top, bottom = at_zero + found.top * one, at_zero + found.bottom * one
        middle, band = (top + bottom) / 2, (point(top), point(bottom))
    away = -math.copysign(2.0, float(body.lateral @ across)) * half
    return Limb(
        trunk=(point(body.neck), point(body.pelvis)),
        arm=body.arm,
        apex=point(middle),
        label=point(middle + away),
        ticks=ticks,
        band=band,
    )

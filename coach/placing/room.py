"""Whether the hand stays in the picture on its way through an exercise.

The body in view gives the scale, proportions give the arm, and the movement's definition gives the
way; a pinhole camera with the usual field of view shows where that is in the picture.
"""

from __future__ import annotations

import math

import numpy as np

from coach.domain.movement import Movement, View
from coach.domain.reading import Doubt
from coach.goniometry.angles import Vector
from coach.goniometry.camera import Pinhole
from coach.goniometry.evidence import Evidence
from coach.goniometry.sight import SHOULDERS_OVER_TRUNK, Sight

UPPER_ARM, FOREARM, HAND = 0.548, 0.522, 0.083
"""Lengths over the trunk's (middle of the hips to middle of the shoulders), the hand to its middle,
half way to the third knuckle: 0.282, 0.269 and 0.0431 m of 0.515 (de Leva 1996, J Biomech
29:1223-1230, men; from memory). What must be seen is the wrist: the hand beyond it is the margin,
for longer arms, a shoulder that rises overhead (0.08) and another field of view."""
MARKED: dict[View, tuple[float, float]] = {
    View.FRONT: (1.05, 0.053),
    View.BACK: (1.05, 0.053),
    View.SIDE: (1.13, 0.074),
    View.FOOT: (1.0, 0.0),
}
"""The trunk between the model's points over that between joint centres, and how far the measured
shoulder's point lies above its centre, in trunk lengths: sums of ``offsets.OFFSETS``, up. From the
feet the shoulders' breadth gives the scale."""
WAY_DEG: dict[Movement, tuple[float, float]] = {
    Movement.FLEXION: (0.0, 180.0),
    Movement.EXTENSION: (0.0, 80.0),
    Movement.ABDUCTION: (0.0, 180.0),
    Movement.EXTERNAL_ROTATION_0: (-45.0, 90.0),
    Movement.EXTERNAL_ROTATION_90: (-70.0, 90.0),
    Movement.HORIZONTAL_ADDUCTION: (0.0, 130.0),
    Movement.HAND_BEHIND_BACK: (0.0, 60.0),
}
"""From rest to the end of a full range (AAOS 1965, by the neutral-zero method, from memory: 180,
60, 180, 90, 70 and 90, 130 to 140); extension to two SDs beyond the mean of 62 (Boone & Azen 1979;
the SD from memory); behind the back the elbow goes out so far (common practice)."""
STEP_DEG = 3.0
"""Between places on the way: a thousandth of the reach beside the circle at most."""
NEAREST = 0.3
"""Trunk lengths before the camera: what would come nearer counts as so near."""


def no_room(sight: Sight, movement: Movement, view: View, to_deg: float | None) -> Doubt | None:
    """Say whether the arm would leave the picture, and whether at the top.

    ``to_deg`` is the angle that is not to be passed, None for the whole range.
    """
    way_px = hand_way_px(sight, movement, view, to_deg)
    width, height = sight.pose.size_px
    if np.any(way_px[:, 1] < 0):
        return Doubt.NO_ROOM_ABOVE
    inside = (way_px[:, 0] >= 0) & (way_px[:, 0] <= width) & (way_px[:, 1] <= height)
    return None if np.all(inside) else Doubt.NO_ROOM


def hand_way_px(sight: Sight, movement: Movement, view: View, to_deg: float | None) -> Vector:
    """Where the hand (behind the back: the elbow) comes on the way (N, 2), pixels."""
    camera = Pinhole.of(sight.pose.size_px)
    axes = _axes(sight, view, camera)
    slope = camera.slopes(sight.near.shoulder_px)
    marked = _shoulder_depth(sight, view, camera) * np.array([slope[0], slope[1], 1.0])
    shoulder = marked - MARKED[view][1] * axes[1]
    low_deg, high_deg = WAY_DEG[movement]
    if to_deg is not None and movement is not Movement.HAND_BEHIND_BACK:
        high_deg = min(max(to_deg, low_deg), high_deg)
    steps = max(2, math.ceil((high_deg - low_deg) / STEP_DEG) + 1)
    reach = _reach(movement, np.radians(np.linspace(low_deg, high_deg, steps)))
    places = shoulder + reach @ axes
    way_px: Vector = np.asarray(camera.centre_px) + camera.focal_px * (
        places[:, :2] / np.maximum(places[:, 2:], NEAREST)
    )
    return way_px


def _shoulder_depth(sight: Sight, view: View, camera: Pinhole) -> float:
    """How far the shoulder is along the camera's axis, trunk lengths."""
    trunk_px = (sight.scale_px if view is View.FOOT else sight.trunk_px) / MARKED[view][0]
    beside = SHOULDERS_OVER_TRUNK / 2 if view is View.SIDE else 0.0
    return camera.focal_px / trunk_px - beside


def _axes(sight: Sight, view: View, camera: Pinhole) -> Vector:
    """Rows forward, up and outward (to the measured side) of the trunk (3, 3), camera axes.

    As the view wants them: the trunk's turn is known less well than that it is near enough.
    """
    if view is View.FOOT:
        forward, up, right = Evidence.of([sight], camera).trunk[0].T
        return np.stack([forward, up, sight.side.sign * right])
    line = sight.shoulders_px - sight.hips_px
    up = np.append(line / np.linalg.norm(line), 0.0)
    across = np.array([-up[1], up[0], 0.0])  # to picture right of somebody upright
    away = np.array([0.0, 0.0, 1.0])
    match view:
        case View.SIDE:
            return np.stack([sight.side.sign * across, up, -away])
        case View.FRONT:
            return np.stack([-away, up, -sight.side.sign * across])
        case View.BACK:
            return np.stack([away, up, sight.side.sign * across])


def _reach(movement: Movement, angle: Vector) -> Vector:
    """Hand from the shoulder (N, 3), forward, up, outward, trunk lengths; angles in radians."""
    forward, up, out = np.eye(3)
    sin, cos = np.sin(angle)[:, None], np.cos(angle)[:, None]
    arm = UPPER_ARM + FOREARM + HAND
    forearm = FOREARM + HAND
    reach: Vector
    match movement:
        case Movement.FLEXION:
            reach = arm * (sin * forward - cos * up)
        case Movement.EXTENSION:
            reach = arm * (-sin * forward - cos * up)
        case Movement.ABDUCTION:
            reach = arm * (sin * out - cos * up)
        case Movement.HORIZONTAL_ADDUCTION:
            reach = arm * (cos * out + sin * forward)
        case Movement.EXTERNAL_ROTATION_0:
            reach = forearm * (cos * forward + sin * out) - UPPER_ARM * up
        case Movement.EXTERNAL_ROTATION_90:
            reach = forearm * (cos * forward + sin * up) + UPPER_ARM * out
        case Movement.HAND_BEHIND_BACK:
            reach = UPPER_ARM * (sin * out - cos * up)
    return reach

"""Elevation in the plane of the picture: flexion and extension from the side, abduction in front.

A pinhole picture keeps the angles of a plane parallel to it, whatever the distance and the place
in the picture, so the angle between the arm and the trunk is read from pixels. The camera's roll
cancels, because the trunk is seen by the same camera. The arm is the mean direction of shoulder to
elbow and shoulder to wrist: the elbow's point wanders by a twentieth of the trunk's length, the
wrist is twice as far away but shifted by the bend of the elbow.
"""

from __future__ import annotations

import math

import numpy as np

from coach.domain.movement import Movement, View
from coach.goniometry.angles import Vector, past_vertical
from coach.goniometry.sight import Sight

STRAIGHT_DEG, BENT_DEG = 20.0, 45.0
"""Bend in the picture up to which the wrist counts fully, and from which it does not count."""

BIAS = {
    Movement.FLEXION: (-1.5, -2.5, 0.3, 0.35),
    Movement.ABDUCTION: (-3.4, -1.7, 1.9, 0.56),
    Movement.EXTENSION: (1.7, 0.0, -0.3, 0.33),
}
"""Constant, sine, cosine (degrees) and share of the bend by which the pose model's points differ
from the joint centres: a ridge fit on the tuning bodies, cross-validated across them."""


def toward_sign(sight: Sight, movement: Movement, view: View) -> int:
    """+1 where the movement goes toward picture right with the trunk upright, else -1."""
    side = sight.side.sign
    match movement:
        case Movement.FLEXION:
            return side
        case Movement.EXTENSION:
            return -side
        case _:
            return side if view is View.BACK else -side


def picture_angle_deg(arm: Vector, up: Vector, toward: int) -> float:
    """Angle of a picture vector (2,) from hanging against the trunk's ``up`` (2,), degrees."""
    across = np.array([-up[1], up[0]]) * toward
    angle: Vector = np.degrees(np.arctan2(arm @ across, -(arm @ up)))
    return float(past_vertical(angle))


def elevation_in_picture_deg(sight: Sight, movement: Movement, view: View) -> float:
    """Read the elevation of one frame, degrees, positive in the movement's direction."""
    toward = toward_sign(sight, movement, view)
    up = sight.shoulders_px - sight.hips_px
    near = sight.near
    by_elbow = picture_angle_deg(near.elbow_px - near.shoulder_px, up, toward)
    by_wrist = picture_angle_deg(near.wrist_px - near.shoulder_px, up, toward)
    bend = (by_wrist - by_elbow + 180.0) % 360.0 - 180.0
    weight = 0.5 * min(1.0, max(0.0, (BENT_DEG - abs(bend)) / (BENT_DEG - STRAIGHT_DEG)))
    angle = by_elbow + weight * bend
    constant, sine, cosine, share = BIAS[movement]
    rad = math.radians(angle)
    correction = constant + sine * math.sin(rad) + cosine * math.cos(rad)
    return angle + correction + share * 2 * weight * bend

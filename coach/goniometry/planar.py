"""Elevation in the plane of the picture: flexion and extension from the side, abduction in front.

A second reading of the same points, beside the fitted body's: it knows nothing of lengths, planes
and the trunk's rest, and so errs otherwise.

A pinhole picture keeps the angles of a plane parallel to it, whatever the distance and the place
in the picture, so the angle between the arm and the trunk is read from pixels. The camera's roll
cancels, because the trunk is seen by the same camera. The arm is the mean direction of shoulder to
elbow and shoulder to wrist: the elbow's point wanders by a twentieth of the trunk's length, the
wrist is twice as far away but shifted by the bend of the elbow.
"""

from __future__ import annotations

import numpy as np

from coach.domain.movement import Movement, View
from coach.goniometry.angles import Vector, past_vertical
from coach.goniometry.sight import Sight

STRAIGHT_DEG, BENT_DEG = 20.0, 45.0
"""Bend in the picture up to which the wrist counts fully, and from which it does not count."""

IN_PICTURE = (Movement.FLEXION, Movement.EXTENSION, Movement.ABDUCTION)
"""Movements whose plane the picture shows."""
BEND_SHARE = {Movement.FLEXION: 0.32, Movement.EXTENSION: 0.15, Movement.ABDUCTION: 0.43}
"""Share of the elbow's bend by which the true angle lies above what the points show (tuning
people)."""


def toward_sign(sight: Sight, movement: Movement, view: View) -> int:
    """+1 where flexion or abduction goes toward picture right with the trunk upright, else -1."""
    side = sight.side.sign
    sideways = movement in (Movement.FLEXION, Movement.EXTENSION)
    return side if sideways or view is View.BACK else -side


def picture_angle_deg(arm: Vector, up: Vector, toward: int) -> float:
    """Angle of a picture vector (2,) from hanging against the trunk's ``up`` (2,), degrees."""
    across = np.array([-up[1], up[0]]) * toward
    angle: Vector = np.degrees(np.arctan2(arm @ across, -(arm @ up)))
    return float(past_vertical(angle))


def seen_elevation_deg(sight: Sight, movement: Movement, view: View) -> tuple[float, float]:
    """Elevation as the points show it, and the bend of the elbow in the picture, degrees.

    The bend is positive where the wrist is further in the movement's direction than the elbow,
    and fades to 0 as the wrist ceases to count.
    """
    toward = toward_sign(sight, movement, view)
    up = sight.shoulders_px - sight.hips_px
    near = sight.near
    by_elbow = picture_angle_deg(near.elbow_px - near.shoulder_px, up, toward)
    by_wrist = picture_angle_deg(near.wrist_px - near.shoulder_px, up, toward)
    if movement is Movement.EXTENSION:
        by_elbow, by_wrist = -by_elbow, -by_wrist
    bend = (by_wrist - by_elbow + 180.0) % 360.0 - 180.0
    bend *= min(1.0, max(0.0, (BENT_DEG - abs(bend)) / (BENT_DEG - STRAIGHT_DEG)))
    return by_elbow + bend / 2, bend


def elevation_in_picture_deg(sight: Sight, movement: Movement, view: View) -> float:
    """Read the elevation of one frame, degrees, positive in the movement's direction."""
    angle, bend = seen_elevation_deg(sight, movement, view)
    return angle + BEND_SHARE[movement] * bend

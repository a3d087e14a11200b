"""Elevation in the plane of the picture: flexion and extension from the side, abduction in front.

A pinhole picture keeps the angles of a plane parallel to it, whatever the distance and the place
in the picture, so the angle between the arm and the trunk is read from pixels. The camera's roll
cancels, because the trunk is seen by the same camera.
"""

from __future__ import annotations

import numpy as np

from coach.domain.movement import Movement, View
from coach.goniometry.angles import Vector, past_vertical
from coach.goniometry.sight import Sight


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


def wrapped_deg(angle_deg: float) -> float:
    """Bring a difference of angles into (-180, 180]."""
    return -((180.0 - angle_deg) % 360.0 - 180.0)

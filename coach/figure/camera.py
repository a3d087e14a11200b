"""From where the figure is seen, and its picture."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin

import numpy as np

from coach.domain.movement import Position, View
from coach.figure.rotation import Vector, X, Y, unit

_UPRIGHT = {
    View.FRONT: (18.0, 20.0),
    View.SIDE: (62.0, 12.0),
    View.BACK: (162.0, 14.0),
    View.FOOT: (18.0, 20.0),
}
"""Degrees from straight ahead of the person toward the exercised side, and above the level.

Beside the measuring camera's own place, so that a forearm which points at that camera is seen."""
_ON_BACK = {
    View.FRONT: (40.0, 34.0),
    View.SIDE: (66.0, 22.0),
    View.BACK: (66.0, 22.0),
    View.FOOT: (34.0, 36.0),
}
"""Likewise; straight ahead is here from beyond the feet."""
_IN_DOORWAY = (78.0, 16.0)
_BEFORE_WALL = (116.0, 10.0)
_BESIDE_WALL = (-22.0, 10.0)
_FACE_DOWN = dict.fromkeys(View, (68.0, 40.0))
_ON_SIDE = {View.FRONT: 90.0, View.SIDE: 90.0, View.FOOT: 60.0, View.BACK: -90.0}


@dataclass(frozen=True, slots=True)
class Camera:
    """A camera far away: parallel projection."""

    right: Vector
    up: Vector
    toward: Vector
    """To the viewer."""

    def picture(self, points: Vector) -> Vector:
        """Project points (..., 3) to (..., 3): to the right, down, and nearness to the viewer."""
        axes = np.stack([self.right, -self.up, self.toward], axis=-1)
        flat: Vector = points @ axes
        return flat


def camera_at(azimuth_deg: float, height_deg: float) -> Camera:
    """Look at the person from a direction: 0 from X, 90 from Z."""
    azimuth, height = radians(azimuth_deg), radians(height_deg)
    toward = np.array(
        [cos(height) * cos(azimuth), sin(height), cos(height) * sin(azimuth)],
    )
    right = unit(np.cross(Y, toward))
    return Camera(right, np.cross(toward, right), toward)


def camera_of(position: Position, view: View, wall: Vector | None = None) -> Camera:
    """Give the place from which a person understands the movement best.

    ``wall`` is the unit vector to a wall that the exercised hand is on: the camera stays on the
    person's side of it.
    """
    if wall is not None:
        return camera_at(*(_BEFORE_WALL if wall @ X > 0.5 else _BESIDE_WALL))
    match position:
        case Position.DOORWAY:
            return camera_at(*_IN_DOORWAY)
        case Position.SUPINE:
            return camera_at(*_ON_BACK[view])
        case Position.PRONE:
            return camera_at(*_FACE_DOWN[view])
        case Position.SIDE_LYING:
            return camera_at(_ON_SIDE[view], 20.0)
        case _:
            return camera_at(*_UPRIGHT[view])

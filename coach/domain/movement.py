"""What can be measured, on which side, from where."""

from __future__ import annotations

from enum import StrEnum


class Side(StrEnum):
    """The person's own left or right."""

    LEFT = "left"
    RIGHT = "right"

    @property
    def sign(self) -> int:
        """+1 for the right arm, -1 for the left one."""
        return 1 if self is Side.RIGHT else -1

    @property
    def other(self) -> Side:
        """The opposite side."""
        return Side.LEFT if self is Side.RIGHT else Side.RIGHT


class View(StrEnum):
    """Where the camera stands: before the person, beside the measured shoulder, behind."""

    FRONT = "front"
    SIDE = "side"
    BACK = "back"


class Movement(StrEnum):
    """Humerothoracic movements with one signed angle each, positive in the named direction.

    The value is of the arm against the trunk, the shoulder blade's share included, in degrees,
    zero with the arm hanging (rotation: forearm straight forward). ``coach.goniometry`` defines
    each angle.
    """

    FLEXION = "flexion"
    EXTENSION = "extension"
    ABDUCTION = "abduction"
    EXTERNAL_ROTATION_0 = "external-rotation-0"


BEST_VIEW: dict[Movement, View] = {
    Movement.FLEXION: View.SIDE,
    Movement.EXTENSION: View.SIDE,
    Movement.ABDUCTION: View.FRONT,
    Movement.EXTERNAL_ROTATION_0: View.FRONT,
}
"""The view in which a movement is measured unless something else is asked for."""

HANGING_DEG: dict[Movement, float] = {
    Movement.FLEXION: 0.0,
    Movement.EXTENSION: 0.0,
    Movement.ABDUCTION: 0.0,
}
"""Angle of the arm hanging at rest, for the movements that begin there; a rotation may begin
anywhere."""

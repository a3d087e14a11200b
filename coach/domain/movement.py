"""What can be measured, on which side, from where."""

from __future__ import annotations

from collections.abc import Sequence
from enum import StrEnum

from coach.domain.fault import Fault
from coach.texts import translate


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
    """Where the camera stands: before the person, beside the measured shoulder, behind; or, for a
    person lying down, raised at the foot end and looking along the body."""

    FRONT = "front"
    SIDE = "side"
    BACK = "back"
    FOOT = "foot"


class Position(StrEnum):
    """How the person stands, sits or lies.

    ``DOORWAY``: standing with the forearm against a door frame while the trunk turns away.
    """

    STANDING = "standing"
    SITTING = "sitting"
    SUPINE = "supine"
    PRONE = "prone"
    SIDE_LYING = "side-lying"
    DOORWAY = "doorway"

    @property
    def lying(self) -> bool:
        """On the back, face down or on one side."""
        return self in (Position.SUPINE, Position.PRONE, Position.SIDE_LYING)


class Unit(StrEnum):
    """What a value counts, by its code in UCUM."""

    DEGREES = "deg"
    RATIO = "1"
    """Share of the line from C7 (0) to the posterior superior iliac spines (1)."""

    @property
    def sign(self) -> int:
        """+1 where a larger value is a larger range, -1 where a smaller one is."""
        return 1 if self is Unit.DEGREES else -1

    @property
    def decimals(self) -> int:
        """Digits after the point with which a measured value is worth writing down."""
        return 1 if self is Unit.DEGREES else 3


class Movement(StrEnum):
    """Humerothoracic movements with one signed value each.

    The value is of the arm against the trunk, the shoulder blade's share included: in degrees,
    positive in the named direction and zero with the arm hanging (rotation: forearm straight
    forward; horizontal adduction: arm straight out to the side), or for the hand behind the back
    the height of the wrist along the spine, which falls as the hand goes up. ``coach.goniometry``
    defines each.
    """

    FLEXION = "flexion"
    EXTENSION = "extension"
    ABDUCTION = "abduction"
    EXTERNAL_ROTATION_0 = "external-rotation-0"
    EXTERNAL_ROTATION_90 = "external-rotation-90"
    HORIZONTAL_ADDUCTION = "horizontal-adduction"
    HAND_BEHIND_BACK = "hand-behind-back"

    @property
    def unit(self) -> Unit:
        """Unit of the value."""
        return Unit.RATIO if self is Movement.HAND_BEHIND_BACK else Unit.DEGREES

    @property
    def rotating(self) -> bool:
        """Whether the bent forearm shows the value."""
        return self in (Movement.EXTERNAL_ROTATION_0, Movement.EXTERNAL_ROTATION_90)


VIEWS: dict[tuple[Movement, Position], tuple[View, ...]] = {
    (Movement.FLEXION, Position.STANDING): (View.SIDE,),
    (Movement.FLEXION, Position.SITTING): (View.SIDE,),
    (Movement.FLEXION, Position.SUPINE): (View.SIDE,),
    (Movement.EXTENSION, Position.STANDING): (View.SIDE,),
    (Movement.EXTENSION, Position.SITTING): (View.SIDE,),
    (Movement.EXTENSION, Position.PRONE): (View.SIDE,),
    (Movement.ABDUCTION, Position.STANDING): (View.FRONT, View.BACK),
    (Movement.ABDUCTION, Position.SITTING): (View.FRONT, View.BACK),
    (Movement.EXTERNAL_ROTATION_0, Position.STANDING): (View.FRONT,),
    (Movement.EXTERNAL_ROTATION_0, Position.SITTING): (View.FRONT,),
    (Movement.EXTERNAL_ROTATION_0, Position.SUPINE): (View.FOOT,),
    (Movement.EXTERNAL_ROTATION_0, Position.DOORWAY): (View.FRONT,),
    (Movement.EXTERNAL_ROTATION_90, Position.STANDING): (View.SIDE,),
    (Movement.EXTERNAL_ROTATION_90, Position.SITTING): (View.SIDE,),
    (Movement.EXTERNAL_ROTATION_90, Position.SUPINE): (View.SIDE,),
    (Movement.HORIZONTAL_ADDUCTION, Position.STANDING): (View.FRONT,),
    (Movement.HORIZONTAL_ADDUCTION, Position.SITTING): (View.FRONT,),
    (Movement.HORIZONTAL_ADDUCTION, Position.SUPINE): (View.FOOT,),
    (Movement.HAND_BEHIND_BACK, Position.STANDING): (View.BACK,),
    (Movement.HAND_BEHIND_BACK, Position.SITTING): (View.BACK,),
}
"""The views that see a movement's plane, its best view first; what is missing is not measured."""


def best_view(movement: Movement, position: Position) -> View | None:
    """Give the view in which a movement is measured best; None where no view shows it."""
    views = VIEWS.get((movement, position))
    return views[0] if views else None


def needed_view(movement: Movement, position: Position) -> View:
    """Give the same, with a ``Fault`` where no view shows it."""
    view = best_view(movement, position)
    if view is None:
        raise Fault(
            translate(
                "faults",
                "No place of the camera measures {movement} in the position {position};"
                " choose {measurable}.",
            ).format(movement=movement, position=position, measurable=measurable(movement))
        )
    return view


def measurable(movement: Movement) -> str:
    """Name the positions and views in which a movement is measured, for a sentence."""
    way = translate("faults", "{position} from the {views}")
    ways = [
        way.format(position=position, views=_either(views))
        for (measured, position), views in VIEWS.items()
        if measured is movement
    ]
    return _either(ways)


def _either(ways: Sequence[str]) -> str:
    if len(ways) < 2:
        return "".join(ways)
    both = translate("faults", "{first} or {last}")
    return both.format(first=", ".join(ways[:-1]), last=ways[-1])


HANGING: dict[Movement, float] = {
    Movement.FLEXION: 0.0,
    Movement.EXTENSION: 0.0,
    Movement.ABDUCTION: 0.0,
}
"""Value of the arm hanging at rest, for the movements that begin there; a rotation may begin
anywhere."""

"""Which points of the body a stick figure joins."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.movement import Side
from coach.domain.pose import Landmark

_TRUNK = (
    (Landmark.LEFT_SHOULDER, Landmark.RIGHT_SHOULDER),
    (Landmark.LEFT_SHOULDER, Landmark.LEFT_HIP),
    (Landmark.RIGHT_SHOULDER, Landmark.RIGHT_HIP),
    (Landmark.LEFT_HIP, Landmark.RIGHT_HIP),
    (Landmark.LEFT_HIP, Landmark.LEFT_KNEE),
    (Landmark.RIGHT_HIP, Landmark.RIGHT_KNEE),
    (Landmark.LEFT_EAR, Landmark.NOSE),
    (Landmark.RIGHT_EAR, Landmark.NOSE),
)
_ARMS = {
    Side.LEFT: (
        (Landmark.LEFT_SHOULDER, Landmark.LEFT_ELBOW),
        (Landmark.LEFT_ELBOW, Landmark.LEFT_WRIST),
        (Landmark.LEFT_WRIST, Landmark.LEFT_INDEX),
    ),
    Side.RIGHT: (
        (Landmark.RIGHT_SHOULDER, Landmark.RIGHT_ELBOW),
        (Landmark.RIGHT_ELBOW, Landmark.RIGHT_WRIST),
        (Landmark.RIGHT_WRIST, Landmark.RIGHT_INDEX),
    ),
}


@dataclass(frozen=True, slots=True)
class Bone:
    """A line between two columns of a landmark table; ``measured`` on the arm of the exercise."""

    begin: int
    end: int
    measured: bool


def bones_of(landmarks: tuple[Landmark, ...], side: Side) -> tuple[Bone, ...]:
    """Join what a table of ``landmarks`` has, the arm of ``side`` last, to lie on top."""
    column = {landmark: k for k, landmark in enumerate(landmarks)}
    pairs = [(pair, False) for pair in (*_TRUNK, *_ARMS[side.other])]
    pairs += [(pair, True) for pair in _ARMS[side]]
    return tuple(
        Bone(column[begin], column[end], measured)
        for (begin, end), measured in pairs
        if begin in column and end in column
    )

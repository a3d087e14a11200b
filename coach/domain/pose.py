"""Where the body's points are, in the picture and in space."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import IntEnum, StrEnum

import numpy as np
from numpy.typing import NDArray


class Landmark(IntEnum):
    """Rows of a pose: the 33 points of the pose model, left and right as the person's own."""

    NOSE = 0
    LEFT_EYE_INNER = 1
    LEFT_EYE = 2
    LEFT_EYE_OUTER = 3
    RIGHT_EYE_INNER = 4
    RIGHT_EYE = 5
    RIGHT_EYE_OUTER = 6
    LEFT_EAR = 7
    RIGHT_EAR = 8
    MOUTH_LEFT = 9
    MOUTH_RIGHT = 10
    LEFT_SHOULDER = 11
    RIGHT_SHOULDER = 12
    LEFT_ELBOW = 13
    RIGHT_ELBOW = 14
    LEFT_WRIST = 15
    RIGHT_WRIST = 16
    LEFT_PINKY = 17
    RIGHT_PINKY = 18
    LEFT_INDEX = 19
    RIGHT_INDEX = 20
    LEFT_THUMB = 21
    RIGHT_THUMB = 22
    LEFT_HIP = 23
    RIGHT_HIP = 24
    LEFT_KNEE = 25
    RIGHT_KNEE = 26
    LEFT_ANKLE = 27
    RIGHT_ANKLE = 28
    LEFT_HEEL = 29
    RIGHT_HEEL = 30
    LEFT_FOOT_INDEX = 31
    RIGHT_FOOT_INDEX = 32


class PoseModel(StrEnum):
    """Which of the program's models sees a pose."""

    FULL = "full"
    LITE = "lite"
    """Smaller and faster, and wrong by more: for a machine that cannot keep up with the other."""


@dataclass(frozen=True, slots=True, eq=False)
class Card:
    """How the printed card on the breastbone stands, seen in one frame.

    ``axes`` (3, 3): columns are unit vectors X out of the chest, Y up along the card's ridge and Z
    to the person's right, in the camera's axes (x picture right, y down, z away).
    ``turn_error_deg`` is the half width of the 95 % interval of the turn about Y;
    ``tilt_error_deg`` is not exceeded by the tilt of Y in 95 % of cases. Both hold for the card.
    A breastbone slopes by 20 to 30 degrees against the trunk's long axis (common practice), and a
    card is never clipped on quite straight: of a trunk the card gives the turn about the long axis
    and changes of tilt, not the tilt itself.
    """

    axes: NDArray[np.float64] = field(repr=False)
    turn_error_deg: float
    tilt_error_deg: float


@dataclass(frozen=True, slots=True, eq=False)
class Pose:
    """One person in one frame.

    ``image_px`` (33, 2): pixels, x right, y down, origin at the picture's top left corner.
    ``world_m`` (33, 3): metres, x picture right, y down, z away from the camera, origin mid-hip.
    ``visibility`` (33,): the model's own 0-1; high values do not mean small errors.
    NaN marks a point that is not known. ``people`` is how many the model saw around this time.
    ``brightness`` is the picture's mean grey level around the person, 0-1, where known.
    ``another_person`` is true while the points seem to be on somebody else than before: such a
    pose may be drawn, but not measured. ``card`` is the printed card, where the person wears one
    and it was looked for and seen. ``model`` is the pose model that saw it, None where that is not
    known: how wrong angles of such points are is not known either.
    """

    time_s: float
    size_px: tuple[int, int]
    image_px: NDArray[np.float64] = field(repr=False)
    world_m: NDArray[np.float64] = field(repr=False)
    visibility: NDArray[np.float64] = field(repr=False)
    people: int = 1
    brightness: float | None = None
    another_person: bool = False
    card: Card | None = None
    model: PoseModel | None = PoseModel.FULL

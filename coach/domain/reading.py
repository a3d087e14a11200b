"""One measured angle, with its error or the reason why there is none."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

import msgspec
from msgspec import Meta

TiltDeg = Annotated[float, Meta(ge=-360, le=360)]


class Doubt(StrEnum):
    """Why a frame gives no angle; each names something a person can change."""

    NOBODY = "nobody-in-view"
    ANOTHER_PERSON = "another-person"
    TOO_FAR = "too-far-away"
    TOO_CLOSE = "too-close"
    TOO_DARK = "too-dark"
    HIPS_OUT_OF_VIEW = "hips-out-of-view"
    SHOULDERS_OUT_OF_VIEW = "shoulders-out-of-view"
    ARM_OUT_OF_VIEW = "arm-out-of-view"
    TURN_TO_FACE = "turn-to-face-the-camera"
    TURN_SIDEWAYS = "turn-your-side-to-the-camera"
    TURN_AROUND = "turn-around"
    WRONG_SIDE = "wrong-side-to-the-camera"
    BEND_ELBOW = "bend-the-elbow"
    STRAIGHTEN_ELBOW = "straighten-the-elbow"
    OTHER_MOVEMENT = "other-movement"
    UNSURE = "unsure"


class Form(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """How the body behaves beside the measured angle; None where this view cannot tell.

    Degrees relative to the start of the exercise where the trunk is meant; ``trunk_lean_deg`` is
    the change of the trunk's tilt in the picture, ``trunk_turn_deg`` its rotation about the
    vertical, ``elbow_flexion_deg`` 0 for a straight arm.
    """

    trunk_lean_deg: TiltDeg | None = None
    trunk_turn_deg: TiltDeg | None = None
    elbow_flexion_deg: TiltDeg | None = None


NO_FORM = Form()


@dataclass(frozen=True, slots=True)
class Reading:
    """The angle of one frame.

    Either ``angle_deg`` and ``error_deg`` (half width of the 95 % interval) are numbers and
    ``doubt`` is None, or both are None and ``doubt`` says why.
    """

    time_s: float
    angle_deg: float | None
    error_deg: float | None
    doubt: Doubt | None = None
    form: Form = NO_FORM

    @property
    def usable(self) -> bool:
        """Whether there is an angle."""
        return self.doubt is None

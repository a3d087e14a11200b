"""One measured value, with its error or the reason why there is none."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Literal

import msgspec
from msgspec import Meta

TiltDeg = Annotated[float, Meta(ge=-360, le=360)]
ErrorDeg = Annotated[float, Meta(ge=0, le=360)]
Ratio = Annotated[float, Meta(ge=-10, le=10)]
ErrorRatio = Annotated[float, Meta(ge=0, le=10)]


class Doubt(StrEnum):
    """Why a frame gives no angle; each names something a person can change."""

    NOBODY = "nobody-in-view"
    ANOTHER_PERSON = "another-person"
    NOT_ALONE = "somebody-else-in-view"
    TOO_FAR = "too-far-away"
    TOO_CLOSE = "too-close"
    TOO_DARK = "too-dark"
    HIPS_OUT_OF_VIEW = "hips-out-of-view"
    SHOULDERS_OUT_OF_VIEW = "shoulders-out-of-view"
    ARM_OUT_OF_VIEW = "arm-out-of-view"
    NO_ROOM = "no-room-for-the-arm"
    NO_ROOM_ABOVE = "no-room-above-for-the-arm"
    TURN_TO_FACE = "turn-to-face-the-camera"
    TURN_SIDEWAYS = "turn-your-side-to-the-camera"
    TURN_AROUND = "turn-around"
    RAISE_CAMERA = "raise-the-camera"
    LEGS_IN_THE_WAY = "legs-in-the-way"
    FEET_TO_CAMERA = "turn-your-feet-to-the-camera"
    LIE_ON_BACK = "lie-on-your-back"
    LIE_FACE_DOWN = "lie-face-down"
    BE_UPRIGHT = "stand-or-sit-upright"
    WRONG_SIDE = "wrong-side-to-the-camera"
    BEND_ELBOW = "bend-the-elbow"
    STRAIGHTEN_ELBOW = "straighten-the-elbow"
    OTHER_MOVEMENT = "other-movement"
    UNSURE = "unsure"
    ERROR_NOT_KNOWN = "error-not-known"
    """Of what the pose model that found the points measures here, if it is known which one did."""


class Form(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """How the body behaves beside the measured value; None where this view cannot tell.

    Against the start of the exercise: ``trunk_lean_deg`` is the change of the trunk's tilt,
    positive toward picture right, ``trunk_turn_deg`` its rotation about its own long axis,
    positive toward picture right, ``shoulder_hike_ratio`` the rise of the measured shoulder along
    the trunk as a share of the trunk's length, ``elbow_drift_deg`` the change of the upper arm's
    direction out of the movement (in rotation: from where it was, seen from in front outward).
    ``elbow_flexion_deg`` is 0 for a straight arm. Each has the half width of its 95 % interval in
    the same unit.
    """

    trunk_lean_deg: TiltDeg | None = None
    trunk_turn_deg: TiltDeg | None = None
    elbow_flexion_deg: TiltDeg | None = None
    shoulder_hike_ratio: Ratio | None = None
    elbow_drift_deg: TiltDeg | None = None
    trunk_lean_error_deg: ErrorDeg | None = None
    trunk_turn_error_deg: ErrorDeg | None = None
    elbow_flexion_error_deg: ErrorDeg | None = None
    shoulder_hike_error_ratio: ErrorRatio | None = None
    elbow_drift_error_deg: ErrorDeg | None = None


NO_FORM = Form()


class Calibration(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """What standing (sitting, lying) still at the start of an exercise taught.

    ``state`` is "still" if two quiet seconds were seen from ``start_s`` to ``end_s``, "moving" if
    the best two seconds were not quiet, "missing" if the body was not seen for so long; then the
    other values are None. ``trunk_tilt_deg`` is the trunk's tilt in the picture, ``trunk_yaw_deg``
    how it was turned from the asked view, the ratios are lengths in the picture over the trunk's.
    """

    state: Literal["still", "moving", "missing"]
    start_s: float | None = None
    end_s: float | None = None
    trunk_tilt_deg: TiltDeg | None = None
    trunk_yaw_deg: TiltDeg | None = None
    shoulder_breadth_ratio: Ratio | None = None
    upper_arm_ratio: Ratio | None = None
    forearm_ratio: Ratio | None = None


@dataclass(frozen=True, slots=True)
class Reading:
    """The value of one frame, in the unit of its movement.

    Either ``value`` and ``error`` (half width of the 95 % interval) are numbers and ``doubt`` is
    None, or both are None and ``doubt`` says why.
    """

    time_s: float
    value: float | None
    error: float | None
    doubt: Doubt | None = None
    form: Form = NO_FORM

    @property
    def usable(self) -> bool:
        """Whether there is a value."""
        return self.doubt is None

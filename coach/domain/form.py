"""How an exercise is to be done besides its value, and what can be wrong with it."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

import msgspec
from msgspec import Meta

LimitDeg = Annotated[float, Meta(gt=0, le=180)]
BendDeg = Annotated[float, Meta(ge=-30, le=180)]
LimitRatio = Annotated[float, Meta(gt=0, le=1)]


class FormFault(StrEnum):
    """What the body does that was not asked for."""

    LEAN = "trunk-leans"
    TURN = "trunk-turns"
    HIKE = "shoulder-rises"
    BENT = "elbow-bends"
    STRAIGHT = "elbow-straightens"
    DRIFT = "elbow-drifts"


class FormLimits(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """How far the body may go beside the movement; None where that is not asked or not seen.

    The trunk's lean and turn and the elbow's drift count to both sides, the shoulder only upward;
    ``elbow_deg`` is the least and the most that the elbow may be bent, 0 being straight.
    """

    lean_deg: LimitDeg | None = None
    turn_deg: LimitDeg | None = None
    hike_ratio: LimitRatio | None = None
    elbow_deg: tuple[BendDeg, BendDeg] | None = None
    drift_deg: LimitDeg | None = None


NO_LIMITS = FormLimits()

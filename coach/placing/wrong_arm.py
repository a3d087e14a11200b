"""Notices that the other arm does the exercise; rather misses it than says so wrongly."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace

import numpy as np

from coach.domain.movement import Movement, Position, Side, View, best_view
from coach.domain.pose import Landmark, Pose
from coach.goniometry.gates import MIN_ROTATION_BEND_DEG, MIN_VISIBILITY
from coach.goniometry.sight import Sight

RAISED_DEG = 35.0
"""So far from its rest the other arm makes the movement; swaying arms stay below 15. Our choice."""
STILL_DEG = 12.0
"""So little the exercised arm may do meanwhile: where it moves too, both are meant to, or one
hand helps the other. Our choice."""
HANGING_DEG = 40.0
"""An upper arm nearer to the trunk hangs at rest."""
LASTED_S = 1.5
SIGNAL_S = 4.0
"""A hand above the head is a signal and held for a second or two; longer it is none. Our choice."""
REST_S = 0.7
"""The first seconds in which both arms were seen are their rest."""
STEP_S = 0.09
"""Between two looks: what must last for seconds is seen as well at ten pictures a second."""
GAP_S = 0.5
"""After so long unseen, nothing has lasted."""


@dataclass(frozen=True, slots=True)
class Arms:
    """The exercised and the other arm in degrees: elevations in the picture, forearms' turns."""

    near_deg: float
    other_deg: float
    near_turn_deg: float | None
    other_turn_deg: float | None

    @classmethod
    def of(cls, near: Sight, other: Sight) -> Arms:
        """Look at one pose from both shoulders."""
        return cls(
            near.elevation_seen_deg, other.elevation_seen_deg, _turn_deg(near), _turn_deg(other)
        )


@dataclass(frozen=True, slots=True)
class WrongArm:
    """Watches both arms through an exercise; immutable."""

    side: Side
    movement: Movement | None
    position: Position
    resting: tuple[tuple[float, Arms], ...] = field(default=(), repr=False)
    """The first frames, by their stamps, while rest is not known."""
    rest: Arms | None = None
    since_s: float | None = None
    last_s: float = float("-inf")
    signalled: bool = False
    told: bool = False


def watch(side: Side, movement: Movement | None, position: Position) -> WrongArm:
    """Before the first pose of an exercise of this side's arm."""
    return WrongArm(side, movement, position)


def advance(state: WrongArm, time_s: float, pose: Pose | None) -> tuple[WrongArm, bool]:
    """Take the next frame; true once, when the other arm has done the movement for a while.

    Never from the side, where the other arm is hidden, lying or in a doorway, nor behind the back.
    """
    if state.told or not _watched(state.movement, state.position) or pose is None:
        return state, False
    if time_s - state.last_s < STEP_S:
        return state, False
    near = Sight.of(pose, state.side)
    other = near.of_other_side
    if not _seen(near) or not _seen(other):
        return state, False
    if time_s - state.last_s > GAP_S:
        state = replace(state, since_s=None, signalled=False)
    state = replace(state, last_s=time_s)
    now = Arms.of(near, other)
    if state.rest is None:
        return _rested(state, time_s, now), False
    if state.rest.other_turn_deg is None:  # it rests from when it is first bent
        state = replace(state, rest=replace(state.rest, other_turn_deg=now.other_turn_deg))
    assert state.rest is not None
    if not _wrong(state.movement, state.rest, now):
        return replace(state, since_s=None, signalled=False), False
    since_s = time_s if state.since_s is None else state.since_s
    signalled = state.signalled or _above_head(other)
    told = time_s - since_s > (SIGNAL_S if signalled else LASTED_S)
    return replace(state, since_s=since_s, signalled=signalled, told=told), told


def _watched(movement: Movement | None, position: Position) -> bool:
    if movement is None or movement is Movement.HAND_BEHIND_BACK:
        return False
    upright = position in (Position.STANDING, Position.SITTING)
    return upright and best_view(movement, position) in (View.FRONT, View.BACK)


def _seen(sight: Sight) -> bool:
    near, (width, height) = sight.near, sight.pose.size_px
    points = (point.tolist() for point in (near.shoulder_px, near.elbow_px, near.wrist_px))
    inside = all(0 <= x <= width and 0 <= y <= height for x, y in points)
    return inside and all(seen >= MIN_VISIBILITY for seen in near.visibility[:3].tolist())


def _above_head(sight: Sight) -> bool:
    return bool(sight.near.wrist_px[1] < sight.pose.image_px[Landmark.NOSE, 1])


def _turn_deg(sight: Sight) -> float | None:
    """Outward turn of a bent forearm about the trunk's long axis; None where the arm is not so."""
    if sight.elbow_flexion_deg < MIN_ROTATION_BEND_DEG or sight.elevation_seen_deg > HANGING_DEG:
        return None
    forward, _, right = sight.axes
    forearm = sight.near.wrist_m - sight.near.elbow_m
    return math.degrees(
        math.atan2(float(forearm @ right) * sight.side.sign, float(forearm @ forward))
    )


def _rested(state: WrongArm, time_s: float, now: Arms) -> WrongArm:
    resting = (*state.resting, (time_s, now))
    if time_s - resting[0][0] < REST_S:
        return replace(state, resting=resting)
    arms = [row for _, row in resting]
    return replace(
        state,
        resting=(),
        rest=Arms(
            float(np.median([row.near_deg for row in arms])),
            float(np.median([row.other_deg for row in arms])),
            _middle([row.near_turn_deg for row in arms]),
            _middle([row.other_turn_deg for row in arms]),
        ),
    )


def _middle(values: list[float | None]) -> float | None:
    known = [value for value in values if value is not None]
    return float(np.median(known)) if 2 * len(known) > len(values) else None


def _wrong(movement: Movement | None, rest: Arms, now: Arms) -> bool:
    """Whether the other arm is away along the movement and the exercised one hangs as it did."""
    if now.near_deg > HANGING_DEG or abs(now.near_deg - rest.near_deg) > STILL_DEG:
        return False
    if movement is not Movement.EXTERNAL_ROTATION_0:
        return now.other_deg - rest.other_deg > RAISED_DEG
    if (now.near_turn_deg is None) is not (rest.near_turn_deg is None):
        return False  # it has bent or straightened
    near_turned = _apart_deg(now.near_turn_deg, rest.near_turn_deg)
    return near_turned < STILL_DEG and _apart_deg(now.other_turn_deg, rest.other_turn_deg) > (
        RAISED_DEG
    )


def _apart_deg(a_deg: float | None, b_deg: float | None) -> float:
    if a_deg is None or b_deg is None:
        return 0.0
    return abs((a_deg - b_deg + 180.0) % 360.0 - 180.0)

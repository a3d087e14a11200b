"""What an exercise leads one to expect of a body, before anything is seen.

Every expectation is a mean with two spreads: how far people and sittings differ from it, which a
whole recording shares, and how far one frame strays from the sitting's own mean. The data overrule
it by their weight.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from coach.domain.movement import Movement, Position, Side, View
from coach.goniometry.angles import Vector, unit

TURN_GAIN = 1.35
"""Seen from the front the metric points show three quarters of the trunk's turn (tuning people)."""
AHEAD_WITHIN_DEG = 10.0
"""A propped forearm points straight ahead of a trunk at rest within this."""
FOOT_END_ELEVATION_DEG = 25.0
"""A laptop on a chair or table a metre above a lying body and two metres from its shoulders."""

LOG_LENGTHS = np.log([0.375, 0.225, 0.566, 0.50])
LOG_LENGTHS_SD = np.array([0.1, 0.18, 0.06, 0.1])
"""Half breadth of shoulders and hips, upper arm and forearm over the trunk. Tuning people: means
0.375, 0.239, 0.566, 0.501, SDs 0.021, 0.014, 0.011, 0.035; the rig's hips are wider than living
ones (hip joints 0.17 m apart, trunk 0.47 m: half 0.18; from memory), so theirs is left wide. Upper
arm 0.186 and forearm 0.146 of body height (Winter, from memory) are 0.66 and 0.52 of a trunk of
0.28, to the acromion instead of the joint's centre."""


@dataclass(frozen=True, slots=True)
class Habit:
    """A quantity in degrees: mean, spread between sittings, spread within one."""

    mean_deg: float
    between_deg: float
    within_deg: float


@dataclass(frozen=True, slots=True)
class Trust:
    """Standard deviations of what the pose model says, by movement, position and view.

    ``trunk_deg`` of the metric points' trunk about its X, Y and Z, whose turn away from the view is
    first multiplied by ``turn_gain``; ``upper_arm`` and ``forearm``
    of the components of the metric points' directions across the ray and along it; ``elbow`` and
    ``wrist`` of the picture's points, trunk lengths.
    """

    trunk_deg: tuple[float, float, float] = (20.0, 10.0, 14.0)
    turn_gain: float = 1.0
    upper_arm: tuple[float, float] = (0.8, 0.4)
    forearm: tuple[float, float] = (0.8, 0.8)
    elbow: float = 0.05
    wrist: float = 0.03


@dataclass(frozen=True, slots=True, eq=False)
class Expectation:
    """What to expect of one movement in one position and view.

    ``normals`` (K, 3), K at most 2: directions in trunk axes; the upper arm lies ``planes[k]``
    out of the plane square to each. ``trunk`` (3, 3) are the axes in camera axes; its spreads are
    about its own X, Y and Z. ``upper_arm`` (3,) is where it points, in trunk axes, as long as only
    the forearm turns. ``propped`` is set where the forearm rests against the room: it then
    keeps its direction while the trunk turns, and at rest points straight ahead of it.
    """

    sign: int
    normals: Vector = field(repr=False)
    planes: tuple[Habit, ...]
    elbow: Habit
    trunk: Vector = field(repr=False)
    trunk_between_deg: tuple[float, float, float]
    trunk_within_deg: tuple[float, float, float]
    trust: Trust
    upper_arm: Vector | None = field(default=None, repr=False)
    propped: Habit | None = None

    @classmethod
    def of(cls, movement: Movement, side: Side, position: Position, view: View) -> Expectation:
        """Look it up."""
        normals, planes = _planes(movement, side.sign)
        return cls(
            side.sign,
            normals,
            planes,
            _elbow(movement),
            trunk_seen_from(view, position, side),
            (15.0, 12.0, 15.0),
            _restless_deg(position),
            trust_in(movement, position, view),
            _pointing(movement, side.sign),
            Habit(0, 25, 4) if position is Position.DOORWAY else None,
        )


def trust_in(movement: Movement, position: Position, view: View) -> Trust:
    """How far the model's points are believed; from tuning people (``tests/bench/fit.py``)."""
    gain = TURN_GAIN if view in (View.FRONT, View.BACK) else 1.0
    match movement, position, view:
        case _, Position.DOORWAY, _:
            return Trust((20, 16, 14), 1.4, wrist=0.3, forearm=(3, 3))
        case Movement.HAND_BEHIND_BACK, _, _:
            return Trust((10, 10, 8), gain, (3, 3), (3, 3), elbow=0.2, wrist=0.3)
        case Movement.HORIZONTAL_ADDUCTION, _, View.FRONT:
            return Trust((30, 20, 20), gain, upper_arm=(0.8, 0.8), elbow=0.03, wrist=0.02)
        case Movement.HORIZONTAL_ADDUCTION, _, _:
            return Trust((20, 25, 14), upper_arm=(0.8, 0.25), elbow=0.14)
        case Movement.EXTERNAL_ROTATION_0, Position.SUPINE, _:
            return Trust((20, 25, 14), upper_arm=(0.8, 0.8), forearm=(0.8, 0.4))
        case Movement.EXTERNAL_ROTATION_0, _, _:
            return Trust(turn_gain=gain, upper_arm=(0.3, 0.3), elbow=0.02, wrist=0.02)
        case Movement.EXTERNAL_ROTATION_90, Position.SUPINE, _:
            return Trust(upper_arm=(0.8, 0.8), forearm=(0.8, 0.4), wrist=0.02)
        case Movement.FLEXION | Movement.EXTENSION, Position.SUPINE | Position.PRONE, _:
            return Trust((30, 20, 20), forearm=(0.4, 0.4))
        case Movement.EXTERNAL_ROTATION_90, _, _:
            return Trust(upper_arm=(0.8, 0.8), forearm=(1.5, 1.5), elbow=0.03)
        case Movement.ABDUCTION, _, _:
            return Trust((20, 10, 14), gain, (0.8, 0.8), (0.4, 0.4), elbow=0.03, wrist=0.06)
        case Movement.FLEXION, _, _:
            return Trust((10, 10, 10), upper_arm=(0.8, 0.3), elbow=0.06, wrist=0.045)
        case _:
            return Trust(turn_gain=gain)


def trunk_seen_from(view: View, position: Position, side: Side) -> Vector:
    """Axes of the trunk (3, 3), as columns in camera axes, where the view is as asked."""
    s = float(side.sign)
    toward, away = np.array([0.0, 0.0, -1.0]), np.array([0.0, 0.0, 1.0])
    up, right = np.array([0.0, -1.0, 0.0]), np.array([1.0, 0.0, 0.0])
    lift_rad = np.radians(FOOT_END_ELEVATION_DEG)
    front = {View.FRONT: toward, View.BACK: away, View.SIDE: s * right, View.FOOT: toward}[view]
    match position:
        case Position.STANDING | Position.SITTING | Position.DOORWAY:
            forward, along = front, up
        case Position.SUPINE | Position.PRONE:
            facing = 1.0 if position is Position.SUPINE else -1.0
            if view is View.FOOT:
                along = np.cos(lift_rad) * away + np.sin(lift_rad) * up
                forward = facing * (np.cos(lift_rad) * up + np.sin(lift_rad) * toward)
            else:
                along, forward = -facing * s * right, facing * up
    across = np.cross(forward, along)
    return np.stack([unit(forward), unit(along), unit(across)], axis=-1)


def _planes(movement: Movement, sign: int) -> tuple[Vector, tuple[Habit, ...]]:
    forward, up, out = np.array([1.0, 0, 0]), np.array([0, 1.0, 0]), np.array([0, 0, 1.0 * sign])
    match movement:
        case Movement.FLEXION | Movement.EXTENSION:
            return out[None], (Habit(11, 7, 4),)
        case Movement.ABDUCTION:
            return forward[None], (Habit(9, 8, 4),)
        case Movement.HORIZONTAL_ADDUCTION:
            return up[None], (Habit(0, 8, 8),)
        case Movement.EXTERNAL_ROTATION_0:
            return np.stack([forward, out]), (Habit(3, 5, 2.5), Habit(8, 6, 2.5))
        case Movement.EXTERNAL_ROTATION_90:
            return np.stack([forward, up]), (Habit(7, 7, 3), Habit(0, 6, 3))
        case Movement.HAND_BEHIND_BACK:
            return np.zeros((0, 3)), ()


def _pointing(movement: Movement, sign: int) -> Vector | None:
    match movement:
        case Movement.EXTERNAL_ROTATION_0:
            return np.array([0.0, -1.0, 0.0])
        case Movement.EXTERNAL_ROTATION_90:
            return np.array([0.0, 0.0, float(sign)])
        case _:
            return None


def _elbow(movement: Movement) -> Habit:
    match movement:
        case Movement.EXTERNAL_ROTATION_0 | Movement.EXTERNAL_ROTATION_90:
            return Habit(90, 7, 3)
        case Movement.HAND_BEHIND_BACK:
            return Habit(100, 25, 15)
        case Movement.HORIZONTAL_ADDUCTION:
            return Habit(35, 30, 8)
        case _:
            return Habit(11, 6, 4)


def _restless_deg(position: Position) -> tuple[float, float, float]:
    """Lean aside, turn, and lean forward within one sitting; in a doorway the turn is the point."""
    return (4.5, 35.0, 6.0) if position is Position.DOORWAY else (4.5, 10.0, 6.0)

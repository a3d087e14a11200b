"""What stands, lies or is held beside the person, as solids in the room."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from coach.domain.exercise import Equipment
from coach.domain.movement import Position
from coach.figure import proportions as size
from coach.figure.limbs import Solid, chain
from coach.figure.rotation import Vector, X, Y, Z, unit
from coach.figure.shapes import Role
from coach.figure.skeleton import LEFT, RIGHT, Joints

STICK = 0.56
"""Length of a stick: about a metre."""
_STICK_RADIUS = 0.011
_WALL_HEIGHT = 1.22
_WALL_HALF = 0.42
_POST_HEIGHT = 1.20
_SEAT_BELOW_HIPS = 0.058
_BESIDE_HAND = np.array([0.03, 0.0, -0.056])
"""From the planted hand to the door frame, on the palm's side, toward which the trunk turns."""
_UNDER_HAND = 0.030
_BEHIND = -0.3
"""Nearness added to what everything else is painted over."""


@dataclass(frozen=True, slots=True)
class Setting:
    """What does not move: the equipment and the room, set by the person's course through it."""

    position: Position
    equipment: tuple[Equipment, ...]
    course: tuple[Joints, ...]
    """The person at instants all through the loop, the first at its start."""

    @property
    def standing_still(self) -> tuple[Solid, ...]:
        """Floor and furniture."""
        solids = [] if self.position.lying else [_shadow(self.course[0])]
        if self.position is Position.SITTING:
            solids += _chair(self.course[0])
        if self.position.lying:
            solids += _mat(self.course)
        if Equipment.WALL in self.equipment:
            solids.append(_wall(self.course))
        if self.position is Position.DOORWAY:
            solids += _post(self.course[0])
        if Equipment.TABLE in self.equipment:
            side = RIGHT if self.position is Position.SITTING else LEFT
            solids += _table(self.course, side, clear=self.position is Position.SITTING)
        if self.position is Position.SIDE_LYING:
            solids.append(_pillow(self.course[0]))
        return tuple(solids)

    def carried(self, joints: Joints) -> tuple[Solid, ...]:
        """Give what moves with the person."""
        solids = []
        if Equipment.STICK in self.equipment:
            solids.append(_stick(joints))
        if Equipment.TOWEL in self.equipment:
            solids.append(_towel(joints, self.position))
        return tuple(solids)


def wall_side(joints: Joints) -> Vector:
    """Give the unit vector to the wall that the exercised hand is on: ahead, or out to the side."""
    reach = joints.hand[RIGHT] - joints.shoulder[RIGHT]
    return X if reach[0] > abs(reach[2]) else Z


def _shadow(joints: Joints) -> Solid:
    middle = joints.ankle.mean(axis=0) * [1.0, 0.0, 1.0] + 0.03 * X
    turns = np.linspace(0.0, 2.0 * np.pi, 40, endpoint=False)
    ring = tuple(middle + 0.27 * np.cos(t) * X + 0.24 * np.sin(t) * Z for t in turns)
    return Solid(Role.FLOOR, polygon=ring, nearer=3 * _BEHIND)


def _mat(course: Sequence[Joints]) -> list[Solid]:
    joints = course[0]
    ends = np.concatenate([joints.head[None], joints.toe])
    low, high = ends.min(axis=0) - 0.10, ends.max(axis=0) + 0.08
    half = 0.30
    middle = joints.pelvis[2]
    corners = [
        np.array([x, 0.0, z])
        for x, z in (
            (low[0], middle - half),
            (high[0], middle - half),
            (high[0], middle + half),
            (low[0], middle + half),
        )
    ]
    under = tuple(corner - 0.022 * Y for corner in corners)
    return [
        Solid(Role.FLOOR, polygon=under, nearer=4 * _BEHIND),
        Solid(Role.MAT, polygon=tuple(corners), nearer=3 * _BEHIND),
    ]


def _wall(course: Sequence[Joints]) -> Solid:
    normal = wall_side(course[-1])
    along = Z if normal is X else X
    at = max(float(joints.hand[RIGHT] @ normal) for joints in course) + 0.025
    middle = course[0].hand[RIGHT]
    corners = []
    for way, height in ((-1, 0.0), (1, 0.0), (1, _WALL_HEIGHT), (-1, _WALL_HEIGHT)):
        flat = at * normal + (float(middle @ along) + way * _WALL_HALF) * along
        corners.append(flat + height * Y)
    return Solid(Role.WALL, polygon=tuple(corners), nearer=5 * _BEHIND)


def _post(joints: Joints) -> list[Solid]:
    foot = (joints.hand[RIGHT] + joints.wrist[RIGHT]) / 2 * [1.0, 0.0, 1.0] + _BESIDE_HAND
    width, deep = 0.030, 0.05
    ring = [-deep * X + width * Z, deep * X + width * Z, deep * X - width * Z]
    ring.append(-deep * X - width * Z)
    solids = []
    # The three faces that can be seen; one colour, parted by their outlines.
    for first, second in ((0, 1), (1, 2), (3, 0)):
        base = (foot + ring[first], foot + ring[second])
        face = (*base, base[1] + _POST_HEIGHT * Y, base[0] + _POST_HEIGHT * Y)
        solids.append(Solid(Role.FURNITURE, polygon=face, nearer=-0.01 if first == 3 else 0.0))
    return solids


def _box(low: Vector, high: Vector, nearer: float) -> list[Solid]:
    """Give the top, front and right faces of a box."""
    x, y, z = (np.array([low[i], high[i]]) for i in range(3))
    top = [(0, 1, 0), (1, 1, 0), (1, 1, 1), (0, 1, 1)]
    front = [(1, 0, 0), (1, 1, 0), (1, 1, 1), (1, 0, 1)]
    right = [(0, 0, 1), (1, 0, 1), (1, 1, 1), (0, 1, 1)]
    return [
        Solid(
            Role.FURNITURE,
            polygon=tuple(np.array([x[i], y[j], z[k]]) for i, j, k in face),
            nearer=nearer,
        )
        for face in (front, right, top)
    ]


def _chair(joints: Joints) -> list[Solid]:
    seat = float(joints.pelvis[1]) - _SEAT_BELOW_HIPS
    low, high = np.array([-0.09, seat - 0.022, -0.13]), np.array([0.17, seat, 0.13])
    legs = [
        chain(
            Role.FURNITURE, (np.array([x, seat - 0.02, z]), 0.011), (np.array([x, 0.01, z]), 0.011)
        )
        for x in (low[0] + 0.02, high[0] - 0.02)
        for z in (low[2] + 0.02, high[2] - 0.02)
    ]
    back = [
        chain(
            Role.FURNITURE,
            (np.array([-0.09, seat, z]), 0.011),
            (np.array([-0.12, seat + 0.25, z]), 0.011),
        )
        for z in (-0.11, 0.11)
    ]
    rail = [
        chain(
            Role.FURNITURE,
            (np.array([-0.118, seat + h, -0.11]), 0.016),
            (np.array([-0.118, seat + h, 0.11]), 0.016),
        )
        for h in (0.17, 0.235)
    ]
    return [*_pushed(legs, -0.12), *_box(low, high, -0.14), *back, *rail]


def _table(course: Sequence[Joints], side: int, *, clear: bool) -> list[Solid]:
    hands = np.stack([joints.hand[side] for joints in course])
    wrists = np.stack([joints.wrist[side] for joints in course])
    both = np.concatenate([hands, wrists])
    top = float(both[:, 1].min()) - _UNDER_HAND
    low, high = both.min(axis=0) - [0.08, 0, 0.10], both.max(axis=0) + np.array([0.09, 0, 0.10])
    if clear:
        low[0] = max(low[0], 0.12)
        low[2] = min(low[2], -0.16)
    low[1], high[1] = top - 0.02, top
    legs = [
        chain(
            Role.FURNITURE, (np.array([x, top - 0.02, z]), 0.012), (np.array([x, 0.01, z]), 0.012)
        )
        for x in (low[0] + 0.02, high[0] - 0.02)
        for z in (low[2] + 0.02, high[2] - 0.02)
    ]
    return [*_pushed(legs, -0.05), *_box(low, high, -0.03)]


def _pushed(solids: Sequence[Solid], nearer: float) -> list[Solid]:
    return [Solid(s.role, s.strokes, s.polygon, nearer=nearer) for s in solids]


def _pillow(joints: Joints) -> Solid:
    below = joints.head * [1.0, 0.0, 1.0]
    room = max(0.02, (float(joints.head[1]) - size.HEAD_RADIUS) / 2)
    ball = below + (room + 0.006) * Y
    return chain(Role.CLOTH, (ball - 0.06 * X, room), (ball + 0.06 * X, room), nearer=-0.05)


def _stick(joints: Joints) -> Solid:
    grips = (joints.wrist + joints.hand) / 2
    middle, along = grips.mean(axis=0), unit(grips[RIGHT] - grips[LEFT])
    return chain(
        Role.TOOL,
        (middle - STICK / 2 * along, _STICK_RADIUS),
        (middle + STICK / 2 * along, _STICK_RADIUS),
        nearer=0.03,
    )


def _towel(joints: Joints, position: Position) -> Solid:
    if position is Position.PRONE:
        under = joints.head * [1.0, 0.0, 1.0] + 0.018 * Y
        return chain(Role.CLOTH, (under - 0.05 * Z, 0.018), (under + 0.05 * Z, 0.018), nearer=-0.05)
    if position is Position.SUPINE:
        under = joints.elbow[RIGHT] * [1.0, 0.0, 1.0] + 0.012 * Y
        return chain(Role.CLOTH, (under - 0.06 * X, 0.014), (under + 0.06 * X, 0.014), nearer=-0.05)
    under = joints.hand[RIGHT] - _UNDER_HAND * Y
    return chain(Role.CLOTH, (under - 0.07 * X, 0.010), (under + 0.03 * X, 0.010), nearer=-0.02)

"""Forward kinematics: from the angles of one instant to the joints of the person."""

from __future__ import annotations

from dataclasses import dataclass
from typing import assert_never

import numpy as np

from coach.domain.movement import Position
from coach.figure import proportions as size
from coach.figure.motion import Angles
from coach.figure.rotation import Vector, X, Y, Z, about, arm_directions, two_links

RIGHT, LEFT = 1, 0
"""Rows of what is there twice; the exercised side is the right one until it is mirrored."""

_SEAT_SPREAD = 1.25
_SIT_BACK = 0.16
"""How far the hips of someone standing go back as the trunk bends level, in statures."""
_KNEE_SOFT = 0.995
"""A standing leg is never quite straight, so that the knee knows which way to bend."""


@dataclass(frozen=True, slots=True)
class Joints:
    """Centres in statures, in axes of the room: Y up, arrays of sides (left, right) by (3,)."""

    shoulder: Vector
    elbow: Vector
    wrist: Vector
    hand: Vector
    """Where the half closed hand ends."""
    hip: Vector
    knee: Vector
    ankle: Vector
    toe: Vector
    neck: Vector
    """Between the shoulders."""
    pelvis: Vector
    head: Vector
    """The head's middle."""
    forward: Vector
    """Where the face looks, a unit vector."""
    crown: Vector
    """From the neck to the crown, a unit vector."""

    def moved(self, matrix: Vector, by: Vector) -> Joints:
        """Give the joints turned by a matrix (3, 3), then shifted by a vector (3,)."""
        places = {
            name: getattr(self, name) @ matrix.T + by
            for name in Joints.__slots__
            if name not in ("forward", "crown")
        }
        return Joints(**places, forward=matrix @ self.forward, crown=matrix @ self.crown)

    def mirrored(self) -> Joints:
        """Give the mirror image in the person's own sagittal plane of standing."""
        across = np.array([1.0, 1.0, -1.0])
        values = {name: getattr(self, name) * across for name in Joints.__slots__}
        for name in ("shoulder", "elbow", "wrist", "hand", "hip", "knee", "ankle", "toe"):
            values[name] = values[name][::-1]
        return Joints(**values)


def joints_of(
    angles: Angles,
    position: Position,
    *,
    on_exercised_side: bool = False,
    legs_flat: bool = False,
) -> Joints:
    """Pose a person whose right side is exercised.

    In the room X is where someone standing faces, Z their right, and the floor is at Y = 0. Lying
    on the back the feet point to X, face down the head does; lying on one side the face points to
    Z, and ``on_exercised_side`` says on which. ``legs_flat`` lets someone on the back not bend the
    knees.
    """
    arm, other, (lean, turn, bend) = angles[:4], angles[4:8], angles[8:]
    whole = np.eye(3)
    if position is Position.DOORWAY:
        whole, turn = about(Y, -turn), 0.0
    frame = about(X, lean) @ about(Z, -bend) @ about(Y, -turn)
    pelvis = _pelvis(position, float(bend))
    shoulders = pelvis + np.stack(
        [frame @ (size.TRUNK * Y + side * size.SHOULDER_HALF * Z) for side in (-1, 1)]
    )
    links = np.stack([arm_directions(*other) * [1.0, 1.0, -1.0], arm_directions(*arm)]) @ frame.T
    elbow = shoulders + size.UPPER_ARM * links[:, 0]
    wrist = elbow + size.FOREARM * links[:, 1]
    hip, knee, ankle, toe = _legs(position, pelvis, flat=legs_flat)
    neck = shoulders.mean(axis=0)
    person = Joints(
        shoulder=shoulders,
        elbow=elbow,
        wrist=wrist,
        hand=wrist + size.FIST * size.HAND * links[:, 1],
        hip=hip,
        knee=knee,
        ankle=ankle,
        toe=toe,
        neck=neck,
        pelvis=pelvis,
        head=neck + frame @ (size.HEAD_ABOVE_SHOULDERS * Y),
        forward=frame @ X,
        crown=frame @ Y,
    )
    return person.moved(*_laid(position, on_exercised_side=on_exercised_side)).moved(
        whole, np.zeros(3)
    )


def _pelvis(position: Position, bend: float) -> Vector:
    """Give the middle of the hips; lying, the person is still upright here."""
    if position in (Position.STANDING, Position.DOORWAY):
        back = _SIT_BACK * np.sin(np.radians(np.clip(bend, -30.0, 90.0)))
        leg = _KNEE_SOFT * (size.THIGH + size.SHANK)
        return np.array([-back, size.ANKLE_HEIGHT + np.sqrt(leg**2 - back**2), 0.0])
    if position is Position.SITTING:
        return np.array([0.0, size.ANKLE_HEIGHT + size.SHANK, 0.0])
    return np.zeros(3)


def _legs(
    position: Position, pelvis: Vector, *, flat: bool
) -> tuple[Vector, Vector, Vector, Vector]:
    """Give hips, knees, ankles and toes, (2, 3) each."""
    out = np.array([-1.0, 1.0])[:, None] * Z
    hip = pelvis + size.HIP_HALF * out
    match position:
        case Position.STANDING | Position.DOORWAY:
            ankle = size.ANKLE_HEIGHT * Y + 1.15 * size.HIP_HALF * out
            knee = np.stack(
                [two_links(hip[s], ankle[s], size.THIGH, size.SHANK, X) for s in (0, 1)]
            )
            toes = X + 0.25 * out
        case Position.SITTING:
            knee = hip + size.THIGH * _unit_rows(X + 0.12 * _SEAT_SPREAD * out)
            ankle = knee - size.SHANK * Y
            toes = X + 0.2 * out
        case Position.SUPINE if flat:
            knee = hip + size.THIGH * _unit_rows(-Y + 0.10 * out)
            ankle = knee + size.SHANK * _unit_rows(-Y + 0.05 * out)
            toes = X - 0.3 * Y + 0.3 * out
        case Position.SUPINE:
            knee = hip + size.THIGH * _unit_rows(0.8 * X - Y + 0.1 * out)
            ankle = knee + size.SHANK * _unit_rows(-0.8 * X - 0.6 * Y + 0.0 * out)
            toes = -Y + 0.0 * out
        case Position.PRONE:
            knee = hip + size.THIGH * _unit_rows(-Y + 0.06 * out)
            ankle = knee + size.SHANK * _unit_rows(-Y + 0.04 * out)
            toes = -Y - 0.15 * X + 0.2 * out
        case Position.SIDE_LYING:
            bent = np.array([0.75, 0.55])[:, None] * X
            knee = hip + size.THIGH * _unit_rows(bent - 0.8 * Y)
            ankle = knee + size.SHANK * _unit_rows(-0.55 * X - 0.85 * Y + 0.0 * out)
            toes = 0.5 * X - Y + 0.0 * out
        case _ as never:
            assert_never(never)
    return hip, knee, ankle, ankle + 0.7 * size.FOOT * _unit_rows(toes)


def _laid(position: Position, *, on_exercised_side: bool) -> tuple[Vector, Vector]:
    """Give the turn and the shift that lay an upright person down."""
    match position:
        case Position.STANDING | Position.DOORWAY | Position.SITTING:
            return np.eye(3), np.zeros(3)
        case Position.SUPINE:
            return about(Z, 90.0), size.HALF_DEPTH * Y
        case Position.PRONE:
            return about(Z, -90.0), size.HALF_DEPTH * Y
        case Position.SIDE_LYING:
            up = -1.0 if on_exercised_side else 1.0
            matrix = np.stack([Z, up * X, up * Y], axis=1)
            return matrix, (size.SHOULDER_HALF + 0.03) * Y
        case _ as never:
            assert_never(never)


def _unit_rows(v: Vector) -> Vector:
    rows: Vector = v / np.linalg.norm(v, axis=1, keepdims=True)
    return rows

"""The person's own shapes in the room: where, how thick, what."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from coach.figure import proportions as size
from coach.figure.rotation import Vector, unit
from coach.figure.shapes import Role
from coach.figure.skeleton import LEFT, RIGHT, Joints

Ball = tuple[Vector, float]
"""A centre in the room and a radius, in statures."""


@dataclass(frozen=True, slots=True)
class Solid:
    """Strokes and polygons in the room that are painted as one shape.

    The mean of its points orders it among the others; ``nearer`` is added to its nearness."""

    role: Role
    strokes: tuple[tuple[Ball, Ball], ...] = ()
    polygon: tuple[Vector, ...] = ()
    nearer: float = 0.0

    def middle(self) -> Vector:
        """Give the point whose nearness counts."""
        points = [ball[0] for stroke in self.strokes for ball in stroke] + list(self.polygon)
        centre: Vector = np.mean(points, axis=0)
        return centre


def chain(role: Role, *balls: Ball, nearer: float = 0.0) -> Solid:
    """Join balls one after the other."""
    pairs = tuple(pairwise(balls)) or ((balls[0], balls[0]),)
    return Solid(role, pairs, nearer=nearer)


def arm(joints: Joints, side: int, role: Role) -> Solid:
    """Give the upper arm, the forearm and its half closed hand."""
    shoulder, elbow = joints.shoulder[side], joints.elbow[side]
    wrist, hand = joints.wrist[side], joints.hand[side]
    return Solid(
        role,
        (
            ((shoulder, 0.037), (elbow, 0.030)),
            ((elbow, 0.030), (wrist, 0.022)),
            ((wrist, 0.024), (hand, 0.025)),
        ),
        nearer=0.014,
    )


def leg(joints: Joints, side: int) -> list[Solid]:
    """Give a leg in trousers, and a shoe."""
    hip, knee, ankle = joints.hip[side], joints.knee[side], joints.ankle[side]
    return [
        chain(Role.TROUSERS, (hip, 0.056), (knee, 0.041), (ankle, 0.029)),
        chain(Role.SHOE, (ankle, 0.028), (joints.toe[side], 0.021), nearer=0.01),
    ]


def trunk(joints: Joints) -> Solid:
    """Give the shirt."""
    inner = [joints.neck + 0.80 * (shoulder - joints.neck) for shoulder in joints.shoulder]
    down = unit(joints.pelvis - joints.neck)
    inner = [point + 0.012 * down for point in inner]
    chest = joints.neck + 0.30 * (joints.pelvis - joints.neck)
    low = [joints.pelvis + 0.9 * (hip - joints.pelvis) - 0.01 * down for hip in joints.hip]
    strokes = (
        ((inner[LEFT], 0.044), (low[LEFT], 0.056)),
        ((inner[RIGHT], 0.044), (low[RIGHT], 0.056)),
        ((inner[LEFT], 0.044), (inner[RIGHT], 0.044)),
        ((low[LEFT], 0.056), (low[RIGHT], 0.056)),
        ((chest, 0.078), (joints.pelvis, 0.062)),
        ((joints.neck + 0.015 * down, 0.040), (chest, 0.078)),
    )
    return Solid(Role.SHIRT, strokes)


def head(joints: Joints, toward: Vector) -> list[Solid]:
    """Give neck, hair and head, and as much of a face as is seen from ``toward``."""
    middle, radius = joints.head, size.HEAD_RADIUS
    ahead, up = joints.forward, joints.crown
    right = np.cross(ahead, up)
    nose = middle + 0.95 * radius * ahead
    solids = [
        chain(Role.SKIN, (joints.neck, 0.030), (middle, 0.030), nearer=-0.05),
        chain(
            Role.HAIR,
            (middle - 0.020 * ahead + 0.018 * up, 1.02 * radius),
            nearer=0.0 if ahead @ toward < -0.25 else -0.03,
        ),
        Solid(Role.SKIN, (((middle, radius), (middle, radius)), ((nose, 0.011), (nose, 0.011)))),
    ]
    for side in (-1.0, 1.0):
        normal = unit(ahead + 0.40 * side * right + 0.10 * up)
        if normal @ toward > 0.12:
            eye = middle + radius * normal
            solids.append(chain(Role.FACE, (eye, 0.0075), nearer=0.02))
    smile = [
        unit(ahead + 0.30 * share * right - (0.42 - 0.10 * share**2) * up)
        for share in (-1.0, -0.5, 0.0, 0.5, 1.0)
    ]
    seen = [(middle + radius * n, 0.0045) for n in smile if n @ toward > 0.10]
    if len(seen) > 1:
        solids.append(chain(Role.FACE, *seen, nearer=0.02))
    return solids


def person(joints: Joints, toward: Vector) -> list[Solid]:
    """Give every shape of the person, in no order."""
    return [
        trunk(joints),
        *head(joints, toward),
        *leg(joints, LEFT),
        *leg(joints, RIGHT),
        arm(joints, LEFT, Role.SKIN),
        arm(joints, RIGHT, Role.WORKING),
    ]

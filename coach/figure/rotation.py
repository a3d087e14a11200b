"""Turns about the axes of a person: X forward, Y up, Z to the person's right (right-handed)."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

Vector = NDArray[np.float64]

X = np.array([1.0, 0.0, 0.0])
Y = np.array([0.0, 1.0, 0.0])
Z = np.array([0.0, 0.0, 1.0])


def about(axis: Vector, angle_deg: float) -> Vector:
    """Give the matrix (3, 3) that turns by an angle about a unit axis (Rodrigues' formula)."""
    x, y, z = axis
    across = np.array([[0.0, -z, y], [z, 0.0, -x], [-y, x, 0.0]])
    turn = math.radians(angle_deg)
    matrix: Vector = np.eye(3) + math.sin(turn) * across + (1.0 - math.cos(turn)) * across @ across
    return matrix


def unit(v: Vector) -> Vector:
    """Scale a vector to length one."""
    scaled: Vector = v / np.linalg.norm(v)
    return scaled


def arm_directions(plane: float, elevation: float, rotation: float, elbow: float) -> Vector:
    """Give the directions (2, 3) of a right upper arm and forearm in the trunk's axes.

    Degrees, as in ``Bend``. The arm is lifted straight out of hanging in its plane, without any
    twist, and only then rotated about itself, outward positive; at zero the hand of a hanging arm
    bends forward. In the Y-X-Y angles of Wu et al. 2005 the axial rotation is this one less the
    plane of elevation, and unlike those these angles do not spin a hanging arm with its plane.
    """
    p = math.radians(plane)
    level = about(np.array([math.cos(p), 0.0, -math.sin(p)]), -elevation)
    upper = -level @ Y
    ahead = level @ X
    outward = np.cross(upper, ahead)
    turn, bent = math.radians(rotation), math.radians(elbow)
    bending = math.cos(turn) * ahead + math.sin(turn) * outward
    return np.stack([upper, math.cos(bent) * upper + math.sin(bent) * bending])


def two_links(begin: Vector, end: Vector, first: float, second: float, pole: Vector) -> Vector:
    """Give the joint between two links from ``begin`` to ``end``, bent toward ``pole``."""
    span = end - begin
    length = min(float(np.linalg.norm(span)), first + second)
    along = unit(span)
    side = unit(pole - (pole @ along) * along)
    down = (first**2 - second**2 + length**2) / (2.0 * length)
    return begin + down * along + math.sqrt(max(0.0, first**2 - down**2)) * side

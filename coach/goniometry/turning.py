"""Turns of frames of axes: rotation vectors to matrices and back, for many at once."""

from __future__ import annotations

import numpy as np

from coach.goniometry.angles import Vector, cross

_TINY_RAD = 1e-6
_X, _Y = np.array([1.0, 0.0, 0.0]), np.array([0.0, 1.0, 0.0])


def turn_by(vector_rad: Vector) -> Vector:
    """Rotation matrices (..., 3, 3) of rotation vectors (..., 3), radians (Rodrigues)."""
    squared = np.add.reduce(vector_rad * vector_rad, axis=-1)
    angle = np.sqrt(squared)
    small = angle < _TINY_RAD
    safe = np.where(small, 1.0, angle)
    cosine = np.cos(angle)
    first = np.where(small, 1.0, np.sin(safe) / safe)[..., None] * vector_rad
    second = np.where(small, 0.5, (1.0 - np.cos(safe)) / (safe * safe))[..., None]
    turned: Vector = (second * vector_rad)[..., :, None] * vector_rad[..., None, :]
    x, y, z = first[..., 0], first[..., 1], first[..., 2]
    turned[..., 0, 0] += cosine
    turned[..., 1, 1] += cosine
    turned[..., 2, 2] += cosine
    turned[..., 0, 1] -= z
    turned[..., 1, 0] += z
    turned[..., 0, 2] += y
    turned[..., 2, 0] -= y
    turned[..., 1, 2] -= x
    turned[..., 2, 1] += x
    return turned


def vector_of(turn: Vector) -> Vector:
    """Rotation vectors (..., 3), radians, of rotation matrices (..., 3, 3); below half a turn."""
    trace = turn[..., 0, 0] + turn[..., 1, 1] + turn[..., 2, 2]
    angle = np.arccos(np.minimum(np.maximum((trace - 1.0) / 2.0, -1.0), 1.0))
    sine = np.sin(angle)
    small = sine < _TINY_RAD
    share = np.where(small, 0.5, angle / (2.0 * np.where(small, 1.0, sine)))
    vector = np.empty(turn.shape[:-1])
    np.subtract(turn[..., 2, 1], turn[..., 1, 2], out=vector[..., 0])
    np.subtract(turn[..., 0, 2], turn[..., 2, 0], out=vector[..., 1])
    np.subtract(turn[..., 1, 0], turn[..., 0, 1], out=vector[..., 2])
    vector *= share[..., None]
    return vector


def between(first: Vector, second: Vector) -> Vector:
    """Rotation vector (..., 3), radians, in the axes of ``first``, that turns it into ``second``.

    Both are matrices (..., 3, 3) whose columns are axes.
    """
    return vector_of(np.swapaxes(first, -1, -2) @ second)


def across(direction: Vector) -> tuple[Vector, Vector]:
    """Two unit vectors (..., 3) square to unit vectors (..., 3) and to each other."""
    aside = np.where(np.abs(direction[..., :1]) < 0.8, _X, _Y)
    first = cross(direction, aside)
    first /= np.sqrt(np.add.reduce(first * first, axis=-1, keepdims=True))
    return first, cross(direction, first)

"""Turns of frames of axes: rotation vectors to matrices and back, for many at once."""

from __future__ import annotations

import numpy as np

from coach.goniometry.angles import Vector, cross, unit

_TINY_RAD = 1e-6


def turn_by(vector_rad: Vector) -> Vector:
    """Rotation matrices (..., 3, 3) of rotation vectors (..., 3), radians (Rodrigues)."""
    angle = np.sqrt(np.einsum("...i,...i->...", vector_rad, vector_rad))[..., None, None]
    small = angle < _TINY_RAD
    safe = np.where(small, 1.0, angle)
    first = np.where(small, 1.0, np.sin(safe) / safe)
    second = np.where(small, 0.5, (1.0 - np.cos(safe)) / safe**2)
    skew = np.zeros((*vector_rad.shape, 3))
    x, y, z = vector_rad[..., 0], vector_rad[..., 1], vector_rad[..., 2]
    skew[..., 0, 1], skew[..., 0, 2], skew[..., 1, 2] = -z, y, -x
    skew[..., 1, 0], skew[..., 2, 0], skew[..., 2, 1] = z, -y, x
    turned: Vector = np.eye(3) + first * skew + second * (skew @ skew)
    return turned


def vector_of(turn: Vector) -> Vector:
    """Rotation vectors (..., 3), radians, of rotation matrices (..., 3, 3); below half a turn."""
    cosine = np.clip((np.einsum("...ii->...", turn) - 1.0) / 2.0, -1.0, 1.0)
    angle = np.arccos(cosine)
    sine = np.sin(angle)
    share = np.where(sine < _TINY_RAD, 0.5, angle / (2.0 * np.where(sine < _TINY_RAD, 1.0, sine)))
    twice: Vector = np.stack(
        (
            turn[..., 2, 1] - turn[..., 1, 2],
            turn[..., 0, 2] - turn[..., 2, 0],
            turn[..., 1, 0] - turn[..., 0, 1],
        ),
        axis=-1,
    )
    vector: Vector = share[..., None] * twice
    return vector


def between(first: Vector, second: Vector) -> Vector:
    """Rotation vector (..., 3), radians, in the axes of ``first``, that turns it into ``second``.

    Both are matrices (..., 3, 3) whose columns are axes.
    """
    return vector_of(np.swapaxes(first, -1, -2) @ second)


def across(direction: Vector) -> tuple[Vector, Vector]:
    """Two unit vectors (..., 3) square to unit vectors (..., 3) and to each other."""
    aside = np.where(np.abs(direction[..., :1]) < 0.8, (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    first = unit(cross(direction, aside))
    return first, cross(direction, first)

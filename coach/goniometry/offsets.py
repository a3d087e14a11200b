"""Where the pose model puts its points: how far from the joint centres, in trunk lengths.

The model's points are learned marks on pictures of people, not joint centres. What is constant
about the difference is taken off here; what differs between people stays in the error.
"""

from __future__ import annotations

import numpy as np

from coach.goniometry.angles import Vector, dot
from coach.goniometry.skeleton import Lengths, Stance

PICTURE_SD = (0.025, 0.03, 0.035, 0.05)
"""What is left, one standard deviation, of the shoulders and hips; rows as in ``skeleton``."""

DIRECTIONS = (
    "out",
    "up",
    "forward",
    "out, arm raised",
    "up, arm raised",
    "forward, arm raised",
    "up, trunk seen from the side",
    "forward, trunk seen from the side",
    "along the upper arm, raised",
    "along the forearm, raised",
    "bent forearm, upper arm seen end-on",
)
OFFSETS = np.array(
    [
        [-0.036, 0.053, 0.06, -0.01, -0.071, 0.028, 0.021, -0.058, 0, 0, 0],
        [-0.042, 0.039, 0.068, 0, 0, 0, 0.075, -0.069, 0, 0, 0],
        [-0.04, -0.004, 0.062, 0, 0, 0, -0.013, -0.014, 0, 0, 0],
        [-0.037, -0.006, 0.054, 0, 0, 0, -0.05, 0.03, 0, 0, 0],
        [-0.019, 0.036, 0.004, 0, 0, 0, 0, 0, -0.033, 0, 0.126],
        [-0.031, -0.008, 0, 0, 0, 0, 0, 0, 0, 0.074, 0.04],
    ]
)
"""Rows as in ``skeleton``, columns as ``DIRECTIONS``: least squares over rendered tuning people of
both sexes, young and old, in all views (``tests/bench/fit.py``)."""

RAISED_FROM_DEG, RAISED_OVER_DEG, RAISED_MOST = 40.0, 100.0, 1.4
"""The shoulder's point moves with the arm's elevation from 40 degrees on."""


def directions(stance: Stance, sign: int) -> Vector:
    """Vectors (..., N, 6, len(DIRECTIONS), 3) in camera axes that ``OFFSETS`` multiplies.

    Out is away from the middle of the body, for each row on its own side.
    """
    near = _along(stance, sign) @ stance.axes
    far = near.copy()
    far[..., 0, :] *= -1.0
    rows: Vector = np.stack((near, far, near, far, near, near), axis=-3)
    return rows


def marks(stance: Stance, lengths: Lengths, sign: int) -> Vector:
    """Where the model's points lie (..., N, 6, 3) in camera axes, rows as in ``skeleton``."""
    shares = stance.shares(lengths, sign) + (OFFSETS * _NEAR) @ _along(stance, sign)
    points: Vector = stance.centre[..., None, :] + shares @ stance.axes
    return points


_NEAR = np.ones_like(OFFSETS)
_NEAR[[1, 3], 0] = -1.0
"""Turns the other side's way out into the near side's."""


def _along(stance: Stance, sign: int) -> Vector:
    """Directions of the near side along each of the stance's axes, (..., N, len(DIRECTIONS), 5)."""
    upper_arm, forearm = stance.axes[..., 3, :], stance.axes[..., 4, :]
    above = stance.elevation_deg - RAISED_FROM_DEG
    raised = np.minimum(np.maximum(above / RAISED_OVER_DEG, 0.0), RAISED_MOST)
    sideways, end_on = np.abs(stance.axes[..., 2, 2]), np.abs(upper_arm[..., 2])
    along: Vector = np.zeros((*raised.shape, len(DIRECTIONS), 5))
    along[..., 0, 2], along[..., 1, 1], along[..., 2, 0] = sign, 1.0, 1.0
    along[..., 3, 2], along[..., 4, 1], along[..., 5, 0] = sign * raised, raised, raised
    along[..., 6, 1], along[..., 7, 0] = sideways, sideways
    along[..., 8, 3], along[..., 9, 4] = raised, raised
    along[..., 10, 3], along[..., 10, 4] = -end_on * dot(forearm, upper_arm), end_on
    return along

"""The fitted body: trunk, shoulder girdle, upper arm and forearm with constant lengths.

Lengths and depths are in trunk lengths: from the middle of the hips to the middle of the shoulders
as they are at rest is 1. Camera axes are x picture right, y down, z away; trunk axes are X forward,
Y up, Z to the person's right (Wu et al. 2005, J Biomech 38:981-992, on joint centres).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from coach.goniometry.angles import Vector
from coach.goniometry.turning import across, turn_by

FREEDOMS = 13
"""Turn of the trunk (3), place (3), shoulder girdle (3), upper arm (2), forearm (2)."""
NEAR_SHOULDER, FAR_SHOULDER, NEAR_HIP, FAR_HIP, ELBOW, WRIST = range(6)
"""Rows of joints; near is the measured side."""


@dataclass(frozen=True, slots=True, eq=False)
class Lengths:
    """Half breadth of the shoulders, of the hips, upper arm, forearm; each (..., 1)."""

    shoulder: Vector
    hip: Vector
    upper_arm: Vector
    forearm: Vector

    @classmethod
    def of(cls, logarithms: Vector) -> Lengths:
        """From natural logarithms (..., 4)."""
        lengths = np.exp(logarithms)
        return cls(*(lengths[..., k : k + 1] for k in range(4)))


@dataclass(frozen=True, eq=False)
class Stance:
    """How N bodies stand; every array may have more axes in front.

    ``trunk`` (N, 3, 3): axes as columns, in camera axes. ``middle`` (N, 2): x/z and y/z of the ray
    to the middle of the shoulders at rest, ``depth`` (N,) its z. ``girdle`` (N, 3): the measured
    shoulder's rise along Y and shift along X, the other shoulder's rise. ``upper_arm``,
    ``forearm`` (N, 3): unit vectors in trunk axes.
    """

    trunk: Vector = field(repr=False)
    middle: Vector = field(repr=False)
    depth: Vector = field(repr=False)
    girdle: Vector = field(repr=False)
    upper_arm: Vector = field(repr=False)
    forearm: Vector = field(repr=False)

    def __len__(self) -> int:
        """Give the number of frames."""
        return int(self.depth.shape[-1])

    def __getitem__(self, rows: slice | NDArray[np.intp]) -> Stance:
        """Take some of the frames."""
        return Stance(
            self.trunk[rows],
            self.middle[rows],
            self.depth[rows],
            self.girdle[rows],
            self.upper_arm[rows],
            self.forearm[rows],
        )

    def moved(self, step: Vector) -> Stance:
        """Take a small step (..., N, FREEDOMS): radians, trunk lengths, log of the depth."""
        arm = np.stack((self.upper_arm, self.forearm), axis=-2)
        arm = _swung(arm, step[..., 9:13].reshape((*step.shape[:-1], 2, 2)))
        return Stance(
            self.trunk @ turn_by(step[..., 0:3]),
            self.middle + step[..., 3:5],
            self.depth * np.exp(step[..., 5]),
            self.girdle + step[..., 6:9],
            arm[..., 0, :],
            arm[..., 1, :],
        )

    @cached_property
    def arm(self) -> tuple[Vector, Vector]:
        """Directions of the upper arm and of the forearm, (..., N, 3), in camera axes."""
        both = np.stack((self.upper_arm, self.forearm), axis=-2) @ np.swapaxes(self.trunk, -1, -2)
        return both[..., 0, :], both[..., 1, :]

    def joints(self, lengths: Lengths, sign: int) -> Vector:
        """Joint centres (..., N, 6, 3) in camera axes; ``sign`` +1 for the right arm."""
        x, y = self.trunk[..., 0], self.trunk[..., 1]
        out = sign * self.trunk[..., 2]
        place = np.concatenate((self.middle, np.ones_like(self.depth)[..., None]), axis=-1)
        middle = place * self.depth[..., None]
        g = self.girdle
        shoulder = middle + lengths.shoulder * out + g[..., 0:1] * y + g[..., 1:2] * x
        other = middle - lengths.shoulder * out + g[..., 2:3] * y
        hips = middle - y
        upper_arm, forearm = self.arm
        elbow = shoulder + lengths.upper_arm * upper_arm
        wrist = elbow + lengths.forearm * forearm
        joints: Vector = np.stack(
            (shoulder, other, hips + lengths.hip * out, hips - lengths.hip * out, elbow, wrist),
            axis=-2,
        )
        return joints


def _swung(direction: Vector, step_rad: Vector) -> Vector:
    first, second = across(direction)
    swung = direction + step_rad[..., 0:1] * first + step_rad[..., 1:2] * second
    of_length_one: Vector = swung / np.sqrt(np.add.reduce(swung * swung, axis=-1, keepdims=True))
    return of_length_one


def joined(stances: Sequence[Stance]) -> Stance:
    """Put stances of single frames together."""
    return Stance(
        np.concatenate([s.trunk for s in stances]),
        np.concatenate([s.middle for s in stances]),
        np.concatenate([s.depth for s in stances]),
        np.concatenate([s.girdle for s in stances]),
        np.concatenate([s.upper_arm for s in stances]),
        np.concatenate([s.forearm for s in stances]),
    )


def elevation_deg(upper_arm: Vector) -> Vector:
    """Unsigned elevation (...,) of upper arms (..., 3) in trunk axes, 0 hanging."""
    elevation: Vector = np.degrees(np.arccos(np.minimum(np.maximum(-upper_arm[..., 1], -1.0), 1.0)))
    return elevation

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

    def moved(self, step: Vector, turn: Vector | None = None) -> Stance:
        """Take a small step (..., N, FREEDOMS): radians, trunk lengths, log of the depth.

        ``turn`` (..., N, 3, 3) is ``turn_by`` of its first three, where that is known.
        """
        first, second = self._across_the_arm
        swing = step[..., 9:13].reshape((*step.shape[:-1], 2, 2))
        arm = self._arm + swing[..., 0:1] * first + swing[..., 1:2] * second
        arm /= np.sqrt(np.add.reduce(arm * arm, axis=-1, keepdims=True))
        return Stance(
            self.trunk @ (turn_by(step[..., 0:3]) if turn is None else turn),
            self.middle + step[..., 3:5],
            self.depth * np.exp(step[..., 5]),
            self.girdle + step[..., 6:9],
            arm[..., 0, :],
            arm[..., 1, :],
        )

    @cached_property
    def axes(self) -> Vector:
        """Trunk's X, Y and Z, upper arm, forearm (..., N, 5, 3): unit vectors in camera axes."""
        in_camera = np.swapaxes(self.trunk, -1, -2)
        axes: Vector = np.concatenate((in_camera, self._arm @ in_camera), axis=-2)
        return axes

    @property
    def centre(self) -> Vector:
        """Middle of the shoulders at rest (..., N, 3) in camera axes."""
        place = np.concatenate((self.middle, np.ones_like(self.depth)[..., None]), axis=-1)
        centre: Vector = place * self.depth[..., None]
        return centre

    def shares(self, lengths: Lengths, sign: int) -> Vector:
        """How much of each of ``axes`` leads from the centre to each joint, (..., N, 6, 5).

        ``sign`` is +1 for the right arm.
        """
        g, half, hip = self.girdle, sign * lengths.shoulder[..., 0], sign * lengths.hip[..., 0]
        shares: Vector = np.zeros((*g.shape[:-1], 6, 5))
        for joint in (NEAR_SHOULDER, ELBOW, WRIST):
            shares[..., joint, 0], shares[..., joint, 1] = g[..., 1], g[..., 0]
            shares[..., joint, 2] = half
        shares[..., FAR_SHOULDER, 1], shares[..., FAR_SHOULDER, 2] = g[..., 2], -half
        shares[..., NEAR_HIP : FAR_HIP + 1, 1] = -1.0
        shares[..., NEAR_HIP, 2], shares[..., FAR_HIP, 2] = hip, -hip
        shares[..., ELBOW, 3] = shares[..., WRIST, 3] = lengths.upper_arm[..., 0]
        shares[..., WRIST, 4] = lengths.forearm[..., 0]
        return shares

    def joints(self, lengths: Lengths, sign: int) -> Vector:
        """Joint centres (..., N, 6, 3) in camera axes."""
        joints: Vector = self.centre[..., None, :] + self.shares(lengths, sign) @ self.axes
        return joints

    @cached_property
    def elevation_deg(self) -> Vector:
        """Unsigned elevation of the upper arms (..., N), 0 hanging."""
        return elevation_deg(self.upper_arm)

    @cached_property
    def _arm(self) -> Vector:
        return np.stack((self.upper_arm, self.forearm), axis=-2)

    @cached_property
    def _across_the_arm(self) -> tuple[Vector, Vector]:
        return across(self._arm)


def joined(stances: Sequence[Stance]) -> Stance:
    """Put the frames of several stances one behind the other."""
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

"""What poses say about a body, as arrays that a fit can take."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from coach.goniometry.angles import Vector, cross, unit
from coach.goniometry.camera import Pinhole
from coach.goniometry.sight import Sight

CARD_SKEW_SD_DEG = 3.0
"""How far from straight ahead a card is clipped on: a centimetre of its base of 19."""

_DOWN = np.array([0.0, 1.0, 0.0])


@dataclass(frozen=True, slots=True, eq=False)
class Evidence:
    """N frames seen from one shoulder, in camera axes.

    ``slopes`` (N, 6, 2): x/z and y/z of the rays to the picture's points, rows as in ``skeleton``.
    ``trunk`` (N, 3, 3), ``upper_arm``, ``forearm`` (N, 3): axes and unit vectors of the metric
    points. ``resting`` (N,): frames in which the body is at rest, before the movement. ``card``
    (N, 3): the direction out of the chest by the printed card, zero without one; ``card_sd`` (N,)
    its standard deviation in turn, radians, one without a card.
    """

    slopes: Vector = field(repr=False)
    trunk: Vector = field(repr=False)
    upper_arm: Vector = field(repr=False)
    forearm: Vector = field(repr=False)
    resting: NDArray[np.bool_] = field(repr=False)
    card: Vector = field(repr=False)
    card_sd: Vector = field(repr=False)

    @classmethod
    def of(
        cls,
        sights: Sequence[Sight],
        camera: Pinhole,
        resting: NDArray[np.bool_] | None = None,
    ) -> Evidence:
        """Gather frames; all from the same camera and shoulder."""
        slopes = camera.slopes(np.array([s.points_px for s in sights]))
        space = np.array([s.points_m for s in sights])
        seen = _axes_of_ray(slopes[:, :4].mean(axis=1))
        trunk = seen @ np.swapaxes(np.array([s.axes for s in sights]), -1, -2)
        arm = np.stack((unit(space[:, 4] - space[:, 0]), unit(space[:, 5] - space[:, 4])), axis=-1)
        arm = seen @ arm
        at_rest = np.zeros(len(sights), bool) if resting is None else resting
        card = np.zeros((len(sights), 3))
        card_sd = np.ones(len(sights))
        for row, sight in enumerate(sights):
            if sight.pose.card is not None:
                card[row] = sight.pose.card.axes[:, 0]
                error_deg = math.hypot(sight.pose.card.turn_error_deg / 1.96, CARD_SKEW_SD_DEG)
                card_sd[row] = math.radians(error_deg)
        return cls(slopes, trunk, arm[..., 0], arm[..., 1], at_rest, card, card_sd)

    def __len__(self) -> int:
        """Give the number of frames."""
        return len(self.slopes)

    def __getitem__(self, rows: slice | NDArray[np.intp]) -> Evidence:
        """Take some of the frames."""
        return Evidence(
            self.slopes[rows],
            self.trunk[rows],
            self.upper_arm[rows],
            self.forearm[rows],
            self.resting[rows],
            self.card[rows],
            self.card_sd[rows],
        )


def _axes_of_ray(slope: Vector) -> Vector:
    """Axes (N, 3, 3) of a camera turned to look along rays (N, 2), as columns in camera axes.

    The pose model sees a person cut out of the picture: its metric points are as such a camera
    would have them.
    """
    ahead = unit(np.concatenate((slope, np.ones((len(slope), 1))), axis=-1))
    right = unit(cross(_DOWN, ahead))
    axes: Vector = np.stack((right, cross(ahead, right), ahead), axis=-1)
    return axes

"""Rotation in a doorway: the forearm stays against the frame while the trunk turns away from it.

The angle is how far the trunk has turned since it rested with the forearm straight ahead. Turned by
psi, shoulders and hips are narrower in the picture by cos psi, so psi = acos(q / q_full), q the
breadth over the trunk's length and q_full its value square to the camera; which way, and near
square where acos says nothing, the metric points tell. The forearm itself points at the camera and
is hidden by the frame: it is not used.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np

from coach.goniometry.angles import Vector
from coach.goniometry.expectation import TURN_GAIN
from coach.goniometry.sight import Sight

FULL_PERCENTILE = 97.0
"""Of the breadths seen: square to the camera, without the widest few, which are noise."""
SQUARE_DEG = 12.0
"""Turn by the metric points within which acos says less than they do: one per cent of breadth is
eight degrees at 0, three at 12."""
LEFT_SQUARE_DEG = 20.0


@dataclass(frozen=True, slots=True, eq=False)
class Doorway:
    """Breadth (2,) of shoulders and hips square to the camera, and the turn at rest, degrees."""

    full: Vector = field(repr=False)
    rest_deg: float

    @classmethod
    def of(cls, seen: Sequence[Sight], resting: Sequence[Sight]) -> Doorway:
        """Learn from frames in which the body was square to the camera at some time."""
        full = np.percentile([_breadths(s) for s in seen], FULL_PERCENTILE, axis=0)
        return cls(full, float(np.median([_turned_deg(s, full) for s in resting])))

    def rotation_deg(self, sight: Sight) -> float:
        """Give the rotation: 0 at rest, positive where the trunk turns away from the arm."""
        return _turned_deg(sight, self.full) - self.rest_deg


def _turned_deg(sight: Sight, full: Vector) -> float:
    if sight.pose.card is not None:
        ahead = sight.pose.card.axes[:, 0]
        return sight.side.sign * math.degrees(math.atan2(float(ahead[0]), -float(ahead[2])))
    metric_deg = sight.side.sign * sight.round_deg * TURN_GAIN
    cosine = np.clip(_breadths(sight) / full, 0.0, 1.0)
    narrow_deg = math.copysign(float(np.mean(np.degrees(np.arccos(cosine)))), metric_deg)
    reach = (abs(metric_deg) - SQUARE_DEG) / (LEFT_SQUARE_DEG - SQUARE_DEG)
    share = min(1.0, max(0.0, reach))
    return share * narrow_deg + (1.0 - share) * metric_deg


def _breadths(sight: Sight) -> Vector:
    shoulders = np.linalg.norm(sight.near.shoulder_px - sight.other.shoulder_px)
    hips = np.linalg.norm(sight.near.hip_px - sight.other.hip_px)
    return np.array([shoulders, hips]) / sight.trunk_px

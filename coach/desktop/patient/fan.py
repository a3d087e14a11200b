"""Directions about a joint in the picture, from an angle's zero to a quarter turn."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Point = tuple[float, float]
Vector = NDArray[np.float64]

_DIAL_FLATNESS = 0.32
"""How flat a level circle is drawn, as if seen a little from above; no measure."""
ROOMY_DEG = 65.0
"""From here on the value finds room between trunk and arm; tried on the sample clips."""
BEYOND_DEG = 60.0
_LEVEL_DEG = 100.0
"""Below that the value stands so far beyond the arm, but not before the face."""


@dataclass(frozen=True, slots=True, eq=False)
class Fan:
    """Spokes about an apex: ``zero`` at zero, ``toward`` at 90 degrees; pixels (2,)."""

    apex: Vector
    zero: Vector
    toward: Vector

    def point(self, angle_deg: float, reach: float = 1.0) -> Point:
        """Give the end of a spoke, ``reach`` times as long as the fan."""
        angle_rad = math.radians(angle_deg)
        spoke = math.cos(angle_rad) * self.zero + math.sin(angle_rad) * self.toward
        return point(self.apex + reach * spoke)

    def arc(self, to_deg: float, steps: int) -> tuple[Point, ...]:
        """Give the ends of ``steps + 1`` spokes from zero to an angle."""
        angles_rad = np.radians(np.linspace(0.0, to_deg, steps + 1))[:, np.newaxis]
        ends = self.apex + np.cos(angles_rad) * self.zero + np.sin(angles_rad) * self.toward
        return tuple((x, y) for x, y in ends.tolist())

    def turned(self, by_deg: float) -> Fan:
        """Give the fan whose zero is where ``by_deg`` was."""
        return Fan(
            self.apex,
            np.asarray(self.point(by_deg)) - self.apex,
            np.asarray(self.point(by_deg + 90.0)) - self.apex,
        )

    def swept_deg(self, end: Vector, otherwise_deg: float) -> float:
        """Angle at which ``end`` is seen from the apex; ``otherwise_deg`` where it is unknown."""
        arm = end - self.apex
        if not np.isfinite(arm).all():
            return otherwise_deg
        swept_deg = math.degrees(math.atan2(float(arm @ self.toward), float(arm @ self.zero)))
        return swept_deg + 360.0 if swept_deg < -90.0 else swept_deg


def beside_deg(swept_deg: float) -> float:
    """Where the value leaves an arm free that swings in the picture: in a wide arc, or beyond."""
    if swept_deg >= ROOMY_DEG:
        return swept_deg / 2
    return min(swept_deg + BEYOND_DEG, _LEVEL_DEG)


def square_to(along: Vector, hint: Vector, otherwise: Vector) -> Vector:
    """Unit vector square to the unit vector ``along``, on the side of ``hint`` if that is known."""
    across: Vector = np.array([along[1], -along[0]])
    side = hint if np.isfinite(hint).all() else otherwise
    return -across if float(across @ side) < 0 else across


def level_fan(apex: Vector, reach_px: float, outward: float) -> Fan:
    """Fan of a level circle seen from before the person: zero ahead, outward positive."""
    return Fan(
        apex, np.array([0.0, _DIAL_FLATNESS * reach_px]), np.array([outward * reach_px, 0.0])
    )


def upright_fan(apex: Vector, up: Vector, outward: float) -> Fan:
    """Fan that stands upright in the picture: zero up, outward positive."""
    return Fan(apex, up, np.array([outward * float(np.linalg.norm(up)), 0.0]))


def point(at: Vector) -> Point:
    """Give a vector (2,) as plain numbers."""
    return float(at[0]), float(at[1])

"""A pinhole camera whose field of view is known or assumed."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from coach.goniometry.angles import Vector

DEFAULT_FIELD_OF_VIEW_DEG = 63.0
"""Horizontal field of view of a common laptop camera held landscape (common practice)."""


@dataclass(frozen=True, slots=True)
class Pinhole:
    """Square pixels, principal point in the middle of the picture."""

    focal_px: float
    centre_px: tuple[float, float]

    @classmethod
    def of(cls, size_px: tuple[int, int], field_of_view_deg: float | None = None) -> Pinhole:
        """Build from the picture's size; the field of view is that of the longer side."""
        half_rad = math.radians(field_of_view_deg or DEFAULT_FIELD_OF_VIEW_DEG) / 2
        focal_px = max(size_px) / 2 / math.tan(half_rad)
        return cls(focal_px, (size_px[0] / 2, size_px[1] / 2))

    def slopes(self, image_px: Vector) -> Vector:
        """Pixels (..., 2) to X/Z and Y/Z of the ray (..., 2), x right, y down."""
        slopes: Vector = (image_px - np.asarray(self.centre_px)) / self.focal_px
        return slopes

"""The back of a body at rest: C7, the posterior superior iliac spines, and the skin between.

No rig has these landmarks. They are put on the skin of the back (largest y near the mid-line)

    C7      2 cm (for a stature of 1.71 m, in proportion) above the head of the bone ``neck01``,
            fixed to ``spine01``, the bone of the upper trunk; this is 0.86-0.87 of the stature
    PSIS    the mid-point of the two, 8.5 cm (in proportion) above the hip joint centres, fixed to
            the pelvis, which is the ``root``

both places common practice. The distance between them is 50.6 +- 3.0 cm on the invented people,
in adults 50.9 +- 3.5 cm (Ernst et al. 2013, BMC Res Notes 6:58).
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from tests.bench.skeleton import Array

TRUNK_STEMS = ("root", "pelvis", "spine", "clavicle", "shoulder", "neck", "upperleg")
STATURE_M = 1.71
C7_ABOVE_NECK_M = 0.02
PSIS_ABOVE_HIPS_M = 0.085
SLICE_M, COLUMN_M, COLUMNS = 0.02, 0.03, 8
FRONT_M = -0.05
"""Skin before this y is not the back's: the meshes are coarse."""


@dataclass(frozen=True, slots=True, eq=False)
class Back:
    """Landmarks (3,) at rest, world metres, and the skin's y on a grid of heights and widths.

    ``skin_m`` (H, COLUMNS) at heights ``heights_m`` (H,) and ``COLUMN_M`` steps off the mid-line;
    NaN beside the body.
    """

    c7_m: Array = field(repr=False)
    psis_m: Array = field(repr=False)
    heights_m: Array = field(repr=False)
    skin_m: Array = field(repr=False)

    def skin_behind_m(self, height_m: float, aside_m: float) -> float:
        """Give the skin's y at a height and a distance from the mid-line; NaN beside the body."""
        row = int(np.clip(np.searchsorted(self.heights_m, height_m), 1, len(self.heights_m) - 1))
        low, high = self.heights_m[row - 1 : row + 1]
        part = float(np.clip((height_m - low) / (high - low), 0.0, 1.0))
        columns = (1 - part) * self.skin_m[row - 1] + part * self.skin_m[row]
        place = abs(aside_m) / COLUMN_M
        return float(np.interp(place, np.arange(COLUMNS), columns, right=np.nan))


def find(vertices_m: Array, on_trunk: NDArray[np.bool_], neck_m: Array, hips_m: Array) -> Back:
    """Find the back of a body at rest.

    ``vertices_m`` (V, 3), ``on_trunk`` (V,) true where the skin is the trunk's; head of
    ``neck01`` (3,) and mid-point of the hip joint centres (3,).
    """
    scale = float(np.ptp(vertices_m[:, 2])) / STATURE_M
    skin = vertices_m[on_trunk & (vertices_m[:, 1] > FRONT_M)]

    def behind_m(height_m: float, low_m: float, high_m: float) -> float:
        aside = np.abs(skin[:, 0])
        near = (np.abs(skin[:, 2] - height_m) < 0.022) & (aside >= low_m) & (aside <= high_m)
        return float(skin[near, 1].max()) if near.any() else np.nan

    c7_z = neck_m[2] + C7_ABOVE_NECK_M * scale
    psis_z = hips_m[2] + PSIS_ABOVE_HIPS_M * scale
    heights_m = np.arange(hips_m[2] - 0.12, c7_z, SLICE_M)
    grid = [
        [behind_m(z, (k - 0.7) * COLUMN_M, (k + 0.7) * COLUMN_M) for k in range(COLUMNS)]
        for z in heights_m
    ]
    return Back(
        np.array([0.0, behind_m(c7_z, 0.0, 0.02), c7_z]),
        np.array([0.0, behind_m(psis_z, 0.0, 0.05), psis_z]),
        heights_m,
        np.array(grid),
    )

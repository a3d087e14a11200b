"""How high the hand reaches behind the back: the wrist's height along the line from C7 to the PSIS.

Seen from behind, the wrist's ray is cut with a plane behind the back and the point measured along
the line between the seventh cervical spinous process (0) and the middle of the posterior superior
iliac spines (1), after the ratio of Man Ther 2014;19:72 with the wrist in place of the thumb.
"""

from __future__ import annotations

import numpy as np

from coach.goniometry.angles import Vector
from coach.goniometry.skeleton import Stance

C7_UP = 0.24
"""Above the middle of the shoulder joints, trunk lengths. Cervicale 0.866, shoulder joint 0.80 and
hip joint 0.53 of the height give 0.24 (anthropometric proportions, from memory)."""
PSIS_UP = 0.17
"""Above the middle of the hip joints: 8 to 9 cm (common practice), a trunk of 0.48 m."""
WRIST_BEHIND = 0.22
"""Behind the plane through the joints: half the depth of the trunk and half a wrist, 10 cm."""


def reach_ratio(stance: Stance, wrist_slope: Vector) -> Vector:
    """Ratios (N,) of the wrist's height for rays (N, 2) to wrists."""
    forward, up = stance.trunk[..., 0], stance.trunk[..., 1]
    place = np.concatenate((stance.middle, np.ones_like(stance.depth)[..., None]), axis=-1)
    middle = place * stance.depth[..., None]
    ray = np.concatenate((wrist_slope, np.ones((len(wrist_slope), 1))), axis=-1)
    behind = np.sum(middle * forward, axis=-1) - WRIST_BEHIND
    wrist = ray * (behind / np.sum(ray * forward, axis=-1))[:, None]
    below = -np.sum((wrist - middle) * up, axis=-1)
    ratio: Vector = (below + C7_UP) / (1.0 + C7_UP - PSIS_UP)
    return ratio

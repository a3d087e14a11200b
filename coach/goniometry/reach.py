"""How high the hand reaches behind the back: the wrist's height along the line from C7 to the PSIS.

Seen from behind, the wrist's ray is cut with a plane behind the back and the point measured along
the line between the seventh cervical spinous process (0) and the middle of the posterior superior
iliac spines (1), after the ratio of Man Ther 2014;19:72 with the wrist in place of the thumb.
"""

from __future__ import annotations

from dataclasses import dataclass

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


SEEN = 0.7
"""Visibility from which the model believes to see the wrist itself."""
MOST_PER_S, JUMP, LONGEST_S = 1.0, 0.05, 0.15
"""Half a metre a second, and the noise on top, is more than a stiff shoulder moves a hand behind a
back. When the model loses a hand it puts the wrist where it would hang, all at once."""
HIDDEN_LOW = ((0.85, 0.2), (0.95, 0.5))
"""A hand as low as this (ratio) is seen at least so well (visibility) by most tuning people."""


@dataclass(frozen=True, slots=True)
class HiddenHand:
    """Follows a wrist that the model mostly guesses: what jumps is believed only where it is seen.

    ``since_s``, ``ratio``: the last reading that was believed.
    """

    since_s: float = float("-inf")
    ratio: float | None = None

    def seen(self, time_s: float, ratio: float, visibility: float) -> tuple[HiddenHand, bool]:
        """Take the next frame's ratio; tell whether it is believed."""
        if any(ratio >= low and visibility < least for low, least in HIDDEN_LOW):
            return self, False
        believed = visibility >= SEEN or self.ratio is None
        if self.ratio is not None:
            allowed = JUMP + MOST_PER_S * min(time_s - self.since_s, LONGEST_S)
            believed = believed or abs(ratio - self.ratio) <= allowed
        return (HiddenHand(time_s, ratio), True) if believed else (self, False)

"""What the picture shows of somebody facing the camera, elbow at the side, as a change since rest.

The fitted body expects the upper arm beside the trunk and the shoulder at its height, and holds the
trunk's turn back. What leaves these expectations is measured beside the fit, against the same
person's own rest, in which lengths and misplaced points cancel. Lengths are shares of the trunk's
length in the picture; back, up and out are those of the measured shoulder.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import astuple, dataclass

import numpy as np

from coach.goniometry.sight import Sight

NARROWS_DEG = 130.0
"""Degrees of turn for the breadth of the shoulders lost, as a share of it: the metric points alone
miss the turn of some people, whose breadth tells it (15 degrees take 3.4 % by the cosine)."""
NARROWS_FROM_DEG = 4.0
"""Turn by the metric points from which a loss of breadth is taken for a turn that way."""
ARM_TURNS_DEG, ARM_SINKS, ARM_DRAWS_IN = 11.0, 0.017, 0.06
"""What the model draws as the forearm swings out by one trunk length, of people who keep still: a
turn backward, a shoulder that sinks, an elbow nearer to the trunk."""
RISE_SHOWN = 0.75
"""Share of a rise of the shoulder's centre by which its point rises: 0.55 on rendered skin, which
the point follows half way, 1 on sticks."""
BENDS, SWAYS_DEG, MAX_LEAN_DEG = 0.62, 1.5, 6.0
"""A spine bent aside tilts the shoulders further than the line from hips to shoulders by this share
(a bend of 1.62 leans that line by 1). Who only sways bends by nothing; beyond the last no rise is
told from a lean."""
UPPER_ARM = 0.566
"""Over the trunk, as ``expectation.LOG_LENGTHS``."""


@dataclass(frozen=True, slots=True)
class Outline:
    """The shoulders' turn by the metric points, degrees; their breadth, the measured one's height
    over the other, the elbow's distance from the midline and the wrist's beyond it, trunk lengths;
    the trunk's lean away from the measured side."""

    turned_deg: float
    lean_deg: float
    breadth: float
    height: float
    elbow_out: float
    forearm_out: float

    @classmethod
    def of(cls, sight: Sight) -> Outline:
        """Look at one frame."""
        left, right = sight.left_and_right
        metric = right.shoulder_m - left.shoulder_m
        up = (sight.shoulders_px - sight.hips_px) / sight.trunk_px
        out = np.array([-up[1], up[0]]) * -sight.side.sign
        across = (sight.near.shoulder_px - sight.other.shoulder_px) / sight.trunk_px
        elbow = (sight.near.elbow_px - sight.hips_px) / sight.trunk_px
        forearm = (sight.near.wrist_px - sight.near.elbow_px) / sight.trunk_px
        return cls(
            sight.side.sign * math.degrees(math.atan2(float(metric[2]), -float(metric[0]))),
            sight.side.sign * sight.tilt_deg,
            float(np.linalg.norm(across)),
            float(across @ up),
            float(elbow @ out),
            float(forearm @ out),
        )

    @classmethod
    def middle(cls, sights: Sequence[Sight]) -> Outline:
        """Take the medians of several frames."""
        seen = [cls.of(sight) for sight in sights]
        rows = [astuple(outline) for outline in seen]
        return cls(*(float(v) for v in np.median(rows, axis=0)))

    def turn_deg(self, rest: Outline) -> float:
        """How far the measured shoulder has turned backward since rest."""
        turned_deg = self.turned_deg - rest.turned_deg
        way = max(-1.0, min(1.0, turned_deg / NARROWS_FROM_DEG))
        narrowed_deg = NARROWS_DEG * (1.0 - self.breadth / rest.breadth)
        return turned_deg + way * narrowed_deg - ARM_TURNS_DEG * self._swung(rest)

    def hike_ratio(self, rest: Outline) -> float | None:
        """How far the measured shoulder has risen along the trunk since rest, trunk lengths.

        None where the trunk leans too far to tell.
        """
        leaned_deg = self.lean_deg - rest.lean_deg
        if abs(leaned_deg) > MAX_LEAN_DEG:
            return None
        bent_deg = BENDS * math.copysign(max(0.0, abs(leaned_deg) - SWAYS_DEG), leaned_deg)
        bent = rest.breadth * math.sin(math.radians(bent_deg))
        return (self.height - rest.height - bent + ARM_SINKS * self._swung(rest)) / RISE_SHOWN

    def drift_deg(self, rest: Outline) -> float:
        """How far the upper arm has left the side since rest, outward positive."""
        away = self.elbow_out - rest.elbow_out + ARM_DRAWS_IN * self._swung(rest)
        return math.degrees(away / UPPER_ARM)

    def _swung(self, rest: Outline) -> float:
        return self.forearm_out - rest.forearm_out

"""What the other hand does in a clip: goes up and stays, or what must not be taken for that."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

import numpy as np

from tests.bench.motion import min_jerk
from tests.bench.posing import Arm


@dataclass(frozen=True, slots=True)
class Act:
    """One thing that the other hand does: there from ``start_s`` to ``end_s``, and back.

    It is on its way for ``there_s`` before and ``back_s`` after. ``arm_deg`` is flexion, away and
    elbow, as of ``Arm``, once there. Hands together follow the exercised wrist ``apart`` of
    the shoulders' breadth beside it: little when one lifts the other, 1 on one stick.
    """

    kind: Literal["raise", "face", "together"]
    start_s: float
    end_s: float
    there_s: float
    back_s: float
    arm_deg: tuple[float, float, float] = (0.0, 0.0, 0.0)
    apart: float = 0.0

    def share(self, time_s: float) -> float:
        """How far the hand has come, 0-1."""
        there = (time_s - self.start_s + self.there_s) / self.there_s
        back = (self.end_s + self.back_s - time_s) / self.back_s
        return float(min_jerk(np.clip(min(there, back), 0.0, 1.0)))


def other_arm(acts: tuple[Act, ...], time_s: float, resting: Arm) -> Arm:
    """Give the other arm at a time."""
    for act in acts:
        share = act.share(time_s)
        if share <= 0.0:
            continue
        if act.kind == "together":
            return replace(resting, joins=share, apart=act.apart)
        now = (resting.angle_deg, resting.away_deg, resting.elbow_deg)
        angle_deg, away_deg, elbow_deg = (
            a + share * (b - a) for a, b in zip(now, act.arm_deg, strict=True)
        )
        return replace(
            resting, angle_deg=angle_deg, away_deg=away_deg, elbow_deg=elbow_deg,
            axial_deg=-20.0 * share,
        )  # fmt: skip
    return resting

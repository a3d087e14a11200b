"""What is being counted."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Task:
    """Holds of ``hold_s`` seconds at the end of the range.

    ``hold_s`` None is the free task of a clip without a plan: any settled end range of
    ``FREE_HOLD_S`` or more that the arm then leaves counts. ``target_deg`` is an angle not to be
    passed. ``hanging_deg`` is the angle of an arm at rest where the movement defines it; None
    where the arm may rest anywhere, as in rotation.
    """

    hold_s: float | None = None
    target_deg: float | None = None
    hanging_deg: float | None = None

    @property
    def lowest_rest_deg(self) -> float:
        """Below this no arm rests: it makes another movement."""
        return -1e9 if self.hanging_deg is None else self.hanging_deg - HANGING_WITHIN_DEG

    @property
    def least_s(self) -> float:
        """Seconds below which a hold is not worth a record."""
        return FREE_HOLD_S - DATING_S if self.hold_s is None else 0.0

    @property
    def settle_s(self) -> float:
        """Seconds of plateau after which a hold is believed.

        0.8 s is more than the 0.65 s an arm that turns round at its top (30 degrees in 2 s each
        way, minimum jerk) is within a degree of it; asked holds of a second cannot wait as long.
        """
        return 0.8 if self.hold_s is None else min(0.8, max(0.6, 0.6 * self.hold_s))


HANGING_WITHIN_DEG = 5.0
"""A hanging arm reads zero within a few degrees (tuning people: 1 to 4 off)."""
FREE_HOLD_S = 2.0
DATING_S = 0.1
"""Both ends of a hold together are dated to about that."""

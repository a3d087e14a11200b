"""What is being counted."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.movement import HANGING, Movement, Unit

DEGREES_PER_UNIT: dict[Unit, float] = {Unit.DEGREES: 1.0, Unit.RATIO: -100.0}
"""What one unit of a value counts as in the degrees of the rules. The hand behind the back goes up
as its ratio falls, and a hundredth of the ratio is 0.5 cm (50.9 cm from C7 to the posterior
superior iliac spines, Ernst et al. 2013, BMC Res Notes 6:58): what a degree is at the end of a
forearm."""


@dataclass(frozen=True, slots=True)
class Task:
    """Holds of ``hold_s`` seconds at the end of the range.

    ``hold_s`` None is the free task of a clip without a plan: any settled end range of
    ``FREE_HOLD_S`` or more that the arm then leaves counts. ``target_deg`` is an angle not to be
    passed. ``hanging_deg`` is the angle of an arm at rest where the movement defines it; None
    where the arm may rest anywhere, as in rotation. ``unit`` is that of the readings' values;
    everything else here is in degrees, or what stands for them.
    """

    hold_s: float | None = None
    target_deg: float | None = None
    hanging_deg: float | None = None
    unit: Unit = Unit.DEGREES

    @property
    def degrees_per_unit(self) -> float:
        """What one unit of a value counts as; negative where the value falls toward the end."""
        return DEGREES_PER_UNIT[self.unit]

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


def task_of(
    movement: Movement, hold_s: float | None = None, target_deg: float | None = None
) -> Task:
    """Give the task of a movement, of a plan's exercise or free."""
    hanging, unit = HANGING.get(movement), movement.unit
    return Task(
        hold_s=hold_s,
        target_deg=target_deg,
        hanging_deg=None if hanging is None else hanging * DEGREES_PER_UNIT[unit],
        unit=unit,
    )


HANGING_WITHIN_DEG = 5.0
"""A hanging arm reads zero within a few degrees (tuning people: 1 to 4 off)."""
FREE_HOLD_S = 2.0
DATING_S = 0.1
"""Both ends of a hold together are dated to about that."""

"""What is to be done in one sitting, in order."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.plan import PlannedExercise


@dataclass(frozen=True, slots=True)
class AgendaItem:
    """One exercise of a sitting.

    ``planned_index`` counts in the plan. ``easier`` is the easier neighbour, to be offered after
    too much pain; ``eased`` marks one that is done in the planned one's place. ``new`` is true
    where the person has not done this exercise before, ``told`` where its cautions were heard on
    this day.
    """

    planned_index: int
    planned: PlannedExercise
    easier: PlannedExercise | None = None
    eased: bool = False
    new: bool = False
    told: bool = False

"""Single holds: which there are, and which of them the trunk feigned."""

from __future__ import annotations

from coach.domain.form import FormFault
from coach.domain.plan import PlannedExercise
from coach.domain.progress import Repetition, TimedHold
from coach.domain.session import ExerciseRecord

FEIGNING = frozenset({FormFault.LEAN, FormFault.TURN})
"""Faults of the trunk, which make the arm look further than the shoulder goes (common practice)."""


def feigns(repetition: Repetition) -> bool:
    """Tell whether the trunk moved in a hold instead of the shoulder alone."""
    return not FEIGNING.isdisjoint(repetition.faults)


def holds_of(record: ExerciseRecord) -> tuple[Repetition | TimedHold, ...]:
    """Give an exercise's holds, measured and timed."""
    return (*record.repetitions, *record.timed)


def counted_s(record: ExerciseRecord, planned: PlannedExercise) -> float:
    """Give the seconds held, each hold up to what was asked: time past the dose is no dose."""
    return sum(min(hold.held_s, planned.hold_s) for hold in holds_of(record))

"""What the rules of speaking listen to: one frame's outcome."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.moment import Stage
from coach.domain.plan import PlannedExercise
from coach.domain.progress import Phase, ProgressEvent
from coach.domain.reading import Reading


@dataclass(frozen=True, slots=True)
class Happening:
    """One frame's outcome.

    ``held_s`` and ``remaining_s`` are true seconds of the hold up to ``time_s``, None or 0 where
    no hold is timed; ``resting`` and ``rest_remaining_s`` belong to the timed rest between holds.
    ``repetitions_done`` counts completed holds, those ended by ``events`` included.
    ``pain_above_limit`` is true where an answer above the plan's limit has just been given; it
    must fall back in between, or a second such answer is not spoken about.
    """

    time_s: float
    stage: Stage
    planned: PlannedExercise | None = None
    exercise_index: int = 0
    exercise_count: int = 1
    events: tuple[ProgressEvent, ...] = ()
    reading: Reading | None = None
    phase: Phase = Phase.REST
    held_s: float = 0.0
    remaining_s: float | None = None
    resting: bool = False
    rest_remaining_s: float | None = None
    repetitions_done: int = 0
    pain_above_limit: bool = False

    @property
    def repetitions_asked(self) -> int:
        """Holds that the plan asks for, 0 without a plan."""
        return self.planned.repetitions if self.planned else 0

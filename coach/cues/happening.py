"""What the rules of speaking listen to: one frame's outcome."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.agenda import AgendaItem
from coach.domain.moment import Asked, Stage
from coach.domain.plan import PlannedExercise
from coach.domain.progress import Phase, ProgressEvent
from coach.domain.reading import Doubt, Reading
from coach.form import FormEvent


@dataclass(frozen=True, slots=True)
class Happening:
    """One frame's outcome.

    ``held_s`` and ``remaining_s`` are true seconds of the hold up to ``time_s``, None or 0 where
    no hold is timed; ``resting`` and ``rest_remaining_s`` belong to the timed rest between holds.
    ``repetitions_done`` counts completed holds, those ended by ``events`` included.
    ``pain_above_limit`` is true where an answer above the plan's limit has just been given; it
    must fall back in between, or a second such answer is not spoken about. ``doubt`` is what to
    change before the exercise can begin, ``asked`` where the question about pain stands, ``form``
    what was noticed about it in this frame, ``score`` the pain as last given.
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
    item: AgendaItem | None = None
    doubt: Doubt | None = None
    asked: Asked | None = None
    form: tuple[FormEvent, ...] = ()
    wrong_arm: bool = False
    score: int | None = None

    @property
    def repetitions_asked(self) -> int:
        """Holds that the plan asks for, 0 without a plan."""
        return self.planned.repetitions if self.planned else 0

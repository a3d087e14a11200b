"""What the program knows and shows at one instant."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from coach.domain.cue import Cue
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Pose
from coach.domain.progress import Phase, Repetition
from coach.domain.reading import Reading


class Stage(StrEnum):
    """Where a session stands."""

    WELCOME = "welcome"
    """Cautions are shown; waits for START."""
    PAIN_BEFORE = "pain-before"
    """Asks for pain before the exercise; waits for PAIN."""
    EXERCISE = "exercise"
    """Measures, times, counts."""
    PAUSED = "paused"
    """Waits for RESUME."""
    PAIN_AFTER = "pain-after"
    """Asks for pain after the exercise; waits for PAIN."""
    FINISHED = "finished"
    """The summary is shown."""


class Order(StrEnum):
    """What a person can tell the program."""

    START = "start"
    PAUSE = "pause"
    RESUME = "resume"
    SKIP = "skip"
    STOP = "stop"
    PAIN = "pain"
    """Carries a score 0-10."""


@dataclass(frozen=True, slots=True)
class Moment:
    """One frame's outcome, ready to draw and speak.

    ``remaining_s`` counts down the hold, or the rest where ``phase`` is REST and ``resting``
    is true; None where nothing is being timed. ``repetitions`` are those of the present
    exercise. ``shown`` is the reading's value calmed for the eye, None without a reading;
    it is never stored.
    """

    time_s: float
    stage: Stage
    exercise_index: int
    planned: PlannedExercise | None
    following: PlannedExercise | None
    pose: Pose | None = field(repr=False, default=None)
    reading: Reading | None = None
    shown: float | None = None
    phase: Phase = Phase.REST
    held_s: float = 0.0
    remaining_s: float | None = None
    resting: bool = False
    repetitions: tuple[Repetition, ...] = ()
    cues: tuple[Cue, ...] = ()

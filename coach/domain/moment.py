"""What the program knows and shows at one instant."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from coach.domain.agenda import AgendaItem
from coach.domain.cue import Cue
from coach.domain.form import FormFault
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Pose
from coach.domain.progress import Phase, Repetition
from coach.domain.reading import Doubt, Reading


class Stage(StrEnum):
    """Where a session stands."""

    WELCOME = "welcome"
    """Cautions are shown; waits for START."""
    PAIN_BEFORE = "pain-before"
    """Asks for pain before the exercise; waits for PAIN."""
    PREPARE = "prepare"
    """Says what comes and checks that the person is in place; waits for READY."""
    EXERCISE = "exercise"
    """Measures, times, counts."""
    PAUSED = "paused"
    """Waits for RESUME."""
    PAIN_AFTER = "pain-after"
    """Asks for pain after the exercise; waits for PAIN."""
    OFFER = "offer"
    """Offers the easier neighbour after too much pain; waits for ACCEPT or GO_ON."""
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
    READY = "ready"
    """In place: the exercise may begin."""
    ACCEPT = "accept"
    """Takes the easier exercise."""
    GO_ON = "go-on"
    """Goes on without an answer."""


@dataclass(frozen=True, slots=True)
class Asked:
    """Where the spoken question about pain stands.

    ``offered`` is the number that a raised hand would choose now, ``chosen`` the one it chose,
    which stands unless the hand is raised again within ``sure_s`` seconds.
    """

    offered: int | None = None
    chosen: int | None = None
    sure_s: float | None = None


@dataclass(frozen=True, slots=True)
class Moment:
    """One frame's outcome, ready to draw and speak.

    ``remaining_s`` counts down the hold, or the rest where ``phase`` is REST and ``resting``
    is true; None where nothing is being timed. ``repetitions`` are those of the present
    exercise. ``shown`` is the reading's value calmed for the eye, None without a reading;
    it is never stored. ``doubt`` is the one thing to change before the exercise can begin,
    ``asked`` the question about pain, ``raised_s`` how long the other hand has been up,
    ``faults`` what is wrong with the form
    now, ``completed`` how many holds of this exercise were held as asked, one that is held for
    longer still included, ``deserted`` whether nobody has been in view for some seconds.
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
    items: tuple[AgendaItem, ...] = ()
    doubt: Doubt | None = None
    asked: Asked | None = None
    raised_s: float | None = None
    faults: tuple[FormFault, ...] = ()
    completed: int = 0
    deserted: bool = False

    @property
    def planned_index(self) -> int:
        """The present exercise's place in the plan."""
        return self.exercise_index if self.item is None else self.item.planned_index

    @property
    def item(self) -> AgendaItem | None:
        """The present exercise with what is known about it; None outside an agenda."""
        return self.items[self.exercise_index] if self.exercise_index < len(self.items) else None

"""Where a sitting stands."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.agenda import AgendaItem
from coach.domain.moment import Stage
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import EndedBecause, Repetition, TimedHold
from coach.domain.session import SessionEnd
from coach.session.entries import Fact


@dataclass(frozen=True, slots=True)
class Course:
    """Where a sitting stands.

    ::

        WELCOME --START--> PAIN_BEFORE --PAIN, GO_ON--> PREPARE --READY--> EXERCISE
                             ^  |                        ^ |                |    |
                             |  `---above the limit--.   | |SKIP            |    `--PAIN above the
                             |                       v   | v                |       limit--.
        --no score known-----+---------------- next exercise <--PAIN_AFTER<-'all done,     |
                             |                    |   ^    PAIN, SKIP, GO_ON  tries used,   |
                             |                    |   |                       SKIP          v
                             |     none left      v   `---------------GO_ON------------- OFFER
                             |               FINISHED                                      |
                             `------------------------------------ACCEPT-------------------'

        any but WELCOME --PAUSE--> PAUSED --RESUME--> the same;  any --STOP, input ends--> FINISHED

    A score given after an exercise is also the one before the next: nobody is asked twice in a
    row, and who does not answer is not asked again until the next exercise is over. An exercise
    whose pain limit is under the score is passed over as ended by pain, so a high score may end
    the session; a score above ``pain_to_stop`` (``coach.catalogue.safety``) ends it at once.
    OFFER comes only where the exercise has an easier neighbour that was not offered before. SKIP,
    STOP and PAIN work in PAUSED as in the stage that was left. Orders that make no sense in a
    stage change nothing: the same object comes back.

    ``rest_until_s`` is a frame stamp. Rests run on while paused, and a hold that is begun earlier
    ends the rest. ``score`` is the pain as last given; ``pain_at_end`` is the last one; after STOP
    it may still be given in FINISHED.
    """

    plan: Plan
    started_s: float
    items: tuple[AgendaItem, ...]
    stage: Stage = Stage.WELCOME
    exercise_index: int = 0
    left_stage: Stage | None = None
    rest_until_s: float | None = None
    repetitions: tuple[Repetition, ...] = ()
    timed: tuple[TimedHold, ...] = ()
    score: int | None = None
    stopped_by_pain: bool = False
    pain_at_end: int | None = None
    ended_because: SessionEnd | None = None

    @property
    def item(self) -> AgendaItem:
        """The present exercise; of a finished sitting the last one."""
        return self.items[min(self.exercise_index, len(self.items) - 1)]

    @property
    def planned(self) -> PlannedExercise | None:
        """The present exercise, None when finished."""
        return None if self.stage is Stage.FINISHED else self.item.planned

    @property
    def following(self) -> PlannedExercise | None:
        """The exercise after the present one."""
        if self.stage is Stage.FINISHED or self.exercise_index + 1 >= len(self.items):
            return None
        return self.items[self.exercise_index + 1].planned

    @property
    def working_stage(self) -> Stage:
        """The stage, or the one to which a pause goes back."""
        return self.left_stage or self.stage

    @property
    def resting(self) -> bool:
        """Whether the rest between two repetitions runs."""
        return self.stage is Stage.EXERCISE and self.rest_until_s is not None

    @property
    def completed(self) -> int:
        """How many of the present exercise's holds were held as asked."""
        measured = (hold.ended_because for hold in self.repetitions)
        timed = (hold.ended_because for hold in self.timed)
        return sum(because is EndedBecause.COMPLETED for because in (*measured, *timed))

    def rest_remaining_s(self, time_s: float) -> float | None:
        """Seconds until the rest is over, None where none runs."""
        if not self.resting or self.rest_until_s is None:
            return None
        return max(0.0, self.rest_until_s - time_s)

    def since_start_s(self, stamp_s: float) -> float:
        """Turn a frame stamp into seconds since the session's start, whole milliseconds."""
        return round(max(0.0, stamp_s - self.started_s), 3)


Step = tuple[Course, tuple[Fact, ...]]
"""The next course, and what to write down."""

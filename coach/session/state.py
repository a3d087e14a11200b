"""Where a sitting stands."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.moment import Stage
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import SessionEnd
from coach.session.entries import Fact


@dataclass(frozen=True, slots=True)
class Course:
    """Where a sitting stands.

    ::

        WELCOME --START--> PAIN_BEFORE --PAIN--> EXERCISE --all done, tries used, SKIP--> PAIN_AFTER
                             |   ^                  |                                        |
                             |   |                  `--PAIN above the limit--.               |
                             |   |                                           v               |
                             |   `--no score known-------------- next exercise <--PAIN, SKIP-'
                             |                                      ^   |   |
                             `--PAIN above the limit, SKIP----------'   |   `--none left--> FINISHED
                                                                        |
                  EXERCISE <--score known and within its limit----------'

        any but WELCOME --PAUSE--> PAUSED --RESUME--> the same;  any --STOP, input ends--> FINISHED

    A score given after an exercise is also the one before the next: nobody is asked twice in a
    row. An exercise whose pain limit is under the score is passed over as ended by pain, so a high
    score may end the session. SKIP, STOP and PAIN work in PAUSED as in the stage that was left.
    Orders that make no sense in a stage change nothing: the same object comes back.

    ``rest_until_s`` is a frame stamp. Rests run on while paused, and a hold that is begun earlier
    ends the rest. ``pain_at_end`` is the last score; after STOP it may still be given in FINISHED.
    """

    plan: Plan
    started_s: float
    stage: Stage = Stage.WELCOME
    exercise_index: int = 0
    left_stage: Stage | None = None
    rest_until_s: float | None = None
    repetitions: tuple[Repetition, ...] = ()
    stopped_by_pain: bool = False
    pain_at_end: int | None = None
    ended_because: SessionEnd | None = None

    @property
    def planned(self) -> PlannedExercise | None:
        """The present exercise, None when finished."""
        if self.stage is Stage.FINISHED:
            return None
        return self.plan.exercises[self.exercise_index]

    @property
    def following(self) -> PlannedExercise | None:
        """The exercise after the present one."""
        if self.stage is Stage.FINISHED or self.exercise_index + 1 >= len(self.plan.exercises):
            return None
        return self.plan.exercises[self.exercise_index + 1]

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
        return sum(r.ended_because is EndedBecause.COMPLETED for r in self.repetitions)

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

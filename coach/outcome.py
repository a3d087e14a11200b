"""One frame's outcome, gathered on the way and put together to be spoken and shown."""

from __future__ import annotations

from dataclasses import dataclass, field

from coach.cues import Happening
from coach.domain.cue import Cue
from coach.domain.moment import Asked, Moment
from coach.domain.pose import Pose
from coach.domain.progress import Phase, ProgressEvent
from coach.domain.reading import Doubt
from coach.exercising import Exercising, Found
from coach.session.state import Course


@dataclass(slots=True)
class Outcome:
    """What one step found: ``hand_up`` once for each raise, ``too_much`` pain just given."""

    pose: Pose | None = field(default=None, repr=False)
    found: Found = field(default_factory=Found)
    events: tuple[ProgressEvent, ...] = ()
    hand_up: bool = False
    too_much: bool = False


@dataclass(frozen=True, slots=True)
class Standing:
    """Where a sitting stands after a frame stamped ``time_s``.

    ``exercising`` is the exercise under way, None in every other stage; ``deserted`` whether
    nobody has been in view for some seconds.
    """

    time_s: float
    course: Course
    outcome: Outcome
    exercising: Exercising | None
    doubt: Doubt | None
    asked: Asked | None
    raised_s: float | None
    deserted: bool

    @property
    def phase(self) -> Phase:
        """Where the arm is."""
        return Phase.REST if self.exercising is None else self.exercising.phase

    @property
    def held_s(self) -> float:
        """Seconds held so far."""
        return 0.0 if self.exercising is None else self.exercising.held_s

    @property
    def remaining_s(self) -> float | None:
        """Seconds left of the hold, or until a timed one begins by itself; None with neither."""
        doing = self.exercising
        if doing is None:
            return None
        if doing.wait_s is not None and not self.course.resting:
            return doing.wait_s
        return doing.remaining_s

    @property
    def completed(self) -> int:
        """Holds held as asked, that of an arm which has yet to come back included."""
        doing = self.exercising
        return self.course.completed + (doing is not None and doing.held_long_enough)

    @property
    def happening(self) -> Happening:
        """What the rules of speaking listen to."""
        course, found = self.course, self.outcome.found
        return Happening(
            time_s=self.time_s,
            stage=course.stage,
            planned=course.planned,
            exercise_index=course.exercise_index,
            exercise_count=len(course.items),
            events=self.outcome.events,
            reading=found.reading,
            phase=self.phase,
            held_s=self.held_s,
            remaining_s=None if self.phase is Phase.REST else self.remaining_s,
            resting=course.resting,
            rest_remaining_s=course.rest_remaining_s(self.time_s),
            repetitions_done=course.completed,
            pain_above_limit=self.outcome.too_much,
            item=course.item,
            doubt=self.doubt,
            asked=self.asked,
            form=found.form,
            wrong_arm=found.wrong_arm,
            score=course.score,
        )

    def moment(self, said: tuple[Cue, ...]) -> Moment:
        """Put together what is drawn, with what is ``said`` of it."""
        course, doing, reading = self.course, self.exercising, self.outcome.found.reading
        usable = doing is not None and reading is not None and reading.usable
        rest_s = course.rest_remaining_s(self.time_s)
        return Moment(
            time_s=self.time_s,
            stage=course.stage,
            exercise_index=course.exercise_index,
            planned=course.planned,
            following=course.following,
            pose=self.outcome.pose,
            reading=reading,
            shown=doing.calm_value if doing is not None and usable else None,
            phase=self.phase,
            held_s=self.held_s,
            remaining_s=rest_s if course.resting else self.remaining_s,
            resting=course.resting,
            repetitions=course.repetitions,
            cues=said,
            items=course.items,
            doubt=self.doubt,
            asked=self.asked,
            raised_s=self.raised_s,
            faults=() if doing is None else doing.faults,
            completed=self.completed,
            deserted=self.deserted,
        )

"""What a therapist asks a patient to do."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import Annotated, Literal

import msgspec
from msgspec import Meta

from coach.domain.exercise import Irritability, Slug, StiffnessPhase
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Position, Side, View, needed_view
from coach.texts import translate

ShortText = Annotated[str, Meta(max_length=200)]
Seconds = Annotated[float, Meta(ge=0, le=86_400)]
PainScore = Annotated[int, Meta(ge=0, le=10)]
RangeDeg = Annotated[float, Meta(ge=-180, le=360)]


class Weekday(StrEnum):
    """Days of the week, in the order of ``datetime.date.weekday``."""

    MONDAY = "mon"
    TUESDAY = "tue"
    WEDNESDAY = "wed"
    THURSDAY = "thu"
    FRIDAY = "fri"
    SATURDAY = "sat"
    SUNDAY = "sun"


EVERY_DAY = tuple(Weekday)


class NextStep(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """When to propose something harder: the therapist's rule; the program proposes, never decides.

    Met by ``sessions`` sittings in a row in which the exercise was completed, its best value
    reached ``at_least_deg`` (if given) and pain after it was at most ``pain_at_most``. ``propose``
    names an exercise of the catalogue, None for a change that the therapist will choose.
    """

    sessions: Annotated[int, Meta(ge=1, le=60)]
    at_least_deg: RangeDeg | None = None
    pain_at_most: PainScore = 3
    propose: Slug | None = None


class PlannedExercise(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One exercise: an end of range held, or a time kept, several times.

    ``exercise`` names it in the catalogue, None for a bare movement; ``movement`` is what is
    measured of it, None where it is timed and coached only; ``position`` is how the person
    stands, sits or lies and ``view`` where the camera stands, None meaning the movement's best
    view. ``hold_s`` and ``rest_s`` are the therapist's prescription in seconds; ``target_deg`` is
    the angle not to be passed, if one is given; ``days`` and ``per_day`` say when it is due.
    """

    exercise: Slug | None = None
    movement: Movement | None = None
    side: Side
    hold_s: Annotated[float, Meta(ge=1, le=60)]
    repetitions: Annotated[int, Meta(ge=1, le=30)]
    rest_s: Annotated[float, Meta(ge=0, le=300)] = 10.0
    position: Position = Position.STANDING
    view: View | None = None
    target_deg: RangeDeg | None = None
    pain_limit: PainScore = 4
    days: Annotated[tuple[Weekday, ...], Meta(min_length=1, max_length=7)] = EVERY_DAY
    per_day: Annotated[int, Meta(ge=1, le=6)] = 1
    next_step: NextStep | None = None

    @property
    def seen_from(self) -> View:
        """Where the camera stands: as asked, or where the movement is measured best."""
        if self.view is not None:
            return self.view
        return View.FRONT if self.movement is None else needed_view(self.movement, self.position)

    @property
    def measured(self) -> Movement:
        """The movement; a ``Fault`` where the exercise is timed only."""
        if self.movement is None:
            raise Fault(
                translate(
                    "faults",
                    "The exercise {exercise} is timed and not measured.",
                ).format(exercise=self.exercise)
            )
        return self.movement


class OtherSide(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The range of the patient's other shoulder, where it was measured, in degrees."""

    movement: Movement
    value_deg: RangeDeg


class Plan(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A plan file, version 2.

    ``patient_code`` is whatever the practice chose to know the patient by. ``side`` is the stiff
    shoulder, None where both are treated. ``revision`` counts the plans of this patient up;
    ``valid_until`` is the last day it holds. ``sessions_per_week`` is what adherence is counted
    against. ``phase`` chooses what the patient is given to read. ``practice_key`` is the
    practice's public key, in the age format: with it session files are written for the practice
    only.
    """

    format: Literal["shoulder-plan"] = "shoulder-plan"
    version: Literal[2] = 2
    patient_code: Annotated[str, Meta(min_length=1, max_length=64)]
    title: ShortText = ""
    revision: Annotated[int, Meta(ge=1, le=100_000)] = 1
    issued_on: date | None = None
    valid_until: date | None = None
    side: Side | None = None
    phase: StiffnessPhase | None = None
    irritability: Irritability | None = None
    exercises: Annotated[tuple[PlannedExercise, ...], Meta(min_length=1, max_length=40)]
    sessions_per_week: Annotated[int, Meta(ge=1, le=21)] = 7
    other_side: Annotated[tuple[OtherSide, ...], Meta(max_length=40)] = ()
    contact: ShortText = ""
    practice_key: Annotated[str, Meta(max_length=200, pattern="^age1[0-9a-z]+$")] | None = None

"""What a therapist asks a patient to do."""

from __future__ import annotations

from typing import Annotated, Literal

import msgspec
from msgspec import Meta

from coach.domain.movement import Movement, Position, Side, View, needed_view

ShortText = Annotated[str, Meta(max_length=200)]
Seconds = Annotated[float, Meta(ge=0, le=86_400)]
PainScore = Annotated[int, Meta(ge=0, le=10)]
RangeDeg = Annotated[float, Meta(ge=-180, le=360)]


class PlannedExercise(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One exercise: a movement held at the end of its range, several times.

    ``position`` is how the person stands, sits or lies. ``hold_s`` and ``rest_s`` are the
    therapist's prescription in seconds; ``target_deg`` is the angle not to be passed, if one is
    given; ``view`` says where the camera stands, None meaning the movement's best view.
    """

    movement: Movement
    side: Side
    hold_s: Annotated[float, Meta(ge=1, le=60)]
    repetitions: Annotated[int, Meta(ge=1, le=30)]
    rest_s: Annotated[float, Meta(ge=0, le=300)] = 10.0
    position: Position = Position.STANDING
    view: View | None = None
    target_deg: RangeDeg | None = None
    pain_limit: PainScore = 4

    @property
    def seen_from(self) -> View:
        """Where the camera stands: as asked, or where the movement is measured best."""
        return self.view or needed_view(self.movement, self.position)


class OtherSide(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The range of the patient's other shoulder, where it was measured, in degrees."""

    movement: Movement
    value_deg: RangeDeg


class Plan(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A plan file, version 1.

    ``patient_code`` is whatever the practice chose to know the patient by. ``sessions_per_week``
    is what adherence is counted against.
    """

    format: Literal["shoulder-plan"] = "shoulder-plan"
    version: Literal[1] = 1
    patient_code: Annotated[str, Meta(min_length=1, max_length=64)]
    title: ShortText = ""
    exercises: Annotated[tuple[PlannedExercise, ...], Meta(min_length=1, max_length=40)]
    sessions_per_week: Annotated[int, Meta(ge=1, le=21)] = 7
    other_side: Annotated[tuple[OtherSide, ...], Meta(max_length=40)] = ()
    contact: ShortText = ""

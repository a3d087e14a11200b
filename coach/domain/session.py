"""What is written down of one sitting: the session document, version 4.

Every time is in seconds since the start of the session on a monotonic clock; ``started_at`` is
the only wall-clock time. Errors are half widths of 95 % intervals.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Literal

import msgspec
from msgspec import Meta

from coach.domain.exercise import Slug
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import PainScore, Plan, Seconds, ShortText
from coach.domain.progress import Repetition, TimedHold
from coach.domain.reading import Calibration
from coach.texts import translate

Sha256 = Annotated[str, Meta(pattern="^[0-9a-f]{64}$")]
Count = Annotated[int, Meta(ge=0, le=10_000_000)]
SessionId = Annotated[str, Meta(pattern="^[0-9a-f]{32}$")]
WallTime = Annotated[
    str,
    Meta(
        max_length=40,
        pattern=(
            "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}([.][0-9]{1,6})?"
            "(Z|[+-][0-9]{2}:[0-9]{2})$"
        ),
    ),
]
"""ISO 8601 date and time with zone offset."""


class SessionEnd(StrEnum):
    """How a session, or an exercise in it, came to its end."""

    COMPLETED = "completed"
    STOPPED = "stopped"
    """By the person."""
    SKIPPED = "skipped"
    """By the person, going on with the next exercise."""
    PAIN = "pain"
    """A pain above the plan's limit was given."""
    UNFINISHED = "unfinished"
    """Too many holds were let go early; the program went on."""
    INPUT_ENDED = "input-ended"
    """The clip ended or the camera went away for good."""
    INTERRUPTED = "interrupted"
    """The program ended without saying so; the file was recovered from the journal."""


class ExerciseRecord(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """What was done of one planned exercise; ``planned_index`` counts in the plan from 0.

    ``eased``: the easier neighbour was done in its place, after too much pain; ``exercise`` then
    names that one. ``offered`` is the easier neighbour that was offered, if one was. ``movement``
    None: timed only, with its holds under ``timed``. ``model_sha256`` is the pose model's that
    measured it, where that was another than the one of ``Software``.
    """

    planned_index: Annotated[int, Meta(ge=0, le=39)]
    exercise: Slug | None = None
    eased: bool = False
    offered: Slug | None = None
    movement: Movement | None
    side: Side
    view: View
    position: Position = Position.STANDING
    calibration: Calibration | None = None
    model_sha256: Sha256 | None = None
    started_s: Seconds
    ended_s: Seconds
    ended_because: SessionEnd
    repetitions: Annotated[tuple[Repetition, ...], Meta(max_length=10_000)] = ()
    timed: Annotated[tuple[TimedHold, ...], Meta(max_length=10_000)] = ()
    pain_before: PainScore | None = None
    pain_after: PainScore | None = None

    @property
    def measured(self) -> Movement:
        """The movement; a ``Fault`` where the exercise was timed only."""
        if self.movement is None:
            raise Fault(
                translate(
                    "faults",
                    "The exercise {exercise} was timed and not measured.",
                ).format(exercise=self.exercise)
            )
        return self.movement


class Camera(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """Where the frames came from. ``frames_lost`` were taken but not measured."""

    kind: Literal["camera", "file"]
    width_px: Annotated[int, Meta(ge=1, le=20_000)]
    height_px: Annotated[int, Meta(ge=1, le=20_000)]
    frames_per_s: Annotated[float, Meta(ge=0, le=1_000)]
    frames_seen: Count = 0
    frames_lost: Count = 0
    field_of_view_deg: Annotated[float, Meta(ge=10, le=170)] | None = None


class Software(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """What measured: ``definitions`` counts up whenever an angle's meaning changes."""

    name: ShortText
    version: ShortText
    definitions: Annotated[int, Meta(ge=1, le=10_000)]
    model_sha256: Sha256
    estimator: Literal["frame-by-frame", "whole-sequence"] = "frame-by-frame"


class SessionDocument(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """``session.json`` of a session file."""

    format: Literal["shoulder-session"] = "shoulder-session"
    version: Literal[4] = 4
    session_id: SessionId
    started_at: WallTime
    duration_s: Seconds
    ended_because: SessionEnd
    software: Software
    camera: Camera
    plan: Plan
    exercises: Annotated[tuple[ExerciseRecord, ...], Meta(max_length=200)] = ()
    pain_at_end: PainScore | None = None

    def software_of(self, record: ExerciseRecord) -> Software:
        """Give the program as it measured one exercise: with the exercise's own pose model."""
        if record.model_sha256 is None:
            return self.software
        return msgspec.structs.replace(self.software, model_sha256=record.model_sha256)

"""What a session's journal is made of, in the order in which it happens.

Every ``time_s`` is in seconds since the start of the session. ``planned_index`` counts in the
plan; ``eased`` tells the easier neighbour that was done in an exercise's place from itself.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum
from typing import Annotated, Literal

import msgspec
from msgspec import Meta

from coach.domain.exercise import Slug
from coach.domain.movement import Movement, Position, View
from coach.domain.plan import PainScore, Plan, Seconds
from coach.domain.progress import Repetition, TimedHold
from coach.domain.reading import Calibration
from coach.domain.session import Camera, Count, SessionEnd, SessionId, Sha256, Software, WallTime

PlannedIndex = Annotated[int, Meta(ge=0, le=39)]


class Asked(StrEnum):
    """When a pain score was asked for."""

    BEFORE = "before"
    AFTER = "after"
    AT_END = "at-end"


class SessionOpened(msgspec.Struct, frozen=True, kw_only=True, tag="opened"):
    """The first entry: everything that is known before anything happens."""

    format: Literal["shoulder-journal"] = "shoulder-journal"
    version: Literal[3] = 3
    session_id: SessionId
    started_at: WallTime
    software: Software
    camera: Camera
    plan: Plan


class ExerciseStarted(msgspec.Struct, frozen=True, kw_only=True, tag="exercise-started"):
    """An exercise began to be measured or timed; of an eased one, which and what is measured.

    ``model_sha256`` where another pose model measures than the one the session opened with.
    """

    time_s: Seconds
    planned_index: PlannedIndex
    view: View
    position: Position = Position.STANDING
    eased: bool = False
    exercise: Slug | None = None
    movement: Movement | None = None
    model_sha256: Sha256 | None = None


class PainGiven(msgspec.Struct, frozen=True, kw_only=True, tag="pain"):
    """A pain score was given; ``planned_index`` is None at the end of the session."""

    time_s: Seconds
    asked: Asked
    score: PainScore
    planned_index: PlannedIndex | None = None
    eased: bool = False


class Calibrated(msgspec.Struct, frozen=True, kw_only=True, tag="calibrated"):
    """Keeping still at the start of an exercise was seen, or missed; again after each pause."""

    time_s: Seconds
    planned_index: PlannedIndex
    calibration: Calibration
    eased: bool = False


class RepetitionDone(msgspec.Struct, frozen=True, kw_only=True, tag="repetition"):
    """A hold is over, completed or not; the repetition's times count from the session's start."""

    time_s: Seconds
    planned_index: PlannedIndex
    repetition: Repetition
    eased: bool = False


class TimedHoldDone(msgspec.Struct, frozen=True, kw_only=True, tag="timed-hold"):
    """A timed hold is over, completed or not; its times count from the session's start."""

    time_s: Seconds
    planned_index: PlannedIndex
    hold: TimedHold
    eased: bool = False


class EasierOffered(msgspec.Struct, frozen=True, kw_only=True, tag="easier-offered"):
    """After too much pain, the easier neighbour was offered: which, and how it would be done."""

    time_s: Seconds
    planned_index: PlannedIndex
    exercise: Slug
    movement: Movement | None = None
    view: View = View.FRONT
    position: Position = Position.STANDING


class ExerciseEnded(msgspec.Struct, frozen=True, kw_only=True, tag="exercise-ended"):
    """An exercise is over, or is not done at all."""

    time_s: Seconds
    planned_index: PlannedIndex
    ended_because: SessionEnd
    eased: bool = False


class ReadingRows(msgspec.Struct, frozen=True, kw_only=True, tag="readings"):
    """About a second's rows of ``readings.csv``; ``time_s`` is the last one's."""

    time_s: Seconds
    rows: str


class LandmarkRows(msgspec.Struct, frozen=True, kw_only=True, tag="landmarks"):
    """About a second's rows of ``landmarks.csv``; ``time_s`` is the last one's."""

    time_s: Seconds
    rows: str


class CameraCounts(msgspec.Struct, frozen=True, kw_only=True, tag="camera"):
    """Frames so far. One a second also shows how long an interrupted session lasted."""

    time_s: Seconds
    frames_seen: Count
    frames_lost: Count


class SessionEnded(msgspec.Struct, frozen=True, kw_only=True, tag="ended"):
    """The session came to an end that it knows of."""

    time_s: Seconds
    ended_because: SessionEnd


Entry = (
    SessionOpened
    | ExerciseStarted
    | Calibrated
    | PainGiven
    | RepetitionDone
    | TimedHoldDone
    | EasierOffered
    | ExerciseEnded
    | ReadingRows
    | LandmarkRows
    | CameraCounts
    | SessionEnded
)

Fact = (
    ExerciseStarted
    | Calibrated
    | PainGiven
    | RepetitionDone
    | TimedHoldDone
    | EasierOffered
    | ExerciseEnded
    | SessionEnded
)
"""What the course of a session adds; the rest comes from the frames."""


def measured_with(facts: Iterable[Fact], model_sha256: str | None) -> tuple[Fact, ...]:
    """Name the pose model that measures an exercise where one begins; None: the session's own."""
    return tuple(
        msgspec.structs.replace(fact, model_sha256=model_sha256)
        if isinstance(fact, ExerciseStarted) and fact.movement is not None
        else fact
        for fact in facts
    )

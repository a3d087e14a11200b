"""What happens in an exercise: phases, holds, repetitions."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

import msgspec
from msgspec import Meta

from coach.domain.form import FormFault
from coach.domain.movement import Unit
from coach.domain.plan import RangeDeg, Seconds
from coach.domain.reading import NO_FORM, Doubt, ErrorDeg, Form


class Phase(StrEnum):
    """Where the arm is in a repetition."""

    REST = "rest"
    MOVING = "moving"
    SETTLING = "settling"
    HOLDING = "holding"
    RETURNING = "returning"


class EndedBecause(StrEnum):
    """Why a hold ended."""

    COMPLETED = "completed"
    """The asked seconds were held."""
    LET_GO = "let-go"
    """The arm left its end range (before the asked seconds, or where none were asked)."""
    LOST = "lost"
    """The arm was out of sight, or the camera or laptop stood still, for too long."""
    STOPPED = "stopped"
    """The person paused or stopped the exercise."""
    INPUT_ENDED = "input-ended"
    """The clip or camera ended while the arm was held."""


class Repetition(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One hold at the end of the range.

    ``start_s`` and ``end_s`` are frame stamps, ``held_s`` the seconds in which the arm was there
    and seen (at most ``end_s - start_s``). ``value`` is the median over the hold without its
    first second, ``error`` the half width of its 95 % interval, ``spread`` the interquartile
    range of the readings, all in ``unit``; ``seen_fraction`` the share of the hold with usable
    readings. ``form`` holds medians over the hold, ``faults`` what was wrong with it by the
    exercise's limits.
    """

    number: Annotated[int, Meta(ge=1, le=10_000)]
    start_s: Seconds
    end_s: Seconds
    held_s: Seconds
    value: RangeDeg
    error: ErrorDeg
    spread: ErrorDeg
    unit: Unit = Unit.DEGREES
    seen_fraction: Annotated[float, Meta(ge=0, le=1)]
    ended_because: EndedBecause
    form: Form = NO_FORM
    faults: Annotated[tuple[FormFault, ...], Meta(max_length=6)] = ()


class TimedHold(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One hold that was timed and coached without measuring.

    ``held_s`` are the seconds that were counted, pauses left out.
    """

    number: Annotated[int, Meta(ge=1, le=10_000)]
    start_s: Seconds
    end_s: Seconds
    held_s: Seconds
    ended_because: EndedBecause


@dataclass(frozen=True, slots=True)
class PhaseChanged:
    """The arm went from one phase to another."""

    time_s: float
    phase: Phase


@dataclass(frozen=True, slots=True)
class HoldStarted:
    """The arm has settled; the clock has run since ``start_s``, a little before ``time_s``."""

    time_s: float
    start_s: float


@dataclass(frozen=True, slots=True)
class HoldPaused:
    """The clock of the hold stands because the arm is not seen."""

    time_s: float
    doubt: Doubt


@dataclass(frozen=True, slots=True)
class HoldResumed:
    """The arm is seen again and still there; the clock runs on."""

    time_s: float


@dataclass(frozen=True, slots=True)
class HoldCompleted:
    """The asked seconds are held; the arm may be let down."""

    time_s: float


@dataclass(frozen=True, slots=True)
class RepetitionEnded:
    """A hold is over, completed or not."""

    time_s: float
    repetition: Repetition


@dataclass(frozen=True, slots=True)
class TimedHoldEnded:
    """A timed hold is over, completed or not."""

    time_s: float
    hold: TimedHold


ProgressEvent = (
    PhaseChanged
    | HoldStarted
    | HoldPaused
    | HoldResumed
    | HoldCompleted
    | RepetitionEnded
    | TimedHoldEnded
)

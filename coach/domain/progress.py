"""What happens in an exercise: phases, holds, repetitions."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from coach.domain.reading import Doubt, Form


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
    """The arm was out of sight too long."""
    STOPPED = "stopped"
    """The person paused or stopped the exercise."""
    INPUT_ENDED = "input-ended"
    """The clip or camera ended while the arm was held."""


@dataclass(frozen=True, slots=True)
class Repetition:
    """One hold at the end of the range.

    ``start_s`` and ``end_s`` are frame stamps, ``held_s`` the seconds in which the arm was there
    and seen (at most ``end_s - start_s``). ``value_deg`` is the median over the hold without its
    first second, ``error_deg`` the half width of its 95 % interval, ``spread_deg`` the
    interquartile range of the readings, ``seen_fraction`` the share of the hold with usable
    readings. ``form`` holds medians over the hold.
    """

    number: int
    start_s: float
    end_s: float
    held_s: float
    value_deg: float
    error_deg: float
    spread_deg: float
    seen_fraction: float
    ended_because: EndedBecause
    form: Form = Form()


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


ProgressEvent = (
    PhaseChanged | HoldStarted | HoldPaused | HoldResumed | HoldCompleted | RepetitionEnded
)

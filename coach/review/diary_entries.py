"""What the patient's diary holds."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from coach.domain.plan import PlannedExercise
from coach.review.change import Summary
from coach.review.history import Series


class Mark(StrEnum):
    """What a cell of the calendar says."""

    DONE = "done"
    PARTLY = "partly"
    LEFT_OUT = "left out"
    REST = "rest day"
    DUE = "due today"
    UNKNOWN = "not known"
    """Before the first session and the plan."""


@dataclass(frozen=True, slots=True)
class Day:
    """One day: rounds of exercises asked and of those done, sittings, pain 0-10.

    ``pain_before`` is the day's first, ``pain_after`` its last.
    """

    on: date
    asked: int
    done: int
    sittings: int
    pain_before: int | None
    pain_after: int | None
    mark: Mark


@dataclass(frozen=True, slots=True)
class Due:
    """An exercise that today's plan asks for, and how often it was done today."""

    planned: PlannedExercise
    asked: int
    done: int


@dataclass(frozen=True, slots=True)
class DayValue:
    """A day's last session in one movement, in the movement's unit.

    ``value`` is the median of its completed holds, as in ``history``; ``best`` the completed hold
    that reached furthest (with a still trunk, if there is one), None where none was completed.
    Errors are half widths of 95 % intervals.
    """

    on: date
    value: float
    error: float
    best: float | None
    best_error: float | None


@dataclass(frozen=True, slots=True)
class DiarySeries:
    """One movement of one side in one position, by the newest definition of its value."""

    series: Series
    summary: Summary | None
    days: tuple[DayValue, ...]
    sentence: str


@dataclass(frozen=True, slots=True)
class LastExercise:
    """What was done of one exercise the last time."""

    planned: PlannedExercise
    holds: int
    best: float | None
    best_error: float | None
    pain_before: int | None
    pain_after: int | None


@dataclass(frozen=True, slots=True)
class LastTime:
    """The last sitting in which anything was held."""

    on: date
    exercises: tuple[LastExercise, ...]


@dataclass(frozen=True, slots=True)
class Diary:
    """Twelve weeks up to ``today``, beginning on a Monday, and everything ever measured."""

    today: date
    days: tuple[Day, ...]
    due: tuple[Due, ...]
    series: tuple[DiarySeries, ...]
    last: LastTime | None
    sessions: int
    expired_on: date | None
    """The last day the plan held, where that is over."""

"""What was done against what was asked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from coach.domain.plan import PlannedExercise, Weekday
from coach.domain.progress import EndedBecause
from coach.domain.session import SessionDocument
from coach.review.history import in_order, started
from coach.review.holds import counted_s, holds_of

_DAYS = 7


@dataclass(frozen=True, slots=True)
class Week:
    """One calendar week, Monday to Sunday; ``asked`` counts only days inside the period."""

    monday: date
    done: int
    asked: int


@dataclass(frozen=True, slots=True)
class Dose:
    """Holds and seconds of the sessions that took place: done against prescribed.

    Measured and timed ones count alike, and so does an easier exercise done in the planned one's
    place; what goes beyond the prescription does not.
    """

    holds_completed: int
    holds_asked: int
    held_s: float
    asked_s: float


@dataclass(frozen=True, slots=True)
class Adherence:
    """Sessions by week from the first session to ``until``, and the dose within them."""

    weeks: tuple[Week, ...]
    dose: Dose

    @property
    def done(self) -> int:
        """Sessions that took place."""
        return sum(w.done for w in self.weeks)

    @property
    def asked(self) -> int:
        """Sessions that the plans asked for."""
        return sum(w.asked for w in self.weeks)


def exercised(document: SessionDocument) -> bool:
    """Tell whether anything was held in a session: opening the program alone is no exercise."""
    return any(hold.held_s > 0 for e in document.exercises for hold in holds_of(e))


def adherence(documents: Sequence[SessionDocument], until: date | None = None) -> Adherence:
    """Count by the patient's own dates.

    ``until`` is the day up to which sessions were due, the last session's where not given. The
    plan of a week is that of its last session, or of the last session before it.
    """
    ordered = in_order(documents)
    if not ordered:
        return Adherence((), Dose(0, 0, 0.0, 0.0))
    dates = [started(d).date() for d in ordered]
    begin, end = min(dates), max(max(dates), until or date.min)
    weeks: list[Week] = []
    monday = begin - timedelta(days=begin.weekday())
    per_week = ordered[0].plan.sessions_per_week
    while monday <= end:
        following = monday + timedelta(days=_DAYS)
        inside = [d for d, on in zip(ordered, dates, strict=True) if monday <= on < following]
        if inside:
            per_week = inside[-1].plan.sessions_per_week
        due_days = (min(following, end + timedelta(days=1)) - max(monday, begin)).days
        done = sum(exercised(d) for d in inside)
        weeks.append(Week(monday, done, (2 * per_week * due_days + _DAYS) // (2 * _DAYS)))
        monday = following
    return Adherence(tuple(weeks), _dose(ordered))


def _dose(documents: Sequence[SessionDocument]) -> Dose:
    completed, holds_asked, held_s, asked_s = 0, 0, 0.0, 0.0
    for document in documents:
        if not exercised(document):
            continue
        for planned, done in done_of(document):
            holds_asked += planned.repetitions
            asked_s += planned.repetitions * planned.hold_s
            completed += min(done.completed, planned.repetitions)
            held_s += done.held_s
    return Dose(completed, holds_asked, held_s, asked_s)


@dataclass(frozen=True, slots=True)
class Done:
    """What was done of one planned exercise: holds completed, and seconds without the excess."""

    completed: int = 0
    held_s: float = 0.0


def done_of(document: SessionDocument) -> tuple[tuple[PlannedExercise, Done], ...]:
    """Pair each exercise due on the session's day, or begun all the same, with what was done."""
    weekday = tuple(Weekday)[started(document).weekday()]
    done: list[tuple[PlannedExercise, Done]] = []
    for index, planned in enumerate(document.plan.exercises):
        records = [r for r in document.exercises if r.planned_index == index]
        if not records and weekday not in planned.days:
            continue
        holds = [hold for record in records for hold in holds_of(record)]
        completed = sum(hold.ended_because is EndedBecause.COMPLETED for hold in holds)
        held_s = sum(counted_s(record, planned) for record in records)
        done.append((planned, Done(completed, held_s)))
    return tuple(done)

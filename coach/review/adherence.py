"""What was done against what was asked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from coach.domain.progress import EndedBecause
from coach.domain.session import SessionDocument
from coach.review.history import asked, in_order, started

_DAYS = 7


@dataclass(frozen=True, slots=True)
class Week:
    """One calendar week, Monday to Sunday; ``asked`` counts only days inside the period."""

    monday: date
    done: int
    asked: int


@dataclass(frozen=True, slots=True)
class Dose:
    """Holds and seconds of the sessions that took place: done against prescribed."""

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
    return any(r.held_s > 0 for e in document.exercises for r in e.repetitions)


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
        for planned in document.plan.exercises:
            holds_asked += planned.repetitions
            asked_s += planned.repetitions * planned.hold_s
        for record in document.exercises:
            planned_hold = asked(document, record)
            for repetition in record.repetitions:
                completed += repetition.ended_because is EndedBecause.COMPLETED
                # Time past the prescription is no dose.
                limit = planned_hold.hold_s if planned_hold else repetition.held_s
                held_s += min(repetition.held_s, limit)
    return Dose(completed, holds_asked, held_s, asked_s)

"""Across patients: whom to look at first, each with the reason in a sentence.

Nothing here judges a shoulder; it sorts a list of patients for the person who does.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from coach.domain.plan import EVERY_DAY, Plan
from coach.domain.session import SessionDocument
from coach.review.cohort_reasons import (
    Concern,
    Reason,
    changed,
    in_pain,
    never_held,
    poorly_measured,
    ready_for_more,
    stopped,
)
from coach.review.course import Course, course_of
from coach.review.history import started
from coach.review.wording import NO_NAMES

GRACE_DAYS = 2
"""Days without a sitting beyond those the plan leaves free before someone counts as stopped: a
missed day is no news. Our choice."""
_DAYS_A_WEEK = 7


@dataclass(frozen=True, slots=True)
class Standing:
    """One patient: reasons in the order of ``Concern``, none where nothing stands out."""

    patient_code: str
    last_on: date | None
    sittings: int
    reasons: tuple[Reason, ...]

    def has(self, concern: Concern) -> bool:
        """Tell whether a concern is among the reasons."""
        return any(r.concern is concern for r in self.reasons)


@dataclass(frozen=True, slots=True)
class Looked:
    """One patient's sessions as they were looked at, whatever the day; ``on`` gives the standing.

    ``pause_days`` is the longest pause that the plan leaves, ``until`` the plan's last day.
    """

    patient_code: str
    last_on: date | None
    sittings: int
    reasons: tuple[Reason, ...]
    pause_days: int = 0
    until: date | None = None

    def on(self, today: date) -> Standing:
        """Say how the patient stands on a day."""
        reasons = (*self.reasons, *self._stopped(today))
        order = list(Concern)
        ordered = tuple(sorted(reasons, key=lambda r: order.index(r.concern)))
        return Standing(self.patient_code, self.last_on, self.sittings, ordered)

    def _stopped(self, today: date) -> list[Reason]:
        if self.last_on is None:
            return [Reason(Concern.STOPPED, never_held())]
        until = today if self.until is None else min(today, self.until)
        pause = (until - self.last_on) // timedelta(days=1)
        if pause <= self.pause_days + GRACE_DAYS:
            return []
        return [Reason(Concern.STOPPED, stopped(self.last_on, pause, self.pause_days))]


RULES = 5
"""Raised whenever ``looked_at`` would tell something else of the same sessions."""


def cohort(patients: Mapping[str, Sequence[SessionDocument]], today: date) -> tuple[Standing, ...]:
    """Sort patients, by code, with the most pressing reason first; the rest by code."""
    return in_need(standing(code, documents, today) for code, documents in patients.items())


def in_need(standings: Iterable[Standing]) -> tuple[Standing, ...]:
    """Put the most pressing first."""
    order = list(Concern)

    def pressing(one: Standing) -> tuple[int, str]:
        first = order.index(one.reasons[0].concern) if one.reasons else len(order)
        return first, one.patient_code

    return tuple(sorted(standings, key=pressing))


def standing(
    code: str,
    documents: Sequence[SessionDocument] | Course,
    today: date,
    names: Mapping[str, str] = NO_NAMES,
) -> Standing:
    """Look at one patient's sessions, in any order, on a day."""
    return looked_at(code, documents, names).on(today)


def looked_at(
    code: str,
    documents: Sequence[SessionDocument] | Course,
    names: Mapping[str, str] = NO_NAMES,
) -> Looked:
    """Look at one patient's sessions, in any order; ``names`` are the catalogue's by its slugs."""
    course = course_of(documents).worked
    worked = course.ordered
    if not worked:
        return Looked(code, None, 0, ())
    seen, plan = course.sittings, worked[-1].plan
    results = [*filter(None, course.summaries)]
    pain = in_pain(seen)
    found = [*pain, *poorly_measured(seen, results), *changed(results)]
    if not pain:  # nothing harder is proposed into pain
        found += ready_for_more(plan, worked, names)
    last_on, pause_days = started(worked[-1]).date(), longest_pause_days(plan)
    return Looked(code, last_on, len(worked), tuple(found), pause_days, plan.valid_until)


def longest_pause_days(plan: Plan) -> int:
    """Give the days from one sitting to the next that a plan leaves at most."""
    due = sorted({EVERY_DAY.index(d) for e in plan.exercises for d in e.days})
    if len(due) == _DAYS_A_WEEK:
        return max(1, -(-_DAYS_A_WEEK // plan.sessions_per_week))
    following = (*due[1:], due[0] + _DAYS_A_WEEK)
    return max(b - a for a, b in zip(due, following, strict=True))

"""Across patients: whom to look at first, each with the reason in a sentence.

Nothing here judges a shoulder; it sorts a list of patients for the person who does.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from statistics import median

from coach.domain.plan import EVERY_DAY, Plan, PlannedExercise
from coach.domain.session import SessionDocument
from coach.review.adherence import exercised
from coach.review.change import Summary, Verdict, summary
from coach.review.history import history, in_order, started
from coach.review.next_step import next_step
from coach.review.report_facts import HIGH_PAIN
from coach.review.sittings import Sitting, sittings
from coach.review.wording import change_with_error, counted, day, listed, movement_of

PAIN_RISE = 2
"""Points of 0-10 that matter to patients: 2.17 in Michener et al. 2011, taken as 2 since scores
are whole numbers and their medians halves at most."""
GRACE_DAYS = 2
"""Days without a sitting beyond those the plan leaves free before someone counts as stopped: a
missed day is no news. Our choice."""
_DAYS_A_WEEK = 7
_LATELY = 7
"""Sittings that count as the latest: a week of daily ones."""


class Concern(StrEnum):
    """Why to look at a patient, the most pressing first."""

    HIGH_PAIN = "high pain"
    PAIN_ROSE = "pain rose"
    LOST_RANGE = "range fell"
    STOPPED = "stopped"
    POOR_DATA = "poor data"
    NEXT_STEP = "next step"
    GAINED = "range grew"


@dataclass(frozen=True, slots=True)
class Reason:
    """One concern and the sentence that says why."""

    concern: Concern
    sentence: str


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
            return [Reason(Concern.STOPPED, "Nothing was ever held in a sitting.")]
        until = today if self.until is None else min(today, self.until)
        pause = (until - self.last_on) // timedelta(days=1)
        if pause <= self.pause_days + GRACE_DAYS:
            return []
        return [
            Reason(
                Concern.STOPPED,
                f"No sitting since {day(self.last_on)}, {counted(pause, 'day')}; the plan asks for "
                f"one at least every {counted(self.pause_days, 'day')}.",
            )
        ]


RULES = 1
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


def standing(code: str, documents: Sequence[SessionDocument], today: date) -> Standing:
    """Look at one patient's sessions, in any order, on a day."""
    return looked_at(code, documents).on(today)


def looked_at(code: str, documents: Sequence[SessionDocument]) -> Looked:
    """Look at one patient's sessions, in any order."""
    worked = [d for d in in_order(documents) if exercised(d)]
    if not worked:
        return Looked(code, None, 0, ())
    seen, plan = sittings(worked), worked[-1].plan
    results = [r for s in history(worked) if (r := summary(s)) is not None]
    pain = _pain(seen)
    found = [*pain, *_poor(seen, results), *_changes(results)]
    if not pain:  # nothing harder is proposed into pain
        found += _next_steps(plan, worked)
    last_on, pause_days = started(worked[-1]).date(), longest_pause_days(plan)
    return Looked(code, last_on, len(worked), tuple(found), pause_days, plan.valid_until)


def longest_pause_days(plan: Plan) -> int:
    """Give the days from one sitting to the next that a plan leaves at most."""
    due = sorted({EVERY_DAY.index(d) for e in plan.exercises for d in e.days})
    if len(due) == _DAYS_A_WEEK:
        return max(1, -(-_DAYS_A_WEEK // plan.sessions_per_week))
    following = (*due[1:], due[0] + _DAYS_A_WEEK)
    return max(b - a for a, b in zip(due, following, strict=True))


def _pain(seen: Sequence[Sitting]) -> list[Reason]:
    given = [s for s in seen if s.pain is not None]
    if not given:
        return []
    found: list[Reason] = []
    scores = [s.pain for s in given if s.pain is not None]
    lately = [s for s in given[-_LATELY:] if s.pain is not None and s.pain > HIGH_PAIN]
    if lately:
        worst = max(lately, key=lambda s: s.pain or 0)
        found.append(
            Reason(
                Concern.HIGH_PAIN,
                f"Pain {worst.pain} of 10 on {day(worst.at.date())}, above {HIGH_PAIN}.",
            )
        )
    size = max(1, min(_LATELY, len(scores) // 3))
    first, last = median(scores[:size]), median(scores[-size:])
    if len(scores) > 1 and last - first >= PAIN_RISE:
        found.append(
            Reason(
                Concern.PAIN_ROSE,
                f"Pain rose from {first:g} to {last:g} of 10 (medians of the first and the last "
                f"{counted(size, 'sitting')}); {PAIN_RISE} points matter.",
            )
        )
    return found


def _poor(seen: Sequence[Sitting], results: Sequence[Summary]) -> list[Reason]:
    lately = [s for s in seen if s.seen is not None][-_LATELY:]
    poor = [s for s in lately if s.poor]
    found: list[Reason] = []
    if 2 * len(poor) > len(lately):
        what = listed(poor[-1].poor)
        found.append(
            Reason(
                Concern.POOR_DATA,
                f"{len(poor)} of the last {counted(len(lately), 'measured sitting')} are poorly "
                f"measured; in the latest of them: {what}.",
            )
        )
    moved = [movement_of(r.movement, r.side, r.position) for r in results if r.set_up_changed]
    if moved:
        found.append(
            Reason(
                Concern.POOR_DATA,
                f"{listed(moved)}: the last sittings were measured with another camera set-up "
                "than the first.",
            )
        )
    return found


def _changes(results: Sequence[Summary]) -> list[Reason]:
    found: list[Reason] = []
    for result in results:
        difference = result.difference
        if difference is None or difference.verdict is not Verdict.REAL:
            continue
        grew = difference.change * result.unit.sign > 0
        name = movement_of(result.movement, result.side, result.position)
        change = change_with_error(
            difference.change, difference.error, result.unit, fine=difference.fine
        )
        found.append(
            Reason(
                Concern.GAINED if grew else Concern.LOST_RANGE,
                f"{name}: {change} since {day(result.first.begin)}, beyond the error of measuring.",
            )
        )
    return found


def _next_steps(plan: Plan, documents: Sequence[SessionDocument]) -> list[Reason]:
    found: list[Reason] = []
    for planned in plan.exercises:
        state = next_step(planned, documents)
        if state.met:
            found.append(Reason(Concern.NEXT_STEP, f"{_name(planned)}: {state.reason}"))
    return found


def _name(planned: PlannedExercise) -> str:
    if planned.exercise is None:
        return movement_of(planned.measured, planned.side, planned.position)
    return f"{planned.exercise.replace('-', ' ').capitalize()}, {planned.side}"

"""Days of the patient's calendar: what was due, what was done."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from datetime import date, timedelta

from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import EVERY_DAY, Plan, PlannedExercise, Weekday
from coach.domain.progress import EndedBecause
from coach.domain.session import ExerciseRecord, SessionDocument, SessionEnd
from coach.review.diary_entries import Day, Due, Mark
from coach.review.history import asked
from coach.review.holds import holds_of

DAYS_A_WEEK = 7

_Key = tuple[str | None, Movement | None, Side, Position]
"""What makes two planned exercises the same one in plans of different revisions."""
_ByDay = Mapping[date, Sequence[SessionDocument]]


def held_anything(record: ExerciseRecord) -> bool:
    """Tell whether anything was held, measured or timed."""
    return any(hold.held_s > 0 for hold in holds_of(record))


def holds_completed(record: ExerciseRecord) -> int:
    """Count the completed holds, measured or timed."""
    return sum(hold.ended_because is EndedBecause.COMPLETED for hold in holds_of(record))


def _key(planned: PlannedExercise) -> _Key:
    return planned.exercise, planned.movement, planned.side, planned.position


def _asked_on(plan: Plan, on: date) -> Counter[_Key]:
    if plan.valid_until is not None and on > plan.valid_until:
        return Counter()
    weekday = tuple(Weekday)[on.weekday()]
    wanted: Counter[_Key] = Counter()
    for planned in plan.exercises:
        if weekday in planned.days:
            wanted[_key(planned)] += planned.per_day
    return wanted


def _days_are_free(plan: Plan) -> bool:
    """Tell whether a plan asks for so many days a week and leaves open which."""
    return plan.sessions_per_week < DAYS_A_WEEK and all(e.days == EVERY_DAY for e in plan.exercises)


def _done_on(documents: Sequence[SessionDocument]) -> Counter[_Key]:
    done: Counter[_Key] = Counter()
    for document in documents:
        for record in document.exercises:
            planned = asked(document, record)
            if planned and record.ended_because is SessionEnd.COMPLETED and held_anything(record):
                done[_key(planned)] += 1
    return done


def _plan_on(on: date, by_day: _ByDay, plan: Plan, today: date) -> Plan | None:
    if on >= today or (plan.issued_on is not None and on >= plan.issued_on):
        return plan
    before = [day for day in by_day if day <= on]
    return by_day[max(before)][-1].plan if before else None


def day_of(on: date, by_day: _ByDay, plan: Plan, today: date) -> Day:
    """Sum up one day."""
    documents = by_day.get(on, [])
    records = [record for document in documents for record in document.exercises]
    worked = any(held_anything(record) for record in records)
    valid = _plan_on(on, by_day, plan, today)
    wanted: Counter[_Key] = Counter()
    if valid is not None and (worked or on == today or not _days_are_free(valid)):
        wanted = _asked_on(valid, on)
        if on == today and not worked and not _still_due(by_day, valid, today):
            wanted = Counter()
    count = sum(wanted.values())
    completed = _done_on(documents)
    done = sum((completed & wanted).values())
    befores = [r.pain_before for r in records if r.pain_before is not None]
    afters = [
        pain
        for document in documents
        for pain in (*(r.pain_after for r in document.exercises), document.pain_at_end)
        if pain is not None
    ]
    if worked:
        whole = done == count if count else bool(completed)
        mark = Mark.DONE if whole else Mark.PARTLY
    elif valid is None:
        mark = Mark.UNKNOWN
    elif not count:
        mark = Mark.REST
    else:
        mark = Mark.DUE if on == today else Mark.LEFT_OUT
    return Day(
        on=on,
        asked=count,
        done=done,
        sittings=sum(any(map(held_anything, d.exercises)) for d in documents),
        pain_before=befores[0] if befores else None,
        pain_after=afters[-1] if afters else None,
        mark=mark,
    )


def _still_due(by_day: _ByDay, plan: Plan, today: date) -> bool:
    """Tell whether this week asks for one more day, where the plan leaves the days open."""
    if not _days_are_free(plan):
        return True
    week = [today - timedelta(days=i) for i in range(1, today.weekday() + 1)]
    used = sum(
        any(held_anything(r) for d in by_day.get(on, []) for r in d.exercises) for on in week
    )
    return used < plan.sessions_per_week


def due_today(by_day: _ByDay, plan: Plan, today: date) -> tuple[Due, ...]:
    """Say what today's plan asks for, and how often each was done already."""
    if not _still_due(by_day, plan, today):
        return ()
    wanted, done = _asked_on(plan, today), _done_on(by_day.get(today, []))
    weekday = tuple(Weekday)[today.weekday()]
    due: list[Due] = []
    for planned in plan.exercises:
        key = _key(planned)
        if not wanted[key] or weekday not in planned.days:
            continue
        counted = min(done[key], planned.per_day)
        done[key] -= counted
        due.append(Due(planned, planned.per_day, counted))
    return tuple(due)

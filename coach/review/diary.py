"""The patient's own record: what was due, what was done, and what may be said of the range.

A day is the one on the calendar of the place where the session began. Values and what counts as a
change are the therapist's own (``history``, ``change``), so that both read the same figures.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

import msgspec

from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import ExerciseRecord, SessionDocument
from coach.review.change import summary
from coach.review.diary_days import DAYS_A_WEEK, day_of, due_today, held_anything, holds_completed
from coach.review.diary_entries import DayValue, Diary, DiarySeries, LastExercise, LastTime
from coach.review.diary_wording import sentence_on
from coach.review.history import Series, asked, history, in_order, started
from coach.review.holds import feigns

WEEKS = 12


def diary(documents: Sequence[SessionDocument], plan: Plan, today: date) -> Diary:
    """Arrange the sessions of the plan's patient; others' are left out.

    A past day is counted against the plan of the last session up to then, or against ``plan`` from
    the day it was issued on.
    """
    own = in_order(d for d in documents if d.plan.patient_code == plan.patient_code)
    by_day: dict[date, list[SessionDocument]] = {}
    for document in own:
        by_day.setdefault(started(document).date(), []).append(document)
    first = today - timedelta(days=today.weekday() + DAYS_A_WEEK * (WEEKS - 1))
    expired = plan.valid_until is not None and plan.valid_until < today
    return Diary(
        today=today,
        days=tuple(
            day_of(first + timedelta(days=i), by_day, plan, today)
            for i in range((today - first).days + 1)
        ),
        due=due_today(by_day, plan, today),
        series=_series(own, plan),
        last=_last(own),
        sessions=len(own),
        expired_on=plan.valid_until if expired else None,
    )


def _series(documents: Sequence[SessionDocument], plan: Plan) -> tuple[DiarySeries, ...]:
    measured = [
        msgspec.structs.replace(
            d, exercises=tuple(r for r in d.exercises if r.movement is not None)
        )
        for d in documents
    ]
    newest: dict[tuple[Movement, Side, Position], Series] = {}
    for series in history(measured):
        newest[series.movement, series.side, series.position] = series
    planned = {(e.movement, e.side, e.position) for e in plan.exercises}
    order = sorted(newest, key=lambda kind: kind not in planned)
    by_id = {d.session_id: d for d in measured}
    found: list[DiarySeries] = []
    for kind in order:
        series = newest[kind]
        result = summary(series)
        found.append(
            DiarySeries(series, result, _day_values(series, by_id), sentence_on(series, result))
        )
    return tuple(found)


def _day_values(series: Series, by_id: dict[str, SessionDocument]) -> tuple[DayValue, ...]:
    values: dict[date, DayValue] = {}
    for point in series.points:
        best = _best(
            [
                repetition
                for record in by_id[point.session_id].exercises
                if (record.movement, record.side, record.position)
                == (series.movement, series.side, series.position)
                for repetition in record.repetitions
            ]
        )
        on = point.at.date()
        values[on] = DayValue(
            on,
            point.value,
            point.error,
            best.value if best else None,
            best.error if best else None,
        )
    return tuple(values.values())


def _best(repetitions: Sequence[Repetition]) -> Repetition | None:
    completed = [r for r in repetitions if r.ended_because is EndedBecause.COMPLETED]
    sound = [r for r in completed if not feigns(r)]
    return max(sound or completed, key=lambda r: r.value * r.unit.sign, default=None)


def _last(documents: Sequence[SessionDocument]) -> LastTime | None:
    for document in reversed(documents):
        if any(map(held_anything, document.exercises)):
            return LastTime(
                started(document).date(),
                tuple(
                    _last_exercise(record, planned)
                    for record in document.exercises
                    if (planned := asked(document, record)) is not None
                ),
            )
    return None


def _last_exercise(record: ExerciseRecord, planned: PlannedExercise) -> LastExercise:
    best = _best(record.repetitions)
    return LastExercise(
        planned=planned,
        holds=holds_completed(record),
        best=best.value if best else None,
        best_error=best.error if best else None,
        pain_before=record.pain_before,
        pain_after=record.pain_after,
    )

"""From plan and history to what is due now, in an order that moves the laptop least."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from coach.domain.agenda import AgendaItem
from coach.domain.exercise import Exercise
from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import Plan, PlannedExercise, Weekday
from coach.domain.session import ExerciseRecord, SessionDocument, SessionEnd

SOON_S = 3600.0
"""After a sitting that ended less than an hour ago the next one is too soon: doses are spread over
the day (common practice)."""

Kind = tuple[str | None, Movement | None, Side, Position]
"""What makes an exercise the same from one plan to the next."""


@dataclass(frozen=True, slots=True)
class Agenda:
    """What is due now: ``items`` in order, all of the plan's where ``nothing_due`` says why.

    ``minutes_ago`` is how long ago the last sitting ended where that is under an hour.
    """

    items: tuple[AgendaItem, ...]
    nothing_due: bool = False
    minutes_ago: int | None = None


def whole(plan: Plan) -> tuple[AgendaItem, ...]:
    """Every exercise of the plan, in its order."""
    return tuple(AgendaItem(index, planned) for index, planned in enumerate(plan.exercises))


def due_now(
    plan: Plan,
    history: Sequence[SessionDocument],
    now: datetime,
    known: Mapping[str, Exercise],
) -> Agenda:
    """Give what the plan asks for at ``now``, less what was done since midnight.

    ``now`` carries its zone; a sitting belongs to the day on which its own clock says it began.
    Exercises that share position and place of the laptop come together, in the plan's order
    otherwise. When nothing is due the whole plan is given, for somebody who asks for it.
    """
    own = [document for document in history if document.plan.patient_code == plan.patient_code]
    done_ever = {kind_of(record) for document in own for record in document.exercises}
    today = now.date()
    done_today = [
        (document.plan, record)
        for document in own
        if datetime.fromisoformat(document.started_at).date() == today
        for record in document.exercises
    ]
    told_today = {record.exercise for _, record in done_today if record.repetitions or record.timed}
    often = Counter(
        counted_for(record, asked, plan)
        for asked, record in done_today
        if record.ended_because is SessionEnd.COMPLETED
    )
    items = tuple(
        AgendaItem(
            index,
            planned,
            easier=easier_than(planned, known),
            new=kind_of(planned) not in done_ever,
            told=planned.exercise in told_today,
        )
        for index, planned in enumerate(plan.exercises)
    )
    due = tuple(
        item
        for item in items
        if is_due(item.planned, today) and often[item.planned_index] < item.planned.per_day
    )
    return Agenda(
        _together(due or items), nothing_due=not due, minutes_ago=_minutes_since(own, now)
    )


def is_due(planned: PlannedExercise, today: date) -> bool:
    """Whether the plan asks for the exercise on this day of the week."""
    return tuple(Weekday)[today.weekday()] in planned.days


def kind_of(done: PlannedExercise | ExerciseRecord) -> Kind:
    """Give what makes an exercise the same from one plan to the next."""
    return (done.exercise, done.movement, done.side, done.position)


def counted_for(record: ExerciseRecord, asked: Plan, plan: Plan) -> int | None:
    """Give the place in ``plan`` of what was done under the plan ``asked``; None where nowhere.

    A plan may hold the same exercise several times, with other targets or doses. Then it counts
    for the one that asks for just the same, else for the one at its place among its like.
    """
    done = asked.exercises[record.planned_index]
    like = [index for index, each in enumerate(plan.exercises) if kind_of(each) == kind_of(record)]
    same = [index for index in like if plan.exercises[index] == done]
    if not like:
        return None
    before = asked.exercises[: record.planned_index]
    if same:
        return same[min(before.count(done), len(same) - 1)]
    place = sum(kind_of(each) == kind_of(record) for each in before)
    return like[min(place, len(like) - 1)]


def easier_than(planned: PlannedExercise, known: Mapping[str, Exercise]) -> PlannedExercise | None:
    """Give the easier neighbour with the same dose and pain limit; None where there is none."""
    exercise = known.get(planned.exercise or "")
    easier = known.get(exercise.easier or "") if exercise is not None else None
    if easier is None:
        return None
    return PlannedExercise(
        exercise=easier.exercise,
        movement=easier.movement,
        side=planned.side,
        hold_s=planned.hold_s,
        repetitions=planned.repetitions,
        rest_s=planned.rest_s,
        position=easier.position,
        view=easier.view,
        pain_limit=planned.pain_limit,
    )


def _together(items: tuple[AgendaItem, ...]) -> tuple[AgendaItem, ...]:
    places: dict[tuple[object, ...], list[AgendaItem]] = {}
    for item in items:
        planned = item.planned
        places.setdefault((planned.seen_from, planned.position, planned.side), []).append(item)
    return tuple(item for together in places.values() for item in together)


def _minutes_since(history: Sequence[SessionDocument], now: datetime) -> int | None:
    ends_s = [
        now.timestamp() - datetime.fromisoformat(each.started_at).timestamp() - each.duration_s
        for each in history
        if each.exercises
    ]
    recent_s = [since_s for since_s in ends_s if 0 <= since_s < SOON_S]
    return int(min(recent_s) // 60) if recent_s else None

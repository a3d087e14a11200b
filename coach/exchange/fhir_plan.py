"""Plans as CarePlans with their Goals."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date

import msgspec

from coach.domain.plan import Plan, PlannedExercise
from coach.domain.session import SessionDocument
from coach.exchange.fhir_elements import (
    Element,
    Resource,
    concept,
    identity,
    quantity,
    reference,
    text_of,
    unit_name,
)
from coach.exchange.wording import dose, next_step, planned_name, unit_of
from coach.review.wording import amount, movement_name


def plan_identity(patient: str, plan: Plan) -> str:
    """Give the id of a plan's CarePlan: plans that differ in anything are different ones."""
    return identity("plan", patient, msgspec.json.encode(plan).decode())


def plans(
    ordered: Sequence[SessionDocument], patient: str, today: date | None, names: Mapping[str, str]
) -> list[Resource]:
    """Write every plan that a sitting followed, the newest last, each with its Goals.

    A plan that another one followed, or whose last day is before ``today``, is completed.
    """
    newest_last: dict[str, Plan] = {}
    for document in ordered:
        identifier = plan_identity(patient, document.plan)
        newest_last.pop(identifier, None)
        newest_last[identifier] = document.plan
    found: list[Resource] = []
    replaced: str | None = None
    for place, (identifier, plan) in enumerate(newest_last.items(), start=1):
        expired = today is not None and plan.valid_until is not None and plan.valid_until < today
        active = place == len(newest_last) and not expired
        goals = _goals(plan, identifier, patient, names, active=active)
        care = _care_plan(plan, identifier, patient, names, active=active)
        if replaced is not None:
            care["replaces"] = [reference(replaced)]
        care["goal"] = [reference(goal["id"]) for goal in goals]
        found += [care, *goals]
        replaced = identifier
    return found


def _care_plan(
    plan: Plan, identifier: str, patient: str, names: Mapping[str, str], *, active: bool
) -> Resource:
    found: Resource = {
        "resourceType": "CarePlan",
        "id": identifier,
        "status": "active" if active else "completed",
        "intent": "plan",
        "subject": reference(patient),
        "identifier": [{"type": concept("revision of the plan"), "value": str(plan.revision)}],
        "activity": [
            {"detail": _activity(planned, names, active=active)} for planned in plan.exercises
        ],
    }
    if plan.title.strip():
        found["title"] = text_of(plan.title)
    begin, end = plan.issued_on, plan.valid_until
    period = {k: d.isoformat() for k, d in (("start", begin), ("end", end)) if d is not None}
    if period and not (begin and end and end < begin):
        found["period"] = period
    if begin is not None:
        found["created"] = begin.isoformat()
    notes = _notes(plan)
    if notes:
        found["note"] = [{"text": line} for line in notes]
    return found


def _notes(plan: Plan) -> list[str]:
    notes: list[str] = []
    if plan.phase is not None:
        notes.append(f"Phase, as set by the therapist: {plan.phase}.")
    if plan.irritability is not None:
        notes.append(f"Irritability, as set by the therapist: {plan.irritability}.")
    notes += [
        f"Other shoulder, as entered in the plan: {movement_name(o.movement)} "
        f"{amount(o.value_deg, o.movement.unit)}."
        for o in plan.other_side
    ]
    return notes


def _activity(planned: PlannedExercise, names: Mapping[str, str], *, active: bool) -> Element:
    step = next_step(planned, names)
    return {
        "code": concept(planned_name(planned, names)),
        "status": "in-progress" if active else "completed",
        "scheduledTiming": {
            "repeat": {
                "frequency": planned.per_day,
                "period": 1,
                "periodUnit": "d",
                "dayOfWeek": [str(day) for day in dict.fromkeys(planned.days)],
            }
        },
        "description": dose(planned) + (f"; {step}" if step else ""),
    }


def _goals(
    plan: Plan, plan_identifier: str, patient: str, names: Mapping[str, str], *, active: bool
) -> list[Resource]:
    """Write what the plan itself aims at; the angle not to be passed is a limit and no goal."""

    def goal(key: object, words: str, target: Element) -> Resource:
        return {
            "resourceType": "Goal",
            "id": identity("goal", plan_identifier, key),
            "lifecycleStatus": "active" if active else "completed",
            "description": concept(words),
            "subject": reference(patient),
            "target": [target],
        }

    weekly = plan.sessions_per_week
    found = [
        goal(
            "sittings",
            f"{weekly} sittings a week",
            {"measure": concept("sittings a week"), "detailQuantity": quantity(weekly, "unity")},
        )
    ]
    for place, planned in enumerate(plan.exercises):
        rule = planned.next_step
        if rule is None or rule.at_least_deg is None:
            continue
        unit = unit_of(planned)
        name, step = planned_name(planned, names), next_step(planned, names)
        target = {
            "measure": concept(f"{name}: range in a sitting"),
            "detailQuantity": {
                **quantity(rule.at_least_deg, unit_name(unit)),
                "comparator": ">=" if unit.sign > 0 else "<=",
            },
        }
        found.append(goal(place, f"{name}: {step}", target))
    return found

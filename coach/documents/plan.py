"""Plan files: what a therapist asks for, as JSON."""

from __future__ import annotations

from collections.abc import Mapping
from difflib import get_close_matches
from types import MappingProxyType
from typing import Any

import msgspec

from coach.documents.refusal import convert
from coach.documents.strict_json import parse_json
from coach.documents.versions import Upgrade, each, refusing, upgraded
from coach.domain.exercise import Exercise
from coach.domain.fault import Fault
from coach.domain.movement import VIEWS, Unit, measurable
from coach.domain.plan import Plan, PlannedExercise

MAX_PLAN_BYTES = 1_000_000
NO_EXERCISES: Mapping[str, Exercise] = MappingProxyType({})

_OF_EXERCISE = ("movement", "position", "view")
_NEW_IN_2 = (
    "revision",
    "issued_on",
    "valid_until",
    "side",
    "phase",
    "irritability",
    "practice_key",
)


def upgraded_plan(raw: dict[str, Any]) -> dict[str, Any]:
    """Turn a plan of version 1, whose exercises are bare movements, into one of version 2."""

    def exercise(old: dict[str, Any]) -> dict[str, Any]:
        return refusing(old, "exercise", "days", "per_day", "next_step", version=2)

    known = refusing(raw, *_NEW_IN_2, version=2)
    return known | each(raw, "exercises", exercise) | {"version": 2}


_UPGRADES: dict[int, Upgrade] = {1: upgraded_plan}


def read_plan(data: bytes, where: str, known: Mapping[str, Exercise] = NO_EXERCISES) -> Plan:
    """Read a plan of any known version; ``where`` names the file in a ``Fault``.

    ``known`` are the exercises that a plan may name; what they say of movement, position and view
    is filled in.
    """
    raw = parse_json(data, where, MAX_PLAN_BYTES)
    raw = upgraded(raw, name="shoulder-plan", newest=2, upgrades=_UPGRADES, where=where)
    plan = convert(raw | each(raw, "exercises", lambda e: _described(e, known)), Plan, where)
    if unknown := _unknown(plan, known):
        raise Fault(
            f"{where} names what the catalogue does not have: {unknown}; correct it or update the "
            "program."
        )
    if impossible := _impossible(plan, known):
        raise Fault(f"{where} asks for what cannot be measured: {impossible}; correct it.")
    if contradiction := _contradiction(plan):
        raise Fault(f"{where} contradicts itself: {contradiction}; correct it.")
    return plan


def _described(raw: dict[str, Any], known: Mapping[str, Exercise]) -> dict[str, Any]:
    """Fill in what the catalogue says of the exercise and the plan leaves out."""
    name = raw.get("exercise")
    exercise = known.get(name) if isinstance(name, str) else None
    if exercise is None:
        return raw
    given = {field: value for field, value in raw.items() if value is not None}
    return {field: getattr(exercise, field) for field in _OF_EXERCISE} | given


def _unknown(plan: Plan, known: Mapping[str, Exercise]) -> str | None:
    for count, planned in enumerate(plan.exercises, start=1):
        proposed = planned.next_step.propose if planned.next_step else None
        for name in (planned.exercise, proposed):
            if name is not None and name not in known:
                near = get_close_matches(name, known, n=3, cutoff=0.4) or list(known)[:3]
                nearest = f"; the nearest names are {', '.join(near)}" if near else ""
                return f"exercise {count} is {name!r}{nearest}"
    return None


def _impossible(plan: Plan, known: Mapping[str, Exercise]) -> str | None:
    for count, planned in enumerate(plan.exercises, start=1):
        if planned.exercise is not None and (found := _otherwise(planned, known)):
            return f"exercise {count} is {planned.exercise}, {found}"
        movement, position, view = planned.movement, planned.position, planned.view
        if movement is None:
            if planned.exercise is None:
                return f"exercise {count} has neither an exercise nor a movement"
            if planned.target_deg is not None:
                return f"exercise {count}, {planned.exercise}, has a target_deg, but is only timed"
            continue
        views = VIEWS.get((movement, position), ())
        if not views or view not in (None, *views):
            seen = f" from the {view}" if view else ""
            return (
                f"exercise {count} is {movement} in the position {position}{seen}, "
                f"and {movement} is measured {measurable(movement)}"
            )
        if planned.target_deg is not None and movement.unit is not Unit.DEGREES:
            return f"exercise {count}, {movement}, has a target_deg, but is not an angle"
    for count, other in enumerate(plan.other_side, start=1):
        if other.movement.unit is not Unit.DEGREES:
            return f"other side {count}, {other.movement}, has a value_deg, but is not an angle"
    return None


def _otherwise(planned: PlannedExercise, known: Mapping[str, Exercise]) -> str | None:
    """Say what the plan says otherwise of an exercise than the catalogue does."""
    exercise = known[planned.exercise or ""]
    for field in _OF_EXERCISE:
        said, meant = getattr(planned, field), getattr(exercise, field)
        if said != meant:
            return f"whose {field} is {meant or 'not measured'} and not {said or 'left out'}"
    return None


def _contradiction(plan: Plan) -> str | None:
    for count, planned in enumerate(plan.exercises, start=1):
        if plan.side is not None and planned.side is not plan.side:
            return f"it is for the {plan.side} shoulder, and exercise {count} is for the other one"
        if len(set(planned.days)) < len(planned.days):
            return f"exercise {count} names a day twice"
    if plan.issued_on and plan.valid_until and plan.valid_until < plan.issued_on:
        return f"it is valid until {plan.valid_until}, before it was issued on {plan.issued_on}"
    return None


def write_plan(plan: Plan) -> bytes:
    """Give the plan as indented UTF-8 JSON."""
    return msgspec.json.format(msgspec.json.encode(plan), indent=2) + b"\n"

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
from coach.texts import translate

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
        known = refusing(old, "exercise", "days", "per_day", "next_step", version=2)
        # Version 2 may do without a movement, version 1 may not: the check is to refuse this one.
        return known if known.get("movement") is not None else known | {"movement": ""}

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
            translate(
                "faults",
                "{where} names what the catalogue does not have: {unknown}; correct it or update "
                "the program.",
            ).format(where=where, unknown=unknown)
        )
    if impossible := _impossible(plan, known):
        raise Fault(
            translate(
                "faults", "{where} asks for what cannot be measured: {impossible}; correct it."
            ).format(where=where, impossible=impossible)
        )
    if contradiction := _contradiction(plan):
        raise Fault(
            translate("faults", "{where} contradicts itself: {contradiction}; correct it.").format(
                where=where, contradiction=contradiction
            )
        )
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
                if not near:
                    return translate("faults", "exercise {count} is {name!r}").format(
                        count=count, name=name
                    )
                nearest = ", ".join(near)
                return translate(
                    "faults", "exercise {count} is {name!r}; the nearest names are {nearest}"
                ).format(count=count, name=name, nearest=nearest)
    return None


def _impossible(plan: Plan, known: Mapping[str, Exercise]) -> str | None:
    for count, planned in enumerate(plan.exercises, start=1):
        if planned.exercise is not None and (found := _otherwise(planned, known)):
            return translate("faults", "exercise {count} is {exercise}, {found}").format(
                count=count, exercise=planned.exercise, found=found
            )
        movement, position, view = planned.movement, planned.position, planned.view
        if movement is None:
            if planned.exercise is None:
                return translate(
                    "faults", "exercise {count} has neither an exercise nor a movement"
                ).format(count=count)
            if planned.target_deg is not None:
                return translate(
                    "faults", "exercise {count}, {exercise}, has a target_deg, but is only timed"
                ).format(count=count, exercise=planned.exercise)
            continue
        views = VIEWS.get((movement, position), ())
        if not views or view not in (None, *views):
            ways = measurable(movement)
            if view is None:
                return translate(
                    "faults",
                    "exercise {count} is {movement} in the position {position}, and "
                    "{movement} is measured {ways}",
                ).format(count=count, movement=movement, position=position, ways=ways)
            return translate(
                "faults",
                "exercise {count} is {movement} in the position {position} from the "
                "{view}, and {movement} is measured {ways}",
            ).format(count=count, movement=movement, position=position, view=view, ways=ways)
        if planned.target_deg is not None and movement.unit is not Unit.DEGREES:
            return translate(
                "faults", "exercise {count}, {movement}, has a target_deg, but is not an angle"
            ).format(count=count, movement=movement)
    for count, other in enumerate(plan.other_side, start=1):
        if other.movement.unit is not Unit.DEGREES:
            return translate(
                "faults", "other side {count}, {movement}, has a value_deg, but is not an angle"
            ).format(count=count, movement=other.movement)
    return None


def _otherwise(planned: PlannedExercise, known: Mapping[str, Exercise]) -> str | None:
    """Say what the plan says otherwise of an exercise than the catalogue does."""
    exercise = known[planned.exercise or ""]
    for field in _OF_EXERCISE:
        said, meant = getattr(planned, field), getattr(exercise, field)
        if said != meant:
            if not meant:
                return translate("faults", "whose {field} is not measured and not {said}").format(
                    field=field, said=said
                )
            if not said:
                return translate("faults", "whose {field} is {meant} and not left out").format(
                    field=field, meant=meant
                )
            return translate("faults", "whose {field} is {meant} and not {said}").format(
                field=field, meant=meant, said=said
            )
    return None


def _contradiction(plan: Plan) -> str | None:
    for count, planned in enumerate(plan.exercises, start=1):
        if plan.side is not None and planned.side is not plan.side:
            return translate(
                "faults", "it is for the {side} shoulder, and exercise {count} is for the other one"
            ).format(side=plan.side, count=count)
        if len(set(planned.days)) < len(planned.days):
            return translate("faults", "exercise {count} names a day twice").format(count=count)
    if plan.issued_on and plan.valid_until and plan.valid_until < plan.issued_on:
        return translate(
            "faults", "it is valid until {valid_until}, before it was issued on {issued_on}"
        ).format(valid_until=plan.valid_until, issued_on=plan.issued_on)
    return None


def write_plan(plan: Plan) -> bytes:
    """Give the plan as indented UTF-8 JSON."""
    return msgspec.json.format(msgspec.json.encode(plan), indent=2) + b"\n"

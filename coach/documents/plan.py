"""Plan files: what a therapist asks for, as JSON."""

from __future__ import annotations

import msgspec

from coach.documents.refusal import convert
from coach.documents.strict_json import parse_json
from coach.documents.versions import Upgrade, upgraded
from coach.domain.fault import Fault
from coach.domain.movement import VIEWS, Movement, Side, Unit, measurable
from coach.domain.plan import Plan, PlannedExercise

MAX_PLAN_BYTES = 1_000_000

_UPGRADES: dict[int, Upgrade] = {}


def read_plan(data: bytes, where: str) -> Plan:
    """Read a plan of any known version; ``where`` names the file in a ``Fault``."""
    raw = parse_json(data, where, MAX_PLAN_BYTES)
    raw = upgraded(raw, name="shoulder-plan", newest=1, upgrades=_UPGRADES, where=where)
    plan = convert(raw, Plan, where)
    if impossible := _impossible(plan):
        raise Fault(f"{where} asks for what cannot be measured: {impossible}; correct it.")
    return plan


def _impossible(plan: Plan) -> str | None:
    for count, planned in enumerate(plan.exercises, start=1):
        movement, position, view = planned.movement, planned.position, planned.view
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


def write_plan(plan: Plan) -> bytes:
    """Give the plan as indented UTF-8 JSON."""
    return msgspec.json.format(msgspec.json.encode(plan), indent=2) + b"\n"


def example_plan() -> Plan:
    """Give a plan for trying the program out, of an invented person.

    Holds of 30 s at the end of the range, three times, are a dose for low irritability (pain up
    to 3, Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31, from memory; three to five
    times 30 s is common practice), so the pain limit is 3. Rests are common practice.
    """
    return Plan(
        patient_code="EXAMPLE",
        title="Example programme",
        exercises=tuple(
            PlannedExercise(
                movement=movement,
                side=Side.RIGHT,
                hold_s=30,
                repetitions=3,
                rest_s=15,
                pain_limit=3,
            )
            for movement in (
                Movement.FLEXION,
                Movement.ABDUCTION,
                Movement.EXTERNAL_ROTATION_0,
            )
        ),
        contact="An example without a practice behind it; ask your own therapist.",
    )

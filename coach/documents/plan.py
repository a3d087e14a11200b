"""Plan files: what a therapist asks for, as JSON."""

from __future__ import annotations

import msgspec

from coach.documents.refusal import convert
from coach.documents.strict_json import parse_json
from coach.documents.versions import Upgrade, upgraded
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise

MAX_PLAN_BYTES = 1_000_000

_UPGRADES: dict[int, Upgrade] = {}


def read_plan(data: bytes, where: str) -> Plan:
    """Read a plan of any known version; ``where`` names the file in a ``Fault``."""
    raw = parse_json(data, where, MAX_PLAN_BYTES)
    raw = upgraded(raw, name="shoulder-plan", newest=1, upgrades=_UPGRADES, where=where)
    return convert(raw, Plan, where)


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

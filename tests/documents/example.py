"""A plan of bare movements to change and write."""

from __future__ import annotations

from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise


def example_plan() -> Plan:
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
            for movement in (Movement.FLEXION, Movement.ABDUCTION, Movement.EXTERNAL_ROTATION_0)
        ),
    )

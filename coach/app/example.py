"""A plan for trying the program out, of an invented person."""

from __future__ import annotations

from coach.catalogue import catalogue
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Side
from coach.domain.plan import Plan, PlannedExercise
from coach.texts import translate

NAMES = (
    "pendulum",
    "stick-rotation-lying-0",
    "stick-flexion-lying",
    "stick-extension-standing",
    "stick-pull-up-behind",
    "doorway-rotation-low",
)
PAIN_LIMIT, REST_S = 3, 15.0
"""For low irritability pain stays at 3 or less (Kelley et al. 2013, J Orthop Sports Phys Ther
43:A1-A31, from memory); the rest is common practice."""


def example_plan() -> Plan:
    """Give a programme of six exercises at the catalogue's usual doses for low irritability."""
    return Plan(
        patient_code="EXAMPLE",
        title=translate("patient", "Example programme"),
        side=Side.RIGHT,
        phase=StiffnessPhase.STIFF,
        irritability=Irritability.LOW,
        exercises=tuple(_planned(name) for name in NAMES),
        contact=translate(
            "patient", "An example without a practice behind it; ask your own therapist."
        ),
    )


def _planned(name: str) -> PlannedExercise:
    exercise = catalogue().get(name)
    dose = exercise.doses[Irritability.LOW]
    return PlannedExercise(
        exercise=name,
        movement=exercise.movement,
        position=exercise.position,
        view=exercise.view,
        side=Side.RIGHT,
        hold_s=dose.hold_s[1],
        repetitions=dose.repetitions[0],
        rest_s=REST_S,
        pain_limit=PAIN_LIMIT,
    )

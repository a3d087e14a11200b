"""Names and doses in trade terms, the same in every document."""

from __future__ import annotations

from collections.abc import Mapping

from coach.domain.movement import Movement, Position, Side, Unit
from coach.domain.plan import EVERY_DAY, PlannedExercise
from coach.review.wording import SIDES, amount, counted, movement_of

METHOD = (
    "self-assisted stretch at end of range, neither active nor passive; humerothoracic, "
    "single camera"
)
BY_HAND = "goniometer in the practitioner's hand; its error is not known to the program"
OTHER_SIDE = "entered by the practice; how it was measured was not written down"
QUESTIONNAIRE = "total of a questionnaire that was filled in elsewhere, entered by the practice"
TIMED_METHOD = "timed and coached; nothing of the arm was measured"


def exercise_name(
    exercise: str | None,
    movement: Movement | None,
    side: Side,
    position: Position,
    names: Mapping[str, str],
) -> str:
    """Name an exercise with its side; ``names`` are trade terms by the catalogue's own names."""
    if exercise is not None:
        return f"{names.get(exercise, exercise.replace('-', ' '))}, {SIDES[side]}"
    if movement is not None:
        return movement_of(movement, side, position)
    return f"Exercise, {SIDES[side]}"


def planned_name(planned: PlannedExercise, names: Mapping[str, str]) -> str:
    """Name an exercise of a plan."""
    return exercise_name(planned.exercise, planned.movement, planned.side, planned.position, names)


def unit_of(planned: PlannedExercise) -> Unit:
    """Give the unit in which a limit or an aim of an exercise is set."""
    return Unit.DEGREES if planned.movement is None else planned.movement.unit


def dose(planned: PlannedExercise) -> str:
    """Write what the therapist prescribed of one exercise."""
    said = [
        f"hold {planned.hold_s:g} s, {counted(planned.repetitions, 'time')}",
        f"rest {planned.rest_s:g} s",
        "every day" if set(planned.days) == set(EVERY_DAY) else ", ".join(planned.days),
        f"{counted(planned.per_day, 'time')} a day",
        f"pain limit {planned.pain_limit} of 10",
    ]
    if planned.target_deg is not None:
        said.append(f"not beyond {amount(planned.target_deg, unit_of(planned))}")
    return ", ".join(said)


def next_step(planned: PlannedExercise, names: Mapping[str, str]) -> str | None:
    """Write the therapist's own rule for something harder, None where there is none."""
    rule = planned.next_step
    if rule is None:
        return None
    reach = ""
    if rule.at_least_deg is not None:
        reach = f"{amount(rule.at_least_deg, unit_of(planned))} or further, "
    proposed = "the therapist's choice"
    if rule.propose is not None:
        proposed = names.get(rule.propose, rule.propose.replace("-", " "))
    return (
        f"after {counted(rule.sessions, 'sitting')} in a row, completed with {reach}pain at most "
        f"{rule.pain_at_most} of 10: propose {proposed}"
    )

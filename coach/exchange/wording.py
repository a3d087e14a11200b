"""Names and doses in trade terms, the same in every document."""

from __future__ import annotations

from collections.abc import Mapping

from coach.domain.movement import Movement, Position, Side, Unit
from coach.domain.plan import EVERY_DAY, PlannedExercise, Weekday
from coach.review.counts import sittings_counted
from coach.review.plan_wording import plain
from coach.review.wording import amount, movement_of, side_word
from coach.texts import translate

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
        name = names.get(exercise, exercise.replace("-", " "))
        return f"{name}, {side_word(side)}"
    if movement is not None:
        return movement_of(movement, side, position)
    return translate("note", "Exercise, {side}").format(side=side_word(side))


def planned_name(planned: PlannedExercise, names: Mapping[str, str]) -> str:
    """Name an exercise of a plan."""
    return exercise_name(planned.exercise, planned.movement, planned.side, planned.position, names)


def unit_of(planned: PlannedExercise) -> Unit:
    """Give the unit in which a limit or an aim of an exercise is set."""
    return Unit.DEGREES if planned.movement is None else planned.movement.unit


def dose(planned: PlannedExercise) -> str:
    """Write what the therapist prescribed of one exercise."""
    daily = set(planned.days) == set(EVERY_DAY)
    said = [
        translate("note", "hold {hold} s").format(hold=plain(planned.hold_s)),
        _times(planned.repetitions),
        translate("note", "rest {rest} s").format(rest=plain(planned.rest_s)),
        translate("note", "every day") if daily else ", ".join(map(_weekday, planned.days)),
        _times_a_day(planned.per_day),
        translate("note", "pain limit {pain_limit} of 10").format(pain_limit=planned.pain_limit),
    ]
    if planned.target_deg is not None:
        said.append(
            translate("note", "not beyond {amount}").format(
                amount=amount(planned.target_deg, unit_of(planned))
            )
        )
    return ", ".join(said)


def next_step(planned: PlannedExercise, names: Mapping[str, str]) -> str | None:
    """Write the therapist's own rule for something harder, None where there is none."""
    rule = planned.next_step
    if rule is None:
        return None
    proposed = translate("note", "the therapist's choice")
    if rule.propose is not None:
        proposed = names.get(rule.propose, rule.propose.replace("-", " "))
    sittings = sittings_counted(rule.sessions)
    if rule.at_least_deg is None:
        told = translate(
            "note",
            "after {sittings} in a row, completed with pain at most {pain} of 10: propose "
            "{proposed}",
        )
        return told.format(sittings=sittings, pain=rule.pain_at_most, proposed=proposed)
    told = translate(
        "note",
        "after {sittings} in a row, completed with {least} or further, pain at most {pain} of 10: "
        "propose {proposed}",
    )
    least = amount(rule.at_least_deg, unit_of(planned))
    return told.format(sittings=sittings, least=least, pain=rule.pain_at_most, proposed=proposed)


def _times(count: int) -> str:
    if count == 1:
        return translate("note", "1 time")
    return translate("note", "{count} times").format(count=count)


def _times_a_day(count: int) -> str:
    if count == 1:
        return translate("note", "1 time a day")
    return translate("note", "{count} times a day").format(count=count)


def _weekday(weekday: Weekday) -> str:
    return {
        Weekday.MONDAY: translate("note", "mon"),
        Weekday.TUESDAY: translate("note", "tue"),
        Weekday.WEDNESDAY: translate("note", "wed"),
        Weekday.THURSDAY: translate("note", "thu"),
        Weekday.FRIDAY: translate("note", "fri"),
        Weekday.SATURDAY: translate("note", "sat"),
        Weekday.SUNDAY: translate("note", "sun"),
    }[weekday]

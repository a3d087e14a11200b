"""A plan being made: the dose to begin from, what is unusual in it, and how long it takes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import floor
from types import MappingProxyType

from coach.domain.exercise import Exercise, Irritability
from coach.domain.movement import Side
from coach.domain.plan import PlannedExercise, Weekday
from coach.review.dose_sources import source_words
from coach.review.plan_wording import plain
from coach.review.verdict_wording import irritability_words
from coach.review.wording import minutes
from coach.texts import translate

PAIN_LIMITS: Mapping[Irritability, int] = MappingProxyType(
    {Irritability.HIGH: 2, Irritability.MODERATE: 3, Irritability.LOW: 4}
)
"""Most pain to allow, 0 to 10, to begin from: common practice."""


def proposed(exercise: Exercise, irritability: Irritability, side: Side) -> PlannedExercise:
    """Give an exercise with the dose from which the therapist begins.

    Of the catalogue's usual dose the longest hold for a shoulder of low irritability, the middle
    in whole seconds otherwise; the middle of the counts. That choice and the pain limits are
    common practice; the ranges have their source in the catalogue.
    """
    dose = exercise.doses[irritability]
    least, most = dose.hold_s
    return PlannedExercise(
        exercise=exercise.exercise,
        movement=exercise.movement,
        side=side,
        hold_s=most if irritability is Irritability.LOW else float(floor((least + most) / 2)),
        repetitions=sum(dose.repetitions) // 2,
        position=exercise.position,
        view=exercise.view,
        pain_limit=PAIN_LIMITS[irritability],
        per_day=sum(dose.per_day) // 2,
    )


def unusual(
    planned: PlannedExercise, exercise: Exercise, irritability: Irritability
) -> tuple[str, ...]:
    """Say what of a dose lies outside the usual one, with its source: a hint, not an error."""
    dose = exercise.doses[irritability]
    hold = translate(
        "plan", "Hold {value} s: usual for {irritability} irritability is {usual} s. {source}"
    )
    repetitions = translate(
        "plan", "Repetitions {value}: usual for {irritability} irritability is {usual}. {source}"
    )
    per_day = translate(
        "plan", "Times a day {value}: usual for {irritability} irritability is {usual}. {source}"
    )
    words = irritability_words(irritability)
    found = []
    for told, value, (least, most) in (
        (hold, planned.hold_s, dose.hold_s),
        (repetitions, planned.repetitions, dose.repetitions),
        (per_day, planned.per_day, dose.per_day),
    ):
        if not least <= value <= most:
            source = source_words(dose.source)
            usual = _usual(least, most)
            found.append(
                told.format(value=plain(value), irritability=words, usual=usual, source=source)
            )
    limit = PAIN_LIMITS[irritability]
    if planned.pain_limit > limit:
        told = translate(
            "plan",
            "Pain limit {value}: usual for {irritability} irritability is at most {limit}. Common "
            "practice.",
        )
        found.append(told.format(value=planned.pain_limit, irritability=words, limit=limit))
    return tuple(found)


def _usual(least: float, most: float) -> str:
    if least == most:
        return plain(least)
    return translate("plan", "{least} to {most}").format(least=plain(least), most=plain(most))


def seconds_by_day(exercises: Sequence[PlannedExercise]) -> dict[Weekday, float]:
    """Give the seconds of holds and of rests between them on each day of the week."""
    return {
        weekday: sum((_seconds(e) for e in exercises if weekday in e.days), 0.0)
        for weekday in Weekday
    }


def time_a_day(exercises: Sequence[PlannedExercise]) -> str:
    """Say how long holds and rests take a day, without walking to the laptop and placing it."""
    by_day = seconds_by_day(exercises)
    least, most = min(by_day.values()), max(by_day.values())
    if least == most:
        return translate("plan", "{time} a day of holds and rests").format(time=minutes(most))
    return translate("plan", "{least} to {most} a day of holds and rests").format(
        least=minutes(least), most=minutes(most)
    )


def _seconds(planned: PlannedExercise) -> float:
    once = planned.repetitions * planned.hold_s + (planned.repetitions - 1) * planned.rest_s
    return planned.per_day * once

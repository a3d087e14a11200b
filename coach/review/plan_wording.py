"""A planned exercise in words: its name, its dose in one line, its days."""

from __future__ import annotations

from collections.abc import Mapping

from coach.domain.movement import Unit
from coach.domain.plan import EVERY_DAY, PlannedExercise, Weekday
from coach.review.wording import NO_NAMES, amount, listed, movement_name, position_word
from coach.texts import localised, translate


def weekday_word(weekday: Weekday) -> str:
    """Give the short name of a day of the week."""
    match weekday:
        case Weekday.MONDAY:
            return translate("dates", "Mon")
        case Weekday.TUESDAY:
            return translate("dates", "Tue")
        case Weekday.WEDNESDAY:
            return translate("dates", "Wed")
        case Weekday.THURSDAY:
            return translate("dates", "Thu")
        case Weekday.FRIDAY:
            return translate("dates", "Fri")
        case Weekday.SATURDAY:
            return translate("dates", "Sat")
        case Weekday.SUNDAY:
            return translate("dates", "Sun")


def exercise_name(planned: PlannedExercise, names: Mapping[str, str] = NO_NAMES) -> str:
    """Name an exercise for a therapist; ``names`` are those of the catalogue by its slugs."""
    if planned.exercise is not None:
        return names.get(planned.exercise, planned.exercise)
    return f"{movement_name(planned.measured)}, {position_word(planned.position)}"


def dose_text(planned: PlannedExercise) -> str:
    """Write a dose in one line."""
    often = (
        translate("plan", "{count} \N{MULTIPLICATION SIGN} a day")
        if set(planned.days) == set(EVERY_DAY)
        else translate("plan", "{count} \N{MULTIPLICATION SIGN} a day on {days}")
    )
    said = [
        translate("plan", "{count} \N{MULTIPLICATION SIGN} {hold} s").format(
            count=planned.repetitions, hold=plain(planned.hold_s)
        ),
        translate("plan", "rest {rest} s").format(rest=plain(planned.rest_s)),
        often.format(count=planned.per_day, days=days(planned)),
        translate("plan", "pain at most {pain}").format(pain=planned.pain_limit),
    ]
    if planned.target_deg is not None:
        target = translate("plan", "up to {angle}")
        said.append(target.format(angle=angle(planned.target_deg)))
    if planned.next_step is not None:
        said.append(translate("plan", "next step"))
    return ", ".join(said)


def angle(value: float) -> str:
    """Write an angle of a plan, which may have tenths."""
    return amount(value, Unit.DEGREES, fine=value % 1 != 0)


def days(planned: PlannedExercise) -> str:
    """Write on which days of the week."""
    if set(planned.days) == set(EVERY_DAY):
        return translate("plan", "every day")
    return listed([weekday_word(weekday) for weekday in Weekday if weekday in planned.days])


def plain(value: float) -> str:
    """Write a number without needless decimals."""
    return localised(f"{value:g}")

"""A plan being made: the dose to begin from, what is unusual in it, and what changed in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from math import floor
from types import MappingProxyType

from coach.domain.exercise import Exercise, Irritability
from coach.domain.movement import Side, Unit
from coach.domain.plan import NextStep, Plan, PlannedExercise, Weekday
from coach.review.wording import MOVEMENTS, amount, counted, day, listed, minutes

PAIN_LIMITS: Mapping[Irritability, int] = MappingProxyType(
    {Irritability.HIGH: 2, Irritability.MODERATE: 3, Irritability.LOW: 4}
)
"""Most pain to allow, 0 to 10, to begin from: common practice."""
DAYS: Mapping[Weekday, str] = MappingProxyType(
    dict(zip(Weekday, ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"), strict=True))
)
_TIMES = "\N{MULTIPLICATION SIGN}"
NO_NAMES: Mapping[str, str] = MappingProxyType({})


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
    found = []
    for name, unit, value, (least, most) in (
        ("Hold", " s", planned.hold_s, dose.hold_s),
        ("Repetitions", "", planned.repetitions, dose.repetitions),
        ("Times a day", "", planned.per_day, dose.per_day),
    ):
        if not least <= value <= most:
            usual = f"{least:g}" if least == most else f"{least:g} to {most:g}"
            found.append(
                f"{name} {value:g}{unit}: usual for {irritability} irritability is {usual}{unit}. "
                f"{dose.source}"
            )
    limit = PAIN_LIMITS[irritability]
    if planned.pain_limit > limit:
        found.append(
            f"Pain limit {planned.pain_limit}: usual for {irritability} irritability is at most "
            f"{limit}. Common practice."
        )
    return tuple(found)


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
    said = minutes(most) if least == most else f"{minutes(least)} to {minutes(most)}"
    return f"{said} a day of holds and rests"


def _seconds(planned: PlannedExercise) -> float:
    once = planned.repetitions * planned.hold_s + (planned.repetitions - 1) * planned.rest_s
    return planned.per_day * once


def exercise_name(planned: PlannedExercise, names: Mapping[str, str] = NO_NAMES) -> str:
    """Name an exercise for a therapist; ``names`` are those of the catalogue by its slugs."""
    if planned.exercise is not None:
        return names.get(planned.exercise, planned.exercise)
    movement = MOVEMENTS[planned.measured]
    return f"{movement}, {planned.position}"


def dose_text(planned: PlannedExercise) -> str:
    """Write a dose in one line."""
    target = "" if planned.target_deg is None else f", up to {_angle(planned.target_deg)}"
    days = "" if len(planned.days) == len(DAYS) else f" on {_days(planned)}"
    rule = "" if planned.next_step is None else ", next step"
    return (
        f"{planned.repetitions} {_TIMES} {planned.hold_s:g} s, rest {planned.rest_s:g} s, "
        f"{planned.per_day} {_TIMES} a day{days}, pain at most {planned.pain_limit}{target}{rule}"
    )


def plan_changes(old: Plan, new: Plan, names: Mapping[str, str] = NO_NAMES) -> tuple[str, ...]:
    """Say in sentences what ``new`` asks otherwise than ``old``; nothing where all is the same.

    Revision and day of issue are left out: they change with every plan. ``names`` are those of
    the catalogue's exercises by their slugs.
    """
    return (*_frame(old, new), *_exercises(old.exercises, new.exercises, names))


def _frame(old: Plan, new: Plan) -> Iterator[str]:
    for name, before, after in (
        ("Patient code", old.patient_code, new.patient_code),
        ("Title", old.title, new.title),
        ("Side", old.side or "both", new.side or "both"),
        ("Phase", old.phase, new.phase),
        ("Irritability", old.irritability, new.irritability),
        ("Sessions a week", str(old.sessions_per_week), str(new.sessions_per_week)),
        (
            "Valid until",
            old.valid_until and day(old.valid_until),
            new.valid_until and day(new.valid_until),
        ),
        ("Contact", old.contact, new.contact),
    ):
        if before != after:
            yield _changed(name, before or None, after or None)
    if old.practice_key != new.practice_key:
        what = "changed" if old.practice_key and new.practice_key else "added"
        yield f"Practice key {what if new.practice_key else 'removed'}."
    if old.other_side != new.other_side:
        yield "Range of the other side changed."


def _exercises(
    old: Sequence[PlannedExercise], new: Sequence[PlannedExercise], names: Mapping[str, str]
) -> Iterator[str]:
    pairs = _paired(old, new)
    before = {i for i, _ in pairs}
    after = {j for _, j in pairs}
    for i, gone in enumerate(old):
        if i not in before:
            yield f"Removed: {_named(gone, names)}."
    for j, come in enumerate(new):
        if j not in after:
            yield f"Added: {_named(come, names)}, {dose_text(come)}."
    for i, j in pairs:
        name = _named(old[i], names)
        for change in _of_exercise(old[i], new[j], names):
            yield f"{name}: {change}"
    if [j for _, j in pairs] != sorted(after):
        yield "The order of the exercises changed."


def _paired(
    old: Sequence[PlannedExercise], new: Sequence[PlannedExercise]
) -> list[tuple[int, int]]:
    """Match exercises by name and side, then those left over by name alone, in order."""
    pairs: list[tuple[int, int]] = []
    for with_side in (True, False):
        for i, before in enumerate(old):
            if any(i == taken for taken, _ in pairs):
                continue
            for j, after in enumerate(new):
                free = all(j != taken for _, taken in pairs)
                if free and _key(before, with_side) == _key(after, with_side):
                    pairs.append((i, j))
                    break
    return sorted(pairs)


def _key(planned: PlannedExercise, with_side: bool) -> tuple[object, ...]:
    return (
        planned.exercise,
        planned.movement,
        planned.position,
        planned.side if with_side else None,
    )


def _of_exercise(
    old: PlannedExercise, new: PlannedExercise, names: Mapping[str, str]
) -> Iterator[str]:
    for name, before, after in (
        ("side", old.side, new.side),
        ("view", old.seen_from, new.seen_from),
        ("hold", f"{old.hold_s:g} s", f"{new.hold_s:g} s"),
        ("repetitions", str(old.repetitions), str(new.repetitions)),
        ("rest", f"{old.rest_s:g} s", f"{new.rest_s:g} s"),
        ("target", _angle(old.target_deg), _angle(new.target_deg)),
        ("pain limit", str(old.pain_limit), str(new.pain_limit)),
        ("days", _days(old), _days(new)),
        ("times a day", str(old.per_day), str(new.per_day)),
        ("next step", _rule(old.next_step, names), _rule(new.next_step, names)),
    ):
        if before != after:
            yield _changed(name, before, after)


def _changed(name: str, before: str | None, after: str | None) -> str:
    if before is None:
        return f"{name} added: {after}."
    if after is None:
        return f"{name} removed, was {before}."
    return f"{name} from {before} to {after}."


def _named(planned: PlannedExercise, names: Mapping[str, str]) -> str:
    return f"{exercise_name(planned, names)} ({planned.side})"


def _angle(value: float | None) -> str | None:
    return None if value is None else amount(value, Unit.DEGREES, fine=value % 1 != 0)


def _days(planned: PlannedExercise) -> str:
    days = [said for weekday, said in DAYS.items() if weekday in planned.days]
    return "every day" if len(days) == len(DAYS) else listed(days)


def _rule(rule: NextStep | None, names: Mapping[str, str]) -> str | None:
    if rule is None:
        return None
    reach = "" if rule.at_least_deg is None else f" with {_angle(rule.at_least_deg)} or more"
    then = "" if rule.propose is None else f", then {names.get(rule.propose, rule.propose)}"
    sittings = counted(rule.sessions, "sitting")
    return f"{sittings} in a row{reach} and pain at most {rule.pain_at_most}{then}"

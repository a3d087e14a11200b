"""What a new plan asks otherwise than the one before, in sentences."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from coach.domain.plan import NextStep, Plan, PlannedExercise
from coach.review.counts import sittings_counted
from coach.review.plan_wording import angle, days, dose_text, exercise_name, plain
from coach.review.verdict_wording import irritability_words, phase_words
from coach.review.wording import NO_NAMES, day, side_word, view_word
from coach.texts import translate


def plan_changes(old: Plan, new: Plan, names: Mapping[str, str] = NO_NAMES) -> tuple[str, ...]:
    """Say in sentences what ``new`` asks otherwise than ``old``; nothing where all is the same.

    Revision and day of issue are left out: they change with every plan. ``names`` are those of
    the catalogue's exercises by their slugs.
    """
    return (*_frame(old, new), *_exercises(old.exercises, new.exercises, names))


def _frame(old: Plan, new: Plan) -> Iterator[str]:
    befores, afters = _frame_of(old), _frame_of(new)
    for (name, before), (_, after) in zip(befores, afters, strict=True):
        if before != after:
            yield _changed(name, before or None, after or None)
    if old.practice_key != new.practice_key:
        if not new.practice_key:
            yield translate("plan", "Practice key removed.")
        elif old.practice_key:
            yield translate("plan", "Practice key changed.")
        else:
            yield translate("plan", "Practice key added.")
    if old.other_side != new.other_side:
        yield translate("plan", "Range of the other side changed.")


def _frame_of(plan: Plan) -> tuple[tuple[str, str | None], ...]:
    return (
        (translate("plan", "Patient code"), plan.patient_code),
        (translate("plan", "Title"), plan.title),
        (
            translate("plan", "Side"),
            side_word(plan.side) if plan.side else translate("plan", "both"),
        ),
        (translate("plan", "Phase"), phase_words(plan.phase) if plan.phase else None),
        (
            translate("plan", "Irritability"),
            irritability_words(plan.irritability) if plan.irritability else None,
        ),
        (translate("plan", "Sessions a week"), str(plan.sessions_per_week)),
        (translate("plan", "Valid until"), day(plan.valid_until) if plan.valid_until else None),
        (translate("plan", "Contact"), plan.contact),
    )


def _exercises(
    old: Sequence[PlannedExercise], new: Sequence[PlannedExercise], names: Mapping[str, str]
) -> Iterator[str]:
    pairs = _paired(old, new)
    before = {i for i, _ in pairs}
    after = {j for _, j in pairs}
    for i, gone in enumerate(old):
        if i not in before:
            yield translate("plan", "Removed: {exercise}.").format(exercise=_named(gone, names))
    for j, come in enumerate(new):
        if j not in after:
            yield translate("plan", "Added: {exercise}, {dose}.").format(
                exercise=_named(come, names), dose=dose_text(come)
            )
    for i, j in pairs:
        name = _named(old[i], names)
        for change in _of_exercise(old[i], new[j], names):
            yield translate("plan", "{exercise}: {change}").format(exercise=name, change=change)
    if [j for _, j in pairs] != sorted(after):
        yield translate("plan", "The order of the exercises changed.")


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
    befores, afters = _parts_of(old, names), _parts_of(new, names)
    for (name, before), (_, after) in zip(befores, afters, strict=True):
        if before != after:
            yield _changed(name, before, after)


def _parts_of(
    planned: PlannedExercise, names: Mapping[str, str]
) -> tuple[tuple[str, str | None], ...]:
    target = planned.target_deg
    return (
        (translate("plan", "side"), side_word(planned.side)),
        (translate("plan", "view"), view_word(planned.seen_from)),
        (translate("plan", "hold"), f"{plain(planned.hold_s)} s"),
        (translate("plan", "repetitions"), str(planned.repetitions)),
        (translate("plan", "rest"), f"{plain(planned.rest_s)} s"),
        (translate("plan", "target"), None if target is None else angle(target)),
        (translate("plan", "pain limit"), str(planned.pain_limit)),
        (translate("plan", "days"), days(planned)),
        (translate("plan", "times a day"), str(planned.per_day)),
        (translate("plan", "next step"), _rule(planned.next_step, names)),
    )


def _changed(name: str, before: str | None, after: str | None) -> str:
    if before is None:
        return translate("plan", "{name} added: {after}.").format(name=name, after=after)
    if after is None:
        return translate("plan", "{name} removed, was {before}.").format(name=name, before=before)
    return translate("plan", "{name} from {before} to {after}.").format(
        name=name, before=before, after=after
    )


def _named(planned: PlannedExercise, names: Mapping[str, str]) -> str:
    return f"{exercise_name(planned, names)} ({side_word(planned.side)})"


def _rule(rule: NextStep | None, names: Mapping[str, str]) -> str | None:
    if rule is None:
        return None
    then = None if rule.propose is None else names.get(rule.propose, rule.propose)
    if rule.at_least_deg is None and then is None:
        told = translate("plan", "{sittings} in a row and pain at most {pain}")
    elif rule.at_least_deg is None:
        told = translate("plan", "{sittings} in a row and pain at most {pain}, then {exercise}")
    elif then is None:
        told = translate("plan", "{sittings} in a row with {angle} or more and pain at most {pain}")
    else:
        told = translate(
            "plan",
            "{sittings} in a row with {angle} or more and pain at most {pain}, then {exercise}",
        )
    return told.format(
        sittings=sittings_counted(rule.sessions),
        angle=angle(rule.at_least_deg or 0.0),
        pain=rule.pain_at_most,
        exercise=then,
    )

"""Why to look at a patient first, each concern in a sentence of the chosen language."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from statistics import median

from coach.domain.plan import Plan, PlannedExercise
from coach.domain.session import SessionDocument
from coach.review.change import Summary, Verdict
from coach.review.next_step import next_step
from coach.review.report_facts import HIGH_PAIN
from coach.review.set_up import SetUpChange
from coach.review.sittings import Sitting
from coach.review.wording import change_with_error, day, listed, movement_of, side_word
from coach.texts import localised, translate

PAIN_RISE = 2
"""Points of 0-10 that matter to patients: 2.17 in Michener et al. 2011, taken as 2 since scores
are whole numbers and their medians halves at most."""
_LATELY = 7
"""Sittings that count as the latest: a week of daily ones."""


class Concern(StrEnum):
    """Why to look at a patient, the most pressing first."""

    HIGH_PAIN = "high pain"
    PAIN_ROSE = "pain rose"
    LOST_RANGE = "range fell"
    STOPPED = "stopped"
    POOR_DATA = "poor data"
    NEXT_STEP = "next step"
    GAINED = "range grew"


def concern_words(concern: Concern) -> str:
    """Name a concern."""
    match concern:
        case Concern.HIGH_PAIN:
            return translate("concern", "high pain")
        case Concern.PAIN_ROSE:
            return translate("concern", "pain rose")
        case Concern.LOST_RANGE:
            return translate("concern", "range fell")
        case Concern.STOPPED:
            return translate("concern", "stopped")
        case Concern.POOR_DATA:
            return translate("concern", "poor data")
        case Concern.NEXT_STEP:
            return translate("concern", "next step")
        case Concern.GAINED:
            return translate("concern", "range grew")


@dataclass(frozen=True, slots=True)
class Reason:
    """One concern and the sentence that says why."""

    concern: Concern
    sentence: str


def never_held() -> str:
    """Say that nothing was done."""
    return translate("review", "Nothing was ever held in a sitting.")


def stopped(last_on: date, pause: int, pause_days: int) -> str:
    """Say for how many days nothing was done, and how many the plan leaves at most."""
    told = (
        translate(
            "review",
            "No sitting since {day}, {pause} days; the plan asks for one at least every 1 day.",
        )
        if pause_days == 1
        else translate(
            "review",
            "No sitting since {day}, {pause} days; the plan asks for one at least every "
            "{pause_days} days.",
        )
    )
    return told.format(day=day(last_on), pause=pause, pause_days=pause_days)


def in_pain(seen: Sequence[Sitting]) -> list[Reason]:
    """Look at the pain that was given lately, and at its course."""
    given = [s for s in seen if s.pain is not None]
    if not given:
        return []
    found: list[Reason] = []
    scores = [s.pain for s in given if s.pain is not None]
    lately = [s for s in given[-_LATELY:] if s.pain is not None and s.pain > HIGH_PAIN]
    if lately:
        worst = max(lately, key=lambda s: s.pain or 0)
        told = translate("review", "Pain {pain} of 10 on {day}, above {limit}.").format(
            pain=worst.pain, day=day(worst.at.date()), limit=HIGH_PAIN
        )
        found.append(Reason(Concern.HIGH_PAIN, told))
    size = max(1, min(_LATELY, len(scores) // 3))
    first, last = median(scores[:size]), median(scores[-size:])
    if len(scores) > 1 and last - first >= PAIN_RISE:
        found.append(Reason(Concern.PAIN_ROSE, _rose(first, last, size)))
    return found


def _rose(first: float, last: float, size: int) -> str:
    told = (
        translate(
            "review",
            "Pain rose from {first} to {last} of 10 (medians of the first and the last 1 sitting); "
            "{rise} points matter.",
        )
        if size == 1
        else translate(
            "review",
            "Pain rose from {first} to {last} of 10 (medians of the first and the last {size} "
            "sittings); {rise} points matter.",
        )
    )
    first_said, last_said = localised(f"{first:g}"), localised(f"{last:g}")
    return told.format(first=first_said, last=last_said, size=size, rise=PAIN_RISE)


def poorly_measured(seen: Sequence[Sitting], results: Sequence[Summary]) -> list[Reason]:
    """Look for sittings that tell little, and for a camera that was changed."""
    lately = [s for s in seen if s.seen is not None][-_LATELY:]
    poor = [s for s in lately if s.poor]
    found: list[Reason] = []
    if 2 * len(poor) > len(lately):
        told = (
            translate(
                "review",
                "The only measured sitting is poorly measured: {what}.",
            )
            if len(lately) == 1
            else translate(
                "review",
                "{poor} of the last {count} measured sittings are poorly measured; in the latest "
                "of them: {what}.",
            )
        )
        what = listed(poor[-1].poor)
        told = told.format(poor=len(poor), count=len(lately), what=what)
        found.append(Reason(Concern.POOR_DATA, told))
    for change in SetUpChange:
        moved = [r for r in results if r.set_up_change is change]
        if moved and change.happened:
            names = listed([movement_of(r.movement, r.side, r.position) for r in moved])
            told = _moved(change).format(movements=names)
            found.append(Reason(Concern.POOR_DATA, told))
    return found


def _moved(change: SetUpChange) -> str:
    match change:
        case SetUpChange.CAMERA:
            return translate(
                "review",
                "{movements}: the last sittings were measured with another camera set-up than the "
                "first.",
            )
        case SetUpChange.MODEL:
            return translate(
                "review",
                "{movements}: the last sittings were measured with another pose model than the "
                "first, by the same camera set-up.",
            )
        case SetUpChange.BOTH:
            return translate(
                "review",
                "{movements}: the last sittings were measured with another camera set-up and "
                "another pose model than the first.",
            )
        case SetUpChange.NONE:
            raise ValueError(change)


def changed(results: Sequence[Summary]) -> list[Reason]:
    """Tell of changes beyond the error."""
    found: list[Reason] = []
    for result in results:
        difference = result.difference
        if difference is None or difference.verdict is not Verdict.REAL:
            continue
        told = translate(
            "review", "{movement}: {change} since {day}, beyond the error of measuring."
        ).format(
            movement=movement_of(result.movement, result.side, result.position),
            change=change_with_error(
                difference.change, difference.error, result.unit, fine=difference.fine
            ),
            day=day(result.first.begin),
        )
        grew = difference.change * result.unit.sign > 0
        found.append(Reason(Concern.GAINED if grew else Concern.LOST_RANGE, told))
    return found


def ready_for_more(
    plan: Plan, documents: Sequence[SessionDocument], names: Mapping[str, str]
) -> list[Reason]:
    """Tell of exercises whose own rule for something harder is met."""
    found: list[Reason] = []
    for planned in plan.exercises:
        state = next_step(planned, documents)
        if state.met:
            told = translate("review", "{exercise}: {reason}")
            told = told.format(exercise=_name(planned, names), reason=state.reason)
            found.append(Reason(Concern.NEXT_STEP, told))
    return found


def _name(planned: PlannedExercise, names: Mapping[str, str]) -> str:
    if planned.exercise is None:
        return movement_of(planned.measured, planned.side, planned.position)
    name = names.get(planned.exercise, planned.exercise.replace("-", " ").capitalize())
    return f"{name}, {side_word(planned.side)}"

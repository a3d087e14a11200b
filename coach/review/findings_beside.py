"""What stands beside a movement's change: the plan, the other side, and how it was held."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from coach.domain.form import FormFault
from coach.domain.movement import Unit
from coach.domain.plan import PlannedExercise
from coach.domain.session import SessionDocument
from coach.review.change import Summary
from coach.review.counts import holds_counted
from coach.review.form_wording import fault_words
from coach.review.history import Series
from coach.review.holds import FEIGNING
from coach.review.next_step import next_step
from coach.review.practice_records import OtherSide
from coach.review.wording import amount, day, listed, percent, percent_with_error, with_error
from coach.texts import translate

Lines = tuple[tuple[str, str], ...]
"""What a line is about, and what it says."""


def beside(
    result: Summary, planned: PlannedExercise | None, other: OtherSide | None,
    series: Series, documents: Sequence[SessionDocument],
) -> Lines:  # fmt: skip
    """Give those lines that there is anything to say in, and the one on form."""
    lines = [*_plan(planned, documents)]
    if other and result.percent_of_other is not None:
        lines.append((translate("review", "Other side"), _other_side(other, result)))
    lines.append((translate("review", "Form"), _form(series, documents)))
    return tuple(lines)


def _plan(planned: PlannedExercise | None, documents: Sequence[SessionDocument]) -> Lines:
    lines: list[tuple[str, str]] = []
    if planned and planned.next_step:
        state = next_step(planned, documents)
        told = (
            translate("review", "Met. {reason}")
            if state.met
            else translate("review", "Not yet. {reason}")
        )
        lines.append((translate("review", "Next step"), told.format(reason=state.reason)))
    if planned and planned.target_deg is not None:
        told = translate("review", "{angle}, by the plan")
        angle = amount(planned.target_deg, Unit.DEGREES)
        lines.append((translate("review", "Not beyond"), told.format(angle=angle)))
    return tuple(lines)


def _other_side(other: OtherSide, result: Summary) -> str:
    when = (
        translate("review", "measured {day}").format(day=day(other.on))
        if other.on
        else translate("review", "by the plan")
    )
    missing = other.value_deg - result.last.value
    told = (
        translate("review", "{value} ({when}); this side {missing} short, {share} of it")
        if missing > 0
        else translate("review", "{value} ({when}); this side {missing} further, {share} of it")
    )
    return told.format(
        value=amount(other.value_deg, Unit.DEGREES),
        when=when,
        missing=with_error(abs(missing), result.last.error, Unit.DEGREES),
        share=percent_with_error(
            result.percent_of_other or 0.0, 100 * result.last.error / other.value_deg
        ),
    )


def _form(series: Series, documents: Sequence[SessionDocument]) -> str:
    key = (series.movement, series.side, series.position, series.definitions)
    held = [
        repetition
        for document in documents
        for e in document.exercises
        if (e.movement, e.side, e.position, document.software.definitions) == key
        for repetition in e.repetitions
        if repetition.held_s > 0
    ]
    if not held:
        return translate("review", "nothing was held")
    found = Counter(f for f in FormFault for repetition in held if f in repetition.faults)
    holds = holds_counted(len(held))
    if not found:
        return translate("review", "no fault noted in any of {holds}").format(holds=holds)
    each = translate("review", "{fault} in {share}")
    shares = listed(
        [
            each.format(fault=fault_words(f), share=percent(n / len(held)))
            for f, n in found.most_common()
        ]
    )
    told = (
        translate(
            "review",
            "{shares} of {holds}; leaned and turned holds are kept out of the range",
        )
        if FEIGNING & set(found)
        else translate("review", "{shares} of {holds}")
    )
    return told.format(shares=shares, holds=holds)

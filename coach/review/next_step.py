"""Whether a therapist's own rule for something harder is met: proposed, never decided."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from coach.domain.movement import Unit
from coach.domain.plan import NextStep, PlannedExercise
from coach.domain.progress import EndedBecause
from coach.domain.session import ExerciseRecord, SessionDocument, SessionEnd
from coach.review.counts import sittings_counted
from coach.review.history import asked, in_order, started
from coach.review.holds import feigns
from coach.review.wording import amount, day, with_error
from coach.texts import translate


@dataclass(frozen=True, slots=True)
class NextStepState:
    """Whether the rule is met, ``in_a_row`` how many last sittings meet it, and why in words."""

    met: bool
    in_a_row: int
    reason: str


def next_step_met(planned: PlannedExercise, documents: Sequence[SessionDocument]) -> bool:
    """Tell whether the exercise's rule is met by the patient's latest sittings."""
    return next_step(planned, documents).met


def next_step(planned: PlannedExercise, documents: Sequence[SessionDocument]) -> NextStepState:
    """Check the rule against the latest sittings that had the exercise, in any order given.

    An easier exercise done in its place, or pain that was not given, ends the row. Holds in which
    the trunk leaned or turned reach nothing.
    """
    rule = planned.next_step
    if rule is None:
        return NextStepState(False, 0, translate("review", "The plan has no rule for a next step."))
    if rule.at_least_deg is not None and (
        planned.movement is None or planned.movement.unit is not Unit.DEGREES
    ):
        none = translate("review", "The rule asks for degrees, but none are measured of it.")
        return NextStepState(False, 0, none)
    in_a_row, sittings = 0, sittings_counted(rule.sessions)
    latest: ExerciseRecord | None = None
    for document in reversed(in_order(documents)):
        records = [r for r in document.exercises if _is(planned, asked(document, r))]
        if not records:
            continue
        for record in records:
            missing = _missing(rule, record)
            if missing:
                told = translate(
                    "review", "{met} of {sittings} in a row meet the rule: on {day} {missing}."
                ).format(
                    met=in_a_row,
                    sittings=sittings,
                    day=day(started(document).date()),
                    missing=missing,
                )
                return NextStepState(False, in_a_row, told)
        in_a_row, latest = in_a_row + 1, latest or records[-1]
        if in_a_row >= rule.sessions:
            return NextStepState(True, in_a_row, _met(rule, latest))
    told = translate("review", "{met} of {sittings} so far meet the rule.")
    return NextStepState(False, in_a_row, told.format(met=in_a_row, sittings=sittings))


def _is(planned: PlannedExercise, other: PlannedExercise | None) -> bool:
    return other is not None and (
        (planned.exercise, planned.movement, planned.side, planned.position)
        == (other.exercise, other.movement, other.side, other.position)
    )


def _best(record: ExerciseRecord) -> tuple[float, float] | None:
    """Furthest completed hold with a still trunk, in degrees, with its error."""
    return max(
        (
            (r.value, r.error)
            for r in record.repetitions
            if r.ended_because is EndedBecause.COMPLETED and not feigns(r)
        ),
        default=None,
    )


def _missing(rule: NextStep, record: ExerciseRecord) -> str | None:
    """Say what a sitting lacks, as it stands behind the day; None where it lacks nothing."""
    if record.eased:
        return translate("review", "an easier exercise was done in its place")
    if record.ended_because is not SessionEnd.COMPLETED:
        return translate("review", "it was not completed")
    if record.pain_after is None:
        return translate("review", "no pain was given after it")
    if record.pain_after > rule.pain_at_most:
        return translate("review", "pain after it was {pain}, above {most}").format(
            pain=record.pain_after, most=rule.pain_at_most
        )
    if rule.at_least_deg is not None:
        best = _best(record)
        if best is None:
            return translate("review", "no hold was completed with a still trunk")
        if best[0] < rule.at_least_deg:
            fine = round(best[0]) >= round(rule.at_least_deg)
            return translate("review", "{best} were reached, not {least}").format(
                best=with_error(*best, Unit.DEGREES, fine=fine),
                least=amount(rule.at_least_deg, Unit.DEGREES, fine=fine),
            )
    return None


def _met(rule: NextStep, last: ExerciseRecord) -> str:
    best = _best(last) if rule.at_least_deg is not None else None
    done = translate("review", "completed with pain at most {pain}")
    if rule.at_least_deg is not None and best is not None:
        done = translate(
            "review",
            "completed with pain at most {pain} and at least {least} reached (furthest of the last"
            " sitting {best})",
        )
    told = (
        translate("review", "Last sitting: {done}. The therapist decides.")
        if rule.sessions == 1
        else translate("review", "Last {count} sittings in a row: {done}. The therapist decides.")
    )
    return told.format(
        count=rule.sessions,
        done=done.format(
            pain=rule.pain_at_most,
            least=amount(rule.at_least_deg or 0.0, Unit.DEGREES),
            best=with_error(*(best or (0.0, 0.0)), Unit.DEGREES),
        ),
    )

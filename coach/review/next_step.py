"""Whether a therapist's own rule for something harder is met: proposed, never decided."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from coach.domain.movement import Unit
from coach.domain.plan import NextStep, PlannedExercise
from coach.domain.progress import EndedBecause
from coach.domain.session import ExerciseRecord, SessionDocument, SessionEnd
from coach.review.history import asked, in_order, started
from coach.review.holds import feigns
from coach.review.wording import amount, counted, day, with_error


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
        return NextStepState(False, 0, "The plan has no rule for a next step.")
    if rule.at_least_deg is not None and (
        planned.movement is None or planned.movement.unit is not Unit.DEGREES
    ):
        return NextStepState(False, 0, "The rule asks for degrees, but none are measured of it.")
    in_a_row = 0
    for document in reversed(in_order(documents)):
        records = [r for r in document.exercises if _is(planned, asked(document, r))]
        if not records:
            continue
        for record in records:
            missing = _missing(rule, record)
            if missing:
                on = day(started(document).date())
                row = f"{in_a_row} of {counted(rule.sessions, 'sitting')} in a row meet the rule"
                return NextStepState(False, in_a_row, f"{row}: on {on} {missing}.")
        in_a_row += 1
        if in_a_row >= rule.sessions:
            return NextStepState(True, in_a_row, _met(rule, records[-1]))
    sittings = counted(rule.sessions, "sitting")
    return NextStepState(False, in_a_row, f"{in_a_row} of {sittings} so far meet the rule.")


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
    if record.eased:
        return "an easier exercise was done in its place"
    if record.ended_because is not SessionEnd.COMPLETED:
        return "it was not completed"
    if record.pain_after is None:
        return "no pain was given after it"
    if record.pain_after > rule.pain_at_most:
        return f"pain after it was {record.pain_after}, above {rule.pain_at_most}"
    if rule.at_least_deg is not None:
        best = _best(record)
        if best is None:
            return "no hold was completed with a still trunk"
        if best[0] < rule.at_least_deg:
            fine = round(best[0]) >= round(rule.at_least_deg)
            least = amount(rule.at_least_deg, Unit.DEGREES, fine=fine)
            return f"{with_error(*best, Unit.DEGREES, fine=fine)} were reached, not {least}"
    return None


def _met(rule: NextStep, last: ExerciseRecord) -> str:
    parts = [f"completed with pain at most {rule.pain_at_most}"]
    best = _best(last)
    if rule.at_least_deg is not None and best is not None:
        least = amount(rule.at_least_deg, Unit.DEGREES)
        parts.append(f"at least {least} reached (last {with_error(*best, Unit.DEGREES)})")
    sittings = "Last sitting" if rule.sessions == 1 else f"Last {rule.sessions} sittings in a row"
    return f"{sittings}: {' and '.join(parts)}. The therapist decides."

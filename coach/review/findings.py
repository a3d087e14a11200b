"""What may be said of one movement, line by line, each number with its error."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from coach.domain.form import FormFault
from coach.domain.movement import Unit
from coach.domain.plan import PlannedExercise
from coach.domain.session import SessionDocument
from coach.review.change import Basis, Difference, Summary, Verdict
from coach.review.history import Series
from coach.review.holds import FEIGNING
from coach.review.next_step import next_step
from coach.review.norms import PUBLISHED
from coach.review.practice_records import OtherSide
from coach.review.since_visit import SinceVisit
from coach.review.trend import ENOUGH_SESSIONS, ENOUGH_WEEKS, Trend
from coach.review.wording import (
    amount,
    change_with_error,
    counted,
    day,
    listed,
    percent,
    percent_with_error,
    with_error,
)

Lines = tuple[tuple[str, str], ...]
"""What a line is about, and what it says."""

_FORM = {
    FormFault.LEAN: "trunk leaned",
    FormFault.TURN: "trunk turned",
    FormFault.HIKE: "shoulder rose",
    FormFault.BENT: "elbow bent",
    FormFault.STRAIGHT: "elbow straightened",
    FormFault.DRIFT: "elbow drifted",
}


def findings(
    result: Summary, visit: SinceVisit | None, planned: PlannedExercise | None,
    other: OtherSide | None, series: Series, documents: Sequence[SessionDocument],
) -> Lines:  # fmt: skip
    """Say what changed and how surely, where it stands, and how it was held."""
    difference = result.difference
    lines = [
        ("Since the start", _since_start(difference, result)),
        (f"Since {day(visit.visit)}" if visit else "Since a visit", _since_visit(visit, result)),
        ("By week", _by_week(result.trend, result.unit)),
    ]
    if difference:
        lines.append(("Real beyond", _detectable(difference, result)))
    lines += _plan(planned, documents)
    if other and result.percent_of_other is not None:
        lines.append(("Other side", _other_side(other, result)))
    lines.append(("Form", _form(series, documents)))
    return tuple(lines)


def _since_start(difference: Difference | None, result: Summary) -> str:
    if difference is None:
        return result.verdict
    said = _change(difference, result.unit)
    if difference.verdict is not Verdict.UNDECIDED:
        return said
    if difference.enough_sessions is None:
        return f"{said}, and more sessions alone would not"
    return f"{said}; about {difference.enough_sessions} sessions in all might"


def _change(difference: Difference, unit: Unit) -> str:
    fine = difference.fine
    change = change_with_error(difference.change, difference.error, unit, fine=fine)
    return f"{change}: {difference.verdict}"


def _since_visit(visit: SinceVisit | None, result: Summary) -> str:
    if visit is None:
        return "no visit is written down"
    if visit.visit <= result.first.begin:
        return "that is since the start"
    if visit.difference is None:
        when = "before" if not visit.before else "after"
        return f"no session to compare {when} that visit"
    least = amount(visit.difference.mdc, result.unit, fine=visit.difference.fine)
    return f"{_change(visit.difference, result.unit)} (detectable from {least})"


def _by_week(trend: Trend | None, unit: Unit) -> str:
    if trend is None:
        return f"sessions in fewer than {ENOUGH_WEEKS} weeks: no slope yet"
    low, high = (_signed(v, unit) for v in (trend.low, trend.high))
    weeks = f"{len(trend.weeks)} weeks' medians"
    if not trend.sure:
        return f"no sure direction: {low} to {high} a week ({weeks})"
    slope = _signed(trend.slope_per_week, unit)
    return f"{slope} a week, {low} to {high} ({weeks})"


def _signed(slope: float, unit: Unit) -> str:
    if unit is Unit.DEGREES:
        return ("+" if round(slope, 1) > 0 else "") + amount(slope, unit, fine=True)
    way = "down" if slope > 0 else "up"
    return f"{amount(abs(slope), unit, fine=True)} {way}"


def _detectable(difference: Difference, result: Summary) -> str:
    unit, published = result.unit, PUBLISHED[result.unit]
    least = amount(difference.mdc, unit, fine=difference.fine)
    by_hand = f"by hand {amount(published.detectable, unit)} ({published.source})"
    match difference.basis:
        case Basis.OWN:
            single = amount(difference.single_mdc, unit)
            return (
                f"{least}, by the scatter of these {counted(result.sessions, 'session')} and the "
                f"camera's place; two single ones {single}, {by_hand}"
            )
        case Basis.PUBLISHED:
            return (
                f"{least}: {by_hand}, widened as patients differ; this patient's own "
                f"repeatability counts from {ENOUGH_SESSIONS} sessions on"
            )
        case Basis.READINGS:
            return f"{least}, the error of the readings themselves; {by_hand}"


def _plan(planned: PlannedExercise | None, documents: Sequence[SessionDocument]) -> Lines:
    lines: list[tuple[str, str]] = []
    if planned and planned.next_step:
        state = next_step(planned, documents)
        lines.append(("Next step", f"{'Met' if state.met else 'Not yet'}. {state.reason}"))
    if planned and planned.target_deg is not None:
        lines.append(("Not beyond", f"{amount(planned.target_deg, Unit.DEGREES)}, by the plan"))
    return tuple(lines)


def _other_side(other: OtherSide, result: Summary) -> str:
    when = f"measured {day(other.on)}" if other.on else "by the plan"
    share = result.percent_of_other or 0.0
    error = 100 * result.last.error / other.value_deg
    missing = other.value_deg - result.last.value
    short = f"{with_error(abs(missing), result.last.error, Unit.DEGREES)} "
    return (
        f"{amount(other.value_deg, Unit.DEGREES)} ({when}); this side {short}"
        f"{'short' if missing > 0 else 'further'}, {percent_with_error(share, error)} of it"
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
        return "nothing was held"
    found = Counter(f for f in FormFault for repetition in held if f in repetition.faults)
    of = f"of {counted(len(held), 'hold')}"
    if not found:
        return f"no fault noted in any {of}"
    shares = listed([f"{_FORM[f]} in {percent(n / len(held))}" for f, n in found.most_common()])
    left_out = (
        "; leaned and turned holds are kept out of the range" if FEIGNING & set(found) else ""
    )
    return f"{shares} {of}{left_out}"

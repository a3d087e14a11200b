"""What may be said of one movement, line by line, each number with its error."""

from __future__ import annotations

from collections.abc import Sequence

from coach.domain.movement import Unit
from coach.domain.plan import PlannedExercise
from coach.domain.session import SessionDocument
from coach.review.change import Basis, Difference, Summary, Verdict
from coach.review.counts import sessions_counted
from coach.review.findings_beside import Lines, beside
from coach.review.history import Series
from coach.review.norms import PUBLISHED
from coach.review.practice_records import OtherSide
from coach.review.since_visit import SinceVisit
from coach.review.trend import ENOUGH_SESSIONS, ENOUGH_WEEKS, Trend
from coach.review.verdict_wording import verdict_words
from coach.review.wording import amount, change_with_error, day, least
from coach.texts import translate


def findings(
    result: Summary, visit: SinceVisit | None, planned: PlannedExercise | None,
    other: OtherSide | None, series: Series, documents: Sequence[SessionDocument],
) -> Lines:  # fmt: skip
    """Say what changed and how surely, where it stands, and how it was held."""
    difference = result.difference
    since = (
        translate("review", "Since {day}").format(day=day(visit.visit))
        if visit
        else translate("review", "Since a visit")
    )
    lines = [
        (translate("review", "Since the start"), _since_start(difference, result)),
        (since, _since_visit(visit, result)),
        (translate("review", "By week"), _by_week(result.trend, result.unit)),
    ]
    if difference:
        lines.append((translate("review", "Real beyond"), _detectable(difference, result)))
    return (*lines, *beside(result, planned, other, series, documents))


def _since_start(difference: Difference | None, result: Summary) -> str:
    if difference is None:
        return verdict_words(result.verdict)
    said = _change(difference, result.unit)
    if difference.verdict is not Verdict.UNDECIDED:
        return said
    if difference.enough_sessions is None:
        return translate("review", "{change}, and more sessions alone would not").format(
            change=said
        )
    return translate("review", "{change}; about {count} sessions in all might").format(
        change=said, count=difference.enough_sessions
    )


def _change(difference: Difference, unit: Unit) -> str:
    fine = difference.fine
    change = change_with_error(difference.change, difference.error, unit, fine=fine)
    return translate("review", "{change}: {verdict}").format(
        change=change, verdict=verdict_words(difference.verdict)
    )


def _since_visit(visit: SinceVisit | None, result: Summary) -> str:
    if visit is None:
        return translate("review", "no visit is written down")
    if visit.visit <= result.first.begin:
        return translate("review", "that is since the start")
    if visit.difference is None:
        if not visit.before:
            return translate("review", "no session to compare before that visit")
        return translate("review", "no session to compare after that visit")
    return translate("review", "{change} (detectable from {least})").format(
        change=_change(visit.difference, result.unit),
        least=least(visit.difference.mdc, result.unit, fine=visit.difference.fine),
    )


def _by_week(trend: Trend | None, unit: Unit) -> str:
    if trend is None:
        return translate("review", "sessions in fewer than {count} weeks: no slope yet").format(
            count=ENOUGH_WEEKS
        )
    low, high = (_signed(v, unit) for v in (trend.low, trend.high))
    count = len(trend.weeks)
    if not trend.sure:
        return translate(
            "review", "no sure direction: {low} to {high} a week ({count} weeks' medians)"
        ).format(low=low, high=high, count=count)
    return translate("review", "{slope} a week, {low} to {high} ({count} weeks' medians)").format(
        slope=_signed(trend.slope_per_week, unit), low=low, high=high, count=count
    )


def _signed(slope: float, unit: Unit) -> str:
    size = amount(abs(slope), unit, fine=True)
    if unit is Unit.DEGREES:
        return ("+" if round(slope, 1) > 0 else "") + amount(slope, unit, fine=True)
    if slope > 0:
        return translate("review", "{change} down").format(change=size)
    return translate("review", "{change} up").format(change=size)


def _detectable(difference: Difference, result: Summary) -> str:
    unit, published = result.unit, PUBLISHED[result.unit]
    by_hand = translate("review", "by hand {amount} ({source})").format(
        amount=amount(published.detectable, unit), source=published.source
    )
    match difference.basis:
        case Basis.OWN:
            told = translate(
                "review",
                "{least}, by the scatter of these {sessions} and the camera's place; two single "
                "ones {single}, {by_hand}",
            )
        case Basis.PUBLISHED:
            told = translate(
                "review",
                "{least}: {by_hand}, widened as patients differ; this patient's own "
                "repeatability counts from {count} sessions on",
            )
        case Basis.READINGS:
            told = translate("review", "{least}, the error of the readings themselves; {by_hand}")
    return told.format(
        least=least(difference.mdc, unit, fine=difference.fine),
        sessions=sessions_counted(result.sessions),
        single=least(difference.single_mdc, unit),
        by_hand=by_hand,
        count=ENOUGH_SESSIONS,
    )

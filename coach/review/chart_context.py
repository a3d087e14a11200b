"""What else belongs on a movement's chart for the therapist: course, plan, treatments."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from statistics import median

from coach.domain.plan import PlannedExercise
from coach.domain.practice import Treatment, TreatmentKind
from coach.review.chart import Chart, Dot, Event, Slope
from coach.review.trend import Trend
from coach.review.wording import day
from coach.texts import translate

_NEAR_DAYS = 28
"""Treatments this long before the first session, and after the last, are drawn: the range follows
them, while one of years ago would squeeze the sessions into a corner. Our choice."""
_MIDWEEK_DAYS = 3.5
_LONGEST_NAME = 24


def in_context(
    chart: Chart,
    trend: Trend | None,
    planned: PlannedExercise | None,
    treatments: Sequence[Treatment] = (),
) -> Chart:
    """Add the weeks' medians with their slope, the plan's angles and the treatments.

    ``planned`` is the exercise of this movement in the latest plan.
    """
    next_step = planned.next_step if planned else None
    return replace(
        chart,
        weeks=_weeks(trend, chart) if trend and not chart.weekly else (),
        slope=_slope(trend, chart) if trend else None,
        next_step_deg=next_step.at_least_deg if next_step else None,
        not_beyond_deg=planned.target_deg if planned else None,
        events=_events(chart, treatments),
    )


def treatment_words(treatment: Treatment) -> str:
    """Name a treatment with its day: injection, 3 Feb 2026."""
    what = _kind_words(treatment.kind)
    if treatment.kind is TreatmentKind.OTHER and treatment.text:
        what = treatment.text.splitlines()[0]
        if len(what) > _LONGEST_NAME:
            what = what[: _LONGEST_NAME - 1] + "\N{HORIZONTAL ELLIPSIS}"
    return f"{what}, {day(treatment.on)}"


def _kind_words(kind: TreatmentKind) -> str:
    match kind:
        case TreatmentKind.INJECTION:
            return translate("review", "injection")
        case TreatmentKind.HYDRODILATATION:
            return translate("review", "hydrodilatation")
        case TreatmentKind.SURGERY:
            return translate("review", "surgery")
        case TreatmentKind.OTHER:
            return translate("review", "other")


def _midweeks(trend: Trend, chart: Chart) -> list[float]:
    """Give the middle of each week, of the first and the last one as far as there were sessions."""
    first, last = chart.dots[0].day, chart.dots[-1].day
    middles = [week.monday.toordinal() + _MIDWEEK_DAYS for week in trend.weeks]
    return [min(max(middle, first), last) for middle in middles]


def _weeks(trend: Trend, chart: Chart) -> tuple[Dot, ...]:
    days = _midweeks(trend, chart)
    return tuple(Dot(d, w.value, 0.0) for d, w in zip(days, trend.weeks, strict=True))


def _slope(trend: Trend, chart: Chart) -> Slope:
    """Lay the line through the medians of weeks and values, as Sen (1968) does."""
    days = _midweeks(trend, chart)
    middle_day = median(week.monday.toordinal() for week in trend.weeks) + _MIDWEEK_DAYS
    middle = median(week.value for week in trend.weeks)
    begin, end = (middle + trend.slope_per_week * (d - middle_day) / 7 for d in (days[0], days[-1]))
    return Slope(days[0], begin, days[-1], end)


def _events(chart: Chart, treatments: Sequence[Treatment]) -> tuple[Event, ...]:
    days = [d.day for d in chart.dots] + [p.day for p in chart.pains]
    if not days:
        return ()
    first, last = min(days) - _NEAR_DAYS, max(days) + _NEAR_DAYS
    return tuple(
        Event(float(t.on.toordinal()), treatment_words(t))
        for t in treatments
        if first <= t.on.toordinal() <= last
    )

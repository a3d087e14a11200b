"""Scales of a chart: where an axis begins and ends, and which round values are marked."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from coach.domain.movement import Unit
from coach.review.wording import day_and_month, month, whole

_ANGLE_STEPS_DEG = (1, 2, 5, 10, 15, 30, 45, 90, 180, 360)
_DAY_STEPS = (1, 2)
_MONTH_STEPS = (1, 2, 3, 6)
_YEAR_STEPS = (1, 2, 5, 10, 20, 50)
_LEAST_SPAN_DAYS = 6.0


@dataclass(frozen=True, slots=True)
class Tick:
    """A marked value; ``under`` is a second line where the year begins or changes."""

    at: float
    label: str
    under: str = ""


@dataclass(frozen=True, slots=True)
class Axis:
    """From ``lo`` to ``hi`` in the data's own unit; ``lo`` is the larger where less is more."""

    lo: float
    hi: float
    ticks: tuple[Tick, ...]

    def share(self, value: float) -> float:
        """Place a value: 0 at the beginning of the axis, 1 at its end."""
        return (value - self.lo) / (self.hi - self.lo)

    def within(self, value: float) -> float:
        """Give the nearest value that the axis covers."""
        return min(max(value, min(self.lo, self.hi)), max(self.lo, self.hi))


def day_number(at: datetime) -> float:
    """Count days as the calendar of the place does: the whole part is the date's ordinal."""
    since_midnight = at.replace(tzinfo=None) - datetime.combine(at.date(), time.min)
    return at.date().toordinal() + since_midnight / timedelta(days=1)


def angle_axis(lo_deg: float, hi_deg: float, most_ticks: int = 7) -> Axis:
    """Cover a range of angles with round degrees, at least ten of them."""
    if hi_deg - lo_deg < 10:
        middle = (lo_deg + hi_deg) / 2
        lo_deg, hi_deg = middle - 5, middle + 5
    for step in _ANGLE_STEPS_DEG:
        first, last = math.floor(lo_deg / step), math.ceil(hi_deg / step)
        if last - first < most_ticks:
            break
    values = [step * i for i in range(first, last + 1)]
    ticks = tuple(Tick(float(v), whole(v)) for v in values)
    return Axis(float(values[0]), float(values[-1]), ticks)


def value_axis(lo: float, hi: float, unit: Unit, most_ticks: int = 7) -> Axis:
    """Cover a range of values with round degrees or percent, a larger range further up."""
    if unit is Unit.DEGREES:
        return angle_axis(lo, hi, most_ticks)
    percents = angle_axis(100 * lo, 100 * hi, most_ticks)
    ticks = tuple(Tick(tick.at / 100, tick.label) for tick in percents.ticks)
    return Axis(percents.hi / 100, percents.lo / 100, ticks)


def date_axis(first_day: float, last_day: float, most_ticks: int = 8) -> Axis:
    """Cover a period with days, Mondays, months or years, whichever are few enough.

    Days are ordinals of the calendar as ``day_number`` gives them; a short period is widened to
    a week so that a single session does not fill the chart.
    """
    span = last_day - first_day
    margin = max((_LEAST_SPAN_DAYS - span) / 2, 0.02 * span, 0.5)
    lo, hi = max(first_day - margin, 1.0), last_day + margin
    choices = list(_candidates(lo, hi))
    days, by_day = next((c for c in choices if len(c[0]) <= most_ticks), choices[-1])
    ticks: list[Tick] = []
    year = None
    for on in days:
        label = day_and_month(on) if by_day else month(on.month)
        ticks.append(Tick(float(on.toordinal()), label, "" if on.year == year else str(on.year)))
        year = on.year
    return Axis(lo, hi, tuple(ticks))


def _candidates(lo: float, hi: float) -> Iterator[tuple[list[date], bool]]:
    first, last = math.ceil(lo), math.floor(hi)
    for step in _DAY_STEPS:
        yield [date.fromordinal(o) for o in range(first, last + 1, step)], True
    monday = first + (-(first - 1)) % 7
    for step in (7, 14):
        yield [date.fromordinal(o) for o in range(monday, last + 1, step)], True
    begin, end = date.fromordinal(first), date.fromordinal(last)
    months = [
        date(year, month, 1)
        for year in range(begin.year, end.year + 1)
        for month in range(1, 13)
        if begin <= date(year, month, 1) <= end
    ]
    for step in _MONTH_STEPS:
        yield [m for m in months if (m.month - 1) % step == 0], False
    for step in _YEAR_STEPS:
        yield [m for m in months if m.month == 1 and m.year % step == 0], False

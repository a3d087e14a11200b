"""What a chart of one movement shows, before anything is painted."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median

from coach.domain.movement import Unit
from coach.review.axis import Axis, date_axis, day_number, value_axis
from coach.review.change import Summary
from coach.review.counts import sessions_counted
from coach.review.history import Point, Series, comparable
from coach.review.levels import reach_band
from coach.review.verdict_wording import verdict_words
from coach.review.wording import change_with_error, least, movement_of, with_error
from coach.texts import translate

MANY_SESSIONS = 60
"""From here on single sessions are dots and the line goes through the weeks' medians."""
LONG_GAP_DAYS = 21.0
"""A line is not drawn across a longer time without sessions."""


@dataclass(frozen=True, slots=True)
class Dot:
    """A session or a week: day number, value, half width of the 95 % interval."""

    day: float
    value: float
    error: float
    complete: bool = True


@dataclass(frozen=True, slots=True)
class Level:
    """A mean over some sessions, from day to day."""

    begin_day: float
    end_day: float
    value: float


@dataclass(frozen=True, slots=True)
class PainMark:
    """Pain of one session."""

    day: float
    before: int | None
    after: int | None


@dataclass(frozen=True, slots=True)
class Slope:
    """A line from one day and value to another."""

    begin_day: float
    begin: float
    end_day: float
    end: float


@dataclass(frozen=True, slots=True)
class Event:
    """What happened on a day beside the sessions, in words."""

    day: float
    words: str


@dataclass(frozen=True, slots=True)
class Chart:
    """Value over date with its error, and pain on the same dates; ``unit`` is the values'.

    ``runs`` are the dots that a line and an error band may join: sessions, or the weeks' medians
    where ``weekly``. ``first`` and ``last`` are there where they are means. ``undecided`` is
    the band around the first value inside which a change is within measurement error.
    ``weeks`` are the medians that ``slope`` is laid through; ``next_step_deg`` and
    ``not_beyond_deg`` are the plan's.
    """

    title: str
    statement: str
    dots: tuple[Dot, ...]
    runs: tuple[tuple[Dot, ...], ...]
    weekly: bool
    first: Level | None
    last: Level | None
    undecided: tuple[float, float] | None
    other_side_deg: float | None
    pains: tuple[PainMark, ...]
    unit: Unit = Unit.DEGREES
    weeks: tuple[Dot, ...] = ()
    slope: Slope | None = None
    next_step_deg: float | None = None
    not_beyond_deg: float | None = None
    events: tuple[Event, ...] = ()

    def axes(
        self, most_dates: int = 8, most_values: int = 7, until_day: float | None = None
    ) -> tuple[Axis, Axis]:
        """Give the axis of days, at least to ``until_day``, and that of values.

        A larger range is further up.
        """
        days = [d.day for d in self.dots] + [p.day for p in self.pains]
        days += [e.day for e in self.events] + ([] if until_day is None else [until_day])
        lows = [d.value - d.error for d in self.dots]
        highs = [d.value + d.error for d in self.dots]
        levels = (self.other_side_deg, self.next_step_deg, self.not_beyond_deg)
        lows += [level for level in levels if level is not None]
        highs += [level for level in levels if level is not None]
        return (
            date_axis(min(days), max(days), most_dates),
            value_axis(min(lows, default=0.0), max(highs, default=10.0), self.unit, most_values),
        )

    def description(self) -> str:
        """Say in words what the picture shows, for those who do not see it."""
        events = "".join(f". {event.words}" for event in self.events)
        return f"{self.title}. {self.statement}{events}"


def chart(series: Series, summary: Summary | None) -> Chart:
    """Arrange one series for painting."""
    dots = tuple(Dot(day_number(p.at), p.value, p.error, p.complete) for p in series.points)
    weekly = len(dots) > MANY_SESSIONS
    difference = summary.difference if summary else None
    first = last = undecided = None
    compared = comparable(series.points)
    if summary and difference:
        if summary.first.sessions > 1:
            first = _level(compared[: summary.first.sessions], summary.first.value)
        if summary.last.sessions > 1:
            last = _level(compared[-summary.last.sessions :], summary.last.value)
        middle, half = summary.first.value, difference.mdc
        undecided = (middle - half, middle + half)
    return Chart(
        title=movement_of(series.movement, series.side, series.position),
        statement=statement(summary),
        dots=dots,
        runs=_runs(_weeks(dots) if weekly else dots),
        weekly=weekly,
        first=first,
        last=last,
        undecided=undecided,
        other_side_deg=summary.other_side_deg if summary else None,
        pains=tuple(
            PainMark(day_number(p.at), p.before, p.after)
            for p in series.pains
            if p.worst is not None
        ),
        unit=series.movement.unit,
    )


def statement(summary: Summary | None) -> str:
    """Say in one line what may be concluded."""
    if summary is None:
        return translate("review", "No session gave a value.")
    difference, unit = summary.difference, summary.unit
    if difference is None and summary.sessions > 1:
        return translate(
            "review", "{count} sessions, but in too few of them the trunk kept still."
        ).format(count=summary.sessions)
    if difference is None:
        return translate(
            "review", "One session: {value}; too few sessions to speak of change."
        ).format(value=_told(summary.first.value, summary.first.error, unit))
    return translate("review", "{change}: {verdict} (detectable from {least}), {sessions}").format(
        change=change_with_error(difference.change, difference.error, unit, fine=difference.fine),
        verdict=verdict_words(difference.verdict),
        least=least(difference.mdc, unit, fine=difference.fine),
        sessions=sessions_counted(summary.sessions),
    )


def _told(value: float, error: float, unit: Unit) -> str:
    text = with_error(value, error, unit)
    return text if unit is Unit.DEGREES else f"{reach_band(value, error).words}, {text}"


def _level(points: Sequence[Point], value: float) -> Level:
    return Level(day_number(points[0].at), day_number(points[-1].at), value)


def _weeks(dots: Sequence[Dot]) -> tuple[Dot, ...]:
    weeks: dict[int, list[Dot]] = {}
    for dot in dots:
        weeks.setdefault((int(dot.day) - 1) // 7, []).append(dot)
    return tuple(
        Dot(*(median(getattr(d, n) for d in week) for n in ("day", "value", "error")))
        for _, week in sorted(weeks.items())
    )


def _runs(dots: Sequence[Dot]) -> tuple[tuple[Dot, ...], ...]:
    runs: list[list[Dot]] = []
    for dot in dots:
        if runs and dot.day - runs[-1][-1].day <= LONG_GAP_DAYS:
            runs[-1].append(dot)
        else:
            runs.append([dot])
    return tuple(map(tuple, runs))

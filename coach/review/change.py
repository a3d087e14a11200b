"""First, last, best, and the difference of one movement's sessions.

The first and the last value are means over the sessions of a week (never more than a third of all
sessions, at most seven). Sessions in which only a moving trunk reached the value are not compared.
``difference`` says when a change is one.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from statistics import fmean

from coach.domain.movement import Movement, Position, Side, Unit
from coach.review.carry_over import scatter_of
from coach.review.difference import Basis, Difference, Verdict, compare
from coach.review.history import Point, Series, comparable
from coach.review.norms import PLACEMENT_SEM
from coach.review.outlook import MOST_IN_WEEK
from coach.review.set_up import SetUpChange, set_up_change
from coach.review.trend import Trend, robust_line, trend

__all__ = [
    "Basis", "Difference", "Summary", "Verdict", "Window", "compare", "percent_of_other", "summary",
    "window_size",
]  # fmt: skip

_WINDOW = timedelta(days=7)
_SMALLEST_REFERENCE_DEG = 10.0
"""Below this the other side's own measurement error makes a percentage meaningless."""


@dataclass(frozen=True, slots=True)
class Window:
    """The mean of some sessions; ``error`` is what their readings say of one of them."""

    value: float
    error: float
    sessions: int
    begin: date
    end: date


@dataclass(frozen=True, slots=True)
class Summary:
    """One movement of one side: what a row of the table says.

    ``sessions`` counts all that gave a value, the rest those that may be compared. ``difference``
    is None with a single one, ``percent_of_other`` where no other side is known or its value is
    too near zero or negative, ``trend`` with few weeks.
    """

    movement: Movement
    side: Side
    position: Position
    sessions: int
    first: Window
    last: Window
    best: Point
    difference: Difference | None
    verdict: Verdict
    slope_per_week: float | None
    trend: Trend | None
    other_side_deg: float | None
    percent_of_other: float | None
    set_up_change: SetUpChange

    @property
    def unit(self) -> Unit:
        """Unit of the values."""
        return self.movement.unit

    def against(self, other_side_deg: float | None) -> Summary:
        """Give the same beside a range of the other side."""
        share = percent_of_other(self.last.value, other_side_deg)
        return replace(self, other_side_deg=other_side_deg, percent_of_other=share)


def summary(series: Series) -> Summary | None:
    """Sum up one series, without the other side; None where no session gave a value."""
    if not series.points:
        return None
    points = comparable(series.points)
    sound = bool(points)
    points = points or series.points
    size = window_size(points)
    first, last = points[: size[0]], points[-size[1] :]
    days = [(p.at - points[0].at) / timedelta(days=1) for p in points]
    values = [p.value for p in points]
    own = scatter_of(days, values)
    moved = set_up_change([p.set_up for p in first], [p.set_up for p in last])
    unit = series.movement.unit
    difference = None
    if len(points) > 1 and sound:
        difference = compare(
            first,
            last,
            own,
            set_up_changed=moved.happened,
            unit=unit,
            placement_sem=PLACEMENT_SEM.get((series.movement, series.position)),
            sessions=len(points),
        )
    return Summary(
        movement=series.movement,
        side=series.side,
        position=series.position,
        sessions=len(series.points),
        first=_window(first),
        last=_window(last),
        best=max(points, key=lambda p: p.value * unit.sign),
        difference=difference,
        verdict=difference.verdict if difference else Verdict.TOO_FEW,
        slope_per_week=_WINDOW.days * robust_line(days, values)[0] if own else None,
        trend=trend(points[0].at.date(), days, values),
        other_side_deg=None,
        percent_of_other=None,
        set_up_change=moved,
    )


def window_size(points: Sequence[Point]) -> tuple[int, int]:
    """How many sessions the first and the last value are taken over."""
    most = max(1, min(MOST_IN_WEEK, len(points) // 3))
    first = sum(p.at - points[0].at < _WINDOW for p in points)
    last = sum(points[-1].at - p.at < _WINDOW for p in points)
    return min(first, most), min(last, most)


def percent_of_other(value: float, other_side_deg: float | None) -> float | None:
    """Express a range as a share of the other side's, where that means something."""
    if other_side_deg is None or other_side_deg < _SMALLEST_REFERENCE_DEG:
        return None
    return 100 * value / other_side_deg


def _window(points: Sequence[Point]) -> Window:
    return Window(
        value=fmean(p.value for p in points),
        error=math.sqrt(fmean(p.error**2 for p in points)),
        sessions=len(points),
        begin=points[0].at.date(),
        end=points[-1].at.date(),
    )

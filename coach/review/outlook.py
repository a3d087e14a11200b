"""How many sessions might decide a change that is still open."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from coach.review.carry_over import Scatter

WEEK_DAYS = 7
MOST_IN_WEEK = 7
_AHEAD = (4, 7, 14, 21, 28, 42, 56, 84)


@dataclass(frozen=True, slots=True)
class Place:
    """What two places of the camera add to a difference: a variance and its degrees of freedom."""

    variance: float
    dof: float


def ruled_out(first: Sequence[float], last: Sequence[float], matters: float) -> float:
    """Give what two weeks differ by while ``matters`` is gained steadily over the whole course.

    ``first`` and ``last`` are days, the first of them and the last the ends of the course.
    """
    span = last[-1] - first[0]
    if span <= 0:
        return 0.0
    return matters * (sum(last) / len(last) - sum(first) / len(first)) / span


def enough_sessions(
    scatter: Scatter, sessions: int, span_days: float, change: float, place: Place, matters: float
) -> int | None:
    """Give how many sessions in all decide a change that stays as it is, at the pace so far.

    None where a hundred or so would not either.
    """
    pace = max(span_days / (sessions - 1), 1 / WEEK_DAYS)
    for ahead in _AHEAD:
        count = sessions + ahead
        days = [pace * i for i in range(count)]
        week = min(MOST_IN_WEEK, count // 3, 1 + int(WEEK_DAYS / pace - 1e-9))
        first, last = days[:week], days[-week:]
        later = replace(scatter, dof=scatter.dof + ahead)
        half = later.half_width(first, last, place.variance, place.dof)
        if abs(change) > half or abs(change) + half < ruled_out(first, last, matters):
            return count
    return None

"""What changed since the person was last seen, with the error of that comparison itself."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from coach.review.carry_over import scatter_of
from coach.review.change import Difference, compare
from coach.review.history import Point, Series, comparable
from coach.review.norms import PLACEMENT_SEM
from coach.review.set_up import set_up_change

_WINDOW = timedelta(days=7)
_MOST_IN_WINDOW = 7


@dataclass(frozen=True, slots=True)
class SinceVisit:
    """A visit's day, and how the last sessions differ from those up to it.

    ``difference`` is None where there is no session to compare on one side: ``before`` and
    ``after`` count those that are.
    """

    visit: date
    before: int
    after: int
    difference: Difference | None


def since_visit(series: Series, visit: date) -> SinceVisit:
    """Compare means of up to a week: the last sessions against the last ones up to the visit.

    Groups of sessions as in ``change``, which never overlap: what was held on the day of the visit
    counts as before it.
    """
    points = comparable(series.points)
    before = _last_week([p for p in points if p.at.date() <= visit])
    after = _last_week([p for p in points if p.at.date() > visit])
    difference = None
    if before and after:
        days = [(p.at - points[0].at) / timedelta(days=1) for p in points]
        difference = compare(
            before,
            after,
            scatter_of(days, [p.value for p in points]),
            set_up_changed=set_up_change(
                [p.set_up for p in before], [p.set_up for p in after]
            ).happened,
            sessions=len(before) + len(after),
            unit=series.movement.unit,
            placement_sem=PLACEMENT_SEM.get((series.movement, series.position)),
        )
    return SinceVisit(visit, len(before), len(after), difference)


def _last_week(points: Sequence[Point]) -> tuple[Point, ...]:
    lately = [p for p in points if points[-1].at - p.at < _WINDOW]
    return tuple(lately[-_MOST_IN_WINDOW:])

"""First, last, best, and whether the difference is more than measurement error.

The standard error of measurement (SEM) is that of one session, in the movement's unit. It is the
larger of

- what the readings say of themselves: half width of the 95 % interval / 1.96; or, between sessions
  measured in the same way, where the person's own bias cancels, what putting up the camera anew
  does to the end of range (``norms.PLACEMENT_SEM``);
- what this patient's own sessions show, where there are at least ``trend.ENOUGH_SESSIONS``;
  until then a published figure (``norms.PUBLISHED``).

The first and the last value are means over the sessions of a week (never more than a third of all
sessions, at most seven): a mean of seven has an SEM smaller by the root of seven. The minimal
detectable change is that of the difference as it was made,

    MDC95 = 1.96 sqrt(SEM^2 / k_first + SEM^2 / k_last),

which for single sessions is the usual 1.96 sqrt(2) SEM (Weir 2005, J Strength Cond Res 19:231).
Where the scatter comes from the patient's own few sessions, Student's factor replaces 1.96, and
good and bad weeks, where they show, make the means less sure (``Repeatability.mean_of``).
An error that stays the same over all sessions cancels in the difference. One that changed once,
because another camera or model measured the last sessions, neither cancels nor averages: then the
readings' own error enters unreduced.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from statistics import fmean

from coach.domain.movement import Movement, Position, Side, Unit
from coach.review.history import Z95, Point, Series
from coach.review.norms import PLACEMENT_SEM, PUBLISHED
from coach.review.trend import Repeatability, repeatability, robust_line

_WINDOW = timedelta(days=7)
_MOST_IN_WINDOW = 7
_SMALLEST_REFERENCE_DEG = 10.0
"""Below this the other side's own measurement error makes a percentage meaningless."""


class Verdict(StrEnum):
    """What may be said of a change."""

    REAL = "real change"
    WITHIN_ERROR = "within measurement error"
    TOO_FEW = "too few sessions"


class Basis(StrEnum):
    """Where the detectable change comes from."""

    READINGS = "error of the readings"
    OWN = "the patient's own repeatability"
    PUBLISHED = "published error"


@dataclass(frozen=True, slots=True)
class Window:
    """The mean of some sessions; ``error`` is what their readings say of one of them."""

    value: float
    error: float
    sessions: int
    begin: date
    end: date


@dataclass(frozen=True, slots=True)
class Difference:
    """Last minus first.

    ``error`` is the half width of its 95 % interval as far as the patient's own data tell,
    ``mdc`` what it must pass to be called real (larger where the published figure stands in),
    ``single_mdc`` the same for two single sessions, to be compared with published figures.
    """

    change: float
    error: float
    mdc: float
    single_mdc: float
    basis: Basis
    verdict: Verdict


@dataclass(frozen=True, slots=True)
class Summary:
    """One movement of one side: what a row of the table says.

    ``difference`` is None with a single session, ``percent_of_other`` where no other side is
    known or its value is too near zero or negative.
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
    repeatability: Repeatability | None
    slope_per_week: float | None
    other_side_deg: float | None
    percent_of_other: float | None
    set_up_changed: bool

    @property
    def unit(self) -> Unit:
        """Unit of the values."""
        return self.movement.unit


def summary(series: Series, other_side_deg: float | None = None) -> Summary | None:
    """Sum up one series; None where no session gave a value."""
    points = series.points
    if not points:
        return None
    size = window_size(points)
    first, last = points[: size[0]], points[-size[1] :]
    days = [(p.at - points[0].at) / timedelta(days=1) for p in points]
    values = [p.value for p in points]
    own = repeatability(days, values)
    moved = not {p.set_up for p in last} <= {p.set_up for p in first}
    unit = series.movement.unit
    difference = None
    if len(points) > 1:
        difference = compare(
            first,
            last,
            own,
            set_up_changed=moved,
            unit=unit,
            placement_sem=PLACEMENT_SEM.get((series.movement, series.position)),
        )
    last_window = _window(last)
    return Summary(
        movement=series.movement,
        side=series.side,
        position=series.position,
        sessions=len(points),
        first=_window(first),
        last=last_window,
        best=max(points, key=lambda p: p.value * unit.sign),
        difference=difference,
        verdict=difference.verdict if difference else Verdict.TOO_FEW,
        repeatability=own,
        slope_per_week=7 * robust_line(days, values)[0] if own else None,
        other_side_deg=other_side_deg,
        percent_of_other=percent_of_other(last_window.value, other_side_deg),
        set_up_changed=moved,
    )


def window_size(points: Sequence[Point]) -> tuple[int, int]:
    """How many sessions the first and the last value are taken over."""
    most = max(1, min(_MOST_IN_WINDOW, len(points) // 3))
    first = sum(p.at - points[0].at < _WINDOW for p in points)
    last = sum(points[-1].at - p.at < _WINDOW for p in points)
    return min(first, most), min(last, most)


def compare(
    first: Sequence[Point],
    last: Sequence[Point],
    own: Repeatability | None,
    *,
    set_up_changed: bool = False,
    unit: Unit = Unit.DEGREES,
    placement_sem: float | None = None,
) -> Difference:
    """Compare the means of two groups of sessions.

    ``placement_sem`` is the standard error that comes with each placing of the camera, where it
    is known.
    """
    change = fmean(p.value for p in last) - fmean(p.value for p in first)
    variances = [fmean((p.error / Z95) ** 2 for p in group) for group in (first, last)]
    if placement_sem is not None and not set_up_changed:
        variances = [placement_sem**2] * 2
    if set_up_changed:
        readings = Z95 * math.sqrt(sum(variances))
    else:
        readings = Z95 * math.sqrt(variances[0] / len(first) + variances[1] / len(last))
    readings_single = Z95 * math.sqrt(2 * fmean(variances))
    if own:
        observed_single = own.factor95 * math.sqrt(2) * own.sd
        observed = own.factor95 * math.hypot(own.mean_of(len(first)), own.mean_of(len(last)))
        basis = Basis.OWN
    else:
        observed_single = PUBLISHED[unit].detectable
        observed = observed_single * math.sqrt((1 / len(first) + 1 / len(last)) / 2)
        basis = Basis.PUBLISHED
    mdc = max(readings, observed)
    return Difference(
        change=change,
        error=mdc if own else readings,
        mdc=mdc,
        single_mdc=max(readings_single, observed_single),
        basis=Basis.READINGS if readings > observed else basis,
        verdict=Verdict.REAL if abs(change) > mdc else Verdict.WITHIN_ERROR,
    )


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

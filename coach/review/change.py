"""First, last, best, and whether the difference is more than measurement error.

The first and the last value are means over the sessions of a week (never more than a third of all
sessions, at most seven). The minimal detectable change is that of the difference as it was made:

    MDC95 = t sqrt(SEM^2 / k_first + SEM^2 / k_last + 2 P^2)

SEM is this patient's own standard error of measurement of one session (``trend.repeatability``),
averaged over the k sessions of a week. P is that of a place of the camera (``norms``): a laptop may
stand on one shelf in the first week and on another in the last, so P is not averaged; good and bad
weeks hide under it too. Where it was never measured, all of the published error stands in. t is
Student's two-sided 95 % point for the sum of an estimated and a known variance (Welch 1947,
Satterthwaite 1946, Biometrics Bull 2:110). For two single sessions and many degrees of freedom this
is the usual 1.96 sqrt(2) SEM (Weir 2005, J Strength Cond Res 19:231). ``tests/bench/change.py``
prints how often it errs.

With fewer than ``trend.ENOUGH_SESSIONS`` a published figure stands in (``norms.PUBLISHED``). An
error of the readings that stays the same cancels in the difference. One that changed once, because
another camera or model measured the last sessions, does not: then the readings' own error must be
passed too. Sessions in which only a moving trunk reached the value are not compared. A change is
real where it passes in tenths of a degree; where whole degrees would read otherwise (+7 against 7),
tenths are written.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from statistics import fmean

from coach.domain.movement import Movement, Position, Side, Unit
from coach.review.history import Z95, Point, Series, comparable
from coach.review.norms import PLACEMENT_SEM, PUBLISHED
from coach.review.trend import Repeatability, Trend, repeatability, robust_line, student95, trend

_WINDOW = timedelta(days=7)
_MOST_IN_WINDOW = 7
_STEP = {Unit.DEGREES: 1.0, Unit.RATIO: 0.01}
"""What ``wording.amount`` rounds to."""
_VERY_MANY = 1e9
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
    ``fine`` asks for one more digit, where change and ``mdc`` would read alike.
    """

    change: float
    error: float
    mdc: float
    single_mdc: float
    basis: Basis
    verdict: Verdict
    fine: bool = False


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
    repeatability: Repeatability | None
    slope_per_week: float | None
    trend: Trend | None
    other_side_deg: float | None
    percent_of_other: float | None
    set_up_changed: bool

    @property
    def unit(self) -> Unit:
        """Unit of the values."""
        return self.movement.unit


def summary(series: Series, other_side_deg: float | None = None) -> Summary | None:
    """Sum up one series; None where no session gave a value."""
    if not series.points:
        return None
    points = comparable(series.points)
    sound = bool(points)
    points = points or series.points
    size = window_size(points)
    first, last = points[: size[0]], points[-size[1] :]
    days = [(p.at - points[0].at) / timedelta(days=1) for p in points]
    values = [p.value for p in points]
    own = repeatability(values)
    moved = not {p.set_up for p in last} <= {p.set_up for p in first}
    unit = series.movement.unit
    difference = None
    if len(points) > 1 and sound:
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
        sessions=len(series.points),
        first=_window(first),
        last=last_window,
        best=max(points, key=lambda p: p.value * unit.sign),
        difference=difference,
        verdict=difference.verdict if difference else Verdict.TOO_FEW,
        repeatability=own,
        slope_per_week=_WINDOW.days * robust_line(days, values)[0] if own else None,
        trend=trend(points[0].at.date(), days, values),
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

    ``placement_sem`` is the standard error of a place of the camera, in the values' unit, None
    where it was never measured: then the readings' error must be passed as well.
    """
    change = fmean(p.value for p in last) - fmean(p.value for p in first)
    published = PUBLISHED[unit].detectable
    known = placement_sem is not None
    place = published / (Z95 * math.sqrt(2)) if placement_sem is None else placement_sem
    variances = [fmean((p.error / Z95) ** 2 for p in group) for group in (first, last)]
    counts = (1, 1) if set_up_changed else (len(first), len(last))
    readings = readings_single = 0.0
    if set_up_changed or not known:
        readings = Z95 * math.sqrt(sum(v / n for v, n in zip(variances, counts, strict=True)))
        readings_single = Z95 * math.sqrt(sum(variances))
    if own:
        scatter = own.sd**2 * (1 / len(first) + 1 / len(last))
        observed = _detectable(scatter, own.dof, 2 * place**2)
        observed_single = _detectable(2 * own.sd**2, own.dof, 2 * place**2)
        basis = Basis.OWN
    else:
        observed = observed_single = max(published, Z95 * math.sqrt(2) * place)
        basis = Basis.PUBLISHED
    mdc = max(readings, observed)
    error = mdc if own else readings or Z95 * math.sqrt(2) * place
    tenth = _STEP[unit] / 10
    beyond = round(abs(change) / tenth) > round(mdc / tenth)
    beyond_in_steps = round(abs(change) / _STEP[unit]) > round(mdc / _STEP[unit])
    return Difference(
        change=change,
        error=error,
        mdc=mdc,
        single_mdc=max(readings_single, observed_single),
        basis=Basis.READINGS if readings > observed else basis,
        verdict=Verdict.REAL if beyond else Verdict.WITHIN_ERROR,
        fine=beyond != beyond_in_steps,
    )


def _detectable(estimated: float, dof: float, known: float) -> float:
    """Give the half width of the 95 % interval of what has two variances, one of them known."""
    total = estimated + known
    if estimated * _VERY_MANY <= known:
        return Z95 * math.sqrt(total)
    return student95(dof * (total / estimated) ** 2) * math.sqrt(total)


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

"""What may be said of the difference between the first sessions and the last.

The 95 % interval of the difference of their means decides (two one-sided tests,
Schuirmann 1987, J Pharmacokinet Biopharm 15:657, from memory): a change is *real* where zero lies
outside; it is *within measurement error* where, besides, a change that matters lies outside; else
the sessions *cannot tell yet*, and ``enough_sessions`` says how many might. What matters is 15
degrees from the first session to the last; spread evenly over the whole course the two weeks
differ by less, and that less has to be ruled out.

The interval's half width is the minimal detectable change of the difference as it was made:

    MDC95 = t sqrt(SEM^2 / m_first + SEM^2 / m_last + 2 P^2)

SEM is this patient's own standard error of measurement of one session, m how many independent
sessions a week's are worth; both, and their uncertainty, come from ``carry_over``. P is the
standard error of a place of the camera (``norms``): a laptop may stand on one shelf in the first
week and on another in the last, so P is not averaged. It was measured in few placements, which t
takes into account (Welch 1947, Satterthwaite 1946, Biometrics Bull 2:110). Where it was never
measured, or another camera measured the last sessions, all of the readings' error stands in, not
averaged. For two single sessions and many degrees of freedom this is the usual 1.96 sqrt(2) SEM
(Weir 2005, J Strength Cond Res 19:231). ``tests/bench/change.py`` prints how often it errs.

With fewer than ``trend.ENOUGH_SESSIONS`` a published figure stands in (``norms.PUBLISHED``), made
wider because patients differ, and only what passes it is decided. A change is real where it passes
in tenths of a degree; where whole degrees would read otherwise (+7 against 7), tenths are written.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from enum import StrEnum
from statistics import fmean

from coach.domain.movement import Unit
from coach.review.carry_over import Scatter
from coach.review.history import Z95, Point
from coach.review.norms import PLACEMENT_DOF, PUBLISHED, WORTH_KNOWING
from coach.review.outlook import Place, enough_sessions, ruled_out
from coach.review.student import student95
from coach.review.wording import steps_up

_STEP = {Unit.DEGREES: 1.0, Unit.RATIO: 0.01}
"""What ``wording.amount`` rounds to."""
_VERY_MANY = 1e9
_PUBLISHED_DOF = 5
"""A published scatter is trusted like one known from so few sessions, since patients differ: our
choice."""


class Verdict(StrEnum):
    """What may be said of a change."""

    REAL = "real change"
    WITHIN_ERROR = "within measurement error"
    UNDECIDED = "cannot tell yet"
    TOO_FEW = "too few sessions"


class Basis(StrEnum):
    """Where the detectable change comes from."""

    READINGS = "error of the readings"
    OWN = "the patient's own repeatability"
    PUBLISHED = "published error"


@dataclass(frozen=True, slots=True)
class Difference:
    """Last minus first.

    ``error`` is the half width of its 95 % interval as far as the patient's own data tell,
    ``mdc`` what it must pass to be called real (larger where the published figure stands in),
    ``single_mdc`` the same for two single sessions, to be compared with published figures.
    ``fine`` asks for one more digit, where change and ``mdc`` would read alike.
    ``enough_sessions`` is how many sessions in all might decide what is open, were the change to
    stay as it is; None where nothing is open, or where sessions alone would not do.
    """

    change: float
    error: float
    mdc: float
    single_mdc: float
    basis: Basis
    verdict: Verdict
    fine: bool = False
    enough_sessions: int | None = None


def compare(
    first: Sequence[Point],
    last: Sequence[Point],
    own: Scatter | None,
    *,
    set_up_changed: bool = False,
    unit: Unit = Unit.DEGREES,
    placement_sem: float | None = None,
    sessions: int = 2,
) -> Difference:
    """Compare the means of the first and the last of so many ``sessions``.

    ``placement_sem`` is the standard error of a place of the camera, in the values' unit, None
    where it was never measured: then the readings' error stands in.
    """
    change = fmean(p.value for p in last) - fmean(p.value for p in first)
    begin = first[0].at
    early, late = ([(p.at - begin) / timedelta(days=1) for p in g] for g in (first, last))
    place, of_readings = _place(first, last, placement_sem, unit, set_up_changed=set_up_changed)
    if own:
        error = mdc = own.half_width(early, late, place.variance, place.dof)
        single = own.half_width([0.0], [_VERY_MANY], place.variance, place.dof)
    else:
        error = student95(place.dof) * math.sqrt(place.variance)
        wide = PUBLISHED[unit].detectable * student95(_PUBLISHED_DOF) / Z95
        mdc = single = max(wide, error)
    tenth = _STEP[unit] / 10
    beyond = round(abs(change) / tenth) > steps_up(mdc, tenth)
    beyond_in_steps = round(abs(change) / _STEP[unit]) > steps_up(mdc, _STEP[unit])
    matters = WORTH_KNOWING[unit]
    enough = None
    if beyond:
        verdict = Verdict.REAL
    elif own is None:
        verdict = Verdict.TOO_FEW
    elif abs(change) + mdc < ruled_out(early, late, matters):
        verdict = Verdict.WITHIN_ERROR
    else:
        verdict = Verdict.UNDECIDED
        enough = enough_sessions(own, sessions, late[-1], change, place, matters)
    return Difference(
        change=change,
        error=error,
        mdc=mdc,
        single_mdc=single,
        basis=Basis.READINGS if of_readings else Basis.OWN if own else Basis.PUBLISHED,
        verdict=verdict,
        fine=beyond != beyond_in_steps,
        enough_sessions=enough,
    )


def _place(
    first: Sequence[Point],
    last: Sequence[Point],
    placement_sem: float | None,
    unit: Unit,
    *,
    set_up_changed: bool,
) -> tuple[Place, bool]:
    """Give what two places of the camera add, and whether that is the readings' whole error."""
    if placement_sem is None:
        least = (PUBLISHED[unit].detectable / Z95) ** 2
    else:
        least = 2 * placement_sem**2
        if not set_up_changed:
            return Place(least, PLACEMENT_DOF), False
    readings = sum(fmean((p.error / Z95) ** 2 for p in group) for group in (first, last))
    return Place(max(readings, least), _VERY_MANY), readings >= least

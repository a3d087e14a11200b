"""Which faults a form shows for certain enough.

A value is past its limit when it is beyond it by ``CERTAIN_SHARE`` of its own error. Half of a
95 % half width is about one standard deviation, so five of six values at this bound are truly past
the limit; all of it would miss half of what is only as much over the limit as the error is wide.
"""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.form import FormFault, FormLimits
from coach.domain.reading import Form

CERTAIN_SHARE = 0.5


@dataclass(frozen=True, slots=True)
class Excess:
    """How far one value is past its limit (negative: inside), all in the value's own unit."""

    fault: FormFault
    value: float
    error: float
    beyond: float

    @property
    def past(self) -> bool:
        """Whether the value is past the limit by what its error leaves certain enough."""
        return self.beyond > CERTAIN_SHARE * self.error

    @property
    def inside(self) -> bool:
        """Whether the value is back inside the limit; between the two nothing is decided."""
        return self.beyond <= 0.0


def faults_of(form: Form, limits: FormLimits) -> tuple[FormFault, ...]:
    """Give the faults of a form, as of a repetition, whose medians hold what lasted in it."""
    return tuple(excess.fault for excess in excesses(form, limits) if excess.past)


def excesses(form: Form, limits: FormLimits) -> tuple[Excess, ...]:
    """Compare what is both asked and seen; the trunk, whose faults feign range, comes first."""
    lean_deg, turn_deg, drift_deg = form.trunk_lean_deg, form.trunk_turn_deg, form.elbow_drift_deg
    bend_deg, bend_error_deg = form.elbow_flexion_deg, form.elbow_flexion_error_deg
    least_deg, most_deg = limits.elbow_deg or (None, None)
    hike = form.shoulder_hike_ratio
    compared = (
        _over(FormFault.LEAN, lean_deg, form.trunk_lean_error_deg, limits.lean_deg),
        _over(FormFault.TURN, turn_deg, form.trunk_turn_error_deg, limits.turn_deg),
        _over(FormFault.HIKE, hike, form.shoulder_hike_error_ratio, limits.hike_ratio, +1),
        _over(FormFault.BENT, bend_deg, bend_error_deg, most_deg, +1),
        _over(FormFault.STRAIGHT, bend_deg, bend_error_deg, least_deg, -1),
        _over(FormFault.DRIFT, drift_deg, form.elbow_drift_error_deg, limits.drift_deg),
    )
    return tuple(excess for excess in compared if excess is not None)


def _over(
    fault: FormFault, value: float | None, error: float | None, limit: float | None, way: int = 0
) -> Excess | None:
    """``way`` +1: over the limit is too far, -1: under it, 0: over it to either side."""
    if value is None or error is None or limit is None:
        return None
    beyond = way * (value - limit) if way else abs(value) - limit
    return Excess(fault, value, error, beyond)

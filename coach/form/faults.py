"""Which faults a form shows for certain enough.

A value is past its limit when it is beyond it by ``CERTAIN_SHARE`` of its own error. Half of a
95 % half width is about one standard deviation, so five of six values at this bound are truly past
the limit; all of it would miss half of what is only as much over the limit as the error is wide.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from statistics import median

from coach.domain.form import FormFault, FormLimits
from coach.domain.movement import Movement, Position, Side
from coach.domain.reading import Form

CERTAIN_SHARE = 0.5
OWN_TURN_DEG, OWN_TURN_ERROR_DEG = 3.0, 4.0
"""Turn backward beyond the person's own usual, which takes off what the model adds for this person
and place: 36 stretches of tuning people without a turn differ from their first by 0.7, SD 2.1, at
most 4.7 degrees; 19 of 20 with a turn of 15 on purpose by 5.2 and more."""


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
        return self.certainty > 0.0

    @property
    def certainty(self) -> float:
        """How far it is past what is certain enough (negative: not), in the value's own unit."""
        return self.beyond - CERTAIN_SHARE * self.error

    @property
    def inside(self) -> bool:
        """Whether the value is back inside the limit; between the two nothing is decided."""
        return self.beyond <= 0.0


@dataclass(frozen=True, slots=True)
class Usual:
    """The trunk's turn in the earlier repetitions of an exercise, degrees as in ``Form``.

    ``back`` is the sign of a turn that takes the exercising shoulder backward.
    """

    back: int
    turns_deg: tuple[float, ...] = ()

    @classmethod
    def of(cls, movement: Movement, position: Position, side: Side) -> Usual | None:
        """Before the first repetition; None where a turn is not compared with what is usual."""
        facing = movement is Movement.EXTERNAL_ROTATION_0 and position is Position.STANDING
        return cls(-side.sign) if facing else None

    def after(self, form: Form, faults: tuple[FormFault, ...]) -> Usual:
        """Take a repetition; one that was at fault for its turn is not usual."""
        if form.trunk_turn_deg is None or FormFault.TURN in faults:
            return self
        return Usual(self.back, (*self.turns_deg, form.trunk_turn_deg))

    def excess(self, turn_deg: float) -> Excess | None:
        """How far a turn is past the usual one, None where none is known."""
        if not self.turns_deg:
            return None
        beyond = self.back * (turn_deg - median(self.turns_deg)) - OWN_TURN_DEG
        return Excess(FormFault.TURN, turn_deg, OWN_TURN_ERROR_DEG, beyond)


def faults_of(form: Form, limits: FormLimits, usual: Usual | None = None) -> tuple[FormFault, ...]:
    """Give the faults of a form, as of a repetition, whose medians hold what lasted in it."""
    return tuple(excess.fault for excess in excesses(form, limits, usual) if excess.past)


def excesses(form: Form, limits: FormLimits, usual: Usual | None = None) -> tuple[Excess, ...]:
    """Compare what is both asked and seen; the trunk, whose faults feign range, comes first."""
    lean_deg, turn_deg, drift_deg = form.trunk_lean_deg, form.trunk_turn_deg, form.elbow_drift_deg
    bend_deg, bend_error_deg = form.elbow_flexion_deg, form.elbow_flexion_error_deg
    least_deg, most_deg = limits.elbow_deg or (None, None)
    hike = form.shoulder_hike_ratio
    compared = (
        _over(FormFault.LEAN, lean_deg, form.trunk_lean_error_deg, limits.lean_deg),
        _turned(turn_deg, form.trunk_turn_error_deg, limits.turn_deg, usual),
        _over(FormFault.HIKE, hike, form.shoulder_hike_error_ratio, limits.hike_ratio, +1),
        _over(FormFault.BENT, bend_deg, bend_error_deg, most_deg, +1),
        _over(FormFault.STRAIGHT, bend_deg, bend_error_deg, least_deg, -1),
        _over(FormFault.DRIFT, drift_deg, form.elbow_drift_error_deg, limits.drift_deg),
    )
    return tuple(excess for excess in compared if excess is not None)


def _turned(
    turn_deg: float | None, error_deg: float | None, limit_deg: float | None, usual: Usual | None
) -> Excess | None:
    """Against the limit or against what is usual, whichever it is further past.

    Where the shoulder that goes backward feigns range, a turn the other way costs range: no fault.
    """
    if usual is None or turn_deg is None:
        return _over(FormFault.TURN, turn_deg, error_deg, limit_deg)
    plain = _over(FormFault.TURN, usual.back * turn_deg, error_deg, limit_deg, +1)
    own = usual.excess(turn_deg)
    if plain is None:
        return None
    plain = replace(plain, value=turn_deg)
    return plain if own is None else max(plain, own, key=lambda excess: excess.certainty)


def _over(
    fault: FormFault, value: float | None, error: float | None, limit: float | None, way: int = 0
) -> Excess | None:
    """``way`` +1: over the limit is too far, -1: under it, 0: over it to either side."""
    if value is None or error is None or limit is None:
        return None
    beyond = way * (value - limit) if way else abs(value) - limit
    return Excess(fault, value, error, beyond)

"""How wrong a reading may be: the half width of its 95 % interval.

The errors are bias of points, bodies and placements, not noise, so they do not shrink with time.
The widths come from tuning people each measured with constants fitted without them (95th
percentiles 7.4, 5.2, 5.4 degrees in flexion, extension, abduction; 13.2 in rotation), widened for
the handful of people they rest on. docs/measurement.md has the table, with people that nothing
was tuned on beside it.
"""

from __future__ import annotations

from coach.domain.movement import Movement

HALF_WIDTH_DEG = {
    Movement.FLEXION: 8.0,
    Movement.EXTENSION: 8.0,
    Movement.ABDUCTION: 7.0,
    Movement.EXTERNAL_ROTATION_0: 15.0,
}
UNSET_DEG = 5.0
"""Widening of a rotation whose trunk turn was never set with the forearm pointing ahead."""
SQUARE_ON_DEG = 20.0
WIDER_PER_DEG = 0.4
"""Widening per degree of turn beyond 20. Seen at an angle, an arm 10 degrees off its plane of
movement errs by up to 4.7 degrees at 20 and 11.0 at 35 (closed form, camera far away)."""


def error_deg(movement: Movement, angle_deg: float, turned_deg: float) -> float:
    """Give the half width for a reading, the trunk turned from its view by ``turned_deg``."""
    widening = WIDER_PER_DEG * max(0.0, abs(turned_deg) - SQUARE_ON_DEG)
    if movement is Movement.EXTERNAL_ROTATION_0:
        # Every degree of keypoint error weighs 1 / cos of the rotation (closed form).
        widening += 0.1 * max(0.0, angle_deg - 45.0)
    return HALF_WIDTH_DEG[movement] + widening

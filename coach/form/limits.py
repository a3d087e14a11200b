"""What is asked of the body where nothing else was prescribed, and only where it can be seen.

Set on tuning people of ``tests/bench``, natural and with one compensation done on purpose; figures
stand in ``docs/measurement.md``. A fault that a view cannot tell from nothing is not asked there:

- the turn only in outward rotation standing and facing the camera, where it feigns range: from the
  side people who do not turn read as much as some who turn by 15 degrees; with the arm raised to
  the side a turn of 15 was read as 1, sitting one of 12 as 3. Even there it is told for certain
  only against the person's own repetitions (``faults.Usual``);
- the elbow only in extension: in flexion straight elbows read up to 22 and elbows bent to 31 read
  23, in abduction the reading carries none, and in rotation one straightened by 20 reads like one
  that is bent as asked;
- the upper arm's drift only there too, where its outline is seen: elsewhere a drift of 20 degrees
  was read as 1 to 4;
- the rise of the shoulder only there as well: what goes with a raised arm differs by more between
  people than a rise of a tenth of the trunk.
"""

from __future__ import annotations

from coach.domain.form import NO_LIMITS, FormLimits
from coach.domain.movement import Movement, Position, View, needed_view

LEAN_DEG = 6.0
"""Upright people who do not lean on purpose read up to 5.5 degrees."""
TURN_DEG = 5.0
"""Facing the camera in rotation people who do not turn on purpose read up to 5.4 degrees; half of
the error of 12 goes on top."""
DRIFT_DEG = 4.0
"""Elbows that stay at the side read up to 5.3 degrees, those that leave it by 15 from 9.5 on; half
of the error of 7 goes on top."""
HIKE_RATIO = 0.016
"""Shoulders that stay down read up to 3.1 % of the trunk's length, those that rise by 8 % from 4.0
on; half of the error of 4 goes on top."""
STRAIGHT_DEG = 11.5
"""Straight elbows read up to 13 degrees, bent to 26 they read 21 and more; half of the error of 15
goes on top of this."""
HYPEREXTENDED_DEG = -30.0
"""No elbow is asked to be bent: the least there is (``FormLimits``)."""


def default_limits(movement: Movement, position: Position, view: View | None = None) -> FormLimits:
    """Give the limits in a view, the best one if none is named; ``Fault`` where none measures."""
    view = needed_view(movement, position) if view is None else view
    if position is Position.DOORWAY:
        # The trunk's turn is the exercise, and its lean cannot be told from it.
        return NO_LIMITS
    facing = movement is Movement.EXTERNAL_ROTATION_0 and position is Position.STANDING
    straight = movement is Movement.EXTENSION and not position.lying
    return FormLimits(
        lean_deg=None if view is View.FOOT else LEAN_DEG,
        turn_deg=TURN_DEG if facing else None,
        hike_ratio=HIKE_RATIO if facing else None,
        elbow_deg=(HYPEREXTENDED_DEG, STRAIGHT_DEG) if straight else None,
        drift_deg=DRIFT_DEG if facing else None,
    )

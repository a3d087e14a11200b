"""Every way to measure, and the range through which its arm is taken in these tests."""

from __future__ import annotations

import numpy as np

from coach.domain.movement import VIEWS, Movement, Position, Side, View
from coach.domain.pose import Pose
from coach.goniometry import Recording, Task, read_recording
from tests.goniometry.stick_body import (
    MAN,
    NATURAL,
    Array,
    Build,
    Marks,
    Seen,
    Way,
    raised,
    recording,
)

WAYS = [
    (movement, position, view) for (movement, position), views in VIEWS.items() for view in views
]
USUAL_MARKS = Marks.drawn(np.random.default_rng(0), spread=0.0)

# Ends of the movement: rest, and the largest value read.
RANGE: dict[Movement, tuple[float, float]] = {
    Movement.FLEXION: (3.0, 165.0),
    Movement.EXTENSION: (2.0, 55.0),
    Movement.ABDUCTION: (5.0, 150.0),
    Movement.EXTERNAL_ROTATION_0: (-20.0, 50.0),
    Movement.EXTERNAL_ROTATION_90: (0.0, 85.0),
    Movement.HORIZONTAL_ADDUCTION: (20.0, 115.0),
    Movement.HAND_BEHIND_BACK: (1.05, 0.45),
}
DOORWAY_RANGE = (0.0, 45.0)


def end_of(movement: Movement, position: Position, share: float) -> tuple[float, float]:
    """Rest and a value at a share of the range."""
    low, high = DOORWAY_RANGE if position is Position.DOORWAY else RANGE[movement]
    return low, low + share * (high - low)


def seen_from(view: View, movement: Movement, **more: object) -> Seen:
    """A camera that is raised where the arm goes overhead."""
    overhead = movement in (Movement.FLEXION, Movement.ABDUCTION)
    return Seen(view, **{"lift_m": 0.2 if overhead else 0.0, **more})  # type: ignore[arg-type]


def taken(
    movement: Movement,
    values: Array,
    side: Side,
    seen: Seen,
    position: Position = Position.STANDING,
    *,
    way: Way = NATURAL,
    build: Build = MAN,
    marks: Marks = USUAL_MARKS,
    jitter_px: float = 0.0,
    rate_hz: float = 10.0,
) -> list[tuple[float, Pose | None]]:
    """A recording; in a doorway the trunk turns away from the arm by the value."""
    ways: Way | list[Way] = way
    if position is Position.DOORWAY:
        ways = [Way(turn_left_deg=side.sign * float(v)) for v in values]
    return recording(
        movement, values, side, seen, rate_hz=rate_hz, jitter_px=jitter_px, ways=ways,
        position=position, build=build, marks=marks,
    )  # fmt: skip


def read(
    poses: list[tuple[float, Pose | None]],
    movement: Movement,
    side: Side,
    view: View,
    position: Position = Position.STANDING,
) -> Recording:
    return read_recording(poses, Task(movement, side, view, position))


__all__ = ["RANGE", "USUAL_MARKS", "WAYS", "end_of", "raised", "read", "seen_from", "taken"]

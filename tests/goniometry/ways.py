"""Every way to measure, and the range through which its arm is taken in these tests."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from coach.domain.movement import VIEWS, Movement, Position, Side, View
from coach.domain.pose import Pose
from coach.goniometry import Recording, Task, read_recording
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import LOG_LENGTHS
from coach.goniometry.sight import Sight
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
DISTINCT = [way for way in WAYS if way[1] is not Position.SITTING]
"""Sitting, thighs and shanks alone are elsewhere, and they are not measured."""
USUAL_MARKS = Marks.drawn(np.random.default_rng(0), spread=0.0)

RANGE: dict[Movement, tuple[float, float]] = {
    Movement.FLEXION: (0.0, 170.0),
    Movement.EXTENSION: (0.0, 60.0),
    Movement.ABDUCTION: (0.0, 170.0),
    Movement.EXTERNAL_ROTATION_0: (-30.0, 60.0),
    Movement.EXTERNAL_ROTATION_90: (-20.0, 90.0),
    Movement.HORIZONTAL_ADDUCTION: (0.0, 115.0),
    Movement.HAND_BEHIND_BACK: (1.05, 0.4),
}
"""Rest and the other end of each movement, in its unit."""
FROM_THE_FRONT = (-30.0, 45.0)
"""Of rotation at the side; beyond, the forearm points so far out that its length alone decides
(``test_goniometer`` has what that means)."""
DOORWAY_RANGE = (0.0, 45.0)


def end_of(movement: Movement, position: Position, share: float) -> tuple[float, float]:
    """Rest and a value at a share of the range."""
    low, high = RANGE[movement]
    if movement is Movement.EXTERNAL_ROTATION_0 and position is not Position.SUPINE:
        low, high = DOORWAY_RANGE if position is Position.DOORWAY else FROM_THE_FRONT
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
    poses: Sequence[tuple[float, Pose | None]],
    movement: Movement,
    side: Side,
    view: View,
    position: Position = Position.STANDING,
) -> Recording:
    return read_recording(poses, Task(movement, side, view, position))


def evidence_of(poses: Sequence[tuple[float, Pose | None]], task: Task) -> Evidence:
    """What the poses say; all must be seen."""
    sights = [Sight.of(pose, task.side) for _, pose in poses if pose is not None]
    return Evidence.of(sights, task.camera(sights[0]))


def usual_build() -> Build:
    """Somebody with the lengths that the fit expects before it has seen anything."""
    shoulder, hip, upper_arm, forearm = np.exp(LOG_LENGTHS) * MAN.trunk
    return Build(MAN.trunk, shoulder, hip, upper_arm, forearm)


__all__ = [
    "DISTINCT",
    "RANGE",
    "USUAL_MARKS",
    "WAYS",
    "end_of",
    "evidence_of",
    "raised",
    "read",
    "seen_from",
    "taken",
    "usual_build",
]

"""From poses to readings, one frame after the other."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from coach.domain.movement import Movement, Side, View
from coach.domain.pose import Pose
from coach.domain.reading import Doubt, Form, Reading
from coach.goniometry.gates import doubt_of
from coach.goniometry.planar import picture_angle_deg, toward_sign
from coach.goniometry.sight import Sight


@dataclass(frozen=True, slots=True)
class Goniometer:
    """Measures one movement of one shoulder; immutable, knows what earlier frames taught it."""

    movement: Movement
    side: Side
    view: View


def begin(movement: Movement, side: Side, view: View) -> Goniometer:
    """Before the first pose of an exercise."""
    return Goniometer(movement, side, view)


def advance(goniometer: Goniometer, time_s: float, pose: Pose | None) -> tuple[Goniometer, Reading]:
    """Measure one frame; ``pose`` is None where nobody was seen."""
    if pose is None:
        return goniometer, Reading(time_s, None, None, Doubt.NOBODY)
    sight = Sight.of(pose, goniometer.side)
    doubt = doubt_of(sight, goniometer.movement, goniometer.view)
    if doubt is not None:
        return goniometer, Reading(time_s, None, None, doubt)
    toward = toward_sign(sight, goniometer.movement, goniometer.view)
    up = sight.shoulders_px - sight.hips_px
    arm = sight.near.elbow_px - sight.near.shoulder_px
    angle = picture_angle_deg(arm, up, toward)
    return goniometer, Reading(time_s, angle, 10.0, None, Form())


def read_sequence(
    poses: Iterable[tuple[float, Pose | None]], movement: Movement, side: Side, view: View
) -> tuple[Reading, ...]:
    """Measure a whole recording of (stamp in seconds, pose)."""
    readings = []
    state = begin(movement, side, view)
    for time_s, pose in poses:
        state, reading = advance(state, time_s, pose)
        readings.append(reading)
    return tuple(readings)

"""From poses to readings, one frame after the other."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Pose
from coach.domain.reading import Calibration, Doubt, Form, Reading
from coach.goniometry.camera import Pinhole
from coach.goniometry.gates import doubt_of
from coach.goniometry.interval import UNSET_DEG, error_deg
from coach.goniometry.memory import NO_SAMPLES, Level
from coach.goniometry.planar import elevation_in_picture_deg
from coach.goniometry.rotation import NOTHING_KNOWN, Rotation, rotation_deg
from coach.goniometry.sight import Sight

START_S = 2.0
"""Seconds of usable frames that set the trunk's lean and turn to zero."""


@dataclass(frozen=True, slots=True)
class Goniometer:
    """Measures one movement of one shoulder; immutable, knows what earlier frames taught it.

    ``complete`` is set once a whole recording has been seen: then nothing more is learned.
    ``calibration`` is what keeping still at the start taught, None until that is settled.
    """

    movement: Movement
    side: Side
    view: View
    position: Position = Position.STANDING
    field_of_view_deg: float | None = None
    rotation: Rotation = NOTHING_KNOWN
    tilt_deg: Level = NO_SAMPLES
    yaw_deg: Level = NO_SAMPLES
    started_s: float | None = None
    complete: bool = False
    calibration: Calibration | None = None


def begin(
    movement: Movement,
    side: Side,
    view: View,
    position: Position,
    field_of_view_deg: float | None = None,
) -> Goniometer:
    """Before the first pose of an exercise; the field of view is that of the longer side."""
    return Goniometer(movement, side, view, position, field_of_view_deg)


def advance(state: Goniometer, time_s: float, pose: Pose | None) -> tuple[Goniometer, Reading]:
    """Measure one frame; ``pose`` is None where nobody was seen."""
    if pose is None:
        return state, Reading(time_s, None, None, Doubt.NOBODY)
    sight = Sight.of(pose, state.side)
    doubt = doubt_of(sight, state.movement, state.view, state.position)
    if doubt is not None:
        return state, Reading(time_s, None, None, doubt)
    camera = Pinhole.of(pose.size_px, state.field_of_view_deg)
    state = _learned(state, time_s, sight, camera)
    rotating = state.movement is Movement.EXTERNAL_ROTATION_0
    if rotating:
        angle = rotation_deg(sight, state.rotation, camera)
    else:
        angle = elevation_in_picture_deg(sight, state.movement, state.view)
    error = error_deg(state.movement, angle, sight.turned_from_deg(state.view))
    if rotating and state.rotation.offset_deg.median is None:
        error += UNSET_DEG
    return state, Reading(time_s, angle, error, None, _form(state, sight))


def read_sequence(
    poses: Sequence[tuple[float, Pose | None]],
    movement: Movement,
    side: Side,
    view: View,
    position: Position,
) -> tuple[Reading, ...]:
    """Measure a whole recording of (stamp in seconds, pose).

    It is gone through twice: what the first time taught of the body holds from the first frame
    of the second.
    """
    state = begin(movement, side, view, position)
    for time_s, pose in poses:
        state, _ = advance(state, time_s, pose)
    state = replace(state, complete=True)
    return tuple(advance(state, time_s, pose)[1] for time_s, pose in poses)


def _learned(state: Goniometer, time_s: float, sight: Sight, camera: Pinhole) -> Goniometer:
    if state.complete:
        return state
    rotation = state.rotation
    if state.movement is Movement.EXTERNAL_ROTATION_0:
        rotation = rotation.seen(time_s, sight, camera)
    started_s = time_s if state.started_s is None else state.started_s
    tilt, yaw = state.tilt_deg, state.yaw_deg
    if time_s - started_s <= START_S:
        tilt = tilt.seen(time_s, sight.tilt_deg)
        yaw = yaw.seen(time_s, sight.turned_from_deg(state.view))
    return replace(state, rotation=rotation, tilt_deg=tilt, yaw_deg=yaw, started_s=started_s)


def _form(state: Goniometer, sight: Sight) -> Form:
    tilt, yaw = state.tilt_deg.median, state.yaw_deg.median
    return Form(
        trunk_lean_deg=None if tilt is None else _wrapped(sight.tilt_deg - tilt),
        trunk_turn_deg=None if yaw is None else _wrapped(sight.turned_from_deg(state.view) - yaw),
        elbow_flexion_deg=sight.elbow_flexion_deg,
    )


def _wrapped(angle_deg: float) -> float:
    return (angle_deg + 180.0) % 360.0 - 180.0

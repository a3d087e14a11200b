"""A whole recording at once: the body is learned from all of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from coach.domain.movement import Movement, Position
from coach.domain.pose import Pose
from coach.domain.reading import Calibration, Doubt, Reading
from coach.goniometry.angles import Vector
from coach.goniometry.calibration import OPENING_S, Stillness
from coach.goniometry.doorway import Doorway
from coach.goniometry.evidence import Evidence
from coach.goniometry.fitting import learn, place
from coach.goniometry.form import Start
from coach.goniometry.reach import HiddenHand
from coach.goniometry.sight import Sight
from coach.goniometry.task import Task
from coach.goniometry.values import followed, readings_of

RECORDED_FRAMES = 256
"""From how many frames, spread over the recording, the body is learned."""
AT_ONCE = 512


@dataclass(frozen=True, slots=True)
class Recording:
    """Readings of a whole recording, and what its start taught."""

    readings: tuple[Reading, ...]
    calibration: Calibration


def read_recording(poses: Sequence[tuple[float, Pose | None]], task: Task) -> Recording:
    """Measure a whole recording of (stamp in seconds, pose): the body is learned from all of it.

    What one pose model's points taught is not true of another's: each model's frames are a
    recording of their own, and the calibration is that of the one which told most.
    """
    models = dict.fromkeys(pose.model for _, pose in poses if pose is not None)
    if len(models) < 2:
        return _read_one_model(poses, task)
    readings = [Reading(time_s, None, None, Doubt.NOBODY) for time_s, _ in poses]
    parts = []
    for model in models:
        rows = [i for i, (_, pose) in enumerate(poses) if pose is not None and pose.model is model]
        parts.append(_read_one_model([poses[row] for row in rows], task))
        for row, reading in zip(rows, parts[-1].readings, strict=True):
            readings[row] = reading
    told = max(parts, key=lambda part: sum(reading.usable for reading in part.readings))
    return Recording(tuple(readings), told.calibration)


def _read_one_model(poses: Sequence[tuple[float, Pose | None]], task: Task) -> Recording:
    readings = [Reading(time_s, None, None, Doubt.NOBODY) for time_s, _ in poses]
    stillness = Stillness(task.view)
    rows: list[int] = []
    sights: list[Sight] = []
    for row, (time_s, pose) in enumerate(poses):
        if pose is None:
            continue
        sight = Sight.of(pose, task.side)
        doubt = task.doubt_of(sight)
        if doubt is not None:
            readings[row] = Reading(time_s, None, None, doubt)
            continue
        stillness = stillness.seen(time_s, sight)
        rows.append(row)
        sights.append(sight)
    if not rows:
        return Recording(tuple(readings), stillness.ended)
    expectation = task.expectation
    times = np.array([poses[row][0] for row in rows])
    spread = np.unique(np.linspace(0, len(rows) - 1, RECORDED_FRAMES).round().astype(int))
    camera = task.camera(sights[0])
    resting = _at_rest(times, stillness.ended)
    some_sights = [sights[i] for i in spread]
    body = learn(Evidence.of(some_sights, camera, resting[spread]), expectation).body
    first_sights = [sights[i] for i in np.flatnonzero(resting)[:AT_ONCE]]
    at_rest = place(Evidence.of(first_sights, camera), expectation, body).stance
    start = Start.of(at_rest, first_sights)
    doorway = Doorway.of(sights, first_sights) if task.position is Position.DOORWAY else None
    hand = HiddenHand() if task.movement is Movement.HAND_BEHIND_BACK else None
    for first in range(0, len(rows), AT_ONCE):
        some = slice(first, first + AT_ONCE)
        evidence = Evidence.of(sights[some], camera)
        fit = place(evidence, expectation, body)
        stamps = times[some]
        seen = readings_of(task, expectation, stamps, sights[some], evidence, fit, start, doorway)
        seen, hand = followed(seen, sights[some], hand)
        for row, reading in zip(rows[some], seen, strict=True):
            readings[row] = reading
    return Recording(tuple(readings), stillness.ended)


def _at_rest(times_s: Vector, calibration: Calibration) -> NDArray[np.bool_]:
    """Which frames (N,) show the body at rest: the quiet two seconds, or else the first one."""
    since_s, until_s = float(times_s[0]), float(times_s[0]) + OPENING_S
    if calibration.state == "still":
        since_s = since_s if calibration.start_s is None else calibration.start_s
        until_s = until_s if calibration.end_s is None else calibration.end_s
    inside: NDArray[np.bool_] = (times_s >= since_s) & (times_s <= until_s)
    return inside

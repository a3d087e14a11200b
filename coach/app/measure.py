"""``coach measure``: the angles and holds of one clip or landmark table."""

from __future__ import annotations

import sys
from dataclasses import dataclass
from pathlib import Path

from coach import counting, goniometry
from coach.app.estimator import open_estimator
from coach.app.measure_summary import summary
from coach.app.points_of import poses_of_table
from coach.app.progress_bar import ProgressBar
from coach.capture.sources import open_source
from coach.capture.video_file import VideoFile
from coach.counting.excursions import excursions
from coach.documents.measurement import (
    Measurement,
    measured_excursion,
    measured_frame,
    measured_repetition,
    measurement_json,
)
from coach.documents.rounding import rounded
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Position, Side, View, needed_view
from coach.domain.pose import Pose, PoseModel
from coach.ports import FrameSource
from coach.pose.bundle import sha256_of
from coach.review.wording import listed
from coach.storage.atomic import write_bytes
from coach.texts import translate

Sequence = tuple[tuple[float, Pose | None], ...]
"""Stamp in seconds and pose of every frame."""


@dataclass(frozen=True, slots=True)
class Tracked:
    """A person followed through a clip; ``interrupted`` by Ctrl-C before its end.

    ``whose`` says which pose model found the points, None where that is not known.
    """

    poses: Sequence
    whose: str | None
    interrupted: bool = False


def track(
    source: FrameSource,
    field_of_view_deg: float | None = None,
    model: PoseModel = PoseModel.FULL,
) -> Tracked:
    """Find the person in every frame."""
    estimator = open_estimator(field_of_view_deg, model)
    poses: list[tuple[float, Pose | None]] = []
    interrupted = False
    try:
        with ProgressBar(translate("measure", "measuring"), source.frame_count) as bar:
            for frame in source:
                poses.append((frame.time_s, estimator.estimate(frame)))
                bar.advance()
    except KeyboardInterrupt:
        interrupted = True
    finally:
        estimator.close()
    for note in estimator.notes:
        print(f"coach: {note}", file=sys.stderr)
    whose = translate("measure", "Points and errors are of the pose model {model}.")
    return Tracked(tuple(poses), whose.format(model=model), interrupted)


def from_clip(
    clip: Path, field_of_view_deg: float | None = None, model: PoseModel = PoseModel.FULL
) -> Tracked:
    """Follow the person through a video file, and print what is to be known about the file."""
    source = open_source(clip)
    try:
        return track(source, field_of_view_deg, model)
    finally:
        source.close()
        for note in source.notes if isinstance(source, VideoFile) else ():
            print(f"coach: {note}", file=sys.stderr)


def from_table(path: Path, stated: PoseModel | None = None) -> Tracked:
    """Take the poses of a landmark table; ``stated`` is the pose model that a person names."""
    table = poses_of_table(path, stated)
    found = [m for m in PoseModel if any(pose.model is m for pose in table.poses)]
    whose = translate(
        "measure", "Points and errors are of the pose model {model}, as {who} says."
    ).format(model=listed(found), who="session.json" if table.named else "--pose-model")
    poses = tuple((pose.time_s, pose) for pose in table.poses)
    return Tracked(poses, whose if found else None)


def measure(
    tracked: Tracked,
    movement: Movement,
    side: Side,
    view: View,
    position: Position,
    field_of_view_deg: float | None = None,
) -> Measurement:
    """Measure a tracked clip, holds counted as in a clip without a plan."""
    task = goniometry.Task(movement, side, view, position, field_of_view_deg)
    recording = goniometry.read_recording(tracked.poses, task)
    counted = counting.task_of(movement)
    repetitions = counting.count(recording.readings, counted)
    swings = excursions(recording.readings, counted, repetitions)
    return Measurement(
        movement=movement,
        side=side,
        view=view,
        position=position,
        definitions=goniometry.DEFINITIONS,
        model_sha256=_model_sha256(tracked, recording),
        calibration=rounded(recording.calibration),
        frames=tuple(measured_frame(reading, movement.unit) for reading in recording.readings),
        repetitions=tuple(measured_repetition(repetition) for repetition in repetitions),
        excursions=tuple(measured_excursion(each, movement.unit) for each in swings),
    )


def _model_sha256(tracked: Tracked, recording: goniometry.Recording) -> str | None:
    """Give the hash of the one pose model whose points gave the values, None without one."""
    seen = {pose.model for _, pose in tracked.poses if pose is not None}
    if len(seen) > 1:
        rows = zip(tracked.poses, recording.readings, strict=True)
        seen = {pose.model for (_, pose), r in rows if pose is not None and r.usable}
    model = next(iter(seen)) if len(seen) == 1 else None
    return None if model is None else sha256_of(model)


@dataclass(frozen=True, slots=True)
class Asked:
    """What is to be measured.

    ``view`` None stands for the best one; ``position`` None for standing, or lying on the back
    where the camera stands at the foot end. The field of view is the camera's horizontal one, None
    where it is not known. ``pose_model`` follows the person through a clip, None for the full one,
    or is the one that found the points of a table, None where that is not known.
    """

    movement: Movement
    side: Side
    view: View | None = None
    position: Position | None = None
    field_of_view_deg: float | None = None
    pose_model: PoseModel | None = None


def run_measure(clip: Path, asked: Asked, json: Path | None = None) -> int:
    """Measure a clip, print its holds and write the table where one is asked for."""
    position = asked.position
    if position is None:
        position = Position.SUPINE if asked.view is View.FOOT else Position.STANDING
    best = needed_view(asked.movement, position)
    if clip.suffix.lower() == ".csv":
        tracked = from_table(clip, asked.pose_model)
    else:
        model = asked.pose_model or PoseModel.FULL
        tracked = from_clip(clip, asked.field_of_view_deg, model)
    if any(pose is not None and pose.people > 1 for _, pose in tracked.poses):
        told = translate(
            "measure",
            "coach: more than one person is in view; the one nearest to the camera at the start"
            " is followed.",
        )
        print(told, file=sys.stderr)
    view = asked.view or best
    measurement = measure(
        tracked, asked.movement, asked.side, view, position, asked.field_of_view_deg
    )
    if json is not None:
        write_bytes(json, measurement_json(measurement))
    if tracked.interrupted:
        print(summary(measurement, tracked.whose))
        raise KeyboardInterrupt
    if all(pose is None for _, pose in tracked.poses):
        raise Fault(
            translate(
                "faults",
                "Nobody is seen in '{clip}'; record it again with the whole upper body "
                "in the picture.",
            ).format(clip=clip)
        )
    print(summary(measurement, tracked.whose))
    return 0

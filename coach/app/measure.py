"""``coach measure``: the angles and holds of one clip or landmark table."""

from __future__ import annotations

import sys
from collections import Counter
from dataclasses import dataclass
from pathlib import Path

from coach import counting, goniometry
from coach.app.estimator import open_estimator
from coach.app.progress_bar import ProgressBar
from coach.capture.sources import open_source
from coach.capture.video_file import VideoFile
from coach.counting.excursions import excursions
from coach.cues.wording import doubt_sentence
from coach.documents.landmarks import MAX_LANDMARKS_BYTES, read_landmarks
from coach.documents.measurement import (
    MeasuredRepetition,
    Measurement,
    measured_excursion,
    measured_frame,
    measured_repetition,
    measurement_json,
)
from coach.documents.rounding import rounded
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Position, Side, Unit, View, needed_view
from coach.domain.pose import Pose
from coach.domain.reading import Doubt
from coach.ports import FrameSource
from coach.review.levels import reach_band
from coach.storage.atomic import write_bytes
from coach.storage.session_file import read_bounded
from coach.texts import translate

Sequence = tuple[tuple[float, Pose | None], ...]
"""Stamp in seconds and pose of every frame."""


@dataclass(frozen=True, slots=True)
class Tracked:
    """A person followed through a clip; ``interrupted`` by Ctrl-C before its end.

    ``model_sha256`` is None where the points come from a table.
    """

    poses: Sequence
    model_sha256: str | None
    interrupted: bool = False


def track(source: FrameSource, field_of_view_deg: float | None = None) -> Tracked:
    """Find the person in every frame."""
    estimator = open_estimator(field_of_view_deg)
    poses: list[tuple[float, Pose | None]] = []
    interrupted = False
    try:
        with ProgressBar("measuring", source.frame_count) as bar:
            for frame in source:
                poses.append((frame.time_s, estimator.estimate(frame)))
                bar.advance()
    except KeyboardInterrupt:
        interrupted = True
    finally:
        estimator.close()
    for note in estimator.notes:
        print(f"coach: {note}", file=sys.stderr)
    return Tracked(tuple(poses), estimator.model_sha256, interrupted)


def from_clip(clip: Path, field_of_view_deg: float | None = None) -> Tracked:
    """Follow the person through a video file, and print what is to be known about the file."""
    source = open_source(clip)
    try:
        return track(source, field_of_view_deg)
    finally:
        source.close()
        for note in source.notes if isinstance(source, VideoFile) else ():
            print(f"coach: {note}", file=sys.stderr)


def from_table(path: Path) -> Tracked:
    """Take the poses of a landmark table, as session files hold it."""
    table = read_landmarks(read_bounded(path, MAX_LANDMARKS_BYTES, "landmark table"), path.name)
    return Tracked(tuple((pose.time_s, pose) for pose in table.poses()), None)


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
        model_sha256=tracked.model_sha256,
        calibration=rounded(recording.calibration),
        frames=tuple(measured_frame(reading, movement.unit) for reading in recording.readings),
        repetitions=tuple(measured_repetition(repetition) for repetition in repetitions),
        excursions=tuple(measured_excursion(each, movement.unit) for each in swings),
    )


@dataclass(frozen=True, slots=True)
class Asked:
    """What is to be measured.

    ``view`` None stands for the best one; ``position`` None for standing, or lying on the back
    where the camera stands at the foot end. The field of view is the camera's horizontal one, None
    where it is not known.
    """

    movement: Movement
    side: Side
    view: View | None = None
    position: Position | None = None
    field_of_view_deg: float | None = None


def run_measure(clip: Path, asked: Asked, json: Path | None = None) -> int:
    """Measure a clip, print its holds and write the table where one is asked for."""
    position = asked.position
    if position is None:
        position = Position.SUPINE if asked.view is View.FOOT else Position.STANDING
    best = needed_view(asked.movement, position)
    if clip.suffix.lower() == ".csv":
        tracked = from_table(clip)
    else:
        tracked = from_clip(clip, asked.field_of_view_deg)
    if any(pose is not None and pose.people > 1 for _, pose in tracked.poses):
        print(
            "coach: more than one person is in view; the one nearest to the camera at the start"
            " is followed.",
            file=sys.stderr,
        )
    view = asked.view or best
    measurement = measure(
        tracked, asked.movement, asked.side, view, position, asked.field_of_view_deg
    )
    if json is not None:
        write_bytes(json, measurement_json(measurement))
    if tracked.interrupted:
        print(summary(measurement))
        raise KeyboardInterrupt
    if all(pose is None for _, pose in tracked.poses):
        raise Fault(
            translate(
                "faults",
                "Nobody is seen in '{clip}'; record it again with the whole upper body "
                "in the picture.",
            ).format(clip=clip)
        )
    print(summary(measurement))
    return 0


def summary(measurement: Measurement) -> str:
    """Tell in lines what was measured and what was refused."""
    frames = measurement.frames
    usable = sum(frame.usable for frame in frames)
    lines = [
        f"{measurement.movement}, {measurement.side} arm, {measurement.position}, seen from the"
        f" {measurement.view}: {usable} of {len(frames)} frames usable"
    ]
    lines += [
        f"  hold {number}: {rep.start_s:.1f} to {rep.end_s:.1f} s, held {rep.held_s:.1f} s,"
        f" {_value(rep)} ({rep.ended_because})"
        for number, rep in enumerate(measurement.repetitions, 1)
    ]
    if not measurement.repetitions:
        lines.append("  no hold of two seconds or more")
    held = sum(each.held_s > 0 for each in measurement.excursions)
    lines.append(f"  {len(measurement.excursions)} repetitions there and back, {held} of them held")
    doubts = Counter[Doubt](frame.doubt for frame in frames if frame.doubt is not None)
    lines += [
        f"  refused {count} frames: {_refusal(doubt, measurement)}"
        for doubt, count in doubts.most_common()
    ]
    lines.append(_MEANING[measurement.movement.unit])
    return "\n".join(lines)


_MEANING = {
    Unit.DEGREES: "Angles are of the arm against the trunk, shoulder blade included, each with the"
    " half width of its 95 % interval.",
    Unit.RATIO: "Heights are of the wrist, 0 % at C7 and 100 % at the posterior superior iliac"
    " spines, each with the half width of its 95 % interval; the levels are those of the thumb's"
    " tip.",
}


def _refusal(doubt: Doubt, measurement: Measurement) -> str:
    return doubt_sentence(doubt, measurement.side, measurement.position).spoken


def _value(rep: MeasuredRepetition) -> str:
    if isinstance(rep.value_deg, float) and isinstance(rep.error_deg, float):
        return f"{rep.value_deg:.0f} ± {rep.error_deg:.0f} degrees"
    if isinstance(rep.value_ratio, float) and isinstance(rep.error_ratio, float):
        band = reach_band(rep.value_ratio, rep.error_ratio)
        return f"{100 * rep.value_ratio:.0f} ± {100 * rep.error_ratio:.0f} %, {band.words}"
    raise ValueError(rep)

"""People who exercise, recorded by others (Vakanski et al. 2018, Data 3:2), through the program.

Joint centres of a depth camera go through the converter into a landmark table, and that through
what ``coach measure TABLE.csv`` does. Depth camera and laboratory were not started together, so
they are compared by repetition.
"""

from __future__ import annotations

import json
import tempfile
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.signal import savgol_filter
from scipy.stats import spearmanr

from coach.app.measure import from_table, measure
from coach.documents.joints import (
    Axis,
    JointTable,
    Stand,
    Viewpoint,
    landmark_table,
    level_viewpoint,
)
from coach.documents.landmarks import write_landmarks
from coach.documents.measurement import Measurement
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Landmark, PoseModel
from coach.goniometry.angles import movement_angle_deg, trunk_axes, unit

Floats = NDArray[np.float64]

MOVEMENTS = {
    "m07": Movement.ABDUCTION,
    "m08": Movement.EXTENSION,
    "m09": Movement.EXTERNAL_ROTATION_90,
    "m10": Movement.ABDUCTION,
}
STILL = "m02"
"""Stepping over a hurdle, the arms low."""
SIDE_CAMERA = ("m08", "m09")
"""Movements that are not seen from where the recordings were made: a nominal camera stands beside
the measured shoulder."""
JOINTS = {
    "Head": Landmark.NOSE,
    "LUpperArm": Landmark.LEFT_SHOULDER,
    "LForearm": Landmark.LEFT_ELBOW,
    "LHand": Landmark.LEFT_WRIST,
    "LUpperLeg": Landmark.LEFT_HIP,
    "LLowerLeg": Landmark.LEFT_KNEE,
    "LFoot": Landmark.LEFT_ANKLE,
    "RUpperArm": Landmark.RIGHT_SHOULDER,
    "RForearm": Landmark.RIGHT_ELBOW,
    "RHand": Landmark.RIGHT_WRIST,
    "RUpperLeg": Landmark.RIGHT_HIP,
    "RLowerLeg": Landmark.RIGHT_KNEE,
    "RFoot": Landmark.RIGHT_ANKLE,
}
CAMERA = Viewpoint(np.diag([1.0, -1.0, -1.0]), np.array([0.0, 1.0, 0.0]), 525.0)
"""Where the recordings' own picture was drawn from: one metre up, y up, z toward the camera."""
LEAST_USABLE = 0.9


@dataclass(frozen=True)
class Recording:
    """One person, one movement, ten times; ``truth`` is its entry in ``truth.json``."""

    path: Path
    truth: dict[str, Any]

    @cached_property
    def arrays(self) -> dict[str, NDArray[Any]]:
        with np.load(self.path) as held:
            return dict(held)

    @property
    def name(self) -> str:
        return self.path.stem.removesuffix("_cor")

    @property
    def kind(self) -> str:
        return str(self.truth["movement"])

    @property
    def side(self) -> Side:
        return {"L": Side.LEFT, "R": Side.RIGHT}[self.truth["arm"]]

    @property
    def cuts_s(self) -> Floats:
        """Where the ten repetitions were joined, (11,)."""
        last = len(self.arrays["t_kinect"]) - 1
        return self.arrays["t_kinect"][np.minimum(self.arrays["kinect_cut"], last)]

    def joints(self) -> JointTable:
        names = self.arrays["kinect_joint"].tolist()
        order = sorted(JOINTS, key=lambda name: JOINTS[name])
        columns = [names.index(name) for name in order]
        points_m = self.arrays["kinect_xyz_cm"][:, columns].astype(np.float64) / 100
        return JointTable(tuple(JOINTS[name] for name in order), self.arrays["t_kinect"], points_m)

    def own_peaks_deg(self) -> Floats:
        """The movement's angle by its definition, on the joint centres as they are, (10,)."""
        joints = self.joints()
        at = {each: joints.points_m[:, i] for i, each in enumerate(joints.landmarks)}
        axes = trunk_axes(
            at[Landmark.LEFT_SHOULDER],
            at[Landmark.RIGHT_SHOULDER],
            at[Landmark.LEFT_HIP],
            at[Landmark.RIGHT_HIP],
        )
        shoulder, elbow, wrist = (
            at[Landmark[f"{self.side.name}_{joint}"]] for joint in ("SHOULDER", "ELBOW", "WRIST")
        )
        movement = MOVEMENTS[self.kind]
        upper_arm, forearm = unit(elbow - shoulder), unit(wrist - elbow)
        level = movement_angle_deg(movement, self.side, axes, upper_arm, forearm)
        smooth = savgol_filter(level, 11, 3)
        return np.array([smooth[a:b].max() for a, b in pairwise(self.arrays["kinect_cut"])])

    def laboratory_peaks_s(self) -> Floats:
        """When each repetition was at its top for the laboratory, seconds, (10,)."""
        time_s, cuts = self.arrays["t_vicon"], self.arrays["vicon_cut"]
        x, y, z = np.radians(self.arrays[f"pig_shoulder_{self.truth['arm']}_deg"]).T
        # Outward is negative in the laboratory's rotation.
        level = -z if self.kind == "m09" else np.arccos(np.cos(x) * np.cos(y))
        seen = np.isfinite(level)
        smooth = savgol_filter(np.interp(time_s, time_s[seen], level[seen]), 51, 3)
        return time_s[[a + int(np.argmax(smooth[a:b])) for a, b in pairwise(cuts)]]


def recordings(folder: Path) -> list[Recording]:
    entries = json.loads((folder / "truth.json").read_text("utf-8"))
    by_name = {Path(entry["file"]).name: entry for entry in entries}
    return [Recording(path, by_name[path.name]) for path in sorted(folder.glob("m*.npz"))]


def measured(
    joints: JointTable, viewpoint: Viewpoint, movement: Movement, side: Side, view: View
) -> Measurement:
    """Through the file, as ``coach measure TABLE.csv`` reads it."""
    with tempfile.TemporaryDirectory() as place:
        table = Path(place) / "landmarks.csv"
        table.write_bytes(write_landmarks(landmark_table(joints, viewpoint)))
        return measure(from_table(table, PoseModel.FULL), movement, side, view, Position.STANDING)


def beside(joints: JointTable, side: Side) -> Viewpoint:
    """A nominal camera at the measured shoulder."""
    stand = Stand.LEFT if side is Side.LEFT else Stand.RIGHT
    return level_viewpoint(joints, Axis.Y, stand, 2.5, 63.0)


def check_motion(folder: Path) -> Iterator[tuple[str, bool]]:
    """Give a line with figures, and whether all is as it must be, for each recording."""
    for recording in recordings(folder):
        yield projected(recording)
        if recording.kind == STILL:
            yield still(recording)
        elif recording.kind in MOVEMENTS:
            if recording.kind in SIDE_CAMERA:
                yield as_recorded(recording)
            yield counted(recording)


def projected(recording: Recording) -> tuple[str, bool]:
    """The converter's picture and metres against those that came with the recording."""
    table = landmark_table(recording.joints(), CAMERA)
    rows = list(table.landmarks)
    pixels = recording.arrays["mp_image_norm"][:, rows] * [640, 480] - table.image_px
    metres = recording.arrays["mp_world_m"][:, rows] - table.world_m
    off_px, off_m = float(np.nanmax(np.abs(pixels))), float(np.nanmax(np.abs(metres)))
    text = f"{recording.name} converted: at most {off_px:.4f} px and {off_m:.6f} m off"
    return text, off_px < 0.01 and off_m < 1e-5


def still(recording: Recording) -> tuple[str, bool]:
    """Nothing may be counted, whatever is looked for."""
    joints, counts = recording.joints(), []
    for side in Side:
        for movement, view in (
            (Movement.ABDUCTION, View.FRONT),
            (Movement.EXTERNAL_ROTATION_0, View.FRONT),
            (Movement.FLEXION, View.SIDE),
            (Movement.EXTENSION, View.SIDE),
        ):
            viewpoint = CAMERA if view is View.FRONT else beside(joints, side)
            found = measured(joints, viewpoint, movement, side, view)
            usable = sum(frame.usable for frame in found.frames) / len(found.frames)
            counts.append((len(found.excursions) + len(found.repetitions), movement, side, usable))
    total = sum(count for count, *_ in counts)
    seen = ", ".join(f"{m} {s} {n} ({u:.0%} usable)" for n, m, s, u in counts)
    return f"{recording.name} arms low: {total} counted; {seen}", total == 0


def as_recorded(recording: Recording) -> tuple[str, bool]:
    """From the front or half turned, where this movement is seen badly: nothing invented."""
    movement = MOVEMENTS[recording.kind]
    found = measured(recording.joints(), CAMERA, movement, recording.side, View.SIDE)
    refused = sum(not frame.usable for frame in found.frames) / len(found.frames)
    asked = int(recording.truth["reps_by_dataset_authors"])
    text = (
        f"{recording.name} {movement} as recorded: {refused:.0%} refused,"
        f" {len(found.excursions)} of {asked} counted"
    )
    return text, len(found.excursions) <= asked


def counted(recording: Recording) -> tuple[str, bool]:
    """The ten repetitions: number, side, place in time, order and height."""
    movement, joints, side = MOVEMENTS[recording.kind], recording.joints(), recording.side
    at_side = recording.kind in SIDE_CAMERA
    view = View.SIDE if at_side else View.FRONT
    found = measured(joints, beside(joints, side) if at_side else CAMERA, movement, side, view)
    other = measured(
        joints, beside(joints, side.other) if at_side else CAMERA, movement, side.other, view
    )
    usable = sum(frame.usable for frame in found.frames) / len(found.frames)
    asked = int(recording.truth["reps_by_dataset_authors"])
    tops_s = np.array([each.peak_s for each in found.excursions])
    text = (
        f"{recording.name} {movement} {side} from the {view}: {usable:.0%} usable,"
        f" {len(tops_s)} of {asked} counted, other arm {len(other.excursions)},"
    )
    if len(tops_s) != asked:
        return text, False
    cuts_s = recording.cuts_s
    inside = int(np.sum((tops_s >= cuts_s[:-1]) & (tops_s <= cuts_s[1:])))
    apart_s = np.median(np.abs(np.diff(tops_s) - np.diff(recording.laboratory_peaks_s())))
    text += f" {inside} within their own repetition, pace {apart_s:.2f} s from the laboratory's,"
    heights, good = _heights(recording, found)
    right = inside == asked and usable >= LEAST_USABLE and not other.excursions
    return text + heights, right and good


def _heights(recording: Recording, found: Measurement) -> tuple[str, bool]:
    """Values against the definition on the recording's own joint centres, and the laboratory's.

    The laboratory's elevation has another definition; it is printed, and what must agree is the
    rest.
    """
    values = np.array([each.value_deg for each in found.excursions], dtype=np.float64)
    errors = np.array([each.error_deg for each in found.excursions], dtype=np.float64)
    seen = np.isfinite(values)
    if not seen.any():
        return " no turning point seen", False
    error = float(np.mean(errors[seen]))
    named = "ext_rot_peak_deg" if recording.kind == "m09" else "peak_elev_vicon_pig_deg"
    laboratory = np.array(recording.truth[named])
    off, beside_own = (values - laboratory)[seen], (values - recording.own_peaks_deg())[seen]
    text = (
        f" {beside_own.mean():+.1f} SD {beside_own.std():.1f} from the joint centres (interval"
        f" {error:.0f}), {off.mean():+.1f} SD {off.std():.1f} from the laboratory,"
        f" order {float(spearmanr(values[seen], laboratory[seen]).statistic):+.2f}"
    )
    return text, bool(abs(beside_own.mean()) <= error)

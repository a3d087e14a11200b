"""Joint centres of other people's recordings, to a landmark table as a camera would give it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import StrEnum

import numpy as np

from coach.documents.cells import TIME_LIMITS_S, check_ranges, check_times
from coach.documents.landmarks import MAX_LANDMARK_ROWS, MAX_LANDMARKS_BYTES, MAX_M
from coach.documents.tables import Floats, LandmarkTable
from coach.documents.text_table import split_table
from coach.domain.fault import Fault
from coach.domain.pose import Landmark
from coach.texts import translate

TRUNK = (Landmark.LEFT_SHOULDER, Landmark.RIGHT_SHOULDER, Landmark.LEFT_HIP, Landmark.RIGHT_HIP)
AXES = ("x_m", "y_m", "z_m")
PICTURE_PX = (640, 480)
LEAST_BREADTH_M = 0.2
"""Sum of the breadths of shoulders and hips below which they give no direction; grown-ups have
0.5 (common practice)."""
NEAREST_M = 0.05
"""A point nearer to the camera than this, or behind it, has no place in the picture."""

_COLUMNS = {f"{each.name.lower()}_{axis}": each for each in Landmark for axis in AXES}


class Axis(StrEnum):
    """A direction in the frame of a recording."""

    X = "x"
    Y = "y"
    Z = "z"
    MINUS_X = "minus-x"
    MINUS_Y = "minus-y"
    MINUS_Z = "minus-z"

    @property
    def vector(self) -> Floats:
        """Unit vector (3,)."""
        vector = np.zeros(3)
        vector["xyz".index(self[-1])] = -1.0 if self.startswith("minus") else 1.0
        return vector


class Stand(StrEnum):
    """On which side of the person the camera stands, left and right being the person's own."""

    FRONT = "front"
    BACK = "back"
    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True, slots=True, eq=False)
class JointTable:
    """Joint centres, n rows in time order, k points of the person's own left and right.

    ``time_s`` (n,) seconds; ``points_m`` (n, k, 3) metres in a right-handed frame that stands
    still, NaN where a point is not known.
    """

    landmarks: tuple[Landmark, ...]
    time_s: Floats = field(repr=False)
    points_m: Floats = field(repr=False)


@dataclass(frozen=True, slots=True, eq=False)
class Viewpoint:
    """A nominal pinhole camera with square pixels, its principal point mid-picture.

    ``axes`` (3, 3): rows are picture right, picture down and away from the camera, unit vectors in
    the frame of the joints, right-handed in this order. ``eye_m`` (3,) is where the camera stands.
    """

    axes: Floats = field(repr=False)
    eye_m: Floats = field(repr=False)
    focal_px: float
    size_px: tuple[int, int] = PICTURE_PX


def level_viewpoint(
    table: JointTable, up: Axis, stand: Stand, distance_m: float, field_of_view_deg: float
) -> Viewpoint:
    """Put a level camera at ``distance_m`` from the middle of the trunk, on the side ``stand``.

    ``up`` points to the ceiling. Where the person faces is taken from shoulders and hips, the
    median over the recording; ``field_of_view_deg`` is horizontal.
    """
    left_shoulder, right_shoulder, left_hip, right_hip = (
        table.points_m[:, table.landmarks.index(each)] for each in TRUNK
    )
    across = np.nanmedian(right_shoulder + right_hip - left_shoulder - left_hip, axis=0)
    middle = np.nanmedian(left_shoulder + right_shoulder + left_hip + right_hip, axis=0) / 4
    across -= (across @ up.vector) * up.vector
    if not np.linalg.norm(across) > LEAST_BREADTH_M:
        raise Fault(
            translate(
                "faults",
                "Shoulders and hips lie above each other where {up} points up; name the"
                " axis that points to the ceiling.",
            ).format(up=up)
        )
    right = across / np.linalg.norm(across)
    front = np.cross(up.vector, right)
    toward = {Stand.FRONT: front, Stand.BACK: -front, Stand.RIGHT: right, Stand.LEFT: -right}
    down, away = -up.vector, -toward[stand]
    focal_px = PICTURE_PX[0] / 2 / math.tan(math.radians(field_of_view_deg) / 2)
    axes = np.stack([np.cross(down, away), down, away])
    return Viewpoint(axes, middle - distance_m * away, focal_px)


def landmark_table(joints: JointTable, viewpoint: Viewpoint) -> LandmarkTable:
    """Give the joints as a camera would see them, with nothing in the way.

    Pixels are those of the projected centres; metres are in the camera's axes with the origin
    midway between the hips. What is not known stays so; visibility is not known at all.
    """
    camera_m: Floats = (joints.points_m - viewpoint.eye_m) @ viewpoint.axes.T
    left, right = (joints.landmarks.index(each) for each in TRUNK[2:])
    middle_m = (camera_m[:, left] + camera_m[:, right]) / 2
    depth_m = np.where(camera_m[..., 2:] > NEAREST_M, camera_m[..., 2:], np.nan)
    centre_px = np.array(viewpoint.size_px) / 2
    rows = len(joints.time_s)
    return LandmarkTable(
        landmarks=joints.landmarks,
        time_s=joints.time_s,
        size_px=np.tile(np.array(viewpoint.size_px, dtype=np.int64), (rows, 1)),
        people=np.ones(rows, dtype=np.int64),
        brightness=np.full(rows, np.nan),
        image_px=centre_px + viewpoint.focal_px * camera_m[..., :2] / depth_m,
        world_m=camera_m - middle_m[:, None],
        visibility=np.full(camera_m.shape[:2], np.nan),
    )


def read_joints(data: bytes, where: str) -> JointTable:
    """Read a table of joint centres; ``where`` names it in a ``Fault``."""
    text = split_table(
        data,
        where,
        max_bytes=MAX_LANDMARKS_BYTES,
        max_rows=MAX_LANDMARK_ROWS,
        max_columns=1 + len(_COLUMNS),
    )
    header = text.header
    landmarks = _points(header, where)
    grid, _ = text.cells(where)
    if not len(grid):
        raise Fault(
            translate(
                "faults",
                "{where} has no rows; check that this is the right file.",
            ).format(where=where)
        )
    limits = [TIME_LIMITS_S if name == "time_s" else (-MAX_M, MAX_M) for name in header]
    check_ranges(grid, limits, header, where)
    columns = dict(zip(header, grid.T, strict=True))
    check_times(columns["time_s"], where)
    points = np.array(
        [[columns[f"{each.name.lower()}_{axis}"] for axis in AXES] for each in landmarks]
    )
    table = JointTable(landmarks, columns["time_s"], points.transpose(2, 0, 1))
    for each in TRUNK:
        if np.isnan(table.points_m[:, landmarks.index(each)]).any(axis=1).all():
            raise Fault(
                translate(
                    "faults",
                    "{where} never knows {lower}; the trunk must be in it.",
                ).format(where=where, lower=each.name.lower())
            )
    return table


def _points(header: Sequence[str], where: str) -> tuple[Landmark, ...]:
    """Check the names of the columns; give the points they hold."""
    if len(set(header)) != len(header):
        raise Fault(
            translate(
                "faults",
                "{where} names a column twice; check that this is the right file.",
            ).format(where=where)
        )
    for name in header:
        if name != "time_s" and name not in _COLUMNS:
            raise Fault(
                translate(
                    "faults",
                    "{where} has the unknown column {name!a}; columns are time_s and "
                    "left_shoulder_x_m, left_shoulder_y_m and so on.",
                ).format(where=where, name=name[:60])
            )
    found = tuple(sorted({_COLUMNS[name] for name in header if name != "time_s"}))
    needed = ["time_s"]
    needed += [f"{each.name.lower()}_{axis}" for each in sorted({*found, *TRUNK}) for axis in AXES]
    for name in needed:
        if name not in header:
            raise Fault(
                translate(
                    "faults",
                    "{where} has no column {name}; add it, empty where it is not known.",
                ).format(where=where, name=name)
            )
    return found

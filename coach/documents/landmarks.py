"""``landmarks.csv``: the body's points, one row a frame, to draw and to measure again."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np

from coach.documents.card_columns import CARD_COLUMNS, card_cells, card_limits
from coach.documents.cells import TIME_LIMITS_S, check_ranges, check_times, number
from coach.documents.tables import STORED_LANDMARKS, Floats, LandmarkTable
from coach.documents.text_table import split_table
from coach.domain.fault import Fault
from coach.domain.pose import Landmark, Pose
from coach.texts import translate

FRAME_COLUMNS = ("time_s", "picture_width_px", "picture_height_px", "people", "brightness")
POINT_COLUMNS = ("x_px", "y_px", "x_m", "y_m", "z_m", "visibility")

MAX_LANDMARKS_BYTES = 64_000_000
MAX_LANDMARK_ROWS = 200_000
MAX_CELLS = 7_500_000
"""A session's columns, the card's among them, for two hours at ten rows a second."""

MAX_PX = 100_000.0
MAX_M = 100.0
"""Coordinates further out are not known."""

_SCALES = np.array([10.0, 10.0, 1000.0, 1000.0, 1000.0, 100.0])
_LIMITS = np.array([MAX_PX, MAX_PX, MAX_M, MAX_M, MAX_M, 1.0])

_REQUIRED = FRAME_COLUMNS[:3]
_SIZE_LIMITS_PX = 1.0, 20_000.0
_FRAME_LIMITS = dict(
    zip(
        FRAME_COLUMNS,
        (TIME_LIMITS_S, _SIZE_LIMITS_PX, _SIZE_LIMITS_PX, (0.0, 1_000.0), (0.0, 1.0)),
        strict=True,
    )
)


def point_columns(landmark: Landmark) -> tuple[str, ...]:
    """Give the names of one landmark's six columns."""
    return tuple(f"{landmark.name.lower()}_{column}" for column in POINT_COLUMNS)


_COLUMN_LANDMARKS = {name: each for each in Landmark for name in point_columns(each)}


def landmark_header(
    landmarks: tuple[Landmark, ...] = STORED_LANDMARKS, *, card: bool = False
) -> str:
    """Give the first line, line end included, with the columns of the card or without."""
    names = [*FRAME_COLUMNS, *(name for each in landmarks for name in point_columns(each))]
    names += CARD_COLUMNS if card else ()
    return ",".join(names) + "\n"


def landmark_row(
    time_s: float, pose: Pose, landmarks: tuple[Landmark, ...] = STORED_LANDMARKS
) -> str:
    """Give one row, line end included; ``time_s`` counts from the session's start.

    The cells of a card stand at its end where the pose has one.
    """
    width_px, height_px = pose.size_px
    cells = (
        number(time_s, 3),
        str(width_px),
        str(height_px),
        str(pose.people),
        number(pose.brightness, 2),
    )
    rows = list(landmarks)
    points = np.column_stack((pose.image_px, pose.world_m, pose.visibility))[rows]
    points[np.abs(points) > _LIMITS] = np.nan
    # Adding zero turns the minus zero that rounding leaves into a plain one.
    rounded = np.rint(points * _SCALES) / _SCALES + 0.0
    text = ",%.1f,%.1f,%.3f,%.3f,%.3f,%.2f" * len(rows) % tuple(rounded.ravel().tolist())
    card = "" if pose.card is None else "," + ",".join(card_cells(pose.card))
    return ",".join(cells) + text.replace("nan", "") + card + "\n"


def landmark_text(rows: str, landmarks: tuple[Landmark, ...] = STORED_LANDMARKS) -> str:
    """Give the whole table of rows by ``landmark_row``, those without a card filled up."""
    with_card = landmark_header(landmarks, card=True)
    commas = with_card.count(",")
    lines = rows.splitlines()
    if all(line.count(",") < commas for line in lines):
        return landmark_header(landmarks) + rows
    empty = "," * len(CARD_COLUMNS)
    filled = (line if line.count(",") == commas else line + empty for line in lines)
    return with_card + "".join(f"{line}\n" for line in filled)


def write_landmarks(table: LandmarkTable) -> bytes:
    """Give the whole table as CSV, for a converter of other recordings as for a session."""
    rows = [landmark_row(pose.time_s, pose, table.landmarks) for pose in table.poses()]
    return landmark_text("".join(rows), table.landmarks).encode()


def read_landmarks(data: bytes, where: str) -> LandmarkTable:
    """Read a landmark table; ``where`` names it in a ``Fault``.

    Columns may stand in any order. ``time_s`` and the picture's size must be there; a column that
    is not there is not known throughout, one of an unknown name is refused.
    """
    table = split_table(
        data,
        where,
        max_bytes=MAX_LANDMARKS_BYTES,
        max_rows=MAX_LANDMARK_ROWS,
        max_columns=len(FRAME_COLUMNS) + len(Landmark) * len(POINT_COLUMNS) + len(CARD_COLUMNS),
        max_cells=MAX_CELLS,
    )
    header = table.header
    landmarks = _known_landmarks(header, where)
    grid, _ = table.cells(where)
    check_ranges(grid, [_limits(name) for name in header], header, where)
    place = {name: column for column, name in enumerate(header)}
    time_s, width_px, height_px = (grid[:, place[name]] for name in _REQUIRED)
    check_times(time_s, where)
    for name in _REQUIRED[1:]:
        if np.isnan(grid[:, place[name]]).any():
            raise Fault(
                translate(
                    "faults",
                    "{where} has rows without {name}; ask for the file again.",
                ).format(where=where, name=name)
            )
    names = [name for landmark in landmarks for name in point_columns(landmark)]
    points = _taken(grid, place, names).reshape(len(grid), len(landmarks), len(POINT_COLUMNS))
    people, brightness = _taken(grid, place, FRAME_COLUMNS[3:]).T
    return LandmarkTable(
        landmarks=landmarks,
        time_s=time_s,
        size_px=np.stack([width_px, height_px], axis=1).astype(np.int64),
        people=np.where(np.isnan(people), 1, people).astype(np.int64),
        brightness=brightness,
        image_px=points[:, :, 0:2],
        world_m=points[:, :, 2:5],
        visibility=points[:, :, 5],
        card=_taken(grid, place, CARD_COLUMNS),
    )


def _taken(grid: Floats, place: Mapping[str, int], names: Sequence[str]) -> Floats:
    """Give the columns of these names, (rows, names); not known where there is none."""
    columns = [place.get(name, -1) for name in names]
    if columns and columns[0] >= 0 and columns == list(range(columns[0], columns[-1] + 1)):
        return grid[:, columns[0] : columns[-1] + 1]
    taken = grid[:, columns]
    taken[:, [column < 0 for column in columns]] = np.nan
    return taken


def _limits(name: str) -> tuple[float, float]:
    """Give the least and the most that a column may hold."""
    if name in _FRAME_LIMITS:
        return _FRAME_LIMITS[name]
    if name in CARD_COLUMNS:
        return card_limits(name)
    if name.endswith("_visibility"):
        return 0.0, 1.0
    most = MAX_M if name.endswith("_m") else MAX_PX
    return -most, most


def _known_landmarks(header: Sequence[str], where: str) -> tuple[Landmark, ...]:
    if len(set(header)) != len(header):
        raise Fault(
            translate(
                "faults",
                "{where} names a column twice; check that this is the right file.",
            ).format(where=where)
        )
    for name in _REQUIRED:
        if name not in header:
            raise Fault(
                translate(
                    "faults",
                    "{where} has no column {name}; check that this is the right file.",
                ).format(where=where, name=name)
            )
    found: set[Landmark] = set()
    for name in header:
        if name in FRAME_COLUMNS or name in CARD_COLUMNS:
            continue
        landmark = _COLUMN_LANDMARKS.get(name)
        if landmark is None:
            raise Fault(
                translate(
                    "faults",
                    "{where} has the unknown column {name!a}; check that this is the right file.",
                ).format(where=where, name=name[:60])
            )
        found.add(landmark)
    return tuple(sorted(found))

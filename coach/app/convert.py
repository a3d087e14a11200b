"""``coach convert``: joint centres that others recorded, to a table ``coach measure`` reads."""

from __future__ import annotations

from pathlib import Path

from coach.documents.joints import Axis, Stand, landmark_table, level_viewpoint, read_joints
from coach.documents.landmarks import MAX_LANDMARKS_BYTES, write_landmarks
from coach.domain.fault import Fault
from coach.domain.text import shown_text
from coach.goniometry.camera import DEFAULT_FIELD_OF_VIEW_DEG
from coach.storage.atomic import write_bytes
from coach.storage.session_file import read_bounded
from coach.texts import translate

DISTANCE_M = 2.5
"""Where people are asked to stand."""
DISTANCES_M = (1.0, 10.0)


def run_convert(joints: Path, out: Path, up: Axis, stand: Stand, distance_m: float) -> int:
    """Write the table and say what to do with it."""
    low, high = DISTANCES_M
    if not low <= distance_m <= high:
        raise Fault(
            translate(
                "faults",
                "A camera at {distance_m:g} m is none of this program; name {low:g} to {high:g} m.",
            ).format(distance_m=distance_m, low=low, high=high)
        )
    data = read_bounded(joints, MAX_LANDMARKS_BYTES, "table of joint centres")
    table = read_joints(data, joints.name)
    viewpoint = level_viewpoint(table, up, stand, distance_m, DEFAULT_FIELD_OF_VIEW_DEG)
    write_bytes(out, write_landmarks(landmark_table(table, viewpoint)))
    told = _seen_from(stand).format(count=len(table.time_s), distance_m=distance_m, out=out)
    print(shown_text(told))
    told = translate(
        "convert",
        "No pose model found them, so their error is not known: 'coach measure --pose-model full'"
        " measures them with the errors of the full one.",
    )
    print(told)
    return 0


def _seen_from(stand: Stand) -> str:
    match stand:
        case Stand.FRONT:
            return translate(
                "convert",
                "{count} frames as a camera {distance_m:g} m in front of the person sees them are"
                " in '{out}'.",
            )
        case Stand.BACK:
            return translate(
                "convert",
                "{count} frames as a camera {distance_m:g} m behind the person sees them are in"
                " '{out}'.",
            )
        case Stand.LEFT:
            return translate(
                "convert",
                "{count} frames as a camera {distance_m:g} m to the person's left sees them are in"
                " '{out}'.",
            )
        case Stand.RIGHT:
            return translate(
                "convert",
                "{count} frames as a camera {distance_m:g} m to the person's right sees them are in"
                " '{out}'.",
            )

"""Checks against recordings and figures of others, read from a folder.

    python -m tests.bench.reality FOLDER

None of them is part of the program or of its tests. Every part is a function, every check a printed
line that begins with ``pass`` or ``FAIL``. The exit code is 0 if all passed, 1 if one did not, 2 if
the folder or one of its parts is not there:

- ``motion``: people who exercise (``tests/bench/reality_motion.py``), ``*.npz`` and ``truth.json``
- ``rotations/yxy_cases.json``: rotations of the humerus in the thorax, angles and matrix
- ``one_euro/groundTruth.csv``: a signal and what the filter's authors' code makes of it
- ``photo/pose.jpg``, ``photo/golden_pose_jpg.json``: a photograph and its 33 landmarks
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import cv2
import numpy as np
from scipy.spatial.transform import Rotation

from coach.domain.frame import Frame
from coach.domain.movement import Side
from coach.goniometry import OneEuro
from coach.goniometry.angles import elevation_deg, external_rotation_deg
from coach.pose.estimator import open_estimator
from tests.bench.reality_motion import check_motion

ONE_EURO_TOLERANCE = 1e-4
PHOTO_TOLERANCE_PX = 11.0
SQUARE = 1e-6

Line = tuple[str, bool]


def check_rotations(folder: Path) -> Iterator[Line]:
    """Rotations Y-X'-Y'' against SciPy, and through ``coach.goniometry.angles`` and back.

    The upper arm is the humerus' -Y and the forearm of a bent elbow its X, of a right arm.
    """
    cases = json.loads((folder / "yxy_cases.json").read_text("utf-8"))
    angles = np.array([[case[name] for name in ("plane", "elevation", "axial")] for case in cases])
    matrices = np.array([case["matrix_humerus_in_thorax"] for case in cases])
    scipys = Rotation.from_euler("YXY", angles, degrees=True).as_matrix()
    worst = float(np.abs(scipys - matrices).max())
    yield f"rotations: {len(cases)} matrices, at most {worst:.1e} from SciPy's", worst < 1e-8

    x, y, z = np.eye(3)
    arm, forearm = -scipys[:, :, 1], scipys[:, :, 0]
    plane, raised = np.radians(angles[:, :2]).T
    down, out = np.cos(raised), -np.cos(plane) * np.sin(raised)
    ahead = -np.sin(plane) * np.sin(raised)
    worst, undefined = 0.0, 0
    for toward, share in ((x, ahead), (z, out)):
        # An arm square to the plane of an elevation has none in it.
        known = np.hypot(share, down) > SQUARE
        undefined += int(np.sum(~known))
        off = elevation_deg(arm, toward, y) - np.degrees(np.arctan2(share, down))
        worst = max(worst, float(np.abs(_turn(off[known])).max()))
    text = f"rotations: elevations at most {worst:.1e} degrees from the closed form"
    yield f"{text}, {undefined} of {2 * len(cases)} undefined", worst < 1e-9

    forward = x - (arm @ x)[:, None] * arm
    length = np.linalg.norm(forward, axis=1)
    known = length > SQUARE
    rotated = external_rotation_deg(arm, forearm, x, Side.RIGHT)[known]
    forward = forward[known] / length[known, None]
    turned = Rotation.from_rotvec(np.radians(rotated)[:, None] * arm[known]).apply(forward)
    worst = float(np.degrees(np.linalg.norm(turned - forearm[known], axis=1)).max())
    text = f"rotations: a forearm turned by its angle at most {worst:.1e} degrees from its place"
    yield f"{text}, {int(np.sum(~known))} of {len(cases)} undefined", worst < 1e-9


def _turn(angle_deg: np.ndarray) -> np.ndarray:
    return (angle_deg + 180.0) % 360.0 - 180.0


def check_one_euro(folder: Path) -> Iterator[Line]:
    """The filter for the shown angle against rows of its authors' own code."""
    rows = np.loadtxt(folder / "groundTruth.csv", delimiter=",", skiprows=1)
    state, worst = OneEuro(min_cutoff_hz=1.0, beta=0.1, speed_cutoff_hz=1.0), 0.0
    for time_s, _, noisy, filtered in rows:
        state = state.advance(time_s, noisy)
        assert state.value is not None
        worst = max(worst, abs(state.value - filtered))
    yield f"one euro: {len(rows)} rows, at most {worst:.1e} off", worst <= ONE_EURO_TOLERANCE


def check_photo(folder: Path) -> Iterator[Line]:
    """The pose model on a photograph against the landmarks its makers published for it."""
    golden = json.loads((folder / "golden_pose_jpg.json").read_text("utf-8"))
    picture = cv2.cvtColor(cv2.imread(str(folder / "pose.jpg")), cv2.COLOR_BGR2RGB)
    estimator = open_estimator()
    try:
        pose = estimator.estimate(Frame(0, 0.0, picture))
    finally:
        estimator.close()
    if pose is None:
        yield "photograph: nobody found", False
        return
    off = np.linalg.norm(pose.image_px - np.array(golden["landmarks_px"]), axis=1)
    worst = float(off.max())
    text = f"photograph: 33 landmarks, {off.mean():.1f} px off on average, {worst:.1f} at most"
    yield text, worst <= PHOTO_TOLERANCE_PX


PARTS: dict[str, Callable[[Path], Iterator[Line]]] = {
    "motion": check_motion,
    "rotations": check_rotations,
    "one_euro": check_one_euro,
    "photo": check_photo,
}


def main(arguments: list[str]) -> int:
    if len(arguments) != 1 or not Path(arguments[0]).is_dir():
        named = f"'{arguments[0]}' is no folder" if len(arguments) == 1 else "no folder was named"
        print(f"reality: {named}; name one that holds {', '.join(PARTS)}.", file=sys.stderr)
        return 2
    code = 0
    for name, check in PARTS.items():
        folder = Path(arguments[0]) / name
        if not folder.is_dir():
            print(f"reality: '{folder}' is not there; nothing of it was checked.", file=sys.stderr)
            code = 2
            continue
        for text, right in check(folder):
            print(f"{'pass' if right else 'FAIL'}  {text}", flush=True)
            code = max(code, 0 if right else 1)
    return code


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

"""What the pose model sees of spoilt clips."""

from __future__ import annotations

import os
import re
from collections import deque
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from coach.app.estimator import open_estimator
from coach.capture.sources import open_source
from coach.domain.frame import Frame
from coach.domain.movement import Side
from coach.domain.pose import Pose
from tests.bench.spoiling import Clean, Picture
from tests.bench.spoiling_ways import WAYS, Way

SAMPLES = Path(__file__).parents[2] / "sample_videos"
STRANGER = SAMPLES / "everyday_no_holds.mp4"
KEPT = ("image_px", "world_m", "visibility", "people", "brightness", "another_person")
Array = NDArray[np.float64]
Sequence = list[tuple[float, Pose | None]]


@cache
def pictures_of(path: Path) -> tuple[Frame, ...]:
    """Read every sixth picture of a clip."""
    source = open_source(path)
    try:
        return tuple(frame for frame in source if frame.index % 6 == 0)
    finally:
        source.close()


def chosen(times_s: Array, way: Way, rng: np.random.Generator) -> set[int]:
    """Which pictures the camera takes."""
    out, due_s = set[int](), 0.0
    while due_s <= times_s[-1]:
        out.add(int(np.argmin(np.abs(times_s - due_s))))
        due_s += (rng.uniform(0.25, 1.75) if way.uneven else 1.0) / way.rate_hz
    return out


def windows(path: Path) -> Iterator[tuple[Frame, tuple[Picture, ...]]]:
    """Frames of a clip with the pictures around each."""
    source = open_source(path)
    kept: deque[Frame] = deque(maxlen=3)
    try:
        for frame in source:
            kept.append(frame)
            if len(kept) > 1:
                yield kept[-2], tuple(each.image_rgb for each in kept)
        yield kept[-1], tuple(each.image_rgb for each in kept)
    finally:
        source.close()


def watched(path: Path, truth: dict[str, Any], name: str, plainly: Sequence) -> Sequence:
    """Spoil a clip and let the pose model see it."""
    way, rng = WAYS[name], np.random.default_rng(7)
    side = Side(truth["side"])
    times_s = np.array([row["time_s"] for row in truth["frames"]])
    seen = [(time_s, pose.image_px) for time_s, pose in plainly if pose is not None]
    wanted = chosen(times_s, way, rng)
    k = int(side is Side.RIGHT)
    reach = np.zeros((1, 2))
    if seen:
        forearms = np.array([(px[13 + k] + px[15 + k]) / 2 for _, px in seen])
        aside = np.abs(forearms[:, 0] - [px[11 + k, 0] for _, px in seen])
        reach = forearms[[int(np.argmax(aside))]]
    strangers = pictures_of(STRANGER) if name == "second person" else ()
    estimator = open_estimator()
    out: Sequence = []
    try:
        for frame, around in windows(path):
            if frame.index not in wanted:
                continue
            picture = frame.image_rgb
            if seen:
                near = min(seen, key=lambda row: abs(row[0] - frame.time_s))[1]
                other = strangers[len(out) % len(strangers)].image_rgb if strangers else picture
                camera = truth["camera"]
                clean = Clean(picture, around, side, camera["fov_deg"], near, reach[0], other, rng)
                picture = way.spoil(clean)
            pose = estimator.estimate(Frame(frame.index, frame.time_s, picture))
            out.append((frame.time_s, pose))
    finally:
        estimator.close()
    return out


def poses_of(path: Path, truth: dict[str, Any], name: str, folder: Path | None = None) -> Sequence:
    """Give the poses of a spoilt clip, from ``folder`` where they are there."""
    plainly = [] if name == "plain" else poses_of(path, truth, "plain", folder)
    if folder is None:
        return watched(path, truth, name, plainly)
    file = folder / f"{path.stem}@{re.sub('[^a-z0-9-]+', '_', name.lower())}.npz"
    if not file.exists():
        poses = watched(path, truth, name, plainly)
        known = [pose for _, pose in poses if pose is not None]
        rows = {key: np.array([getattr(pose, key) for pose in known], float) for key in KEPT}
        rows["size_px"] = np.array(known[0].size_px if known else (0, 0))
        found = np.array([pose is not None for _, pose in poses])
        folder.mkdir(parents=True, exist_ok=True)
        part = file.with_suffix(f".{os.getpid()}.npz")
        np.savez_compressed(part, time_s=np.array([t for t, _ in poses]), found=found, **rows)
        part.rename(file)
    with np.load(file) as data:
        rows = {key: data[key] for key in data.files}
    out: Sequence = [(float(time_s), None) for time_s in rows["time_s"]]
    for k, row in enumerate(np.flatnonzero(rows["found"])):
        px, metric, visibility, people, bright, stranger = (rows[key][k] for key in KEPT)
        size_px = int(rows["size_px"][0]), int(rows["size_px"][1])
        time_s = out[row][0]
        out[row] = (
            time_s,
            Pose(
                time_s, size_px, px, metric, visibility, int(people), float(bright), bool(stranger)
            ),
        )
    return out

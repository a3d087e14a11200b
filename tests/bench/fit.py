"""Fit the goniometer's constants on tuning people: ``python -m tests.bench.fit FOLDER``.

Prints the rows of ``coach.goniometry.offsets.OFFSETS`` (ridge regression of the points' distance
from the true joint centres, every clip weighed alike) with what is left of it; and for every
movement, position and view the coefficients of ``coach.goniometry.interval.KNOWN`` by which the fit
reads too high (ridge regression), with the 95th percentile of what they leave on each person when
fitted without that person, from which the half widths are taken; then by how much right arms are
read too high and left ones too low, with its standard error between people seen doing it with both
(pictures also mirrored), and what is left where that is taken off too. Judging people have no
business here.
"""

from __future__ import annotations

import argparse
import math
from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from coach import goniometry
from coach.domain.movement import VIEWS, Movement, Side, Unit
from coach.domain.pose import PoseModel
from coach.goniometry.interval import bias_terms, uncorrected
from coach.goniometry.offsets import DIRECTIONS, OFFSETS, directions
from coach.goniometry.skeleton import Stance
from tests.bench.score import RATIO_SCALE, Array, load, poses_of, task_of, truth_of

RIDGE = 0.002
"""On every coefficient, for each clip; ten times more or less changes the third figure."""
GROSS = 0.25
"""Trunk lengths: a point so far off is misplaced, not shifted."""
EVERY = 3
BIAS_RIDGE = np.array([1.0, 2.0, 2.0, 1.0])
"""On constant, sine, cosine and arm: as if one or two clips more had no bias."""
FREE = OFFSETS != 0


def true_stance(data: Any, rows: Array) -> tuple[Stance, Array, int]:
    """Give stances, joint centres (N, 6, 3) in trunk lengths and the side's sign of some frames."""
    joints, axes = data["joints_camera_m"][rows], data["thorax_axes_camera"][rows]
    k = 1 if str(data["side"]) == Side.RIGHT else 0
    middle = joints[:, 8:10].mean(axis=1)
    trunk_m = np.linalg.norm(middle - joints[:, 6:8].mean(axis=1), axis=1)
    joints, middle = joints / trunk_m[:, None, None], middle / trunk_m[:, None]

    def direction(first: int, last: int) -> Array:
        along = joints[:, last] - joints[:, first]
        along /= np.linalg.norm(along, axis=1, keepdims=True)
        return np.einsum("nji,nj->ni", axes, along)

    stance = Stance(
        axes,
        middle[:, :2] / middle[:, 2:],
        middle[:, 2],
        np.zeros((len(rows), 3)),
        direction(k, 2 + k),
        direction(2 + k, 4 + k),
    )
    return stance, joints[:, [k, 1 - k, 6 + k, 7 - k, 2 + k, 4 + k]], 1 if k else -1


def shifts(data: Any) -> tuple[Array, Array]:
    """Give how far points lie from joints (N, 6, 2), and what shifts them (N, 6, K, 2)."""
    rows = np.flatnonzero(data["found"])[::EVERY]
    stance, joints, sign = true_stance(data, rows)
    k = 1 if sign > 0 else 0
    points = data["image_px"][rows][:, [11 + k, 12 - k, 23 + k, 24 - k, 13 + k, 15 + k]]
    width, height = data["size_px"]
    slopes = (points - np.array([width / 2, height / 2])) / data["intrinsics"][0, 0]
    true = joints[..., :2] / joints[..., 2:]
    off = (slopes - true) * joints[..., 2:]
    each = directions(stance, sign)
    seen = each[..., :2] - each[..., 2:] * true[:, :, None, :]
    good = (np.linalg.norm(off, axis=-1) < GROSS).all(axis=1)
    return off[good], seen[good]


def print_offsets(files: list[dict[str, Any]]) -> None:
    """Fit and print the table of offsets."""
    parts = [part for part in map(shifts, files) if len(part[0])]
    print("columns:", "; ".join(DIRECTIONS))
    for row in range(6):
        free = np.flatnonzero(FREE[row])
        normal, pull = np.eye(len(free)) * RIDGE * len(parts), np.zeros(len(free))
        for off, seen in parts:
            x = np.swapaxes(seen[:, row][:, free], 1, 2).reshape(-1, len(free))
            normal += x.T @ x * 2 / len(x)
            pull += x.T @ off[:, row].reshape(-1) * 2 / len(x)
        found = np.zeros(len(DIRECTIONS))
        found[free] = np.linalg.solve(normal, pull)
        left = [
            np.sqrt(np.mean((off[:, row] - np.einsum("k,nkd->nd", found, seen[:, row])) ** 2))
            for off, seen in parts
        ]
        print(f"    [{', '.join(f'{v:.3f}' for v in found)}],  # left {np.mean(left):.3f}")


@dataclass(frozen=True, slots=True)
class Clip:
    """What one clip's readings err by (N,) before any bias is taken off, and its terms (N, 4)."""

    person: str
    sign: int
    terms: Array
    off: Array


def clip_of(data: Any, task: goniometry.Task) -> Clip | None:
    """Measure one clip; None where nothing could be measured."""
    readings = goniometry.read_recording(poses_of(data), task).readings
    rows = [i for i, r in enumerate(readings) if r.value is not None]
    if not rows:
        return None
    key = task.movement, task.position, task.view
    model = PoseModel(str(data.get("model", PoseModel.FULL)))
    # What the fit gave before its bias was taken off.
    read = [float(readings[i].value or 0.0) for i in rows]
    value = np.array([uncorrected(*key, task.side, each, model=model) for each in read])
    terms = np.array([(*bias_terms(task.movement, v), task.side.sign) for v in value])
    return Clip(str(data["person"]), task.side.sign, terms, value - truth_of(data, task)[rows])


def print_biases(files: list[dict[str, Any]]) -> None:
    """Print the coefficients of ``BIAS`` and what is left, for every combination."""
    parts: dict[str, list[Clip]] = defaultdict(list)
    for data in files:
        task = task_of(data)
        if task.view not in VIEWS.get((task.movement, task.position), ()):
            continue
        clip = clip_of(data, task)
        if clip is not None:
            parts[" ".join((task.movement, task.position, task.view))].append(clip)
    for name, clips in sorted(parts.items()):
        scale = RATIO_SCALE if Movement(name.split()[0]).unit is Unit.RATIO else 1.0
        found = ", ".join(f"{v:.3g}" for v in _solve(clips, 3))
        raw = scale * np.abs(np.concatenate([clip.off for clip in clips]))
        size, parted = (scale * np.abs(left_of_each(clips, columns)) for columns in (3, 4))
        print(
            f"{name:40s} {len(clips):2d} clips: ({found}); MAE {raw.mean():.1f}, of a person left"
            f" out {size.mean():.1f}, p95 {np.percentile(size, 95):.1f}; {arms(clips, scale)},"
            f" with it MAE {parted.mean():.1f}, p95 {np.percentile(parted, 95):.1f}"
        )


def arms(clips: list[Clip], scale: float) -> str:
    """Tell by how much right arms are read too high and left ones too low, of the same people."""
    halves = []
    for person in {clip.person for clip in clips}:
        right, left = (
            [clip.off.mean() for clip in clips if (clip.person, clip.sign) == (person, sign)]
            for sign in (1, -1)
        )
        if right and left:
            halves.append(scale * (np.mean(right) - np.mean(left)) / 2)
    if len(halves) < 2:
        return "arms of too few people"
    error = np.std(halves, ddof=1) / math.sqrt(len(halves))
    return f"arm {np.mean(halves):+.2f} ± {error:.2f} ({len(halves)} people)"


def left_of_each(clips: list[Clip], columns: int) -> Array:
    """Give what the first ``columns`` terms leave of every clip when fitted without its person."""
    return np.concatenate(
        [
            clip.off
            - clip.terms[:, :columns]
            @ _solve([c for c in clips if c.person != clip.person], columns)
            for clip in clips
        ]
    )


def _solve(clips: list[Clip], columns: int) -> Array:
    """Give the ridge coefficients (columns,), every clip weighed alike."""
    normal, pull = np.diag(BIAS_RIDGE[:columns]), np.zeros(columns)
    for clip in clips:
        terms = clip.terms[:, :columns]
        normal = normal + terms.T @ terms / len(terms)
        pull = pull + terms.T @ clip.off / len(terms)
    solved: Array = np.linalg.solve(normal, pull)
    return solved


def main() -> None:
    """Read the folder and print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path, help="files of tuning people")
    folder: Path = parser.parse_args().folder
    files = [load(path) for path in sorted(folder.glob("*.npz")) if ".part" not in path.name]
    behind = [data for data in files if str(data["movement"]) == Movement.HAND_BEHIND_BACK]
    print_offsets([data for data in files if not any(data is each for each in behind)])
    print_biases(files)


if __name__ == "__main__":
    main()

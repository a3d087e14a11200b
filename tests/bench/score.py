"""Score the goniometer on benchmark files: ``python -m tests.bench.score FOLDER [FOLDER ...]``.

Prints one row per movement: mean absolute error, bias and 95th percentile of the error over usable
frames, beside the same for plain two-dimensional and plain metric landmarks; the share of usable
frames, of usable frames wrong by more than 10 degrees, and of truths inside the 95 % interval;
then holds found, missed and invented, and the error of their seconds and values.
"""

from __future__ import annotations

import argparse
import sys
from collections import defaultdict
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from coach import counting, goniometry
from coach.domain.movement import HANGING_DEG, Movement, Side, View
from coach.domain.pose import Pose
from coach.goniometry.angles import movement_angle_deg, trunk_axes, unit

Array = NDArray[np.float64]


@dataclass(slots=True)
class Tally:
    """What was seen of one movement."""

    errors: list[float] = field(default_factory=list)
    inside: list[bool] = field(default_factory=list)
    widths: list[float] = field(default_factory=list)
    plain: list[float] = field(default_factory=list)
    metric: list[float] = field(default_factory=list)
    frames: int = 0
    usable: int = 0
    true_holds: int = 0
    missed: int = 0
    invented: int = 0
    held: list[float] = field(default_factory=list)
    values: list[float] = field(default_factory=list)
    value_inside: list[bool] = field(default_factory=list)
    doubts: dict[str, int] = field(default_factory=lambda: defaultdict(int))


def poses_of(data: Any) -> list[tuple[float, Pose | None]]:
    """Give stamps and poses of a benchmark file."""
    width, height = (int(v) for v in data["size_px"])
    rows: list[tuple[float, Pose | None]] = []
    for i, time_s in enumerate(data["time_s"]):
        pose = Pose(
            float(time_s),
            (width, height),
            data["image_px"][i],
            data["world_m"][i],
            data["visibility"][i],
        )
        rows.append((float(time_s), pose if data["found"][i] else None))
    return rows


def plain_angles(data: Any, movement: Movement, side: Side) -> tuple[Array, Array]:
    """Give the angle (N,) from landmarks as they are: in the picture, and in metres."""
    world, image = data["world_m"], data["image_px"]
    offset = 1 if side is Side.RIGHT else 0
    axes = trunk_axes(world[:, 11], world[:, 12], world[:, 23], world[:, 24])
    upper = unit(world[:, 13 + offset] - world[:, 11 + offset])
    fore = unit(world[:, 15 + offset] - world[:, 13 + offset])
    metric = movement_angle_deg(movement, side, axes, upper, fore)
    up = (image[:, 11] + image[:, 12] - image[:, 23] - image[:, 24]) / 2
    arm = image[:, 13 + offset] - image[:, 11 + offset]
    toward = side.sign if movement is Movement.FLEXION else -side.sign
    across = np.stack([-up[:, 1], up[:, 0]], axis=1) * toward
    flat = np.degrees(np.arctan2((arm * across).sum(axis=1), -(arm * up).sum(axis=1)))
    if movement is Movement.EXTERNAL_ROTATION_0:
        flat = np.full(len(flat), np.nan)
    return np.where(flat < -100, flat + 360, flat), metric


def add_file(tally: Tally, path: Path) -> str:
    """Measure one file into a tally; give its own line."""
    with np.load(path) as archive:
        data = {name: archive[name] for name in archive.files}
    movement, side = Movement(str(data["movement"])), Side(str(data["side"]))
    view, true = View(str(data["view"])), data["angle_deg"]
    readings = goniometry.read_sequence(poses_of(data), movement, side, view)
    errors = []
    for reading, truth in zip(readings, true, strict=True):
        tally.frames += 1
        if reading.doubt is not None:
            tally.doubts[reading.doubt.value] += 1
        if reading.angle_deg is None or reading.error_deg is None:
            continue
        tally.usable += 1
        errors.append(reading.angle_deg - float(truth))
        tally.widths.append(reading.error_deg)
        tally.inside.append(abs(errors[-1]) <= reading.error_deg)
    tally.errors += errors
    plain, metric = plain_angles(data, movement, side)
    tally.plain += list(np.abs(plain - true)[data["found"]])
    tally.metric += list(np.abs(metric - true)[data["found"]])
    task = counting.Task(hanging_deg=HANGING_DEG.get(movement))
    found = list(counting.count(readings, task))
    count = len(found)
    for start_s, end_s, held_s, value_deg in data["holds"]:
        tally.true_holds += 1
        match = [r for r in found if r.start_s < end_s and r.end_s > start_s]
        if not match:
            tally.missed += 1
            continue
        found.remove(match[0])
        tally.held.append(match[0].held_s - float(held_s))
        tally.values.append(match[0].value_deg - float(value_deg))
        tally.value_inside.append(abs(tally.values[-1]) <= match[0].error_deg)
    tally.invented += len(found)
    if not errors:
        return f"{path.stem:45s} nothing usable"
    return (
        f"{path.stem:45s} MAE {np.mean(np.abs(errors)):5.1f} bias {np.mean(errors):+5.1f}"
        f" p95 {np.percentile(np.abs(errors), 95):5.1f} usable {len(errors) / len(true):4.0%}"
        f" holds {count} of {len(data['holds'])}"
    )


def mean(values: list[float] | list[bool]) -> float:
    """Give the mean, NaN of nothing."""
    return float(np.nanmean(values)) if len(values) and not np.all(np.isnan(values)) else np.nan


def row(name: str, t: Tally) -> str:
    """Give one movement's lines."""
    errors, held, values = (np.abs(v or [np.nan]) for v in (t.errors, t.held, t.values))
    return "\n".join(
        (
            f"{name:20s} MAE {errors.mean():4.1f} bias {mean(t.errors):+5.1f}"
            f" p95 {np.percentile(errors, 95):5.1f} | plain 2-D {mean(t.plain):5.1f}"
            f" metric {mean(t.metric):5.1f} | usable {t.usable / max(t.frames, 1):4.0%}"
            f" >10 {np.mean(errors > 10):5.1%} inside {mean(t.inside):4.0%}"
            f" of ±{mean(t.widths):.1f}",
            f"{'':20s} holds {t.true_holds}, missed {t.missed}, invented {t.invented};"
            f" seconds off by {held.mean():.2f} (worst {held.max():.2f}), value off by"
            f" {values.mean():.1f} (worst {values.max():.1f}), inside {mean(t.value_inside):4.0%};"
            f" refused: {dict(t.doubts)}",
        )
    )


def main() -> int:
    """Read folders of benchmark files and print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folders", nargs="+", type=Path)
    parser.add_argument("--files", action="store_true", help="a line for each file as well")
    options = parser.parse_args()
    for folder in options.folders:
        tallies: dict[str, Tally] = defaultdict(Tally)
        for path in sorted(folder.glob("*.npz")):
            if path.name.endswith(".part.npz"):
                continue
            name = path.stem.split("_")[0]
            if name not in list(Movement):
                continue
            line = add_file(tallies[name], path)
            if options.files:
                print(line)
        print(f"{folder}:")
        for name, tally in tallies.items():
            print(row(name, tally))
    return 0


if __name__ == "__main__":
    sys.exit(main())

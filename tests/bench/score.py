"""Score the goniometer on benchmark files: ``python -m tests.bench.score FOLDER [FOLDER ...]``.

Prints for every movement, position and view the mean absolute error, bias and 95th percentile over
usable frames, the slope of reading over truth, the share of usable frames, of usable frames wrong
by more than 10, and of truths inside the 95 % interval with its mean half width; the same errors
for plain two-dimensional and plain metric landmarks; then holds found, missed and invented with
the error of their seconds and values. Degrees; for the hand behind the back hundredths of the line
from C7 to the PSIS. ``--live`` reads frame by frame instead of the whole recording, ``--form``
adds the compensations, ``--wrong`` the share of frames refused in every wrong view, ``--lens``
measures with the true field of view in place of the usual one, ``--files`` adds a line for each
file. Files taken again by another camera give the repeatability of the end of range.
"""

from __future__ import annotations

import argparse
import math
import re
import sys
from collections import Counter, defaultdict
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from coach import counting, goniometry
from coach.domain.movement import VIEWS, Movement, Position, Side, Unit, View
from coach.domain.pose import Pose, PoseModel
from coach.domain.progress import Repetition
from coach.domain.reading import Form, Reading
from coach.goniometry.angles import movement_angle_deg, trunk_axes, unit
from coach.goniometry.turning import between

Array = NDArray[np.float64]
RATIO_SCALE = 100.0
FORMS = (
    ("trunk_lean_deg", "trunk_lean_error_deg"),
    ("trunk_turn_deg", "trunk_turn_error_deg"),
    ("shoulder_hike_ratio", "shoulder_hike_error_ratio"),
    ("elbow_flexion_deg", "elbow_flexion_error_deg"),
    ("elbow_drift_deg", "elbow_drift_error_deg"),
)


@dataclass(slots=True)
class Tally:
    """What was seen of one movement in one position and view."""

    errors: list[Array] = field(default_factory=list)
    truths: list[Array] = field(default_factory=list)
    widths: list[Array] = field(default_factory=list)
    plain: list[Array] = field(default_factory=list)
    metric: list[Array] = field(default_factory=list)
    frames: int = 0
    true_holds: int = 0
    missed: int = 0
    invented: int = 0
    held: list[float] = field(default_factory=list)
    values: list[float] = field(default_factory=list)
    value_inside: list[bool] = field(default_factory=list)
    doubts: Counter[str] = field(default_factory=Counter)
    forms: dict[str, list[tuple[float, float]]] = field(default_factory=lambda: defaultdict(list))
    swayed: list[Array] = field(default_factory=list)
    ends: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))
    wrong: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))


def load(path: Path) -> dict[str, Any]:
    """Read a benchmark file."""
    with np.load(path) as archive:
        return {name: archive[name] for name in archive.files}


def poses_of(data: Any) -> list[tuple[float, Pose | None]]:
    """Give stamps and poses of a benchmark file."""
    width, height = (int(v) for v in data["size_px"])
    model = PoseModel(str(data.get("model", PoseModel.FULL)))
    rows: list[tuple[float, Pose | None]] = []
    for i, time_s in enumerate(data["time_s"]):
        pose = Pose(
            float(time_s),
            (width, height),
            data["image_px"][i],
            data["world_m"][i],
            data["visibility"][i],
            model=model,
        )
        rows.append((float(time_s), pose if data["found"][i] else None))
    return rows


def task_of(data: Any) -> goniometry.Task:
    """Give what a benchmark file is a recording of."""
    return goniometry.Task(
        Movement(str(data["movement"])),
        Side(str(data["side"])),
        View(str(data["view"])),
        Position(str(data.get("position", "standing"))),
    )


def field_of_view_deg(data: Any) -> float:
    """Give the true field of view of a file's camera along the longer side."""
    half = max(int(v) for v in data["size_px"]) / 2
    return 2 * math.degrees(math.atan(half / float(data["intrinsics"][0, 0])))


def truth_of(data: Any, task: goniometry.Task) -> Array:
    """Give the true value (N,) in the movement's unit."""
    return np.asarray(
        data["angle_deg" if task.movement.unit is Unit.DEGREES else "reach_ratio"], float
    )


def read(data: Any, task: goniometry.Task, *, live: bool) -> tuple[Reading, ...]:
    """Measure a file, the whole recording or frame by frame."""
    if not live:
        return goniometry.read_recording(poses_of(data), task).readings
    state = goniometry.begin(
        task.movement, task.side, task.view, task.position, task.field_of_view_deg
    )
    readings = []
    for time_s, pose in poses_of(data):
        state, reading = goniometry.advance(state, time_s, pose)
        readings.append(reading)
    return tuple(readings)


def plain_values(data: Any, task: goniometry.Task) -> tuple[Array, Array]:
    """Give the value (N,) from landmarks as they are: in the picture, and in metres."""
    world, image = data["world_m"], data["image_px"]
    k = 1 if task.side is Side.RIGHT else 0
    up = (image[:, 11] + image[:, 12] - image[:, 23] - image[:, 24]) / 2
    nothing = np.full(len(up), np.nan)
    if task.movement is Movement.HAND_BEHIND_BACK:
        below = (image[:, 11] + image[:, 12]) / 2 - image[:, 15 + k]
        return (below * up).sum(axis=1) / (up * up).sum(axis=1), nothing
    axes = trunk_axes(world[:, 11], world[:, 12], world[:, 23], world[:, 24])
    upper = unit(world[:, 13 + k] - world[:, 11 + k])
    fore = unit(world[:, 15 + k] - world[:, 13 + k])
    metric = movement_angle_deg(task.movement, task.side, axes, upper, fore)
    if task.movement.rotating:
        arm = image[:, 15 + k] - image[:, 13 + k]
    else:
        arm = image[:, 13 + k] - image[:, 11 + k]
    flat = task.view in (View.SIDE, View.FRONT, View.BACK) and task.movement not in (
        Movement.EXTERNAL_ROTATION_0,
        Movement.HORIZONTAL_ADDUCTION,
    )
    if not flat:
        return nothing, metric
    sideways = task.view is View.SIDE
    toward = task.side.sign if sideways or task.view is View.BACK else -task.side.sign
    across = np.stack([-up[:, 1], up[:, 0]], axis=1) * toward
    if task.movement is Movement.EXTERNAL_ROTATION_90:
        angle = np.degrees(np.arctan2((arm * up).sum(axis=1), (arm * across).sum(axis=1)))
    else:
        angle = np.degrees(np.arctan2((arm * across).sum(axis=1), -(arm * up).sum(axis=1)))
        angle = np.where(angle < -100, angle + 360, angle)
    return -angle if task.movement is Movement.EXTENSION else angle, metric


def true_forms(data: Any, task: goniometry.Task) -> dict[str, Array]:
    """Give the true compensations (N,) against the first second, by the fields of ``Form``."""
    joints, axes = data["joints_camera_m"], data["thorax_axes_camera"]
    k, s = (1, 1) if task.side is Side.RIGHT else (0, -1)
    first = data["time_s"] <= data["time_s"][0] + 1.0
    left, _, right = np.linalg.svd(axes[first].mean(axis=0))
    rest = left @ right
    turned = between(rest, axes)
    trunk_m = np.linalg.norm(joints[:, 8:10].mean(1) - joints[:, 6:8].mean(1), axis=1)
    rise = ((joints[:, k] - joints[:, 8 + k]) * axes[:, :, 1]).sum(axis=1) / trunk_m
    upper = np.einsum("nji,nj->ni", axes, unit(joints[:, 2 + k] - joints[:, k]))
    elevation = np.degrees(np.arccos(np.clip(-upper[:, 1], -1, 1)))
    usual = 0.05 / 100 * np.clip(elevation - 30, 0, None)
    hike = rise - usual
    out = {
        "trunk_lean_deg": np.degrees(turned @ rest[2]),
        "trunk_turn_deg": np.degrees(turned[:, 1]) * (-1.0 if task.view is View.BACK else 1.0),
        "shoulder_hike_ratio": hike - np.median(hike[first]),
        "elbow_flexion_deg": np.asarray(data["elbow_deg"], float),
    }
    then = unit(np.median(upper[first], axis=0))
    if task.movement.rotating:
        out["elbow_drift_deg"] = np.degrees(np.arccos(np.clip(upper @ then, -1, 1)))
    elif task.movement is not Movement.HAND_BEHIND_BACK:
        normal = {
            Movement.ABDUCTION: np.array([1.0, 0, 0]),
            Movement.HORIZONTAL_ADDUCTION: np.array([0, 1.0, 0]),
        }.get(task.movement, np.array([0, 0, 1.0 * s]))
        out["elbow_drift_deg"] = np.degrees(np.arcsin(upper @ normal) - np.arcsin(then @ normal))
    return out


def add_file(tally: Tally, path: Path, options: argparse.Namespace) -> str:
    """Measure one file into a tally; give its own line."""
    data = load(path)
    task = task_of(data)
    if options.lens:
        task = replace(task, field_of_view_deg=field_of_view_deg(data))
    scale = 1.0 if task.movement.unit is Unit.DEGREES else RATIO_SCALE
    truth = truth_of(data, task)
    readings = read(data, task, live=options.live)
    usable = np.array([reading.usable for reading in readings])
    value = np.array([np.nan if r.value is None else r.value for r in readings])
    width = np.array([np.nan if r.error is None else r.error for r in readings])
    errors = scale * (value - truth)[usable]
    tally.frames += len(readings)
    tally.doubts.update(r.doubt.value for r in readings if r.doubt is not None)
    tally.errors.append(errors)
    tally.truths.append(scale * truth[usable])
    tally.widths.append(scale * width[usable])
    plain, metric = plain_values(data, task)
    tally.plain.append(scale * np.abs(plain - truth)[data["found"]])
    tally.metric.append(scale * np.abs(metric - truth)[data["found"]])
    if options.form:
        true = true_forms(data, task)
        _add_forms(tally, [r.form for r in readings], usable, true)
        sway = np.maximum(np.abs(true["trunk_lean_deg"]), np.abs(true["trunk_turn_deg"]))
        tally.swayed.append(np.stack([sway[usable], np.abs(errors)], axis=1))
    if options.wrong:
        _add_wrong(tally, data, task)
    count = _add_holds(tally, data, task, readings, scale, path)
    if not len(errors):
        return f"{path.stem:52s} nothing usable"
    return (
        f"{path.stem:52s} MAE {np.mean(np.abs(errors)):5.1f} bias {np.mean(errors):+5.1f}"
        f" p95 {np.percentile(np.abs(errors), 95):5.1f} usable {usable.mean():4.0%}"
        f" holds {count} of {len(data['holds'])}"
    )


def _add_holds(
    tally: Tally,
    data: Any,
    task: goniometry.Task,
    readings: tuple[Reading, ...],
    scale: float,
    path: Path,
) -> int:
    found: list[Repetition] = list(counting.count(readings, counting.task_of(task.movement)))
    count = len(found)
    for start_s, end_s, held_s, value in data["holds"]:
        tally.true_holds += 1
        match = [r for r in found if r.start_s < end_s and r.end_s > start_s]
        if not match:
            tally.missed += 1
            continue
        found.remove(match[0])
        tally.held.append(match[0].held_s - float(held_s))
        off = match[0].value - float(value)
        tally.values.append(scale * off)
        tally.value_inside.append(abs(off) <= match[0].error)
        tally.ends[re.sub(r"_r\d+$", "", path.stem) + f"@{start_s:.2f}"].append(scale * off)
    tally.invented += len(found)
    return count


def _add_forms(
    tally: Tally, forms: list[Form], usable: NDArray[np.bool_], true: dict[str, Array]
) -> None:
    for name, error_name in FORMS:
        for i in np.flatnonzero(usable):
            seen, error = getattr(forms[i], name), getattr(forms[i], error_name)
            if seen is not None and error is not None and name in true:
                tally.forms[name].append((seen - float(true[name][i]), error))


def _add_wrong(tally: Tally, data: Any, task: goniometry.Task) -> None:
    rows = poses_of(data)
    others = {view for views in VIEWS.values() for view in views}
    for view in others - {task.view}:
        if view not in VIEWS.get((task.movement, task.position), ()) and len(others) > 1:
            continue
        wrong = goniometry.Task(task.movement, task.side, view, task.position)
        readings = goniometry.read_recording(rows, wrong).readings
        tally.wrong[f"as {view}"].append(float(np.mean([not r.usable for r in readings])))
    swapped = goniometry.Task(task.movement, task.side.other, task.view, task.position)
    readings = goniometry.read_recording(rows, swapped).readings
    tally.wrong["other side"].append(float(np.mean([not r.usable for r in readings])))


def rows_of(name: str, t: Tally) -> str:
    """Give one combination's lines."""
    errors, truths, widths = (np.concatenate(v) for v in (t.errors, t.truths, t.widths))
    if not len(errors):
        return f"{name:38s} nothing usable of {t.frames}; refused: {dict(t.doubts)}"
    size = np.abs(errors)
    clips = [np.abs(e).mean() for e in t.errors if len(e)]
    slope = np.polyfit(truths, truths + errors, 1)[0]
    plain, metric = (np.concatenate(v) for v in (t.plain, t.metric))
    lines = [
        f"{name:38s} MAE {np.mean(clips):4.1f} bias {errors.mean():+5.1f}"
        f" p95 {np.percentile(size, 95):5.1f} slope {slope:.2f} | plain 2-D {_mean(plain):5.1f}"
        f" metric {_mean(metric):5.1f} | usable {len(errors) / t.frames:4.0%}"
        f" >10 {np.mean(size > 10):5.1%} inside {np.mean(size <= widths):4.0%}"
        f" of ±{widths.mean():.1f}",
        f"{'':10s} {len(clips)} clips, holds {t.true_holds}, missed {t.missed}, invented"
        f" {t.invented}; {_holds(t)} refused: {dict(t.doubts)}",
    ]
    repeated = [v for v in t.ends.values() if len(v) > 1]
    if repeated:
        between_cameras = np.sqrt(np.mean([np.var(v, ddof=1) for v in repeated]))
        lines.append(
            f"{'':10s} {len(repeated)} holds seen by several cameras: SEM {between_cameras:.1f},"
            f" MDC95 {1.96 * np.sqrt(2) * between_cameras:.1f}"
        )
    if t.swayed:
        sway, size = np.concatenate(t.swayed).T
        lines.append(
            f"{'':10s} trunk within 3 degrees of its start: MAE {_mean(size[sway < 3]):.1f};"
            f" leaning or turning by 10 and more ({np.mean(sway >= 10):.0%} of frames):"
            f" {_mean(size[sway >= 10]):.1f}"
        )
    for form, pairs in t.forms.items():
        off, error = np.abs(np.array(pairs)).T
        lines.append(
            f"{'':10s} {form:22s} MAE {off.mean():6.3f} p95 {np.percentile(off, 95):6.3f}"
            f" inside {np.mean(off <= error):4.0%} of ±{error.mean():.3f}"
        )
    lines += [f"{'':10s} {k}: {np.mean(v):.0%} refused" for k, v in sorted(t.wrong.items())]
    return "\n".join(lines)


def _holds(t: Tally) -> str:
    if not t.held:
        return ""
    held, values = np.abs(t.held), np.abs(t.values)
    return (
        f"seconds off by {held.mean():.2f} (worst {held.max():.2f}), value off by"
        f" {values.mean():.1f} (worst {values.max():.1f}), inside {np.mean(t.value_inside):4.0%};"
    )


def _mean(values: Array) -> float:
    known = values[np.isfinite(values)]
    return float(known.mean()) if len(known) else float("nan")


def main() -> int:
    """Read folders of benchmark files and print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folders", nargs="+", type=Path)
    parser.add_argument("--files", action="store_true", help="a line for each file as well")
    parser.add_argument("--live", action="store_true", help="frame by frame")
    parser.add_argument("--form", action="store_true", help="score the compensations")
    parser.add_argument("--lens", action="store_true", help="with the lens known")
    parser.add_argument("--wrong", action="store_true", help="score wrong views and sides")
    parser.add_argument("--only", default="", help="part of the file's name")
    options = parser.parse_args()
    for folder in options.folders:
        tallies: dict[str, Tally] = defaultdict(Tally)
        for path in sorted(p for p in folder.glob("*.npz") if options.only in p.name):
            if path.name.endswith(".part.npz"):
                continue
            task = task_of(load(path))
            if task.view not in VIEWS.get((task.movement, task.position), ()):
                continue
            name = f"{task.movement} {task.position} {task.view}"
            line = add_file(tallies[name], path, options)
            if options.files:
                print(line)
        print(f"{folder}:")
        for name, tally in tallies.items():
            print(rows_of(name, tally))
    return 0


if __name__ == "__main__":
    sys.exit(main())

"""How honest the angles stay when the picture is spoilt.

    python -m tests.bench.spoilt [FOLDER ...] [--only WORD ...] [--clips] [--points FOLDER]

Clips with their truth (``sample_videos``, or those of ``tests.bench.generate`` without
``--landmarks-only``) are spoilt in the ways of ``tests/bench/spoiling.py``, seen by the pose model
and read as ``coach measure`` reads them, and once more frame by frame as a sitting does. Without a
folder: the sample clips. ``--points`` keeps what the pose model saw, for another reading.
"""

from __future__ import annotations

import argparse
import json
import multiprocessing
import sys
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np

from coach import counting, goniometry
from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.domain.reading import Reading
from tests.bench.spoiling_points import SAMPLES, poses_of
from tests.bench.spoiling_ways import WAYS


@dataclass(slots=True)
class Score:
    """What became of clips, read one way."""

    errors: list[float] = field(default_factory=list)
    inside: list[bool] = field(default_factory=list)
    frames: int = 0
    doubts: Counter[str] = field(default_factory=Counter)
    holds: int = 0
    found: int = 0
    invented: int = 0

    def add(self, other: Score) -> None:
        """Take in another's."""
        self.errors += other.errors
        self.inside += other.inside
        self.frames += other.frames
        self.doubts.update(other.doubts)
        self.holds += other.holds
        self.found += other.found
        self.invented += other.invented

    @property
    def cells(self) -> str:
        """MAE, 95th percentile, refused, inside, holds found, invented."""
        off = np.abs(self.errors)
        refused = 1 - len(off) / self.frames
        if not len(off):
            return f"- | - | {refused:.0%} | - | {self.found} of {self.holds} | {self.invented}"
        return (
            f"{off.mean():.1f} | {np.percentile(off, 95):.1f} | {refused:.0%}"
            f" | {np.mean(self.inside):.0%} | {self.found} of {self.holds} | {self.invented}"
        )


def score(readings: Iterable[Reading], truth: dict[str, Any], movement: Movement) -> Score:
    """Hold readings against the truth; a reach ratio counts in hundredths."""
    degrees = movement.unit is Unit.DEGREES
    scale = 1.0 if degrees else 100.0
    rows = truth["frames"]
    times_s = np.array([row["time_s"] for row in rows])
    true = np.array([row["angle_deg" if degrees else "reach_ratio"] for row in rows])
    out, readings = Score(), tuple(readings)
    for reading in readings:
        out.frames += 1
        if reading.value is None or reading.error is None:
            out.doubts["" if reading.doubt is None else reading.doubt.value] += 1
            continue
        off = reading.value - float(np.interp(reading.time_s, times_s, true))
        out.errors.append(scale * off)
        out.inside.append(abs(off) <= reading.error)
    counted = list(counting.count(readings, counting.task_of(movement)))
    for hold in truth["holds"]:
        out.holds += 1
        match = [r for r in counted if r.start_s < hold["end_s"] and r.end_s > hold["start_s"]]
        if match:
            counted.remove(match[0])
            out.found += 1
    out.invented = len(counted)
    return out


def judged(job: tuple[Path, str, Path | None]) -> tuple[str, Score, Score]:
    """Spoil one clip one way: its name, whole and frame by frame."""
    path, name, folder = job
    truth = json.loads(path.with_suffix(".json").read_text("utf-8"))
    poses = poses_of(path, truth, name, folder)
    side = Side(truth["side"])
    side = side.other if WAYS[name].other_arm else side
    position = Position(truth.get("position", "standing"))
    task = goniometry.Task(Movement(truth["movement"]), side, View(truth["view"]), position)
    whole = goniometry.read_recording(poses, task).readings
    state = goniometry.begin(task.movement, task.side, task.view, task.position)
    live = []
    for time_s, pose in poses:
        state, reading = goniometry.advance(state, time_s, pose)
        live.append(reading)
    return path.stem, score(whole, truth, task.movement), score(live, truth, task.movement)


def main() -> int:
    """Print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folders", nargs="*", type=Path, default=[SAMPLES])
    parser.add_argument("--only", nargs="+", default=[""], help="parts of ways' names")
    parser.add_argument("--clips", action="store_true", help="a line for each clip as well")
    parser.add_argument("--points", type=Path, help="where what the pose model saw is kept")
    parser.add_argument("--processes", type=int, default=2)
    options = parser.parse_args()
    clips = [
        clip
        for folder in options.folders
        for clip in sorted(folder.glob("*.mp4"))
        if json.loads(clip.with_suffix(".json").read_text("utf-8"))["movement"]
    ]
    names = [name for name in WAYS if any(word in name for word in options.only)]
    jobs = [(clip, name, options.points) for name in names for clip in clips]
    head = "MAE | p95 | refused | inside | holds found | invented"
    print(f"| spoilt | {head} | live: {head} | refused, of all frames |", flush=True)
    with multiprocessing.get_context("spawn").Pool(options.processes) as pool:
        results = pool.imap(judged, jobs)
        for name in names:
            whole, live = Score(), Score()
            for _ in clips:
                clip, one, one_live = next(results)
                whole.add(one)
                live.add(one_live)
                if options.clips:
                    print(f"|   {clip} | {one.cells} | {one_live.cells} | {named(one)} |")
            print(f"| {name} | {whole.cells} | {live.cells} | {named(whole)} |", flush=True)
    return 0


def named(one: Score) -> str:
    """Give the doubts that refused most, with their shares."""
    return ", ".join(f"{doubt} {n / one.frames:.0%}" for doubt, n in one.doubts.most_common(3))


if __name__ == "__main__":
    sys.exit(main())

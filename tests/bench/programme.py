"""Coach the benchmark's people as at home: ``python -m tests.bench.programme FOLDER``.

Each file's poses go through the whole pipeline, frame by frame, after START and a pain of 0: how
long it took to be in place, the holds found, missed and invented against the truth, the error of
their seconds and values, and the share of repetitions with a fault of form.
"""

from __future__ import annotations

import argparse
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path

import numpy as np

from coach.domain.frame import Frame
from coach.domain.moment import Order, Stage
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Pose
from coach.domain.progress import Repetition
from coach.pipeline import Pipeline
from tests.bench.score import load, poses_of, task_of

ASKED_S = 2.0
"""Shorter than any hold of the benchmark that counts."""


class Recorded:
    """A pose estimator that gives the recorded poses in order."""

    model_sha256 = "0" * 64

    def __init__(self, poses: list[tuple[float, Pose | None]]) -> None:
        """Begin with the first pose."""
        self._poses = dict(poses)

    def estimate(self, frame: Frame) -> Pose | None:
        """Give the pose of the frame's stamp."""
        return self._poses[frame.time_s]

    def close(self) -> None:
        """Nothing to free."""


def coached(path: Path) -> tuple[float | None, list[Repetition], np.ndarray]:
    """Coach one file: seconds until in place, repetitions, and the true holds (K, 4)."""
    data = load(path)
    task = task_of(data)
    planned = PlannedExercise(
        movement=task.movement,
        side=task.side,
        position=task.position,
        view=task.view,
        hold_s=ASKED_S,
        repetitions=30,
        rest_s=0,
        pain_limit=10,
    )
    rows = poses_of(data)
    first_s = rows[0][0]
    pipeline = Pipeline(
        Plan(patient_code="BENCH", exercises=(planned,)),
        Recorded(rows),
        lambda entries: None,
        first_s,
    )
    pipeline.order(first_s, Order.START)
    pipeline.order(first_s, Order.PAIN, 0)
    in_place_s, repetitions = None, list[Repetition]()
    for frame in frames(rows, data["size_px"]):
        moment = pipeline.step(frame)
        if in_place_s is None and moment.stage is Stage.EXERCISE:
            in_place_s = frame.time_s - first_s
        repetitions = list(moment.repetitions)
    pipeline.end_input()
    return in_place_s, repetitions, data["holds"]


def frames(rows: list[tuple[float, Pose | None]], size_px: np.ndarray) -> Iterator[Frame]:
    """Give empty frames with the stamps of the poses."""
    blank = np.zeros((2, 2, 3), np.uint8)
    for index, (time_s, _) in enumerate(rows):
        yield Frame(index, time_s, blank)


def _kind(path: Path) -> str:
    task = task_of(load(path))
    return f"{task.movement}, {task.position}, {task.view}"


def main() -> None:
    """Print a line for each movement, position and view."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawTextHelpFormatter
    )
    parser.add_argument("folders", nargs="+", type=Path)
    parser.add_argument("--files", action="store_true", help="a line for each file as well")
    options = parser.parse_args()
    for folder in options.folders:
        print(f"{folder}:")
        groups: dict[str, list[tuple[float | None, int, int, int, list[float], int]]] = defaultdict(
            list
        )
        for path in sorted(folder.glob("*.npz")):
            in_place_s, repetitions, holds = coached(path)
            holds = holds[holds[:, 2] >= ASKED_S + 0.5]
            free, off, found = list(repetitions), list[float](), 0
            for start_s, end_s, held_s, _ in holds:
                near = [r for r in free if r.start_s < end_s and r.end_s > start_s]
                if near:
                    found += 1
                    off.append(near[0].held_s - held_s)
                    free.remove(near[0])
            invented = sum(r.held_s >= ASKED_S + 0.5 for r in free)
            faults = sum(bool(r.faults) for r in repetitions)
            key = _kind(path)
            groups[key].append((in_place_s, len(holds), found, invented, off, faults))
            if options.files:
                print(
                    f"  {path.stem:58s} in place {in_place_s}, holds {found}/{len(holds)},"
                    f" invented {invented}, off {np.round(off, 2)}, faults {faults}"
                )
        for key, rows in groups.items():
            placed = [row[0] for row in rows if row[0] is not None]
            off = [abs(v) for row in rows for v in row[4]]
            print(
                f"{key:44s} {len(rows):3d} clips, in place {len(placed)}"
                f" (median {np.median(placed) if placed else float('nan'):.1f} s),"
                f" holds {sum(r[2] for r in rows)}/{sum(r[1] for r in rows)},"
                f" invented {sum(r[3] for r in rows)},"
                f" seconds off {np.mean(off) if off else float('nan'):.2f}"
                f" (worst {max(off, default=float('nan')):.2f}), faults {sum(r[5] for r in rows)}"
            )


if __name__ == "__main__":
    main()

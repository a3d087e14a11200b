"""Score the setting up on benchmark files: ``python -m tests.bench.placing FOLDER [FOLDER ...]``.

Prints for every movement, position and view how many clips become ready within three seconds and
after how long, what is said in the others at their end, how many become ready while another view
or the other side is asked for, and in how many the wrong arm is called, asked for the arm that
moves and for the other one. ``--files`` adds
a line for each clip that is not ready.
"""

from __future__ import annotations

import argparse
import sys
from collections import Counter, defaultdict
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np

from coach import placing
from coach.domain.movement import VIEWS, Movement, Position, Side, View
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Pose
from coach.placing import wrong_arm
from tests.bench.score import load, poses_of, task_of

WITHIN_S = 3.0


@dataclass(slots=True)
class Tally:
    """What was seen of one movement in one position and view."""

    ready_at_s: list[float] = field(default_factory=list)
    said: Counter[str] = field(default_factory=Counter)
    wrong: defaultdict[str, list[bool]] = field(default_factory=lambda: defaultdict(list))
    other_arm: list[bool] = field(default_factory=list)
    false_alarms: list[bool] = field(default_factory=list)


def planned(movement: Movement, side: Side, position: Position, view: View) -> PlannedExercise:
    """Give a plan's row for it."""
    return PlannedExercise(
        movement=movement, side=side, position=position, view=view, hold_s=10, repetitions=3
    )


def ready_after_s(
    rows: list[tuple[float, Pose | None]], exercise: PlannedExercise
) -> tuple[float, str]:
    """Give when the first ready second began (inf: never), and what was said last before."""
    state = placing.begin(exercise)
    said = ""
    for time_s, pose in rows:
        state = placing.advance(state, time_s, pose)
        if state.doubt is not None:
            said = state.doubt.value
        if state.ready_s >= 1.0:
            return time_s - state.ready_s - rows[0][0], said
    return float("inf"), said


def called(rows: list[tuple[float, Pose | None]], exercise: PlannedExercise) -> bool:
    """Tell whether the wrong arm is called."""
    state = placing.watch(exercise.side, exercise.movement, exercise.position)
    for time_s, pose in rows:
        state, wrong = wrong_arm.advance(state, time_s, pose)
        if wrong:
            return True
    return False


def add_file(tally: Tally, data: Any) -> tuple[float, str]:
    """Score one file into a tally."""
    task = task_of(data)
    rows = poses_of(data)
    right = planned(task.movement, task.side, task.position, task.view)
    at_s, said = ready_after_s(rows, right)
    tally.ready_at_s.append(at_s)
    if at_s > WITHIN_S:
        tally.said[said] += 1
    views = {view for views in VIEWS.values() for view in views}
    for view in views - {task.view}:
        exercise = planned(task.movement, task.side, task.position, view)
        if view in VIEWS[task.movement, task.position]:
            tally.wrong[f"as {view}"].append(ready_after_s(rows, exercise)[0] < float("inf"))
    for movement, position in VIEWS:
        if position is task.position and task.view not in VIEWS[movement, position]:
            exercise = planned(movement, task.side, position, VIEWS[movement, position][0])
            ready = ready_after_s(rows, exercise)[0] < float("inf")
            tally.wrong[f"as {exercise.seen_from}"].append(ready)
    if task.view is View.SIDE:
        other = planned(task.movement, task.side.other, task.position, task.view)
        tally.wrong["other side"].append(ready_after_s(rows, other)[0] < float("inf"))
    other = planned(task.movement, task.side.other, task.position, task.view)
    tally.other_arm.append(called(rows, other))
    tally.false_alarms.append(called(rows, right))
    return at_s, said


def rows_of(name: str, tally: Tally) -> str:
    """Give one combination's lines."""
    at_s = np.array(tally.ready_at_s)
    known = at_s[np.isfinite(at_s)]
    first = f"after {np.median(known):.1f} s, last {known.max():.1f}" if len(known) else "never"
    wrong = ", ".join(
        f"{view}: {sum(ready)} of {len(ready)}" for view, ready in sorted(tally.wrong.items())
    )
    return (
        f"{name:38s} ready within {WITHIN_S:g} s {np.sum(at_s <= WITHIN_S)} of {len(at_s)} {first}"
        f" {dict(tally.said)}\n{'':10s} wrongly ready {wrong or '-'}; wrong arm called"
        f" {sum(tally.other_arm)}, falsely {sum(tally.false_alarms)}"
    )


def main() -> int:
    """Read folders of benchmark files and print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folders", nargs="+", type=Path)
    parser.add_argument("--files", action="store_true", help="a line for each clip not ready")
    parser.add_argument("--only", default="", help="part of the file's name")
    options = parser.parse_args()
    for folder in options.folders:
        tallies: dict[str, Tally] = defaultdict(Tally)
        for path in sorted(p for p in folder.glob("*.npz") if options.only in p.name):
            data = load(path)
            task = task_of(data)
            if task.view not in VIEWS.get((task.movement, task.position), ()):
                continue
            name = f"{task.movement}, {task.position}, {task.view}"
            at_s, said = add_file(tallies[name], data)
            if options.files and at_s > WITHIN_S:
                print(f"{path.stem:52s} {at_s:.1f} {said}")
        print(f"{folder}:")
        for name, tally in tallies.items():
            print(rows_of(name, tally))
        ready = [t <= WITHIN_S for tally in tallies.values() for t in tally.ready_at_s]
        wrong = [r for tally in tallies.values() for rows in tally.wrong.values() for r in rows]
        print(
            f"all: ready within {WITHIN_S:g} s {sum(ready)} of {len(ready)};"
            f" wrongly ready {sum(wrong)} of {len(wrong)}"
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())

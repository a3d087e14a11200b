"""Score the faults of form on benchmark files: ``python -m tests.bench.compensation FOLDER ...``.

Prints for every movement, position and view, and every compensation, in how many of the
repetitions that truly have it the fault is found, and in how many of those that do not it is
cried. A repetition is a true hold of 2 s or more, its truth the median over it. It has a
compensation from ``PRESENT`` on (a lean or turn of 15 degrees, a bend or drift of 15-25, whole at
the end of the range) and does not below ``ABSENT``; in between it is not counted. Of the elbow the
truth is the deviation from the bend that is asked for: straight, or square in rotation. What
``default_limits`` does not ask is printed as such, with the values seen. Readings are taken frame
by frame, as before a patient; live is what ``coach.form.advance`` says during the hold.
"""

from __future__ import annotations

import argparse
import sys
from collections import defaultdict
from dataclasses import dataclass, field
from itertools import chain
from pathlib import Path

import numpy as np

from coach.domain.form import FormFault, FormLimits
from coach.domain.reading import Form, Reading
from coach.form import FormNoticed, advance, begin, default_limits, faults_of
from coach.goniometry import Task
from tests.bench.score import Array, load, read, task_of, true_forms

PRESENT = {"lean": 12.0, "turn": 12.0, "elbow": 12.0, "drift": 12.0}
ABSENT = {"lean": 5.0, "turn": 5.0, "elbow": 9.0, "drift": 5.0}
"""Degrees. The elbow of a straight arm hangs bent by 4 to 18 in these people: it is bent by more
than ``PRESENT`` over ``STRAIGHT_DEG``, not by less than ``ABSENT`` over it."""
STRAIGHT_DEG, SQUARE_DEG = 10.0, 90.0
FAULTS = {
    "lean": (FormFault.LEAN,),
    "turn": (FormFault.TURN,),
    "elbow": (FormFault.BENT, FormFault.STRAIGHT),
    "drift": (FormFault.DRIFT,),
}
COLUMNS = {
    "lean": "trunk_lean_deg",
    "turn": "trunk_turn_deg",
    "elbow": "elbow_flexion_deg",
    "drift": "elbow_drift_deg",
}


@dataclass(slots=True)
class Tally:
    """Of one compensation: whether it was found where it is, and cried where it is not."""

    asked: bool = False
    found: list[bool] = field(default_factory=list)
    noticed: list[bool] = field(default_factory=list)
    cried: list[bool] = field(default_factory=list)
    cried_live: list[bool] = field(default_factory=list)
    seen: list[float] = field(default_factory=list)
    seen_clean: list[float] = field(default_factory=list)


def asked(limits: FormLimits) -> dict[str, bool]:
    """Tell which compensations the limits ask for."""
    return {
        "lean": limits.lean_deg is not None,
        "turn": limits.turn_deg is not None,
        "elbow": limits.elbow_deg is not None,
        "drift": limits.drift_deg is not None,
    }


def middle(readings: list[Reading]) -> Form:
    """Give the medians of what is known, as a repetition has them."""
    values: dict[str, float] = {}
    for name in Form.__struct_fields__:
        known = [v for r in readings if (v := getattr(r.form, name)) is not None]
        if known:
            values[name] = float(np.median(known))
    return Form(**values)


def deviation(kind: str, true: dict[str, Array], held: Array, task: Task) -> float | None:
    """Give how much of a compensation there truly is in a hold, degrees."""
    column = true.get(COLUMNS[kind])
    if column is None:
        return None
    value = float(np.median(column[held]))
    if kind != "elbow":
        return abs(value)
    return abs(value - SQUARE_DEG) if task.movement.rotating else value - STRAIGHT_DEG


def add_file(tallies: dict[tuple[str, str], Tally], path: Path) -> None:
    """Score one file."""
    data = load(path)
    task = task_of(data)
    readings = read(data, task, live=True)
    limits = default_limits(task.movement, task.position, task.view)
    true, time_s = true_forms(data, task), np.asarray(data["time_s"], float)
    for start_s, end_s, *_ in data["holds"]:
        held = np.flatnonzero(time_s >= start_s + min(1.0, (end_s - start_s) / 2))
        held = held[time_s[held] <= end_s]
        form = middle([readings[i] for i in held])
        if form == Form():
            continue
        found = faults_of(form, limits)
        # What is said live, of the readings of the hold alone.
        watch, said = begin(limits), set[FormFault]()
        for reading in readings:
            if start_s <= reading.time_s <= end_s:
                watch, events = advance(watch, reading)
                said |= {event.fault for event in events if isinstance(event, FormNoticed)}
        for kind, faults in FAULTS.items():
            there = deviation(kind, true, held, task)
            seen = getattr(form, COLUMNS[kind])
            if there is None or seen is None:
                continue
            tally = tallies[f"{task.movement} {task.position} {task.view}", kind]
            tally.asked = asked(limits)[kind]
            if there >= PRESENT[kind]:
                tally.found.append(any(fault in found for fault in faults))
                tally.noticed.append(any(fault in said for fault in faults))
                tally.seen.append(seen)
            elif there < ABSENT[kind]:
                tally.cried.append(any(fault in found for fault in faults))
                tally.cried_live.append(any(fault in said for fault in faults))
                tally.seen_clean.append(seen)


def row_of(name: str, kind: str, t: Tally) -> str:
    """Give one line."""
    seen = f"seen {_span(t.seen)} with it, {_span(t.seen_clean)} without (5th and 95th percentile)"
    if not t.asked:
        return f"{name:36s} {kind:6s} not asked; {len(t.found)} with it; {seen}"
    return (
        f"{name:36s} {kind:6s} found {_share(t.found)}, live {_share(t.noticed)};"
        f" cried wolf {_share(t.cried)}, live {_share(t.cried_live)}; {seen}"
    )


def _share(hits: list[bool]) -> str:
    return f"{np.mean(hits):4.0%} ({sum(hits)} of {len(hits)})" if hits else "- (none)"


def _span(values: list[float]) -> str:
    if not values:
        return "-"
    low, high = np.percentile(values, [5, 95])
    return f"{low:+.0f} to {high:+.0f}"


def main() -> int:
    """Read folders of benchmark files and print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folders", nargs="+", type=Path)
    parser.add_argument("--only", default="", help="part of the file's name")
    options = parser.parse_args()
    tallies: dict[tuple[str, str], Tally] = defaultdict(Tally)
    for folder in options.folders:
        for path in sorted(folder.glob("*.npz")):
            if options.only in path.name and not path.name.endswith(".part.npz"):
                add_file(tallies, path)
    for (name, kind), tally in sorted(tallies.items()):
        print(row_of(name, kind, tally))
    for kind in FAULTS:
        rows = [t for (_, k), t in tallies.items() if k == kind and t.asked]
        whole = Tally(
            True,
            *(
                list(chain.from_iterable(getattr(t, column) for t in rows))
                for column in ("found", "noticed", "cried", "cried_live", "seen", "seen_clean")
            ),
        )
        if rows:
            print(row_of("all where it is asked", kind, whole))
    return 0


if __name__ == "__main__":
    sys.exit(main())

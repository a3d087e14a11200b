"""What the small pose model differs by from the full one, on the same pictures of tuning people.

``python -m tests.bench.two_models FOLDER/pose_full/tuning FOLDER/pose_lite/tuning``

Prints for every movement, position and view, over the frames that both measure, each clip weighed
alike: the mean of the small model's value less the full one's, as read with the full one's bias
taken off, but each with its own of what the arms differ by; the 95th percentile of the size of what
is left of the difference when the mean of the other people's clips is taken off it; the share of
frames that each measures; and the half width for ``coach.goniometry.interval.LITE``: the full
model's and that percentile, added in squares. Degrees; for the hand behind the back hundredths. A
mean within two of its own standard errors between people is not taken off, and the percentile is
then of the whole difference. What a person's two arms differ by shows with ``--files``. Judging
people have no business here.
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
from coach.domain.movement import VIEWS, Unit
from coach.domain.pose import PoseModel
from coach.goniometry.interval import KNOWN, LITE
from tests.bench.score import RATIO_SCALE, Array, load, poses_of, task_of, truth_of


@dataclass(frozen=True, slots=True)
class Pair:
    """One clip seen by both: differences (N,) and the errors of both (N,) where both measure."""

    person: str
    difference: Array
    full_error: Array
    lite_error: Array
    full_usable: float
    lite_usable: float


def read_values(data: Any, task: goniometry.Task) -> Array:
    """Give the values (N,), NaN where there is none, with the full model's bias taken off, but of
    what the arms differ by each model's own."""
    # As of the full model: what is not known yet of the other would be refused.
    poses = poses_of({**data, "model": "full"})
    readings = goniometry.read_recording(poses, task).readings
    values = np.array([np.nan if r.value is None else r.value for r in readings])
    key = task.movement, task.position, task.view
    own = (LITE if str(data.get("model")) == PoseModel.LITE else KNOWN).get(key, KNOWN[key])
    return values + task.side.sign * (KNOWN[key].arm - own.arm)


def pair_of(full: Any, lite: Any, task: goniometry.Task) -> Pair:
    """Measure one clip by both."""
    scale = 1.0 if task.movement.unit is Unit.DEGREES else RATIO_SCALE
    one, other = (scale * read_values(data, task) for data in (full, lite))
    truth = scale * truth_of(full, task)
    both = np.isfinite(one) & np.isfinite(other)
    return Pair(
        str(full["person"]),
        (other - one)[both],
        (one - truth)[both],
        (other - truth)[both],
        float(np.isfinite(one).mean()),
        float(np.isfinite(other).mean()),
    )


def line_of(name: str, pairs: list[Pair], full_half_width: float) -> str:
    """Sum up one movement's clips."""
    told = [pair for pair in pairs if len(pair.difference)]
    people = sorted({pair.person for pair in told})
    if len(people) < 2:
        return f"{name:40s} {len(people)} people: too few"
    means = np.array([pair.difference.mean() for pair in told])
    left = []
    for pair in told:
        others = [m for m, each in zip(means, told, strict=True) if each.person != pair.person]
        left.append(pair.difference - np.mean(others or [0.0]))
    p95_as_is, p95_left = (_p95(parts) for parts in ([p.difference for p in told], left))
    of_people = [
        np.mean([m for m, each in zip(means, told, strict=True) if each.person == person])
        for person in people
    ]
    error_of_mean = float(np.std(of_people, ddof=1)) / math.sqrt(len(people))
    taken_off = abs(means.mean()) > 2 * error_of_mean
    p95 = p95_left if taken_off else p95_as_is
    full_usable, lite_usable = (
        float(np.mean([getattr(p, which) for p in pairs]))
        for which in ("full_usable", "lite_usable")
    )
    full_p95, lite_p95 = (
        _p95([getattr(p, which) for p in told]) for which in ("full_error", "lite_error")
    )
    return (
        f"{name:40s} {len(told):2d} clips of {len(people)}:"
        f" differs by {means.mean():+.1f} ± {error_of_mean:.1f}, p95 {p95_as_is:.1f},"
        f" without the mean {p95_left:.1f}; half width"
        f" {math.hypot(full_half_width, p95):.1f} ({full_half_width:.1f});"
        f" measured {lite_usable:.0%} ({full_usable:.0%});"
        f" p95 of the error {lite_p95:.1f} ({full_p95:.1f})"
    )


def _p95(parts: list[Array]) -> float:
    """The 95th percentile of sizes, every clip weighed alike."""
    sizes = np.abs(np.concatenate(parts))
    weights = np.concatenate([np.full(len(part), 1 / len(part)) for part in parts])
    order = np.argsort(sizes)
    reached = np.cumsum(weights[order]) / weights.sum()
    return float(sizes[order][np.searchsorted(reached, 0.95)])


def main() -> None:
    """Read both folders and print; in brackets the same of the full model."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("full", type=Path, help="files of tuning people by the full model")
    parser.add_argument("lite", type=Path, help="the same by the small one")
    parser.add_argument("--files", action="store_true", help="a line for each file as well")
    options = parser.parse_args()
    found: dict[str, list[Pair]] = defaultdict(list)
    widths: dict[str, float] = {}
    for path in sorted(options.full.glob("*.npz")):
        beside = options.lite / path.name
        if ".part" in path.name or not beside.exists():
            continue
        full, lite = load(path), load(beside)
        task = task_of(full)
        key = task.movement, task.position, task.view
        if task.view not in VIEWS.get(key[:2], ()):
            continue
        scale = 1.0 if task.movement.unit is Unit.DEGREES else RATIO_SCALE
        widths[" ".join(key)] = scale * KNOWN[key].half_width
        pair = pair_of(full, lite, task)
        found[" ".join(key)].append(pair)
        if options.files and len(pair.difference):
            print(f"{path.stem:52s} differs by {pair.difference.mean():+.1f}")
    for name, pairs in sorted(found.items()):
        print(line_of(name, pairs, widths[name]))


if __name__ == "__main__":
    main()

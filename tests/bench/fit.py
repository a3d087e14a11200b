"""Fit the goniometer's few constants on tuning people: ``python -m tests.bench.fit FOLDER``.

Prints the coefficients of ``coach.goniometry.planar.BIAS`` (ridge regression, every clip weighed
alike) and what is left of the error on each person when fitted without that person; and the ratio
behind ``coach.goniometry.rotation.FOREARM``. Judging people have no business here.
"""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

import numpy as np

from coach.domain.movement import BEST_VIEW, Movement, Side
from coach.goniometry.planar import bias_terms, seen_elevation_deg
from coach.goniometry.sight import Sight
from tests.bench.score import Array, poses_of

RIDGE = np.array([0.1, 0.2, 0.2, 10.0])
"""On constant, sine, cosine and bend. Heavy on the bend, which is small in every clip: a larger one
must not be extrapolated. A hundred times less or three times more leaves the errors as they are."""


def load(folder: Path, movement: Movement) -> list[dict[str, Any]]:
    """Read a movement's files."""
    files = []
    for path in sorted(folder.glob(f"{movement}_*.npz")):
        with np.load(path) as archive:
            files.append({name: archive[name] for name in archive.files})
    return files


def design(data: dict[str, Any], movement: Movement) -> tuple[Array, Array]:
    """Give terms (N, 4) and the error to be explained (N,) of one file."""
    side = Side(str(data["side"]))
    terms, missing = [], []
    for (_, pose), true in zip(poses_of(data), data["angle_deg"], strict=True):
        if pose is None:
            continue
        angle, bend = seen_elevation_deg(Sight.of(pose, side), movement, BEST_VIEW[movement])
        terms.append(bias_terms(angle, bend))
        missing.append(float(true) - angle)
    return np.array(terms), np.array(missing)


def solve(parts: list[tuple[Array, Array]]) -> Array:
    """Give the ridge coefficients (4,), every part weighed alike."""
    normal = np.diag(RIDGE) + sum(x.T @ x / len(x) for x, _ in parts)
    coefficients: Array = np.linalg.solve(normal, sum(x.T @ y / len(x) for x, y in parts))
    return coefficients


def main() -> None:
    """Read the folder and print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path, help="files of tuning people")
    folder: Path = parser.parse_args().folder
    for movement in (Movement.FLEXION, Movement.EXTENSION, Movement.ABDUCTION):
        files = load(folder, movement)
        parts = [design(data, movement) for data in files]
        people = [str(data["person"]) for data in files]
        left = np.concatenate(
            [
                part[1]
                - part[0] @ solve([p for p, n in zip(parts, people, strict=True) if n != who])
                for part, who in zip(parts, people, strict=True)
            ]
        )
        raw = np.concatenate([y for _, y in parts])
        rounded = ", ".join(f"{value:.2f}" for value in solve(parts))
        print(
            f"{movement:12s} ({rounded})  as seen: MAE {np.abs(raw).mean():.1f};"
            f" person left out: MAE {np.abs(left).mean():.1f}"
            f" p95 {np.percentile(np.abs(left), 95):.1f}"
        )
    ratios = []
    for data in load(folder, Movement.EXTERNAL_ROTATION_0):
        row = 1 if str(data["side"]) == "right" else 0
        joints = data["joints_camera_m"]
        forearm_m = np.linalg.norm(joints[:, 4 + row] - joints[:, 2 + row], axis=1)
        forearm_px = data["intrinsics"][0, 0] * forearm_m / joints[:, 2 + row, 2]
        sights = [Sight.of(p, Side(str(data["side"]))) for _, p in poses_of(data) if p is not None]
        breadth_px = np.median([sight.breadth * sight.trunk_px for sight in sights])
        ratios.append(float(np.median(forearm_px) / breadth_px))
    print(f"forearm over shoulder breadth {np.mean(ratios):.3f}, SD {np.std(ratios):.3f}")


if __name__ == "__main__":
    main()

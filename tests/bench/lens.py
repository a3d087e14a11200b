"""How far the lens check's field of view is off, on rendered boards.

    python -m tests.bench.lens [--count N] [--tuning]

Lenses of 50 to 90 degrees, distorted, off their middle, sheets slightly bent, noise, blur and JPEG.
``inside`` counts truths within the 95 % interval. Nothing was chosen on the judging seeds, the
default.
"""

from __future__ import annotations

import argparse
from dataclasses import dataclass

import cv2
import numpy as np

from coach.capture.lens_check import field_of_view
from coach.capture.lens_views import Views
from coach.domain.fault import Fault
from tests.capture.rendered_board import draw_optics, draw_places, film

TUNING, JUDGING = 1, 30_001


@dataclass(frozen=True)
class Outcome:
    error_deg: float
    half_width_deg: float
    miss_px: float
    k1_error: float


def measure(seed: int, **fixed: object) -> Outcome | None:
    """One lens and one collection of views; None where it is refused."""
    random = np.random.default_rng(seed)
    optics = draw_optics(random, **fixed)
    views = Views(optics.size_px)
    for frame in film(optics, draw_places(random, optics), random):
        views.look(frame)
    try:
        found = field_of_view(views)
    except Fault:
        return None
    return Outcome(
        found.fit.field_of_view_deg - optics.field_of_view_deg,
        found.error_deg,
        found.fit.miss_px,
        found.fit.k1 - optics.k1,
    )


KINDS: dict[str, dict[str, object]] = {
    "1280 by 720": {},
    "640 by 480": {"size_px": (640, 480)},
    "sheet bent by 2 mm": {"bend_mm": 2.0},
}


def row(name: str, outcomes: list[Outcome | None]) -> str:
    """A line of the table."""
    found = [outcome for outcome in outcomes if outcome is not None]
    if not found:
        return f"| {name} | {len(outcomes)} | 0 % |" + " - |" * 5
    errors = np.array([outcome.error_deg for outcome in found])
    widths = np.array([outcome.half_width_deg for outcome in found])
    misses = np.mean([outcome.miss_px for outcome in found])
    size = np.abs(errors)
    return (
        f"| {name} | {len(outcomes)} | {100 * len(found) / len(outcomes):.0f} % |"
        f" {size.mean():.2f} | {np.percentile(size, 95):.2f} | {size.max():.2f} |"
        f" {100 * np.mean(size <= widths):.0f} % | {widths.mean():.2f} | {misses:.2f} |"
    )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=30)
    parser.add_argument("--tuning", action="store_true")
    options = parser.parse_args()
    cv2.setNumThreads(1)
    print("| boards | n | found | MAE | p95 | worst | inside | half width | corners miss, px |")
    print("|---|" + "---|" * 8)
    first = TUNING if options.tuning else JUDGING
    for name, fixed in KINDS.items():
        seeds = range(first, first + options.count)
        print(row(name, [measure(seed, **fixed) for seed in seeds]), flush=True)


if __name__ == "__main__":
    main()

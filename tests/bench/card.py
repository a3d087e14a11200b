"""How far the printed card's turn and tilt are off, on rendered cards.

    python -m tests.bench.card [--count N] [--tuning]

Seeds of the tuning set chose the constants in ``coach/capture/card.py``; the judging set, the
default, states figures and nothing else. Truth is the frame of the tent's base, which lies on the
chest; how straight the card is clipped on is not in it. A turn is about the ridge, a tilt is the
ridge's.
"""

from __future__ import annotations

import argparse
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

import cv2
import numpy as np

from coach.capture.card import (
    LENS_ERROR,
    MOST_ERROR_DEG,
    NoCard,
    card,
    grey_part,
    place_card,
)
from coach.capture.card_fit import AS_PRINTED, Part, Tent
from coach.capture.card_guess import guesses
from coach.capture.card_marks import find_marks
from coach.capture.card_watch import TENT_SD_RAD, chest_box
from coach.goniometry.camera import Pinhole
from tests.capture.rendered_card import Scene, errors_deg, render, wearer

Random = np.random.Generator
Draw = Callable[[Random], Scene]
TUNING, JUDGING = 1, 20_001


@dataclass(frozen=True)
class Outcome:
    scene: Scene
    turn_deg: float
    tilt_deg: float
    turn_error_deg: float
    tilt_error_deg: float
    corners_deg: float
    """Turn of the markers' corners alone."""
    milliseconds: float


def draw(random: Random, turned: float = 50.0, **fixed: object) -> Scene:
    """A card at 1.5 to 2.8 m, up to 10 degrees beside the camera's axis, anyhow lit."""
    distance, aside = random.uniform(1.5, 2.8), np.radians(random.uniform(-10, 10))
    alike, apart = random.uniform(-4, 4), random.normal(0, 0.5)
    drawn: dict[str, object] = {
        "yaw_deg": random.uniform(-turned, turned),
        "pitch_deg": random.uniform(-15, 15),
        "roll_deg": random.uniform(-8, 8),
        "at_m": (distance * np.tan(aside), random.uniform(-0.45, 0.15), distance),
        "field_of_view_deg": random.uniform(55, 75),
        "tent_deg": (35 + alike + apart, 35 + alike - apart),
        "bulge_mm": tuple(random.uniform(-1.5, 1.5, 2)),
        "noise": random.uniform(2, 6),
        "blur_px": random.uniform(0.4, 1.0),
        "motion_px": tuple(random.normal(0, 0.5, 2)),
        "jpeg": int(random.integers(70, 95)),
        "shirt": float(random.choice([0.05, 0.3, 0.7])),
        "gradient": random.uniform(-0.8, 0.8),
        "light": (random.uniform(-1, 1), -random.uniform(0.2, 1), -random.uniform(0.1, 1)),
        "exposure": random.uniform(0.35, 1.1),
        "seed": int(random.integers(1 << 30)),
    }
    return Scene(**{**drawn, **fixed})  # type: ignore[arg-type]


def learned(scene: Scene) -> Tent:
    """What is known of the folds once the card was seen from nearly ahead."""
    ahead = replace(scene, yaw_deg=scene.yaw_deg / 5)
    box = chest_box(wearer(ahead))
    placed = place_card(render(ahead), Pinhole.of(scene.size_px), box)
    return AS_PRINTED if isinstance(placed, NoCard) else Tent(placed.tent_rad, TENT_SD_RAD)


def measure(scene: Scene, tent: Tent = AS_PRINTED) -> Outcome:
    """Render a scene and look for the card as the program does; NaN where it finds none."""
    picture, box = render(scene), chest_box(wearer(scene))
    camera = Pinhole.of(scene.size_px)
    assert box is not None
    began = time.thread_time()
    placed = place_card(picture, camera, box, None, tent)
    took = 1000 * (time.thread_time() - began)
    values = (np.nan,) * 4
    if not isinstance(placed, NoCard):
        found = card(placed, LENS_ERROR, tent)
        if found.turn_error_deg <= MOST_ERROR_DEG:
            values = (
                *errors_deg(found.axes, scene),
                found.turn_error_deg,
                found.tilt_error_deg,
            )
    return Outcome(scene, *values, _corners_deg(picture, box, camera, scene), took)


def _corners_deg(
    picture: np.ndarray, box: tuple[slice, slice], camera: Pinhole, scene: Scene
) -> float:
    grey, corner_px = grey_part(picture, box), (box[1].start, box[0].start)
    marks = find_marks(grey)
    if len(marks) < 2:
        return np.nan
    first = guesses(marks, Part(grey, corner_px, camera), corner_px, camera)[0]
    return errors_deg(first.axes, scene)[0]


def row(name: str, outcomes: list[Outcome]) -> str:
    """One line of the table."""
    table = np.array(
        [
            (o.turn_deg, o.tilt_deg, o.turn_error_deg, o.tilt_error_deg, o.corners_deg)
            for o in outcomes
        ]
    )
    turn, tilt, turn_half, tilt_half, corners = np.abs(table.T)
    found = np.isfinite(turn)
    cells = [f"{name} | {len(outcomes)} | {100 * found.mean():.0f} %"]
    if found.any():
        for error, half in ((turn, turn_half), (tilt, tilt_half)):
            error, half = error[found], half[found]
            inside = 100 * np.mean(error <= half)
            cells.append(
                f"{error.mean():.1f} | {np.percentile(error, 95):.1f} | {error.max():.1f} |"
                f" {inside:.0f} % | {half.mean():.1f}"
            )
        seen = corners[np.isfinite(corners)]
        cells.append(f"{seen.mean():.1f} of {100 * len(seen) / len(corners):.0f} %")
    return f"| {' | '.join(cells)} |"


def families(seed: int, count: int) -> Iterator[tuple[str, list[Outcome]]]:
    """Every row's name and outcomes."""
    all_of_it = outcomes(lambda random: draw(random), seed, 2 * count)
    for low, high in ((0, 20), (20, 30), (30, 40), (40, 50)):
        turned = [o for o in all_of_it if low <= abs(o.scene.yaw_deg) < high]
        yield f"turned {low} to {high}", turned
    ahead = [o for o in all_of_it if abs(o.scene.yaw_deg) < 40]
    for near, far in ((1.5, 2.0), (2.0, 2.4), (2.4, 2.8)):
        yield (
            f"{near} to {far} m, turned up to 40",
            [o for o in ahead if near <= o.scene.at_m[2] < far],
        )
    for low, high in ((25, 35), (35, 45), (45, 50)):
        yield (
            f"tent known, turned {low} to {high}",
            outcomes(
                lambda r, low=low, high=high: draw(
                    r, yaw_deg=r.uniform(low, high) * r.choice([-1, 1])
                ),
                seed + 100 + low,
                count // 2,
                learn=True,
            ),
        )
    single: dict[str, dict[str, object]] = {
        "nothing wrong": {},
        "field of view 55": {"field_of_view_deg": 55.0},
        "field of view 75": {"field_of_view_deg": 75.0},
        "both faces 4 steeper": {"tent_deg": (39.0, 39.0)},
        "both faces 4 flatter": {"tent_deg": (31.0, 31.0)},
        "one face 2 steeper, one 2 flatter": {"tent_deg": (37.0, 33.0)},
        "faces bent by 3 mm": {"bulge_mm": (3.0, -3.0)},
        "moving, 3 pixels": {"motion_px": (3.0, 0.0)},
        "dark, noise 10": {"exposure": 0.12, "noise": 10.0},
        "JPEG quality 40": {"jpeg": 40},
        "3.2 m": {"at_m": (0.1, -0.2, 3.2)},
        "640 by 480": {"size_px": (640, 480)},
    }
    plain: dict[str, object] = {
        "field_of_view_deg": 63.0,
        "tent_deg": (35.0, 35.0),
        "bulge_mm": (0.0, 0.0),
    }
    for number, (name, fixed) in enumerate(single.items()):
        settings = {**plain, **fixed}
        yield (
            f"{name}, turned up to 40",
            outcomes(lambda r, s=settings: draw(r, 40, **s), seed + 1 + number, count // 3),
        )


def outcomes(scenes: Draw, seed: int, count: int, *, learn: bool = False) -> list[Outcome]:
    """Measure as many cards; ``learn`` lets each be seen from nearly ahead first."""
    random = np.random.default_rng(seed)
    drawn = [scenes(random) for _ in range(count)]
    return [measure(scene, learned(scene) if learn else AS_PRINTED) for scene in drawn]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=300)
    parser.add_argument("--tuning", action="store_true")
    options = parser.parse_args()
    cv2.setNumThreads(1)
    print(
        "| cards | n | found | turn: MAE | p95 | worst | inside | half width | tilt: MAE | p95"
        " | worst | inside | half width | corners alone, turn MAE |"
    )
    print("|---|" + "---|" * 13)
    times = []
    for name, found in families(TUNING if options.tuning else JUDGING, options.count):
        times += [o.milliseconds for o in found if o.scene.size_px == (1280, 720)]
        print(row(name, found), flush=True)
    print(f"\nA look at 1280 by 720: median {np.median(times):.1f} ms, p95", end=" ")
    print(f"{np.percentile(times, 95):.1f} ms, one thread.")


if __name__ == "__main__":
    main()

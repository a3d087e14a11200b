"""Random but reproducible clips for the benchmark."""

from __future__ import annotations

from zlib import crc32

import numpy as np

from tests.bench import people
from tests.bench.clip import ClipSpec, Manner
from tests.bench.motion import Repetition, Script
from tests.bench.scene import draw_camera, draw_lens, draw_room

SETS: dict[str, tuple[people.Person, ...]] = {
    "tuning": people.TUNING,
    "judging": people.JUDGING,
}
VIEWS = {
    "flexion": "side",
    "extension": "side",
    "abduction": "front",
    "external-rotation-0": "front",
    "external-rotation-90": "side",
}
PEAKS_DEG = {
    "flexion": (60, 165),
    "extension": (15, 55),
    "abduction": (55, 160),
    "external-rotation-0": (5, 70),
    "external-rotation-90": (20, 85),
}


def draw(which: str, movement: str, number: int, seconds: float, fps: float) -> ClipSpec:
    """Give clip ``number`` of a movement in a set; people and arms take turns."""
    seed = crc32(f"{which}/{movement}/{number}".encode())
    rng = np.random.default_rng(seed)
    members = SETS[which]
    start = list(VIEWS).index(movement)
    person = members[(number + 2 * start) % len(members)]
    side = ("right", "left")[(number + start) % 2]
    script = _script(movement, rng, seconds)
    return ClipSpec(
        name=f"{movement}_{side}_{number:02d}_{person.name}",
        person=person.name,
        movement=movement,
        side=side,
        view=VIEWS[movement],
        seed=seed,
        fps=fps,
        camera=draw_camera(rng),
        room=draw_room(rng),
        lens=draw_lens(rng),
        manner=_manner(movement, rng),
        script=script,
    )


def _script(movement: str, rng: np.random.Generator, seconds: float) -> Script:
    low, high = PEAKS_DEG[movement]
    count = int(rng.integers(2, 4))
    rotating = movement.startswith("external-rotation")
    rest_deg = float(rng.uniform(-35, 0)) if rotating else float(rng.uniform(0, 4))
    # Ends of range spread over the whole span, so that a set covers it.
    peaks = low + (high - low) * ((rng.random() + np.arange(count) / count) % 1.0)
    moving_s = [(float(rng.uniform(1.3, 2.6)), float(rng.uniform(1.2, 2.2))) for _ in peaks]
    rests_s = [float(rng.uniform(0.8, 1.6)) for _ in peaks]
    left_s = seconds - 1.0 - sum(a + b for a, b in moving_s) - sum(rests_s)
    shares = rng.uniform(0.7, 1.3, count)
    holds_s = np.maximum(left_s * shares / shares.sum() + 0.6, 2.3)
    return Script(
        rest_deg,
        tuple(
            Repetition(
                round(float(peak), 2), round(float(hold_s), 2), raise_s, return_s, rest_s,
                creep_deg=float(rng.uniform(-0.3, 1.2)),
                pause_s=float(rng.choice([0.0, 0.0, 0.0, 0.8])),
            )
            for peak, hold_s, (raise_s, return_s), rest_s in zip(
                peaks, holds_s, moving_s, rests_s, strict=True
            )
        ),
        tail_s=1.0,
    )  # fmt: skip


def _manner(movement: str, rng: np.random.Generator) -> Manner:
    def some(scale: float, chance: float = 0.6) -> float:
        return float(abs(rng.normal(0, scale))) if rng.random() < chance else 0.0

    rotating = movement.startswith("external-rotation")
    back = -1.0 if movement in ("flexion", "abduction") else 1.0
    return Manner(
        hike_deg=min(some(7.0), 16.0),
        lean_deg=back * min(some(5.0), 12.0) * (0.3 if rotating else 1.0),
        side_lean_deg=min(some(5.0), 12.0) * (1.0 if movement == "abduction" else 0.4),
        twist_deg=min(some(6.0), 15.0),
        away_deg=float(rng.uniform(4, 14)) if movement != "abduction" else rng.uniform(0, 18),
        away_change_deg=float(rng.uniform(-8, 6)) if not rotating else 0.0,
        elbow_deg=float(rng.uniform(82, 98)) if rotating else float(rng.uniform(4, 18)),
        forward_deg=float(rng.uniform(-4, 8)) if rotating else 0.0,
        sway_deg=float(rng.uniform(0.4, 1.0)),
        breath_deg=float(rng.uniform(0.4, 0.9)),
        wobble_deg=float(rng.uniform(0.3, 0.8)),
        yaw_deg=float(np.clip(rng.normal(0, 4), -8, 8)),
    )

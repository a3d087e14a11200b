"""What makes a clip difficult on purpose, drawn from a seed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np

from tests.bench import people
from tests.bench.motion import Repetition, Script
from tests.bench.scene import LYING, Block, Bystander
from tests.bench.spec import ClipSpec
from tests.bench.truth import BEHIND_BACK

RATES_HZ = (10.0, 15.0, 24.0, 30.0)
EDGE_M = 0.8
"""A door's edge stands so far from the camera."""
BED_M = 0.1
"""What is lower is a mat."""

Rng = np.random.Generator


def harden(spec: ClipSpec, others: tuple[people.Person, ...], rng: Rng) -> ClipSpec:
    """Give a clip with two to four troubles; ``others`` may stand in the background."""
    spec = replace(spec, bystander=_somebody(spec, others, rng))
    possible = [name for name in TROUBLES if _applies(name, spec)]
    chosen = rng.choice(len(possible), size=int(rng.integers(2, 5)), replace=False)
    names = tuple(possible[i] for i in sorted(chosen))
    if "bystander" not in names:
        spec = replace(spec, bystander=None)
    for name in names:
        spec = TROUBLES[name](spec, rng)
    return replace(spec, troubles=names)


def _applies(name: str, spec: ClipSpec) -> bool:
    if name == "object":
        return spec.view != "foot" and spec.position != "doorway"
    if name == "crop" and spec.position == "prone":
        # The hand lies beside the hip: the trunk would go with it.
        return False
    if name == "bystander":
        # Feet behind a bed would be painted over it.
        return spec.room.support_m < BED_M
    if name in ("elbow", "crop"):
        return spec.movement != BEHIND_BACK
    return True


def _compensation(spec: ClipSpec, rng: Rng) -> ClipSpec:
    manner, movement = spec.manner, spec.movement
    held = 0.4 if spec.position in LYING else 1.0
    lean_deg, side_deg = float(rng.uniform(8, 20)) * held, float(rng.uniform(6, 18))
    twist_deg = float(rng.uniform(10, 25)) * held
    manner = replace(manner, hike_deg=round(float(rng.uniform(10, 24)), 1))
    if movement == "horizontal-adduction" or spec.position == "doorway":
        manner = replace(manner, twist_deg=-round(twist_deg, 1))
    elif movement.startswith("external-rotation"):
        manner = replace(manner, twist_deg=round(twist_deg, 1))
    elif movement == "abduction":
        manner = replace(manner, side_lean_deg=round(side_deg, 1))
    else:
        way = -1.0 if movement == "flexion" else 1.0
        manner = replace(manner, lean_deg=round(way * lean_deg, 1))
    return replace(spec, manner=manner)


def _elbow(spec: ClipSpec, rng: Rng) -> ClipSpec:
    """The elbow bends, and drifts out of its plane, towards the end."""
    rotating = spec.movement.startswith("external-rotation")
    bend_deg = float(rng.uniform(-15, 20) if rotating else rng.uniform(15, 45))
    drift_deg = float(rng.uniform(10, 25))
    if spec.movement == "horizontal-adduction":
        drift_deg *= float(rng.choice([-1.0, 1.0]))
    return replace(
        spec,
        manner=replace(
            spec.manner,
            elbow_change_deg=round(bend_deg, 1),
            away_change_deg=round(drift_deg, 1),
        ),
    )


def _slow(spec: ClipSpec, rng: Rng) -> ClipSpec:
    if spec.script is None:
        return spec
    longer = float(rng.uniform(1.8, 3.0))
    rest_deg = spec.script.rest_deg
    repetitions = tuple(
        long_enough(
            rest_deg, replace(rep, raise_s=longer * rep.raise_s, return_s=longer * rep.return_s)
        )
        for rep in spec.script.repetitions
    )
    return replace(spec, script=replace(spec.script, repetitions=repetitions))


def long_enough(rest_deg: float, repetition: Repetition) -> Repetition:
    """Lengthen a hold until its gentle ends fit in."""
    while True:
        try:
            Script(rest_deg, (repetition,)).holds()
        except ValueError:
            repetition = replace(repetition, hold_s=round(repetition.hold_s + 0.5, 2))
        else:
            return repetition


def _jerky(spec: ClipSpec, rng: Rng) -> ClipSpec:
    if spec.script is None:
        return spec
    jerk, hz = round(float(rng.uniform(0.6, 0.95)), 2), round(float(rng.uniform(0.7, 1.5)), 2)
    return replace(
        spec,
        script=replace(spec.script, jerk=jerk, jerk_hz=hz),
        manner=replace(spec.manner, wobble_deg=0.9),
    )


def _dark(spec: ClipSpec, rng: Rng) -> ClipSpec:
    """An evening by a lamp: the camera turns its gain up, and with it the noise."""
    light = float(rng.uniform(0.03, 0.22))
    key, fill = (
        (1.12 * light * v[0], light * v[1], 0.75 * light * v[2])
        for v in (spec.room.key, spec.room.ambient)
    )
    lens = replace(
        spec.lens,
        gain=round(float(rng.uniform(1.0, 1.8)), 2),
        noise=round(float(rng.uniform(4.0, 9.0)), 1),
    )
    room = replace(spec.room, key=key, ambient=fill, glow=round(0.2 * light, 3))
    return replace(spec, room=room, lens=lens)


def _noise(spec: ClipSpec, rng: Rng) -> ClipSpec:
    noise = round(max(spec.lens.noise, float(rng.uniform(7, 14))), 1)
    return replace(spec, lens=replace(spec.lens, noise=noise))


def _jpeg(spec: ClipSpec, rng: Rng) -> ClipSpec:
    return replace(spec, lens=replace(spec.lens, jpeg_quality=int(rng.integers(10, 30))))


def _rate(spec: ClipSpec, rng: Rng) -> ClipSpec:
    return replace(spec, fps=float(rng.choice(RATES_HZ)))


def _object(spec: ClipSpec, rng: Rng) -> ClipSpec:
    """A chair before legs and hip, or a box beside somebody lying."""
    yaw_deg = round(float(rng.uniform(0, 360)), 1)
    if spec.position in LYING:
        # Beside hips and legs, which are at the picture's right of a camera at x < 0.
        right = 1.0 if (spec.side == "right") == (spec.position == "supine") else -1.0
        size_m = round(spec.room.support_m + float(rng.uniform(0.15, 0.3)), 2)
        aside_m = right * float(rng.uniform(0.45, 1.0))
        block = Block("box", round(0.6 + size_m / 2, 2), round(aside_m, 2), yaw_deg % 20, size_m)
    else:
        near_m, far_m = (0.8, 1.0) if spec.position == "sitting" else (0.5, 0.9)
        ahead_m, aside_m = float(rng.uniform(near_m, far_m)), float(rng.uniform(-0.3, 0.3))
        block = Block("chair", round(ahead_m, 2), round(aside_m, 2), yaw_deg)
    return replace(spec, blocks=(*spec.blocks, block))


def _edge(spec: ClipSpec, rng: Rng) -> ClipSpec:
    """A door's edge near the camera, that covers a strip of the picture."""
    aside_m = float(rng.choice([-1.0, 1.0]) * EDGE_M * np.tan(np.radians(rng.uniform(6, 18))))
    block = Block(
        "edge",
        round(spec.camera.distance_m - EDGE_M, 3),
        round(aside_m, 3),
        round(float(rng.uniform(-15, 15)), 1),
        round(float(rng.uniform(0.04, 0.1)), 3),
    )
    return replace(spec, blocks=(*spec.blocks, block))


def _somebody(spec: ClipSpec, others: tuple[people.Person, ...], rng: Rng) -> Bystander:
    who = others[int(rng.integers(len(others)))]
    if who.name == spec.person:
        who = others[(others.index(who) + 1) % len(others)]
    return Bystander(
        who.name,
        behind_m=round(float(rng.uniform(0.9, 1.25)), 2),
        aside_m=round(float(rng.choice([-1.0, 1.0]) * rng.uniform(0.35, 1.2)), 2),
        yaw_deg=round(float(rng.uniform(-70, 70)), 1),
    )


def _bystander(spec: ClipSpec, rng: Rng) -> ClipSpec:
    gap_m = round(max(spec.room.wall_gap_m, float(rng.uniform(1.6, 2.2))), 2)
    return replace(spec, room=replace(spec.room, wall_gap_m=gap_m))


def _crop(spec: ClipSpec, rng: Rng) -> ClipSpec:
    """The picture's border cuts the hand off, up to the whole forearm."""
    crop = round(float(rng.uniform(0.05, 0.9)), 2)
    return replace(spec, camera=replace(spec.camera, crop=crop))


TROUBLES: dict[str, Callable[[ClipSpec, Rng], ClipSpec]] = {
    "compensation": _compensation,
    "elbow": _elbow,
    "slow": _slow,
    "jerky": _jerky,
    "dark": _dark,
    "noise": _noise,
    "jpeg": _jpeg,
    "rate": _rate,
    "object": _object,
    "edge": _edge,
    "bystander": _bystander,
    "crop": _crop,
}

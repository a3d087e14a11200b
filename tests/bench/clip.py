"""A clip in every detail, and the moments it is made of."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tests.bench import body as bodies
from tests.bench import everyday, gesturing, people, posing, staging, surface, truth
from tests.bench.motion import wobble
from tests.bench.picture import Film
from tests.bench.renderer import Figure, Renderer
from tests.bench.scene import Placed
from tests.bench.skeleton import Posed
from tests.bench.spec import ClipSpec, Manner

__all__ = ["ClipSpec", "Manner", "Shot", "Take", "prepare"]


@dataclass(frozen=True, slots=True, eq=False)
class Shot:
    """One frame: its time, its picture (height, width, 3) RGB, and the joints behind it."""

    time_s: float
    picture: NDArray[np.uint8]
    joints: truth.Joints


@dataclass(frozen=True, slots=True, eq=False)
class Take:
    """A clip ready to be shot; ``near`` are things about the person, as of ``room``."""

    spec: ClipSpec
    placed: Placed
    times_s: NDArray[np.float64]
    posed: tuple[Posed, ...]
    near: NDArray[np.float64] | None = None
    bystander: tuple[bodies.Body, Posed] | None = None

    def shots(self) -> Iterator[Shot]:
        """Render frame after frame."""
        spec = self.spec
        body = bodies.load(people.ALL[spec.person])
        figures = [Figure(body, surface.dress(body))]
        if self.bystander is not None:
            other, still = self.bystander
            figures.append(Figure(other, surface.dress(other), still))
        renderer = Renderer(figures, spec.room, self.placed, self.near)
        film = Film(spec.lens, spec.seed)
        try:
            for time_s, posed in zip(self.times_s, self.posed, strict=True):
                picture = film.expose(renderer.draw(posed))
                yield Shot(float(time_s), picture, truth.Joints.of(posed))
        finally:
            renderer.close()


def prepare(spec: ClipSpec) -> Take:
    """Pose every frame and place the camera."""
    body = bodies.load(people.ALL[spec.person])
    seconds = spec.script.duration_s if spec.script else spec.everyday_s
    times_s = np.arange(round(seconds * spec.fps) + 1) / spec.fps
    posed = tuple(
        posing.stand(body, spec.side, arm, other, stance)
        for arm, other, stance in moments(spec, times_s, body)
    )
    placed = staging.put_camera(spec, body, posed)
    near = staging.near(spec, body, posed[0], placed)
    return Take(spec, placed, times_s, posed, near, staging.bystander(spec, placed))


def moments(
    spec: ClipSpec, times_s: NDArray[np.float64], body: bodies.Body
) -> Iterator[tuple[posing.Arm, posing.Arm, posing.Stance]]:
    rng = np.random.default_rng(spec.seed)
    manner = spec.manner
    breath = np.sin(2 * np.pi * rng.uniform(0.2, 0.3) * times_s + rng.uniform(0, 6))
    sway = [wobble(times_s, manner.sway_deg * k, rng, 0.25) for k in (1.0, 0.7)]
    head = [wobble(times_s, 5.0, rng, 0.12), wobble(times_s, 8.0, rng, 0.1)]
    drift = [wobble(times_s, a, rng, 0.15) for a in (1.2, 1.5, 3.0, 4.0)]
    shake = wobble(times_s, manner.wobble_deg, rng, 0.9)
    # A stout trunk keeps the hanging arms further out.
    girth_deg = 9.0 * max(people.ALL[spec.person].weight - 0.5, 0.0) / 0.35
    if spec.script is None:
        poses = everyday.perform(times_s, rng)
    else:
        profile_deg = spec.script.angle_deg(times_s)
        peaks = [rep.peak_deg for rep in spec.script.repetitions]
        top_deg = max(peaks, key=abs)
    for i in range(len(times_s)):
        resting = posing.Arm(
            "flexion",
            2.0 + drift[2][i],
            away_deg=8.0 + girth_deg + drift[0][i],
            elbow_deg=13.0 + drift[3][i],
            pronation_deg=22.0,
        )
        if spec.script is None:
            arm, other, yaw_deg, lean_deg = poses[i]
            done = 0.0
        else:
            done = float(np.clip(profile_deg[i] / top_deg, 0.0, 1.1)) ** 1.5
            arm = _exercise_arm(spec, profile_deg[i] + shake[i], done, girth_deg + drift[0][i])
            helps = _smooth(done / 0.6) if manner.helps else 0.0
            other = gesturing.other_arm(spec.gestures, times_s[i], replace(resting, helps=helps))
            yaw_deg, lean_deg = 0.0, 0.0
        yield (
            arm,
            other,
            posing.Stance(
                yaw_deg=manner.yaw_deg + yaw_deg + drift[1][i],
                sway_deg=(float(sway[0][i]), float(sway[1][i])),
                lean_deg=manner.slouch_deg
                + manner.lean_deg * done
                + lean_deg
                + 0.4 * manner.breath_deg * breath[i],
                side_lean_deg=manner.side_lean_deg * done,
                twist_deg=manner.twist_deg * done,
                hike_deg=manner.hike_deg * done + manner.breath_deg * breath[i],
                other_hike_deg=manner.breath_deg * breath[i],
                head_deg=(manner.nod_deg + float(head[0][i]), manner.look_deg + float(head[1][i])),
                feet_apart_deg=manner.thighs_apart_deg,
                rhythm=manner.rhythm,
                position=spec.position,
                support_m=spec.room.support_m,
                hips_deg=manner.hips_deg,
                shins_deg=manner.shins_deg,
                door=spec.door,
            ),
        )


def _exercise_arm(spec: ClipSpec, angle_deg: float, done: float, out_deg: float) -> posing.Arm:
    manner, movement = spec.manner, spec.movement
    away_deg = manner.away_deg + manner.away_change_deg * done
    elbow_deg = manner.elbow_deg + manner.elbow_change_deg * done
    low = max(0.0, 1.0 - abs(angle_deg) / 60.0)
    smooth = _smooth(angle_deg / 160.0)
    if movement.startswith("external-rotation"):
        return posing.Arm(
            movement, angle_deg, away_deg=away_deg + out_deg, elbow_deg=elbow_deg,
            pronation_deg=5.0, forward_deg=manner.forward_deg,
        )  # fmt: skip
    if movement == truth.BEHIND_BACK:
        if manner.reach is None:
            raise ValueError("a hand behind the back needs its reach")
        reach = replace(
            manner.reach, ratio=1.0 - angle_deg / 100.0, out_deg=manner.reach.out_deg + out_deg
        )
        return posing.Arm(movement, 0.0, pronation_deg=6.0, reach=reach)
    if movement == "horizontal-adduction":
        sink_deg = manner.drop_deg * (1.0 - _smooth(done / 0.3))
        return posing.Arm(
            movement, angle_deg, away_deg=away_deg - sink_deg, elbow_deg=elbow_deg,
            pronation_deg=30.0,
        )  # fmt: skip
    axial_deg = {"flexion": -30.0 * smooth, "abduction": 60.0 * smooth}.get(movement, 0.0)
    # The girth of the trunk only matters to an arm that hangs beside it.
    extra_deg = 0.0 if movement == "abduction" else out_deg * max(low, 0.2)
    return posing.Arm(
        movement, angle_deg, away_deg=away_deg + extra_deg, elbow_deg=elbow_deg,
        axial_deg=axial_deg, pronation_deg=18.0 * low + 4.0,
    )  # fmt: skip


def _smooth(part: float) -> float:
    """Give 0 to 1 with soft ends for a part clipped to 0-1."""
    part = float(np.clip(part, 0.0, 1.0))
    return part * part * (3 - 2 * part)


def truth_rows(spec: ClipSpec, joints: list[truth.Joints]) -> dict[str, NDArray[np.float64]]:
    """Give what is true of every frame, each (N,), degrees and a ratio; NaN what is not asked."""
    elevation = np.array([truth.elevation_deg(spec.side, j) for j in joints])
    angle_deg, ratio = np.full(len(joints), np.nan), np.full(len(joints), np.nan)
    if spec.movement == truth.BEHIND_BACK:
        ratio = np.array([truth.reach_ratio(spec.side, j) for j in joints])
    else:
        angle_deg = np.array([truth.angle_deg(spec.movement, spec.side, j) for j in joints])
    return {
        "angle_deg": angle_deg,
        "reach_ratio": ratio,
        "elevation_deg": elevation[:, 0],
        "plane_deg": elevation[:, 1],
        "elbow_deg": np.array([truth.elbow_flexion_deg(spec.side, j) for j in joints]),
    }


def true_holds(spec: ClipSpec, times_s: Any, rows: dict[str, Any]) -> list[dict[str, float]]:
    """Give the holds; the value is the median true angle or ratio after the first second."""
    column, key, digits = "angle_deg", "value_deg", 3
    if spec.movement == truth.BEHIND_BACK:
        column, key, digits = "reach_ratio", "value_ratio", 5
    out = []
    for hold in spec.script.holds() if spec.script else ():
        inside = (times_s >= hold.start_s + 1.0) & (times_s <= hold.end_s)
        out.append(
            {
                "start_s": round(hold.start_s, 4),
                "end_s": round(hold.end_s, 4),
                "held_s": round(hold.held_s, 4),
                key: round(float(np.median(rows[column][inside])), digits),
            }
        )
    return out


def spec_document(spec: ClipSpec) -> dict[str, Any]:
    """Give the whole recipe as plain values."""
    return asdict(spec)

"""Arms that move as told, and a camera that errs as measured: readings with a known truth."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from coach.domain.reading import Doubt, Form, Reading

SHAPES: dict[str, Callable[[float], float]] = {
    "minimum-jerk": lambda u: u**3 * (10 - 15 * u + 6 * u * u),
    "smoothstep": lambda u: u * u * (3 - 2 * u),
    "linear": lambda u: u,
    "cosine": lambda u: (1 - math.cos(math.pi * u)) / 2,
    "minimum-snap": lambda u: u**4 * (35 - 84 * u + 70 * u**2 - 20 * u**3),
}


@dataclass(frozen=True)
class Leg:
    """Go to ``level_deg`` in ``ramp_s``, stay ``stay_s`` while creeping by ``creep_deg``."""

    level_deg: float
    ramp_s: float
    stay_s: float
    shape: str = "minimum-jerk"
    creep_deg: float = 0.0


@dataclass(frozen=True)
class Arm:
    """Legs from a first level; breathing and sway lie on top of all of it."""

    start_deg: float
    legs: tuple[Leg, ...]
    breath_deg: float = 0.0
    breath_phase: float = 0.0
    sway_deg: float = 0.0

    @property
    def duration_s(self) -> float:
        return sum(leg.ramp_s + leg.stay_s for leg in self.legs)

    def stays(self) -> list[tuple[float, float, Leg]]:
        """When each leg's plateau begins and ends."""
        out, now = [], 0.0
        for leg in self.legs:
            now += leg.ramp_s
            out.append((now, now + leg.stay_s, leg))
            now += leg.stay_s
        return out

    def angle_deg(self, time_s: float) -> float:
        now, level = 0.0, self.start_deg
        angle = level
        for leg in self.legs:
            if leg.ramp_s and time_s < now + leg.ramp_s:
                share = SHAPES[leg.shape]((time_s - now) / leg.ramp_s)
                angle = level + (leg.level_deg - level) * share
                break
            now += leg.ramp_s
            if time_s < now + leg.stay_s:
                angle = leg.level_deg + leg.creep_deg * (time_s - now) / leg.stay_s
                break
            now += leg.stay_s
            level = angle = leg.level_deg + leg.creep_deg
        breath = self.breath_deg * math.sin(2 * math.pi * 0.25 * time_s + self.breath_phase)
        sway = self.sway_deg * math.sin(2 * math.pi * 0.07 * time_s + 2 * self.breath_phase)
        return angle + breath + sway


@dataclass(frozen=True)
class Camera:
    """Frames with noise, slow bias, bursts of wrong angles, jitter, losses."""

    fps: float = 30.0
    noise_deg: float = 0.0
    bias_deg: float = 0.0
    bursts_per_min: float = 0.0
    unusable: float = 0.0
    dropped: float = 0.0
    jitter: float = 0.0
    longest_loss_s: float = 1.0
    seed: int = 0
    blind: tuple[tuple[float, float], ...] = field(default=())

    def look(self, arm: Arm) -> list[Reading]:
        rng = np.random.default_rng(self.seed)
        count = int(arm.duration_s * self.fps) + 1
        times = (np.arange(count) + rng.uniform(-0.5, 0.5, count) * self.jitter) / self.fps
        times = times - times[0]
        wrong = np.zeros(count)
        for _ in range(rng.poisson(self.bursts_per_min * arm.duration_s / 60)):
            at, size = int(rng.integers(0, count)), int(rng.integers(1, 6))
            wrong[at : at + size] = rng.choice([-1, 1]) * rng.uniform(10, 40)
        lost = np.zeros(count, dtype=bool)
        while lost.mean() < self.unusable:
            at = int(rng.integers(0, count))
            run = 1 if rng.random() < 0.9 else int(rng.uniform(0, self.longest_loss_s) * self.fps)
            lost[at : at + max(run, 1)] = True
        kept = rng.random(count) >= self.dropped
        noise = rng.normal(0, self.noise_deg, count) if self.noise_deg else np.zeros(count)
        bias = self.bias_deg * np.sin(2 * np.pi * times / 97 + rng.uniform(0, 6.28))
        out = []
        for i in np.flatnonzero(kept):
            t = float(times[i])
            if lost[i] or any(a <= t < b for a, b in self.blind):
                out.append(Reading(t, None, None, Doubt.ARM_OUT_OF_VIEW))
            else:
                angle = arm.angle_deg(t) + float(noise[i] + bias[i] + wrong[i])
                out.append(Reading(t, angle, 6.0, None, Form(trunk_lean_deg=2.0)))
        return out

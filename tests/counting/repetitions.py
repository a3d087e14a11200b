"""Arms that go up and come back a known number of times, held or not, by kind."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from coach.counting.task import Task

from .simulator import Arm, Camera, Leg

Random = np.random.Generator
SHAPES = ("minimum-jerk", "smoothstep", "cosine")


@dataclass(frozen=True)
class Case:
    arm: Arm
    camera: Camera
    task: Task = field(default_factory=Task)
    tops: tuple[int, ...] = ()
    """The legs that are the tops of complete repetitions."""


def least_range_deg(camera: Camera) -> float:
    """Range from which a count can be right: the rule's least rise, and room for noise at both
    ends. White noise through the filter keeps 0.83 of its cutoff's share of the band."""
    kept = camera.noise_deg * np.sqrt(0.83 * 2.0 / (camera.fps / 2))
    return float(max(12.0, 1.5 * 8.0 * np.hypot(1.0, kept)))


def camera_of(r: Random, **fixed: object) -> Camera:
    base = {
        "fps": float(r.choice([8, 10, 15, 24, 30, 60])),
        "noise_deg": r.uniform(0.5, 3.0),
        "unusable": r.uniform(0, 0.1),
        "longest_loss_s": 0.4,
        "dropped": r.uniform(0, 0.1),
        "jitter": r.uniform(0, 0.5),
        "seed": int(r.integers(1 << 30)),
    }
    return Camera(**{**base, **fixed})  # type: ignore[arg-type]


@dataclass
class Builder:
    """Draws the sizes of one recording and writes its legs."""

    r: Random
    camera: Camera
    rest_deg: float = 0.0
    legs: list[Leg] = field(default_factory=list)
    tops: list[int] = field(default_factory=list)

    def __post_init__(self) -> None:
        least = least_range_deg(self.camera)
        self.range_deg = float(np.exp(self.r.uniform(np.log(least), np.log(170.0))))
        self.shape = str(self.r.choice(SHAPES))
        self.whole_s = self.r.uniform(1.0, 8.0)
        self.rest_s = (0.0, self.r.uniform(0.0, 3.0))[int(self.r.integers(0, 2))]

    def to(self, level_deg: float, ramp_s: float, stay_s: float = 0.0) -> None:
        self.legs.append(Leg(level_deg, ramp_s, stay_s, self.shape))

    def up(self, share: float = 1.0, stay_s: float = 0.0, counts: bool = True) -> None:
        if counts:
            self.tops.append(len(self.legs))
        self.to(self.rest_deg + share * self.range_deg, self._half_s(), stay_s)

    def down(self, share: float = 0.0, rest_s: float | None = None) -> None:
        stay_s = self.rest_s * self.r.uniform(0.5, 1.0) if rest_s is None else rest_s
        self.to(self.rest_deg + share * self.range_deg, self._half_s(), stay_s)

    def _half_s(self) -> float:
        return self.whole_s / 2 * self.r.uniform(0.8, 1.2) if self.whole_s > 1.25 else 0.5

    def case(self, start_deg: float | None = None, task: Task | None = None) -> Case:
        start = self.rest_deg if start_deg is None else start_deg
        arm = Arm(
            start, tuple(self.legs), self.r.uniform(0, 0.7), self.r.uniform(0, 6),
            self.r.uniform(0, 1.0),
        )  # fmt: skip
        return Case(arm, self.camera, task or Task(), tuple(self.tops))


def _begin(r: Random, **camera: object) -> Builder:
    builder = Builder(r, camera_of(r, **camera), r.uniform(-40, 20))
    builder.to(builder.rest_deg, 0.0, r.uniform(0.5, 3.0))
    return builder


def _count(r: Random) -> int:
    return int(r.integers(1, 13))


def there_and_back(r: Random) -> Case:
    """Nothing but repetitions, of somewhat different heights."""
    b = _begin(r)
    for _ in range(_count(r)):
        b.up(r.uniform(0.85, 1.0))
        b.down()
    return b.case()


def held(r: Random) -> Case:
    b = _begin(r)
    for _ in range(int(r.integers(1, 6))):
        b.up(stay_s=r.uniform(1.0, 12.0))
        b.down()
    return b.case()


def double_tops(r: Random) -> Case:
    """A tremble or pause at the top, and pauses on both ways."""
    b = _begin(r)
    b.range_deg = max(b.range_deg, 40.0)
    b.whole_s = max(b.whole_s, 2.0)
    for _ in range(_count(r)):
        if r.random() < 0.5:
            b.up(r.uniform(0.4, 0.7), r.uniform(0, 2), counts=False)
        b.up()
        for _ in range(int(r.integers(0, 4))):
            b.down(1 - r.uniform(0.02, 0.3), rest_s=0.0)
            b.up(r.uniform(0.85, 0.99), counts=False)
        if r.random() < 0.5:
            b.down(r.uniform(0.3, 0.7), r.uniform(0, 2))
        b.down()
    return b.case()


def partial_returns(r: Random) -> Case:
    """Back by three fifths to nine tenths before the next one; all the way at the end."""
    b = _begin(r)
    b.range_deg = max(b.range_deg, 2 * least_range_deg(b.camera))
    count = _count(r)
    for k in range(count):
        b.up(r.uniform(0.95, 1.0))
        b.down(0.0 if k == count - 1 else r.uniform(0.1, 0.4))
    return b.case()


def drifting(r: Random) -> Case:
    """Rest and top creep up or down, by a person who shifts and a camera that errs."""
    b = _begin(r, bias_deg=r.uniform(1, 5))
    step_deg = r.uniform(-0.06, 0.06) * b.range_deg
    for _ in range(_count(r)):
        b.up()
        b.rest_deg += step_deg
        b.down()
    return b.case()


def cut_off(r: Random) -> Case:
    """The recording begins with the arm up, or on its way, and ends likewise."""
    b = Builder(r, camera_of(r), r.uniform(-40, 20))
    start = b.rest_deg + b.range_deg * r.uniform(0.75, 1.0)
    b.down()
    for _ in range(_count(r)):
        b.up()
        b.down()
    b.up(counts=False, stay_s=r.uniform(0, 2))
    if r.random() < 0.5:
        b.down(r.uniform(0.7, 0.9), rest_s=0.0)
    return b.case(start)


def both_ways(r: Random) -> Case:
    """A rotation that sets out from the middle and swings past it."""
    b = _begin(r)
    b.range_deg = max(b.range_deg, 2 * least_range_deg(b.camera))
    for _ in range(_count(r)):
        b.up(r.uniform(0.9, 1.0))
        b.down(r.uniform(-0.8, -0.5))
    if r.random() < 0.5:
        b.down(0.0)
    return b.case()


def out_of_sight(r: Random) -> Case:
    """Lost from sight for up to two seconds at a time, often; repetitions of 3 s and more."""
    b = _begin(r)
    b.whole_s, b.rest_s = r.uniform(3.0, 8.0), r.uniform(1.0, 3.0)
    for _ in range(_count(r)):
        b.up(stay_s=r.uniform(0.0, 2.0))
        b.down()
    case = b.case()
    blind = []
    for k in case.tops:
        if r.random() < 0.5:
            at = case.arm.stays()[k][0] + r.uniform(-1.0, 1.0)
            blind.append((at, at + r.uniform(0.5, 1.0)))
    b.camera = Camera(**{**_fields(b.camera), "blind": tuple(blind)})
    return Case(case.arm, b.camera, case.task, case.tops)


def _fields(camera: Camera) -> dict[str, object]:
    return {name: getattr(camera, name) for name in Camera.__dataclass_fields__}


def wrong_frames(r: Random) -> Case:
    """Bursts of up to five wrong frames, at 24 frames a second and more."""
    b = _begin(r, fps=float(r.choice([24, 30, 60])), bursts_per_min=4.0)
    for _ in range(_count(r)):
        b.up(r.uniform(0.85, 1.0))
        b.down()
    return b.case()


def fidgeting(r: Random) -> Case:
    """Small movements between large ones."""
    b = _begin(r)
    b.range_deg = max(b.range_deg, 60.0)
    b.whole_s = max(b.whole_s, 2.0)
    for _ in range(int(r.integers(2, 13))):
        b.up(r.uniform(0.9, 1.0))
        b.down()
        if r.random() < 0.3:
            b.up(r.uniform(0.03, 0.12), counts=False)
            b.down()
    return b.case()


def swaying(r: Random) -> Case:
    """An arm at rest whose sway and breath stay under 5 degrees from end to end."""
    arm = Arm(0.0, (Leg(0.0, 0.0, r.uniform(20, 120)),), r.uniform(0, 0.7), r.uniform(0, 6),
              r.uniform(0, 1.8))  # fmt: skip
    return Case(arm, camera_of(r))


def wandering(r: Random) -> Case:
    """An arm that swings about a little, as in walking, under 5 degrees from end to end."""
    legs, level = [Leg(0.0, 0.0, 1.0)], 0.0
    for _ in range(int(r.integers(20, 120))):
        level = -np.sign(level or 1.0) * r.uniform(0.5, 2.5)
        legs.append(Leg(level, r.uniform(0.4, 2.0), 0.0, "cosine"))
    return Case(Arm(0.0, tuple(legs)), camera_of(r))


def only_noise(r: Random) -> Case:
    return Case(Arm(0.0, (Leg(0.0, 0.0, r.uniform(20, 120)),)), camera_of(r))


def one_way(r: Random) -> Case:
    """An arm that is put somewhere else and stays there."""
    b = _begin(r)
    b.up(stay_s=r.uniform(2, 10), counts=False)
    return b.case()


KINDS: tuple[Callable[[Random], Case], ...] = (
    there_and_back, held, double_tops, partial_returns, drifting, cut_off, both_ways, out_of_sight,
    wrong_frames, fidgeting, swaying, wandering, only_noise, one_way,
)  # fmt: skip

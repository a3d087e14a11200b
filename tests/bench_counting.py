"""Errors of holds over simulated arms, by family.

    python tests/bench_counting.py [SEQUENCES_PER_FAMILY] [SEED]

Truth is the plateau of the motion, less the time in which nothing was seen for over 0.5 s. The
shapes 'cosine' and 'minimum-snap' are unknown to the program.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from coach.counting import Task, advance, begin, finish
from coach.domain.progress import EndedBecause, HoldStarted, Repetition, RepetitionEnded
from coach.domain.reading import Reading
from tests.counting.simulator import Arm, Camera, Leg

Random = np.random.Generator
SMOOTH = ("minimum-jerk", "smoothstep")


@dataclass
class Case:
    arm: Arm
    camera: Camera
    task: Task = field(default_factory=Task)
    holds: tuple[int, ...] = ()
    """Which legs of the arm are held repetitions."""


def _camera(r: Random, **fixed: object) -> Camera:
    base = {
        "fps": float(r.choice([15, 24, 30])),
        "noise_deg": r.uniform(0.5, 2.0),
        "bias_deg": r.uniform(0, 3),
        "bursts_per_min": 1.0,
        "unusable": r.uniform(0.03, 0.1),
        "seed": int(r.integers(1 << 30)),
    }
    return Camera(**{**base, **fixed})  # type: ignore[arg-type]


def _holds(
    r: Random,
    shapes: tuple[str, ...] = SMOOTH,
    ramp: tuple[float, float] = (1.0, 3.0),
    rise: tuple[float, float] = (20.0, 150.0),
    stay: tuple[float, float] = (3.0, 12.0),
    rest: tuple[float, float] = (1.0, 5.0),
    wobble: float = 1.0,
    base: tuple[float, float] = (-5.0, 20.0),
) -> tuple[Arm, tuple[int, ...]]:
    rest_deg, top = r.uniform(*base), r.uniform(*rise)
    shape = str(r.choice(shapes))
    legs = [Leg(rest_deg, 0, r.uniform(0.5, 5))]
    held = []
    for _ in range(int(r.integers(1, 4))):
        up = rest_deg + top * r.uniform(0.9, 1.0)
        held.append(len(legs))
        stay_s = r.uniform(*stay)
        legs.append(Leg(up, r.uniform(*ramp), stay_s, shape, r.uniform(0, 0.2 * stay_s) * wobble))
        down = rest_deg + r.uniform(-2, 2)
        legs.append(Leg(down, r.uniform(*ramp), r.uniform(*rest), shape))
    arm = Arm(rest_deg, tuple(legs), wobble * r.uniform(0.3, 1), r.uniform(0, 6), 0.7 * wobble)
    return arm, tuple(held)


def clean(r: Random) -> Case:
    arm, held = _holds(r)
    quiet = _camera(r, noise_deg=r.uniform(0.3, 1.0), bursts_per_min=0.0, unusable=0.0)
    return Case(arm, quiet, holds=held)


def usual(r: Random) -> Case:
    arm, held = _holds(r)
    return Case(arm, _camera(r), holds=held)


def rough(r: Random) -> Case:
    arm, held = _holds(r)
    camera = _camera(r, noise_deg=2.0, bursts_per_min=4.0, unusable=0.15, dropped=0.1, jitter=0.6)
    return Case(arm, camera, holds=held)


def ten_a_second(r: Random) -> Case:
    arm, held = _holds(r)
    return Case(arm, _camera(r, fps=10.0), holds=held)


def five_a_second(r: Random) -> Case:
    arm, held = _holds(r)
    return Case(arm, _camera(r, fps=5.0), holds=held)


def sixty_a_second(r: Random) -> Case:
    arm, held = _holds(r)
    return Case(arm, _camera(r, fps=60.0), holds=held)


def unknown_shapes(r: Random) -> Case:
    arm, held = _holds(r, shapes=("cosine", "minimum-snap"))
    return Case(arm, _camera(r), holds=held)


def uniform_speed(r: Random) -> Case:
    arm, held = _holds(r, shapes=("linear",))
    return Case(arm, _camera(r), holds=held)


def quick(r: Random) -> Case:
    arm, held = _holds(r, ramp=(0.6, 1.0))
    return Case(arm, _camera(r), holds=held)


def slow(r: Random) -> Case:
    arm, held = _holds(r, ramp=(3.0, 4.0))
    return Case(arm, _camera(r), holds=held)


def small_range(r: Random) -> Case:
    arm, held = _holds(r, rise=(15.0, 30.0), base=(-35.0, 5.0))
    return Case(arm, _camera(r), holds=held)


def long_holds(r: Random) -> Case:
    arm, held = _holds(r, stay=(20.0, 60.0))
    return Case(arm, _camera(r), holds=held)


def barely_held(r: Random) -> Case:
    arm, held = _holds(r, stay=(2.6, 3.2))
    return Case(arm, _camera(r), holds=held)


def bounces(r: Random) -> Case:
    arm, held = _holds(r, rest=(0.0, 0.3))
    return Case(arm, _camera(r), holds=held)


def asked_short(r: Random) -> Case:
    asked = float(r.integers(1, 6))
    arm, held = _holds(r, stay=(asked + 0.3, asked + 1.5))
    return Case(arm, _camera(r), Task(asked), holds=held)


def touches(r: Random) -> Case:
    arm, _ = _holds(r, stay=(0.0, 1.4))
    return Case(arm, _camera(r))


def staged(r: Random) -> Case:
    """A pause on the way up and one on the way down; only the top counts."""
    rest, top = r.uniform(-5, 15), r.uniform(60, 140)
    shape = str(r.choice(SMOOTH))
    legs = [Leg(rest, 0, r.uniform(0.5, 4))]
    held = []
    for _ in range(2):
        for level, stay in (
            (top * r.uniform(0.45, 0.7), r.uniform(1, 4)),
            (top, r.uniform(4, 12)),
            (top * r.uniform(0.4, 0.6), r.uniform(0.5, 4)),
            (0.0, r.uniform(1, 4)),
        ):
            if level == top:
                held.append(len(legs))
            legs.append(Leg(rest + level, r.uniform(1, 2.5), stay, shape))
    return Case(Arm(rest, tuple(legs), 0.7, 1.0, 0.5), _camera(r), holds=tuple(held))


def everyday(r: Random) -> Case:
    """Reaching about for a minute, nowhere for longer than a second; then the arm hangs."""
    legs = [Leg(5.0, 0, 3.0)]
    for _ in range(20):
        level = (legs[-1].level_deg + float(r.uniform(25, 115))) % 140
        legs.append(Leg(level, r.uniform(0.8, 2), r.uniform(0, 1.0), str(r.choice(SMOOTH))))
    legs.append(Leg(5.0, 1.5, 20.0))
    return Case(Arm(5.0, tuple(legs), 0.5, 0.0, 2.0), _camera(r))


def only_rest(r: Random) -> Case:
    """An arm that hangs and sways for a minute."""
    arm = Arm(r.uniform(0, 15), (Leg(5.0, 3.0, 60.0),), 1.0, r.uniform(0, 6), 3.0)
    return Case(arm, _camera(r, bursts_per_min=4.0))


FAMILIES: tuple[Callable[[Random], Case], ...] = (
    clean,
    usual,
    rough,
    ten_a_second,
    five_a_second,
    sixty_a_second,
    unknown_shapes,
    uniform_speed,
    quick,
    slow,
    small_range,
    long_holds,
    barely_held,
    bounces,
    asked_short,
    touches,
    staged,
    everyday,
    only_rest,
)


def _blind_s(readings: list[Reading], from_s: float, to_s: float) -> float:
    usable = [x.time_s for x in readings if x.usable and from_s - 0.05 <= x.time_s <= to_s + 0.05]
    stamps = [from_s, *usable, to_s]
    return sum(b - a for a, b in pairwise(stamps) if b - a > 0.5)


def run(case: Case) -> tuple[bool, list[tuple[float, float, float]], list[float]]:
    """Whether the count is right; (onset, end, held) errors; seconds until a hold was known."""
    readings = case.camera.look(case.arm)
    state, reps, known = begin(case.task), list[Repetition](), dict[float, float]()
    for reading in readings:
        state, events = advance(state, reading)
        for event in events:
            if isinstance(event, HoldStarted):
                known[event.start_s] = event.time_s
            elif isinstance(event, RepetitionEnded):
                reps.append(event.repetition)
    for event in finish(state, state.time_s, EndedBecause.INPUT_ENDED):
        if isinstance(event, RepetitionEnded):
            reps.append(event.repetition)
    stays = [case.arm.stays()[k] for k in case.holds]
    if len(reps) != len(stays):
        return False, [], []
    errors, delays = [], []
    for rep, (start_s, end_s, _) in zip(reps, stays, strict=True):
        true_s = end_s - start_s - _blind_s(readings, start_s, end_s)
        errors.append((rep.start_s - start_s, rep.end_s - end_s, rep.held_s - true_s))
        if rep.start_s in known:
            delays.append(known[rep.start_s] - start_s)
    return True, errors, delays


def main() -> None:
    each = int(sys.argv[1]) if len(sys.argv) > 1 else 110
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    chosen = sys.argv[3:]
    print(
        f"{'family':15s} {'clips':>5s} {'wrong':>5s} {'holds':>5s} | onset bias   p95 |   end bias"
        "   p95 |  held bias  p50   p95   max  >0.7 | known p50  p95"
    )
    for family in FAMILIES:
        if chosen and family.__name__ not in chosen:
            continue
        random = np.random.default_rng([seed, len(family.__name__), ord(family.__name__[0])])
        wrong, errors, delays = 0, list[tuple[float, float, float]](), list[float]()
        for _ in range(each):
            right, more, known = run(family(random))
            wrong += not right
            errors += more
            delays += known
        head = f"{family.__name__:15s} {each:5d} {wrong:5d} {len(errors):5d} |"
        if not errors:
            print(head)
            continue
        e, off = np.array(errors), np.abs(np.array(errors))
        p95 = np.quantile(off, 0.95, axis=0)
        late = np.quantile(delays, [0.5, 0.95])
        print(
            f"{head} {e[:, 0].mean():+10.2f} {p95[0]:5.2f} |"
            f" {e[:, 1].mean():+10.2f} {p95[1]:5.2f} |"
            f" {e[:, 2].mean():+10.2f} {np.median(off[:, 2]):5.2f} {p95[2]:5.2f}"
            f" {off[:, 2].max():5.2f} {(off[:, 2] > 0.7).sum():5d} |"
            f" {late[0]:9.2f} {late[1]:4.2f}",
            flush=True,
        )


if __name__ == "__main__":
    main()

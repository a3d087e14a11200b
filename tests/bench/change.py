"""How often is an unchanged patient called changed, and a change of 15 degrees missed?

    python -m tests.bench.change [--count 400] [--seed 1001] [--sittings 10 14 ...]

Simulated patients sit daily with 1 to 3 holds of 1.5 degrees of scatter; everything goes through
session documents as in the program. What scatters, SD in degrees:

- white: 3 from day to day, 2.5 by putting up the camera anew (``norms.PLACEMENT_SEM``);
- white, large: 4.5 and 2.5;
- carried over, strong: 5 whose autoregression is 0.6, and 2.5: beyond what the review is made for;
- carried over: 3.5 whose first-order autoregression is 0.5 from sitting to sitting, and 2.5;
- good and bad weeks: 2 by week, autoregression 0.5 from week to week, 2 from day to day, 2.5;
- camera moved once, halfway: 2.5 on each side of it for good, 3 from day to day.

The change is 15 degrees, all of it in the middle third, so that the first third and the last hold
still; "steady" spreads it over the whole course, so that first and last weeks' means differ by
less. "best possible" is what a test at 5 % false alarms would miss that knows the true standard
error of the same difference.
"""

from __future__ import annotations

import argparse
from collections.abc import Callable

import numpy as np
from scipy import stats

from coach.domain.session import SessionDocument
from coach.review.change import Summary, Verdict, summary
from coach.review.history import history
from tests.review.six_patients import FLEXION, hold, plan_of, sitting

Noise = Callable[[np.random.Generator, int], np.ndarray]
CHANGE_DEG = 15.0
PLACEMENT_SD_DEG, HOLD_SD_DEG = 2.5, 1.5
SITTINGS = (10, 14, 21, 28, 42, 60)
CODE = "SH-200"
PLAN = plan_of(CODE, (FLEXION,))


def autoregressive(rng: np.random.Generator, count: int, sd: float, carry: float) -> np.ndarray:
    """A first-order autoregressive series in its stationary state."""
    steps = rng.normal(0, sd * np.sqrt(1 - carry**2), count)
    series = [rng.normal(0, sd)]
    for step in steps[1:]:
        series.append(carry * series[-1] + step)
    return np.array(series)


def white(rng: np.random.Generator, count: int) -> np.ndarray:
    return rng.normal(0, 3.0, count) + rng.normal(0, PLACEMENT_SD_DEG, count)


def white_large(rng: np.random.Generator, count: int) -> np.ndarray:
    return rng.normal(0, 4.5, count) + rng.normal(0, PLACEMENT_SD_DEG, count)


def carried_over(rng: np.random.Generator, count: int) -> np.ndarray:
    return autoregressive(rng, count, 3.5, 0.5) + rng.normal(0, PLACEMENT_SD_DEG, count)


def weeks(rng: np.random.Generator, count: int) -> np.ndarray:
    by_week = autoregressive(rng, count // 7 + 1, 2.0, 0.5)
    days = rng.normal(0, np.hypot(2.0, PLACEMENT_SD_DEG), count)
    return np.repeat(by_week, 7)[:count] + days


def moved_once(rng: np.random.Generator, count: int) -> np.ndarray:
    before, after = rng.normal(0, PLACEMENT_SD_DEG, 2)
    return np.where(np.arange(count) < count // 2, before, after) + rng.normal(0, 3.0, count)


def carried_over_strong(rng: np.random.Generator, count: int) -> np.ndarray:
    return autoregressive(rng, count, 5.0, 0.6) + rng.normal(0, PLACEMENT_SD_DEG, count)


NOISES: dict[str, Noise] = {
    "white": white,
    "white, large": white_large,
    "carried over": carried_over,
    "good and bad weeks": weeks,
    "camera moved once": moved_once,
    "carried over, strong": carried_over_strong,
}


def still_then_changed(count: int) -> np.ndarray:
    """The change in the middle third."""
    third = count // 3
    return CHANGE_DEG * np.clip((np.arange(count) - third + 1) / (count - 2 * third + 1), 0, 1)


def steady(count: int) -> np.ndarray:
    """The change all along."""
    return CHANGE_DEG * np.arange(count) / (count - 1)


def patient(rng: np.random.Generator, course: np.ndarray) -> list[SessionDocument]:
    """Daily sittings of one patient whose level follows the course."""
    return [
        sitting(
            CODE,
            day,
            [hold(k + 1, 100 + v + rng.normal(0, HOLD_SD_DEG)) for k in range(rng.integers(1, 4))],
            plan=PLAN,
        )
        for day, v in enumerate(course)
    ]


def judged(rng: np.random.Generator, course: np.ndarray) -> Summary:
    """What the review says of one simulated patient."""
    (series,) = history(patient(rng, course))
    found = summary(series)
    assert found is not None
    return found


def called_real(found: Summary, *, gained: bool = False) -> bool:
    difference = found.difference
    assert difference is not None
    right_way = difference.change > 0 or not gained
    return difference.verdict is Verdict.REAL and right_way


def rates(seed: int, count: int, sittings: int, kind: str) -> tuple[float, float, float, float]:
    """False changes; missed changes, still at the ends and steady; the best possible."""
    noise = NOISES[kind]
    rng = np.random.default_rng([seed, sittings, list(NOISES).index(kind)])
    false, missed, missed_steady = 0, 0, 0
    changes = []
    for _ in range(count):
        unchanged = judged(rng, noise(rng, sittings))
        assert unchanged.difference is not None
        changes.append(unchanged.difference.change)
        false += called_real(unchanged)
        changed = judged(rng, noise(rng, sittings) + still_then_changed(sittings))
        missed += not called_real(changed, gained=True)
        changed = judged(rng, noise(rng, sittings) + steady(sittings))
        missed_steady += not called_real(changed, gained=True)
    se = float(np.sqrt(np.mean(np.square(changes))))
    best = float(stats.norm.cdf(1.96 - CHANGE_DEG / se))
    return false / count, missed / count, missed_steady / count, best


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=400)
    parser.add_argument("--seed", type=int, default=1001)
    parser.add_argument("--sittings", type=int, nargs="+", default=SITTINGS)
    asked = parser.parse_args()
    print("| scatter | sittings | false change | missed 15 | missed, steady | best possible |")
    print("|---|---|---|---|---|---|")
    for kind in NOISES:
        found = []
        for sittings in asked.sittings:
            row = rates(asked.seed, asked.count, sittings, kind)
            found.append(row)
            cells = " | ".join(f"{100 * share:.1f} %" for share in row)
            print(f"| {kind} | {sittings} | {cells} |", flush=True)
        mean = " | ".join(f"{100 * share:.1f} %" for share in np.mean(found, axis=0))
        print(f"| {kind} | all | {mean} |", flush=True)


if __name__ == "__main__":
    main()

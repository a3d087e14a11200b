"""How often is an unchanged patient called changed, and a change of 15 degrees called none?

    python -m tests.bench.change [--held-out] [--count 400] [--seed 1001] [--sittings 10 14 ...]

Simulated patients sit daily with 1 to 3 holds of 1.5 degrees of scatter; everything goes through
session documents as in the program. What scatters is in ``TUNING``, by which the review's choices
were made, and in ``HELD_OUT``, which they were not; the numbers are SD in degrees, ``r`` is what a
sitting (of weeks: a week) leaves to the next. Putting up the camera anew adds 2.5 each sitting
(``norms.PLACEMENT_SEM``) unless said otherwise; "moved once": for good.

The change is 15 degrees, all of it in the middle third, so that the first third and the last hold
still; "steady" spreads it over the whole course, so that first and last weeks' means differ by
less. Called none, or the wrong way, is missed; what the review leaves open is counted by itself.
"""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence

import numpy as np

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


def days(sd: float, carry: float = 0.0, placement: float = PLACEMENT_SD_DEG) -> Noise:
    """From day to day, and the camera put up anew each time."""
    return lambda rng, n: autoregressive(rng, n, sd, carry) + rng.normal(0, placement, n)


def weeks(sd: float, carry: float, day_sd: float) -> Noise:
    """Good and bad weeks, and days in them."""

    def noise(rng: np.random.Generator, n: int) -> np.ndarray:
        by_week = np.repeat(autoregressive(rng, n // 7 + 1, sd, carry), 7)[:n]
        return by_week + rng.normal(0, np.hypot(day_sd, PLACEMENT_SD_DEG), n)

    return noise


def moved(
    sd: float, carry: float = 0.0, at: float = 0.5, placement: float = PLACEMENT_SD_DEG
) -> Noise:
    """The camera moved once, for good."""

    def noise(rng: np.random.Generator, n: int) -> np.ndarray:
        before, after = rng.normal(0, placement, 2)
        return np.where(np.arange(n) < at * n, before, after) + autoregressive(rng, n, sd, carry)

    return noise


def slipped(base: Noise, share: float, size: float) -> Noise:
    """Some sittings far off, by half to one and a half of a size, either way."""

    def noise(rng: np.random.Generator, n: int) -> np.ndarray:
        off = rng.choice((-1, 1), n) * rng.uniform(0.5 * size, 1.5 * size, n)
        return base(rng, n) + (rng.random(n) < share) * off

    return noise


def bowed(base: Noise, height: float) -> Noise:
    """A level that drifts away and back again."""

    def noise(rng: np.random.Generator, n: int) -> np.ndarray:
        bow = rng.choice((-1, 1)) * height * np.sin(np.pi * np.arange(n) / (n - 1))
        return base(rng, n) + bow

    return noise


TUNING: dict[str, Noise] = {
    "days 3": days(3),
    "days 4.5": days(4.5),
    "days 4, r 0.3": days(4, 0.3),
    "days 3.5, r 0.5": days(3.5, 0.5),
    "days 5, r 0.6": days(5, 0.6),
    "days 5, r 0.7": days(5, 0.7),
    "days 3, r 0.8": days(3, 0.8),
    "weeks 2, r 0.5, days 2": weeks(2, 0.5, 2),
    "weeks 3, r 0.4, days 2": weeks(3, 0.4, 2),
    "moved once, days 3": moved(3),
    "moved once, days 3, r 0.5": moved(3, 0.5),
    "days 3, 5 % off by 15": slipped(days(3), 0.05, 15),
}
HELD_OUT: dict[str, Noise] = {
    "days 2, placed 2": days(2, placement=2),
    "days 6": days(6),
    "days 4, r 0.45": days(4, 0.45),
    "days 4.5, r 0.65": days(4.5, 0.65),
    "days 3, r 0.75": days(3, 0.75),
    "days 4, r 0.85": days(4, 0.85),
    "weeks 3, r 0.7, days 2.5": weeks(3, 0.7, 2.5),
    "moved at 0.7, days 2.5": moved(2.5, at=0.7),
    "moved once, days 1.5": moved(1.5),
    "moved once, days 2.5, r 0.65": moved(2.5, 0.65),
    "days 3, r 0.4, 8 % off by 12": slipped(days(3, 0.4), 0.08, 12),
    "moved once, 4 % off by 20": slipped(moved(2.5), 0.04, 20),
    "days 3, away by 6 and back": bowed(days(3), 6),
    "days 3, placed 3": days(3, placement=3),
    "moved once by 3, days 3": moved(3, placement=3),
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


def verdicts(noise: Noise, seed: Sequence[int], count: int, sittings: int) -> np.ndarray:
    """Shares: called changed; open where unchanged; then missed and open, changed and steady."""
    rng = np.random.default_rng(seed)
    courses = (np.zeros(sittings), still_then_changed(sittings), steady(sittings))
    found = np.zeros((3, 2))
    for _ in range(count):
        for row, course in zip(found, courses, strict=True):
            difference = judged(rng, noise(rng, sittings) + course).difference
            assert difference is not None
            real = difference.verdict is Verdict.REAL
            if course.any():
                none = difference.verdict is Verdict.WITHIN_ERROR
                row += (none or (real and difference.change < 0), not real and not none)
            else:
                row += (real, difference.verdict in (Verdict.UNDECIDED, Verdict.TOO_FEW))
    return found.ravel() / count


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--held-out", action="store_true")
    parser.add_argument("--count", type=int, default=400)
    parser.add_argument("--seed", type=int, default=1001)
    parser.add_argument("--sittings", type=int, nargs="+", default=SITTINGS)
    asked = parser.parse_args()
    print("| scatter | sittings | false change | open | missed 15 | open | missed, steady | open |")
    print("|---|---|---|---|---|---|---|---|")
    for number, (kind, noise) in enumerate((HELD_OUT if asked.held_out else TUNING).items()):
        for sittings in asked.sittings:
            seed = (asked.seed, sittings, number)
            shares = verdicts(noise, seed, asked.count, sittings)
            cells = " | ".join(f"{100 * share:.1f} %" for share in shares)
            print(f"| {kind} | {sittings} | {cells} |", flush=True)


if __name__ == "__main__":
    main()

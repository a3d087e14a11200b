"""Counts and values of repetitions over simulated arms, by kind.

    python tests/bench_excursions.py [RECORDINGS_PER_KIND] [SEED] [KIND ...]

Repetitions of 1 to 8 s, 0 to 3 s of rest, 8 to 60 frames a second, noise of 0.5 to 3 degrees,
ranges from 12 degrees (more where the noise asks for it) to 170. An error is the value less the
arm's own angle at its top, the seconds those between its top and the one found.
"""

from __future__ import annotations

import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from coach.counting.excursions import excursions
from tests.counting.repetitions import KINDS, Case


def run(case: Case) -> tuple[int, list[tuple[float, float]]]:
    """How many too many were counted; errors of value and of the top's stamp where none."""
    found = excursions(case.camera.look(case.arm), case.task)
    stays = [case.arm.stays()[k] for k in case.tops]
    if len(found) != len(stays):
        return len(found) - len(stays), []
    errors = []
    for each, (start_s, end_s, leg) in zip(found, stays, strict=True):
        away_s = each.peak_s - min(max(each.peak_s, start_s), end_s)
        top = leg.level_deg
        if each.value is not None:
            errors.append((each.value - top, away_s))
    return 0, errors


def main() -> None:
    each = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    chosen = sys.argv[3:]
    print(f"{'kind':16s} {'exact':>7s}  few many | value bias   p95 | top's time p95")
    for number, kind in enumerate(KINDS):
        if chosen and kind.__name__ not in chosen:
            continue
        off, errors = [], list[tuple[float, float]]()
        for k in range(each):
            wrong, more = run(kind(np.random.default_rng([seed, number, k])))
            off.append(wrong)
            errors += more
        wrong = np.array(off)
        line = (
            f"{kind.__name__:16s} {np.mean(wrong == 0):7.1%}"
            f" {np.sum(wrong < 0):4d} {np.sum(wrong > 0):4d} |"
        )
        if errors:
            e = np.array(errors)
            p95 = np.quantile(np.abs(e), 0.95, axis=0)
            line += f" {e[:, 0].mean():+10.2f} {p95[0]:5.2f} | {p95[1]:10.2f}"
        print(line, flush=True)


if __name__ == "__main__":
    main()

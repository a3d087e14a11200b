"""Everyday movement of a standing person: nothing in it is an exercise or a hold."""

from __future__ import annotations

import numpy as np

from tests.bench.motion import min_jerk
from tests.bench.posing import Arm
from tests.bench.skeleton import Array

# Each habit: flexion, away, elbow, axial and pronation of the exercising arm, the same of the
# other arm, yaw and forward lean of the person; degrees. None is kept for two seconds.
HABITS: dict[str, tuple[float, ...]] = {
    "hang": (3, 9, 14, 0, 20, 2, 9, 15, 0, 20, 0, 0),
    "look at the watch": (28, 14, 95, -45, 60, 3, 9, 14, 0, 20, 0, 3),
    "scratch the head": (62, 28, 128, 5, 0, 4, 10, 16, 0, 20, 5, 2),
    "hands to the hips": (-12, 38, 82, -38, 60, -12, 38, 82, -38, 60, 0, 0),
    "reach for a shelf": (104, 14, 18, -10, 10, 4, 10, 20, 0, 20, -8, 1),
    "turn round": (6, 12, 22, 0, 20, -4, 12, 22, 0, 20, 26, 0),
    "talk with both hands": (24, 16, 72, -8, 10, 26, 14, 80, -10, 10, -6, 2),
    "bend for something": (42, 12, 20, 0, 10, 12, 12, 20, 0, 20, 0, 24),
    "swing the arms": (-18, 10, 12, 0, 20, 20, 10, 18, 0, 20, 4, 0),
}


def perform(times_s: Array, rng: np.random.Generator) -> list[tuple[Arm, Arm, float, float]]:
    """Give exercising arm, other arm, yaw and lean (degrees) at every time (N,)."""
    knots: list[tuple[float, Array]] = [(0.0, np.array(HABITS["hang"], float))]
    t, names = 0.0, list(HABITS)
    while t < times_s[-1]:
        for name in rng.permutation(names[1:]):
            habit = np.array(HABITS[str(name)], float)
            values = habit * rng.uniform(0.85, 1.1, habit.shape)
            for value, dwell_s in ((values, rng.uniform(0.1, 0.9)), (knots[0][1], 0.4)):
                t += float(rng.uniform(0.7, 1.3))
                knots.append((t, value))
                t += float(dwell_s)
                knots.append((t, value))
    knot_times_s = np.array([knot[0] for knot in knots])
    out = []
    for time_s in times_s:
        i = int(np.searchsorted(knot_times_s, time_s, side="right")) - 1
        (t0, a), (t1, b) = knots[i], knots[min(i + 1, len(knots) - 1)]
        part = np.clip((time_s - t0) / max(t1 - t0, 1e-9), 0.0, 1.0)
        v = [float(x) for x in a + (b - a) * min_jerk(np.array(part))]
        out.append((_arm(v[0:5]), _arm(v[5:10]), v[10], v[11]))
    return out


def _arm(values_deg: list[float]) -> Arm:
    angle_deg, away_deg, elbow_deg, axial_deg, pronation_deg = values_deg
    return Arm("flexion", angle_deg, away_deg, elbow_deg, axial_deg, pronation_deg)

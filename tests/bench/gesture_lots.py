"""Random but reproducible clips in which the other hand is raised.

Such a clip has a script of its own: at rest the other hand goes up for a moment; during the first
hold for long; then it comes to the face or onto the head; the second repetition is done with both
hands together.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np

from tests.bench.gesturing import Act
from tests.bench.motion import Repetition, Script
from tests.bench.spec import ClipSpec

Some = Callable[[float, float], float]


def gesturing(spec: ClipSpec, peaks_deg: tuple[float, float]) -> ClipSpec:
    """Give the clip with the script of gestures; ``peaks_deg`` are the ends of range to draw from.

    The second repetition goes far: overhead, where the movement leads there.
    """
    assert spec.script is not None
    rng = np.random.default_rng([spec.seed, 2])

    def some(low: float, high: float) -> float:
        return round(float(rng.uniform(low, high)), 2)

    low, high = peaks_deg
    first = Repetition(
        some(low, high), 9.5, raise_s=some(1.6, 2.4), return_s=some(1.4, 2.0), rest_s=5.6
    )
    second = Repetition(
        some(low + 0.8 * (high - low), high), 3.5, raise_s=some(2.0, 3.2), return_s=some(1.6, 2.4),
        rest_s=4.2,
    )  # fmt: skip
    script = Script(spec.script.rest_deg, (first, second), tail_s=1.0)
    held, again = script.holds()
    brief_s, long_s = some(1.4, 2.0), held.start_s + some(1.6, 2.0)
    face_s = held.end_s + first.return_s + 1.2
    acts = (
        Act("raise", brief_s, brief_s + some(2.4, 2.8), *_ways_s(some), _raised(spec, some)),
        Act("raise", long_s, long_s + 5.8, *_ways_s(some), _raised(spec, some)),
        Act("face", face_s, face_s + 1.5, 0.8, 0.6, _at_face(some)),
        Act(
            "together", again.start_s - second.raise_s - 0.2, again.end_s + second.return_s, 0.6,
            0.6, apart=float(rng.choice([0.15, 1.0])),
        ),
    )  # fmt: skip
    still = replace(spec.manner, helps=False)
    return replace(spec, name=f"{spec.name}_gesture", script=script, manner=still, gestures=acts)


def _ways_s(some: Some) -> tuple[float, float]:
    return some(0.7, 1.2), some(0.6, 1.0)


def _raised(spec: ClipSpec, some: Some) -> tuple[float, float, float]:
    """How somebody holds a hand up, so that it is seen."""
    if spec.position == "supine":
        return some(75, 105), some(0, 20), some(5, 35)
    if spec.position == "prone":
        return -some(30, 45), some(0, 25), some(5, 25)
    return some(125, 170), some(0, 25), some(5, 45)


def _at_face(some: Some) -> tuple[float, float, float]:
    """Scratching the head, or wiping the face."""
    return some(50, 75), some(-10, 28), some(122, 138)

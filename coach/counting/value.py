"""What a hold is worth: a repetition from its readings."""

from __future__ import annotations

from collections.abc import Callable
from statistics import median

import numpy as np

from coach.counting.hold import Sample
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.reading import Form

SKIPPED_S = 1.0
"""The first second of a hold is the arm still giving way (common practice, median of the rest)."""


def repetition(
    rows: tuple[Sample, ...],
    *,
    number: int,
    start_s: float,
    end_s: float,
    held_s: float,
    seen_s: float,
    ended_because: EndedBecause,
) -> Repetition:
    """Summarise the readings between ``start_s`` and ``end_s``.

    The value is the median without the first second (of holds under two seconds: without their
    first half). Its error is the median of the readings' own half widths: their errors are bias
    of placement and landmarks, which more frames do not average out. The spread is the
    interquartile range.
    """
    span_s = end_s - start_s
    held = [row for row in rows if start_s <= row.time_s <= end_s] or list(rows[-1:])
    late = [row for row in held if row.time_s >= start_s + min(SKIPPED_S, span_s / 2)] or held
    angles = [row.angle_deg for row in late]
    low, middle, high = np.percentile(angles, [25, 50, 75])
    return Repetition(
        number=number,
        start_s=start_s,
        end_s=end_s,
        held_s=min(max(held_s, 0.0), span_s),
        value_deg=float(middle),
        error_deg=median(row.error_deg for row in late),
        spread_deg=float(high - low),
        seen_fraction=min(1.0, max(0.0, seen_s / span_s)) if span_s > 0 else 1.0,
        ended_because=ended_because,
        form=Form(
            trunk_lean_deg=_median_of(late, lambda form: form.trunk_lean_deg),
            trunk_turn_deg=_median_of(late, lambda form: form.trunk_turn_deg),
            elbow_flexion_deg=_median_of(late, lambda form: form.elbow_flexion_deg),
        ),
    )


def _median_of(rows: list[Sample], pick: Callable[[Form], float | None]) -> float | None:
    known = [value for row in rows if (value := pick(row.form)) is not None]
    return median(known) if known else None

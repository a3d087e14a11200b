"""What a hold is worth: a repetition from its readings."""

from __future__ import annotations

from statistics import median

import numpy as np

from coach.counting.hold import Sample
from coach.counting.task import DEGREES_PER_UNIT
from coach.domain.movement import Unit
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
    unit: Unit,
) -> Repetition:
    """Summarise the readings between ``start_s`` and ``end_s``.

    The value is the median without the first second (of holds under two seconds: without their
    first half). Its error is the median of the readings' own half widths: their errors are bias
    of placement and landmarks, which more frames do not average out. The spread is the
    interquartile range. All three come out in ``unit``.
    """
    span_s = end_s - start_s
    held = [row for row in rows if start_s <= row.time_s <= end_s] or list(rows[-1:])
    late = [row for row in held if row.time_s >= start_s + min(SKIPPED_S, span_s / 2)] or held
    scale = DEGREES_PER_UNIT[unit]
    quartiles = np.percentile([row.angle_deg / scale for row in late], [25, 50, 75])
    return Repetition(
        number=number,
        start_s=start_s,
        end_s=end_s,
        held_s=min(max(held_s, 0.0), span_s),
        value=float(quartiles[1]),
        error=median(row.error for row in late),
        spread=float(quartiles[2] - quartiles[0]),
        unit=unit,
        seen_fraction=min(1.0, max(0.0, seen_s / span_s)) if span_s > 0 else 1.0,
        ended_because=ended_because,
        form=Form(**{name: _median_of(late, name) for name in Form.__struct_fields__}),
    )


def _median_of(rows: list[Sample], name: str) -> float | None:
    known = [value for row in rows if (value := getattr(row.form, name)) is not None]
    return median(known) if known else None

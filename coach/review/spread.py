"""How far values lie apart."""

from __future__ import annotations

import math
from collections.abc import Sequence


def deviation(values: Sequence[float]) -> float:
    """Give the standard deviation of a sample, 0 of a single value.

    ``statistics.stdev`` reckons in fractions, which took half of the time of a history.
    """
    if len(values) < 2:
        return 0.0
    middle = math.fsum(values) / len(values)
    return math.sqrt(math.fsum((v - middle) ** 2 for v in values) / (len(values) - 1))

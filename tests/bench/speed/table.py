"""Rows of the table that the benchmark prints."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, slots=True)
class Row:
    """One quantity against its target; ``most`` or ``least`` is None where there is none."""

    what: str
    unit: str
    seen: float
    most: float | None = None
    least: float | None = None

    @property
    def met(self) -> bool | None:
        """Whether the target is met, None without one."""
        if self.most is None and self.least is None:
            return None
        low, high = self.least or -np.inf, np.inf if self.most is None else self.most
        return bool(low <= self.seen <= high)

    def __str__(self) -> str:
        """One line of the table in docs/performance.md."""
        bounds = [] if self.most is None else [f"at most {self.most:g}"]
        bounds += [] if self.least is None else [f"at least {self.least:g}"]
        verdict = {True: "met", False: "missed", None: ""}[self.met]
        return f"| {self.what} | {' '.join(bounds)} | {self.seen:.3g} {self.unit} | {verdict} |"


def percentile(values: Sequence[float], share: float) -> float:
    """Give a percentile, NaN of nothing."""
    return float(np.percentile(values, share)) if values else float("nan")

"""How well repeated measurements agree: standard error, detectable change, intraclass correlation.

Tables are (n, k): n people as rows, k raters or repetitions as columns, in one unit.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from coach.review.history import Z95


def mdc95(sem: float) -> float:
    """Give the smallest change between two measurements that is real with 95 % confidence.

    1.96 sqrt(2) SEM (Weir 2005, J Strength Cond Res 19:231; from memory), in the unit of ``sem``.
    """
    return Z95 * math.sqrt(2) * sem


def sem_of(table: NDArray[np.float64]) -> float:
    """Give the standard error of measurement: the root of the residual mean square.

    The columns' own shifts are left out, as in ICC(3,1) (Weir 2005, from memory).
    """
    return math.sqrt(_mean_squares(table)[2])


def icc_2_1(table: NDArray[np.float64]) -> float:
    """Agreement of single measurements by raters drawn at random (Shrout & Fleiss 1979)."""
    people, raters, residual = _mean_squares(table)
    n, k = table.shape
    spread = people + (k - 1) * residual + k * (raters - residual) / n
    return (people - residual) / float(spread)


def icc_3_1(table: NDArray[np.float64]) -> float:
    """Consistency of single measurements by these very raters (Shrout & Fleiss 1979)."""
    people, _, residual = _mean_squares(table)
    return (people - residual) / float(people + (table.shape[1] - 1) * residual)


def _mean_squares(table: NDArray[np.float64]) -> tuple[float, float, float]:
    """Two-way analysis of variance without repetition: people, raters, residual."""
    n, k = table.shape
    if n < 2 or k < 2:
        raise ValueError(f"a table of {n} by {k} shows no agreement: two by two at least")
    mean = table.mean()
    people, raters = table.mean(axis=1) - mean, table.mean(axis=0) - mean
    rest = table - mean - people[:, None] - raters[None, :]
    return (
        float(k * (people**2).sum() / (n - 1)),
        float(n * (raters**2).sum() / (k - 1)),
        float((rest**2).sum() / ((n - 1) * (k - 1))),
    )

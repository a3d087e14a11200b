"""Student's distribution, as far as intervals need it.

SciPy has all of it, but importing ``scipy.special`` takes an eighth of a second, a good part of
the start of a window that needs one number of it.

The share between -t and t is an integral over an angle (Abramowitz & Stegun 1964, 26.7.3 and
26.7.4, before they are integrated by parts; from memory) of a function so smooth that the rule of
Gauss and Legendre gives all its digits, for few and for very many degrees of freedom alike.
"""

from __future__ import annotations

import math
from functools import cache

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

_NORMAL95 = 1.959963984540054
"""The least there is: Student's point falls to it with ever more degrees of freedom."""
_NODES = 48
_ALL = 10.0
"""Angles times the root of the degrees of freedom: the integrand is at most that of the normal
distribution, of which nothing is left here."""
_MANY = 50.0
_MOST_STEPS = 100
_CLOSE = 1e-12


def outside(dof: Floats, t: Floats) -> Floats:
    """Give the probability beyond -t and t, (n,) as both are; ``dof`` from 3 on, ``t`` positive."""
    return _outside(dof, t, _constant(dof))


def point95(weights: Floats, dof: Floats, scales: Floats) -> float:
    """Give the two-sided 95 % point of a mixture of Student's distributions, (n,) each.

    ``weights`` add up to one. What lies outside is convex, so that Newton's steps from below never
    pass the point.
    """
    constant = _constant(dof)
    at = _NORMAL95 * float(scales.min())
    for _ in range(_MOST_STEPS):
        t = at / scales
        heights = constant / np.sqrt(dof) * (1 + t**2 / dof) ** (-(dof + 1) / 2)
        missing = float(weights @ _outside(dof, t, constant)) - 0.05
        step = missing / float(2 * weights @ (heights / scales))
        at += step
        if step <= _CLOSE * at:
            break
    return at


def student95(dof: float) -> float:
    """Two-sided 95 % point of Student's distribution."""
    one = np.ones(1)
    return point95(one, dof * one, one)


def _outside(dof: Floats, t: Floats, constant: Floats) -> Floats:
    at, weights = _rule()
    angle = np.minimum(np.arctan(t / np.sqrt(dof)), _ALL / np.sqrt(dof))
    squares = np.sin(angle[:, None] * (at + 1) / 2) ** 2
    heights = np.exp((dof[:, None] - 1) / 2 * np.log1p(-squares))
    return np.asarray(1 - constant * angle * (heights @ weights))


@cache
def _rule() -> tuple[Floats, Floats]:
    return np.polynomial.legendre.leggauss(_NODES)


def _constant(dof: Floats) -> Floats:
    """Give Gamma(a + 1/2) / Gamma(a) / sqrt(pi) for a = dof / 2."""
    return np.array([_ratio(float(a)) for a in dof / 2]) / math.sqrt(math.pi)


def _ratio(a: float) -> float:
    if a < _MANY:
        return math.exp(math.lgamma(a + 0.5) - math.lgamma(a))
    # NIST Digital Library of Mathematical Functions, 5.11.13 (from memory); of large numbers'
    # logarithms the difference keeps few digits.
    series = 1 - 1 / (8 * a) + 1 / (128 * a**2) + 5 / (1024 * a**3) - 21 / (32768 * a**4)
    return math.sqrt(a) * (series - 399 / (262144 * a**5))

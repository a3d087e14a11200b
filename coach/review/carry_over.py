"""How uncertain the difference between two weeks is, where good and bad days may last.

A session's value scatters about the course by an error of its own and by a part that carries over:
serial correlation that falls off exponentially with the days between (Diggle 1988, Biometrics
44:959, from memory). How much carries over, and for how long, a few weeks hardly tell, and an
unknown course tells it badly. So no single answer is taken: a few are weighed by their restricted
likelihood (Harville 1974, Biometrika 61:383, from memory), the variance integrated out, and the
interval is that of the mixture. Few sessions leave the prior's weights, and so a wide interval.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from coach.review.student import point95
from coach.review.trend import ENOUGH_SESSIONS

Floats = NDArray[np.float64]

_INDEPENDENT = 0.4
"""Prior weight of days that have nothing to do with each other."""
_CARRIED = (0.4, 0.6, 0.8)
"""What a day leaves to the next, each as likely as the others."""
_SHARES = (0.5, 1.0)
"""How much of the variance carries over. These three lines are chosen by the tuning scatters of
``tests/bench/change.py``, and its held-out ones measure them."""
_MOST_SESSIONS = 90
_JITTER = 1e-6
"""Keeps apart what was measured at the same instant."""
_SMALLEST = 1e-12


@dataclass(frozen=True, slots=True)
class Scattering:
    """One answer: ``share`` of a session's ``variance`` is passed on, ``carry`` of it a day."""

    weight: float
    variance: float
    share: float = 0.0
    carry: float = 0.0


@dataclass(frozen=True, slots=True)
class Scatter:
    """How a patient's sessions scatter; the weights add up to one, ``dof`` is of the variances."""

    answers: tuple[Scattering, ...]
    dof: float

    def of_difference(self, first: Sequence[float], last: Sequence[float]) -> Floats:
        """Give each answer's variance of last minus first mean of sessions on these days, (n,)."""
        days = np.concatenate([first, last])
        contrast = np.repeat([-1 / len(first), 1 / len(last)], [len(first), len(last)])
        lag = np.abs(days[:, None] - days[None, :])
        variance, share, carry = np.array([(a.variance, a.share, a.carry) for a in self.answers]).T[
            :, :, None, None
        ]
        passed = (contrast @ (share * carry**lag) @ contrast).ravel()
        own = (1 - share.ravel() + _JITTER) * float(contrast @ contrast)
        return np.asarray(variance.ravel() * (passed + own))

    def independent(self, days: Sequence[float]) -> float:
        """Give how many independent sessions are worth as much as those of these days."""
        far = self.of_difference(days, [max(days) + 1e6])
        weights, variances = np.array([(a.weight, a.variance) for a in self.answers]).T
        return 1 / float(weights @ (far / variances - 1))

    def half_width(
        self, first: Sequence[float], last: Sequence[float], place: float, place_dof: float
    ) -> float:
        """Give the half width of the 95 % interval of the difference of two groups' means.

        ``first`` and ``last`` are days; ``place`` is the variance that two places of the camera
        add, known with ``place_dof`` (Welch 1947 for the sum of the two).
        """
        weights = np.array([a.weight for a in self.answers])
        own = self.of_difference(first, last)
        total = np.maximum(own + place, _SMALLEST)
        dof = total**2 / np.maximum(own**2 / self.dof + place**2 / place_dof, _SMALLEST**2)
        return point95(weights, dof, np.sqrt(total))


def scatter_of(days: Sequence[float], values: Sequence[float]) -> Scatter | None:
    """Weigh how a patient's sessions scatter, None where there are too few to tell.

    ``days`` are those of the ``values``, oldest first. The course about which they scatter may be
    still, steady, or still, changing and still again in thirds.
    """
    t, y = (np.asarray(v, float)[-_MOST_SESSIONS:] for v in (days, values))
    if len(y) < ENOUGH_SESSIONS:
        return None
    course = _course(t)
    freedom = len(y) - course.shape[1]
    found: list[tuple[float, float, float, float]] = []
    for prior, share, carry in _answers():
        correlation = _correlation(t, share, carry)
        inverse = np.linalg.inv(correlation)
        pulled = inverse @ course
        information = course.T @ pulled
        rest = y - course @ np.linalg.solve(information, pulled.T @ y)
        squares = max(float(rest @ inverse @ rest), _SMALLEST)
        likelihood = -0.5 * (
            np.linalg.slogdet(correlation)[1]
            + np.linalg.slogdet(information)[1]
            + freedom * math.log(squares)
        )
        found.append((math.log(prior) + float(likelihood), squares / freedom, share, carry))
    best = max(f[0] for f in found)
    total = sum(math.exp(f[0] - best) for f in found)
    return Scatter(
        tuple(Scattering(math.exp(log - best) / total, *rest) for log, *rest in found), freedom
    )


def _answers() -> list[tuple[float, float, float]]:
    each = (1 - _INDEPENDENT) / (len(_CARRIED) * len(_SHARES))
    carried = [(each, share, carry) for carry in _CARRIED for share in _SHARES]
    return [(_INDEPENDENT, 0.0, 0.0), *carried]


def _correlation(days: Floats, share: float, carry: float) -> Floats:
    """Give the (n, n) correlation of sessions on these days."""
    own = np.eye(len(days)) * (1 - share + _JITTER)
    if not share:
        return own
    return own + share * carry ** np.abs(days[:, None] - days[None, :])


def _course(days: Floats) -> Floats:
    """Give an orthonormal basis of the courses, (n, at most 3)."""
    passed = (days - days[0]) / max(float(days[-1] - days[0]), _SMALLEST)
    shapes = np.stack([np.ones_like(days), passed, np.clip(3 * passed - 1, 0, 1)], axis=1)
    left, sizes, _ = np.linalg.svd(shapes, full_matrices=False)
    return np.asarray(left[:, sizes > 1e-9 * sizes[0]])

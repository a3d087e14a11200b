"""Gauss-Newton fit of the body to frames: a recording shares its body, each frame has a stance.

Every residual is divided by its standard deviation, so half the sum of squares is the negative
logarithm of the posterior. Points of the picture carry Geman-McClure weights (Geman & McClure
1987): one misplaced point does not bend the body. Errors of points are bias and repeat from frame
to frame, so a recording of any length teaches as much about the body as ``INDEPENDENT`` frames
would.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from coach.goniometry.angles import Vector
from coach.goniometry.body import Body
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.guess import as_expected, from_metric
from coach.goniometry.newton import ROBUST, Eliminated, cost_of, eliminate, left_over, stepped
from coach.goniometry.residuals import Problem
from coach.goniometry.skeleton import Stance, joined

LEARNING_STEPS, PLACING_STEPS, FOLLOWING_STEPS = 12, 12, 3
SETTLED = 1e-3
"""Radians or trunk lengths: where the body is known, no step follows one so small in every frame.
What it would have added is a fraction of it, 0.06 degrees."""
NEAR = 0.02
"""Within a step so small residuals are straight: what bends is half its square, a fifth of
``SETTLED``. Its points are weighed anew without another look at the frames."""


@dataclass(frozen=True, slots=True, eq=False)
class Fit:
    """Stances of N frames with what they may err by.

    ``covariance`` (N, FREEDOMS, FREEDOMS): of a small step, the body taken as known.
    ``misfit`` (N, 6): distance of each point of the picture from the fitted one, in standard
    deviations. ``cost`` (N,): sum of squares, that of a point never above ``ROBUST`` squared.
    """

    body: Body
    stance: Stance
    covariance: Vector = field(repr=False)
    misfit: Vector = field(repr=False)
    cost: Vector = field(repr=False)

    def __getitem__(self, rows: NDArray[np.intp]) -> Fit:
        """Take some of the frames."""
        return Fit(
            self.body,
            self.stance[rows],
            self.covariance[rows],
            self.misfit[rows],
            self.cost[rows],
        )


def learn(evidence: Evidence, expectation: Expectation) -> Fit:
    """Fit body and stances to frames together."""
    expected = Body.expected(expectation)
    start = place(evidence, expectation, expected).stance
    problem = Problem.begin(evidence, expectation, expected, start)
    return _solve(problem, LEARNING_STEPS, learning=True)


def place(
    evidence: Evidence, expectation: Expectation, body: Body, start: Stance | None = None
) -> Fit:
    """Fit stances with the body as it is known; ``start`` are stances close by in time.

    Without it, and where that leads to points far from those seen, the fit begins anew from the
    metric points and from the body at rest, and takes what agrees best.
    """
    if start is not None:
        problem = Problem.begin(evidence, expectation, body, start)
        fit = _solve(problem, FOLLOWING_STEPS, learning=False)
        if np.max(fit.misfit) < ROBUST:
            return fit
    expected = as_expected(evidence, expectation, body.rest, body.log_lengths)
    frames = len(evidence)
    once = np.arange(frames)
    starts = joined([from_metric(evidence), expected])
    problem = Problem.begin(evidence[np.tile(once, 2)], expectation, body, starts)
    both = _solve(problem, PLACING_STEPS, learning=False)
    return both[np.where(both.cost[frames:] < both.cost[:frames], once + frames, once)]


def _solve(problem: Problem, steps: int, *, learning: bool) -> Fit:
    for step in range(steps):
        found = eliminate(problem, learning=learning, begun=step > 0)
        if step == 0 and not learning and _largest(found.step) < NEAR:
            straight = _weighed(found, steps - 1)
            if straight is not None:
                return _fit(stepped(problem, straight, learning=False), straight)
        problem = stepped(problem, found, learning=learning)
        # The first step is taken at full weights, before any point was found to be off.
        if not learning and step > 0 and _largest(found.step) < SETTLED:
            return _fit(problem, found)
    return _fit(problem, found, *left_over(problem))


def _weighed(found: Eliminated, steps: int) -> Eliminated | None:
    """Weigh points by what a step leaves of them, and step anew; None once that leads too far."""
    for _ in range(steps):
        before, found = found.step, found.weighed_anew()
        if _largest(found.step) >= NEAR:
            return None
        if _largest(found.step - before) < SETTLED:
            break
    return found


def _largest(step: Vector) -> float:
    return float(np.max(np.abs(step)))


def _fit(
    problem: Problem, found: Eliminated, misfit: Vector | None = None, others: Vector | None = None
) -> Fit:
    if misfit is None or others is None:
        misfit, others = found.left_over()
    covariance = np.linalg.inv(found.normal).astype(np.float64, copy=False)
    return Fit(problem.body, problem.stance, covariance, misfit, cost_of(misfit, others))

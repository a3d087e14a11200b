"""Gauss-Newton fit of the body to frames: a recording shares its body, each frame has a stance.

Every residual is divided by its standard deviation, so half the sum of squares is the negative
logarithm of the posterior. Points of the picture carry Geman-McClure weights (Geman & McClure
1987): one misplaced point does not bend the body. The shared part is solved by the Schur
complement. Errors of points are bias and repeat from frame to frame, so a recording of any length
teaches as much about the body as ``INDEPENDENT`` frames would.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from coach.goniometry.angles import Vector
from coach.goniometry.body import SHARED, Body
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.guess import as_expected, from_metric
from coach.goniometry.residuals import INDEPENDENT, PICTURE, Problem
from coach.goniometry.skeleton import FREEDOMS, Stance
from coach.goniometry.turning import between, turn_by

ROBUST = 3.0
"""Standard deviations at which a point's pull begins to fall."""
LEARNING_STEPS, RELEARNING_STEPS, PLACING_STEPS, FOLLOWING_STEPS = 12, 3, 12, 3
_STEP = 1e-5
_MOST = 0.6
"""Radians or trunk lengths that one step may take."""
PARTS = np.array([0.5, 0.25, 0.1, 0.03, 0.0])
WORSE = 1e-4
"""Parts of a step that are tried in frames whose cost the whole one raises by more than this: a
forearm square out to the side has hardly a slope, and whole steps swing about its optimum. Only
where the forearm alone turns: tuning people's level arms are read worse by 1 degree at the lower
cost, and bends of an elbow that is usually straight go unseen."""


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


def learn(
    evidence: Evidence,
    expectation: Expectation,
    body: Body | None = None,
    start: Stance | None = None,
) -> Fit:
    """Fit body and stances to frames together; ``body`` and ``start`` are known from before."""
    if body is not None and start is not None:
        return _solve(evidence, expectation, body, start, RELEARNING_STEPS, learning=True)
    expected = Body.expected(expectation)
    start = place(evidence, expectation, expected).stance
    return _solve(evidence, expectation, expected, start, LEARNING_STEPS, learning=True)


def place(
    evidence: Evidence, expectation: Expectation, body: Body, start: Stance | None = None
) -> Fit:
    """Fit stances with the body as it is known; ``start`` are stances close by in time.

    Without it, and where that leads to points far from those seen, the fit begins anew from the
    metric points and from the body at rest, and takes what agrees best.
    """
    if start is not None:
        fit = _solve(evidence, expectation, body, start, FOLLOWING_STEPS, learning=False)
        if np.max(fit.misfit) < ROBUST:
            return fit
    expected = as_expected(evidence, expectation, body.rest, body.log_lengths)
    starts = (from_metric(evidence), expected)
    fits = [
        _solve(evidence, expectation, body, each, PLACING_STEPS, learning=False) for each in starts
    ]
    return _better(fits[0], fits[1])


def _better(first: Fit, second: Fit) -> Fit:
    """Take for every frame the fit of the lower cost."""
    rows = second.cost < first.cost

    def pick(a: Vector, b: Vector) -> Vector:
        return np.where(rows.reshape((-1, *(1,) * (a.ndim - 1))), b, a)

    a, b = first.stance, second.stance
    stance = Stance(
        pick(a.trunk, b.trunk),
        pick(a.middle, b.middle),
        pick(a.depth, b.depth),
        pick(a.girdle, b.girdle),
        pick(a.upper_arm, b.upper_arm),
        pick(a.forearm, b.forearm),
    )
    return Fit(
        first.body,
        stance,
        pick(first.covariance, second.covariance),
        pick(first.misfit, second.misfit),
        pick(first.cost, second.cost),
    )


def _solve(
    evidence: Evidence,
    expectation: Expectation,
    body: Body,
    start: Stance,
    steps: int,
    *,
    learning: bool,
) -> Fit:
    frames = len(evidence)
    turned = between(expectation.trunk, evidence.trunk) * (1.0, expectation.trust.turn_gain, 1.0)
    trunk = expectation.trunk @ turn_by(turned)
    problem = Problem(evidence, expectation, body, start, start.depth, np.ones((frames, 6)), trunk)
    shared = SHARED if learning else 0
    nothing, still = np.zeros((frames, FREEDOMS)), np.zeros(SHARED)
    probes = np.zeros((1 + FREEDOMS + shared, 1, FREEDOMS))
    changes = np.zeros((1 + FREEDOMS + shared, SHARED))
    probes[1 : 1 + FREEDOMS, 0] = np.eye(FREEDOMS) * _STEP
    changes[1 + FREEDOMS :] = np.eye(SHARED)[:shared] * _STEP
    worth = min(1.0, INDEPENDENT / frames)
    for _ in range(steps):
        values = problem.residuals(probes + nothing, changes)
        slope = np.moveaxis((values[1:] - values[0]) / _STEP, 0, -1)
        own, common = slope[..., :FREEDOMS], slope[..., FREEDOMS:]
        turned = np.swapaxes(own, -1, -2)
        normal = turned @ own + 1e-6 * np.eye(FREEDOMS)
        pull = turned @ values[0][..., None]
        if learning:
            mixed = turned @ common
            both = np.linalg.solve(normal, np.concatenate((mixed, pull), axis=-1))
            gain, alone = both[..., :-1], both[..., -1]
            back = np.swapaxes(mixed, -1, -2)
            flat = np.swapaxes(common, -1, -2)
            left = np.sum(flat @ common - back @ gain, axis=0)
            force = np.sum(flat @ values[0][..., None] - back @ alone[..., None], axis=0)[:, 0]
            held = problem.prior(still)
            tilt = np.stack(
                [(problem.prior(c) - held) / _STEP for c in np.eye(SHARED) * _STEP], axis=-1
            )
            information = worth * left + tilt.T @ tilt
            change = -np.linalg.solve(information, worth * force + tilt.T @ held)
            step, along = -alone, -gain @ change
        else:
            change, along = still, nothing
            step = -np.linalg.solve(normal, pull)[..., 0]
        damped = expectation.upper_arm is not None
        if damped:
            moved, misfit, others = _damped(problem, values[0], step, along, change)
        else:
            moved = np.clip(step + along, -_MOST, _MOST)
        if learning:
            problem.body = problem.body.changed(change, np.linalg.inv(information))
        problem.stance = problem.stance.moved(moved)
        if not damped:
            misfit, others = _misfit(problem, problem.residuals(nothing, still))
        problem.pull = 1.0 / (1.0 + (misfit / ROBUST) ** 2)
    return Fit(problem.body, problem.stance, np.linalg.inv(normal), misfit, _cost(misfit, others))


def _damped(
    problem: Problem, before: Vector, step: Vector, along: Vector, change: Vector
) -> tuple[Vector, Vector, Vector]:
    """Take of steps (N, FREEDOMS) the part that lowers the cost most, the whole where it does.

    ``along`` (N, FREEDOMS) is what the change of the body brings with it, always taken whole.
    Gives what is taken, and there what ``_misfit`` gives.
    """
    moved = np.clip(step + along, -_MOST, _MOST)
    misfit, others = _misfit(problem, problem.residuals(moved, change))
    rose = _cost(misfit, others) > _cost(*_misfit(problem, before)) + WORSE
    if rose.any():
        tried = np.clip(PARTS[:, None, None] * step + along, -_MOST, _MOST)
        away, rest = _misfit(problem, problem.residuals(tried, change))
        best = np.argmin(_cost(away, rest), axis=0)[rose], np.flatnonzero(rose)
        moved[rose], misfit[rose], others[rose] = tried[best], away[best], rest[best]
    return moved, misfit, others


def _misfit(problem: Problem, values: Vector) -> tuple[Vector, Vector]:
    """Distances (..., N, 6) of the picture's points, and the sum of the other squares (..., N)."""
    off = values[..., PICTURE].reshape((*values.shape[:-1], 6, 2)) / problem.pull[..., None]
    return np.linalg.norm(off, axis=-1), np.sum(values[..., 12:] ** 2, axis=-1)


def _cost(misfit: Vector, others: Vector) -> Vector:
    cost: Vector = np.sum(misfit**2 / (1.0 + (misfit / ROBUST) ** 2), axis=-1) + others
    return cost

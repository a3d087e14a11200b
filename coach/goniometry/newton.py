"""One Gauss-Newton step of frames and of the body that they share, by the Schur complement.

Each frame's own step is eliminated first, so what is solved for the body is as small as the body
whatever the number of frames, and frames may be eliminated in parts, at different times.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from coach.goniometry.angles import Vector
from coach.goniometry.body import SHARED
from coach.goniometry.residuals import INDEPENDENT, PICTURE, Problem
from coach.goniometry.skeleton import FREEDOMS
from coach.goniometry.turning import turn_by

ROBUST = 3.0
"""Standard deviations at which a point's pull begins to fall."""
PARTS = np.array([0.5, 0.25, 0.1, 0.03, 0.0])
WORSE = 1e-4
"""Parts of a step that are tried in frames whose cost the whole one raises by more than this: a
forearm square out to the side has hardly a slope, and whole steps swing about its optimum. Only
where the forearm alone turns: tuning people's level arms are read worse by 1 degree at the lower
cost, and bends of an elbow that is usually straight go unseen."""
_STEP = 1e-5
_MOST = 0.6
"""Radians or trunk lengths that one step may take."""

_NOTHING = np.zeros(FREEDOMS)
_STILL, _NO_GAIN, _NO_LEFT = np.zeros(SHARED), np.zeros((0, SHARED)), np.zeros((SHARED, SHARED))
_PROBES = np.zeros((1 + FREEDOMS + SHARED, 1, FREEDOMS))
_PROBES[1 : 1 + FREEDOMS, 0] = np.eye(FREEDOMS) * _STEP
_TURNS = turn_by(_PROBES[..., :3])
_CHANGES = np.zeros((1 + FREEDOMS + SHARED, SHARED))
_CHANGES[1 + FREEDOMS :] = np.eye(SHARED) * _STEP
_DAMPING = 1e-6 * np.eye(FREEDOMS)


@dataclass(frozen=True, slots=True, eq=False)
class Eliminated:
    """What N frames ask for.

    ``pull`` (N, 6) are the weights they were looked at with, ``cost`` (N,) is that before the step.
    ``here`` (N, M) are their residuals, ``slope`` (N, M, FREEDOMS) what their own steps change of
    them, ``normal`` (N, FREEDOMS, FREEDOMS) its square; ``step`` (N, FREEDOMS) with the body as it
    is, of which a change of the body takes ``gain`` (N, FREEDOMS, SHARED). ``left`` (SHARED,
    SHARED) and ``force`` (SHARED,) are what the frames together say about the body; none where it
    is taken as known.
    """

    pull: Vector
    cost: Vector
    here: Vector
    slope: Vector
    normal: Vector
    step: Vector
    gain: Vector
    left: Vector
    force: Vector

    @classmethod
    def joined(cls, parts: Sequence[Eliminated]) -> Eliminated:
        """Put parts of the same frames together."""
        if len(parts) == 1:
            return parts[0]
        return cls(
            np.concatenate([part.pull for part in parts]),
            np.concatenate([part.cost for part in parts]),
            np.concatenate([part.here for part in parts]),
            np.concatenate([part.slope for part in parts]),
            np.concatenate([part.normal for part in parts]),
            np.concatenate([part.step for part in parts]),
            np.concatenate([part.gain for part in parts]),
            np.sum([part.left for part in parts], axis=0),
            np.sum([part.force for part in parts], axis=0),
        )

    def left_over(self) -> tuple[Vector, Vector]:
        """``distances`` that the frames' own step leaves, as far as they are straight."""
        after = self.here + (self.slope @ self.step[..., None])[..., 0]
        return distances(self.pull, after)

    def weighed_anew(self) -> Eliminated:
        """Weigh points by how far the step leaves them, without looking at the frames again."""
        pull = weights(self.left_over()[0])
        here, slope = self.here.copy(), self.slope.copy()
        change = np.repeat(pull / self.pull, 2, axis=-1)
        here[:, PICTURE] *= change
        slope[:, PICTURE] *= change[..., None]
        normal, step = _alone(here, slope)
        return replace(self, pull=pull, here=here, slope=slope, normal=normal, step=step)


def eliminate(problem: Problem, *, learning: bool, begun: bool) -> Eliminated:
    """Linearise and eliminate each frame's own step.

    Once ``begun``, points of the picture are first weighed by how far the last step left them.
    ``learning``: the body is to be changed too.
    """
    if learning:
        values = problem.residuals(_PROBES, _CHANGES, _TURNS)
    else:
        values = problem.residuals(_PROBES[: 1 + FREEDOMS], None, _TURNS[: 1 + FREEDOMS])
    misfit, others = distances(problem.pull, values[0])
    pull: Vector = problem.pull
    if begun:
        pull = weights(misfit)
        values[..., PICTURE] *= np.repeat(pull / problem.pull, 2, axis=-1)
    here = values[0]
    slope = np.moveaxis((values[1:] - here) / _STEP, 0, -1)
    own = slope[..., :FREEDOMS]
    cost = cost_of(misfit, others)
    if not learning:
        normal, step = _alone(here, own)
        return Eliminated(pull, cost, here, own, normal, step, _NO_GAIN, _NO_LEFT, _STILL)
    turned = np.swapaxes(own, -1, -2)
    normal, downhill = turned @ own + _DAMPING, turned @ here[..., None]
    common = slope[..., FREEDOMS:]
    mixed = turned @ common
    both = np.linalg.solve(normal, np.concatenate((mixed, downhill), axis=-1))
    gain, alone = both[..., :-1], both[..., -1:]
    back, flat = np.swapaxes(mixed, -1, -2), np.swapaxes(common, -1, -2)
    left = np.sum(flat @ common - back @ gain, axis=0)
    force = np.sum(flat @ here[..., None] - back @ alone, axis=0)[:, 0]
    return Eliminated(pull, cost, here, own, normal, -alone[..., 0], gain, left, force)


def _alone(here: Vector, slope: Vector) -> tuple[Vector, Vector]:
    """Normal matrices and steps of frames by themselves."""
    turned = np.swapaxes(slope, -1, -2)
    normal: Vector = turned @ slope + _DAMPING
    step = np.linalg.solve(normal, turned @ here[..., None])[..., 0]
    return normal, -step.astype(np.float64, copy=False)


def stepped(problem: Problem, found: Eliminated, *, learning: bool) -> Problem:
    """Take the step that all frames together ask for."""
    problem = replace(problem, pull=found.pull)
    body, change, along = problem.body, None, None
    if learning:
        # Errors of points are bias and repeat from frame to frame.
        worth = min(1.0, INDEPENDENT / len(problem.evidence))
        prior = problem.prior(_CHANGES[FREEDOMS:])
        held, tilt = prior[0], ((prior[1:] - prior[0]) / _STEP).T
        information = worth * found.left + tilt.T @ tilt
        change = -np.linalg.solve(information, worth * found.force + tilt.T @ held)
        along = -found.gain @ change
        body = body.changed(change, np.linalg.inv(information))
    whole = found.step if along is None else found.step + along
    moved = np.clip(whole, -_MOST, _MOST)
    if problem.expectation.upper_arm is not None:
        moved = _damped(problem, found, moved, along, change)
    return replace(problem, body=body, stance=problem.stance.moved(moved))


def weights(misfit: Vector) -> Vector:
    """Weights of the picture's points by their distances, of the same shape (Geman & McClure)."""
    weights: Vector = 1.0 / (1.0 + (misfit / ROBUST) ** 2)
    return weights


def distances(pull: Vector, values: Vector) -> tuple[Vector, Vector]:
    """Distances (..., N, 6) of the picture's points, and the sum of the other squares (..., N)."""
    off = values[..., PICTURE].reshape((*values.shape[:-1], 6, 2)) / pull[..., None]
    rest = values[..., PICTURE.stop :]
    return np.sqrt(np.sum(off * off, axis=-1)), np.sum(rest * rest, axis=-1)


def left_over(problem: Problem) -> tuple[Vector, Vector]:
    """``distances`` of a problem where it stands."""
    return distances(problem.pull, problem.residuals(_NOTHING, None))


def cost_of(misfit: Vector, others: Vector) -> Vector:
    """Sum of squares (..., N), that of a point never above ``ROBUST`` squared."""
    squared = misfit * misfit
    cost: Vector = np.sum(squared / (1.0 + squared / ROBUST**2), axis=-1) + others
    return cost


def _damped(
    problem: Problem, found: Eliminated, moved: Vector, along: Vector | None, change: Vector | None
) -> Vector:
    """Take steps (N, FREEDOMS) whole, but where that raises the cost the best of their ``PARTS``.

    ``along`` (N, FREEDOMS) is what the change of the body brings with it, always taken whole.
    """
    cost = cost_of(*distances(problem.pull, problem.residuals(moved, change)))
    rose = cost > found.cost + WORSE
    if not rose.any():
        return moved
    tried = PARTS[:, None, None] * found.step
    tried = np.clip(tried if along is None else tried + along, -_MOST, _MOST)
    costs = cost_of(*distances(problem.pull, problem.residuals(tried, change)))
    best = np.argmin(costs, axis=0)[rose], np.flatnonzero(rose)
    moved[rose] = tried[best]
    return moved

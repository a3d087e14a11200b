"""Gauss-Newton fit of the body to frames: a recording shares its body, each frame has a stance.

Every residual is divided by its standard deviation, so half the sum of squares is the negative
logarithm of the posterior. Points of the picture carry Geman-McClure weights (Geman & McClure
1987): one misplaced point does not bend the body. The shared part is solved by the Schur
complement. Errors of points are bias and repeat from frame to frame, so a recording of any length
teaches as much about the body as ``INDEPENDENT`` frames would.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace

import numpy as np

from coach.goniometry.angles import Vector, unit
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import AHEAD_WITHIN_DEG, LOG_LENGTHS, LOG_LENGTHS_SD, Expectation
from coach.goniometry.offsets import PICTURE_SD, marks
from coach.goniometry.skeleton import FREEDOMS, Lengths, Stance
from coach.goniometry.turning import between, turn_by

INDEPENDENT = 8.0
GIRDLE_SD = np.array([0.05, 0.03, 0.04])
GIRDLE_RISE, GIRDLE_RISES_FROM_DEG = 0.05, 30.0
"""Rise of the shoulder's centre for 100 degrees of elevation beyond the first 30."""
LOG_DEPTH_SD = 0.5
ROBUST = 3.0
"""Standard deviations at which a point's pull begins to fall."""
LEARNING_STEPS, RELEARNING_STEPS, PLACING_STEPS, FOLLOWING_STEPS = 10, 3, 8, 3
_STEP = 1e-5
_MOST = 0.6
"""Radians or trunk lengths that one step may take."""

_LENGTHS, _REST, _PLANES, _ELBOW, _PROP = slice(0, 4), slice(4, 7), slice(7, 9), 9, slice(10, 12)
SHARED = 12


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """What a recording shares, and its covariance (SHARED, SHARED).

    ``rest`` (3, 3): the trunk's axes at rest. ``planes_deg`` (2,), ``elbow_deg``: how far this
    sitting differs from what was expected. ``prop`` (2,): radians by which a propped forearm is
    turned from the expected trunk's forward axis, toward its Y and Z.
    """

    log_lengths: Vector = field(repr=False)
    rest: Vector = field(repr=False)
    planes_deg: Vector = field(repr=False)
    elbow_deg: float
    prop: Vector = field(repr=False)
    covariance: Vector = field(repr=False)

    @classmethod
    def expected(cls, expectation: Expectation) -> Body:
        """Before anything is seen."""
        spread = np.zeros(SHARED)
        spread[_LENGTHS] = LOG_LENGTHS_SD
        spread[_REST] = np.radians(expectation.trunk_between_deg)
        for k, plane in enumerate(expectation.planes):
            spread[7 + k] = plane.between_deg
        spread[_ELBOW] = expectation.elbow.between_deg
        if expectation.propped is not None:
            spread[_PROP] = np.radians(expectation.propped.between_deg)
        none = np.zeros(2)
        return cls(LOG_LENGTHS, expectation.trunk, none, 0.0, none, np.diag(spread**2))


@dataclass(frozen=True, slots=True, eq=False)
class Fit:
    """Stances of N frames with what they may err by.

    ``covariance`` (N, FREEDOMS, FREEDOMS): of a small step, the body's own uncertainty included.
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
    return _better(
        _solve(
            evidence, expectation, body, _from_metric(evidence), PLACING_STEPS, learning=False
        ),
        _solve(
            evidence, expectation, body, _as_expected(evidence, expectation, body), PLACING_STEPS,
            learning=False,
        ),
    )  # fmt: skip


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


def _from_metric(evidence: Evidence) -> Stance:
    """Start as the metric points stand."""
    return _standing(evidence, evidence.trunk, evidence.upper_arm, evidence.forearm)


def _as_expected(evidence: Evidence, expectation: Expectation, body: Body) -> Stance:
    """Start with the trunk at rest and the arm as long in the picture as it is seen.

    Whether a foreshortened limb points toward the camera or away follows from the movement.
    """
    trunk = np.broadcast_to(body.rest, evidence.trunk.shape)
    lengths = np.exp(body.log_lengths)
    depth = _depth(evidence, trunk)[:, None]
    slopes = evidence.slopes
    upper_arms = _toward_or_away((slopes[:, 4] - slopes[:, 0]) * depth / lengths[2])
    if expectation.upper_arm is not None:
        off = -upper_arms @ (body.rest @ expectation.upper_arm)
    else:
        off = np.sum((upper_arms @ (body.rest @ expectation.normals.T)) ** 2, axis=-1)
    upper_arm = _chosen(upper_arms, off)
    forearms = _toward_or_away((slopes[:, 5] - slopes[:, 4]) * depth / lengths[3])
    wanted = upper_arm if expectation.upper_arm is None else body.rest[:, 0]
    forearm = _chosen(forearms, -np.sum(forearms * wanted, axis=-1))
    return _standing(evidence, trunk, upper_arm, forearm)


def _toward_or_away(across: Vector) -> Vector:
    """Unit vectors (2, N, 3) whose parts (N, 2) across the ray are given."""
    long = np.maximum(np.linalg.norm(across, axis=-1, keepdims=True), 1.0)
    across = across / long
    along = np.sqrt(np.clip(1.0 - np.sum(across**2, axis=-1, keepdims=True), 1e-6, None))
    return unit(np.stack([np.concatenate((across, s * along), axis=-1) for s in (-1.0, 1.0)]))


def _chosen(candidates: Vector, cost: Vector) -> Vector:
    """Take of two (2, N, 3) the one of the lower cost (2, N)."""
    picked: Vector = np.where((cost[0] <= cost[1])[:, None], candidates[0], candidates[1])
    return picked


def _depth(evidence: Evidence, trunk: Vector) -> Vector:
    """Distance (N,) at which the trunk has its length in the picture."""
    slopes = evidence.slopes
    seen = np.linalg.norm((slopes[:, 0] + slopes[:, 1] - slopes[:, 2] - slopes[:, 3]) / 2, axis=-1)
    depth: Vector = np.clip(np.linalg.norm(trunk[:, :2, 1], axis=-1), 0.3, 1.0) / seen
    return depth


def _standing(evidence: Evidence, trunk: Vector, upper_arm: Vector, forearm: Vector) -> Stance:
    """Put a stance together of axes and directions in camera axes."""
    into = np.swapaxes(trunk, -1, -2)
    return Stance(
        trunk,
        (evidence.slopes[:, 0] + evidence.slopes[:, 1]) / 2,
        _depth(evidence, trunk),
        np.zeros((len(evidence), 3)),
        np.einsum("nij,nj->ni", into, upper_arm),
        np.einsum("nij,nj->ni", into, forearm),
    )


@dataclass(slots=True, eq=False)
class _Problem:
    evidence: Evidence
    expectation: Expectation
    body: Body
    stance: Stance
    depth: Vector
    pull: Vector
    trunk: Vector

    def residuals(self, step: Vector, change: Vector) -> Vector:
        """Residuals (..., N, M) after a step (..., N, FREEDOMS) and a change (..., SHARED)."""
        wanted, body, seen = self.expectation, self.body, self.evidence
        change = change[..., None, :]
        stance = self.stance.moved(step)
        joints = stance.joints(Lengths.of(body.log_lengths + change[..., _LENGTHS]), wanted.sign)
        points = marks(stance, joints, wanted.sign)
        off = points[..., :2] / points[..., 2:] - seen.slopes
        trust = wanted.trust
        spread = np.array([*PICTURE_SD, trust.elbow, trust.wrist])
        weight = self.pull / spread * self.stance.depth[:, None]
        picture = (off * weight[..., None]).reshape((*off.shape[:-2], 12))
        rest = body.rest @ turn_by(change[..., _REST])
        upper_arm, forearm = stance.upper_arm, stance.forearm
        raised_deg = np.clip(elevation_deg(upper_arm) - GIRDLE_RISES_FROM_DEG, 0.0, None)
        girdle = stance.girdle.copy()
        girdle[..., 0] -= GIRDLE_RISE / 100.0 * raised_deg
        elbow, bend_deg = wanted.elbow, _between_deg(upper_arm, forearm)
        bend = (bend_deg - elbow.mean_deg - body.elbow_deg - change[..., _ELBOW]) / elbow.within_deg
        parts = [
            picture,
            between(self.trunk, stance.trunk) / np.radians(trust.trunk_deg),
            between(rest, stance.trunk) / np.radians(wanted.trunk_within_deg),
            (stance.in_camera(upper_arm) - seen.upper_arm) / _across_and_along(trust.upper_arm),
            (stance.in_camera(forearm) - seen.forearm) / _across_and_along(trust.forearm),
            girdle / GIRDLE_SD,
            bend[..., None],
            (np.log(stance.depth / self.depth) / LOG_DEPTH_SD)[..., None],
        ]
        if seen.card.any():
            ahead = np.einsum("...ji,...j->...i", stance.trunk, seen.card)
            turn = np.arctan2(ahead[..., 2], np.where(seen.card_sd < 1.0, ahead[..., 0], 1.0))
            parts.append((turn / seen.card_sd)[..., None])
        for k, plane in enumerate(wanted.planes):
            out_deg = np.degrees(np.arcsin(np.clip(upper_arm @ wanted.normals[k], -1.0, 1.0)))
            shift = body.planes_deg[k] + change[..., 7 + k]
            parts.append(((out_deg - plane.mean_deg - shift) / plane.within_deg)[..., None])
        if wanted.propped is not None:
            prop = body.prop + change[..., _PROP]
            ahead, up, right = (wanted.trunk[:, k] for k in range(3))
            toward = unit(ahead + prop[..., :1] * up + prop[..., 1:] * right)
            off_room = stance.in_camera(forearm) - toward
            parts.append(off_room / np.radians(wanted.propped.within_deg))
            aside = forearm[..., 2] / np.radians(AHEAD_WITHIN_DEG)
            resting = max(1, int(np.count_nonzero(seen.resting)))
            once = math.sqrt(len(seen) / INDEPENDENT / resting)
            parts.append((aside * seen.resting * max(1.0, once))[..., None])
        return np.concatenate(parts, axis=-1)

    def prior(self, change: Vector) -> Vector:
        """Residuals (SHARED,) of the body against what was expected."""
        wanted, body = self.expectation, self.body
        scale = np.sqrt(np.diag(Body.expected(wanted).covariance))
        scale[scale == 0] = 1.0
        rest = between(wanted.trunk, body.rest @ turn_by(change[_REST]))
        value = np.concatenate(
            (
                body.log_lengths - LOG_LENGTHS + change[_LENGTHS],
                rest,
                body.planes_deg + change[_PLANES],
                [body.elbow_deg + change[_ELBOW]],
                body.prop + change[_PROP],
            )
        )
        divided: Vector = value / scale
        return divided


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
    problem = _Problem(evidence, expectation, body, start, start.depth, np.ones((frames, 6)), trunk)
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
            step = -alone - gain @ change
            problem.body = _changed(problem.body, change, np.linalg.inv(information))
        else:
            step = -np.linalg.solve(normal, pull)[..., 0]
        problem.stance = problem.stance.moved(np.clip(step, -_MOST, _MOST))
        misfit, others = _misfit(problem, nothing, still)
        problem.pull = 1.0 / (1.0 + (misfit / ROBUST) ** 2)
    cost = np.sum(misfit**2 * problem.pull, axis=-1) + others
    return Fit(problem.body, problem.stance, np.linalg.inv(normal), misfit, cost)


def _misfit(problem: _Problem, nothing: Vector, still: Vector) -> tuple[Vector, Vector]:
    """Distances (N, 6) of the picture's points, and the sum of the other squares (N,)."""
    values = problem.residuals(nothing, still)
    off = values[..., :12].reshape((-1, 6, 2)) / problem.pull[..., None]
    return np.linalg.norm(off, axis=-1), np.sum(values[..., 12:] ** 2, axis=-1)


def _changed(body: Body, change: Vector, covariance: Vector) -> Body:
    return replace(
        body,
        log_lengths=body.log_lengths + change[_LENGTHS],
        rest=body.rest @ turn_by(change[_REST]),
        planes_deg=body.planes_deg + change[_PLANES],
        elbow_deg=body.elbow_deg + float(change[_ELBOW]),
        prop=body.prop + change[_PROP],
        covariance=covariance,
    )


def _across_and_along(spread: tuple[float, float]) -> Vector:
    return np.array([spread[0], spread[0], spread[1]])


def elevation_deg(upper_arm: Vector) -> Vector:
    """Unsigned elevation (...,) of upper arms (..., 3) in trunk axes, 0 hanging."""
    elevation: Vector = np.degrees(np.arccos(np.clip(-upper_arm[..., 1], -1.0, 1.0)))
    return elevation


def _between_deg(first: Vector, second: Vector) -> Vector:
    cosine = np.clip(np.sum(first * second, axis=-1), -0.9999, 0.9999)
    angle: Vector = np.degrees(np.arccos(cosine))
    return angle

"""Where a fit begins: as the metric points stand, or as the movement leads one to expect."""

from __future__ import annotations

import numpy as np

from coach.goniometry.angles import Vector, unit
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.skeleton import Stance


def from_metric(evidence: Evidence) -> Stance:
    """Start as the metric points stand."""
    return _standing(evidence, evidence.trunk, evidence.upper_arm, evidence.forearm)


def as_expected(
    evidence: Evidence, expectation: Expectation, rest: Vector, log_lengths: Vector
) -> Stance:
    """Start with the trunk at rest and the arm as long in the picture as it is seen.

    Whether a foreshortened limb points toward the camera or away follows from the movement.
    """
    trunk = np.broadcast_to(rest, evidence.trunk.shape)
    lengths = np.exp(log_lengths)
    depth = _depth(evidence, trunk)[:, None]
    slopes = evidence.slopes
    upper_arms = _toward_or_away((slopes[:, 4] - slopes[:, 0]) * depth / lengths[2])
    if expectation.upper_arm is not None:
        off = -upper_arms @ (rest @ expectation.upper_arm)
    else:
        off = np.sum((upper_arms @ (rest @ expectation.normals.T)) ** 2, axis=-1)
    upper_arm = _chosen(upper_arms, off)
    forearms = _toward_or_away((slopes[:, 5] - slopes[:, 4]) * depth / lengths[3])
    wanted = upper_arm if expectation.upper_arm is None else rest[:, 0]
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

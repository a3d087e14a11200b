"""How far a stance of the body is from what is seen and expected, in standard deviations."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np

from coach.goniometry.angles import Vector, dot, unit
from coach.goniometry.body import ELBOW_BEND, LENGTHS, PLANES, PROP, REST, Body
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import AHEAD_WITHIN_DEG, LOG_LENGTHS, Expectation
from coach.goniometry.offsets import PICTURE_SD, marks
from coach.goniometry.skeleton import Lengths, Stance
from coach.goniometry.turning import between, turn_by, vector_of

INDEPENDENT = 8.0
"""Frames as many as which a recording of any length teaches about the body."""
GIRDLE_SD = np.array([0.05, 0.03, 0.04])
GIRDLE_RISE, GIRDLE_RISES_FROM_DEG = 0.05, 30.0
"""Rise of the shoulder's centre for 100 degrees of elevation beyond the first 30."""
LOG_DEPTH_SD = 0.5
PICTURE = slice(0, 12)
"""Where the picture's residuals stand."""


@dataclass(frozen=True, slots=True, eq=False)
class Problem:
    """Frames, the body and stances from which small steps are taken.

    ``depth`` (N,) is where the stances began, ``pull`` (N, 6) the weight of each point of the
    picture, ``trunk`` (N, 3, 3) the metric trunk with its turn set right. ``resting`` (N,) is how
    much each frame says about the forearm at rest.
    """

    evidence: Evidence
    expectation: Expectation
    body: Body
    stance: Stance
    depth: Vector
    pull: Vector
    trunk: Vector
    resting: Vector

    @classmethod
    def begin(
        cls, evidence: Evidence, expectation: Expectation, body: Body, start: Stance
    ) -> Problem:
        """Start at these stances, every point at its full weight."""
        gain = (1.0, expectation.trust.turn_gain, 1.0)
        trunk = expectation.trunk @ turn_by(between(expectation.trunk, evidence.trunk) * gain)
        at_rest = max(1, int(np.count_nonzero(evidence.resting)))
        once = max(1.0, math.sqrt(len(evidence) / INDEPENDENT / at_rest))
        pull = np.ones((len(evidence), 6))
        resting: Vector = np.where(evidence.resting, once, 0.0)
        return cls(evidence, expectation, body, start, start.depth, pull, trunk, resting)

    def __getitem__(self, rows: slice) -> Problem:
        """Take some of the frames."""
        return replace(
            self,
            evidence=self.evidence[rows],
            stance=self.stance[rows],
            depth=self.depth[rows],
            pull=self.pull[rows],
            trunk=self.trunk[rows],
            resting=self.resting[rows],
        )

    def residuals(self, step: Vector, change: Vector | None, turn: Vector | None = None) -> Vector:
        """Residuals (..., N, M) after a step (..., N, FREEDOMS) and a change (..., SHARED).

        Without a change the body stays as it is. ``turn`` is the step's, where it is known.
        """
        wanted, seen = self.expectation, self.evidence
        lengths, rest, planes_deg, elbow_deg, prop = self._body(change)
        stance = self.stance.moved(step, turn)
        upper_arm, forearm = stance.axes[..., 3, :], stance.axes[..., 4, :]
        raised_deg = np.maximum(stance.elevation_deg - GIRDLE_RISES_FROM_DEG, 0.0)
        points = marks(stance, lengths, wanted.sign)
        off = points[..., :2] / points[..., 2:] - seen.slopes
        trust = wanted.trust
        spread = np.array([*PICTURE_SD, trust.elbow, trust.wrist])
        weight = self.pull / spread * self.stance.depth[:, None]
        picture = (off * weight[..., None]).reshape((*off.shape[:-2], 12))
        girdle = stance.girdle.copy()
        girdle[..., 0] -= GIRDLE_RISE / 100.0 * raised_deg
        elbow, bend_deg = wanted.elbow, _bend_deg(stance.upper_arm, stance.forearm)
        bend = (bend_deg - elbow.mean_deg - elbow_deg) / elbow.within_deg
        bases = np.swapaxes(self.trunk, -1, -2), np.swapaxes(rest, -1, -2)
        turned = vector_of(np.stack([base @ stance.trunk for base in bases]))
        parts = [
            picture,
            turned[0] / np.radians(trust.trunk_deg),
            turned[1] / np.radians(wanted.trunk_within_deg),
            (upper_arm - seen.upper_arm) / _across_and_along(trust.upper_arm),
            (forearm - seen.forearm) / _across_and_along(trust.forearm),
            girdle / GIRDLE_SD,
            bend[..., None],
            (np.log(stance.depth / self.depth) / LOG_DEPTH_SD)[..., None],
        ]
        if seen.card.any():
            ahead = np.einsum("...ji,...j->...i", stance.trunk, seen.card)
            facing = np.arctan2(ahead[..., 2], np.where(seen.card_sd < 1.0, ahead[..., 0], 1.0))
            parts.append((facing / seen.card_sd)[..., None])
        if wanted.planes:
            out = np.minimum(np.maximum(stance.upper_arm @ wanted.normals.T, -1.0), 1.0)
            means_deg = np.array([plane.mean_deg for plane in wanted.planes])
            off_deg = np.degrees(np.arcsin(out)) - means_deg - planes_deg[..., : len(means_deg)]
            parts.append(off_deg / np.array([plane.within_deg for plane in wanted.planes]))
        if wanted.propped is not None:
            ahead, up, right = (wanted.trunk[:, k] for k in range(3))
            toward = unit(ahead + prop[..., :1] * up + prop[..., 1:] * right)
            parts.append((forearm - toward) / np.radians(wanted.propped.within_deg))
            aside = stance.forearm[..., 2] / np.radians(AHEAD_WITHIN_DEG)
            parts.append((aside * self.resting)[..., None])
        return np.concatenate(parts, axis=-1)

    def _body(self, change: Vector | None) -> tuple[Lengths, Vector, Vector, Vector, Vector]:
        """Lengths, trunk at rest, planes, elbow and prop after a change (..., SHARED)."""
        body = self.body
        if change is None:
            elbow_deg = np.array(body.elbow_deg)
            return Lengths.of(body.log_lengths), body.rest, body.planes_deg, elbow_deg, body.prop
        change = change[..., None, :]
        return (
            Lengths.of(body.log_lengths + change[..., LENGTHS]),
            body.rest @ turn_by(change[..., REST]),
            body.planes_deg + change[..., PLANES],
            body.elbow_deg + change[..., ELBOW_BEND],
            body.prop + change[..., PROP],
        )

    def prior(self, change: Vector) -> Vector:
        """Residuals (..., SHARED) of the body, changed by (..., SHARED), against the expected."""
        wanted, body = self.expectation, self.body
        scale = np.sqrt(np.diag(Body.expected(wanted).covariance))
        scale[scale == 0] = 1.0
        value = change.copy()
        value[..., LENGTHS] += body.log_lengths - LOG_LENGTHS
        value[..., REST] = between(wanted.trunk, body.rest @ turn_by(change[..., REST]))
        value[..., PLANES] += body.planes_deg
        value[..., ELBOW_BEND] += body.elbow_deg
        value[..., PROP] += body.prop
        divided: Vector = value / scale
        return divided


def _across_and_along(spread: tuple[float, float]) -> Vector:
    return np.array([spread[0], spread[0], spread[1]])


def _bend_deg(upper_arm: Vector, forearm: Vector) -> Vector:
    """Bend of the elbow; near straight, where it has no slope, held at 0.8 degrees."""
    cosine = np.minimum(np.maximum(dot(upper_arm, forearm), -0.9999), 0.9999)
    bend: Vector = np.degrees(np.arccos(cosine))
    return bend

"""How far a stance of the body is from what is seen and expected, in standard deviations."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from coach.goniometry.angles import Vector, unit
from coach.goniometry.body import ELBOW_BEND, LENGTHS, PLANES, PROP, REST, Body
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import AHEAD_WITHIN_DEG, LOG_LENGTHS, Expectation
from coach.goniometry.offsets import PICTURE_SD, marks
from coach.goniometry.skeleton import Lengths, Stance, elevation_deg
from coach.goniometry.turning import between, turn_by

INDEPENDENT = 8.0
"""Frames as many as which a recording of any length teaches about the body."""
GIRDLE_SD = np.array([0.05, 0.03, 0.04])
GIRDLE_RISE, GIRDLE_RISES_FROM_DEG = 0.05, 30.0
"""Rise of the shoulder's centre for 100 degrees of elevation beyond the first 30."""
LOG_DEPTH_SD = 0.5
PICTURE = slice(0, 12)
"""Where the picture's residuals stand."""


@dataclass(slots=True, eq=False)
class Problem:
    """Frames, the body and stances from which small steps are taken.

    ``depth`` (N,) is where the stances began, ``pull`` (N, 6) the weight of each point of the
    picture, ``trunk`` (N, 3, 3) the metric trunk with its turn set right.
    """

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
        joints = stance.joints(Lengths.of(body.log_lengths + change[..., LENGTHS]), wanted.sign)
        points = marks(stance, joints, wanted.sign)
        off = points[..., :2] / points[..., 2:] - seen.slopes
        trust = wanted.trust
        spread = np.array([*PICTURE_SD, trust.elbow, trust.wrist])
        weight = self.pull / spread * self.stance.depth[:, None]
        picture = (off * weight[..., None]).reshape((*off.shape[:-2], 12))
        rest = body.rest @ turn_by(change[..., REST])
        upper_arm, forearm = stance.upper_arm, stance.forearm
        raised_deg = np.clip(elevation_deg(upper_arm) - GIRDLE_RISES_FROM_DEG, 0.0, None)
        girdle = stance.girdle.copy()
        girdle[..., 0] -= GIRDLE_RISE / 100.0 * raised_deg
        elbow, bend_deg = wanted.elbow, _bend_deg(upper_arm, forearm)
        bend = (
            bend_deg - elbow.mean_deg - body.elbow_deg - change[..., ELBOW_BEND]
        ) / elbow.within_deg
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
            prop = body.prop + change[..., PROP]
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
        rest = between(wanted.trunk, body.rest @ turn_by(change[REST]))
        value = np.concatenate(
            (
                body.log_lengths - LOG_LENGTHS + change[LENGTHS],
                rest,
                body.planes_deg + change[PLANES],
                [body.elbow_deg + change[ELBOW_BEND]],
                body.prop + change[PROP],
            )
        )
        divided: Vector = value / scale
        return divided


def _across_and_along(spread: tuple[float, float]) -> Vector:
    return np.array([spread[0], spread[0], spread[1]])


def _bend_deg(upper_arm: Vector, forearm: Vector) -> Vector:
    """Bend of the elbow; near straight, where it has no slope, held at 0.8 degrees."""
    cosine = np.clip(np.sum(upper_arm * forearm, axis=-1), -0.9999, 0.9999)
    bend: Vector = np.degrees(np.arccos(cosine))
    return bend

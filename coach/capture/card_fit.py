"""Lays the card's printed pattern over the picture, both faces as one body.

All that was printed is compared, not only the markers' corners: Gauss-Newton on the brightness at
points of both faces, with the card's place, its orientation and the tent's angle free, the last
held near what it was folded to. Corners of markers are drawn inward by half a pixel and more where
light spreads; a pattern of edges in all directions is not. On rendered cards
(``tests/bench/card.py``) turns are off by 0.1 degrees on average where corners alone, the tent
taken to be as printed, are off by 0.4, and where the paper gives by 4 degrees by 0.1 instead of
2.4.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace

import cv2
import numpy as np
from numpy.typing import NDArray

from coach.capture import card_model
from coach.capture.card_model import SAMPLES, STEP_MM
from coach.domain.card_sheet import MARKER_MM, TENT_DEG
from coach.goniometry.angles import cross
from coach.goniometry.camera import Pinhole

Floats = NDArray[np.float64]

_GAMMA = 2.2
"""Of a camera's picture, as sRGB nearly has it: edges are where half the light is."""
_SMOOTHING_PX = 0.5
_BLUR_PX = 0.9
"""Standard deviation of a sharp edge in the smoothed picture: lens, pixel and smoothing."""
_STEPS = 10
_STILL_RAD = 5e-4
_OUTLIER = 4.0
"""Residuals over so many standard deviations count less than half."""
_BLUR_AGAIN = 2
"""The step at which the pattern is blurred anew, the place being nearly right."""
_TENT_RANGE_RAD = math.radians(TENT_DEG - 9), math.radians(TENT_DEG + 9)
"""Four standard deviations; outside it is another card, or a flat one."""


@dataclass(frozen=True, slots=True)
class Tent:
    """How far the faces are known to stand back, and with what standard deviation.

    By default as printed, of paper that gives by up to 4 degrees either way.
    """

    angle_rad: float = math.radians(TENT_DEG)
    sd_rad: float = math.radians(2.3)


AS_PRINTED = Tent()


@dataclass(frozen=True, slots=True, eq=False)
class Placed:
    """A card in the camera's axes.

    ``axes`` (3, 3): columns X, Y, Z of the card. ``at_m`` (3,): the middle of the ridge, true in
    scale only if printed at full size. ``covariance_rad2`` (3, 3): of a small rotation about the
    card's own axes. ``alike``: correlation of each face's pattern with the picture, at most 1.
    """

    axes: Floats = field(repr=False)
    at_m: Floats = field(repr=False)
    tent_rad: float = AS_PRINTED.angle_rad
    covariance_rad2: Floats = field(default_factory=lambda: np.full((3, 3), np.inf), repr=False)
    alike: float = 0.0


class Part:
    """The part of a picture in which the card is looked for, in amounts of light."""

    def __init__(
        self, grey: NDArray[np.uint8], corner_px: tuple[int, int], camera: Pinhole
    ) -> None:
        """Take the part's grey levels and where its top left corner lies in the picture."""
        light = cv2.GaussianBlur((grey.astype(np.float32) / 255) ** _GAMMA, (0, 0), _SMOOTHING_PX)
        slopes = (cv2.Scharr(light, cv2.CV_32F, dx, 1 - dx) / 32 for dx in (1, 0))
        self._planes = np.dstack([light, *slopes])
        self._middle = np.array(camera.centre_px) - corner_px - 0.5
        self._focal_px = camera.focal_px

    def project(self, points_m: Floats) -> Floats:
        """Points (..., 3) to pixels of this part (..., 2), counted from a pixel's middle."""
        return points_m[..., :2] / points_m[..., 2:] * self._focal_px + self._middle

    def at(self, pixels: Floats) -> Floats:
        """Light and its slope along x and y at pixels (a, b, 2): (a, b, 3)."""
        x, y = (np.ascontiguousarray(pixels[..., i], dtype=np.float32) for i in (0, 1))
        found = cv2.remap(self._planes, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
        return np.asarray(found, dtype=np.float64)

    def pull(self, points_m: Floats, slopes: Floats) -> Floats:
        """By how much the light at points (..., 3) changes as they move in space, a metre."""
        x, y, z = (points_m[..., i] for i in range(3))
        by_x, by_y = (slopes[..., i] * self._focal_px / z for i in (0, 1))
        return np.stack([by_x, by_y, -(by_x * x + by_y * y) / z], axis=-1)


def lay(part: Part, start: Placed, known: Tent = AS_PRINTED) -> Placed:
    """Improve a first guess that is right to a cell or so; a failed one has a low ``alike``."""
    axes, at, tent = start.axes, start.at_m, start.tent_rad
    pattern: Floats | None = None
    for step in range(_STEPS):
        body = card_model.points(tent) @ axes.T
        points = body + at
        if points[..., 2].min() <= 0:
            break
        pixels = part.project(points)
        if pattern is None or step == _BLUR_AGAIN:
            pattern, area = _pattern(pixels)
        seen = part.at(pixels)
        pull = part.pull(points, seen[..., 1:])
        bending = np.sum(card_model.points_by_tent(tent) @ axes.T * pull, axis=-1)
        slopes = np.concatenate([cross(body, pull), pull, bending[..., None]], axis=-1)
        matched = alike(pattern, seen[..., 0])
        # What the light on a face adds and multiplies is nobody's place.
        misfit = _apart(pattern, seen[..., :1])[..., 0]
        slopes = _apart(pattern, slopes)
        weight = _weight(misfit, area)
        weighted = np.swapaxes(slopes * weight[..., None], 1, 2)
        normal = (weighted @ slopes).sum(axis=0)
        pushed = -(weighted @ misfit[..., None]).sum(axis=0)[:, 0]
        normal[6, 6] += 1 / known.sd_rad**2
        pushed[6] -= (tent - known.angle_rad) / known.sd_rad**2
        try:
            covariance = np.linalg.inv(normal)
        except np.linalg.LinAlgError:
            break
        moved = covariance @ pushed
        axes, at = _rotation(moved[:3]) @ axes, at + moved[3:6]
        tent += float(moved[6])
        if not (np.isfinite(moved).all() and _TENT_RANGE_RAD[0] < tent < _TENT_RANGE_RAD[1]):
            break
        better = Placed(axes, at, tent, axes.T @ covariance[:3, :3] @ axes, float(matched.min()))
        if np.abs(moved[:3]).max() < _STILL_RAD:
            return better
    else:
        return better
    return replace(start, alike=0.0)


def _pattern(pixels: Floats) -> tuple[Floats, Floats]:
    """What was printed as these pixels blur it, (2, n), and the picture's area a sample (2, 1)."""
    grid = pixels.reshape(2, SAMPLES, SAMPLES, 2)
    middle = SAMPLES // 2
    across = (grid[:, middle, -1] - grid[:, middle, 0]) / (SAMPLES - 1)
    upward = (grid[:, -1, middle] - grid[:, 0, middle]) / (SAMPLES - 1)
    area = np.abs(across[:, 0] * upward[:, 1] - across[:, 1] * upward[:, 0])
    blur = _BLUR_PX * STEP_MM / np.stack([_length(across), _length(upward)], axis=-1)
    blur = np.minimum(blur, MARKER_MM)
    return np.stack([card_model.pattern(face, blur[face]) for face in (0, 1)]), area[:, None]


def _apart(pattern: Floats, values: Floats) -> Floats:
    """Take from values (2, n, k) what a constant and the pattern (2, n) explain, face by face."""
    centred = pattern - pattern.mean(axis=1, keepdims=True)
    values = values - values.mean(axis=1, keepdims=True)
    power = np.sum(centred * centred, axis=1)[:, None, None]
    share = centred[:, None, :] @ values / power
    apart: Floats = values - centred[..., None] * share
    return apart


def alike(pattern: Floats, light: Floats) -> Floats:
    """Correlation of patterns (2, n) with the light seen (..., 2, n): (..., 2)."""
    a, b = (part - part.mean(axis=-1, keepdims=True) for part in (pattern, light))
    power = np.sqrt(np.sum(a * a, axis=-1) * np.sum(b * b, axis=-1))
    correlation: Floats = np.sum(a * b, axis=-1) / np.maximum(power, 1e-12)
    return correlation


def _weight(misfit: Floats, area: Floats) -> Floats:
    """Weights (2, n) by the misfit's spread and the picture's area that a sample stands for."""
    spread = 1.4826 * np.median(np.abs(misfit), axis=1, keepdims=True) + 1e-4
    trust = 1 / (1 + (misfit / (_OUTLIER * spread)) ** 2)
    variance = np.sum(trust * misfit**2, axis=1, keepdims=True) / np.sum(
        trust, axis=1, keepdims=True
    )
    weight: Floats = trust * area / (variance + 1e-8)
    return weight


def _length(vectors: Floats) -> Floats:
    length: Floats = np.sqrt(np.sum(vectors * vectors, axis=-1)) + 1e-9
    return length


def _rotation(vector_rad: Floats) -> Floats:
    return np.asarray(cv2.Rodrigues(vector_rad)[0], dtype=np.float64)

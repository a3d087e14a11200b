"""The folded card as a body in space, and its pattern as the camera's pixels blur it.

Axes of the card: X out of the chest, Y up along the ridge, Z to the person's right; the middle of
the ridge is the origin; metres. ``tent_rad`` is how far each face stands back.
"""

from __future__ import annotations

import functools
import math

import cv2
import numpy as np
from numpy.typing import NDArray

from coach.capture.card_marks import marker_cells
from coach.domain.card_sheet import MARKER_MM, QUIET_MM

Floats = NDArray[np.float64]

SAMPLES = 24
"""Along a face; four a cell, about one in two pixels at two metres."""
_PAPER_MM = 4.0
"""Of the quiet zone that is looked at."""
_TEXELS = 8
"""Along a cell."""
_HALF_MM = MARKER_MM / 2
_CENTRE_MM = QUIET_MM + _HALF_MM
_TEXEL_MM = MARKER_MM / 6 / _TEXELS
_COARSE_BLUR_MM = (8.0, 4.0)
_PAD = 8
"""Texels of paper around the pattern."""

SIDES: Floats = np.array([1.0, -1.0])
"""Along Z: the sheet's left face, seen from the front, is on the person's right."""

_line = np.linspace(-(_HALF_MM + _PAPER_MM), _HALF_MM + _PAPER_MM, SAMPLES)
ACROSS_MM, UP_MM = (np.ravel(part) for part in np.meshgrid(_line, _line))
"""The samples of a face from its marker's middle, (n,) each, rightward as printed and up."""
STEP_MM = float(_line[1] - _line[0])
_COARSE = np.arange(SAMPLES**2).reshape(SAMPLES, SAMPLES)[::2, ::2].ravel()


def points(tent_rad: float, across_mm: Floats = ACROSS_MM, up_mm: Floats = UP_MM) -> Floats:
    """Points of both faces in the card's axes, (2, n, 3), metres."""
    along = _CENTRE_MM - SIDES[:, None] * across_mm
    back, aside = -along * math.sin(tent_rad), SIDES[:, None] * along * math.cos(tent_rad)
    return np.stack([back, np.broadcast_to(up_mm, back.shape), aside], axis=-1) / 1000


def points_by_tent(tent_rad: float) -> Floats:
    """By how much the samples move with the tent's angle, (2, n, 3), metres a radian."""
    along = _CENTRE_MM - SIDES[:, None] * ACROSS_MM
    back, aside = -along * math.cos(tent_rad), -SIDES[:, None] * along * math.sin(tent_rad)
    return np.stack([back, np.zeros_like(back), aside], axis=-1) / 1000


def coarse_points(tent_rad: float) -> Floats:
    """Every second sample of both faces, (2, m, 3)."""
    return points(tent_rad, ACROSS_MM[_COARSE], UP_MM[_COARSE])


def corners(tent_rad: float) -> Floats:
    """Corners of both markers, (2, 4, 3), clockwise from the top left as printed."""
    across, up = np.array([-1.0, 1, 1, -1]) * _HALF_MM, np.array([1.0, 1, -1, -1]) * _HALF_MM
    return points(tent_rad, across, up)


@functools.cache
def _texture(face: int) -> NDArray[np.float32]:
    cells = marker_cells()[face].astype(np.float32)
    return np.pad(np.kron(cells, np.ones((_TEXELS, _TEXELS), np.float32)), _PAD, constant_values=1)


def _texels(millimetres: Floats) -> NDArray[np.float32]:
    return ((millimetres + _HALF_MM) / _TEXEL_MM + _PAD - 0.5).astype(np.float32)


_MAP = _texels(ACROSS_MM), _texels(-UP_MM)


def pattern(face: int, blur_mm: tuple[float, float]) -> Floats:
    """A face's pattern at the samples, (n,), 0 black to 1 white, blurred across and upward."""
    sigmas = [max(blur / _TEXEL_MM, 0.3) for blur in blur_mm]
    blurred = cv2.GaussianBlur(
        _texture(face), (0, 0), sigmaX=sigmas[0], sigmaY=sigmas[1], borderType=cv2.BORDER_REPLICATE
    )
    found = cv2.remap(blurred, *_MAP, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    return np.asarray(found, dtype=np.float64).ravel()


@functools.cache
def coarse_patterns() -> Floats:
    """The patterns at ``coarse_points``, (2, m), blurred by half a cell across, less upward."""
    return np.stack([pattern(face, _COARSE_BLUR_MM)[_COARSE] for face in (0, 1)])

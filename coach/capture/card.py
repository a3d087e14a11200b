"""What one picture says of the printed card: where it stands, and how sure that is."""

from __future__ import annotations

import math
from enum import StrEnum

import coach.capture.opencv  # noqa: F401 - the environment of cv2 must stand first

# isort: split
import cv2
import numpy as np
from numpy.typing import NDArray

from coach.capture.card_fit import AS_PRINTED, Part, Placed, Tent, lay
from coach.capture.card_guess import guesses
from coach.capture.card_marks import find_marks
from coach.domain.pose import Card
from coach.goniometry.camera import Pinhole

LEAST_PX = (1280, 720)
"""Longer and shorter side of a picture in which the card is measured; smaller ones leave few pixels
to a cell, and the card is found less often."""
LEAST_ALIKE = 0.85
"""Correlation of the worse face. Among rendered cards turned by 40 to 50 degrees, places with less
were wrong by up to 50 degrees, those with more by no more than their interval but for one in
twenty."""
MOST_ERROR_DEG = 6.0
"""A turn less sure than this helps nobody: landmarks alone come near it."""
LENS_ERROR = 0.22
"""95 % of how far the focal length is wrong where the field of view is assumed: 63 degrees for true
ones of 55 to 75."""
KNOWN_LENS_ERROR = 0.02
NOISE = 8.0
"""Half width of the noise's 95 % interval in standard deviations of the fit, which knows of the
sensor's noise but not of blur and compression (tuning seeds)."""
FOLD_DEG = 1.2
"""95 % of the turn, and half of it of the tilt, by faces that are bent or not folded alike: each
0.5 degrees (SD) off, in opposite ways, which takes three millimetres of paper."""
NEARLY_SQUARE_RAD = math.radians(8.0)
"""Width goes with the cosine: this is one per cent of it, half a pixel."""


class NoCard(StrEnum):
    """Why a picture gave no card."""

    SMALL_PICTURE = "small-picture"
    """Less than 1280 by 720; not looked at."""
    NOTHING = "nothing"
    """None of its markers is seen."""
    NOT_BOTH = "not-both"
    """Not both faces look as they were printed: covered, turned too far, or something else."""
    UNSURE = "unsure"
    """Seen, but its turn is not known well enough."""


Box = tuple[slice, slice]


def place_card(
    image_rgb: NDArray[np.uint8],
    camera: Pinhole,
    box: Box | None = None,
    near: Placed | None = None,
    tent: Tent = AS_PRINTED,
) -> Placed | NoCard:
    """Look for the card in a picture, (height, width, 3), or in a part of it.

    ``near`` is where it was a moment ago, ``tent`` what is known of its folds. Both faces must look
    as printed: one alone, being flat, hardly tells a turn and has two solutions.
    """
    height, width = image_rgb.shape[:2]
    if max(width, height) < LEAST_PX[0] or min(width, height) < LEAST_PX[1]:
        return NoCard.SMALL_PICTURE
    rows, columns = box or (slice(0, height), slice(0, width))
    grey = grey_part(image_rgb, (rows, columns))
    corner_px = columns.start, rows.start
    part = Part(grey, corner_px, camera)
    if near is not None and (placed := lay(part, near, tent)).alike >= LEAST_ALIKE:
        return placed
    marks = find_marks(grey)
    if not marks:
        return NoCard.NOTHING
    for guess in guesses(marks, part, corner_px, camera):
        if (placed := lay(part, guess, tent)).alike >= LEAST_ALIKE:
            return placed
    return NoCard.NOT_BOTH


def card(placed: Placed, lens_error: float, tent: Tent = AS_PRINTED) -> Card:
    """Give a placed card its errors; ``lens_error`` is the focal length's relative one, 95 %.

    A wrong focal length turns what lies beside the middle of the picture about the camera by its
    share of the angle from the middle. While one face is nearly square to the line of sight the
    picture tells the sum of turn and tent only (exchanged they look alike), so that the turn is
    known as well as the tent is.
    """
    x, y, z = placed.at_m
    beside = math.hypot(x, y)
    off_axis_rad = lens_error * math.atan2(beside, z)
    about = np.array([-y, x, 0.0]) / max(beside, 1e-9)
    lens_deg = math.degrees(off_axis_rad) * (placed.axes.T @ about)
    variances = np.degrees(np.degrees(np.diag(placed.covariance_rad2)))
    square = abs(seen_turn_rad(placed)) - placed.tent_rad
    tent_deg = 2 * math.degrees(tent.sd_rad) if abs(square) < NEARLY_SQUARE_RAD else 0.0
    turn = math.hypot(NOISE * math.sqrt(variances[1]), FOLD_DEG, lens_deg[1], tent_deg)
    tilt = math.hypot(
        NOISE * math.sqrt(variances[0] + variances[2]), FOLD_DEG / 2, lens_deg[0], lens_deg[2]
    )
    axes = placed.axes.copy()
    axes.setflags(write=False)
    return Card(axes=axes, turn_error_deg=turn, tilt_error_deg=tilt)


def seen_turn_rad(placed: Placed) -> float:
    """Turn of the card against the line of sight."""
    x, _, z = placed.axes.T @ -placed.at_m
    return math.atan2(z, x)


def grey_part(image_rgb: NDArray[np.uint8], box: Box) -> NDArray[np.uint8]:
    """Grey levels of a part of a picture."""
    return np.asarray(cv2.cvtColor(image_rgb[box], cv2.COLOR_RGB2GRAY), dtype=np.uint8)

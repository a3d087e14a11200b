"""The two markers of the printed card: their pattern, and where one seems to be in a picture."""

from __future__ import annotations

import functools

import coach.capture.opencv  # noqa: F401 - the environment of cv2 must stand first

# isort: split
import cv2
import numpy as np
from numpy.typing import NDArray

from coach.domain.card_sheet import CELLS

Floats = NDArray[np.float64]

IDS = (11, 30)
"""The markers of OpenCV's DICT_4X4_50 on the sheet's left and right, seen from the front. No other
pair of it differs in more cells: from each other in 8 of 16, and turned, mirrored or inverted, from
themselves too, in 6."""
_MOST_WRONG_CELLS = 2
_MOST_WRONG_BORDER = 0.2
_LEAST_PERIMETER = 0.02
"""Of the longer side of the part that is searched."""


@functools.cache
def marker_cells() -> NDArray[np.bool_]:
    """The patterns on the sheet's left and right, (2, 6, 6), rows from above; True is white."""
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    pictures = [cv2.aruco.generateImageMarker(dictionary, number, CELLS) for number in IDS]
    cells: NDArray[np.bool_] = np.stack([np.asarray(picture) > 0 for picture in pictures])
    cells.setflags(write=False)
    return cells


@functools.cache
def _detector() -> cv2.aruco.ArucoDetector:
    whole = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    ours = cv2.aruco.Dictionary(whole.bytesList[list(IDS)], whole.markerSize, _MOST_WRONG_CELLS)
    parameters = cv2.aruco.DetectorParameters()
    parameters.errorCorrectionRate = 1.0
    parameters.maxErroneousBitsInBorderRate = _MOST_WRONG_BORDER
    parameters.minMarkerPerimeterRate = _LEAST_PERIMETER
    parameters.cornerRefinementMethod = cv2.aruco.CORNER_REFINE_SUBPIX
    return cv2.aruco.ArucoDetector(ours, parameters)


def find_marks(grey: NDArray[np.uint8]) -> dict[int, Floats]:
    """Look for our markers in a grey picture: 0 (left) or 1 (right) to its corners.

    Corners (4, 2) in pixels from the picture's corner, clockwise from the marker's own top left.
    A marker that is seen twice is not given.
    """
    corners, numbers, _ = _detector().detectMarkers(grey)
    seen = [] if numbers is None else [int(number) for number in np.ravel(numbers)]
    # OpenCV counts from the middle of the first pixel.
    return {
        number: np.asarray(quad, dtype=np.float64).reshape(4, 2) + 0.5
        for number, quad in zip(seen, corners, strict=True)
        if seen.count(number) == 1
    }

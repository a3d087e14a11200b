"""The printed board: its pattern, and where its corners are in a picture."""

from __future__ import annotations

import functools
from dataclasses import dataclass

import coach.capture.opencv  # noqa: F401 - the environment of cv2 must stand first

# isort: split
import cv2
import numpy as np
from numpy.typing import NDArray

from coach.domain.lens import CELLS, COLUMNS, FIRST_MARKER, MARKER_MM, ROWS, SQUARE_MM

Floats = NDArray[np.float64]

CORNERS = (COLUMNS - 1) * (ROWS - 1)
LEAST_CORNERS = 12
"""Half of the board; fewer say little of its tilt."""


@dataclass(frozen=True, slots=True, eq=False)
class Seen:
    """Corners of the board in one picture: numbers (n,), pixels (n, 2) from its own corner."""

    numbers: NDArray[np.intp]
    image_px: Floats

    @property
    def board_mm(self) -> Floats:
        """The same corners on the board (n, 3), x right, y down, z 0."""
        chosen: Floats = corners_mm()[self.numbers]
        return chosen

    @property
    def square_px(self) -> float:
        """The mean side of a square, by the areas that a homography gives them."""
        flat_mm = self.board_mm[:, :2]
        spread_px = np.linalg.det(np.cov(self.image_px.T))
        spread_mm = np.linalg.det(np.cov(flat_mm.T))
        return float((max(spread_px, 0.0) / spread_mm) ** 0.25 * SQUARE_MM)


@functools.cache
def corners_mm() -> Floats:
    """Inner corners of the board (24, 3) by number, row by row from the top left of the board."""
    across, down = np.meshgrid(np.arange(1, COLUMNS), np.arange(1, ROWS))
    squares = np.stack([across, down, np.zeros_like(across)], axis=-1).reshape(-1, 3)
    flat: Floats = squares * np.float64(SQUARE_MM)
    flat.setflags(write=False)
    return flat


@functools.cache
def marker_cells() -> NDArray[np.bool_]:
    """The markers' patterns (n, 6, 6) in the order of the white squares, True is white."""
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    pictures = [
        cv2.aruco.generateImageMarker(dictionary, int(number), CELLS) for number in _numbers()
    ]
    cells: NDArray[np.bool_] = np.stack([np.asarray(picture) > 0 for picture in pictures])
    cells.setflags(write=False)
    return cells


def _numbers() -> NDArray[np.int32]:
    return np.arange(FIRST_MARKER, FIRST_MARKER + COLUMNS * ROWS // 2, dtype=np.int32)


@functools.cache
def _detector() -> cv2.aruco.CharucoDetector:
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    board = cv2.aruco.CharucoBoard((COLUMNS, ROWS), SQUARE_MM, MARKER_MM, dictionary, _numbers())
    return cv2.aruco.CharucoDetector(board)


def find_board(grey: NDArray[np.uint8]) -> Seen | None:
    """Look for the board in a grey picture (height, width); None with less than half of it."""
    points, numbers, _, _ = _detector().detectBoard(grey)
    if numbers is None or points is None or len(numbers) < LEAST_CORNERS:
        return None
    # OpenCV counts from the middle of the first pixel.
    image_px = np.asarray(points, dtype=np.float64).reshape(-1, 2) + 0.5
    return Seen(np.asarray(numbers, dtype=np.intp).ravel(), image_px)


def grey_of(image_rgb: NDArray[np.uint8]) -> NDArray[np.uint8]:
    """Give a picture (height, width, 3), RGB, in grey levels."""
    return np.asarray(cv2.cvtColor(image_rgb, cv2.COLOR_RGB2GRAY), dtype=np.uint8)

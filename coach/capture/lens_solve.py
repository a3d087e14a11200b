"""Least squares over views of the printed board: one lens, and where the board was in each view."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import coach.capture.opencv  # noqa: F401 - the environment of cv2 must stand first

# isort: split
import cv2
import numpy as np
from numpy.typing import NDArray

from coach.capture.lens_board import Seen

Floats = NDArray[np.float64]

CENTRE_SD = 0.015
"""Of the principal point about the middle, in longer sides: 19 of 1280 pixels (from memory)."""
K1_SD = 0.3
"""Of the radial coefficient: webcams without a fish-eye lens stay within it (from memory)."""
_STEPS = 30
_SETTLED = 1e-7
"""Relative step of the focal length at which it stands still."""


@dataclass(frozen=True, slots=True, eq=False)
class Solved:
    """A lens and the places of the boards that fit best."""

    lens: Floats
    """Focal length, k1, principal point (4,)."""
    poses: list[Floats]
    """Turn and place of each view's board (6,)."""
    normal: Floats
    """Inverse of the lens's covariance, poses free (4, 4)."""

    def misses(self, views: Sequence[Seen]) -> list[Floats]:
        """How far in pixels each corner of each view is from where it should be."""
        found = []
        for view, pose in zip(views, self.poses, strict=True):
            miss, _ = _piece(view, pose, self.lens)
            found.append(np.hypot(miss[::2], miss[1::2]))
        return found


def solve(
    views: Sequence[Seen],
    lens: Floats,
    poses: list[Floats],
    variance: float,
    size_px: tuple[int, int],
) -> Solved | None:
    """Levenberg-Marquardt with the poses eliminated by the Schur complement."""
    longer = max(size_px)
    mean = np.array([0.0, 0.0, size_px[0] / 2, size_px[1] / 2])
    weight = 1 / np.array([np.inf, K1_SD, CENTRE_SD * longer, CENTRE_SD * longer]) ** 2
    pieces = [_piece(view, pose, lens) for view, pose in zip(views, poses, strict=True)]
    cost = _cost(pieces, lens, mean, weight, variance)
    damping = 1e-4
    for _ in range(_STEPS):
        try:
            step, turned, normal = _step(pieces, lens, mean, weight, variance, damping)
        except np.linalg.LinAlgError:
            return None
        tried = lens + step
        tried_poses = [pose + each for pose, each in zip(poses, turned, strict=True)]
        if longer / 20 < tried[0] < longer * 20:
            new = [_piece(view, pose, tried) for view, pose in zip(views, tried_poses, strict=True)]
            now = _cost(new, tried, mean, weight, variance)
        else:
            now = math.inf
        if now > cost * (1 + 1e-9):
            damping *= 10
            continue
        small = abs(step[0]) < _SETTLED * lens[0]
        lens, poses, pieces, cost = tried, tried_poses, new, now
        damping = max(damping / 10, 1e-12)
        if small:
            _, _, normal = _step(pieces, lens, mean, weight, variance, 0.0)
            return Solved(lens, poses, normal)
    return None


def _cost(
    pieces: list[tuple[Floats, Floats]],
    lens: Floats,
    mean: Floats,
    weight: Floats,
    variance: float,
) -> float:
    prior = float(weight @ (lens - mean) ** 2)
    return prior + sum(float(miss @ miss) for miss, _ in pieces) / variance


def _step(
    pieces: list[tuple[Floats, Floats]],
    lens: Floats,
    mean: Floats,
    weight: Floats,
    variance: float,
    damping: float,
) -> tuple[Floats, list[Floats], Floats]:
    """Steps of the lens (4,) and of each pose (6,), and the lens's normal matrix (4, 4)."""
    normal: Floats = np.diag(weight)
    gradient: Floats = weight * (mean - lens)
    eliminated = []
    for miss, jacobian in pieces:
        shared, own = jacobian[:, :4], jacobian[:, 4:]
        block = own.T @ own
        block = block + damping * np.diag(np.diag(block))
        cross = own.T @ shared
        back = np.linalg.solve(block, np.column_stack([cross, own.T @ miss]))
        normal += (shared.T @ shared - cross.T @ back[:, :4]) / variance
        gradient += (shared.T @ miss - cross.T @ back[:, 4]) / variance
        eliminated.append(back)
    damped = normal + damping * np.diag(np.diag(normal))
    step = np.asarray(np.linalg.solve(damped, gradient), dtype=np.float64)
    return step, [back[:, 4] - back[:, :4] @ step for back in eliminated], normal


def first_guess(
    views: Sequence[Seen], size_px: tuple[int, int]
) -> tuple[Floats, list[Floats]] | None:
    """A first guess: focal length and poses as OpenCV finds them without any distortion."""
    longer = max(size_px)
    guess = np.array([[longer, 0, size_px[0] / 2], [0, longer, size_px[1] / 2], [0, 0, 1.0]])
    fixed = (
        cv2.CALIB_FIX_K1
        | cv2.CALIB_FIX_K2
        | cv2.CALIB_FIX_K3
        | cv2.CALIB_ZERO_TANGENT_DIST
        | cv2.CALIB_FIX_ASPECT_RATIO
        | cv2.CALIB_FIX_PRINCIPAL_POINT
        | cv2.CALIB_USE_INTRINSIC_GUESS
    )
    try:
        _, matrix, _, turns, places = cv2.calibrateCamera(
            [view.board_mm.astype(np.float32) for view in views],
            [view.image_px.astype(np.float32) for view in views],
            size_px,
            guess,
            np.zeros(5),
            flags=fixed,
        )
    except cv2.error:
        return None
    lens = np.array([matrix[0, 0], 0.0, guess[0, 2], guess[1, 2]])
    poses = [
        np.concatenate([np.ravel(turn), np.ravel(place)]).astype(np.float64)
        for turn, place in zip(turns, places, strict=True)
    ]
    return (lens, poses) if np.isfinite(lens).all() and lens[0] > 0 else None


def _piece(view: Seen, pose: Floats, lens: Floats) -> tuple[Floats, Floats]:
    """Misses (2n,) in pixels and the derivatives (2n, 10) by lens and pose of one view."""
    focal, k1, x, y = lens
    matrix = np.array([[focal, 0, x], [0, focal, y], [0, 0, 1.0]])
    points, by = cv2.projectPoints(
        view.board_mm, pose[:3], pose[3:], matrix, np.array([k1, 0, 0, 0, 0.0])
    )
    # OpenCV's columns: turn 3, place 3, fx, fy, cx, cy, k1 and on.
    shared = np.column_stack([by[:, 6] + by[:, 7], by[:, 10], by[:, 8], by[:, 9]])
    miss = (view.image_px - points.reshape(-1, 2)).ravel()
    return miss, np.column_stack([shared, by[:, :6]])

"""First guesses of where a card stands, from the corners of one or both markers."""

from __future__ import annotations

from collections.abc import Mapping

import cv2
import numpy as np
from numpy.typing import NDArray

from coach.capture import card_model
from coach.capture.card_fit import AS_PRINTED, Part, Placed, alike
from coach.domain.card_sheet import MARKER_MM
from coach.goniometry.camera import Pinhole

Floats = NDArray[np.float64]

_TENT_RAD = AS_PRINTED.angle_rad
_HALF_M = MARKER_MM / 2000
_SQUARE = np.array([(-1.0, 1, 0), (1, 1, 0), (1, -1, 0), (-1, -1, 0)]) * _HALF_M
_KEPT = 3
_TURNS_RAD = np.radians(np.arange(-40.0, 41.0, 4.0))
"""How far the near face alone may be misread, in steps that a cell of the far face bears."""


def guesses(
    marks: Mapping[int, Floats], part: Part, corner_px: tuple[int, int], camera: Pinhole
) -> list[Placed]:
    """Give guesses, the likeliest first, from markers' corners (4, 2) in pixels of the part.

    A square has two poses that look nearly alike. With both markers each of the four is refined on
    all eight corners, and the one that fits best comes first. With one, the other face is looked
    for: the card is turned about the seen face, and the turns at which both faces look most like
    their pattern come first.
    """
    lens = np.array([[camera.focal_px, 0, 0], [0, camera.focal_px, 0], [0, 0, 1.0]])
    quads = {
        face: np.asarray(quad + corner_px - np.array(camera.centre_px))
        for face, quad in marks.items()
    }
    starts = [start for face, quad in quads.items() for start in _of_square(face, quad, lens)]
    if len(quads) == 1:
        return _turned(starts, next(iter(quads)), part)
    body = card_model.corners(_TENT_RAD).reshape(-1, 3)
    seen = np.concatenate([quads[0], quads[1]])
    return [placed for _, placed in sorted(_refined(starts, body, seen, lens), key=_first)]


def _first(pair: tuple[float, Placed]) -> float:
    return pair[0]


def _of_square(face: int, quad: Floats, lens: Floats) -> list[Placed]:
    found, turns, shifts, _ = cv2.solvePnPGeneric(
        _SQUARE, quad, lens, None, flags=cv2.SOLVEPNP_IPPE_SQUARE
    )
    corners = card_model.corners(_TENT_RAD)[face]
    across, up = corners[1] - corners[0], corners[0] - corners[3]
    across, up = across / np.linalg.norm(across), up / np.linalg.norm(up)
    face_axes = np.stack([across, up, np.cross(across, up)], axis=1)
    placed = []
    for turn, shift in zip(turns[:found], shifts[:found], strict=True):
        axes = np.asarray(cv2.Rodrigues(turn)[0], dtype=np.float64) @ face_axes.T
        placed.append(Placed(axes, np.ravel(shift) - axes @ corners.mean(axis=0)))
    return placed


def _refined(
    starts: list[Placed], body: Floats, seen: Floats, lens: Floats
) -> list[tuple[float, Placed]]:
    results = []
    for start in starts:
        turn, shift = cv2.solvePnPRefineLM(
            body, seen, lens, None, cv2.Rodrigues(start.axes)[0], start.at_m.reshape(3, 1)
        )
        axes = np.asarray(cv2.Rodrigues(turn)[0], dtype=np.float64)
        at = np.ravel(shift).astype(np.float64)
        points = body @ axes.T + at
        off = points[:, :2] / points[:, 2:] * lens[0, 0] - seen
        results.append((float(np.mean(off**2)), Placed(axes, at)))
    return results


def _turned(starts: list[Placed], face: int, part: Part) -> list[Placed]:
    middle = card_model.corners(_TENT_RAD)[face].mean(axis=0)
    turned = []
    for start in starts:
        held = start.axes @ middle + start.at_m
        for turn in _TURNS_RAD:
            axes = start.axes @ np.asarray(cv2.Rodrigues(np.array([0.0, turn, 0]))[0])
            turned.append(Placed(axes, held - axes @ middle))
    every = np.stack([each.axes for each in turned])
    points = card_model.coarse_points(_TENT_RAD) @ np.swapaxes(every, 1, 2)[:, None]
    points = points + np.stack([each.at_m for each in turned])[:, None, None]
    count, faces, samples, _ = points.shape
    light = part.at(part.project(points.reshape(count * faces, samples, 3)))[..., 0]
    found = alike(card_model.coarse_patterns(), light.reshape(count, faces, samples))
    order = np.argsort(-found.min(axis=1))
    return [turned[index] for index in order[:_KEPT]]

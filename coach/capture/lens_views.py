"""Collects well-spread views of the printed board by itself, and says what is still missing."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import StrEnum

import coach.capture.opencv  # noqa: F401 - the environment of cv2 must stand first
from coach.texts import translate

# isort: split
import cv2
import numpy as np
from numpy.typing import NDArray

from coach.capture.lens_board import Seen, corners_mm, find_board, grey_of
from coach.domain.frame import Frame
from coach.goniometry.camera import Pinhole

Floats = NDArray[np.float64]

ENOUGH_VIEWS, MOST_VIEWS = 16, 40
LEAST_SQUARE = 0.025
"""Side of a square in longer sides of the picture: a sheet of A4 about a metre away."""
NEAR_SQUARE = 0.06
"""There the board takes nearly half of the picture's breadth."""
TILT_DEG = 20.0
"""From where a tilt says something of the focal length: face-on it is only near or far."""
_PER_TILT, _NEAR_VIEWS = 2, 3
_CORNER_AT = 0.3
"""A picture's corner is seen where a corner of the board lies in its outer 30 % both ways."""
_MOVED = 0.006
"""Longer sides from frame to frame; faster, the picture is blurred and read line by line."""
_NEW_PLACE, _NEW_SIZE, _NEW_TILT_DEG = 0.08, 1.25, 8.0


class Missing(StrEnum):
    """What to do next with the sheet."""

    SHOW = "hold the sheet so that the whole board is in the picture"
    NEARER = "bring the sheet nearer, until it fills half of the picture"
    STILL = "hold the sheet still for a moment"
    LEFT = "turn the sheet's left edge away from the camera, and hold it"
    RIGHT = "turn the sheet's right edge away from the camera, and hold it"
    TOP = "tip the sheet's upper edge away from the camera, and hold it"
    BOTTOM = "tip the sheet's lower edge away from the camera, and hold it"
    CORNERS = "move the sheet, tilted, into the other corners of the picture"
    MORE = "go on moving and tilting the sheet, with short stops"


def wish_words(missing: Missing) -> str:
    """Say what to do next with the sheet."""
    return {
        Missing.SHOW: translate("lens", "hold the sheet so that the whole board is in the picture"),
        Missing.NEARER: translate(
            "lens", "bring the sheet nearer, until it fills half of the picture"
        ),
        Missing.STILL: translate("lens", "hold the sheet still for a moment"),
        Missing.LEFT: translate(
            "lens", "turn the sheet's left edge away from the camera, and hold it"
        ),
        Missing.RIGHT: translate(
            "lens", "turn the sheet's right edge away from the camera, and hold it"
        ),
        Missing.TOP: translate(
            "lens", "tip the sheet's upper edge away from the camera, and hold it"
        ),
        Missing.BOTTOM: translate(
            "lens", "tip the sheet's lower edge away from the camera, and hold it"
        ),
        Missing.CORNERS: translate(
            "lens", "move the sheet, tilted, into the other corners of the picture"
        ),
        Missing.MORE: translate("lens", "go on moving and tilting the sheet, with short stops"),
    }[missing]


_TILTS = {
    Missing.LEFT: (1, -1.0),
    Missing.RIGHT: (1, 1.0),
    Missing.TOP: (0, 1.0),
    Missing.BOTTOM: (0, -1.0),
}


@dataclass(frozen=True, slots=True, eq=False)
class View:
    """A view that was kept: the corners, and roughly where the board was."""

    seen: Seen
    middle: Floats
    """In longer sides."""
    square: float
    """A square's side in longer sides."""
    tilt_deg: Floats
    """About the picture's x and y (2,), roughly; positive when the upper, right edge is farther."""


@dataclass(slots=True)
class Views:
    """The views so far; ``look`` takes frames in time order."""

    size_px: tuple[int, int]
    kept: list[View] = field(default_factory=list)
    frames: int = 0
    seen: int = 0
    """Frames that showed the board."""
    too_small: int = 0
    _last: Seen | None = None
    _hint: Missing = Missing.SHOW

    def look(self, frame: Frame) -> Missing | None:
        """Take a frame; give what is missing, None once the views are enough."""
        self.frames += 1
        seen = find_board(grey_of(frame.image_rgb))
        last, self._last = self._last, seen
        if seen is None:
            self._hint = Missing.SHOW
            return self.missing
        self.seen += 1
        view = _view(seen, self.size_px)
        if view is None or view.square < LEAST_SQUARE:
            self.too_small += 1
            self._hint = Missing.NEARER
        elif last is None or _moved(last, seen) > _MOVED * max(self.size_px):
            self._hint = Missing.STILL
        else:
            self._hint = Missing.MORE
            if len(self.kept) < MOST_VIEWS and all(_differ(view, old) for old in self.kept):
                self.kept.append(view)
        return self.missing

    @property
    def corners(self) -> list[Seen]:
        """The kept views' corners."""
        return [view.seen for view in self.kept]

    @property
    def missing(self) -> Missing | None:
        """The first thing that is missing, None if nothing is."""
        if self._hint is not Missing.MORE and not self.kept:
            return self._hint
        for wish in self.tilts_missing:
            return wish
        if sum(view.square >= NEAR_SQUARE for view in self.kept) < _NEAR_VIEWS:
            return Missing.NEARER
        if len(self.corners_reached) < 4:
            return Missing.CORNERS
        return Missing.MORE if len(self.kept) < ENOUGH_VIEWS else None

    @property
    def tilts_missing(self) -> Sequence[Missing]:
        """Ways of tilting of which there are too few views."""
        return [
            wish
            for wish, (axis, sign) in _TILTS.items()
            if sum(sign * view.tilt_deg[axis] >= TILT_DEG for view in self.kept) < _PER_TILT
        ]

    @property
    def corners_reached(self) -> set[tuple[bool, bool]]:
        """The picture's corners (right, low) in which a part of the board was seen."""
        size = np.array(self.size_px)
        reached: set[tuple[bool, bool]] = set()
        for view in self.kept:
            for x, y in view.seen.image_px / size:
                if min(x, 1 - x) < _CORNER_AT and min(y, 1 - y) < _CORNER_AT:
                    reached.add((bool(x > 0.5), bool(y > 0.5)))
        return reached


def _view(seen: Seen, size_px: tuple[int, int]) -> View | None:
    camera = Pinhole.of(size_px)
    x, y = camera.centre_px
    matrix = np.array([[camera.focal_px, 0, x], [0, camera.focal_px, y], [0, 0, 1.0]])
    try:
        found, turn, place = cv2.solvePnP(
            seen.board_mm, seen.image_px, matrix, None, flags=cv2.SOLVEPNP_IPPE
        )
    except cv2.error:
        return None
    if not found:
        return None
    # Against the line of sight, for that is what the perspective depends on.
    axes = np.asarray(cv2.Rodrigues(turn)[0])
    away = axes[:, 2]
    sight = np.ravel(place) + axes @ corners_mm().mean(axis=0)
    if away @ sight < 0:
        away = -away
    # The plane z = a x + b y: farther to the right is a > 0, farther below is b > 0.
    tilt = np.array([math.atan2(away[1], away[2]), -math.atan2(away[0], away[2])])
    line = np.array([math.atan2(sight[1], sight[2]), -math.atan2(sight[0], sight[2])])
    longer = max(size_px)
    return View(
        seen, seen.image_px.mean(axis=0) / longer, seen.square_px / longer, np.degrees(tilt - line)
    )


def _moved(one: Seen, other: Seen) -> float:
    """The median way in pixels of the corners that both show."""
    _, first, second = np.intersect1d(one.numbers, other.numbers, return_indices=True)
    if not len(first):
        return math.inf
    way = one.image_px[first] - other.image_px[second]
    return float(np.median(np.hypot(way[:, 0], way[:, 1])))


def _differ(one: View, other: View) -> bool:
    ratio = one.square / other.square
    return bool(
        np.linalg.norm(one.middle - other.middle) > _NEW_PLACE
        or max(ratio, 1 / ratio) > _NEW_SIZE
        or np.abs(one.tilt_deg - other.tilt_deg).max() > _NEW_TILT_DEG
    )

"""Watches the followed person's chest for the printed card, frame after frame."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from coach.capture.card import (
    KNOWN_LENS_ERROR,
    LEAST_PX,
    LENS_ERROR,
    MOST_ERROR_DEG,
    NEARLY_SQUARE_RAD,
    Box,
    NoCard,
    card,
    grey_part,
    place_card,
    seen_turn_rad,
)
from coach.capture.card_fit import AS_PRINTED, Placed, Tent
from coach.capture.card_marks import find_marks
from coach.domain.frame import Frame
from coach.domain.pose import Card, Landmark, Pose
from coach.goniometry.camera import Pinhole
from coach.texts import translate

Floats = NDArray[np.float64]

LOOK_EVERY = 5
"""Frames from one look to the next while no card is known."""
KNOWN_S = 2.0
"""So long after it was last seen a card is looked for in every frame."""
NEAR_S = 0.3
"""So long a card's last place is a first guess."""
_SMALL_EVERY = 30

TENT_SD_RAD = math.radians(0.7)
"""Of a tent seen in several frames: half a per cent of a face's width is 0.4 degrees."""
_TENT_FRAMES = 10, 100
"""From how many frames a tent is known, and how many it is averaged over."""

_BOX_CENTRE, _BOX_HALF = 0.2, 0.75
"""In lengths of the trunk, from the shoulders toward the hips."""
_BREADTH_TO_TRUNK = 1.2
_LEAST_BOX_PX = 32


class CardWatch:
    """A ``CardFinder`` for one film; used by one thread.

    Until a card is seen, and when it has not been seen for two seconds, every fifth frame is looked
    at. A card worn upside down is taken the right way up: it is the same either way. What is found
    depends on the frames, their poses and stamps alone.
    """

    def __init__(self, field_of_view_deg: float | None = None) -> None:
        """Begin; the camera's horizontal field of view is assumed where it is not known."""
        self._field_of_view_deg = field_of_view_deg
        self._lens_error = LENS_ERROR if field_of_view_deg is None else KNOWN_LENS_ERROR
        self._last: tuple[float, Placed] | None = None
        self._tent: tuple[int, float] = (0, 0.0)
        self._looks = 0
        self.why: NoCard | None = None
        """Why the frame last looked at gave no card."""
        self.seen_too_small: tuple[int, int] | None = None
        """The size of pictures that showed the card, but are too small to measure it."""

    def find(self, frame: Frame, pose: Pose) -> Card | None:
        """Look for the card on the chest of ``pose``, if it is time to."""
        box = chest_box(pose)
        if pose.another_person or box is None or not self._due(frame.time_s):
            return None
        last_s, near = self._last or (-math.inf, None)
        if frame.time_s - last_s > NEAR_S:
            near = None
        camera = Pinhole.of(frame.size_px, self._field_of_view_deg)
        tent = self._known_tent()
        placed = place_card(frame.image_rgb, camera, box, near, tent)
        if isinstance(placed, NoCard):
            self.why = placed
            if placed is NoCard.SMALL_PICTURE:
                self._notice(frame, box)
            return None
        found = card(placed, self._lens_error, tent)
        self._last = frame.time_s, placed
        self._learn(placed)
        found = _upright(found, pose)
        self.why = None if found.turn_error_deg <= MOST_ERROR_DEG else NoCard.UNSURE
        return found if self.why is None else None

    @property
    def notes(self) -> tuple[str, ...]:
        """Sentences that a person should know."""
        if self.seen_too_small is None:
            return ()
        width, height = self.seen_too_small
        return (
            translate(
                "faults",
                "The printed card is in the picture, but {width} by {height} pixels are too few to"
                " measure it; set the camera to {least_width} by {least_height} or more to use it.",
            ).format(width=width, height=height, least_width=LEAST_PX[0], least_height=LEAST_PX[1]),
        )

    def _known_tent(self) -> Tent:
        frames, angle_rad = self._tent
        return AS_PRINTED if frames < _TENT_FRAMES[0] else Tent(angle_rad, TENT_SD_RAD)

    def _learn(self, placed: Placed) -> None:
        """Take in the tent's angle while neither face is square to the line of sight."""
        if abs(seen_turn_rad(placed)) > placed.tent_rad - 2 * NEARLY_SQUARE_RAD:
            return
        frames, angle_rad = self._tent
        frames = min(frames + 1, _TENT_FRAMES[1])
        self._tent = frames, angle_rad + (placed.tent_rad - angle_rad) / frames

    def _due(self, time_s: float) -> bool:
        self._looks += 1
        known = self._last is not None and 0 <= time_s - self._last[0] <= KNOWN_S
        return known or self._looks % LOOK_EVERY == 1

    def _notice(self, frame: Frame, box: Box) -> None:
        due = self._looks % _SMALL_EVERY == 1
        if due and self.seen_too_small is None and find_marks(grey_part(frame.image_rgb, box)):
            self.seen_too_small = frame.size_px


def chest_box(pose: Pose) -> Box | None:
    """Rows and columns around the chest in which the card must be; None where it is not known."""
    shoulders, hips = _shoulders(pose), _hips(pose)
    breadth = pose.image_px[Landmark.LEFT_SHOULDER] - pose.image_px[Landmark.RIGHT_SHOULDER]
    length = max(_length(shoulders - hips), _BREADTH_TO_TRUNK * _length(breadth))
    if not math.isfinite(length):
        return None
    middle = shoulders + _BOX_CENTRE * (hips - shoulders)
    low = np.clip(middle - _BOX_HALF * length, 0, pose.size_px).astype(int)
    high = np.clip(middle + _BOX_HALF * length, 0, pose.size_px).astype(int)
    if (high - low).min() < _LEAST_BOX_PX:
        return None
    return slice(int(low[1]), int(high[1])), slice(int(low[0]), int(high[0]))


def _upright(found: Card, pose: Pose) -> Card:
    """Turn a card that is worn upside down: its two halves are alike but for what is printed."""
    up_px = _shoulders(pose) - _hips(pose)
    if float(found.axes[:2, 1] @ up_px) >= 0:
        return found
    axes = found.axes * np.array([1.0, -1.0, -1.0])
    axes.setflags(write=False)
    return replace(found, axes=axes)


def _shoulders(pose: Pose) -> Floats:
    return _middle(pose, Landmark.LEFT_SHOULDER, Landmark.RIGHT_SHOULDER)


def _hips(pose: Pose) -> Floats:
    return _middle(pose, Landmark.LEFT_HIP, Landmark.RIGHT_HIP)


def _middle(pose: Pose, one: Landmark, other: Landmark) -> Floats:
    middle: Floats = (pose.image_px[one] + pose.image_px[other]) / 2
    return middle


def _length(vector: Floats) -> float:
    return float(np.hypot(vector[0], vector[1]))

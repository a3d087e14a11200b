"""What a home does to a picture: light, cameras, and things and people in the way.

Each way of spoiling takes a clean picture (H, W, 3) RGB and gives another of it. Nothing about the
person's angles changes: a camera turned about its own centre sees the same bodies, and what is
painted over hides, but moves nothing. Strengths are our choice, those of lenses from memory.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from itertools import pairwise

import cv2
import numpy as np
from numpy.typing import NDArray

from coach.domain.movement import Side
from coach.domain.pose import Landmark

Picture = NDArray[np.uint8]
Array = NDArray[np.float64]
TABLE: tuple[int, int, int] = (96, 70, 48)


@dataclass(frozen=True, slots=True, eq=False)
class Clean:
    """A clean picture, those before and after it, and where the pose model sees the person.

    ``points_px`` (33, 2) of this picture; ``reach_px`` (2,) is the middle of the forearm where it
    is farthest aside in the whole clip. ``stranger`` is a picture of somebody else.
    """

    picture: Picture
    around: tuple[Picture, ...]
    side: Side
    fov_deg: float
    points_px: Array = field(repr=False)
    reach_px: Array = field(repr=False)
    stranger: Picture = field(repr=False)
    rng: np.random.Generator = field(repr=False)

    @property
    def camera(self) -> Array:
        """Intrinsics (3, 3) in pixels; the field of view is that across the picture."""
        height, width = self.picture.shape[:2]
        focal_px = width / 2 / np.tan(np.radians(self.fov_deg) / 2)
        return np.array([[focal_px, 0, width / 2], [0, focal_px, height / 2], [0, 0, 1.0]])

    @property
    def trunk_px(self) -> float:
        """Length of the trunk."""
        return float(np.linalg.norm(self.middle(11, 12) - self.middle(23, 24)))

    def middle(self, one: int, other: int) -> Array:
        """Middle of two points (2,)."""
        middle: Array = (self.points_px[one] + self.points_px[other]) / 2
        return middle

    def arm(self) -> Array:
        """Shoulder, elbow and wrist of the exercising arm (3, 2)."""
        rows = [Landmark.LEFT_SHOULDER, Landmark.LEFT_ELBOW, Landmark.LEFT_WRIST]
        points: Array = self.points_px[np.array(rows) + (self.side is Side.RIGHT)]
        return points


Spoil = Callable[[Clean], Picture]


def _exposed(values: NDArray[np.floating]) -> Picture:
    return np.clip(values, 0, 255).astype(np.uint8)


def light(gain: float, noise: float = 0.0) -> Spoil:
    """Exposed otherwise, burnt out where it is too bright; noise in grey levels (SD)."""

    def spoil(clean: Clean) -> Picture:
        grain = clean.rng.standard_normal(clean.picture.shape, np.float32)
        return _exposed(clean.picture * np.float32(gain) + np.float32(noise) * grain)

    return spoil


def backlight(clean: Clean) -> Picture:
    """A window beside the head: the exposure follows it, and its glare lies over the person."""
    rows, columns = np.indices(clean.picture.shape[:2], dtype=np.float32)
    x, y = clean.points_px[Landmark.NOSE]
    away = ((columns - x) ** 2 + (rows - y) ** 2) / clean.trunk_px**2
    glare = 190 * np.exp(-away / 1.5)
    return _exposed(0.3 * clean.picture + glare[..., None])


def motion_blur(clean: Clean) -> Picture:
    """Light gathered from the picture before to the one after."""
    return _exposed(np.mean(clean.around, axis=0))


def jpeg(quality: int) -> Spoil:
    """Pressed hard."""

    def spoil(clean: Clean) -> Picture:
        packed = cv2.imencode(".jpg", clean.picture, [int(cv2.IMWRITE_JPEG_QUALITY), quality])[1]
        return np.asarray(cv2.imdecode(packed, cv2.IMREAD_COLOR), np.uint8)

    return spoil


def evening(clean: Clean) -> Picture:
    """A lamp, a long exposure, gain and compression at once."""
    blurred = replace(clean, picture=motion_blur(clean))
    noisy = replace(clean, picture=light(0.35, 9.0)(blurred))
    return jpeg(20)(noisy)


def sized(longer_px: int) -> Spoil:
    """As many pixels along the longer side."""

    def spoil(clean: Clean) -> Picture:
        height, width = clean.picture.shape[:2]
        scale = longer_px / max(height, width)
        how = cv2.INTER_AREA if scale < 1 else cv2.INTER_CUBIC
        size = round(width * scale), round(height * scale)
        return np.asarray(cv2.resize(clean.picture, size, interpolation=how), np.uint8)

    return spoil


def turned(roll_deg: float = 0.0, up_deg: float = 0.0, right_deg: float = 0.0) -> Spoil:
    """The camera turned about its own centre."""
    return lambda clean: _turn(clean, roll_deg, up_deg, right_deg)


def _turn(clean: Clean, roll_deg: float, up_deg: float, right_deg: float) -> Picture:
    turn = np.eye(3)
    for axis, angle_deg in enumerate((-up_deg, -right_deg, roll_deg)):
        turn = cv2.Rodrigues(np.radians(angle_deg) * np.eye(3)[axis])[0] @ turn
    height, width = clean.picture.shape[:2]
    warp = clean.camera @ turn @ np.linalg.inv(clean.camera)
    border = cv2.BORDER_REPLICATE
    seen = cv2.warpPerspective(clean.picture, warp, (width, height), borderMode=border)
    return np.asarray(seen, np.uint8)


def arm_cut(clean: Clean) -> Picture:
    """The camera turned so far aside that half of the forearm leaves the picture at its widest."""
    width = clean.picture.shape[1]
    slopes = (np.array([0.0, width, clean.reach_px[0]]) - width / 2) / clean.camera[0, 0]
    left, right, reach = np.degrees(np.arctan(slopes))
    edge = right if clean.reach_px[0] > clean.middle(11, 12)[0] else left
    return _turn(clean, 0.0, 0.0, reach - edge)


def barrel(k1: float) -> Spoil:
    """A wide-angle lens: radii r in units of the focal length become r (1 + k1 r^2)."""

    def spoil(clean: Clean) -> Picture:
        height, width = clean.picture.shape[:2]
        grid = np.indices((height, width), dtype=np.float32)[::-1].reshape(2, 1, -1).T
        lens = np.array([k1, 0, 0, 0.0])
        source = cv2.undistortPoints(grid, clean.camera, lens, P=clean.camera)
        source = source.reshape(height, width, 2).astype(np.float32)
        edge = cv2.BORDER_REPLICATE
        bent = cv2.remap(clean.picture, source, None, cv2.INTER_LINEAR, borderMode=edge)
        return np.asarray(bent, np.uint8)

    return spoil


def mirrored(clean: Clean) -> Picture:
    """As a mirror shows it."""
    return np.ascontiguousarray(clean.picture[:, ::-1])


def faint_arm(left: float) -> Spoil:
    """A sleeve of the ground's own colour in a dark room; ``left`` of the contrast is left."""

    def spoil(clean: Clean) -> Picture:
        dark = clean.picture * np.float32(0.45)
        mask = np.zeros(dark.shape[:2], np.uint8)
        points = [(int(x), int(y)) for x, y in clean.arm()]
        for start, end in pairwise(points):
            cv2.line(mask, start, end, 255, max(3, round(0.3 * clean.trunk_px)))
        ground = np.median(dark[::8, ::8].reshape(-1, 3), axis=0)
        share = (cv2.GaussianBlur(mask, (0, 0), 3.0)[..., None] / 255.0) * (1 - left)
        return _exposed(dark * (1 - share) + ground * share)

    return spoil


def table(over_hips: float) -> Spoil:
    """A table before the person, its edge so many trunk lengths above the hips."""

    def spoil(clean: Clean) -> Picture:
        picture = clean.picture.copy()
        edge = int(clean.middle(23, 24)[1] - over_hips * clean.trunk_px)
        picture[max(edge, 0) :] = TABLE
        return picture

    return spoil


def second_person(clean: Clean) -> Picture:
    """Somebody behind, at two thirds of the size, on the side where the arm does not go."""
    picture = clean.picture.copy()
    height, width = picture.shape[:2]
    tall, broad = clean.stranger.shape[:2]
    scale = 1.3 * clean.trunk_px * 0.65 / (0.3 * tall)
    size = round(broad * scale), min(round(tall * scale), height)
    other = cv2.resize(clean.stranger, size)
    top = min(max(int(clean.middle(11, 12)[1]) - size[1] // 4, 0), height - size[1])
    breadth = min(size[0], width // 3)
    cut = other[:, (size[0] - breadth) // 2 :][:, :breadth]
    right = clean.reach_px[0] < clean.middle(11, 12)[0]
    columns = slice(width - breadth, width) if right else slice(0, breadth)
    picture[top : top + size[1], columns] = cut
    return picture


def plain(clean: Clean) -> Picture:
    """As it is."""
    return clean.picture

"""Pictures of the printed board, bent or flat, through a lens that is known, with its own optics.

Axes of the camera: x right, y down, z away. Each pixel's ray is traced back to the sheet: nothing
of the program's own projection is used.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import cv2
import numpy as np

from coach.domain.frame import Frame

from .rendered_card import GAMMA, INK, PAPER, turn

Array = np.ndarray
TEXELS_PER_MM = 6
SAMPLES = 3
SHEET_MM = (297.0, 210.0)
COLUMNS, ROWS, SQUARE_MM, MARKER_MM, FIRST_MARKER = 7, 5, 34.0, 25.0, 31


@dataclass(frozen=True)
class Optics:
    field_of_view_deg: float = 63.0
    k1: float = 0.0
    centre_off_px: tuple[float, float] = (0.0, 0.0)
    size_px: tuple[int, int] = (1280, 720)
    noise: float = 4.0
    blur_px: float = 0.7
    jpeg: int | None = 85
    exposure: float = 0.8
    bend_mm: float = 0.0
    """How far the sheet's middle stands out of its left and right edges."""

    @property
    def focal_px(self) -> float:
        return max(self.size_px) / 2 / np.tan(np.radians(self.field_of_view_deg) / 2)


@dataclass(frozen=True)
class Place:
    """Where the sheet's middle is seen, in halves of the picture, and how it is turned."""

    at: tuple[float, float] = (0.0, 0.0)
    distance_m: float = 0.45
    about_x_deg: float = 0.0
    about_y_deg: float = 0.0
    roll_deg: float = 0.0


def sheet() -> Array:
    """Reflectance of the sheet with the board in its middle."""
    k = TEXELS_PER_MM
    page = np.full((round(SHEET_MM[1] * k), round(SHEET_MM[0] * k)), PAPER, np.float32)
    left = (page.shape[1] - round(COLUMNS * SQUARE_MM * k)) // 2
    top = (page.shape[0] - round(ROWS * SQUARE_MM * k)) // 2
    side, mark = round(SQUARE_MM * k), round(MARKER_MM * k)
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    number = FIRST_MARKER
    for row in range(ROWS):
        for column in range(COLUMNS):
            y, x = top + row * side, left + column * side
            if (row + column) % 2 == 0:
                page[y : y + side, x : x + side] = INK
                continue
            cells = cv2.aruco.generateImageMarker(dictionary, number, mark)
            number += 1
            inset = (side - mark) // 2
            page[y + inset : y + inset + mark, x + inset : x + inset + mark] = np.where(
                cells > 127, PAPER, INK
            )
    return page


_SHEET = sheet()


def render(optics: Optics, place: Place, random: np.random.Generator) -> Array:
    """Give the picture, (height, width, 3), RGB."""
    width, height = optics.size_px
    f = optics.focal_px
    middle = (width / 2 + optics.centre_off_px[0], height / 2 + optics.centre_off_px[1])
    s = SAMPLES
    axes = turn(1, place.about_y_deg) @ turn(0, place.about_x_deg) @ turn(2, place.roll_deg)
    centre = place.distance_m * np.array(
        [place.at[0] * width / 2 / f, place.at[1] * height / 2 / f, 1.0]
    )
    low, high = _surrounding(optics, axes, centre, middle)
    u, v = np.meshgrid(
        (np.arange(low[0] * s, high[0] * s, dtype=np.float32) + 0.5) / s,
        (np.arange(low[1] * s, high[1] * s, dtype=np.float32) + 0.5) / s,
    )
    xd, yd = (u - middle[0]) / f, (v - middle[1]) / f
    x, y = xd, yd
    for _ in range(6 if optics.k1 else 0):  # the usual fixed point of x (1 + k1 r^2) = xd
        grow = 1 + optics.k1 * (x * x + y * y)
        x, y = xd / grow, yd / grow
    # In the sheet's axes the eye is at e and a ray runs along d.
    e = (-axes.T @ centre) * 1000
    d = [axes[0, i] * x + axes[1, i] * y + axes[2, i] for i in range(3)]
    out = np.zeros_like(x)
    for _ in range(5 if optics.bend_mm else 1):
        t = (out - e[2]) / d[2]
        across = e[0] + t * d[0]
        out = -optics.bend_mm * (1 - (2 * across / SHEET_MM[0]) ** 2)
    down = e[1] + t * d[1]
    k = TEXELS_PER_MM
    map_x = ((across + SHEET_MM[0] / 2) * k - 0.5).astype(np.float32)
    map_y = ((down + SHEET_MM[1] / 2) * k - 0.5).astype(np.float32)
    fine = cv2.remap(_SHEET, map_x, map_y, cv2.INTER_LINEAR, borderValue=-1.0)
    fine[t < 0] = -1.0
    fine = np.where(fine < 0, np.float32(0.3), fine)
    part = (high[0] - low[0], high[1] - low[1])
    linear = np.full((height, width), 0.3, np.float32)
    linear[low[1] : high[1], low[0] : high[0]] = cv2.resize(
        fine, part, interpolation=cv2.INTER_AREA
    )
    if optics.blur_px > 0:
        linear = cv2.GaussianBlur(linear, (0, 0), optics.blur_px)
    grey = 255 * np.clip(linear * optics.exposure / PAPER, 0, 1) ** (1 / GAMMA)
    noise = random.normal(0, optics.noise, (*grey.shape, 1))
    picture = np.clip(np.round(grey[..., None] + noise), 0, 255).astype(np.uint8)
    picture = np.repeat(picture, 3, axis=2)
    if optics.jpeg is not None:
        _, data = cv2.imencode(".jpg", picture, [cv2.IMWRITE_JPEG_QUALITY, optics.jpeg])
        picture = cv2.imdecode(data, cv2.IMREAD_COLOR)
    return picture


def _surrounding(
    optics: Optics, axes: Array, centre_m: Array, middle: tuple[float, float]
) -> tuple[Array, Array]:
    """Columns and rows, from and to, that hold the sheet; only what lies there is traced."""
    half = np.array(SHEET_MM) / 2000
    rim = np.linspace(-1, 1, 9)
    edge = [(x, y) for x in rim for y in (-1, 1)] + [(x, y) for x in (-1, 1) for y in rim]
    points = np.array([(x * half[0], y * half[1], 0.0) for x, y in edge]) @ axes.T + centre_m
    slopes = points[:, :2] / points[:, 2:]
    grown = slopes * (1 + optics.k1 * (slopes**2).sum(axis=1, keepdims=True))
    pixels = grown * optics.focal_px + middle
    low = np.clip(np.floor(pixels.min(axis=0)) - 25, 0, optics.size_px).astype(int)
    high = np.clip(np.ceil(pixels.max(axis=0)) + 25, 0, optics.size_px).astype(int)
    return low, high


def draw_optics(random: np.random.Generator, **fixed: object) -> Optics:
    """A webcam: 50 to 90 degrees, some distortion, a middle that is not quite in the middle."""
    drawn: dict[str, object] = {
        "field_of_view_deg": random.uniform(50, 90),
        "k1": random.uniform(-0.15, 0.05),
        "centre_off_px": tuple(random.normal(0, 10, 2)),
        "noise": random.uniform(2, 6),
        "blur_px": random.uniform(0.5, 1.2),
        "jpeg": int(random.integers(70, 95)),
        "exposure": random.uniform(0.4, 0.95),
        "bend_mm": random.normal(0, 0.5),
    }
    return Optics(**{**drawn, **fixed})  # type: ignore[arg-type]


def draw_places(random: np.random.Generator, optics: Optics, count: int = 20) -> list[Place]:
    """A person's minute: all ways of tilting, near and far, toward the corners."""
    places = []
    # The distance at which the sheet is as broad as the picture.
    full_m = SHEET_MM[0] / 1000 * optics.focal_px / optics.size_px[0]
    for i in range(count):
        turned = np.radians(random.uniform(0, 360) if i >= 8 else 90 * i + random.uniform(-15, 15))
        tilt = random.uniform(25, 42) if i < 8 or i % 4 else random.uniform(0, 15)
        share = random.uniform(0.35, 0.75)
        room = max(0.0, 1 - share * 0.9)
        places.append(
            Place(
                at=(room * random.uniform(-1, 1), room * random.uniform(-0.8, 0.8)),
                distance_m=full_m / share,
                about_x_deg=tilt * np.sin(turned),
                about_y_deg=tilt * np.cos(turned),
                roll_deg=random.normal(0, 8),
            )
        )
    return places


def film(optics: Optics, places: list[Place], random: np.random.Generator) -> Iterator[Frame]:
    """Each place twice, as held still."""
    for index, place in enumerate(places):
        picture = render(optics, place, random)
        for again in range(2):
            yield Frame(2 * index + again, (2 * index + again) / 2, picture)

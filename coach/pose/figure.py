"""A drawn figure that the pose model takes for a person."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

SIZE_PX = 256
_SKIN, _HAIR, _SHIRT, _TROUSERS, _FACE = (
    (224, 180, 150),
    (70, 45, 30),
    (160, 40, 40),
    (50, 60, 90),
    (40, 20, 20),
)
_LIMBS = (  # from x, y to x, y, radius, colour
    (118, 140, 114, 225, 9, _TROUSERS),
    (138, 140, 142, 225, 9, _TROUSERS),
    (110, 75, 92, 140, 7, _SKIN),
    (146, 75, 164, 140, 7, _SKIN),
    (116, 74, 118, 138, 11, _SHIRT),
    (140, 74, 138, 138, 11, _SHIRT),
    (128, 74, 128, 138, 14, _SHIRT),
    (128, 50, 128, 70, 6, _SKIN),
)
_OVALS = (  # centre x, y, radius x, y, colour
    (128, 42, 14, 18, _SKIN),
    (128, 30, 15, 10, _HAIR),
    (122, 41, 2, 1.5, _FACE),
    (134, 41, 2, 1.5, _FACE),
    (128, 52, 5, 1, _FACE),
)


def draw_figure() -> NDArray[np.uint8]:
    """Draw a standing figure, (256, 256, 3), RGB, so that the model can be run in before use."""
    y, x = np.mgrid[:SIZE_PX, :SIZE_PX]
    picture = np.full((SIZE_PX, SIZE_PX, 3), (200, 205, 210), np.uint8)
    for x0, y0, x1, y1, radius, colour in _LIMBS:
        dx, dy = x1 - x0, y1 - y0
        along = np.clip(((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy), 0, 1)
        picture[np.hypot(x - x0 - along * dx, y - y0 - along * dy) < radius] = colour
    for centre_x, centre_y, radius_x, radius_y, colour in _OVALS:
        inside = ((x - centre_x) / radius_x) ** 2 + ((y - centre_y) / radius_y) ** 2 < 1
        picture[inside] = colour
    return picture

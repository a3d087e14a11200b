"""A picture with the moment it was taken."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True, slots=True, eq=False)
class Frame:
    """One upright, unmirrored picture.

    ``time_s`` are seconds that only go up: of capture for a camera, of the container for a file.
    ``image_rgb`` has shape (height, width, 3), RGB order, and must not be written to.
    """

    index: int
    time_s: float
    image_rgb: NDArray[np.uint8] = field(repr=False)

    @property
    def size_px(self) -> tuple[int, int]:
        """Width and height."""
        return int(self.image_rgb.shape[1]), int(self.image_rgb.shape[0])

"""What a camera or a video decoder must be able to do, so that tests can stand in for them."""

from __future__ import annotations

from typing import Protocol

import numpy as np
from numpy.typing import NDArray

Picture = NDArray[np.uint8]


class CameraDevice(Protocol):
    """A camera that is open. One thread at a time uses it."""

    frames_per_s: float
    """What the driver says it gives, 0 where it does not say."""

    def grab(self) -> bool:
        """Wait for the next picture and take it; False if none came."""
        ...

    def retrieve(self) -> Picture | None:
        """Decode the picture last taken: (height, width, 3), RGB, upright; None if broken."""
        ...

    def release(self) -> None:
        """Let go of the camera."""
        ...


class VideoReader(Protocol):
    """A video file that is open."""

    frames_per_s: float
    """Mean rate as the container gives it, 0 where it does not."""
    frame_count: int | None
    """Pictures the container promises; for variable rates often a guess."""

    def read(self) -> tuple[Picture, float] | None:
        """Give the next picture, (height, width, 3), RGB, upright, and its stamp in seconds.

        The stamp is 0 where the container has none. None at the end.
        """
        ...

    def release(self) -> None:
        """Close the file."""
        ...

"""Whether pictures show anything at all."""

from __future__ import annotations

from enum import StrEnum

import numpy as np

from coach.capture.devices import Picture

_STRIDE = 8
_BLACK_MEAN = 6.0
_BLACK_SPREAD = 4.0


class PictureTrouble(StrEnum):
    """What is wrong with a camera's picture."""

    BLACK = "black"
    """Covered, switched off by a key, or in the dark."""
    FROZEN = "frozen"
    """The same picture again, to the last bit."""


def picture_trouble(previous: Picture | None, now: Picture) -> PictureTrouble | None:
    """Judge a picture, (height, width, 3), 0-255, and the one before.

    Some drivers repeat a picture to keep their rate, some go on repeating it when the camera has
    frozen: neither is news. A sensor's noise keeps true pictures apart. Looks at every
    eighth pixel; the limits of black are for a covered lens, from common practice.
    """
    seen = now[::_STRIDE, ::_STRIDE]
    if float(seen.mean()) < _BLACK_MEAN and float(seen.std()) < _BLACK_SPREAD:
        return PictureTrouble.BLACK
    if previous is not None and np.array_equal(previous[::_STRIDE, ::_STRIDE], seen):
        return PictureTrouble.FROZEN
    return None

"""The printed card in ``landmarks.csv``: columns that are there only where one was seen."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from coach.documents.cells import number
from coach.domain.pose import Card

Floats = NDArray[np.float64]

CARD_COLUMNS = (
    *(f"card_{axis}_{along}" for axis in ("forward", "up") for along in "xyz"),
    "card_turn_error_deg",
    "card_tilt_error_deg",
)
"""Two of the card's axes in the camera's, x picture right, y down, z away; both errors."""

_AXIS_COLUMNS = 6
_DECIMALS = 4
"""Of an axis: 0.006 degrees."""
_MOST_ERROR_DEG = 90.0


def card_cells(card: Card | None) -> tuple[str, ...]:
    """Give the cells of one frame, empty without a card."""
    if card is None:
        return ("",) * len(CARD_COLUMNS)
    axes = (number(float(value), _DECIMALS) for value in card.axes[:, :2].T.ravel())
    errors = number(card.turn_error_deg, 1), number(card.tilt_error_deg, 1)
    return (*axes, *errors)


def card_of(values: Floats) -> Card | None:
    """Give the card of a frame's values (8,), None where one is not known.

    What rounding took from the axes' right angle is given back: forward is turned into it.
    """
    forward, up = values[:3], values[3:_AXIS_COLUMNS]
    length = float(np.linalg.norm(up))
    if not (np.isfinite(values).all() and length > 0):
        return None
    up = up / length
    forward = forward - float(forward @ up) * up
    length = float(np.linalg.norm(forward))
    if length == 0:
        return None
    forward = forward / length
    axes = np.stack([forward, up, np.cross(forward, up)], axis=1)
    axes.setflags(write=False)
    return Card(axes, float(values[_AXIS_COLUMNS]), float(values[_AXIS_COLUMNS + 1]))


def card_limits(name: str) -> tuple[float, float]:
    """Give the least and the most that a card's column may hold."""
    return (0.0, _MOST_ERROR_DEG) if name.endswith("_error_deg") else (-1.0, 1.0)

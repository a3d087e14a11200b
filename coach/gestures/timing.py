"""What is told of a raised hand, and after how long."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

UP_S = 1.2
"""Longer than a hand stays up that reaches, waves or scratches in passing (``tests/bench``: up to
0.9 s)."""
KEPT_S = 5.0
"""From the first raised frame."""
DOWN_S = 0.4
"""A single wrong frame of five a second does not take a hand down."""
LOST_S = 0.5
"""A hand not seen for longer is no longer taken to be up."""


class Gesture(StrEnum):
    """What the other hand did."""

    UP = "up"
    KEPT = "kept"
    DOWN = "down"


@dataclass(frozen=True, slots=True)
class GestureEvent:
    """A gesture, at the stamp of the frame that made it known, seconds."""

    time_s: float
    gesture: Gesture

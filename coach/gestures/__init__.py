"""Poses in, a raised other hand out; pure."""

from coach.gestures.machine import Watch, advance, begin
from coach.gestures.timing import DOWN_S, KEPT_S, LOST_S, UP_S, Gesture, GestureEvent

__all__ = [
    "DOWN_S",
    "KEPT_S",
    "LOST_S",
    "UP_S",
    "Gesture",
    "GestureEvent",
    "Watch",
    "advance",
    "begin",
]

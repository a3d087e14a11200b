"""Poses in, shoulder angles with their error, or a doubt, out; pure."""

from coach.goniometry.goniometer import (
    Goniometer,
    Recording,
    Task,
    advance,
    begin,
    read_recording,
)
from coach.goniometry.smoothing import OneEuro

__all__ = [
    "DEFINITIONS",
    "Goniometer",
    "OneEuro",
    "Recording",
    "Task",
    "advance",
    "begin",
    "read_recording",
]

DEFINITIONS = 2
"""Counts up whenever the meaning of a stored angle changes."""

"""Poses in, shoulder angles with their error, or a doubt, out; pure."""

from coach.goniometry.goniometer import Goniometer, advance, begin
from coach.goniometry.interval import measures
from coach.goniometry.recording import Recording, read_recording
from coach.goniometry.smoothing import OneEuro
from coach.goniometry.task import Task

__all__ = [
    "DEFINITIONS",
    "Goniometer",
    "OneEuro",
    "Recording",
    "Task",
    "advance",
    "begin",
    "measures",
    "read_recording",
]

DEFINITIONS = 3
"""Counts up whenever a stored angle means something else, or its known error is taken off anew."""

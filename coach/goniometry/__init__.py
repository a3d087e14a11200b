"""Poses in, shoulder angles with their error, or a doubt, out; pure."""

from coach.goniometry.goniometer import Goniometer, advance, begin, read_sequence
from coach.goniometry.smoothing import OneEuro

__all__ = ["DEFINITIONS", "Goniometer", "OneEuro", "advance", "begin", "read_sequence"]

DEFINITIONS = 1
"""Counts up whenever the meaning of a stored angle changes."""

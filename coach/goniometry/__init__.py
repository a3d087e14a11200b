"""Poses in, shoulder angles with their error, or a doubt, out; pure."""

from coach.goniometry.goniometer import Goniometer, advance, begin, read_sequence

__all__ = ["DEFINITIONS", "Goniometer", "advance", "begin", "read_sequence"]

DEFINITIONS = 1
"""Counts up whenever the meaning of a stored angle changes."""

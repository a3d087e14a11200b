"""Poses in, shoulder angles with their error, or a doubt, out; pure."""

DEFINITIONS = 1
"""Counts up whenever the meaning of a stored angle changes."""

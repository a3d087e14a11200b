"""Rendered people whose shoulder angles are known: a measure for the program, not a part."""

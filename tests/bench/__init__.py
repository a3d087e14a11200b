"""Rendered people whose shoulder angles are known exactly: a measure for the program, not a part."""

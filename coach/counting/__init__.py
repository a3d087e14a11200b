"""Readings in, holds and repetitions out; pure."""

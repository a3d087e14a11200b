"""The one error that people are shown."""

from __future__ import annotations


class Fault(Exception):
    """Something a person can act on: what is wrong, where, what to do, in one sentence."""

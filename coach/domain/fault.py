"""The one error that people are shown."""

from __future__ import annotations


class Fault(Exception):  # noqa: N818 - it is shown to people, and is often nobody's error
    """Something a person can act on: what is wrong, where, what to do, in one sentence."""

"""What is said and shown."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum


class Urgency(IntEnum):
    """A higher one interrupts a lower one."""

    GENTLE = 0
    """Encouragement and counts: dropped when something else is being said."""
    NORMAL = 1
    """Instructions."""
    TIMED = 2
    """Numbers that are only true now."""
    URGENT = 3
    """Stop, ease off, corrections that cannot wait."""


@dataclass(frozen=True, slots=True)
class Cue:
    """A sentence to speak and show.

    ``time_s`` is when it is due, ``stale_s`` when it is no longer true (never begun after that);
    ``key`` names its kind so that repeats can be told apart, ``caption`` is what is shown where
    that differs from what is spoken.
    """

    time_s: float
    stale_s: float
    urgency: Urgency
    key: str
    spoken: str
    caption: str

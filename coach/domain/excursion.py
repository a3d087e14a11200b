"""A movement from rest to a turning point and back, held there or not."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Excursion:
    """One repetition of a recording, whether or not its end of range was held.

    ``start_s``, ``peak_s`` and ``end_s`` are stamps of leaving rest, of the turning point and of
    being back. ``value`` is taken about the turning point and is never the highest reading;
    ``error`` is the half width of its 95 % interval; both in the movement's unit, and None where
    the turning point was out of sight. ``usable`` of ``frames`` readings between start and end had
    a value. ``held_s`` are the seconds held in it, 0 where nothing was held.
    """

    start_s: float
    peak_s: float
    end_s: float
    value: float | None
    error: float | None
    usable: int
    frames: int
    held_s: float = 0.0

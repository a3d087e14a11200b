"""The other hand, frame by frame: raised long enough, kept up, taken down.

- A raise begins in the first frame that shows the hand up without a doubt. UP is told ``UP_S``
  later, KEPT after ``KEPT_S``, DOWN once it has been seen down for ``DOWN_S`` or was not seen for
  ``LOST_S``; each once, and DOWN only after an UP.
- Before UP, all the time without sight of the raised hand counts: more than ``LOST_S`` of it and
  the raise begins again.
- What moves with the exercised arm is told apart only by moving: a pulley or towel at rest is not.
- Hands that go up together hold each other or one stick, or one pulls the other: where the
  exercised arm has moved by ``MOVED`` in the last ``BEFORE_S`` while the hand is up and no UP was
  told, seen or guessed, nothing is told until the hand was low again.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace

from coach.domain.movement import Position, Side
from coach.domain.pose import Pose
from coach.gestures.look import WAVERING, Look, Place, look
from coach.gestures.timing import DOWN_S, KEPT_S, LOST_S, UP_S, Gesture, GestureEvent

BEFORE_S = 1.5
"""A hand takes half a second to two and a half on its way up."""
MOVED = 0.35
"""Shares of the trunk. In a hold the arm stays within 0.1; in 1.5 s of a slow raise it goes 0.6."""
STEP_S = 0.1
"""Where the exercised arm was is kept in steps of this length."""
LOW = -0.3
"""A hand so far below the line of a raise is down, seen or guessed."""

Events = tuple[GestureEvent, ...]


@dataclass(frozen=True, slots=True)
class Watch:
    """What is known of the other hand; immutable, bounded in size.

    ``side`` is the exercised one. ``first_s`` and ``last_s`` are the first and the last raised
    frame of a raise that goes on; ``missed_s`` is how long it was not seen in between; ``shared``:
    both hands went up together. ``trail`` holds stamps and places of the exercised arm.
    """

    side: Side
    position: Position
    time_s: float = -math.inf
    first_s: float | None = None
    last_s: float = -math.inf
    missing: bool = False
    missed_s: float = 0.0
    up: bool = False
    kept: bool = False
    shared: bool = False
    trail: tuple[tuple[float, Place], ...] = field(default=(), repr=False)

    @property
    def raised_s(self) -> float | None:
        """How long the hand is up so far, from the first raised frame; None while it is not."""
        return None if self.first_s is None else self.last_s - self.first_s


def begin(side: Side, position: Position) -> Watch:
    """Before the first pose; ``side`` is exercised, the hand of the other one is watched."""
    return Watch(side, position)


def advance(watch: Watch, time_s: float, pose: Pose | None) -> tuple[Watch, Events]:
    """Take one frame; ``pose`` is None where nobody was seen.

    A frame not later than the one before it changes nothing.
    """
    if not time_s > watch.time_s:
        return watch, ()
    watch = replace(watch, time_s=time_s)
    events: Events = ()
    if watch.first_s is not None and time_s - watch.last_s > LOST_S:
        watch, events = _ended(watch)
    seen = None if pose is None else look(pose, watch.side, watch.position)
    if seen is None:
        return replace(watch, missing=True), events
    watch = _followed(watch, seen)
    if watch.shared:
        return replace(watch, first_s=None), events
    up = seen.raised if watch.first_s is None else seen.still_raised
    if up:
        watch, more = _raised(watch)
    elif seen.believed and watch.first_s is not None and time_s - watch.last_s >= DOWN_S:
        watch, more = _ended(watch)
    else:
        watch, more = replace(watch, missing=True), ()
    return watch, (*events, *more)


def _raised(watch: Watch) -> tuple[Watch, Events]:
    t = watch.time_s
    if watch.first_s is None:
        watch = replace(watch, first_s=t, last_s=t, missed_s=0.0)
    elif watch.missing:
        watch = replace(watch, missed_s=watch.missed_s + t - watch.last_s)
    if not watch.up and watch.missed_s > LOST_S:
        watch = replace(watch, first_s=t, missed_s=0.0)
    first_s = t if watch.first_s is None else watch.first_s
    watch = replace(watch, last_s=t, missing=False)
    up_s = t - first_s
    if not watch.up and up_s >= UP_S:
        return replace(watch, up=True), (GestureEvent(t, Gesture.UP),)
    if watch.up and not watch.kept and up_s >= KEPT_S:
        return replace(watch, kept=True), (GestureEvent(t, Gesture.KEPT),)
    return watch, ()


def _ended(watch: Watch) -> tuple[Watch, Events]:
    events = (GestureEvent(watch.time_s, Gesture.DOWN),) if watch.up else ()
    return replace(watch, first_s=None, up=False, kept=False, missing=True), events


def _followed(watch: Watch, seen: Look) -> Watch:
    """Keep where the exercised arm is, and see whether both hands go up together or are down."""
    t = watch.time_s
    trail = tuple(row for row in watch.trail if row[0] >= t - BEFORE_S)
    moved = any(_apart(place, seen.exercised) > MOVED for _, place in trail)
    if not trail or t - trail[-1][0] >= STEP_S:
        trail = (*trail, (t, seen.exercised))
    # A forearm at a door's frame goes nowhere, and its hidden points wander.
    tied = moved and watch.position is not Position.DOORWAY
    begun = tied and not watch.up and seen.above >= -WAVERING
    shared = begun or (watch.shared and seen.above > LOW)
    return replace(watch, trail=trail, shared=shared)


def _apart(one: Place, other: Place) -> float:
    """How far elbow or wrist are from where they were, whichever is farther."""
    return max(
        math.hypot(one[0] - other[0], one[1] - other[1]),
        math.hypot(one[2] - other[2], one[3] - other[3]),
    )

"""Watching the form of an exercise: a fault is noticed after it has lasted, and mended alike.

A fault is noticed when, over the last ``LASTED_S``, ``MOST_SHARE`` of what was seen is past its
limit, and mended when as much is inside it; in between it stays as it was. It is not noticed again
sooner than somebody can have heard and done what was said. Hand over only readings in which form
matters: an arm that rests may hang as it likes.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from itertools import pairwise

from coach.domain.form import FormFault, FormLimits
from coach.domain.reading import Reading
from coach.form.faults import Excess, Usual, excesses

LASTED_S = 1.5
"""Our choice: a passing sway mends itself, and a hold is told before it is over."""
MOST_SHARE = 0.8
"""Wrong frames are a minority (``coach.counting`` bears bursts of 0.3 s)."""
GAP_S = 0.5
"""A longer gap starts anew: what was not seen has not lasted."""
SLACK_S = 0.11
"""A frame at ten a second, the slowest camera, by which a window may be short."""
SAME_AGAIN_S = 8.0
OTHER_AGAIN_S = 4.0
"""As for doubts (``coach.cues.corrections``): to hear it, act and settle; one thing at a time."""


@dataclass(frozen=True, slots=True)
class FormNoticed:
    """A fault has lasted; ``value`` and its 95 % half width ``error`` as in ``Form``, newest."""

    time_s: float
    fault: FormFault
    value: float
    error: float


@dataclass(frozen=True, slots=True)
class FormMended:
    """A noticed fault is gone."""

    time_s: float
    fault: FormFault


FormEvent = FormNoticed | FormMended


@dataclass(frozen=True, slots=True)
class Course:
    """What was seen of one fault of late: stamps with whether it was past and inside its limit."""

    seen: tuple[tuple[float, bool, bool], ...] = field(default=(), repr=False)
    noticed: bool = False
    said_s: float = float("-inf")

    def with_excess(self, time_s: float, excess: Excess) -> Course:
        """Add the newest and forget what is too old, or before a gap."""
        kept = [row for row in self.seen if row[0] >= time_s - LASTED_S - SLACK_S / 2]
        if kept and time_s - kept[-1][0] > GAP_S:
            kept = []
        return replace(self, seen=(*kept, (time_s, excess.past, excess.inside)))

    def lasted(self, column: int) -> bool:
        """Whether past (1) or inside (2) has lasted."""
        stamps = [row[0] for row in self.seen]
        covered_s = sum(b - a for a, b in pairwise(stamps))
        share = sum(row[column] for row in self.seen) / len(self.seen)
        return covered_s >= LASTED_S - SLACK_S and share >= MOST_SHARE


@dataclass(frozen=True, slots=True)
class Watch:
    """The limits, what has been usual in earlier repetitions, and the course of each fault."""

    limits: FormLimits
    usual: Usual | None = None
    time_s: float = float("-inf")
    courses: tuple[tuple[FormFault, Course], ...] = field(default=(), repr=False)

    @property
    def faults(self) -> tuple[FormFault, ...]:
        """Noticed and not mended."""
        return tuple(fault for fault, course in self.courses if course.noticed)


def begin(limits: FormLimits, usual: Usual | None = None) -> Watch:
    """Before the first reading of an exercise."""
    return Watch(limits, usual)


def advance(watch: Watch, reading: Reading) -> tuple[Watch, tuple[FormEvent, ...]]:
    """Take one reading; one not later than the reading before it changes nothing."""
    now_s = reading.time_s
    if not now_s > watch.time_s:
        return watch, ()
    courses, events = dict(watch.courses), list[FormEvent]()
    for excess in excesses(reading.form, watch.limits, watch.usual):
        fault = excess.fault
        course = courses.get(fault, Course()).with_excess(now_s, excess)
        last_s = max((known.said_s for known in courses.values()), default=float("-inf"))
        if course.noticed and course.lasted(2):
            course = replace(course, noticed=False)
            events.append(FormMended(now_s, fault))
        elif (
            not course.noticed
            and course.lasted(1)
            and now_s - course.said_s >= SAME_AGAIN_S
            and now_s - last_s >= OTHER_AGAIN_S
        ):
            course = replace(course, noticed=True, said_s=now_s)
            events.append(FormNoticed(now_s, fault, excess.value, excess.error))
        courses[fault] = course
    return replace(watch, time_s=now_s, courses=tuple(courses.items())), tuple(events)

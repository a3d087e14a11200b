"""When to correct: after a fault has lasted, and not more often than one can act on it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

from coach.counting.task import DEGREES_PER_UNIT
from coach.cues.happening import Happening
from coach.domain.progress import Phase
from coach.domain.reading import Doubt

LASTED_S: Final = 2.0
"""A doubt must last this long: a passing one mends itself. Our choice."""
GAP_S: Final = 0.5
"""A doubt seen again within this time has lasted; a longer gap starts anew. Our choice."""
SAME_AGAIN_S: Final = 8.0
"""The same correction not sooner: to hear it, move the laptop or oneself, and settle."""
OTHER_AGAIN_S: Final = 4.0
"""Another correction not sooner: one thing at a time."""
BEYOND_DEG: Final = 3.0
"""How far past the target is past it: a hold at the target wobbles about it. Our choice."""
BEYOND_LASTED_S: Final = 0.5
"""Short, since it is the careful side."""
EASE_AGAIN_S: Final = 5.0
PACE_S: Final = 0.6
TOO_FAST_DEG_S: Final = 90.0
"""Up to the end of a stretch takes two seconds or more (slow stretching is common practice); half a
turn in that is the limit. Our choice."""

_ARM_AT_WORK: Final = frozenset(
    {
        Doubt.ARM_OUT_OF_VIEW,
        Doubt.BEND_ELBOW,
        Doubt.STRAIGHTEN_ELBOW,
        Doubt.OTHER_MOVEMENT,
        Doubt.UNSURE,
    }
)
"""Doubts about how the arm is used, which do not matter while it comes back."""


@dataclass(frozen=True, slots=True)
class Corrections:
    """What is being watched, and when something was last said about it."""

    watched: tuple[tuple[Doubt, float, float], ...] = ()
    """Each doubt of late with its first and last stamp: two may take turns from frame to frame."""
    said: tuple[tuple[Doubt, float], ...] = ()
    beyond_since_s: float | None = None
    eased_s: float | None = None
    pace: tuple[tuple[float, float], ...] = ()
    """Stamps and values, in degrees or what stands for them, of the last ``PACE_S``."""


def watch_doubt(state: Corrections, happening: Happening) -> tuple[Corrections, Doubt | None]:
    """Give the doubt that is to be spoken about now, if there is one."""
    now_s = happening.time_s
    doubt = happening.reading.doubt if happening.reading else happening.doubt
    if happening.resting or (happening.phase is Phase.RETURNING and doubt in _ARM_AT_WORK):
        return replace(state, watched=()), None
    if doubt is None:
        return state, None
    watched = {d: (since_s, seen_s) for d, since_s, seen_s in state.watched}
    since_s, seen_s = watched.get(doubt, (now_s, now_s))
    watched[doubt] = (since_s if now_s - seen_s <= GAP_S else now_s, now_s)
    state = replace(
        state, watched=tuple((d, *w) for d, w in watched.items() if now_s - w[1] <= GAP_S)
    )
    said = dict(state.said)
    if (
        now_s - watched[doubt][0] < LASTED_S
        or now_s - said.get(doubt, float("-inf")) < SAME_AGAIN_S
        or now_s - max(said.values(), default=float("-inf")) < OTHER_AGAIN_S
    ):
        return state, None
    said[doubt] = now_s
    return replace(state, said=tuple(said.items())), doubt


def watch_speed(state: Corrections, happening: Happening) -> tuple[Corrections, bool]:
    """Tell whether 'slowly' is to be said now: the arm rushes toward its end range."""
    reading, planned = happening.reading, happening.planned
    if (
        reading is None
        or reading.value is None
        or planned is None
        or planned.movement is None
        or happening.phase is not Phase.MOVING
    ):
        return replace(state, pace=()), False
    unit = planned.movement.unit
    now_s, value_deg = happening.time_s, reading.value * DEGREES_PER_UNIT[unit]
    pace = (*(row for row in state.pace if now_s - row[0] <= PACE_S), (now_s, value_deg))
    state = replace(state, pace=pace)
    span_s = now_s - pace[0][0]
    eased = state.eased_s is not None and now_s - state.eased_s < EASE_AGAIN_S
    if span_s < 0.8 * PACE_S or eased or value_deg - pace[0][1] <= TOO_FAST_DEG_S * span_s:
        return state, False
    return replace(state, eased_s=now_s), True


def watch_target(state: Corrections, happening: Happening) -> tuple[Corrections, bool]:
    """Tell whether 'ease off' is to be said now: the arm has gone past the plan's target."""
    target_deg = happening.planned.target_deg if happening.planned else None
    value = happening.reading.value if happening.reading else None
    if target_deg is None or value is None:
        return state, False
    if value <= target_deg + BEYOND_DEG:
        return replace(state, beyond_since_s=None), False
    now_s = happening.time_s
    since_s = now_s if state.beyond_since_s is None else state.beyond_since_s
    state = replace(state, beyond_since_s=since_s)
    if now_s - since_s < BEYOND_LASTED_S:
        return state, False
    if state.eased_s is not None and now_s - state.eased_s < EASE_AGAIN_S:
        return state, False
    return replace(state, eased_s=now_s), True

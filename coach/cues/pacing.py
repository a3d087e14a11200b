"""The order of speech: what is said now, what waits, what is dropped.

Numbers and urgent cues interrupt whatever is less urgent; an instruction goes before encouragement
but lets it finish. Nothing is begun before it is due or after it is stale. A number is never kept
waiting: speech that would run into it is not begun. A newer cue withdraws, and cuts off, older
ones that it makes untrue.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from typing import Final

from coach.domain.cue import Cue, Urgency

LIMIT: Final = 20
"""Cues that wait at most: the longest introduction has twelve."""
REPEAT_GAP_S: Final = 2.0
"""The same kind of cue is not begun again within this time. Our choice."""
MARGIN_S: Final = 0.1
"""Silence kept free before a number."""


@dataclass(frozen=True, slots=True)
class Queue:
    """Cues that wait, in the order they came, and what was begun of late.

    ``reserved_s`` is when the next number will be due, if a hold is being timed.
    """

    waiting: tuple[Cue, ...] = ()
    begun: tuple[tuple[str, float], ...] = ()
    reserved_s: float | None = None


@dataclass(frozen=True, slots=True)
class Decision:
    """What to begin now, None for nothing, and whether it cuts off what is being said."""

    cue: Cue | None = None
    interrupts: bool = False


NOTHING: Final = Decision()


def estimate_s(cue: Cue) -> float:
    """Guess how long a cue takes to speak, in seconds."""
    return saying_s(cue.spoken)


def saying_s(words: str) -> float:
    """Guess how long words take to speak, in seconds.

    Fitted to what espeak-ng at 150 words a minute took for our English sentences, of up to 16 s:
    within 0.8 s for each, with a standard deviation of 0.2 s; German ones within 1.5 s. A digit is
    written shorter than said.
    """
    stops = sum(words.count(stop) for stop in (". ", "? ", ": "))
    digits = sum(map(str.isdigit, words))
    return 0.1 + 0.057 * len(words) + 0.35 * stops + 0.27 * words.count(",") + 0.4 * digits


def offer(queue: Queue, cue: Cue) -> Queue:
    """Let a cue wait for its turn; it withdraws those that it makes untrue."""
    begun_s = dict(queue.begun).get(cue.key)
    if begun_s is not None and cue.time_s - begun_s < REPEAT_GAP_S:
        return queue
    kept = [old for old in queue.waiting if old.key != cue.key and not _withdraws(cue, old)]
    kept.append(cue)
    if len(kept) > LIMIT:
        kept.remove(min(kept, key=lambda c: (c.urgency, c.stale_s)))
    return replace(queue, waiting=tuple(kept))


def offer_all(queue: Queue, cues: Iterable[Cue]) -> Queue:
    """Let several cues wait, in this order."""
    for cue in cues:
        queue = offer(queue, cue)
    return queue


def reserve(queue: Queue, due_s: float | None) -> Queue:
    """Keep the moment ``due_s`` free for a number that is going to come, None for no moment."""
    return replace(queue, reserved_s=due_s)


def choose(
    queue: Queue,
    now_s: float,
    speaking: Cue | None,
    seconds: Callable[[Cue], float] = estimate_s,
) -> tuple[Queue, Decision]:
    """Decide what to begin at ``now_s`` while ``speaking`` is being said.

    ``seconds`` tells how long a cue takes to speak.
    """
    queue = replace(
        queue,
        waiting=tuple(cue for cue in queue.waiting if cue.stale_s >= now_s),
        begun=tuple((key, at_s) for key, at_s in queue.begun if now_s - at_s < REPEAT_GAP_S),
    )
    due = [cue for cue in queue.waiting if cue.time_s <= now_s]
    for cue in sorted(due, key=lambda c: -c.urgency):
        if speaking and not (_overtakes(cue, speaking) or _withdraws(cue, speaking)):
            continue
        if cue.urgency < Urgency.TIMED and _runs_into_number(queue, cue, now_s, seconds):
            continue
        return _begin(queue, cue, now_s), Decision(cue, interrupts=speaking is not None)
    return queue, NOTHING


def _begin(queue: Queue, cue: Cue, now_s: float) -> Queue:
    begun = dict(queue.begun) | {cue.key: now_s}
    waiting = tuple(old for old in queue.waiting if old is not cue)
    return replace(queue, waiting=waiting, begun=tuple(begun.items()))


def _runs_into_number(
    queue: Queue, cue: Cue, now_s: float, seconds: Callable[[Cue], float]
) -> bool:
    numbers = [c.time_s for c in queue.waiting if c.urgency is Urgency.TIMED and c.time_s > now_s]
    if queue.reserved_s is not None and queue.reserved_s >= now_s:
        numbers.append(queue.reserved_s)
    return bool(numbers) and now_s + seconds(cue) + MARGIN_S > min(numbers)


def _overtakes(newer: Cue, older: Cue) -> bool:
    return newer.urgency >= Urgency.TIMED and newer.urgency > older.urgency


_CHANGES_SCENE: Final = frozenset(
    {"hold", "rest", "let-go", "let-go-short", "lost-hold", "broken-hold", "sight.found"}
)


def _withdraws(newer: Cue, older: Cue) -> bool:
    """Tell whether the newer cue makes the older one untrue or pointless."""
    if newer.time_s <= older.time_s:
        return False
    stage = newer.key.startswith("stage.")
    if newer.key == "stage.paused-by-hand":
        return older.urgency < Urgency.URGENT
    if older.key.startswith("stage.") or older.key in ("again", "in-place"):
        return stage or newer.key == "hold"
    if older.key.startswith("correct."):
        return stage or newer.key in _CHANGES_SCENE or newer.key.startswith("correct.")
    if older.key.startswith("sight."):
        return stage or newer.key in _CHANGES_SCENE
    return False

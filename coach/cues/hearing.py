"""What somebody has heard by now of what there is to hear.

The core does not listen to the loudspeaker: what was to be said is spoken here in the same order
(``coach.cues.pacing``) and at the usual pace.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from typing import Final

from coach.cues.pacing import Queue, choose, estimate_s, offer_all
from coach.domain.agenda import AgendaItem
from coach.domain.cue import Cue

SURE_S: Final = 0.6
"""After each sentence: a breath of 0.3 s, and as much as guesses of its length err on the whole."""


@dataclass(frozen=True, slots=True)
class Hearing:
    """What waits to be said, and what is being said until ``until_s``."""

    queue: Queue = field(default=Queue(), repr=False)
    speaking: Cue | None = None
    until_s: float = float("-inf")

    def awaits(self, item: AgendaItem) -> bool:
        """Whether something of what must be heard before ``item`` begins is not yet heard whole."""
        cues = self.queue.waiting if self.speaking is None else (self.speaking, *self.queue.waiting)
        return any(must_be_heard(item, cue.key) for cue in cues)


def hear(hearing: Hearing, now_s: float, cues: Iterable[Cue]) -> Hearing:
    """Take in what there is to say and let the time until ``now_s`` pass."""
    queue = offer_all(hearing.queue, cues)
    speaking = None if now_s >= hearing.until_s else hearing.speaking
    queue, decision = choose(queue, now_s, speaking)
    if decision.cue is None:
        return replace(hearing, queue=queue, speaking=speaking)
    return Hearing(queue, decision.cue, now_s + estimate_s(decision.cue) + SURE_S)


def must_be_heard(item: AgendaItem, key: str) -> bool:
    """Whether a sentence must be heard before the exercise's first hold can begin.

    The cautions once a day, what to do where it is new, all of it where the clock begins by itself.
    """
    if item.planned.movement is None:
        return key.startswith("stage.")
    caution = key.startswith("stage.caution.")
    return not item.told and (caution or (item.new and key == "stage.do"))

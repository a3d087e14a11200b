"""Asking for pain aloud: numbers are offered one after another, a raised hand chooses one."""

from __future__ import annotations

from dataclasses import dataclass, replace

from coach.domain.moment import Asked

QUESTION_S = 9.0
"""The question is spoken first (its longer form takes about eight seconds)."""
NUMBER_S = 2.0
"""A number is spoken, heard and answered in that: 0.4 s of speech, a second to begin to raise the
arm. Our choice."""
REACTION_S = 0.5
"""A hand begins to go up so long after the number was heard: simple reaction to speech takes about
a quarter of a second, the arm as long again to be seen as raised (from memory)."""
ROUNDS = 2
PAUSE_S = 5.0
"""Between two rounds."""
SURE_S = 5.0
"""So long a chosen number can be taken back."""
NUMBERS = range(11)


@dataclass(frozen=True, slots=True)
class Asking:
    """Immutable; stamps are those of the frames.

    ``chosen`` is the number taken at ``chosen_s``. From ``up_s`` on the hand is up: until it is
    down again no further number is offered.
    """

    since_s: float
    round: int = 1
    chosen: int | None = None
    chosen_s: float = 0.0
    answered: int | None = None
    over: bool = False
    up_s: float | None = None

    def offered(self, time_s: float) -> int | None:
        """Give the number that is being offered at that instant."""
        at_s = time_s if self.up_s is None else min(time_s, self.up_s)
        place = int((at_s - self.since_s) // NUMBER_S)
        return place if self.chosen is None and place in NUMBERS else None

    def shown(self, time_s: float) -> Asked:
        """Give what a screen shows of it."""
        sure_s = None if self.chosen is None else max(0.0, self.chosen_s + SURE_S - time_s)
        return Asked(self.offered(time_s), self.chosen, sure_s)


def begin(time_s: float, question_s: float = QUESTION_S) -> Asking:
    """Ask at ``time_s``; the numbers come when the question is over."""
    return Asking(time_s + question_s)


def advance(asking: Asking, time_s: float, raised_since_s: float | None, hand_up: bool) -> Asking:
    """Take in one frame.

    ``raised_since_s`` is the stamp at which the other hand went up, None while it is down;
    ``hand_up`` is true once for each raise that has lasted long enough to mean something.
    ``answered`` is set when a number stands, ``over`` when it does or nobody answered.
    """
    if asking.over:
        return asking
    if asking.chosen is not None:
        if hand_up:
            return Asking(time_s + NUMBER_S, asking.round, up_s=time_s)
        if time_s - asking.chosen_s >= SURE_S:
            return replace(asking, answered=asking.chosen, over=True)
        return asking
    if hand_up and raised_since_s is not None:
        chosen = asking.offered(raised_since_s - REACTION_S)
        if chosen is not None:
            return replace(asking, chosen=chosen, chosen_s=time_s)
        return replace(asking, since_s=time_s + NUMBER_S, up_s=time_s)
    if raised_since_s is not None:
        return asking if asking.up_s is not None else replace(asking, up_s=raised_since_s)
    if asking.up_s is not None:
        return replace(asking, since_s=asking.since_s + time_s - asking.up_s, up_s=None)
    if time_s - asking.since_s > len(NUMBERS) * NUMBER_S + PAUSE_S:
        if asking.round >= ROUNDS:
            return replace(asking, over=True)
        return Asking(time_s, asking.round + 1)
    return asking

"""Speaks cues at their time: drives the queue, with or without a voice, on any clock."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from coach.cues.marks import next_number_s
from coach.cues.pacing import Queue, choose, estimate_s, offer_all, reserve
from coach.domain.cue import Cue
from coach.domain.fault import Fault
from coach.domain.moment import Moment, Stage
from coach.domain.progress import Phase
from coach.voice.sound import Sound, Synthesizer
from coach.voice.timeline import Timeline

BREATH_S: Final = 0.3
"""Silence after a sentence; numbers need none."""


@dataclass(frozen=True, slots=True)
class Utterance:
    """What to play or show from now on.

    ``sound`` is None without a voice: show ``cue.caption`` for ``seconds`` all the same.
    ``interrupts`` means that what is sounding must stop first.
    """

    cue: Cue
    sound: Sound | None
    seconds: float
    interrupts: bool


class Speaker:
    """Takes cues in and gives sounds out, one at a time.

    Call ``hear`` with every moment and ``tick`` as often as you like, at least with every frame,
    both on the moments' clock; play what ``tick`` gives. It reads no clock and owns no device.
    With ``timeline`` everything said is laid down there. Where the voice is None, or fails, it
    goes on with captions; ``fault`` then holds the sentence to show.
    """

    def __init__(
        self,
        voice: Synthesizer | None,
        queue: Queue | None = None,
        timeline: Timeline | None = None,
    ) -> None:
        """Start silent."""
        self.fault: Fault | None = None
        self._voice = voice
        self._timeline = timeline
        self.begin_anew()
        self._queue = queue or Queue()

    def begin_anew(self) -> None:
        """Forget what is being said and what waits; the clock may start again."""
        self._queue = Queue()
        self._speaking: Cue | None = None
        self._sounds_until_s = self._busy_until_s = float("-inf")

    def hear(self, moment: Moment) -> None:
        """Take in a moment's cues, and keep free the instant of the next number of its hold."""
        self.offer(moment.cues)
        self.expect(_next_number_s(moment))

    def offer(self, cues: Iterable[Cue]) -> None:
        """Take in cues."""
        self._queue = offer_all(self._queue, cues)

    def expect(self, due_s: float | None) -> None:
        """Keep an instant free for a number that will come, None for no instant."""
        self._queue = reserve(self._queue, due_s)

    def finished(self, now_s: float) -> None:
        """Tell that the output has fallen silent, where that is known better than by length."""
        self._sounds_until_s = min(self._sounds_until_s, now_s)
        self._busy_until_s = min(self._busy_until_s, now_s + BREATH_S)

    def quiet(self, now_s: float) -> bool:
        """Whether nothing is being said and nothing that is still true waits."""
        waits = any(cue.stale_s >= now_s for cue in self._queue.waiting)
        return now_s >= self._busy_until_s and not waits

    def tick(self, now_s: float) -> Utterance | None:
        """Give what is to be begun now, if anything."""
        if now_s >= self._busy_until_s:
            self._speaking = None
        self._queue, decision = choose(self._queue, now_s, self._speaking, self._seconds)
        cue = decision.cue
        if cue is None:
            return None
        sound = self._sound(cue)
        seconds = sound.seconds if sound else estimate_s(cue)
        cuts = decision.interrupts and now_s < self._sounds_until_s
        self._speaking = cue
        self._sounds_until_s = now_s + seconds
        breath_s = 0.0 if cue.key.startswith("number.") else BREATH_S
        self._busy_until_s = self._sounds_until_s + breath_s
        if self._timeline is not None:
            self._timeline.add(now_s, sound, cue, seconds)
        return Utterance(cue, sound, seconds, cuts)

    def _seconds(self, cue: Cue) -> float:
        sound = self._sound(cue)
        return sound.seconds if sound else estimate_s(cue)

    def _sound(self, cue: Cue) -> Sound | None:
        if self._voice is None or not cue.spoken:
            return None
        try:
            return self._voice.speak(cue.spoken)
        except Fault as fault:
            self._voice, self.fault = None, fault
            return None


def _next_number_s(moment: Moment) -> float | None:
    """Tell when the hold's next number is due; None while its clock stands."""
    timed = (
        moment.stage is Stage.EXERCISE
        and moment.phase is Phase.HOLDING
        and not moment.resting
        and (moment.reading is None or moment.reading.usable)
    )
    if not timed or moment.planned is None or moment.remaining_s is None:
        return None
    return next_number_s(moment.time_s, moment.planned.hold_s, moment.remaining_s)

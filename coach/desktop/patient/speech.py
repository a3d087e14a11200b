"""Ties the speaker's decisions to the window's clock and to what can be heard."""

from __future__ import annotations

import time
from collections.abc import Callable

from PyQt6.QtCore import QObject, Qt, QTimer, pyqtSignal

from coach.desktop.patient.loudspeaker import Loudspeaker
from coach.desktop.patient.system_voice import OFFERED, SystemVoice
from coach.domain.cue import Cue, Urgency
from coach.domain.fault import Fault
from coach.domain.moment import Moment
from coach.texts import ENGLISH, language
from coach.voice.speaker import Speaker, Utterance

TICK_MS = 20
"""How often it is asked whether something is due; a fraction of what an ear can tell."""
LOOK_MS = 3_000
"""How often a missing sound output is looked for."""
READ_WITHIN_S = 200.0
"""A page takes so long at most; one that was turned is no longer read."""
SHOWN = " "
BEFORE_S = 1e9
"""More than a computer runs in thirty years: taken from its clock, what is before every stamp."""


class Speech(QObject):
    """Speaks the cues of the moments it hears, on the clock of their stamps.

    ``said`` carries the caption of each cue as it begins, with or without sound; ``muted`` says
    once, in a sentence, that there is no sound, and nothing when there is some again: an output
    that goes away is looked for as long as it takes.
    """

    said = pyqtSignal(str)
    muted = pyqtSignal(str)

    def __init__(
        self,
        speaker: Speaker,
        now_s: Callable[[], float | None],
        parent: QObject | None = None,
    ) -> None:
        """Stay silent until ``start``; ``now_s`` reads the clock of the moments' stamps."""
        super().__init__(parent)
        self._speaker = speaker
        self._now_s = now_s
        self._told = self._reads = False
        self._system_voice: SystemVoice | None = None
        self._loudspeaker: Loudspeaker | None = None
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.setInterval(TICK_MS)
        self._timer.timeout.connect(self._tick)
        self._looking = QTimer(self)
        self._looking.setInterval(LOOK_MS)
        self._looking.timeout.connect(self._open_loudspeaker)

    def start(self, system_voice: bool = OFFERED) -> None:
        """Find what can be heard, the system's own voice first where it is wanted, and listen."""
        if system_voice:
            try:
                self._system_voice = SystemVoice(
                    "en-GB" if language() == ENGLISH else language(), parent=self
                )
            except Fault:  # the program's own voice speaks
                self._system_voice = None
        if self._system_voice is not None:
            self._system_voice.silent.connect(self._fell_silent)
            self._system_voice.failed.connect(self._drop_system_voice)
        self._open_loudspeaker()
        self._timer.start()

    def hear(self, moment: Moment) -> None:
        """Take in a moment's cues."""
        self._speaker.hear(moment)

    def read_aloud(self, words: str) -> None:
        """Read a page aloud, a line after the other, unless something else is being said.

        There are no captions of what stands on the screen already.
        """
        now_s = self._present_s()
        self._speaker.offer(
            Cue(now_s, now_s + READ_WITHIN_S, Urgency.GENTLE, f"page.{place}", line, SHOWN)
            for place, line in enumerate(words.splitlines())
        )
        self._reads = True

    def hush(self) -> None:
        """Read no further; all else goes on."""
        if self._reads:
            self._reads = False
            self._speaker.begin_anew()
            for output in (self._system_voice, self._loudspeaker):
                if output is not None:
                    output.stop()

    def stop(self) -> None:
        """Fall silent for good."""
        self._timer.stop()
        self._looking.stop()
        for output in (self._system_voice, self._loudspeaker):
            if output is not None:
                output.stop()

    def _tick(self) -> None:
        now_s = self._present_s()
        utterance = self._speaker.tick(now_s)
        if self._speaker.fault is not None and self._system_voice is None:
            self._mute(str(self._speaker.fault))
        if utterance is not None:
            self._utter(utterance)
            self.said.emit(utterance.cue.caption or utterance.cue.spoken)

    def _present_s(self) -> float:
        """Give the present, before the first frame on a clock of our own that ends before it."""
        now_s = self._now_s()
        return time.monotonic() - BEFORE_S if now_s is None else now_s

    def _utter(self, utterance: Utterance) -> None:
        if self._system_voice is not None:
            self._system_voice.say(utterance.cue.spoken)
        elif self._loudspeaker is not None:
            if utterance.sound is not None:
                self._loudspeaker.play(utterance.sound)
            elif utterance.interrupts:
                self._loudspeaker.stop()

    def _open_loudspeaker(self) -> None:
        if self._system_voice is not None or self._loudspeaker is not None:
            return
        try:
            self._loudspeaker = Loudspeaker(self)
        except Fault as fault:
            self._mute(str(fault))
            self._looking.start()
            return
        self._loudspeaker.silent.connect(self._fell_silent)
        self._loudspeaker.failed.connect(self._lose_loudspeaker)
        if self._looking.isActive():
            self._looking.stop()
            self._told = False
            self.muted.emit("")

    def _lose_loudspeaker(self, sentence: str) -> None:
        lost, self._loudspeaker = self._loudspeaker, None
        if lost is not None:
            lost.deleteLater()
        self._fell_silent()
        self._mute(sentence)
        self._looking.start()

    def _drop_system_voice(self) -> None:
        self._system_voice = None
        self._open_loudspeaker()

    def _fell_silent(self) -> None:
        self._speaker.finished(self._present_s())

    def _mute(self, sentence: str) -> None:
        if not self._told:
            self._told = True
            self.muted.emit(sentence)

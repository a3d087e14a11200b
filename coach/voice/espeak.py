"""A voice that works offline on every system: espeak-ng from the installed packages."""

from __future__ import annotations

import re
import unicodedata
from collections import OrderedDict
from typing import Final

import numpy as np
from numpy.typing import NDArray

from coach.voice.library import PITCH, RANGE, RATE, VOLUME, library
from coach.voice.sound import Sound

LONGEST: Final = 400
"""Characters of one utterance; our longest sentence has about half of that."""
CACHED: Final = 64
QUIET: Final = 330
"""One hundredth of full scale: below it is silence before and after the words."""
LEAD_S: Final = 0.005
TAIL_S: Final = 0.02

_APOSTROPHE: Final = "\N{RIGHT SINGLE QUOTATION MARK}"
"""As French texts have it; left out, it would part the words that it joins."""
_NAMES: Final = {"en-gb": "en"}
"""espeak-ng 1.52 calls its British English ``en``."""
_CALM: Final = {PITCH: 45, RANGE: 40, VOLUME: 90}
"""A little lower and flatter than the default 50, 50 (pitch varies by 9 Hz in place of 11), and
with headroom: at 100 the peaks of our sentences touch full scale."""


class Voice:
    """Speaks a language at ``rate_wpm`` words a minute (80 to 450).

    The first one loads the library; raises ``Fault`` where there is no voice to be had. May be
    used from any thread, one at a time.
    """

    def __init__(self, language: str = "en-gb", rate_wpm: int = 150) -> None:
        """Load the library where that is not done yet, and try the voice."""
        base = language.split("-")[0]
        self._voices = tuple(dict.fromkeys((_NAMES.get(language, language), base)))
        self._parameters = {RATE: min(max(rate_wpm, 80), 450), **_CALM}
        self._library = library()
        self._cache: OrderedDict[str, Sound] = OrderedDict()
        self.speak("1")

    def speak(self, text: str) -> Sound:
        """Speak a text: bounded, plain words only, silence trimmed from both ends."""
        plain = plain_text(text)
        if plain in self._cache:
            self._cache.move_to_end(plain)
            return self._cache[plain]
        samples = trimmed(
            self._library.synthesise(plain, self._voices, self._parameters), self._library.rate_hz
        )
        samples.setflags(write=False)
        sound = Sound(samples, self._library.rate_hz)
        self._cache[plain] = sound
        if len(self._cache) > CACHED:
            self._cache.popitem(last=False)
        return sound


def plain_text(text: str) -> str:
    """Keep letters, digits and the signs that shape a sentence; at most ``LONGEST`` characters."""
    normal = unicodedata.normalize("NFC", text[: 4 * LONGEST]).replace(_APOSTROPHE, "'")
    kept = (c if unicodedata.category(c)[0] in "LMN" or c in " .,;:?!'-%" else " " for c in normal)
    return re.sub(r"\s+", " ", "".join(kept)).strip()[:LONGEST]


def trimmed(samples: NDArray[np.int16], rate_hz: int) -> NDArray[np.int16]:
    """Cut the silence before and after the words; (N,) to (M,), M <= N."""
    loud = np.flatnonzero(np.abs(samples.astype(np.int32)) > QUIET)
    if not len(loud):
        return np.zeros(0, np.int16)
    start = max(loud[0] - round(LEAD_S * rate_hz), 0)
    return samples[start : loud[-1] + round(TAIL_S * rate_hz)].copy()

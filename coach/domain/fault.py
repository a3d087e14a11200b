"""The one error that people are shown."""

from __future__ import annotations

from coach.domain.text import shown_text
from coach.texts import Sentence, in_english_of


class Fault(Exception):  # noqa: N818 - it is shown to people, and is often nobody's error
    """Something a person can act on: what is wrong, where, what to do, in one sentence."""

    def __init__(self, sentence: str) -> None:
        """Take a sentence; what a stranger's name in it would do to a terminal is seen instead."""
        super().__init__(shown_text(sentence))
        self._english = shown_text(str(in_english_of(sentence)))

    @property
    def sentence(self) -> Sentence:
        """The sentence, which knows itself in English too."""
        return Sentence(str(self), self._english)

"""The system's own voices, where Qt offers them: Windows and macOS."""

from __future__ import annotations

import sys

from PyQt6.QtCore import QLocale, QObject, pyqtSignal

from coach.domain.fault import Fault
from coach.texts import translate

OFFERED = sys.platform in ("win32", "darwin")
"""Elsewhere the voice of the installed packages is the better known one."""


def no_voice() -> str:
    """Say that the system has no voice, and what to do."""
    return translate(
        "faults",
        "This computer offers no voice of its own for the chosen language, so the program's own "
        "voice speaks; add one in the system's settings to hear it.",
    )


class SystemVoice(QObject):
    """Says one text at a time; a new one cuts off the one before.

    ``silent`` tells that it has been said, ``failed`` that the voice has gone. Making one raises a
    Fault where there is no voice for ``language``.
    """

    silent = pyqtSignal()
    failed = pyqtSignal(str)

    def __init__(
        self, language: str = "en-GB", engine: str | None = None, parent: QObject | None = None
    ) -> None:
        """Find a voice; ``engine`` names one of Qt's, None takes the system's default."""
        super().__init__(parent)
        try:
            from PyQt6.QtTextToSpeech import QTextToSpeech
        except ImportError as error:
            raise Fault(no_voice()) from error
        self._states = QTextToSpeech.State
        self._speech = QTextToSpeech(self) if engine is None else QTextToSpeech(engine, self)
        wanted = QLocale(language)
        known = {locale.language() for locale in self._speech.availableLocales()}
        if self._speech.state() is self._states.Error or wanted.language() not in known:
            raise Fault(no_voice())
        self._speech.setLocale(wanted)
        self._speech.stateChanged.connect(self._state_changed)

    def say(self, text: str) -> None:
        """Say a text, now."""
        if self._speech.state() is self._states.Speaking:
            self.stop()
        self._speech.say(text)

    def stop(self) -> None:
        """Fall silent at once."""
        self._speech.stop()

    def _state_changed(self) -> None:
        state = self._speech.state()
        if state is self._states.Ready:
            self.silent.emit()
        elif state is self._states.Error:
            self.failed.emit(no_voice())

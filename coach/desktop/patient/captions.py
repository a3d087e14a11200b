"""The words last spoken, on every page: on its own place for them, or on a bar below."""

from __future__ import annotations

from PyQt6.QtCore import QObject, QTimer
from PyQt6.QtWidgets import QWidget

from coach.desktop.patient.cautions_page import CautionsPage
from coach.desktop.patient.exercise_page import ExercisePage
from coach.desktop.patient.pages import Pages
from coach.desktop.patient.prepare_page import PreparePage
from coach.desktop.patient.readouts import Caption
from coach.desktop.patient.welcome_page import WelcomePage

CAPTION_MS = 6_000
"""How long words stay: enough to read them, not so long that they are no longer true."""
_OF_HEIGHT = 0.08


class Captions(QObject):
    """Shows what is said for some seconds, and notes for as long as they are true."""

    def __init__(self, pages: Pages, window: QWidget) -> None:
        """Begin silent; the window puts ``bar`` below its pages."""
        super().__init__(window)
        self.bar = Caption(window)
        self._pages = pages
        self._age = QTimer(self)
        self._age.setSingleShot(True)
        self._age.timeout.connect(self._take_away)
        pages.currentChanged.connect(self._turned)
        self._turned()

    def say(self, words: str) -> None:
        """Show what is being said."""
        self._pages.show_words(words)
        self.bar.show_words(words)
        self._age.start(CAPTION_MS)

    def note(self, sentence: str) -> None:
        """Show something lasting."""
        self._pages.show_note(sentence)
        self.bar.show_note(sentence)

    def fit(self, height_px: int) -> None:
        """Fit to a window so high."""
        self.bar.setFixedHeight(round(_OF_HEIGHT * height_px))

    def _take_away(self) -> None:
        self._pages.take_words_away()
        self.bar.show_words("")

    def _turned(self) -> None:
        page = self._pages.currentWidget()
        self.bar.setVisible(
            not isinstance(page, CautionsPage | WelcomePage | PreparePage | ExercisePage)
        )

"""The words last spoken, on every page: on its own place for them, or on a bar below."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import QObject, QTimer
from PyQt6.QtWidgets import QWidget

from coach.cues.pacing import saying_s
from coach.desktop.patient.caption import Caption
from coach.desktop.patient.cautions_page import CautionsPage
from coach.desktop.patient.exercise_page import ExercisePage
from coach.desktop.patient.offer_page import OfferPage
from coach.desktop.patient.pages import Pages
from coach.desktop.patient.pain_page import PainPage
from coach.desktop.patient.prepare_page import PreparePage
from coach.desktop.patient.summary_page import SummaryPage
from coach.desktop.patient.welcome_page import WelcomePage

CAPTION_MS = 6_000
"""How long words stay: enough to read them, not so long that they are no longer true."""
_OF_HEIGHT = 0.08
_ONE_LINE, _TWO_LINES = 0.16, 0.302
"""Of the window's height where nobody hears the words and they are read from three metres."""

_AT_WORK = (PreparePage, ExercisePage)
"""Have a place of their own for what is also heard."""
_FAR = (OfferPage, SummaryPage, *_AT_WORK)


class Captions(QObject):
    """Shows what is said for some seconds, and notes for as long as they are true."""

    def __init__(self, pages: Pages, window: QWidget) -> None:
        """Begin silent; the window puts ``bar`` below its pages."""
        super().__init__(window)
        self.bar = Caption(window)
        self._pages = pages
        self._silent, self._height_px = False, window.height()
        self._age = QTimer(self)
        self._age.setSingleShot(True)
        self._age.timeout.connect(self._go_on)
        self._parts: list[str] = []
        pages.currentChanged.connect(self._turned)
        self._turned()

    def say(self, words: str) -> None:
        """Show what is being said."""
        self._pages.show_words(words)
        far = self._silent and self.bar.isVisible()
        self._show(self.bar.parts(words) if far else (words,))

    def note(self, sentence: str) -> None:
        """Show something lasting."""
        self._pages.show_note(sentence)
        self.bar.show_note(sentence)
        self._silent = bool(sentence)
        self._turned()

    def fit(self, height_px: int) -> None:
        """Fit to a window so high."""
        self._height_px = height_px
        self.bar.setFixedHeight(round(self._share() * height_px))

    def _share(self) -> float:
        page = self._pages.currentWidget()
        if self._silent and isinstance(page, PainPage):
            return _ONE_LINE  # its numbers need the room, and its captions are short
        if self._silent and isinstance(page, _FAR):
            return _TWO_LINES
        return _OF_HEIGHT

    def _show(self, parts: Sequence[str]) -> None:
        part, *self._parts = parts
        self.bar.show_words(part, said=True)
        # A part of long words stays for as long as it would take to say.
        self._age.start(round(1000 * saying_s(part)) if self._parts else CAPTION_MS)

    def _go_on(self) -> None:
        if self._parts:
            self._show(self._parts)
        else:
            self._take_away()

    def _take_away(self) -> None:
        self._pages.take_words_away()
        self.bar.show_words("")

    def _turned(self) -> None:
        page = self._pages.currentWidget()
        own: tuple[type[QWidget], ...] = (CautionsPage, WelcomePage)
        self.bar.setVisible(not isinstance(page, own if self._silent else (*own, *_AT_WORK)))
        for at_work in (self._pages.prepare, self._pages.exercise):
            at_work.caption.setVisible(not self._silent)
        self._pages.exercise.resizeEvent(None)  # it lays itself out
        self.fit(self._height_px)

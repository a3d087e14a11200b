"""The words last spoken, or those that say how to go on, and a lasting note."""

from __future__ import annotations

import math

from PyQt6.QtCore import QRectF
from PyQt6.QtGui import QColor, QPainter, QPaintEvent
from PyQt6.QtWidgets import QWidget

from coach.desktop.patient.lettering import FAR_SHARE, LARGE_SHARE, draw_fitted, grown
from coach.desktop.shared.looks import colours

_NOTE_ON_ONE_LINE = 1.3
"""Width of the caption's room, as a share of the window's height, that takes a note in one line."""
_NOTE_BESIDE_WORDS = 0.6
"""The most of the room's height that a note takes from words that stand there."""


class Caption(QWidget):
    """The words last spoken, on the dark ground, as large as they fit.

    What is being said takes the note's room, and gives it back when it goes; words that stay, such
    as how to go on, share it.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin silent."""
        super().__init__(parent)
        self._words = self._note = ""
        self._said = False
        self.type_px = 0.0
        """Size of the words' type as last painted, in pixels."""

    def show_words(self, words: str, *, said: bool = False) -> None:
        """Show words that are being ``said``, or that stay."""
        if (words, said) != (self._words, self._said):
            self._words, self._said = words, said
            self.setAccessibleName(words)
            self.update()

    def show_note(self, note: str) -> None:
        """Show something small and lasting, such as that there is no sound."""
        self._note = note
        self.setAccessibleDescription(note)
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        window = self.window()
        tall = float(window.height()) if window is not None else 800.0
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(colours().stage))
        room = QRectF(self.rect()).adjusted(tall * 0.03, 0, -tall * 0.03, -tall * 0.012)
        if self._note and not (self._words and self._said):
            size_px = tall * (grown(0.036) if self._words else LARGE_SHARE)
            lines = math.ceil(_NOTE_ON_ONE_LINE * tall / max(room.width(), 1.0))
            foot = QRectF(room)
            if self._words:
                most = room.height() * _NOTE_BESIDE_WORDS
                foot.setTop(room.bottom() - min(lines * 1.25 * size_px, most))
            draw_fitted(
                painter,
                foot,
                self._note,
                largest_px=size_px,
                smallest_px=14,
                colour=colours().stage_soft,
            )
            room.setBottom(foot.top())
        self.type_px = draw_fitted(
            painter,
            room,
            self._words,
            largest_px=tall * FAR_SHARE,
            smallest_px=12,
            colour=colours().stage_ink,
            bold=True,
        )
        painter.end()

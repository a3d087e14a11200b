"""The words last spoken, or those that say how to go on, and a lasting note."""

from __future__ import annotations

import math
import textwrap

from PyQt6.QtCore import QRectF
from PyQt6.QtGui import QColor, QPainter, QPaintEvent
from PyQt6.QtWidgets import QWidget

from coach.desktop.patient.lettering import FAR_SHARE, LARGE_SHARE, draw_fitted, fits, grown
from coach.desktop.shared.looks import colours
from coach.desktop.shared.typeface import font

_NOTE_ON_ONE_LINE = 1.3
"""Width of the caption's room, as a share of the window's height, that takes a note in one line."""
_NOTE_BESIDE_WORDS = 0.6
"""The most of the room's height that a note takes from words that stand there."""

_GOES_ON = "\N{HORIZONTAL ELLIPSIS}"
"""Ends each part of words but the last."""


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

    def parts(self, words: str) -> tuple[str, ...]:
        """Give them cut at spaces into as few as each fit in, to be read from three metres."""
        chosen, room = font(self._tall() * FAR_SHARE, bold=True), self._room()
        found: tuple[str, ...] = ()
        for most in range(len(words), 0, -1):  # down to the most even of so few
            cut = textwrap.wrap(words, most, break_long_words=False, break_on_hyphens=False)
            parts = (*(f"{part} {_GOES_ON}" for part in cut[:-1]), *cut[-1:])
            if found and len(parts) > len(found):
                break
            if all(fits(chosen, room, part) for part in parts):
                found = parts
        return found or (words,)

    def show_note(self, note: str) -> None:
        """Show something small and lasting, such as that there is no sound."""
        self._note = note
        self.setAccessibleDescription(note)
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        tall, room = self._tall(), self._room()
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(colours().stage))
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

    def _room(self) -> QRectF:
        tall = self._tall()
        return QRectF(self.rect()).adjusted(tall * 0.03, 0, -tall * 0.03, -tall * 0.012)

    def _tall(self) -> float:
        window = self.window()
        return float(window.height()) if window is not None else 800.0

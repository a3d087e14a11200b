"""The numbers that are read from three metres: angle, clock, count."""

from __future__ import annotations

from enum import Enum

from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QWidget

from coach.desktop.patient.calm import share_shown
from coach.desktop.patient.lettering import draw_fitted, draw_number, grown
from coach.desktop.shared.looks import colour, colours, looks
from coach.desktop.shared.typeface import font
from coach.domain.plan import PlannedExercise
from coach.domain.progress import EndedBecause, Repetition

_HEADING_OF_HEIGHT = 0.34
"""The most that an enlarged heading takes from what it heads, which is read from further away."""
_FINEST = 2
"""Decimals of the share of a box that is filled: a box is some tens of pixels wide."""
_NEARLY = 0.99
"""The most that the box of a hold is filled which does not count."""
_DIGITS_OF_TYPE = 0.74
"""How high digits are, as a share of their type, with a little air."""
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


class Tone(Enum):
    """Names of colours: ground (None for the page's own), ink, ink of the heading."""

    PLAIN = (None, "ink", "ink_soft")
    WORDS = (None, "accent", "ink_soft")
    CALM = ("card", "accent", "ink_soft")
    HOLD = ("stage", "hold", "stage_ink")
    REST = ("stage", "rest", "stage_ink")
    WAITING = ("stage", "stage_soft", "stage_ink")
    ALARM = ("caution_wash", "caution", "caution")


class Readout(QWidget):
    """A small heading over a number that fills its place, or over words where there is none.

    ``share`` is the largest size of the number's type as a share of the window's height.
    """

    def __init__(self, share: float, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._share = share
        self._heading = self._number = self._beside = self._words = ""
        self._tone = Tone.PLAIN

    def show_number(
        self, heading: str, number: str, beside: str = "", tone: Tone = Tone.PLAIN
    ) -> None:
        """Show a number, with something smaller beside it."""
        self._show(heading, number, beside, "", tone)

    def show_words(self, heading: str, words: str, tone: Tone = Tone.WORDS) -> None:
        """Show words in the number's place."""
        self._show(heading, "", "", words, tone)

    def _show(self, heading: str, number: str, beside: str, words: str, tone: Tone) -> None:
        before = (self._heading, self._number, self._beside, self._words, self._tone)
        if before == (heading, number, beside, words, tone):
            return
        self._heading, self._number, self._beside = heading, number, beside
        self._words, self._tone = words, tone
        self.setAccessibleName(
            " ".join(part for part in (f"{heading}:", number, beside, words) if part)
        )
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        ground, *inks = self._tone.value
        ink, heading_ink = (colour(name) for name in inks)
        window = self.window()
        tall = float(window.height()) if window is not None else 800.0
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = QRectF(self.rect())
        if ground is not None:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colour(ground)))
            painter.drawRoundedRect(room, 16, 16)
            room.adjust(tall * 0.022, tall * 0.01, -tall * 0.022, -tall * 0.01)
        size_px = tall * grown(0.028)
        across_px = QFontMetricsF(font(size_px, bold=ground is not None)).horizontalAdvance(
            self._heading
        )
        lines = 1 if across_px <= room.width() or looks().text == 1.0 else 2
        high_px = min(1.3 * lines * size_px, max(_HEADING_OF_HEIGHT * room.height(), 0.04 * tall))
        top = QRectF(room.left(), room.top(), room.width(), high_px)
        draw_fitted(
            painter,
            top,
            self._heading,
            largest_px=size_px,
            smallest_px=9,
            colour=heading_ink,
            bold=ground is not None,
            align=_LEFT,
        )
        room.setTop(top.bottom())
        if self._number:
            draw_number(
                painter,
                room,
                self._number,
                self._beside,
                largest_px=min(tall * self._share, room.height() / _DIGITS_OF_TYPE),
                colour=ink,
                beside_colour=heading_ink,
            )
        else:
            draw_fitted(
                painter,
                room,
                self._words,
                largest_px=tall * 0.075,
                smallest_px=12,
                colour=ink,
                bold=True,
                align=_LEFT,
            )
        painter.end()


class HoldCount(QWidget):
    """How many holds are done, in numbers and as one box a hold, filled as far as it was held."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin with nothing asked."""
        super().__init__(parent)
        self._shares: tuple[float, ...] = ()
        self._done = 0
        self._asked = 0

    def show_count(
        self,
        repetitions: tuple[Repetition, ...],
        planned: PlannedExercise,
        held_s: float,
        done: int,
    ) -> None:
        """Show what was held against what is asked, and ``held_s`` of the hold under way.

        ``repetitions`` are the measured ones; in an exercise that goes by time the ``done`` holds
        are full boxes. A hold under way that is long enough is one of those ``done``.
        """
        asked, hold_s = planned.repetitions, planned.hold_s
        if planned.movement is None:
            shares = [1.0] * done
        else:
            shares = [_share_of(each, hold_s) for each in repetitions]
        ahead = [0.0] * max(0, asked - shares.count(1.0))
        if ahead:
            ahead[0] = round(share_shown(min(1.0, held_s / hold_s)), _FINEST)
        before = self._shares, self._done, self._asked
        self._shares, self._done, self._asked = (*shares, *ahead), done, asked
        if before == (self._shares, done, asked):
            return
        self.setAccessibleName(
            self.tr("Holds done: {done} of {asked}").format(done=done, asked=asked)
        )
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        if not self._asked:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = QRectF(self.rect())
        boxes = QRectF(room.left(), room.bottom() - room.height() * 0.24, room.width(), 0)
        boxes.setBottom(room.bottom() - 2)
        room.setBottom(boxes.top() - room.height() * 0.04)
        draw_number(
            painter,
            room,
            str(self._done),
            self.tr("of {asked} holds").format(asked=self._asked),
            largest_px=room.height() * 1.24,
            colour=colours().accent,
            beside_colour=colours().ink_soft,
            beside_share=0.5,
        )
        gap = min(10.0, boxes.width() / (4 * len(self._shares)))
        each = (boxes.width() - gap * (len(self._shares) - 1)) / len(self._shares)
        for number, share in enumerate(self._shares):
            box = QRectF(boxes.left() + number * (each + gap), boxes.top(), each, boxes.height())
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours().accent))
            filled = QRectF(box)
            filled.setWidth(box.width() * share)
            painter.drawRoundedRect(filled, 3, 3)
            painter.setPen(QPen(QColor(colours().accent), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), 3, 3)
        painter.end()


def _share_of(hold: Repetition, asked_s: float) -> float:
    """Give how full its box is; the end of a completed one is dated back a little."""
    if hold.ended_because is EndedBecause.COMPLETED:
        return 1.0
    return min(hold.held_s / asked_s, _NEARLY)

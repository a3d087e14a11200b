"""A bar that fills while the other hand is up: first to the signal, then to stopping."""

from __future__ import annotations

from typing import assert_never

from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QWidget

from coach.desktop.patient.calm import share_shown
from coach.desktop.patient.lettering import draw_fitted
from coach.desktop.shared.looks import colours
from coach.domain.moment import Moment, Stage
from coach.gestures import KEPT_S, UP_S

SEEN_S = 0.2
"""A hand that is up in one frame only is not shown."""


class HandGauge(QWidget):
    """Lies over a page; hidden while no hand is up, and where a longer raise means nothing."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin hidden."""
        super().__init__(parent)
        self._share = 0.0
        self._words = ""
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    @property
    def share(self) -> float:
        """How full the bar is, 0 to 1."""
        return self._share

    def show_moment(self, moment: Moment, meaning: str = "") -> None:
        """Show how long the hand is up, and what it does when it stays up.

        ``meaning`` is what it does on the page shown, where that is not what it does in the stage.
        """
        raised_s = moment.raised_s
        words = "" if raised_s is None else meaning or self._meaning(moment.stage, raised_s)
        if raised_s is None or raised_s < SEEN_S or not words:
            self.hide()
            return
        before = raised_s < UP_S
        self._share = min(1.0, raised_s / UP_S if before else (raised_s - UP_S) / (KEPT_S - UP_S))
        self._words = words
        self.setAccessibleName(words)
        self.show()
        self.raise_()
        self.update()

    def _meaning(self, stage: Stage, raised_s: float) -> str:
        late = raised_s >= UP_S
        match stage:
            case Stage.WELCOME:
                return "" if late else self.tr("Hand up: begin")
            case Stage.PAIN_BEFORE | Stage.PAIN_AFTER:
                return "" if late else self.tr("Hand up: choose")
            case Stage.PREPARE | Stage.EXERCISE:
                return self.tr("Keep it up to stop") if late else self.tr("Hand up: pause")
            case Stage.PAUSED:
                return self.tr("Keep it up to stop") if late else self.tr("Hand up: go on")
            case Stage.OFFER:
                return self.tr("Keep it up to stop") if late else self.tr("Hand up: easier one")
            case Stage.FINISHED:
                return ""
            case _ as never:
                assert_never(never)

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = QRectF(self.rect()).adjusted(3, 3, -3, -3)
        painter.setPen(QPen(QColor(colours().stage_ink), 4))
        painter.setBrush(QColor(colours().stage))
        painter.drawRoundedRect(room, 16, 16)
        inset = 0.14 * room.height()
        room.adjust(2 * inset, inset, -2 * inset, -inset)
        words = QRectF(room.left(), room.top(), room.width(), 0.6 * room.height())
        draw_fitted(
            painter,
            words,
            self._words,
            largest_px=words.height() * 0.85,
            smallest_px=14,
            colour=colours().stage_ink,
            bold=True,
        )
        bar = QRectF(room.left(), words.bottom(), room.width(), room.bottom() - words.bottom())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours().trough))
        painter.drawRoundedRect(bar, 6, 6)
        filled = QRectF(bar)
        filled.setWidth(bar.width() * share_shown(self._share))
        painter.setBrush(QColor(colours().hold))
        painter.drawRoundedRect(filled, 6, 6)
        painter.end()

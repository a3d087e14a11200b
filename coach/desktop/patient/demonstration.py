"""Plays an exercise's demonstration as a calm loop of a drawn person."""

from __future__ import annotations

import time
from collections.abc import Callable

from PyQt6.QtCore import QEvent, QRectF, QSize, QTimer
from PyQt6.QtGui import QHideEvent, QPainter, QPaintEvent, QShowEvent
from PyQt6.QtWidgets import QWidget

from coach import texts
from coach.desktop.shared.figure_painting import paint_drawing
from coach.desktop.shared.looks import looks
from coach.domain.exercise import Exercise
from coach.domain.movement import Side
from coach.figure import stage_of

FRAME_MS = 50
"""Twenty pictures a second are smooth for so slow a movement."""


class Demonstration(QWidget):
    """The figure doing one exercise; at rest it shows the end of the movement."""

    def __init__(
        self,
        exercise: Exercise,
        side: Side,
        *,
        animated: bool = True,
        mirrored: bool = False,
        clock: Callable[[], float] = time.monotonic,
        parent: QWidget | None = None,
    ) -> None:
        """Show an entry of the catalogue for one side; not ``animated``, a picture only.

        ``mirrored`` shows someone who faces the patient as their mirror image, beside a live
        picture that is mirrored as well; it changes nothing from the side or the back.
        """
        super().__init__(parent)
        self._clock = clock
        self._timer = QTimer(self)
        self._timer.setInterval(FRAME_MS)
        self._timer.timeout.connect(self.update)
        self._animated, self._as_mirror = animated, mirrored
        self._begun_s = clock()
        self.show_exercise(exercise, side)
        self.setMinimumSize(160, 160)

    def show_exercise(self, exercise: Exercise, side: Side) -> None:
        """Show another one, from its beginning."""
        self._stage = stage_of(exercise, side)
        self._mirrored = self._as_mirror and self._stage.facing
        self._begun_s = self._clock()
        telling = texts.of(exercise.telling)
        name = (
            texts.translate("drawings", "Drawing: {title}, left arm")
            if side is Side.LEFT
            else texts.translate("drawings", "Drawing: {title}, right arm")
        )
        self.setAccessibleName(name.format(title=telling.title))
        self.setAccessibleDescription(" ".join(telling.steps))
        self.update()

    def set_animated(self, animated: bool) -> None:
        """Let it move, or show the end of the movement with the arm's first place as a shadow."""
        self._animated = animated
        self._begun_s = self._clock()
        self._run()
        self.update()

    @property
    def playing(self) -> bool:
        """Whether pictures are being drawn one after the other."""
        return self._timer.isActive()

    def sizeHint(self) -> QSize:  # noqa: D102, N802
        return QSize(360, 160)  # it grows into what words leave it

    def showEvent(self, event: QShowEvent | None) -> None:  # noqa: D102, N802
        super().showEvent(event)
        self._run()

    def hideEvent(self, event: QHideEvent | None) -> None:  # noqa: D102, N802
        super().hideEvent(event)
        self._timer.stop()

    def changeEvent(self, event: QEvent | None) -> None:  # noqa: D102, N802
        if event is not None and event.type() is QEvent.Type.StyleChange:
            self._run()
        super().changeEvent(event)

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        if self._animated and not looks().still:
            drawing = self._stage.drawing(self._clock() - self._begun_s)
        else:
            drawing = self._stage.drawing(self._stage.key_s, beginning=True)
        paint_drawing(painter, QRectF(self.rect()), self._stage, drawing, mirrored=self._mirrored)
        painter.end()

    def _run(self) -> None:
        if self._animated and not looks().still and self.isVisible():
            self._timer.start()
        else:
            self._timer.stop()

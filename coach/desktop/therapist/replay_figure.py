"""The stick figure of a repetition, painted for the therapist's replay."""

from __future__ import annotations

import numpy as np
from PyQt6.QtCore import QPointF, QRectF, QSize, Qt
from PyQt6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.looks import colours
from coach.domain.pose import Landmark
from coach.review.recording import Floats
from coach.review.replay import Replay
from coach.review.replay_wording import heading, in_words, moment
from coach.texts import translate

_UNSURE = 0.5
"""Below this visibility the pose model itself takes a point for hidden (its middle)."""
_MARGIN = 0.14
"""Of the figure's larger side, for the head above the ears and the limbs' width."""


class FigureView(QWidget):
    """Shows one moment of a ``Replay`` as a stick figure, as the camera saw it."""

    def __init__(self, em_px: float) -> None:
        """Begin empty; ``em_px`` is the height of the text."""
        super().__init__()
        self._em_px = em_px
        self._replay: Replay | None = None
        self._frame = QRectF(0, 0, 1, 1)
        self._time_s = 0.0
        self.setMinimumSize(QSize(scaled(200), scaled(260)))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(translate("replay", "Stick figure"))

    def show_replay(self, replay: Replay) -> None:
        """Show another repetition."""
        self._replay = replay
        known = replay.points[np.isfinite(replay.points).all(axis=2)] * (replay.aspect, 1.0)
        if len(known):
            (left, top), (right, bottom) = known.min(axis=0), known.max(axis=0)
            margin = _MARGIN * max(right - left, bottom - top, 0.1)
            self._frame = QRectF(
                left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin
            )

    def show_time(self, time_s: float) -> None:
        """Show another moment, in seconds since the session's start."""
        self._time_s = time_s
        if self._replay:
            self.setAccessibleDescription(in_words(self._replay, time_s))
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: N802
        """Paint."""
        if self._replay is None:
            return
        painter = QPainter(self)
        canvas = Canvas(painter, self._em_px, colours())
        self._paint(canvas, self._replay)
        painter.end()

    def _paint(self, canvas: Canvas, replay: Replay) -> None:
        painter, box = canvas.painter, QRectF(self.rect())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours().stage))
        painter.drawRoundedRect(box, 14, 14)
        words = QRectF(box.left() + 14, box.bottom() - 46, box.width() - 28, 36)
        above = QRectF(box.left() + 14, box.top() + 10, box.width() - 28, 28)
        space = QRectF(box.left(), box.top() + 38, box.width(), box.height() - 84)
        scale = min(space.width() / self._frame.width(), space.height() / self._frame.height())
        shift = space.center() - self._frame.center() * scale
        points = replay.points_at(self._time_s) * (replay.aspect * scale, scale)
        points += (shift.x(), shift.y())
        row = replay.nearest_row(self._time_s)
        seen = replay.visibility[row] if row is not None else np.zeros(len(points))
        unit = max(3.0, 0.022 * min(space.width(), space.height()))
        for bone in replay.bones:
            ends = points[[bone.begin, bone.end]]
            if not np.isfinite(ends).all():
                continue
            sure = bool((seen[[bone.begin, bone.end]] >= _UNSURE).all())
            colour = QColor(colours().hold if bone.measured else colours().rest)
            colour.setAlphaF(1.0 if sure else 0.45)
            pen = QPen(colour, unit * (1.5 if bone.measured else 1.0) * (1.0 if sure else 0.6))
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            painter.setPen(pen)
            painter.drawLine(QPointF(*ends[0]), QPointF(*ends[1]))
        self._head(canvas, replay, points, unit)
        middle, ink, soft = Align.AlignCenter, colours().stage_ink, colours().stage_soft
        canvas.text(above, heading(replay), size=1.05, colour=soft, align=middle)
        now = moment(replay, self._time_s)
        canvas.text(words, now, size=1.25, bold=True, colour=ink, align=middle)

    def _head(self, canvas: Canvas, replay: Replay, points: Floats, unit: float) -> None:
        """Draw the head round the ears, as wide as a shoulder-hip line of the figure asks."""
        at = {mark: points[k] for k, mark in enumerate(replay.landmarks)}
        wanted = (Landmark.LEFT_EAR, Landmark.RIGHT_EAR, Landmark.LEFT_SHOULDER, Landmark.LEFT_HIP)
        if not all(mark in at and np.isfinite(at[mark]).all() for mark in wanted):
            return
        ear, other, shoulder, hip = (at[mark] for mark in wanted)
        middle = (ear + other) / 2
        # A head is about a fifth of the trunk's length to either side (Drillis and Contini 1966,
        # from memory); it is drawn for the eye alone.
        radius = max(2 * unit, 0.2 * float(np.hypot(*(shoulder - hip))))
        canvas.painter.setPen(QPen(QColor(colours().rest), unit))
        canvas.painter.setBrush(Qt.BrushStyle.NoBrush)
        canvas.painter.drawEllipse(QPointF(*middle), radius, radius)

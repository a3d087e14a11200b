"""The trace of a repetition over time: angle with its error, hold, doubts, form, a cursor."""

from __future__ import annotations

from PyQt6.QtCore import QRectF, QSize, Qt
from PyQt6.QtGui import QPainter, QPaintEvent, QPixmap
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.shared.canvas import Canvas
from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.looks import colours
from coach.desktop.therapist.trace_painting import TracePainting
from coach.review.replay import Replay
from coach.review.replay_wording import compensations, in_words, pain
from coach.texts import translate


class TraceView(QWidget):
    """Shows the trace of a ``Replay`` with a cursor at one moment."""

    def __init__(self, em_px: float) -> None:
        """Begin empty; ``em_px`` is the height of the text."""
        super().__init__()
        self._em_px, self._worn = em_px, colours()
        self._replay: Replay | None = None
        self._span, self._values = (-1.0, 1.0), (0.0, 1.0)
        self._time_s = 0.0
        self._still = QPixmap()
        """All but the cursor, which would take too long to paint for each picture of a second."""
        self.set_tall(False)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(translate("replay", "Trace of the repetition"))

    def set_tall(self, tall: bool) -> None:
        """Have the height that a trace needs by itself, or a share of the page's."""
        self.setMinimumSize(QSize(scaled(380), scaled(360 if tall else 240)))

    def show_replay(
        self, shown: Replay, span: tuple[float, float], values: tuple[float, float]
    ) -> None:
        """Show another repetition over ``span``, seconds since its hold began, and ``values``."""
        self._replay, self._span, self._values = shown, span, values
        self._still = QPixmap()
        self.update()

    def show_time(self, time_s: float) -> None:
        """Move the cursor, in seconds since the session's start."""
        self._time_s = time_s
        if self._replay:
            words = (in_words(self._replay, time_s), compensations(self._replay))
            self.setAccessibleDescription("; ".join((*words, pain(self._replay))))
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: N802
        """Paint."""
        if self._replay is None:
            return
        ratio = self.devicePixelRatioF()
        if self._still.size() != self.size() * ratio or self._worn is not colours():
            self._worn, self._still = colours(), QPixmap(self.size() * ratio)
            self._still.setDevicePixelRatio(ratio)
            self._still.fill(Qt.GlobalColor.transparent)
            painter = QPainter(self._still)
            self._trace(painter, self._replay).paint_still()
            painter.end()
        painter = QPainter(self)
        painter.drawPixmap(0, 0, self._still)
        self._trace(painter, self._replay).paint_moment(self._time_s)
        painter.end()

    def _trace(self, painter: QPainter, shown: Replay) -> TracePainting:
        canvas = Canvas(painter, self._em_px, colours())
        return TracePainting(canvas, QRectF(self.rect()), shown, self._span, self._values)

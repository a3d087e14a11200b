"""Widgets that show a chart or the weeks of a report; the painting is shared with the page."""

from __future__ import annotations

from PyQt6.QtCore import QRectF, QSize
from PyQt6.QtGui import QPainter, QPaintEvent
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.shared.chart import paint_chart
from coach.desktop.shared.weeks_chart import paint_weeks
from coach.review.adherence import Adherence
from coach.review.chart import Chart


class ChartView(QWidget):
    """Shows a ``coach.review.chart.Chart``; says in words what it shows to a screen reader."""

    def __init__(self, em_px: float) -> None:
        """Begin empty; ``em_px`` is the height of the text."""
        super().__init__()
        self._em_px = em_px
        self._chart: Chart | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(QSize(420, 260))
        self.setAccessibleName("Chart")

    def show_chart(self, chart: Chart | None) -> None:
        """Show another chart."""
        self._chart = chart
        self.setAccessibleDescription(chart.description() if chart else "")
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: N802
        """Paint."""
        if self._chart:
            painter = QPainter(self)
            paint_chart(painter, QRectF(self.rect()), self._chart, self._em_px)
            painter.end()


class WeeksView(QWidget):
    """Shows the weeks of a ``coach.review.adherence.Adherence``."""

    def __init__(self, em_px: float) -> None:
        """Begin empty; ``em_px`` is the height of the text."""
        super().__init__()
        self._em_px = em_px
        self._adherence: Adherence | None = None
        self.setMinimumHeight(round(8 * em_px))
        self.setMaximumHeight(round(11 * em_px))
        self.setAccessibleName("Sessions by week")

    def show_adherence(self, adherence: Adherence | None) -> None:
        """Show another patient's weeks."""
        self._adherence = adherence
        words = f"{adherence.done} done of {adherence.asked} asked for" if adherence else ""
        self.setAccessibleDescription(words)
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: N802
        """Paint."""
        if self._adherence:
            painter = QPainter(self)
            paint_weeks(painter, QRectF(self.rect()), self._adherence.weeks, self._em_px)
            painter.end()

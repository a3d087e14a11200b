"""A widget that shows a chart; the painting is shared with the printed page."""

from __future__ import annotations

from PyQt6.QtCore import QRectF, QSize
from PyQt6.QtGui import QPainter, QPaintEvent
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.shared.chart import paint_chart
from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.looks import colours
from coach.review.adherence import Week
from coach.review.chart import Chart
from coach.texts import translate


class ChartView(QWidget):
    """Shows a ``coach.review.chart.Chart``; says in words what it shows to a screen reader."""

    def __init__(self, em_px: float) -> None:
        """Begin empty; ``em_px`` is the height of the text."""
        super().__init__()
        self._em_px = em_px
        self._chart: Chart | None = None
        self._weeks: tuple[Week, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.set_tall(False)
        self.setAccessibleName(translate("therapist", "Chart"))

    def set_tall(self, tall: bool) -> None:
        """Have the height that a chart needs by itself, or a share of the page's."""
        self.setMinimumSize(QSize(scaled(360), scaled(420 if tall else 260)))

    def show_chart(self, chart: Chart | None, weeks: tuple[Week, ...] = ()) -> None:
        """Show another chart, with what was done and asked in these weeks."""
        self._chart, self._weeks = chart, weeks
        self.setAccessibleDescription(chart.description() if chart else "")
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: N802
        """Paint."""
        if self._chart:
            painter = QPainter(self)
            room = QRectF(self.rect())
            paint_chart(painter, room, self._chart, self._em_px, colours(), self._weeks)
            painter.end()

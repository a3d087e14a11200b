"""A movement's range over time with its error, and pain below, for the patient."""

from __future__ import annotations

from dataclasses import replace

from PyQt6.QtCore import QRectF, QSize
from PyQt6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.patient.lettering import grown
from coach.desktop.shared.chart import paint_chart
from coach.desktop.shared.looks import colours
from coach.review.chart import Chart, chart
from coach.review.diary_entries import DiarySeries

_SHARE = 0.027
"""Height of the chart's text as a share of the window's."""
_ROUND_PX = 14.0
_LEAST_OF_TYPE = 14
"""The chart's least height in heights of its type: two scales and a heading; less scrolls."""


class SeriesView(QWidget):
    """Shows one chart on a card: no target, no reference, only what was measured and felt."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._chart: Chart | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def minimumSizeHint(self) -> QSize:  # noqa: D102, N802
        return QSize(0, round(_LEAST_OF_TYPE * self._em_px()))

    def _em_px(self) -> float:
        window = self.window()
        return grown(_SHARE) * (self.height() if window is None else window.height())

    def show_series(self, entry: DiarySeries, title: str) -> None:
        """Show this series under ``title``."""
        self._chart = replace(
            chart(entry.series, entry.summary),
            title=title,
            statement="" if entry.days else entry.sentence,
            first=None,
            last=None,
            undecided=None,
            other_side_deg=None,
        )
        self.setAccessibleName(f"{title}. {entry.sentence}")
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        card = QPainterPath()
        card.addRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), _ROUND_PX, _ROUND_PX)
        painter.fillPath(card, QColor(colours().card))
        painter.strokePath(card, QPen(QColor(colours().hairline), 1))
        if self._chart is not None:
            em = self._em_px()
            room = QRectF(self.rect()).adjusted(em, 0.6 * em, -em, -0.5 * em)
            paint_chart(painter, room, self._chart, em, colours())
        painter.end()

"""Where days and values lie in a rectangle."""

from __future__ import annotations

from dataclasses import dataclass

from PyQt6.QtCore import QPointF, QRectF

from coach.review.axis import Axis


@dataclass(frozen=True, slots=True)
class Plot:
    """A rectangle with a scale on either side."""

    box: QRectF
    days: Axis
    values: Axis

    def x(self, day: float) -> float:
        """Give where a day lies."""
        return self.box.left() + self.days.share(day) * self.box.width()

    def y(self, value: float) -> float:
        """Give where a value lies."""
        return self.box.bottom() - self.values.share(value) * self.box.height()

    def at(self, day: float, value: float) -> QPointF:
        """Give where a value of a day lies."""
        return QPointF(self.x(day), self.y(value))

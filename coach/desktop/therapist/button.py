"""Buttons of the therapist's windows."""

from __future__ import annotations

from PyQt6.QtCore import QRectF
from PyQt6.QtGui import QPainter, QPaintEvent, QPalette, QPen
from PyQt6.QtWidgets import QPushButton

_INSIDE_THE_RING_PX = 5


class Button(QPushButton):
    """A button whose focus is seen on a filled ground too."""

    def paintEvent(self, a0: QPaintEvent | None) -> None:  # noqa: N802
        """Part the style sheet's ring from the accent, which it is too near, by a light line."""
        super().paintEvent(a0)
        if not self.hasFocus() or not (self.property("role") == "primary" or self.isChecked()):
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.HighlightedText), 2))
        inside = QRectF(self.rect()).adjusted(
            *(_INSIDE_THE_RING_PX,) * 2, *(-_INSIDE_THE_RING_PX,) * 2
        )
        painter.drawRoundedRect(inside, 8, 8)
        painter.end()

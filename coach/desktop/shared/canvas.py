"""A painter that measures in the text's own size, so that screen and paper look alike."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from coach.desktop.shared.palettes import LIGHT, Palette
from coach.desktop.shared.typeface import font

Align = Qt.AlignmentFlag
LINE_EM = 1.32
"""From one line of a paragraph to the next, in the size of its type."""


class Canvas:
    """Draws on any paint device; every length but coordinates is in ``em``.

    ``em`` is the height of body text in device units: 15 on a screen, 133 for 8 pt at 1200 dpi.
    """

    def __init__(self, painter: QPainter, em: float, palette: Palette = LIGHT) -> None:
        """Take over a painter that is already active."""
        self.painter = painter
        self.em = em
        self.palette = palette
        painter.setRenderHints(
            QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing
        )

    def font(self, size: float = 1.0, *, bold: bool = False) -> QFont:
        """Give the program's font, ``size`` in em."""
        chosen = font(size * self.em, bold=bold)
        chosen.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
        return chosen

    def metrics(self, size: float = 1.0, *, bold: bool = False) -> QFontMetricsF:
        """Measure text as it will be drawn here."""
        return QFontMetricsF(self.font(size, bold=bold), self.painter.device())

    def width(self, text: str, size: float = 1.0, *, bold: bool = False) -> float:
        """Give a text's width in device units."""
        return self.metrics(size, bold=bold).horizontalAdvance(text)

    def text(
        self,
        box: QRectF,
        text: str,
        *,
        size: float = 1.0,
        bold: bool = False,
        colour: str | None = None,
        align: Align = Align.AlignLeft | Align.AlignVCenter,
    ) -> None:
        """Write one line, shortened with an ellipsis where the box is too narrow."""
        metrics = self.metrics(size, bold=bold)
        if metrics.horizontalAdvance(text) > box.width() + 0.01 * self.em:
            text = metrics.elidedText(text, Qt.TextElideMode.ElideRight, box.width())
        self.painter.setFont(self.font(size, bold=bold))
        self.painter.setPen(QColor(colour or self.palette.ink))
        self.painter.drawText(box, int(align.value) | Qt.TextFlag.TextSingleLine, text)

    def paragraph(
        self,
        box: QRectF,
        text: str,
        *,
        size: float = 1.0,
        bold: bool = False,
        colour: str | None = None,
    ) -> float:
        """Write lines broken at words and give the height they took."""
        metrics = self.metrics(size, bold=bold)
        step = LINE_EM * size * self.em
        top = box.top()
        for line in broken(text, metrics, box.width()):
            row = QRectF(box.left(), top, box.width(), step)
            self.text(row, line, size=size, bold=bold, colour=colour)
            top += step
        return top - box.top()

    def line(
        self,
        begin: QPointF,
        end: QPointF,
        colour: str,
        width: float = 0.08,
        style: Qt.PenStyle = Qt.PenStyle.SolidLine,
    ) -> None:
        """Draw a straight line."""
        self.painter.setPen(self.pen(colour, width, style))
        self.painter.drawLine(begin, end)

    def pen(self, colour: str, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
        """Give a pen, ``width`` in em."""
        pen = QPen(QColor(colour), width * self.em, style)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        return pen

    def fill(self, shape: QRectF | Sequence[QPointF], colour: str, opacity: float = 1.0) -> None:
        """Fill a rectangle or polygon without an outline."""
        tint = QColor(colour)
        tint.setAlphaF(opacity)
        self.painter.setPen(Qt.PenStyle.NoPen)
        self.painter.setBrush(QBrush(tint))
        if isinstance(shape, QRectF):
            self.painter.drawRect(shape)
        else:
            self.painter.drawPolygon(QPolygonF(shape))
        self.painter.setBrush(Qt.BrushStyle.NoBrush)

    def disc(self, at: QPointF, radius: float, colour: str, *, hollow: bool = False) -> None:
        """Draw a dot, ``radius`` in em; a hollow one lets nothing shine through."""
        self.painter.setPen(self.pen(colour, 0.11))
        self.painter.setBrush(QColor(self.palette.card if hollow else colour))
        self.painter.drawEllipse(at, radius * self.em, radius * self.em)
        self.painter.setBrush(Qt.BrushStyle.NoBrush)

    def hatch(self, box: QRectF, colour: str) -> None:
        """Mark by slanting lines, which do not mix up with a tint."""
        self.painter.save()
        self.painter.setClipRect(box, Qt.ClipOperation.IntersectClip)
        self.painter.setPen(self.pen(colour, 0.04))
        x = box.left() - box.height()
        while x < box.right():
            begin = QPointF(x, box.bottom())
            self.painter.drawLine(begin, begin + QPointF(box.height(), -box.height()))
            x += 0.55 * self.em
        self.painter.restore()


def broken(text: str, metrics: QFontMetricsF, width: float) -> list[str]:
    """Break a text at its spaces so that no line is wider than ``width``."""
    lines: list[str] = []
    line = ""
    for word in text.split():
        longer = f"{line} {word}" if line else word
        if line and metrics.horizontalAdvance(longer) > width:
            lines.append(line)
            line = word
        else:
            line = longer
    return [*lines, line] if line else lines

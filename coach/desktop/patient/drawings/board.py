"""The board that a drawing is painted on: its own lengths, however large the window."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPen

from coach.desktop.shared.looks import colours
from coach.desktop.shared.typeface import font

WIDTH, HEIGHT = 100.0, 84.0
"""Extent of every drawing, in its own lengths; letters are 4 to 5 of them high."""
LETTER = 4.6
CENTRE = Qt.AlignmentFlag.AlignCenter
LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class Board:
    """Paints into the middle of a room; lengths are ``WIDTH`` by ``HEIGHT``, y down."""

    def __init__(self, painter: QPainter, room: QRectF) -> None:
        """Take over an active painter."""
        self.painter = painter
        self._scale = min(room.width() / WIDTH, room.height() / HEIGHT)
        size = QPointF(WIDTH * self._scale, HEIGHT * self._scale)
        self._origin = room.center() - size / 2
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)

    def at(self, x: float, y: float) -> QPointF:
        """Give the place of a point."""
        return self._origin + QPointF(x, y) * self._scale

    def path(self, points: Sequence[tuple[float, float]], *, closed: bool = False) -> QPainterPath:
        """Give a smooth line through points (Catmull-Rom)."""
        count = len(points)
        path = QPainterPath(self.at(*points[0]))
        for i in range(count if closed else count - 1):
            if closed:
                around = [points[(i + k) % count] for k in (-1, 0, 1, 2)]
            else:
                around = [points[min(max(i + k, 0), count - 1)] for k in (-1, 0, 1, 2)]
            before, begin, end, after = (self.at(*p) for p in around)
            path.cubicTo(begin + (end - before) / 6, end - (after - begin) / 6, end)
        return path

    def fill(self, path: QPainterPath, colour: str, opacity: float = 1.0) -> None:
        """Fill a shape."""
        tint = QColor(colour)
        tint.setAlphaF(opacity)
        self.painter.fillPath(path, tint)

    def stroke(
        self,
        path: QPainterPath,
        colour: str | None = None,
        width: float = 0.7,
        style: Qt.PenStyle = Qt.PenStyle.SolidLine,
    ) -> None:
        """Draw a shape's line."""
        pen = QPen(QColor(colour or colours().ink), width * self._scale, style)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        self.painter.strokePath(path, pen)

    def line(
        self,
        *points: tuple[float, float],
        colour: str | None = None,
        width: float = 0.7,
        style: Qt.PenStyle = Qt.PenStyle.SolidLine,
    ) -> None:
        """Draw straight from point to point."""
        path = QPainterPath(self.at(*points[0]))
        for point in points[1:]:
            path.lineTo(self.at(*point))
        self.stroke(path, colour, width, style)

    def arrow(
        self, begin: tuple[float, float], end: tuple[float, float], colour: str | None = None
    ) -> None:
        """Draw a straight arrow."""
        self.line(begin, end, colour=colour)
        way = math.atan2(begin[1] - end[1], begin[0] - end[0])
        for turn in (-0.45, 0.45):
            barb = (end[0] + 2.6 * math.cos(way + turn), end[1] + 2.6 * math.sin(way + turn))
            self.line(barb, end, colour=colour)

    def disc(self, x: float, y: float, radius: float) -> QPainterPath:
        """Give a circle."""
        path = QPainterPath()
        path.addEllipse(self.at(x, y), radius * self._scale, radius * self._scale)
        return path

    def sector(
        self, x: float, y: float, radius: float, from_deg: float, to_deg: float
    ) -> QPainterPath:
        """Give a slice; degrees counter-clockwise from straight down, where an arm hangs."""
        reach = radius * self._scale
        middle = self.at(x, y)
        around = QRectF(middle.x() - reach, middle.y() - reach, 2 * reach, 2 * reach)
        path = QPainterPath(middle)
        path.arcTo(around, from_deg - 90, to_deg - from_deg)
        path.closeSubpath()
        return path

    def hatch(self, path: QPainterPath, colour: str, step: float = 2.4) -> None:
        """Fill with slanting lines, which are told from a tint without colour."""
        self.painter.save()
        self.painter.setClipPath(path)
        for i in range(round((WIDTH + HEIGHT) / step)):
            self.line((i * step - HEIGHT, HEIGHT), (i * step, 0), colour=colour, width=0.45)
        self.painter.restore()

    def word(
        self,
        box: tuple[float, float, float, float],
        text: str,
        *,
        size: float = LETTER,
        bold: bool = False,
        colour: str | None = None,
        align: Qt.AlignmentFlag = CENTRE,
    ) -> None:
        """Write into left, top, width, height; made smaller until it fits."""
        x, y, width, height = box
        place = QRectF(self.at(x, y), self.at(x + width, y + height))
        flags = align.value | Qt.TextFlag.TextWordWrap.value
        while size > 1:
            chosen = font(size * self._scale, bold=bold)
            metrics = QFontMetricsF(chosen)
            needed = metrics.boundingRect(place, flags, text)
            widest = max(metrics.horizontalAdvance(word) for word in text.split())
            if needed.height() <= place.height() + 1 and widest <= place.width() + 1:
                break
            size *= 0.95
        self.painter.setFont(chosen)
        self.painter.setPen(QColor(colour or colours().ink))
        self.painter.drawText(place, flags, text)

    def box(self, x: float, y: float, width: float, height: float) -> QPainterPath:
        """Give a rectangle."""
        path = QPainterPath()
        path.addRect(QRectF(self.at(x, y), self.at(x + width, y + height)))
        return path
